import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { readCgats } from '../../../src/engine/ink/cgats/read-cgats.ts';

// Fixtures of our own, one for each way in which a measurement file may be written; the frame is
// CGATS.17 / ISO 28178, from memory, and what it leaves open differs from file to file. Every fixture holds the same three
// invented patches, written by a script from the logistic curves below, so that what is read can
// be checked against the formula instead of against another reading.
const FOLDER = fileURLToPath(new URL('cgats', import.meta.url));
const PATCHES = [
  { name: 'rust white', low: 0.06, rise: 0.7, middleNm: 585, widthNm: 14 },
  { name: 'rust black', low: 0.04, rise: 0.14, middleNm: 590, widthNm: 18 },
  { name: 'card white', low: 0.8, rise: 0.06, middleNm: 430, widthNm: 20 },
];

const read = (file: string): ReturnType<typeof readCgats> => readCgats(readFileSync(`${FOLDER}/${file}`, 'utf8'), file);

/** Half a unit of the last written digit; where bands lie between the measured ones, Sprague's error. */
const TOLERANCE: Record<string, number> = { 'r-columns-20nm-short.txt': 4e-3 };
const REMARKS: Record<string, string[]> = { 'r-columns-20nm-short.txt': ['cgats.extended'] };

describe('readCgats', () => {
  const files = readdirSync(FOLDER).filter((file) => file !== 'lab-only.txt');

  it('should find its fixtures', () => {
    expect(files.length).toBeGreaterThan(12);
  });

  it.each(files)('should read the curves of %s', (file) => {
    const { samples, problems } = read(file);
    expect(problems.map(({ code }) => code)).toEqual(REMARKS[file] ?? []);
    expect(samples.length).toBe(3);
    const [first, last] = file.includes('short') ? [400, 700] : [380, 730];
    samples.forEach(({ name, reflectance }, i) => {
      const { low, rise, middleNm, widthNm, ...patch } = PATCHES[i]!;
      if (file !== 'no-ids.txt') expect(name).toBe(patch.name);
      expect(reflectance!.length).toBe(36);
      reflectance!.forEach((value, band) => {
        const nm = Math.min(last, Math.max(first, 380 + 10 * band));
        const expected = low + rise / (1 + Math.exp(-(nm - middleNm) / widthNm));
        expect(Math.abs(value - expected)).toBeLessThan(TOLERANCE[file] ?? 6e-6);
      });
    });
  });

  it('should take ids and names from what the file has', () => {
    expect(read('cgats17-spectral.txt').samples.map(({ id }) => id)).toEqual(['1', '2', '3']);
    expect(read('r-columns-20nm-short.txt').samples.map(({ id }) => id)).toEqual(PATCHES.map(({ name }) => name));
    expect(read('no-ids.txt').samples.map(({ id, name }) => `${id} ${name}`)).toEqual(['1 1', '2 2', '3 3']);
  });

  it('should read files that hold Lab alone', () => {
    const { samples, problems } = read('lab-only.txt');
    expect(problems).toEqual([]);
    expect(samples[0]).toEqual({ id: '1', name: 'rust white', lab: [51.02, 33.4, 36.15] });
    expect(samples.map(({ reflectance }) => reflectance)).toEqual([undefined, undefined, undefined]);
  });

  it('should say at which line and column the range is short', () => {
    const [problem] = read('r-columns-20nm-short.txt').problems;
    expect(problem!.where).toBe('line 4, column 13');
    expect(problem!.message).toContain('from 400 to 700 nm');
  });
});
