import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../src/engine/base/random.ts';
import { deltaE2000 } from '../../../src/engine/colour/delta-e.ts';
import { labD50 } from '../../../src/engine/colour/lab.ts';
import { stackReflectance } from '../../../src/engine/ink/film/film.ts';
import { filmThickness } from '../../../src/engine/ink/film/thickness.ts';
import { canonicalOrder } from '../../../src/engine/order/canonical.ts';
import { countOrderClasses } from '../../../src/engine/order/count/count.ts';
import { graphOf } from '../../../src/engine/order/graph.ts';
import { completeLink } from '../../../src/engine/order/groups/complete-link.ts';
import { groupOrders } from '../../../src/engine/order/groups/group-orders.ts';
import { orderGraph } from '../../../src/engine/order/order-graph.ts';
import { dryingPairs, edgeWeight, freeSwaps, type Overlap, overlapsOf, overlapSteps } from '../../../src/engine/order/overlaps.ts';
import { SwapDeltas } from '../../../src/engine/order/swap-delta.ts';
import { buildCellMap } from '../../../src/engine/stack/cell-map.ts';
import { pairOverlapAreas } from '../../../src/engine/stack/overlap-areas.ts';
import { placedSpans } from '../../../src/engine/stack/screen-spans.ts';
import type { Pull } from '../../../src/engine/stack/types.ts';
import type { Studio } from '../../../src/engine/studio/studio.ts';
import { ink, INKS, pull, rectDrawer } from './drawer.ts';

type Rect = [number, number, number, number];

function shared(a: Rect, b: Rect): number {
  const w = Math.min(a[0] + a[2], b[0] + b[2], 200) - Math.max(a[0], b[0], 0);
  const h = Math.min(a[1] + a[3], b[1] + b[3], 100) - Math.max(a[1], b[1], 0);
  return w > 0 && h > 0 ? w * h : 0;
}

function names(list: readonly { a: number; b: number }[]): string[] {
  return list.map(({ a, b }) => `${a}${b}`);
}

function colour(pulls: readonly Pull[], studio: Studio): ReturnType<typeof labD50> {
  const films = pulls.map((each) => {
    const found = studio.inks.find((candidate) => candidate.id === each.ink)!;
    const thickness = filmThickness(each.strokes, studio.strokeGain);
    return { kx: found.kx.map((k) => k * thickness), sx: found.sx.map((s) => s * thickness) };
  });
  return labD50(stackReflectance(films, studio.paper.reflectance));
}

describe('overlapSteps', () => {
  it('should go on in short steps, whatever else is measured meanwhile', () => {
    const random = randomFrom('steps');
    const rects = Array.from({ length: 12 }, (): Rect => [random.int(120), random.int(40), 60 + random.int(40), 40 + random.int(20)]);
    const studio = rectDrawer(rects);
    const inks = ['tar', 'foam', 'rust', 'weed', 'dusk'];
    const stacks = [0, 1].map((turn) => ({ pulls: rects.map((_, i) => pull(i, inks[(i + turn) % inks.length]!)) }));
    const options = { toleranceMm: 0.05, minDeltaE: 3 };
    const alone = stacks.map((stack) => overlapsOf(stack, studio, options));
    const runs = stacks.map((stack) => ({ steps: overlapSteps(stack, studio, options), shares: [0], found: [] as readonly Overlap[] }));
    for (let going = 2; going > 0;) {
      going = 0;
      for (const run of runs) {
        const step = run.steps.next();
        if (step.done === true) run.found = step.value ?? run.found;
        else {
          going++;
          run.shares.push(step.value);
        }
      }
    }
    expect(runs.map(({ found }) => found)).toEqual(alone);
    for (const { shares } of runs) {
      expect(shares.length).toBeGreaterThan(16);
      expect(shares).toEqual([...shares].sort((a, b) => a - b));
      expect(shares.at(-1)).toBeLessThanOrEqual(1);
    }
  });
});

