import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { labD50 } from '../../../../src/engine/colour/lab.ts';
import { OnwardPainter } from '../../../../src/engine/explore/onward/onward-painter.ts';
import { type OnwardAsked, type OnwardResult, onwardSteps } from '../../../../src/engine/explore/onward/onward.ts';
import { overlay } from '../../../../src/engine/explore/onward/overlay.ts';
import { demoProject } from '../../../../src/engine/project/demo.ts';
import { colourCells } from '../../../../src/engine/stack/appearance.ts';
import { buildCellMap } from '../../../../src/engine/stack/cell-map.ts';
import { stackLayers } from '../../../../src/engine/stack/layers.ts';
import { paintThumbnail } from '../../../../src/engine/stack/paint.ts';
import { SpanCache } from '../../../../src/engine/stack/screen-spans.ts';
import type { Pull } from '../../../../src/engine/stack/types.ts';
import { pullOf, smallProject } from '../../../helpers/small-project.ts';

const { drawer } = smallProject();
/** Pixels of 10 mm: every edge of the rectangles lies between two of them. */
const PIXEL = 10;
const COLUMNS = drawer.paper.widthMm / PIXEL;
const ROWS = drawer.paper.heightMm / PIXEL;
/** What the screens of the small project cover, mm: left, top, right, bottom. */
const COVERS: Record<string, [number, number, number, number]> = {
  s1: [100, 150, 300, 250],
  s2: [180, 120, 280, 320],
  s3: [140, 210, 340, 310],
};

