import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { oklabFromLinearSrgb } from '../../../../src/engine/colour/oklab.ts';
import { linearSrgbFromReflectance } from '../../../../src/engine/colour/srgb.ts';
import { type Descriptor, descriptorDistance } from '../../../../src/engine/explore/look/descriptor.ts';
import {
  Describer,
  DESCRIPTOR_LENGTH,
  descriptorOfText,
  descriptorText,
  squaredSteps,
} from '../../../../src/engine/explore/look/descriptor.ts';
import { createExplorer } from '../../../../src/engine/explore/search/explorer.ts';
import { Spread } from '../../../../src/engine/explore/search/spread.ts';
import { stackReflectance } from '../../../../src/engine/ink/film/film.ts';
import { pull, rectDrawer } from '../../order/drawer.ts';

function points(seed: string, count: number): Descriptor[] {
  const random = randomFrom(seed);
  // Clumps, since evenly strewn points are spread by any picks.
  const middles = Array.from({ length: 4 }, () => [random.int(200), random.int(200)]);
  return Array.from({ length: count }, () => {
    const at = new Uint8Array(DESCRIPTOR_LENGTH);
    const middle = random.pick(middles);
    at[0] = middle[0]! + random.int(50);
    at[40] = middle[1]! + random.int(50);
    return at;
  });
}

const distance = (a: Descriptor, b: Descriptor): number => Math.sqrt(squaredSteps(a, b, Infinity));

function* choose(n: number, k: number, from = 0): Generator<number[]> {
  if (k === 0) yield [];
  else for (let i = from; i <= n - k; i++) for (const rest of choose(n, k - 1, i + 1)) yield [i, ...rest];
}

describe('Spread', () => {
  it('should pick within twice the optimum, found by brute force', () => {
    // Gonzalez (1985): the farthest-first radius is at most twice the least radius of k centres; and
    // the least distance between picks at least half the greatest possible (Ravi et al. 1994).
    for (let trial = 0; trial < 25; trial++) {
      const all = points(`trial ${trial}`, 13);
      for (const k of [2, 3, 4, 5]) {
        const spread = new Spread<number>();
        all.forEach((at, i) => spread.offer(i, at));
        const picks = Array.from({ length: k }, () => spread.take()!.item);
        const radius = (centres: number[]): number => Math.max(...all.map((at) => Math.min(...centres.map((c) => distance(at, all[c]!)))));
        const apart = (some: number[]): number =>
          Math.min(...some.flatMap((a, i) => some.slice(0, i).map((b) => distance(all[a]!, all[b]!))));
        let [bestRadius, bestApart] = [Infinity, 0];
        for (const some of choose(13, k)) {
          bestRadius = Math.min(bestRadius, radius(some));
          bestApart = Math.max(bestApart, apart(some));
        }
        expect(radius(picks)).toBeLessThanOrEqual(2 * bestRadius + 1e-9);
        expect(apart(picks)).toBeGreaterThanOrEqual(bestApart / 2 - 1e-9);
      }
    }
  });

  it('should keep away from what was seen, and forget the nearest when full', () => {
    const spread = new Spread<number>(5);
    const all = points('seen', 30);
    spread.avoid(all[0]!);
    all.forEach((at, i) => spread.offer(i, at));
    expect(spread.size).toBe(5);
    const farthest = Math.max(...all.map((at) => distance(at, all[0]!)));
    expect(distance(spread.take()!.at, all[0]!)).toBe(farthest);
  });
});