describe('dryingPairs', () => {
  it('should give the shared area of rectangles as width × height', () => {
    const random = randomFrom('rects');
    const rects = Array.from({ length: 14 }, (): Rect => [
      random.int(180) - 20,
      random.int(90) - 20,
      20 + random.int(60),
      20 + random.int(40),
    ]);
    const studio = rectDrawer(rects);
    const pulls = rects.map((_, i) => pull(i, 'foam'));
    const pairs = dryingPairs({ pulls }, studio, { toleranceMm: 0.05 });
    const found = new Map(pairs.map(({ a, b, areaMm2 }) => [`${a},${b}`, areaMm2]));
    let wanted = 0;
    for (let a = 0; a < 14; a++) {
      for (let b = a + 1; b < 14; b++) {
        const area = shared(rects[a]!, rects[b]!);
        if (area > 0) {
          wanted++;
          expect(found.get(`${a},${b}`)).toBeCloseTo(area, 6);
        }
      }
    }
    expect(pairs.length).toBe(wanted);
    const across = dryingPairs({ pulls }, studio, { toleranceMm: 0.05, across: 5 });
    expect(across).toEqual(pairs.filter(({ a, b }) => a < 5 && b >= 5));
  });

  it('should count an overlap nowhere wider than the tolerance as touching', () => {
    const studio = rectDrawer([
      [10, 10, 40, 40],
      [49.9, 10, 40, 40],
    ]);
    const stack = { pulls: [pull(0, 'tar'), pull(1, 'foam')] };
    expect(dryingPairs(stack, studio, { toleranceMm: 0.1 })).toEqual([]);
    expect(dryingPairs(stack, studio, { toleranceMm: 0.2 })).toEqual([]);
    const pair = dryingPairs(stack, studio, { toleranceMm: 0.09 })[0]!;
    expect(pair.areaMm2).toBeCloseTo(4, 6);
    expect(dryingPairs(stack, studio, { toleranceMm: 0 }).length).toBe(1);
  });

  it('should keep an overlap as small as a register mark: 0.4 mm × 0.5 mm', () => {
    const studio = rectDrawer([
      [10, 10, 40, 40],
      [49.6, 49.5, 40, 40],
    ]);
    const stack = { pulls: [pull(0, 'tar'), pull(1, 'foam')] };
    const [pair] = dryingPairs(stack, studio, { toleranceMm: 0.05 });
    expect(pair!.areaMm2).toBeCloseTo(0.2, 6);
  });

  it.each([
    ['left', [-30, 40, 50, 20], 20 * 20],
    ['right', [180, 40, 50, 20], 20 * 20],
    ['upper', [40, -30, 20, 50], 20 * 20],
    ['lower', [40, 80, 20, 50], 20 * 20],
  ] as const)('should count nothing beyond the %s edge of the sheet', (_edge, rect, area) => {
    const studio = rectDrawer([rect, rect]);
    const [pair] = dryingPairs({ pulls: [pull(0, 'tar'), pull(1, 'foam')] }, studio, { toleranceMm: 0.05 });
    expect(pair!.areaMm2).toBeCloseTo(area, 6);
    const [x, y, w, h] = rect;
    const out = rectDrawer([
      [x, y, w, h],
      [x < 0 ? x : x > 100 ? 205 : x, y < 0 ? y : y > 60 ? 105 : y, x < 0 ? 25 : w, y < 0 ? 25 : h],
    ]);
    // Both lie over each other, but only beyond the sheet.
    expect(dryingPairs({ pulls: [pull(0, 'tar'), pull(1, 'foam')] }, out, { toleranceMm: 0.05 })).toEqual([]);
  });

  it('should keep a long overlap with one wide place, by all of its area', () => {
    // A strip 1 mm wide with one square of 3 mm sitting across it.
    const studio = rectDrawer([
      [10, 10, 60, 1],
      [0, 0, 200, 100],
    ]);
    studio.shapes[0]!.rings.push([20, -1, 23, -1, 23, 2, 20, 2]);
    studio.shapes[0]!.heightMm = 3;
    const stack = { pulls: [pull(0, 'tar'), pull(1, 'foam')] };
    const pair = dryingPairs(stack, studio, { toleranceMm: 2 })[0]!;
    expect(pair.areaMm2).toBeCloseTo(60 + 9 - 3, 5);
    expect(dryingPairs(stack, studio, { toleranceMm: 4 })).toEqual([]);
  });

  it('should follow the lay offsets and the turn about the sheet', () => {
    const studio = rectDrawer([
      [10, 10, 30, 20],
      [60, 10, 30, 20],
    ]);
    const apart = { pulls: [pull(0, 'tar'), pull(1, 'foam')] };
    expect(dryingPairs(apart, studio, { toleranceMm: 0.1 })).toEqual([]);
    const moved = { pulls: [pull(0, 'tar', { dxMm: 30, dyMm: 5 }), pull(1, 'foam')] };
    expect(dryingPairs(moved, studio, { toleranceMm: 0.1 })[0]!.areaMm2).toBeCloseTo(10 * 15, 6);
    const turned = { pulls: [pull(0, 'tar', { turnDeg: 180 }), pull(1, 'foam', { dxMm: 100, dyMm: 60 })] };
    expect(dryingPairs(turned, studio, { toleranceMm: 0.1 })[0]!.areaMm2).toBeCloseTo(30 * 20, 6);
  });

  it('should refuse a bad tolerance and an unknown screen in a sentence', () => {
    const studio = rectDrawer([[0, 0, 10, 10]]);
    const stack = { pulls: [pull(0, 'tar'), pull(7, 'foam')] };
    expect(() => dryingPairs(stack, studio, { toleranceMm: NaN })).toThrow(/tolerance/);
    expect(() => dryingPairs(stack, studio, { toleranceMm: 0.1 })).toThrow(/Pull 2 uses the screen 's7'/);
  });
});

