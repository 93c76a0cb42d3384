import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../src/engine/base/random.ts';
import { deltaE2000 } from '../../../src/engine/colour/delta-e.ts';
import { labD50, type Lab } from '../../../src/engine/colour/lab.ts';
import { freeSwaps, overlapsOf } from '../../../src/engine/order/overlaps.ts';
import type { Studio } from '../../../src/engine/studio/studio.ts';
import { ink, pull, rectDrawer } from './drawer.ts';

type Rect = [number, number, number, number];

/**
 * What one film shows over a ground in one band, by the textbook's hyperbolic form, without the engine's films.
 * Source: Kubelka (1948), J. Opt. Soc. Am. 38(5), 448–457.
 */
function over(k: number, s: number, ground: number): number {
  if (s < 1e-12) return ground * Math.exp(-2 * k);
  const a = 1 + k / s;
  const b = Math.sqrt(a * a - 1);
  const coth = 1 / Math.tanh(b * s);
  return (1 - ground * (a - b * coth)) / (a - ground + b * coth);
}

/** The picture's different piles, from a raster of 1 mm. */
function pilesOf(rects: readonly Rect[]): number[][] {
  const masks = new Set<number>();
  for (let y = 0; y < 100; y++) {
    for (let x = 0; x < 200; x++) {
      let mask = 0;
      rects.forEach(([left, top, w, h], i) => {
        if (x + 0.5 > left && x + 0.5 < left + w && y + 0.5 > top && y + 0.5 < top + h) mask |= 1 << i;
      });
      masks.add(mask);
    }
  }
  return [...masks].map((mask) => rects.map((_, i) => i).filter((i) => (mask >> i) & 1));
}

/** How thick a film is on what lies below it, as a share of its thickness on the paper. */
function thickness({ trapping, inks }: Studio, below: number, at: number): number {
  if (below < 0 || trapping === undefined) return 1;
  for (const { under, over: above, factor } of trapping.pairs ?? []) {
    if (under === inks[below]!.id && above === inks[at]!.id) return factor;
  }
  return trapping.factor;
}

/** The largest ΔE00 of any pixel between two orders of all pulls. */
function most(piles: readonly number[][], studio: Studio, one: readonly number[], other: readonly number[]): number {
  const colour = (pile: readonly number[], order: readonly number[]): Lab => {
    const { k1, k2 } = studio.surface ?? { k1: 0, k2: 0 };
    // Saunderson (1942), J. Opt. Soc. Am. 32(12), 727–736, backwards for the paper and forwards for the print.
    const bands = studio.paper.reflectance.map((r) => (r - k1) / (1 - k1 - k2 + k2 * r));
    let below = -1;
    for (const at of order) {
      if (!pile.includes(at)) continue;
      const { kx, sx } = studio.inks[at]!;
      const x = thickness(studio, below, at);
      for (let band = 0; band < 36; band++) bands[band] = over(kx[band]! * x, sx[band]! * x, bands[band]!);
      below = at;
    }
    return labD50(bands.map((r) => k1 + ((1 - k1) * (1 - k2) * r) / (1 - k2 * r)));
  };
  return Math.max(...piles.map((pile) => (pile.length < 2 ? 0 : deltaE2000(colour(pile, one), colour(pile, other)))));
}

const THRESHOLD = 1;

interface Case {
  name: string;
  seeds: number;
  printing(inks: readonly { id: string }[]): Pick<Studio, 'surface' | 'trapping'>;
}

/** LONG=1 in the environment looks at 1,000 stacks in every case. */
const FEW = process.env['LONG'] === undefined ? 120 : 1000;
const CASES: Case[] = [
  { name: 'films alone', seeds: 1000, printing: () => ({}) },
  { name: 'trapping 0.7', seeds: FEW, printing: () => ({ trapping: { factor: 0.7 } }) },
  { name: 'trapping 0.85 and a surface', seeds: FEW, printing: () => ({ trapping: { factor: 0.85 }, surface: { k1: 0.04, k2: 0.5 } }) },
  { name: 'a surface', seeds: FEW, printing: () => ({ surface: { k1: 0, k2: 0.6 } }) },
  {
    name: 'trapping of pairs',
    seeds: FEW,
    printing: (inks) => ({
      surface: { k1: 0, k2: 0.5 },
      trapping: {
        factor: 0.8,
        pairs: inks.flatMap(({ id }, i) => (i === 0 ? [] : [{ under: inks[i - 1]!.id, over: id, factor: 0.5 + 0.1 * (i % 7) }])),
      },
    }),
  },
];

describe('freeSwaps against a raster brute force', () => {
  it.each(CASES)(
    'should be free in the picture, alone and together, in random stacks: $name',
    ({ name, seeds, printing }) => {
      const random = randomFrom('raster');
      const unit = (): number => random.int(1e6) / 1e6;
      let alone = 0;
      let together = 0;
      let worst = 0;
      for (let stack = 0; stack < seeds; stack++) {
        const n = 2 + random.int(7);
        const rects = Array.from({ length: n }, (): Rect => [random.int(120), random.int(60), 30 + random.int(80), 20 + random.int(60)]);
        // From soft tints, in which everything is nearly free, to strong covering films.
        const strength = [0.1, 0.3, 1][random.int(3)]!;
        const scatter = [0, 0.02, 0.1, 0.5][random.int(4)]!;
        const inks = rects.map((_, i) => {
          const [at, wide, high, s] = [unit() * 36, 4 + unit() * 12, strength * (0.1 + 2 * unit()), scatter * unit()];
          return ink(
            `ink${i}`,
            (band) => 0.01 + high * Math.exp(-(((band - at) / wide) ** 2)),
            () => s,
          );
        });
        const studio: Studio = { ...rectDrawer(rects), inks, ...printing(inks) };
        const pulls = inks.map((each, i) => pull(i, each.id));
        const options = { toleranceMm: 0.05, minDeltaE: THRESHOLD };
        const piles = pilesOf(rects);
        const asGiven = pulls.map((_, i) => i);
        for (const { a, b } of freeSwaps({ pulls }, studio, options)) {
          if (b !== a + 1) continue;
          alone++;
          const swapped = asGiven.map((i) => (i === a ? b : i === b ? a : i));
          worst = Math.max(worst, most(piles, studio, asGiven, swapped));
        }
        // Two orders of one class: each pair that matters as in the stack, all else at random.
        const held = overlapsOf({ pulls }, studio, options);
        const orderOfClass = (): number[] => {
          const left = new Set(asGiven);
          const out: number[] = [];
          while (left.size > 0) {
            const ready = [...left].filter((i) => !held.some(({ a, b }) => b === i && left.has(a)));
            const next = ready[random.int(ready.length)]!;
            left.delete(next);
            out.push(next);
          }
          return out;
        };
        for (let draw = 0; draw < 4; draw++) {
          const [one, other] = [orderOfClass(), orderOfClass()];
          if (one.join() === other.join()) continue;
          together++;
          worst = Math.max(worst, most(piles, studio, one, other));
        }
      }
      expect(alone).toBeGreaterThan(name === 'films alone' ? 300 : 0.05 * seeds);
      expect(together).toBeGreaterThan(seeds);
      expect(worst).toBeLessThan(THRESHOLD + 0.1);
    },
    120_000,
  );
});
