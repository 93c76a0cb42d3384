import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MOST_CGATS_CHARACTERS, readCgats } from '../../../../src/engine/ink/cgats/read-cgats.ts';

const NM = Array.from({ length: 36 }, (_, i) => 380 + 10 * i);

interface Parts {
  fields?: string[];
  rows?: string[][];
  statedFields?: number | string;
  statedSets?: number | string;
  between?: string;
}

const row = (id: string, value: string | number, more: Record<number, string> = {}): string[] => [
  id,
  ...NM.map((_, i) => more[i] ?? String(value)),
];

function file({ fields = ['SAMPLE_ID', ...NM.map((nm) => `SPECTRAL_${nm}`)], rows = [], between = '\t', ...parts }: Parts): string {
  return [
    'CGATS.17',
    `NUMBER_OF_FIELDS ${parts.statedFields ?? fields.length}`,
    'BEGIN_DATA_FORMAT',
    fields.join(between),
    'END_DATA_FORMAT',
    `NUMBER_OF_SETS ${parts.statedSets ?? rows.length}`,
    'BEGIN_DATA',
    ...rows.map((tokens) => tokens.join(between)),
    'END_DATA',
    '',
  ].join('\n');
}

const read = (text: string): ReturnType<typeof readCgats> => readCgats(text, 'pulls.txt');
const codes = (text: string): string[] => read(text).problems.map(({ code }) => code);
const ids = (text: string): string[] => read(text).samples.map(({ id }) => id);
const THREE = [row('a', 0.5), row('b', 0.25), row('c', 0.125)];

describe('readCgats on bad rows', () => {
  it('should name the place of a bad value and keep the other rows', () => {
    for (const [value, code] of [
      ['NaN', 'cgats.not-a-number'],
      ['1.35', 'cgats.too-bright'],
      ['35', 'cgats.too-bright'],
      ['-0.2', 'cgats.negative'],
      ['n/a', 'cgats.not-a-number'],
    ] as const) {
      const text = file({ rows: [THREE[0]!, row('b', 0.25, { 2: value }), THREE[2]!] });
      const { samples, problems } = read(text);
      expect(samples.map(({ id }) => id)).toEqual(['a', 'c']);
      expect(samples[0]!.reflectance![0]).toBe(0.5);
      const problem = problems.find((one) => one.code === code)!;
      expect(problem.where).toBe('line 9, column 13');
      expect(problem.message).toMatch(/^pulls\.txt, line 9, column 13: “.+” is .+\.$/u);
    }
  });

  it('should read noise just below 0 as 0 and say so', () => {
    const { samples, problems } = read(file({ rows: [row('a', 0.5, { 1: '-0.0004' })] }));
    expect(samples[0]!.reflectance![1]).toBe(0);
    expect(problems.map(({ code, where }) => [code, where])).toEqual([['cgats.negative', 'line 8, column 7']]);
  });

  it('should leave out rows of a wrong count', () => {
    const text = file({ rows: [THREE[0]!, THREE[1]!.slice(0, -1), THREE[2]!] });
    expect(ids(text)).toEqual(['a', 'c']);
    expect(read(text).problems.map(({ code, where }) => [code, where])).toEqual([
      ['cgats.row-count', 'line 9, column 1'],
      ['cgats.set-count', 'line 6, column 1'],
    ]);
  });

  it('should find the next row after a bad one when rows are wrapped', () => {
    const wrapped = (tokens: string[]): string[] => [0, 10, 20, 30].map((i) => tokens.slice(i, i + 10).join(' '));
    const text = file({ rows: [] }).replace(
      /NUMBER_OF_SETS 0\nBEGIN_DATA/u,
      [
        'NUMBER_OF_SETS 4',
        'BEGIN_DATA',
        ...wrapped(THREE[0]!),
        ...wrapped(THREE[1]!.toSpliced(5, 1)),
        ...wrapped(THREE[2]!),
        ...wrapped(row('d', 0.75)),
      ].join('\n'),
    );
    expect(ids(text)).toEqual(['a', 'c', 'd']);
    expect(read(text).samples.map(({ reflectance }) => reflectance![35])).toEqual([0.5, 0.125, 0.75]);
  });

  it('should say when stated counts are wrong and follow what is there', () => {
    expect(codes(file({ rows: THREE, statedSets: 5 }))).toEqual(['cgats.set-count']);
    expect(codes(file({ rows: THREE, statedFields: 30 }))).toEqual(['cgats.field-count']);
    expect(codes(file({ rows: THREE, statedSets: 'many' }))).toEqual(['cgats.bad-count']);
    for (const more of [{ statedSets: 5 }, { statedFields: 30 }, { statedSets: 'many' }]) {
      expect(ids(file({ rows: THREE, ...more }))).toEqual(['a', 'b', 'c']);
    }
  });

  it('should keep the whole rows of a file cut off anywhere', () => {
    const text = file({ rows: THREE });
    for (let length = text.indexOf('BEGIN_DATA\n'); length < text.length - 9; length++) {
      const { samples, problems } = read(text.slice(0, length));
      expect(problems.length).toBeGreaterThan(0);
      for (const sample of samples) {
        expect(new Set(sample.reflectance).size).toBe(1);
        expect(sample.reflectance![0]).toBe({ a: 0.5, b: 0.25, c: 0.125 }[sample.id]);
      }
    }
  });
});