describe('overlapsOf', () => {
  it('should give ΔE00 of the two orders over the paper for a stack of two', () => {
    const studio = rectDrawer([
      [0, 0, 50, 50],
      [25, 25, 50, 50],
    ]);
    const pulls = [pull(0, 'tar', { strokes: 2 }), pull(1, 'foam')];
    const edge = overlapsOf({ pulls }, studio, { toleranceMm: 0.1, minDeltaE: 1 })[0]!;
    const wanted = deltaE2000(colour(pulls, studio), colour([pulls[1]!, pulls[0]!], studio));
    expect(edge.deltaE).toBeCloseTo(wanted, 9);
    expect(edge).toMatchObject({ a: 0, b: 1 });
    expect(edgeWeight(edge)).toBeCloseTo(wanted * 625, 3);
  });

  it('should take the largest over the paper and over each pull that overlaps both', () => {
    const studio = rectDrawer([
      [0, 0, 50, 50],
      [25, 25, 50, 50],
      [30, 30, 90, 60],
      [150, 0, 20, 20],
    ]);
    const pulls = [pull(0, 'rust'), pull(1, 'foam'), pull(2, 'tar'), pull(3, 'tar', { strokes: 3 })];
    const both = (under: Pull[]): number =>
      deltaE2000(colour([...under, pulls[0]!, pulls[1]!], studio), colour([...under, pulls[1]!, pulls[0]!], studio));
    const edge = overlapsOf({ pulls }, studio, { toleranceMm: 0.1, minDeltaE: 0 })[0]!;
    expect(edge.deltaE).toBeCloseTo(Math.max(both([]), both([pulls[2]!])), 9);
  });

  it('should leave free swaps out: transparent inks, and one ink twice', () => {
    const studio = rectDrawer([
      [0, 0, 50, 50],
      [25, 25, 50, 50],
      [30, 30, 40, 40],
      [35, 35, 20, 20],
    ]);
    const pulls = [pull(0, 'weed'), pull(1, 'dusk'), pull(2, 'tar'), pull(3, 'tar', { strokes: 2 })];
    const options = { toleranceMm: 0.1, minDeltaE: 0.5 };
    expect(names(freeSwaps({ pulls }, studio, options))).toEqual(['01', '23']);
    expect(names(overlapsOf({ pulls }, studio, options))).toEqual(['02', '03', '12', '13']);
    expect(names(dryingPairs({ pulls }, studio, options))).toEqual(['01', '02', '03', '12', '13', '23']);
  });

  it('should not depend on the order of the stack', () => {
    const rects: Rect[] = [
      [0, 0, 60, 60],
      [20, 20, 60, 60],
      [40, 0, 60, 60],
      [30, 30, 100, 50],
    ];
    const studio = rectDrawer(rects);
    const pulls = rects.map((_, i) => pull(i, INKS[i]!.id));
    const byName = (stack: Pull[]): string[] =>
      overlapsOf({ pulls: stack }, studio, { toleranceMm: 0.1, minDeltaE: 0.1 })
        .map(({ a, b, deltaE }) => `${[stack[a]!.id, stack[b]!.id].sort().join()} ${deltaE.toFixed(9)}`)
        .sort();
    expect(byName([pulls[2]!, pulls[0]!, pulls[3]!, pulls[1]!])).toEqual(byName(pulls));
  });

  it('should print the same colours for all orders of a class when swaps are exactly free', () => {
    const studio = rectDrawer([
      [0, 0, 50, 50],
      [10, 10, 50, 50],
      [20, 20, 50, 50],
      [5, 5, 50, 50],
    ]);
    const pulls = [pull(0, 'weed'), pull(1, 'tar'), pull(2, 'dusk'), pull(3, 'weed', { strokes: 2 })];
    const { orders, groups } = groupOrders({ pulls }, studio, { toleranceMm: 0.1, minDeltaE: 1e-6 });
    expect(groups.length).toBeGreaterThan(1);
    const labOf = (order: number[]) =>
      colour(
        order.map((i) => pulls[i]!),
        studio,
      );
    const colours = groups.map((group) => {
      const first = labOf(orders[group[0]!]!);
      for (const index of group) expect(deltaE2000(labOf(orders[index]!), first)).toBeLessThan(1e-6);
      return first;
    });
    // All four lie over each other here, so groups that differ show it in this one colour.
    colours.forEach((a, i) => {
      colours.forEach((b, j) => {
        if (i < j) expect(deltaE2000(a, b)).toBeGreaterThan(0.01);
      });
    });
  });
});

