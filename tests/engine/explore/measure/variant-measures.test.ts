import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { labD50 } from '../../../../src/engine/colour/lab.ts';
import { MEASURES, VariantMeter } from '../../../../src/engine/explore/measure/variant-measures.ts';
import { stackReflectance } from '../../../../src/engine/ink/film/film.ts';
import { buildCellMap } from '../../../../src/engine/stack/cell-map.ts';
import { stackLayers } from '../../../../src/engine/stack/layers.ts';
import { placedSpans } from '../../../../src/engine/stack/screen-spans.ts';
import type { Pull } from '../../../../src/engine/stack/types.ts';
import type { Studio } from '../../../../src/engine/studio/studio.ts';
import { pull, rectDrawer } from '../../order/drawer.ts';

const ROWS = 380;
/** Pixels a mm of the counted sheet. */
const SCALE = 8;
type Lab = [number, number, number];

function measure(drawer: Studio, pulls: Pull[]) {
  const { widthMm, heightMm } = drawer.paper;
  const grid = { widthMm, heightMm, rows: ROWS };
  const map = buildCellMap(placedSpans({ pulls }, drawer, grid), grid);
  return new VariantMeter(drawer).measure(map, stackLayers({ pulls }, drawer), pulls);
}

/** Ellipses, so that no edge lies on rows or columns; pixel middles are tested by the formula. */
function ellipses(seed: string, count: number) {
  const random = randomFrom(seed);
  const at = (least: number, most: number): number => least + random.int((most - least) * 100) / 100;
  const list = Array.from({ length: count }, () => ({ x: at(40, 160), y: at(30, 70), a: at(15, 45), b: at(12, 35) }));
  const drawer = rectDrawer(list.map(() => [0, 0, 1, 1]));
  list.forEach(({ x, y, a, b }, i) => {
    const ring = Array.from({ length: 720 }, (_, k) => (k * Math.PI) / 360).flatMap((t) => [a * Math.cos(t), b * Math.sin(t)]);
    const shape = drawer.shapes[i]!;
    (shape.rings as number[][]) = [ring];
    const placed = drawer.screens[i]!.placed[0]!;
    Object.assign(placed, { xMm: x, yMm: y, turnDeg: 0, scale: 1 });
  });
  return { drawer, list };
}

/** Everything from counted pixels: no rows, runs or cells. */
function count(drawer: Studio, list: ReturnType<typeof ellipses>['list'], pulls: readonly Pull[]) {
  const [w, h] = [200 * SCALE, 100 * SCALE];
  const cover = new Uint16Array(w * h);
  const coverOf = (xMm: number, yMm: number): number => {
    let bits = 0;
    for (let i = 0; i < list.length; i++) {
      const e = list[i]!;
      const [dx, dy] = [(xMm - e.x) / e.a, (yMm - e.y) / e.b];
      if (dx * dx + dy * dy < 1) bits |= 1 << i;
    }
    return bits;
  };
  for (let y = 0; y < h; y++) {
    for (let x = 0; x < w; x++) cover[y * w + x] = coverOf((x + 0.5) / SCALE, (y + 0.5) / SCALE);
  }
  const films = pulls.map((each) => drawer.inks.find((ink) => ink.id === each.ink)!);
  const labs = new Map<number, Lab>();
  const labOf = (bits: number): Lab => {
    let lab = labs.get(bits);
    if (lab === undefined)
      labs.set(
        bits,
        (lab = labD50(
          stackReflectance(
            films.filter((_, i) => (bits >> i) & 1),
            drawer.paper.reflectance,
          ),
        )),
      );
    return lab;
  };
  const swatches = [0, ...pulls.map((_, i) => 1 << i)].map(labOf);
  const areas = new Map<number, number>();
  for (const bits of cover) areas.set(bits, (areas.get(bits) ?? 0) + 1);
  const all = w * h;
  const share = (test: (bits: number) => boolean): number => {
    let sum = 0;
    for (const [bits, n] of areas) if (test(bits)) sum += n;
    return (sum / all) * 100;
  };
  const ls = [...areas.keys()].map((bits) => labOf(bits)[0]);
  const lightest = Math.max(...ls);
  let [mass, mx, my] = [0, 0, 0];
  cover.forEach((bits, i) => {
    const weight = lightest - labOf(bits)[0];
    mass += weight;
    mx += weight * (((i % w) + 0.5) / SCALE);
    my += weight * ((Math.floor(i / w) + 0.5) / SCALE);
  });
  return {
    coverage: share((bits) => bits !== 0),
    overprintColour: share((bits) => (bits & (bits - 1)) !== 0 && swatches.every((s) => deltaE2000(s, labOf(bits)) > 10)),
    darkest: Math.min(...ls),
    lightest,
    contrast: lightest - Math.min(...ls),
    imbalance: (Math.hypot(mx / mass - 100, my / mass - 50) / (Math.hypot(200, 100) / 2)) * 100,
    largestArea: (Math.max(...areas.values()) / all) * 100,
    ...edges(coverOf, (a, b) => deltaE2000(labOf(a), labOf(b))),
  };
}