describe('readCgats on files of other kinds', () => {
  it('should refuse them with one sentence', () => {
    expect(codes('')).toEqual(['cgats.empty']);
    expect(codes('\uFEFF \n')).toEqual(['cgats.empty']);
    expect(codes('a letter\nto a friend')).toEqual(['cgats.no-data']);
    expect(codes('\u0000\u0001PNG')).toEqual(['cgats.binary']);
    expect(codes('x'.repeat(MOST_CGATS_CHARACTERS + 1))).toEqual(['cgats.too-large']);
    expect(codes('BEGIN_DATA\n1 2 3\nEND_DATA')).toEqual(['cgats.no-format']);
    expect(codes(file({ fields: ['SAMPLE_ID', 'CMYK_C'], rows: [['1', '40']] }))).toEqual(['cgats.no-colour']);
    expect(codes(file({ rows: [] }))).toEqual(['cgats.no-rows']);
  });

  it('should refuse spectra too narrow to tell a colour', () => {
    const fields = ['SAMPLE_ID', 'R_500', 'R_510', 'R_520', 'R_530'];
    expect(codes(file({ fields, rows: [['1', '0.1', '0.2', '0.3', '0.4']] }))).toEqual(['cgats.too-narrow']);
  });
});

describe('readCgats on scales', () => {
  it('should say when it doubts how the numbers are scaled', () => {
    expect(codes(file({ rows: [row('tar', 2.4)] }))).toEqual(['cgats.scale-doubtful']);
    expect(read(file({ rows: [row('tar', 2.4)] })).samples[0]!.reflectance![3]).toBeCloseTo(0.024, 12);
    const spec = ['SAMPLE_ID', ...NM.map((nm) => `SPEC_${nm}`)];
    expect(codes(file({ fields: spec, rows: THREE }))).toEqual(['cgats.scale-doubtful']);
    expect(read(file({ fields: spec, rows: THREE })).samples[0]!.reflectance![3]).toBe(0.5);
  });

  it.each([8, 30, 60])('should take dark patches up to %i % for percent without a doubt, where the file is silent', (top) => {
    const text = file({ rows: [row('tar', 3), row('rust', 6, { 20: String(top) })] });
    expect(codes(text)).toEqual([]);
    expect(read(text).samples[1]!.reflectance![20]).toBeCloseTo(top / 100, 12);
  });

  it('should scale a table of dark patches like the others of its kind', () => {
    const text = file({ rows: [row('card', 88)] }) + file({ rows: [row('tar', 0.9)] });
    const [card, tar] = read(text).samples;
    expect(card!.reflectance![0]).toBeCloseTo(0.88, 12);
    expect(tar!.reflectance![0]).toBeCloseTo(0.009, 12);
    expect(codes(text)).toEqual([]);
  });

  it('should let a paper that glows pass', () => {
    expect(read(file({ rows: [row('paper', 0.9, { 6: '1.12' })] })).samples[0]!.reflectance![6]).toBe(1.12);
  });
});