describe('freeSwaps', () => {
  it('should change no colour by as much as the threshold, deep in dark piles too', () => {
    const random = randomFrom('piles');
    const unit = (): number => random.int(1000) / 1000;
    let swaps = 0;
    let beyond = 0;
    for (let pile = 0; pile < 400; pile++) {
      const n = 2 + random.int(4);
      const scatter = [0.005, 0.02, 0.1][random.int(3)]!;
      const inks = Array.from({ length: n }, (_, i) => {
        const [at, wide, high, s] = [unit() * 36, 4 + unit() * 12, 0.1 + 2 * unit(), scatter * unit()];
        return ink(
          `ink${i}`,
          (band) => 0.02 + high * Math.exp(-(((band - at) / wide) ** 2)),
          () => s,
        );
      });
      const studio = { ...rectDrawer(Array.from({ length: n }, (): Rect => [0, 0, 50, 50])), inks };
      const pulls = inks.map((each, i) => pull(i, each.id));
      for (const { a, b, deltaE } of freeSwaps({ pulls }, studio, { toleranceMm: 0.1, minDeltaE: 1 })) {
        if (b !== a + 1) continue;
        const swapped = [...pulls];
        [swapped[a], swapped[b]] = [swapped[b]!, swapped[a]!];
        const shown = deltaE2000(colour(pulls, studio), colour(swapped, studio));
        if (n === 2) expect(shown).toBeCloseTo(deltaE, 9);
        swaps++;
        if (shown >= 1) beyond++;
      }
    }
    expect(swaps).toBeGreaterThan(300);
    expect(beyond).toBe(0);
  });
});

