import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { createExplorer } from '../../../../src/engine/explore/search/explorer.ts';
import { drawWithin } from '../../../../src/engine/explore/search/order-range.ts';
import { checkExplore } from '../../../../src/engine/explore/settings/check.ts';
import type { ExploreInput, ExploreSettings, Variant } from '../../../../src/engine/explore/types.ts';
import { INKS, pull, rectDrawer } from '../../order/drawer.ts';

const QUIET: ExploreSettings = {
  seed: 'slack tide',
  count: 30,
  order: true,
  recolour: false,
  palette: INKS.map(({ id }) => id),
  offsetRangeMm: 0,
  leaveOut: 0,
  bringIn: 0,
  holds: [],
  minDeltaE: 0.5,
};

/** Scattering inks on rectangles that lie across each other: the order of every overlap shows. */
function stackOf(pulls: number, changes: Partial<ExploreSettings>): ExploreInput & { rects: number[][] } {
  const random = randomFrom('stack');
  const rects = Array.from(
    { length: pulls },
    () => [10 + random.int(60), 10 + random.int(40), 30 + random.int(50), 30 + random.int(40)] as [number, number, number, number],
  );
  return {
    drawer: rectDrawer(rects),
    rects,
    bench: Array.from({ length: pulls }, (_, i) => pull(i, INKS[i % 3]!.id)),
    explore: { ...QUIET, ...changes },
  };
}

function found(input: ExploreInput): Variant[] {
  const explorer = createExplorer(input);
  const variants: Variant[] = [];
  while (!explorer.done) variants.push(...explorer.step(5));
  return variants;
}

/** Share of the pairs whose rectangles overlap and whose inks differ that lie the other way round than on the Bench. */
function strays({ rects, bench }: { rects: number[][]; bench: ExploreInput['bench'] }, variant: Variant): number {
  const place = new Map(variant.pulls.map(({ id }, i) => [id, i]));
  let pairs = 0;
  let turned = 0;
  for (let a = 0; a < bench.length; a++) {
    for (let b = a + 1; b < bench.length; b++) {
      const [ax, ay, aw, ah] = rects[a]! as [number, number, number, number];
      const [bx, by, bw, bh] = rects[b]! as [number, number, number, number];
      const shared =
        Math.max(0, Math.min(ax + aw, bx + bw) - Math.max(ax, bx)) * Math.max(0, Math.min(ay + ah, by + bh) - Math.max(ay, by));
      if (shared < 2 || bench[a]!.ink === bench[b]!.ink) continue;
      pairs++;
      if (place.get(bench[a]!.id)! > place.get(bench[b]!.id)!) turned++;
    }
  }
  return turned / pairs;
}

describe('how far orders stray', () => {
  it('should leave little but halves of 80 pulls when nothing is said of it, as before', () => {
    const input = stackOf(80, {});
    for (const variant of found(input)) {
      const share = strays(input, variant);
      expect(share).toBeGreaterThan(0.35);
      expect(share).toBeLessThan(0.65);
    }
  });

  it('should spread 30 prints of 80 pulls over the whole range when it is asked for', () => {
    const input = stackOf(80, { orderFrom: 0, orderTo: 1 });
    const shares = found(input).map((variant) => strays(input, variant));
    expect(shares).toHaveLength(30);
    for (let band = 0; band < 5; band++) {
      const inBand = shares.filter((share) => share >= band / 5 && share <= (band + 1) / 5).length;
      expect(inBand, `${20 * band} to ${20 * band + 20} %`).toBeGreaterThanOrEqual(2);
    }
  });

  it.each([
    [0.05, 0.25],
    [0.3, 0.4],
    [0.8, 1],
  ])('should keep every print within %f and %f', (orderFrom, orderTo) => {
    const input = stackOf(60, { orderFrom, orderTo, recolour: false });
    const variants = found(input);
    expect(variants).toHaveLength(30);
    for (const variant of variants) {
      const share = strays(input, variant);
      // Pairs that hardly overlap, or whose order shows nothing, count in one measure and not in the other.
      expect(share).toBeGreaterThan(orderFrom - 0.03);
      expect(share).toBeLessThan(orderTo + 0.03);
    }
    expect(found(input)).toEqual(variants);
  });

  it('should list only what lies within the range where all orders are listed', () => {
    const input = stackOf(5, { orderTo: 0.3, count: 200 });
    const variants = found(input);
    expect(variants.length).toBeGreaterThan(2);
    for (const variant of variants) expect(strays(input, variant)).toBeLessThanOrEqual(0.3 + 1e-9);
    expect(found(stackOf(5, { count: 200 })).length).toBeGreaterThan(variants.length);
  });

  it('should keep what must stay below, above and in its place at every share', () => {
    const pairs: [number, number][] = [];
    for (let a = 0; a < 12; a++) for (let b = a + 1; b < 12; b++) pairs.push([a, b]);
    const ranks = Array.from({ length: 12 }, (_, i) => i);
    const slots = Array.from({ length: 12 }, () => -1);
    slots[0] = 0;
    slots[7] = 7;
    const keep = { arcs: [[2, 5] as const, [3, 9] as const], slots };
    let most = 0;
    for (let i = 0; i < 200; i++) {
      const order = drawWithin(pairs, keep, { ranks, range: { from: 0, to: 1 } }, randomFrom(`held ${i}`));
      if (order === null) continue;
      expect([...order].sort((a, b) => a - b)).toEqual(ranks);
      expect([order[0], order[7]]).toEqual([0, 7]);
      expect(order.indexOf(2)).toBeLessThan(order.indexOf(5));
      expect(order.indexOf(3)).toBeLessThan(order.indexOf(9));
      most = Math.max(most, pairs.filter(([a, b]) => order.indexOf(a) > order.indexOf(b)).length / pairs.length);
    }
    expect(most).toBeGreaterThan(0.5);
  });

  it('should refuse a range that ends before it begins, in one sentence at its field', () => {
    const { explore, drawer, bench } = stackOf(3, { orderFrom: 0.6, orderTo: 0.2 });
    expect(checkExplore(explore, drawer, bench)).toEqual([
      {
        code: 'explore.order-range',
        where: 'orderTo',
        message: 'From 60 % of the pairs to 20 % were to change places; let the second number be the larger.',
      },
    ]);
  });
});
