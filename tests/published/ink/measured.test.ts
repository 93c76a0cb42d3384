import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/engine/colour/delta-e.ts';
import { labFromXyzD50 } from '../../../src/engine/colour/lab.ts';
import { WAVELENGTHS_NM } from '../../../src/engine/colour/weights.ts';
import { readCgats } from '../../../src/engine/ink/cgats/read-cgats.ts';

// Published characterisation data; sources and licences stand in measured/README.md.
const FOLDER = fileURLToPath(new URL('measured', import.meta.url));
const textOf = (file: string): string => readFileSync(`${FOLDER}/${file}`, 'utf8');
const read = (file: string): ReturnType<typeof readCgats> => readCgats(textOf(file), file);

/** A file's own columns, cut by blanks without any of the reader's code. */
function columns(file: string, names: readonly string[]): number[][] {
  const text = textOf(file);
  const fields = /BEGIN_DATA_FORMAT\s+(.+?)\s+END_DATA_FORMAT/su.exec(text)![1]!.split(/\s+/u);
  const rows = /\nBEGIN_DATA\n(.+?)\nEND_DATA\s/su.exec(text)![1]!.split('\n');
  return rows.map((row) => names.map((name) => Number(row.trim().split(/\s+/u)[fields.indexOf(name)])));
}

describe('published measurement files', () => {
  const files = readdirSync(FOLDER).filter((file) => file.endsWith('.txt'));

  it.each(files)('should be read whole and without a fault: %s', (file) => {
    const { samples, problems } = read(file);
    expect(problems).toEqual([]);
    expect(samples).toHaveLength(60);
  });

  it.each(files.filter((file) => !file.includes('xyz-alone')))('should give the Lab that %s prints', (file) => {
    const labs = columns(file, ['LAB_L', 'LAB_A', 'LAB_B']);
    read(file).samples.forEach(({ lab }, i) => expect(lab).toEqual(labs[i]));
  });

  it('should read tristimulus values alone as the Lab printed beside them in the whole file', () => {
    const [lightest] = read('fogra39-xyz-alone.txt').samples;
    // Bare paper of this data set, as it prints it: L 95.00, a 0.00, b −2.00.
    expect(deltaE2000(lightest!.lab!, [95, 0, -2])).toBeLessThan(0.05);
    // Two files that give both, with the Lab columns taken out: the Lab is theirs again.
    for (const file of ['fogra28-xyz-and-lab.txt', 'tr002-newsprint.txt']) {
      const labs = columns(file, ['LAB_L', 'LAB_A', 'LAB_B']);
      const alone = textOf(file).replace('LAB_L LAB_A LAB_B', 'X_L X_A X_B');
      const { samples, problems } = readCgats(alone, file);
      expect(problems).toEqual([]);
      const misses = samples.map(({ lab }, i) => deltaE2000(lab!, labs[i] as [number, number, number]));
      expect(misses.reduce((sum, miss) => sum + miss, 0) / misses.length).toBeLessThan(0.05);
      // XYZ is printed to two decimals, which are much of a dark patch.
      expect(Math.max(...misses)).toBeLessThan(0.3);
    }
  });

  it('should read tristimulus values that run to 1', () => {
    const [header, rows] = textOf('fogra39-xyz-alone.txt').split('\nBEGIN_DATA\n') as [string, string];
    const hundredth = rows.replaceAll(/\t([\d.]+)(?=(?:\t[\d.]+){0,2}$)/gmu, (_, value: string) => `\t${(Number(value) / 100).toFixed(6)}`);
    const { samples } = readCgats(`${header}\nBEGIN_DATA\n${hundredth}`, 'ones.txt');
    read('fogra39-xyz-alone.txt').samples.forEach(({ lab }, i) => expect(deltaE2000(samples[i]!.lab!, lab!)).toBeLessThan(0.01));
  });
});

const HEAD = 'SAMPLE_ID XYZ_X XYZ_Y XYZ_Z';
const table = (keywords: string, rows = '1 78.26 81.53 65.62', fields = HEAD): string =>
  `CGATS.17\n${keywords}\nBEGIN_DATA_FORMAT\n${fields}\nEND_DATA_FORMAT\nBEGIN_DATA\n${rows}\nEND_DATA\n`;