describe('orderGraph', () => {
  it('should agree with the exact overlaps at fine rows', () => {
    const random = randomFrom('graph');
    const rects = Array.from({ length: 10 }, (): Rect => [random.int(150), random.int(60), 20 + random.int(60), 20 + random.int(40)]);
    const studio = rectDrawer(rects);
    const pulls = rects.map((_, i) => pull(i, INKS[i % 5]!.id));
    const grid = { widthMm: 200, heightMm: 100, rows: 1000 };
    const areas = pairOverlapAreas(buildCellMap(placedSpans({ pulls }, studio, grid), grid));
    const deltas = new SwapDeltas(studio);
    const films = pulls.map((each) => deltas.filmOf(each));
    const quick = orderGraph(areas, films, deltas, { minDeltaE: 0.5, minAreaMm2: 0.01 });
    const exact = overlapsOf({ pulls }, studio, { toleranceMm: 0.01, minDeltaE: 0.5 });
    expect(quick.map(({ a, b }) => [a, b])).toEqual(exact.map(({ a, b }) => [a, b]));
    quick.forEach((edge, i) => {
      expect(edge.areaMm2).toBeCloseTo(exact[i]!.areaMm2, 6);
      expect(edge.deltaE).toBeCloseTo(exact[i]!.deltaE, 9);
    });
  });
});

describe('groupOrders', () => {
  it('should merge groups when shapes move apart', () => {
    const studio = rectDrawer([
      [0, 0, 50, 50],
      [25, 0, 50, 50],
      [20, 20, 50, 50],
    ]);
    const pulls = [pull(0, 'tar'), pull(1, 'foam'), pull(2, 'rust')];
    const options = { toleranceMm: 0.1, minDeltaE: 0.5 };
    const near = groupOrders({ pulls }, studio, options);
    expect(near.count).toBe(6);
    const apart = groupOrders({ pulls: [pulls[0]!, { ...pulls[1]!, dxMm: 120 }, pulls[2]!] }, studio, options);
    expect(apart.count).toBe(2);
    expect(apart.groups.flat().sort((a, b) => a - b)).toEqual([0, 1, 2, 3, 4, 5]);
    expect(apart.count).toBe(
      Number(
        countOrderClasses(
          3,
          apart.edges.map(({ a, b }): [number, number] => [a, b]),
        ),
      ),
    );
    const { neighbours } = graphOf(
      3,
      apart.edges.map(({ a, b }): [number, number] => [a, b]),
    );
    for (const group of apart.groups) {
      const keys = new Set(group.map((i) => canonicalOrder(apart.orders[i]!, neighbours).join()));
      expect(keys.size).toBe(1);
    }
  });

  it('should see what lies on top: four films on one screen', () => {
    const studio = rectDrawer([[0, 0, 50, 50]]);
    const pulls = ['weed', 'foam', 'tar', 'rust'].map((name, i) => pull(0, name, { id: `q${i}`, strokes: i === 1 ? 6 : 1 }));
    const options = { toleranceMm: 0.1, minDeltaE: 0.5 };
    const { orders, groups, edges } = groupOrders({ pulls }, studio, options);
    const labs = orders.map((order) =>
      colour(
        order.map((at) => pulls[at]!),
        studio,
      ),
    );
    const pairwise = Number(
      countOrderClasses(
        4,
        edges.map(({ a, b }): [number, number] => [a, b]),
      ),
    );
    expect(groups.length).toBeLessThan(pairwise);
    for (const group of groups) {
      for (const one of group) for (const other of group) expect(deltaE2000(labs[one]!, labs[other]!)).toBeLessThanOrEqual(0.5);
    }
    groups.forEach((one, i) => {
      for (const other of groups.slice(i + 1)) {
        expect(Math.max(...one.flatMap((a) => other.map((b) => deltaE2000(labs[a]!, labs[b]!))))).toBeGreaterThan(0.5);
      }
    });
  });

  it('should take orders for one that differ on no more than the size', () => {
    const studio = rectDrawer([
      [0, 0, 50, 50],
      [45, 45.5, 50, 50],
    ]);
    const pulls = [pull(0, 'tar'), pull(1, 'foam')];
    const count = (minAreaMm2?: number): number =>
      groupOrders({ pulls }, studio, { toleranceMm: 0.1, minDeltaE: 0.5, ...(minAreaMm2 === undefined ? {} : { minAreaMm2 }) }).count;
    expect([count(), count(22.4), count(22.6), count(0)]).toEqual([1, 2, 1, 2]);
  });

  it('should add up places of one pair over the sheet', () => {
    const studio = rectDrawer([
      [0, 0, 4, 4],
      [0, 0, 4, 4],
    ]);
    for (const screen of studio.screens) {
      screen.placed = [20, 60].map((xMm) => ({ shape: 'shape0', xMm, yMm: 20, turnDeg: 0, scale: 1 }));
    }
    const stack = { pulls: [pull(0, 'tar'), pull(1, 'foam')] };
    expect(groupOrders(stack, studio, { toleranceMm: 0.1, minDeltaE: 0.5, minAreaMm2: 25 }).count).toBe(2);
    expect(groupOrders(stack, studio, { toleranceMm: 0.1, minDeltaE: 0.5, minAreaMm2: 33 }).count).toBe(1);
  });

  it('should refuse one or seven pulls, and a size below nothing', () => {
    const studio = rectDrawer([[0, 0, 50, 50]]);
    const options = { toleranceMm: 0.1, minDeltaE: 0.5 };
    expect(() => groupOrders({ pulls: [pull(0, 'tar')] }, studio, options)).toThrow(/two to six/);
    const seven = Array.from({ length: 7 }, (_, i) => pull(0, 'tar', { id: `q${i}` }));
    expect(() => groupOrders({ pulls: seven }, studio, options)).toThrow(/7 pulls were chosen/);
    expect(() => groupOrders({ pulls: seven.slice(0, 2) }, studio, { ...options, minAreaMm2: -1 })).toThrow(/-1 mm²/);
  });
});

