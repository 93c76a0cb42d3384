import { differenceCiede2000 } from 'culori';
import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { labD50 } from '../../../../src/engine/colour/lab.ts';
import { colourAreas } from '../../../../src/engine/explore/measure/colour-areas.ts';
import { edgeMeasure } from '../../../../src/engine/explore/measure/edges.ts';
import { mapFigures } from '../../../../src/engine/explore/measure/map-figures.ts';
import { measureVariant } from '../../../../src/engine/explore/measure/measures.ts';
import { stackReflectance } from '../../../../src/engine/ink/film/film.ts';
import { cellLab } from '../../../../src/engine/stack/appearance.ts';
import { buildCellMap } from '../../../../src/engine/stack/cell-map.ts';
import { stackLayers } from '../../../../src/engine/stack/layers.ts';
import { placedSpans } from '../../../../src/engine/stack/screen-spans.ts';
import type { Pull } from '../../../../src/engine/stack/types.ts';
import type { Studio } from '../../../../src/engine/studio/studio.ts';
import { pull, rectDrawer } from '../../order/drawer.ts';
import { numbersFrom } from '../../stack/fixtures.ts';

type Lab = [number, number, number];
type Rect = readonly [number, number, number, number];

function print(drawer: Studio, pulls: Pull[], rows: number) {
  const { widthMm, heightMm } = drawer.paper;
  const grid = { widthMm, heightMm, rows };
  const map = buildCellMap(placedSpans({ pulls }, drawer, grid), grid);
  return { map, lab: cellLab(map, stackLayers({ pulls }, drawer), drawer.paper.reflectance) };
}

/** The colour under each covering pull, straight from the films. */
function colourOf(drawer: Studio, pulls: readonly Pull[]): Lab {
  const films = pulls.map((each) => drawer.inks.find((ink) => ink.id === each.ink)!);
  return labD50(stackReflectance(films, drawer.paper.reflectance));
}

/** Pixel counting at 4 pixels a mm, by testing each pixel against each rectangle. */
function countPixels(drawer: Studio, rects: readonly Rect[], pulls: readonly Pull[]) {
  const scale = 4;
  const covers = new Map<string, number>();
  for (let y = 0; y < 100 * scale; y++) {
    for (let x = 0; x < 200 * scale; x++) {
      const [px, py] = [(x + 0.5) / scale, (y + 0.5) / scale];
      const cover = rects
        .map(([rx, ry, w, h], i) => (px > rx && px < rx + w && py > ry && py < ry + h ? i : -1))
        .filter((i) => i >= 0)
        .join();
      covers.set(cover, (covers.get(cover) ?? 0) + 1 / scale ** 2);
    }
  }
  return [...covers].map(([cover, areaMm2]) => {
    const over = cover === '' ? [] : cover.split(',').map((i) => pulls[Number(i)]!);
    return { over, areaMm2, lab: colourOf(drawer, over) };
  });
}

describe('measureVariant', () => {
  const rects: Rect[] = [
    [10, 10, 60, 50],
    [40, 30, 80, 60],
    [100, 20, 50, 30],
    [20, 40, 120, 20],
  ];
  const drawer = rectDrawer(rects);
  const pulls = [pull(0, 'rust'), pull(1, 'weed'), pull(2, 'foam'), pull(3, 'dusk')];
  const { map, lab } = print(drawer, pulls, 400);
  const swatches = [[], ...pulls.map((each) => [each])].map((each) => colourOf(drawer, each));
  const measures = measureVariant(map, lab, swatches);
  const pixels = countPixels(drawer, rects, pulls);

  it('should agree with counted pixels on coverage, lightness and overprint colours', () => {
    const covered = pixels.filter((p) => p.over.length > 0).reduce((sum, p) => sum + p.areaMm2, 0);
    expect(measures.coverage).toBeCloseTo(covered / 20_000, 6);
    expect(measures.lightness[0]).toBeCloseTo(Math.min(...pixels.map((p) => p.lab[0])), 6);
    expect(measures.lightness[1]).toBeCloseTo(Math.max(...pixels.map((p) => p.lab[0])), 6);
    const area = pixels
      .filter((p) => p.over.length >= 2 && swatches.every((s) => deltaE2000(s, p.lab) > 10))
      .reduce((sum, p) => sum + p.areaMm2, 0);
    expect(area).toBeGreaterThan(500);
    expect(measures.overprintColourMm2).toBeCloseTo(area, 3);
  });

  it('should agree with counted pixels on the area of each colour', () => {
    const all = colourAreas(map, lab, mapFigures(map).bySize, 1e-6);
    expect(all.reduce((sum, c) => sum + c.areaMm2, 0)).toBeCloseTo(20_000, 6);
    for (const pixel of pixels) {
      const found = all.find((c) => deltaE2000(c.lab, pixel.lab) < 1e-6)!;
      const same = pixels.filter((p) => deltaE2000(p.lab, pixel.lab) < 1e-6);
      expect(found.areaMm2).toBeCloseTo(
        same.reduce((sum, p) => sum + p.areaMm2, 0),
        3,
      );
    }
    expect(measures.colours).toBeLessThanOrEqual(all.length);
  });

  it('should put the centre of darkness where counted rectangles put it', () => {
    const one = rectDrawer([[150, 50, 40, 40]]);
    const dark = print(one, [pull(0, 'tar')], 200);
    const off = Math.hypot(170 - 100, 70 - 50) / (Math.hypot(200, 100) / 2);
    expect(measureVariant(dark.map, dark.lab, []).imbalance).toBeCloseTo(off, 6);
    const centred = rectDrawer([[80, 30, 40, 40]]);
    const middle = print(centred, [pull(0, 'tar')], 200);
    expect(measureVariant(middle.map, middle.lab, []).imbalance).toBeCloseTo(0, 6);
    const bare = print(centred, [], 20);
    expect(measureVariant(bare.map, bare.lab, [])).toMatchObject({ imbalance: 0, edgeContrast: 0, coverage: 0 });
  });
});

