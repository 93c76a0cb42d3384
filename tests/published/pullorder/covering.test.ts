import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../src/engine/base/random.ts';
import { coverLp } from '../../../src/engine/pullorder/bound/cover-lp.ts';
import { coverBound, type CoverRow } from '../../../src/engine/pullorder/bound/cover.ts';
import { LetterSets } from '../../../src/engine/pullorder/bound/sets/letter-sets.ts';
import { compile } from '../../../src/engine/pullorder/model.ts';

// Source of the values: HiGHS (Huangfu and Hall 2018) through its WASM build, solved at test time; tolerance 1e-6.

interface Programme {
  counts: number[];
  rows: CoverRow[];
}

const highs = await loadHighs();

/** Least total of a covering programme by HiGHS; in fractions when `whole` is false. */
function byHighs({ counts, rows }: Programme, whole: boolean): number {
  const name = (l: number): string => `x${l}`;
  const text = [
    'Minimize',
    ` total: ${counts.map((_, l) => name(l)).join(' + ')}`,
    'Subject To',
    ...rows.map((row, i) => ` c${i}: ${row.letters.map(name).join(' + ')} >= ${row.least}`),
    ` all: ${counts.map((_, l) => name(l)).join(' + ')} >= 0`,
    'Bounds',
    ...counts.map((n, l) => ` ${name(l)} >= ${n}`),
    ...(whole ? ['General', ` ${counts.map((_, l) => name(l)).join(' ')}`] : []),
    'End',
  ].join('\n');
  const result = highs.solve(text, { mip_rel_gap: 0 });
  expect(result.Status).toBe('Optimal');
  return result.ObjectiveValue;
}

/** The programme of a studio-like problem: what all pairs and triples and some larger sets need. */
function realProgramme(seed: string): Programme {
  const random = randomFrom(`covering ${seed}`);
  const screens = 7 + random.int(4);
  const sheets = Array.from({ length: 4 + random.int(12) }, () => {
    const pulls = random.shuffle(Array.from({ length: screens }, (_, i) => ({ screen: `S${i}`, ink: 'i' })));
    const overlaps = pulls.flatMap((_, b) =>
      pulls.slice(0, b).flatMap((_, a): [number, number][] => (random.chance(1, 2) ? [[a, b]] : [])),
    );
    return { pulls, overlaps };
  });
  const { screenModel } = compile({ sheets });
  const sets = new LetterSets(screenModel, { units: 0 });
  const all = Array.from({ length: screens }, (_, l) => l);
  const chosen = all.flatMap((i) => all.slice(0, i).flatMap((j) => [[i, j], ...all.slice(0, j).map((h) => [i, j, h])]));
  for (let t = 0; t < 12; t++) chosen.push(random.shuffle(all).slice(0, 4 + random.int(2)));
  return { counts: all.map(() => 1), rows: chosen.map((letters) => ({ letters, least: sets.least(letters, 5000).least })) };
}

function randomProgramme(seed: string): Programme {
  const random = randomFrom(`programme ${seed}`);
  const counts = Array.from({ length: 2 + random.int(7) }, () => 1 + random.int(2));
  const letters = [...counts.keys()];
  const rows = Array.from({ length: random.int(14) }, () => {
    const own = random.shuffle(letters).slice(0, 1 + random.int(letters.length));
    return { letters: own, least: own.length + random.int(2 * own.length + 1) };
  });
  return { counts, rows };
}

describe('covering programmes against HiGHS', () => {
  const programmes = [
    ...Array.from({ length: 250 }, (_, i) => randomProgramme(`${i}`)),
    ...Array.from({ length: 20 }, (_, i) => realProgramme(`${i}`)),
  ];

  it('should have the same least whole total', () => {
    programmes.forEach((programme, i) => {
      const truth = Math.round(byHighs(programme, true));
      expect(coverBound(programme.counts, programme.rows, { from: 0, maxNodes: 1e6, meter: { units: 0 } }), `case ${i}`).toBe(truth);
      expect(coverBound(programme.counts, programme.rows, { from: 0, maxNodes: 3, meter: { units: 0 } }), `case ${i}`).toBeLessThanOrEqual(
        truth,
      );
    });
  });

  it('should have the same least total in fractions, rounded up, and keep every row', () => {
    programmes.forEach((programme, i) => {
      const { bound, counts } = coverLp(programme.counts, programme.rows, 1000, { units: 0 });
      const truth = byHighs(programme, false);
      expect(bound, `case ${i}`).toBe(Math.ceil(truth - 1e-6));
      expect(counts.reduce((a, b) => a + b, 0)).toBeCloseTo(truth, 6);
      for (const row of programme.rows) expect(row.letters.reduce((sum, l) => sum + counts[l]!, 0)).toBeGreaterThan(row.least - 1e-6);
      // Cut short it may say less, never more.
      expect(coverLp(programme.counts, programme.rows, 2, { units: 0 }).bound).toBeLessThanOrEqual(Math.ceil(truth - 1e-6));
    });
  });
});