describe('readCgats on names and quotes', () => {
  const named = ['SAMPLE_ID', 'SAMPLE_NAME', 'LAB_L', 'LAB_A', 'LAB_B'];
  it('should keep blanks, marks and doubled quotes of names', () => {
    const text = file({
      fields: named,
      rows: [
        ['1', '"rust ""thin"" #2"', '50', '1', '2'],
        ['2', "'weed, old'", '50', '1', '2'],
        ['3', 'o\'clock"', '50', '1', '2'],
      ],
    });
    expect(read(text).samples.map(({ name }) => name)).toEqual(['rust "thin" #2', 'weed, old', 'o\'clock"']);
    expect(codes(text)).toEqual([]);
  });

  it('should cut by tabs when bare names hold blanks, and pass over comments', () => {
    const text = file({
      fields: named,
      rows: [
        ['1', 'rust over white', '50', '1', '2'],
        ['2', '', '51', '-1', '2'],
      ],
    }).replace('BEGIN_DATA\n', 'BEGIN_DATA\n# two pulls\n');
    expect(read(text).samples.map(({ name, lab }) => [name, lab])).toEqual([
      ['rust over white', [50, 1, 2]],
      ['2', [51, -1, 2]],
    ]);
    expect(codes(text)).toEqual([]);
  });

  it('should tell of each row whose bare name holds blanks where there are no tabs', () => {
    const text = file({
      fields: named,
      rows: [
        ['1', 'rust white', '50', '1', '2'],
        ['2', 'rust black', '40', '1', '2'],
      ],
      between: ' ',
    });
    expect(codes(text)).toEqual(['cgats.row-count', 'cgats.row-count', 'cgats.set-count', 'cgats.no-rows']);
  });

  it('should know the fields in any letter case and form', () => {
    for (const form of [
      (nm: number) => `spectral_nm_${nm}`,
      (nm: number) => `${nm}nm`,
      (nm: number) => `Refl ${nm}`,
      (nm: number) => `R${nm}.0`,
      (nm: number) => `${nm}`,
      (nm: number) => `SPECTRAL_DEC_${nm}`,
    ]) {
      const text = file({ fields: ['"Sample ID"', ...NM.map((nm) => `"${form(nm)}"`)], rows: THREE });
      expect(codes(text)).toEqual([]);
      expect(read(text).samples[1]!.reflectance![20]).toBe(0.25);
    }
  });

  it('should not take transmittance for reflectance', () => {
    expect(codes(file({ fields: ['SAMPLE_ID', ...NM.map((nm) => `T_${nm}`)], rows: THREE }))).toEqual(['cgats.no-colour']);
  });

  it('should say when Lab is for another illuminant', () => {
    const text = file({ fields: named, rows: [['1', 'rust', '50', '1', '2']] }).replace(
      'CGATS.17',
      'CGATS.17\nWEIGHTING_FUNCTION "ILLUMINANT, D65"',
    );
    expect(codes(text)).toEqual(['cgats.illuminant']);
  });
});

describe('readCgats on anything', () => {
  const good = readFileSync(fileURLToPath(new URL('../../../published/ink/cgats/cgats17-spectral.txt', import.meta.url)), 'utf8');
  const checkResult = (text: string): void => {
    const { samples, problems } = read(text);
    for (const { reflectance, lab } of samples) {
      expect(reflectance ?? lab).toBeDefined();
      if (reflectance) expect(reflectance.length).toBe(36);
      for (const value of reflectance ?? []) expect(value >= 0 && value <= 1.2).toBe(true);
      for (const value of lab ?? []) expect(Number.isFinite(value)).toBe(true);
    }
    for (const { message, where } of problems) {
      expect(where).toMatch(/^line \d+, column \d+$/u);
      expect(message.startsWith('pulls.txt')).toBe(true);
    }
    expect(samples.length + problems.length).toBeGreaterThan(0);
  };

  it('should never throw nor give what is no reflectance', () => {
    const word = fc.constantFrom(
      'BEGIN_DATA',
      'END_DATA',
      'BEGIN_DATA_FORMAT',
      'END_DATA_FORMAT',
      'NUMBER_OF_FIELDS',
      'NUMBER_OF_SETS',
      'SPECTRAL_NM',
      'SPECTRAL_PCT',
      'R_400',
      'R_500',
      'R_600',
      'R_700',
      'LAB_L',
      'LAB_A',
      'LAB_B',
      '"',
      "'",
      '#',
      '\t',
      '\n',
      ' ',
      '0,5',
      '3',
      '380',
      '-1',
      '1e400',
      'NaN',
    );
    fc.assert(
      fc.property(fc.array(fc.oneof(word, fc.string()), { maxLength: 60 }), (parts) => checkResult(parts.join(' '))),
      { seed: 17, numRuns: 1500 },
    );
  });

  it('should bear with any damage to a good file', () => {
    fc.assert(
      fc.property(fc.nat(good.length), fc.nat(60), fc.string({ maxLength: 8 }), (at, gone, put) => {
        checkResult(good.slice(0, at) + put + good.slice(at + gone));
      }),
      { seed: 28178, numRuns: 600 },
    );
  });
});