describe('colourAreas', () => {
  // The rule as it is said, with culori 4 for the differences.
  it('should find what comparing each cell with each colour finds', () => {
    const reference = differenceCiede2000();
    const tagged = ([l, a, b]: Lab) => ({ mode: 'lab65' as const, l, a, b });
    const next = numbersFrom('colours told apart');
    for (const [cells, spread] of [
      [600, 40],
      [900, 25],
      [300, 6],
    ] as const) {
      const lab = Float64Array.from({ length: cells * 3 }, (_, i) => (i % 3 === 0 ? 50 : 0) + (next() - 0.5) * spread);
      // Few different areas, so that many are equal; some cells take nothing.
      const areaMm2 = Float64Array.from({ length: cells }, () => Math.floor(next() * 40) / 7);
      const order = Array.from({ length: cells }, (_, i) => i).filter((i) => areaMm2[i]! > 0);
      order.sort((a, b) => areaMm2[b]! - areaMm2[a]! || a - b);
      const expected: { lab: Lab; areaMm2: number }[] = [];
      for (const cell of order) {
        const own = Array.from(lab.subarray(cell * 3, cell * 3 + 3)) as Lab;
        const found = expected.find((colour) => reference(tagged(colour.lab), tagged(own)) <= 2);
        if (found) found.areaMm2 += areaMm2[cell]!;
        else expected.push({ lab: own, areaMm2: areaMm2[cell]! });
      }
      expected.sort((a, b) => b.areaMm2 - a.areaMm2);
      expect(expected.length).toBeLessThan(order.length / 1.2);
      expect(colourAreas({ areaMm2 }, lab, Uint32Array.from(order))).toEqual(expected);
    }
  });
});

describe('cells by size', () => {
  it('should sort cells of about one size as well as of very different ones', () => {
    const next = numbersFrom('sizes');
    for (const size of [() => 3 + next() * 1e-9, () => 10 ** (next() * 40 - 30), () => 1 + Math.floor(next() * 3), () => 0]) {
      const areaMm2 = Float64Array.from({ length: 3000 }, () => (next() < 0.1 ? 0 : size()));
      const order = Array.from(areaMm2.keys()).filter((cell) => areaMm2[cell]! > 0);
      order.sort((a, b) => areaMm2[b]! - areaMm2[a]! || a - b);
      const sheet = { widthMm: 9, heightMm: 9, rows: 1, screens: 0, words: 1, cover: new Uint32Array(3000) };
      const bare = { rowStart: Uint32Array.of(0, 1), runEndMm: Float64Array.of(9), runCell: Uint32Array.of(0) };
      expect(Array.from(mapFigures({ ...sheet, ...bare, cells: 3000, areaMm2 }).bySize)).toEqual(order);
    }
  });
});

describe('edgeMeasure', () => {
  it('should give the outline of a rectangle, times its contrast', () => {
    const drawer = rectDrawer([[20, 10, 60, 40]]);
    const { map, lab } = print(drawer, [pull(0, 'tar')], 100);
    const edges = edgeMeasure(map, lab);
    expect(edges.lengthMm).toBeCloseTo(200, 6);
    const contrast = deltaE2000(colourOf(drawer, []), colourOf(drawer, [pull(0, 'tar')]));
    expect(edges.contrast).toBeCloseTo(200 * contrast, 4);
  });

  it('should give the outlines of polygons within 1 %', () => {
    const rings: [string, number[], number][] = [
      [
        'circle',
        Array.from({ length: 360 }, (_, i) => (i * Math.PI) / 180).flatMap((t) => [40 * Math.cos(t), 40 * Math.sin(t)]),
        2 * Math.PI * 40,
      ],
      ['triangle', [0, 0, 80, 25, 15, 70], Math.hypot(80, 25) + Math.hypot(65, 45) + Math.hypot(15, 70)],
      ['flat triangle', [0, 0, 120, 9, 60, 30], Math.hypot(120, 9) + Math.hypot(60, 21) + Math.hypot(60, 30)],
    ];
    for (const [name, ring, wanted] of rings) {
      const drawer = rectDrawer([[60, 10, 80, 80]]);
      drawer.shapes[0]!.rings = [ring];
      const { map, lab } = print(drawer, [pull(0, 'tar')], 400);
      expect(Math.abs(edgeMeasure(map, lab).lengthMm / wanted - 1), name).toBeLessThan(0.01);
    }
  });

  it('should not see edges between areas of one colour', () => {
    const plain = rectDrawer([
      [20, 10, 60, 40],
      [40, 20, 20, 20],
    ]);
    const [tar, ...rest] = plain.inks;
    const drawer = { ...plain, inks: [{ ...tar!, kx: tar!.kx.map(() => 50) }, ...rest] };
    // The second pull lies under a film that hides it.
    const { map, lab } = print(drawer, [pull(1, 'foam'), pull(0, 'tar')], 100);
    expect(edgeMeasure(map, lab).lengthMm).toBeCloseTo(200, 6);
  });
});