describe('Describer', () => {
  const rects = [
    [10, 10, 120, 80],
    [60, 20, 100, 60],
    [20, 40, 60, 40],
  ] as const;
  const drawer = rectDrawer(rects);
  const describer = new Describer(drawer);
  const base = [pull(0, 'rust'), pull(1, 'foam'), pull(2, 'dusk')];
  const at = describer.describe(base);

  it('should give lightness areas as pixels counted and averaged give them', () => {
    const [columns, rows, scale] = [6, 8, 4];
    const light = (x: number, y: number): Float64Array => {
      const films = base.filter(
        (_, i) => x > rects[i]![0] && x < rects[i]![0] + rects[i]![2] && y > rects[i]![1] && y < rects[i]![1] + rects[i]![3],
      );
      const rgb = linearSrgbFromReflectance(
        stackReflectance(
          films.map((each) => drawer.inks.find(({ id }) => id === each.ink)!),
          drawer.paper.reflectance,
        ),
        new Float64Array(3),
      );
      const white = linearSrgbFromReflectance(drawer.paper.reflectance, new Float64Array(3));
      return rgb.map((value, i) => Math.min(1, Math.max(0, value / white[i]!)));
    };
    for (let area = 0; area < columns * rows; area += 5) {
      const [x0, y0] = [((area % columns) * 200) / columns, (Math.floor(area / columns) * 100) / rows];
      const sum = [0, 0, 0];
      const [w, h] = [Math.round((200 / columns) * scale * 4), Math.round((100 / rows) * scale)];
      for (let i = 0; i < w; i++)
        for (let k = 0; k < h; k++)
          light(x0 + ((i + 0.5) * 200) / columns / w, y0 + ((k + 0.5) * 100) / rows / h).forEach((v, c) => (sum[c]! += v / w / h));
      const [l] = oklabFromLinearSrgb(sum[0]!, sum[1]!, sum[2]!);
      // One step is the rounding of whole numbers, one a row of pixels on an edge.
      expect(Math.abs(at[DESCRIPTOR_LENGTH - 48 + area]! - (l * 1024) / Math.sqrt(48))).toBeLessThan(2);
    }
  });

  it('should find small changes small and large ones large', () => {
    const to = (pulls: typeof base): number => descriptorDistance(at, describer.describe(pulls));
    const nudged = to([{ ...base[0]!, dxMm: 1 }, base[1]!, base[2]!]);
    const recoloured = to([{ ...base[0]!, ink: 'weed' }, base[1]!, base[2]!]);
    expect(to(base.map((each) => ({ ...each, id: `${each.id}x` })))).toBe(0);
    expect(nudged).toBeGreaterThan(0);
    expect(recoloured).toBeGreaterThan(5 * nudged);
    expect(descriptorDistance(at, describer.describe([]))).toBeGreaterThan(5 * nudged);
  });

  it('should survive being text', () => {
    expect(descriptorOfText(descriptorText(at))).toEqual(at);
    expect(descriptorOfText('')).toBeNull();
    expect(descriptorOfText('z'.repeat(DESCRIPTOR_LENGTH * 2))).toBeNull();
  });
});

describe('createExplorer', () => {
  const drawer = rectDrawer(Array.from({ length: 8 }, (_, i) => [10 + 18 * i, 10 + 5 * i, 70, 40] as const));
  const bench = [0, 1, 2, 3, 4, 5].map((i) => pull(i, ['tar', 'foam', 'rust'][i % 3]!));
  const explore = {
    seed: 'ebb',
    count: 24,
    order: true,
    recolour: true,
    palette: ['tar', 'foam', 'rust', 'weed'],
    offsetRangeMm: 2,
    leaveOut: 2,
    bringIn: 2,
    holds: [],
    minDeltaE: 1,
  };
  const run = (seen: { key: string; look: string }[], seed = 'ebb') => {
    const explorer = createExplorer({ drawer, bench, explore: { ...explore, seed } }, seen);
    const found = [];
    while (!explorer.done) found.push(...explorer.step(5));
    return found.map((variant) => ({ key: variant.key, at: explorer.lookOf(variant.index)! }));
  };
  const least = (some: { at: Descriptor }[], others: { at: Descriptor }[]): number =>
    Math.min(...some.flatMap((a) => others.filter((b) => b !== a).map((b) => descriptorDistance(a.at, b.at))));

  it('should hang the most different prints first', () => {
    const wall = run([]);
    // The first prints lie apart the most: each further one has more neighbours.
    expect(least(wall.slice(0, 8), wall.slice(0, 8))).toBeGreaterThan(least(wall, wall));
  });

  it('should show other prints once some were seen', () => {
    const first = run([]);
    const seen = first.map(({ key, at }) => ({ key, look: descriptorText(at) }));
    const plain = run([], 'flood');
    const fresh = run(seen, 'flood');
    expect(fresh.some(({ key }) => first.some((each) => each.key === key))).toBe(false);
    expect(least(fresh.slice(0, 8), first)).toBeGreaterThan(least(plain.slice(0, 8), first));
    expect(run(seen, 'flood').map((each) => each.key)).toEqual(fresh.map((each) => each.key));
  });
});