function all(pulls: readonly Pull[], asked: OnwardAsked, studio = drawer): OnwardResult {
  const steps = onwardSteps(pulls, studio, asked);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/** A film over a ground by Kubelka's hyperbolic solution (J. Opt. Soc. Am. 38, 448, 1948). */
function over(ground: readonly number[], kx: readonly number[], sx: readonly number[]): number[] {
  return ground.map((g, i) => {
    const [k, s] = [kx[i]!, Math.max(1e-9, sx[i]!)];
    const a = (k + s) / s;
    const b = Math.sqrt(a * a - 1);
    const coth = b * s < 1e-12 ? Infinity : 1 / Math.tanh(b * s);
    return coth === Infinity ? g : (1 - g * (a - b * coth)) / (a - g + b * coth);
  });
}

/** The sheet painted pixel by pixel: Lab of each, from the rectangles and the films alone. */
function raster(pulls: readonly Pull[]): [number, number, number][] {
  const known = new Map<string, [number, number, number]>();
  return Array.from({ length: COLUMNS * ROWS }, (_, at) => {
    const [x, y] = [((at % COLUMNS) + 0.5) * PIXEL, (Math.floor(at / COLUMNS) + 0.5) * PIXEL];
    const here = pulls.filter(({ screen, dxMm, dyMm }) => {
      const [left, top, right, bottom] = COVERS[screen]!;
      return x > left + dxMm && x < right + dxMm && y > top + dyMm && y < bottom + dyMm;
    });
    const key = here.map(({ ink }) => ink).join('+');
    let lab = known.get(key);
    if (lab === undefined) {
      let bands = [...drawer.paper.reflectance];
      for (const { ink: id } of here) {
        const ink = drawer.inks.find((each) => each.id === id)!;
        bands = over(bands, ink.kx, ink.sx);
      }
      known.set(key, (lab = [...labD50(bands)] as [number, number, number]));
    }
    return lab;
  });
}

function meanDifference(a: readonly (readonly [number, number, number])[], b: typeof a): number {
  const known = new Map<string, number>();
  return (
    a.reduce((sum, lab, i) => {
      const key = `${lab.join()} ${b[i]!.join()}`;
      if (!known.has(key)) known.set(key, deltaE2000(lab, b[i]!));
      return sum + known.get(key)!;
    }, 0) / a.length
  );
}

/** Contrast of edges from the pixels: every side between two of them, by its ΔE. */
function edges(a: readonly (readonly [number, number, number])[]): number {
  let sum = 0;
  for (let at = 0; at < a.length; at++) {
    const beside = [at % COLUMNS === COLUMNS - 1 ? null : at + 1, at + COLUMNS < a.length ? at + COLUMNS : null];
    for (const other of beside) if (other !== null && a[at] !== a[other]) sum += PIXEL * deltaE2000(a[at]!, a[other]!);
  }
  return sum / (drawer.paper.widthMm * drawer.paper.heightMm);
}

const DOWN = [pullOf('a', 's1', 'rust', { dxMm: 10 }), pullOf('b', 's2', 'weed', { dyMm: -10 })];
const AIM = [...DOWN, pullOf('c', 's3', 'tar'), pullOf('d', 's1', 'foam')];
const ASKED: OnwardAsked = {
  screens: ['s1', 's2', 's3'],
  inks: ['rust', 'weed', 'foam', 'tar'],
  most: 1,
  by: 'change',
  count: 12,
  rows: ROWS,
};

describe('onwardSteps', () => {
  it('should measure prints as painting every pixel does, from the sheet as it was really pulled', () => {
    const before = raster(DOWN);
    const aim = raster(AIM);
    const { now, found, tried } = all(DOWN, { ...ASKED, towards: AIM });
    expect(tried).toBe(12);
    expect(now.change).toBe(0);
    expect(now.edgeContrast).toBeCloseTo(edges(before), 6);
    expect(now.distance!).toBeCloseTo(meanDifference(before, aim), 6);
    expect(found[0]!.length).toBeGreaterThan(6);
    for (const { more, change, edgeContrast, distance } of found[0]!) {
      const after = raster([...DOWN, ...more]);
      expect(change).toBeCloseTo(meanDifference(before, after), 6);
      expect(edgeContrast).toBeCloseTo(edges(after), 6);
      expect(distance!).toBeCloseTo(meanDifference(after, aim), 6);
    }
  });

  it.each(['change', 'softer', 'sharper', 'nearer'] as const)('should put first what painting all of them finds best by %s', (by) => {
    const before = raster(DOWN);
    const aim = raster(AIM);
    const scores = ASKED.screens.flatMap((screen) =>
      ASKED.inks.map((ink) => {
        const after = raster([...DOWN, pullOf('x', screen, ink)]);
        const score = {
          change: -meanDifference(before, after),
          softer: edges(after),
          sharper: -edges(after),
          nearer: meanDifference(after, aim),
        }[by];
        return { of: `${screen} ${ink}`, score };
      }),
    );
    const best = Math.min(...scores.map(({ score }) => score));
    const { found } = all(DOWN, { ...ASKED, by, towards: AIM });
    const named = found[0]!.map(({ more }) => `${more[0]!.screen} ${more[0]!.ink}`);
    const ranks = named.map((of) => scores.find((each) => each.of === of)!.score);
    expect(ranks[0]).toBeCloseTo(best, 6);
    expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
  });

  it('should find the last two pulls of a print again when it shall come nearer to it', () => {
    const { found, all: whole } = all(DOWN, { ...ASKED, by: 'nearer', towards: AIM, most: 2, width: 12 });
    expect(found).toHaveLength(2);
    expect(found[1]![0]!.distance).toBeCloseTo(0, 9);
    expect(found[1]![0]!.more.map(({ screen, ink }) => `${screen} ${ink}`)).toEqual(['s3 tar', 's1 foam']);
    expect(whole[0]).toBe(true);
  });

  it('should try screens beside their places when asked, and give the same again', () => {
    const asked = { ...ASKED, movedMm: 10, most: 2 };
    const result = all(DOWN, asked);
    expect(result.found[0]!.some(({ more }) => more[0]!.dxMm !== 0 || more[0]!.dyMm !== 0)).toBe(true);
    expect(all(DOWN, asked)).toEqual(result);
  });

  it('should refuse in one sentence what cannot go on', () => {
    const down = Array.from({ length: 200 }, (_, i) => pullOf(`p${i}`, 's1', 'rust'));
    expect(() => all(down, ASKED)).toThrow('200 pulls are down, and a sheet takes at most 200; nothing can follow.');
    expect(() => all(down.slice(0, 199), { ...ASKED, most: 3 })).toThrow(
      '199 pulls are down, and a sheet takes at most 200; ask for 1 more at most.',
    );
    expect(() => all(DOWN, { ...ASKED, screens: [] })).toThrow('No screen is at hand to go on with; say of a screen that it is there.');
    expect(() => all(DOWN, { ...ASKED, inks: [] })).toThrow('No ink is at hand to go on with; say of an ink that it is there.');
    expect(() => all(DOWN, { ...ASKED, by: 'nearer' })).toThrow('Choose the print that it shall come nearer to.');
  });
});

describe('a painted ground', () => {
  const folder = new URL('../../../../shapes/', import.meta.url);
  const files = readdirSync(folder).map((name) => ({ name, text: readFileSync(new URL(name, folder), 'utf8') }));
  const { drawer: studio, bench } = demoProject(files);
  const random = randomFrom('onward');
  const moved = studio.screens.slice(0, 12).map(({ id }, i): Pull =>
    pullOf(`m${i}`, id, studio.inks[i % studio.inks.length]!.id, {
      dxMm: random.int(400) / 10 - 20,
      dyMm: random.int(400) / 10 - 20,
      turnDeg: i % 3 === 0 ? 7 : 0,
    }),
  );

  it('should part a map by one more screen as a map of them all does', () => {
    const grid = { widthMm: studio.paper.widthMm, heightMm: studio.paper.heightMm, rows: 200 };
    const spans = new SpanCache(studio);
    const placed = spans.place({ pulls: moved }, grid);
    const ground = buildCellMap(placed.slice(0, -1), grid);
    const { map, below } = overlay(ground, placed.at(-1)!);
    const whole = buildCellMap(placed, grid);
    const areas = (of: typeof whole, keyOf: (cell: number) => string): Map<string, number> => {
      const sums = new Map<string, number>();
      for (let cell = 0; cell < of.cells; cell++)
        if (of.areaMm2[cell]! > 1e-9) sums.set(keyOf(cell), (sums.get(keyOf(cell)) ?? 0) + of.areaMm2[cell]!);
      return sums;
    };
    const last = placed.length - 1;
    const expected = areas(whole, (cell) => String(whole.cover[cell]));
    const found = areas(map, (cell) => String((ground.cover[below[cell]!]! | (map.cover[cell]! << last)) >>> 0));
    expect([...found.keys()].sort()).toEqual([...expected.keys()].sort());
    for (const [key, area] of expected) expect(found.get(key)!).toBeCloseTo(area, 6);
  });

  it('should paint further pulls over it as painting the whole stack does', () => {
    const heightPx = 240;
    const painter = new OnwardPainter(bench, studio, { heightPx, relative: true });
    const grid = { widthMm: studio.paper.widthMm, heightMm: studio.paper.heightMm, rows: heightPx };
    for (const more of [[], moved.slice(0, 1), moved.slice(1, 4)]) {
      const stack = { pulls: [...bench, ...more] };
      const map = buildCellMap(new SpanCache(studio).place(stack, grid), grid);
      const colours = colourCells(map, stackLayers(stack, studio), studio.paper.reflectance);
      const expected = paintThumbnail(map, colours, painter.widthPx, new Uint8ClampedArray(painter.widthPx * heightPx * 4));
      const { pixels: painted } = painter.paint(more);
      let most = 0;
      for (let i = 0; i < expected.length; i++) most = Math.max(most, Math.abs(expected[i]! - painted[i]!));
      expect(most).toBeLessThanOrEqual(1);
    }
  });
});
