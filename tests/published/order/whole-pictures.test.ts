import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../src/engine/base/random.ts';
import { groupOrders } from '../../../src/engine/order/groups/group-orders.ts';
import { demoProject } from '../../../src/engine/project/demo.ts';
import type { Pull } from '../../../src/engine/stack/types.ts';
import type { Studio } from '../../../src/engine/studio/studio.ts';
import { ink, pull, rectDrawer } from '../../engine/order/drawer.ts';
import { coverAreas, printColours } from './raster.ts';

const OPTIONS = { toleranceMm: 0.05, minDeltaE: 1, minAreaMm2: 25 };
/** What the rasters' pixels leave open: areas this near to the size, mm². */
const OPEN_MM2 = 3;

interface Sheet {
  pulls: readonly Pull[];
  studio: Studio;
  /** Area of each set of pulls that covers a part of it, by bits. */
  areas: ReadonlyMap<number, number>;
}

/** Which pairs of orders differ for certain, are one for certain, or are too near the size to say. */
function judged({ pulls, studio, areas }: Sheet, orders: readonly number[][]) {
  const between = printColours(pulls, studio);
  const sets = [...areas].filter(([set]) => (set & (set - 1)) !== 0);
  const parts = orders.map((order) => sets.map(([set]) => order.filter((at) => (set & (1 << at)) !== 0)));
  return (one: number, other: number): 'two' | 'one' | 'open' => {
    let sure = 0;
    let perhaps = 0;
    sets.forEach(([, area], i) => {
      const deltaE = between(parts[one]![i]!, parts[other]![i]!);
      if (deltaE > OPTIONS.minDeltaE + 1e-7) sure += area;
      if (deltaE > OPTIONS.minDeltaE - 1e-7) perhaps += area;
    });
    if (sure > OPTIONS.minAreaMm2 + OPEN_MM2) return 'two';
    return perhaps < OPTIONS.minAreaMm2 - OPEN_MM2 ? 'one' : 'open';
  };
}

/** Faults of the engine's groups against the raster, and pairs that the raster leaves open. */
function faults(sheet: Sheet): { wrong: number; open: number; count: number } {
  const { pulls, studio } = sheet;
  const { orders, groups } = groupOrders({ pulls }, studio, OPTIONS);
  const judge = judged(sheet, orders);
  let wrong = orders.length === new Set(groups.flat()).size ? 0 : 1;
  let open = 0;
  // No two orders of a group are two pictures.
  for (const group of groups) {
    group.forEach((one, i) => {
      for (const other of group.slice(i + 1)) {
        const found = judge(one, other);
        if (found === 'two') wrong++;
        if (found === 'open') open++;
      }
    });
  }
  // No two groups could be one.
  groups.forEach((one, i) => {
    for (const other of groups.slice(i + 1)) {
      const found = one.flatMap((a) => other.map((b) => judge(a, b)));
      if (found.every((each) => each === 'one')) wrong++;
      else if (!found.includes('two')) open++;
    }
  });
  return { wrong, open, count: groups.length };
}

function choices(n: number, k: number): number[][] {
  if (k === 0) return [[]];
  return Array.from({ length: n }, (_, first) => first).flatMap((first) =>
    choices(n - first - 1, k - 1).map((rest) => [first, ...rest.map((at) => at + first + 1)]),
  );
}

/** Area of each set of the chosen pulls, from those of all. */
function areasOf(all: ReadonlyMap<number, number>, chosen: readonly number[]): Map<number, number> {
  const areas = new Map<number, number>();
  for (const [set, area] of all) {
    const part = chosen.reduce((bits, at, i) => bits | (((set >> at) & 1) << i), 0);
    areas.set(part, (areas.get(part) ?? 0) + area);
  }
  return areas;
}

const folder = new URL('../../../shapes/', import.meta.url);
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.svg'))
  .map((name) => ({ name, text: readFileSync(new URL(name, folder), 'utf8') }));
const { drawer, bench } = demoProject(files);

describe('groupOrders against a raster', () => {
  it('should agree on all choices of three and of four pulls of the demo', () => {
    const areas = coverAreas(bench, drawer, 0.25);
    const found = [3, 4].flatMap((k) =>
      choices(bench.length, k).map((chosen) =>
        faults({ pulls: chosen.map((at) => bench[at]!), studio: drawer, areas: areasOf(areas, chosen) }),
      ),
    );
    expect(found).toHaveLength(220 + 495);
    expect(found.filter(({ wrong }) => wrong > 0)).toEqual([]);
    expect(found.filter(({ open }) => open > 0).length).toBeLessThan(20);
    expect(new Set(found.map(({ count }) => count)).size).toBeGreaterThan(5);
  }, 600_000);

  it('should agree on 500 random stacks', () => {
    const random = randomFrom('whole pictures');
    let open = 0;
    for (let round = 0; round < 500; round++) {
      const sheet = randomSheet(random);
      const found = faults(sheet);
      expect({ round, wrong: found.wrong }).toEqual({ round, wrong: 0 });
      if (found.open > 0) open++;
    }
    expect(open).toBeLessThan(60);
  }, 600_000);
});