describe('why the order of two pulls shows or not', () => {
  const studio = rectDrawer([
    [0, 0, 50, 50],
    [20, 0, 50, 50],
    [40, 0, 60, 50],
    [46, 46, 20, 20],
    [150, 0, 20, 20],
  ]);
  const reasons = (pulls: Pull[], minDeltaE = 0.5) =>
    Object.fromEntries(
      groupOrders({ pulls }, studio, { toleranceMm: 0.1, minDeltaE }).pairs.map(({ a, b, reason, hiddenUnder }) => [
        `${a}${b}`,
        reason === 'hidden' ? `hidden under ${hiddenUnder.join()}` : reason,
      ]),
    );

  it('should tell never meeting, meeting on too little, one ink, and films that only absorb', () => {
    const pulls = [pull(0, 'weed'), pull(1, 'dusk'), pull(2, 'weed', { strokes: 2 }), pull(3, 'tar'), pull(4, 'foam')];
    expect(reasons(pulls)).toEqual({
      '01': 'absorb',
      '02': 'same-ink',
      '03': 'small',
      '04': 'apart',
      '12': 'absorb',
      '13': 'shows',
      '14': 'apart',
      '23': 'shows',
      '24': 'apart',
      '34': 'apart',
    });
  });

  it('should not blame the inks when the threshold is raised over what shows', () => {
    expect(reasons([pull(0, 'tar'), pull(1, 'foam')])).toEqual({ '01': 'shows' });
    expect(reasons([pull(0, 'tar'), pull(1, 'foam')], 90)).toEqual({ '01': 'alike' });
    expect(reasons([pull(0, 'tar'), pull(1, 'tar', { strokes: 3 })])).toEqual({ '01': 'same-ink' });
  });

  it('should name the pull that hides a pair', () => {
    const under = { id: 'cover', dxMm: -20, strokes: 20 };
    expect(reasons([pull(0, 'rust', { dxMm: 20 }), pull(1, 'weed'), pull(2, 'foam', under)])).toMatchObject({ '01': 'hidden under 2' });
  });
});

describe('completeLink', () => {
  it('should cut a chain of near neighbours, the nearest first', () => {
    const chain = [
      { a: 0, b: 1, distance: 0.9 },
      { a: 1, b: 2, distance: 0.5 },
      { a: 2, b: 3, distance: 0.9 },
    ];
    expect(completeLink(5, chain)).toEqual([[0], [1, 2], [3], [4]]);
    expect(completeLink(3, [...chain.slice(0, 2), { a: 0, b: 2, distance: 1 }])).toEqual([[0, 1, 2]]);
  });
});