describe('XYZ tables that do not tell a colour by day', () => {
  it('should take those for D65 relative to its white, and say so', () => {
    const { samples, problems } = readCgats(table('ILLUMINANT "D65"', '1 47.52 50 54.44'), 'd65.txt');
    expect(problems.map(({ code }) => code)).toEqual(['cgats.illuminant']);
    // A grey of half the white, whatever the white: a and b are 0 (whites as printed to two decimals, CIE 015).
    expect(Math.hypot(samples[0]!.lab![1], samples[0]!.lab![2])).toBeLessThan(0.1);
    expect(samples[0]!.lab![0]).toBeCloseTo(labFromXyzD50(0, 50, 0)[0], 4);
  });
  it.each([
    ['ILLUMINANT "A"', 'cgats.light-of-xyz', /illuminant A/],
    ['ILLUMINANT "D50"', 'cgats.bad-xyz', /Y must be a number from 0 to 120, not “381.5”/, '1 100 381.5 100'],
  ])('should refuse %s in a sentence', (keywords, code, words, rows = '1 78.26 81.53 65.62') => {
    const { samples, problems } = readCgats(table(keywords as string, rows as string), 'x.txt');
    expect(samples).toEqual([]);
    expect(problems[0]).toMatchObject({ code, message: expect.stringMatching(words as RegExp) });
  });
});

describe('light sources', () => {
  // Illuminant A by the equation of CIE 015, 3.1, as files of lamps write it: one row, 100 at 560 nm.
  const lamp = WAVELENGTHS_NM.map((nm) => (100 * (560 / nm) ** 5 * Math.expm1(1.435e7 / (2848 * 560))) / Math.expm1(1.435e7 / (2848 * nm)));
  const names = (family: string): string => WAVELENGTHS_NM.map((nm) => `${family}_${nm}`).join(' ');
  it.each([
    ['a lamp by its description', 'DESCRIPTOR\t"Spectral Power"', names('SPEC'), lamp.map((value) => value.toFixed(3)).join(' ')],
    ['emission by its columns', 'ORIGINATOR "test"', names('EMISSION'), lamp.map((value) => (value / 1e4).toFixed(6)).join(' ')],
    ['an ambient reading', 'MEASUREMENT_TYPE "Ambient"', names('SPECTRAL'), lamp.map((value) => (value / 200).toFixed(4)).join(' ')],
    ['a screen', 'DEVICE_CLASS "DISPLAY"', HEAD, '1 95.1 100 108.8'],
    ['a screen in absolute light', 'LUMINANCE_XYZ_CDM2 "92.0 97.1 105.3"', HEAD, '1 95.1 100 108.8'],
  ])('should be refused in words: %s', (_, keywords, fields, row) => {
    const { samples, problems } = readCgats(table(keywords, row, fields), 'light.txt');
    expect(samples).toEqual([]);
    expect(problems.map(({ code }) => code)).toEqual(['cgats.light']);
    expect(problems[0]!.message).toMatch(
      /^light\.txt, line \d+, column \d+: This is the light of a lamp or a screen, .+ measure the patches in reflectance/,
    );
  });
  it('should be told from colour-matching functions and from what went through a film', () => {
    const observer = readCgats(
      table('DESCRIPTOR "Color Match Function"', '0.1 0.2 0.3 0.4', 'SPEC_400 SPEC_500 SPEC_600 SPEC_700'),
      'eye.txt',
    );
    expect(observer.problems[0]!.message).toMatch(/how an eye sees/);
    const film = readCgats(table('MEASUREMENT_TYPE "Transmission"'), 'film.txt');
    expect(film.problems[0]!.message).toMatch(/went through a film/);
  });
  it('should not be seen where a print was measured under one', () => {
    const keywords =
      'ILLUMINANT "D50"\nMEASUREMENT_SOURCE "ILLUMINATION_NAME=D50"\nDESCRIPTOR "Monitor proof under illuminant D50"\nDEVICE_CLASS "OUTPUT"';
    expect(readCgats(table(keywords), 'print.txt')).toMatchObject({ problems: [], samples: [{ id: '1' }] });
  });
});