/**
 * Contrast along edges by the Cauchy–Crofton formula: an edge is π/2 × as long as the mean, over
 * directions, of lines' crossings × their spacing (Santaló 1976, part I). Points 0.1 mm apart on lines
 * 0.4 mm apart in 24 directions, tested by the formula: pixels would lengthen edges by their stairs.
 */
function edges(coverOf: (xMm: number, yMm: number) => number, contrastOf: (a: number, b: number) => number) {
  const known = new Map<number, number>();
  const of = (a: number, b: number): number => {
    const key = a * 65_536 + b;
    let value = known.get(key);
    if (value === undefined) known.set(key, (value = contrastOf(a, b)));
    return value;
  };
  const [directions, spacing, step] = [24, 0.4, 0.1];
  const reach = Math.hypot(200, 100) / 2;
  let sum = 0;
  for (let d = 0; d < directions; d++) {
    const angle = ((d + 0.5) * Math.PI) / directions;
    const [cx, cy] = [Math.cos(angle), Math.sin(angle)];
    for (let p = -reach; p < reach; p += spacing) {
      let before = -1;
      for (let t = -reach; t < reach; t += step) {
        const x = 100 - p * cy + t * cx;
        const y = 50 + p * cx + t * cy;
        if (x < 0 || y < 0 || x >= 200 || y >= 100) continue;
        const bits = coverOf(x, y);
        if (before >= 0 && bits !== before) sum += of(before, bits);
        before = bits;
      }
    }
  }
  return { edgeContrast: ((Math.PI / 2) * sum * spacing) / directions / (200 * 100) };
}

describe('VariantMeter', () => {
  const inks = ['rust', 'weed', 'foam', 'dusk'];

  it('should agree with counted pixels within 1 %', () => {
    for (const seed of ['ebb', 'flood']) {
      const { drawer, list } = ellipses(seed, 6);
      const pulls = list.map((_, i) => pull(i, inks[i % inks.length]!));
      const found = measure(drawer, pulls);
      const counted = count(drawer, list, pulls);
      for (const key of ['coverage', 'overprintColour', 'darkest', 'lightest', 'contrast', 'edgeContrast', 'imbalance'] as const) {
        expect(Math.abs(found[key] / counted[key] - 1), `${seed}: ${key} ${found[key]} or ${counted[key]}`).toBeLessThan(0.01);
      }
      // The largest colour is at least the largest area of one cover.
      expect(found.mainColour).toBeGreaterThan(counted.largestArea * 0.99);
    }
  });

  it('should count what a print is pulled from', () => {
    const drawer = rectDrawer([
      [10, 10, 60, 50],
      [40, 30, 80, 60],
    ]);
    const echo = { ...pull(0, 'rust'), id: 'echo', dxMm: 2 };
    expect(measure(drawer, [pull(0, 'rust'), pull(1, 'weed'), echo])).toMatchObject({ pulls: 3, screens: 2, inks: 2, setUps: 3 });
  });

  it('should have words for every measure', () => {
    const drawer = rectDrawer([[10, 10, 60, 50]]);
    const found = measure(drawer, [pull(0, 'rust')]);
    expect(MEASURES.map((words) => words.key).sort()).toEqual(Object.keys(found).sort());
  });
});