/** Two to five pulls of invented inks on rectangles, some of them on one screen or nearly the same. */
function randomSheet(random: ReturnType<typeof randomFrom>): Sheet {
  const n = random.int(12) === 0 ? 5 : 2 + random.int(3);
  const share = (): number => random.int(1000) / 1000;
  const rects = Array.from({ length: n }, (): [number, number, number, number] => [
    random.int(120),
    random.int(60),
    6 + random.int(70),
    6 + random.int(40),
  ]);
  const inks = Array.from({ length: n }, (_, i) => {
    const [at, wide, high, s] = [share() * 36, 4 + share() * 12, 2 * share(), [0, 0.01, 0.3, 2.5][random.int(4)]! * share()];
    return ink(
      `ink${i}`,
      (band) => 0.02 + high * Math.exp(-(((band - at) / wide) ** 2)),
      () => s,
    );
  });
  const studio = { ...rectDrawer(rects), inks };
  const pulls = rects.map((_, i) =>
    pull(random.int(5) === 0 ? 0 : i, `ink${random.int(6) === 0 ? 0 : i}`, {
      id: `q${i}`,
      dxMm: random.int(40) - 20,
      dyMm: random.int(20) - 10,
      turnDeg: random.int(4) === 0 ? random.int(90) : 0,
      strokes: 1 + random.int(3),
    }),
  );
  return { pulls, studio, areas: coverAreas(pulls, studio, 0.25) };
}

describe('groupOrders against Stanley (1973)', () => {
  // Where nothing is hidden, each orientation of the overlaps without a circle is a picture of its own.
  it('should count the acyclic orientations when every overlap has a place of its own', () => {
    const random = randomFrom('stanley');
    for (let round = 0; round < 60; round++) {
      const n = 2 + (round % 5);
      const edges = choices(n, 2).filter(() => random.int(2) === 0) as [number, number][];
      const { pulls, studio } = privatePlaces(n, edges);
      expect(groupOrders({ pulls }, studio, OPTIONS).count).toBe(acyclicOrientations(n, edges));
    }
  });

  // Stanley's worked values: the triangle 6, the square 14, the complete graph on six 720.
  it('should count 6, 14 and 720', () => {
    const count = (n: number, edges: [number, number][]): number => {
      const { pulls, studio } = privatePlaces(n, edges);
      return groupOrders({ pulls }, studio, OPTIONS).count;
    };
    expect(count(3, choices(3, 2) as [number, number][])).toBe(6);
    expect(count(4, [[0, 1], [1, 2], [2, 3], [0, 3]])).toBe(14); // oxfmt-ignore
    expect(count(6, choices(6, 2) as [number, number][])).toBe(720);
  });
});

/** Pulls that meet pair by pair, each pair on a square of its own, in inks whose order shows. */
function privatePlaces(n: number, edges: readonly [number, number][]): { pulls: Pull[]; studio: Studio } {
  const studio = rectDrawer(Array.from({ length: n }, (): [number, number, number, number] => [0, 0, 12, 12]));
  studio.screens.forEach((screen, at) => {
    screen.placed = edges.flatMap(([a, b], i) =>
      a === at || b === at ? [{ shape: 'shape0', xMm: 10 + 20 * (i % 9), yMm: 10 + 20 * Math.floor(i / 9), turnDeg: 0, scale: 1 }] : [],
    );
    if (screen.placed.length === 0) screen.placed = [{ shape: 'shape0', xMm: 10 + 20 * at, yMm: 90, turnDeg: 0, scale: 1 }];
  });
  const inks = Array.from({ length: n }, (_, i) =>
    ink(
      `ink${i}`,
      (band) => (Math.abs(band - 6 * i) < 6 ? 0.1 : 0.8),
      () => 0.5,
    ),
  );
  return { pulls: studio.screens.map((_, i) => pull(i, `ink${i}`)), studio: { ...studio, inks } };
}

/** By trying all ways round of all edges: those without a circle. */
function acyclicOrientations(n: number, edges: readonly [number, number][]): number {
  let count = 0;
  for (let ways = 0; ways < 2 ** edges.length; ways++) {
    const arcs = edges.map(([a, b], i) => ((ways >> i) & 1 ? [b, a] : [a, b]));
    const left = new Set(Array.from({ length: n }, (_, at) => at));
    for (let gone = true; gone;) {
      const free = [...left].find((at) => !arcs.some(([from, to]) => to === at && left.has(from!)));
      gone = free !== undefined && left.delete(free);
    }
    if (left.size === 0) count++;
  }
  return count;
}
