/* oxlint-disable unicorn/no-thenable -- a hold's `then` is a pull's id, nothing that is called */
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { labD50 } from '../../../../src/engine/colour/lab.ts';
import { pictureKey } from '../../../../src/engine/explore/look/picture-key.ts';
import { createExplorer, explore } from '../../../../src/engine/explore/search/explorer.ts';
import { Finder } from '../../../../src/engine/explore/search/finder.ts';
import { checkExplore } from '../../../../src/engine/explore/settings/check.ts';
import type { ExploreInput, ExploreSettings, Variant } from '../../../../src/engine/explore/types.ts';
import { filmBands, overFilm } from '../../../../src/engine/ink/film/film.ts';
import { countOrderClasses } from '../../../../src/engine/order/count/count.ts';
import { orderClasses } from '../../../../src/engine/order/enumerate.ts';
import { orderGraph } from '../../../../src/engine/order/order-graph.ts';
import { dryingPairs, type Overlap, overlapsOf } from '../../../../src/engine/order/overlaps.ts';
import { SwapDeltas } from '../../../../src/engine/order/swap-delta.ts';
import { buildCellMap } from '../../../../src/engine/stack/cell-map.ts';
import { placedSpans } from '../../../../src/engine/stack/screen-spans.ts';
import type { CellMap, Pull } from '../../../../src/engine/stack/types.ts';
import type { Studio } from '../../../../src/engine/studio/studio.ts';
import { INKS, pull, rectDrawer } from '../../order/drawer.ts';

const QUIET: ExploreSettings = {
  seed: 'slack tide',
  count: 60,
  order: false,
  recolour: false,
  palette: ['tar', 'foam', 'rust', 'weed'],
  offsetRangeMm: 0,
  leaveOut: 0,
  bringIn: 0,
  holds: [],
  minDeltaE: 0.5,
};

/** Pulls that lie across each other on screens 0 … pulls − 1; `spare` more screens in the drawer. */
function input(pulls: number, spare: number, changes: Partial<ExploreSettings>): ExploreInput {
  const random = randomFrom('sheet');
  const rects = Array.from(
    { length: pulls + spare },
    () => [20 + random.int(80), random.int(40), 40 + random.int(50), 30 + random.int(30)] as const,
  );
  return {
    drawer: rectDrawer(rects),
    bench: Array.from({ length: pulls }, (_, i) => pull(i, INKS[i % 3]!.id)),
    explore: { ...QUIET, ...changes },
  };
}

function all(from: ExploreInput, seen: string[] = []): { variants: Variant[]; reason: string } {
  const explorer = createExplorer(from, seen);
  const variants: Variant[] = [];
  while (!explorer.done) variants.push(...explorer.step(7));
  expect(explorer.found).toBe(variants.length);
  return { variants, reason: explorer.reason };
}

/** The sheet with every screen that may appear, at rest. */
function wholeMap({ drawer }: ExploreInput): CellMap {
  const grid = { widthMm: drawer.paper.widthMm, heightMm: drawer.paper.heightMm, rows: 100 };
  return buildCellMap(placedSpans({ pulls: drawer.screens.map((_, i) => pull(i, 'tar')) }, drawer, grid), grid);
}

/** What each cell of a map shows, laid down film by film, apart from how the explorer does it. */
function cellsOf({ drawer }: ExploreInput, map: CellMap, pulls: readonly Pull[]): [number, number, number][] {
  return Array.from({ length: map.cells }, (_, cell) => {
    let shown: Float64Array = Float64Array.from(drawer.paper.reflectance);
    for (const each of pulls) {
      const screen = drawer.screens.findIndex(({ id }) => id === each.screen);
      if (((map.cover[cell * map.words]! >> screen) & 1) === 0) continue;
      const { kx, sx } = drawer.inks.find(({ id }) => id === each.ink)!;
      shown = overFilm(filmBands(kx, sx, 1 + (each.strokes - 1) * drawer.strokeGain), shown, new Float64Array(36));
    }
    return labD50(shown);
  });
}

/** The largest ΔE00 between two prints over all cells of some size. */
function largest(map: CellMap, a: [number, number, number][], b: [number, number, number][]): number {
  return Math.max(...a.map((lab, cell) => (map.areaMm2[cell]! >= 1 ? deltaE2000(lab, b[cell]!) : 0)));
}

const EVERYTHING = { order: true, recolour: true, offsetRangeMm: 3, leaveOut: 2, bringIn: 2 };

/** The explorer's graph of order, from areas that are clipped rather than read off rows. */
function exactGraph(pulls: readonly Pull[], studio: Studio, minDeltaE: number): Overlap[] {
  const areas = new Float64Array(pulls.length ** 2);
  for (const { a, b, areaMm2 } of dryingPairs({ pulls }, studio, { toleranceMm: 0.01 })) {
    areas[a * pulls.length + b] = areaMm2;
    areas[b * pulls.length + a] = areaMm2;
  }
  const deltas = new SwapDeltas(studio);
  const films = pulls.map((pull) => deltas.filmOf(pull));
  return orderGraph(areas, films, deltas, { minDeltaE, minAreaMm2: 1e-9 });
}

describe('createExplorer', () => {
  it('should give the same wall for the same seed, however the steps are cut', () => {
    const from = input(8, 4, EVERYTHING);
    const { variants } = all(from);
    expect(variants.length).toBe(60);
    expect([...explore(from, { seed: 'slack tide', count: 60 })]).toEqual(variants);
    expect([...explore(from, { seed: 'spring tide', count: 60 })]).not.toEqual(variants);
    variants.forEach((variant, i) => expect(variant).toMatchObject({ id: `slack tide:${i}`, index: i }));
  });

  it('should start with the same variants when more are asked for', () => {
    const few = all(input(8, 4, { ...EVERYTHING, count: 20 })).variants;
    expect(all(input(8, 4, { ...EVERYTHING, count: 40 })).variants.slice(0, 20)).toEqual(few);
  });

  it('should draw a variant alike in a fresh finder, as another worker would', () => {
    const from = input(8, 4, EVERYTHING);
    const warm = new Finder(from);
    for (let i = 0; i < 20; i++) warm.draw(i, 0);
    expect(new Finder(from).draw(13, 2)).toEqual(warm.draw(13, 2));
  });

  it('should never give one picture twice, nor one already seen', () => {
    const from = input(5, 1, { ...EVERYTHING, offsetRangeMm: 0, count: 150 });
    const first = all(from).variants;
    const keys = new Set(first.map((variant) => variant.key));
    expect(keys.size).toBe(150);
    for (const variant of all(from, [...keys]).variants) expect(keys.has(variant.key)).toBe(false);
  });

  it('should name pictures by their exact overlaps', () => {
    // Recomputed by clipping and from the stack alone, not from the search.
    // Inks so thin that nothing hides what is below it.
    const plain = input(7, 2, { ...EVERYTHING, count: 40, palette: ['rust', 'weed', 'dusk'] });
    const thin = plain.drawer.inks.map((each) => ({ ...each, kx: each.kx.map((k) => k / 8), sx: each.sx.map((k) => k / 8) }));
    const from = { ...plain, drawer: { ...plain.drawer, inks: thin } };
    for (const { pulls, key } of all(from).variants) {
      const edges = exactGraph(pulls, from.drawer, 0.5);
      const exact = edges.filter(({ areaMm2 }) => areaMm2 > 200);
      if (exact.length === edges.length) expect(pictureKey(pulls, edges)).toBe(key);
    }
  });

  it('should list every order class when only the order may change', () => {
    const from = input(5, 0, { order: true, count: 500 });
    const edges = overlapsOf({ pulls: from.bench }, from.drawer, { toleranceMm: 0.01, minDeltaE: 0.5 });
    const classes = Number(
      countOrderClasses(
        5,
        edges.map(({ a, b }): [number, number] => [a, b]),
      ),
    );
    const { variants, reason } = all(from);
    expect(classes).toBe(78);
    // Six of them differ only where an upper film hides it.
    expect(variants.length).toBe(72);
    expect(reason).toContain('make only 72 different prints, and 500 were asked for');
    const map = wholeMap(from);
    const walls = variants.map(({ pulls }) => cellsOf(from, map, pulls));
    for (const order of orderClasses(
      5,
      edges.map(({ a, b }): [number, number] => [a, b]),
    )) {
      const cells = cellsOf(
        from,
        map,
        order.map((at) => from.bench[at]!),
      );
      expect(Math.min(...walls.map((other) => largest(map, cells, other)))).toBeLessThan(0.5);
    }
  });

  it('should hang no two prints that look the same, whatever hides what', () => {
    const from = input(6, 2, { order: true, recolour: true, leaveOut: 2, bringIn: 2, count: 120 });
    const map = wholeMap(from);
    const walls = all(from).variants.map(({ pulls }) => cellsOf(from, map, pulls));
    walls.forEach((cells, i) => {
      for (const other of walls.slice(0, i)) expect(largest(map, cells, other)).toBeGreaterThan(1e-6);
    });
  });

  it('should take a pull that others hide wholly for none, in any ink', () => {
    const drawer = rectDrawer([
      [60, 30, 40, 40],
      [50, 20, 60, 60],
      [10, 10, 20, 20],
    ]);
    const bench = [pull(0, 'weed'), pull(1, 'tar', { strokes: 9 }), pull(2, 'rust')];
    const explore: ExploreSettings = {
      ...QUIET,
      recolour: true,
      palette: ['weed', 'dusk', 'rust'],
      holds: [
        { kind: 'ink', pull: 'p1' },
        { kind: 'ink', pull: 'p2' },
      ],
      count: 3,
    };
    const { variants, reason } = all({ drawer, bench, explore });
    expect(variants.length).toBe(1);
    expect(reason).toContain('Only 1 different print of 3');
  });

  it('should hang a ground that bleeds off the sheet once, however it is shifted', () => {
    const { widthMm, heightMm } = rectDrawer([]).paper;
    const drawer = rectDrawer([
      [-50, -50, widthMm + 100, heightMm + 100],
      [40, 40, 30, 30],
    ]);
    const bench = [pull(0, 'rust'), pull(1, 'weed')];
    const { variants, reason } = all({ drawer, bench, explore: { ...QUIET, offsetRangeMm: 0.1, count: 40 } });
    // The block alone is seen to move: to the 9 places within 0.1 mm, upwards and sideways.
    expect(variants.length).toBeGreaterThan(3);
    expect(variants.length).toBeLessThanOrEqual(9);
    expect(reason).toContain('different prints of 40');
  });

  it('should say so when the space is exhausted', () => {
    const { variants, reason } = all(input(2, 0, { recolour: true, palette: ['tar', 'foam'], count: 50 }));
    expect(variants.length).toBeLessThan(5);
    expect(reason).toMatch(/^Only \d different prints of 50 came out/);
  });

  it('should stay within the settings', () => {
    const from = input(8, 6, { ...EVERYTHING, offsetRangeMm: 2.5, count: 200 });
    const base = new Map(from.bench.map((each) => [each.id, each]));
    const seen = { shifted: 0, left: 0, brought: 0, recoloured: 0 };
    for (const { pulls } of all(from).variants) {
      expect(new Set(pulls.map((each) => each.id)).size).toBe(pulls.length);
      const brought = pulls.filter((each) => !base.has(each.id));
      const left = 8 - (pulls.length - brought.length);
      expect(brought.length).toBeLessThanOrEqual(2);
      expect(left).toBeLessThanOrEqual(2);
      seen.brought += brought.length;
      seen.left += left;
      for (const each of brought) expect(from.explore.palette).toContain(each.ink);
      for (const each of pulls) {
        const was = base.get(each.id);
        if (was !== undefined && was.ink !== each.ink) {
          seen.recoloured++;
          expect(from.explore.palette).toContain(each.ink);
        }
        for (const mm of [each.dxMm - (was?.dxMm ?? 0), each.dyMm - (was?.dyMm ?? 0)]) {
          if (mm !== 0) seen.shifted++;
          expect(Math.abs(mm)).toBeLessThanOrEqual(2.5 + 1e-9);
          expect(mm * 10).toBeCloseTo(Math.round(mm * 10), 9);
        }
      }
    }
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(20);
  });

  it('should keep every hold in every variant', () => {
    const from = input(8, 4, {
      ...EVERYTHING,
      count: 150,
      holds: [
        { kind: 'first', pull: 'p5' },
        { kind: 'last', pull: 'p1' },
        { kind: 'out', pull: 'p7' },
        { kind: 'ink', pull: 'p2' },
        { kind: 'before', pull: 'p4', other: 'p0' },
        { kind: 'before', pull: 'p0', other: 'p2' },
      ],
    });
    const { variants } = all(from);
    expect(variants.length).toBe(150);
    for (const { pulls } of variants) {
      const at = new Map(pulls.map((each, i) => [each.id, i]));
      expect(at.get('p5')).toBe(0);
      expect(at.get('p1')).toBe(pulls.length - 1);
      expect(at.has('p7')).toBe(false);
      const kept = pulls.find((each) => each.id === 'p2');
      if (kept) expect(kept.ink).toBe('rust');
      for (const [low, high] of [
        ['p4', 'p0'],
        ['p0', 'p2'],
      ] as const) {
        if (at.has(low) && at.has(high)) expect(at.get(low)).toBeLessThan(at.get(high)!);
      }
    }
  });

  it('should keep a held place among reordered pulls', () => {
    const { variants } = all(input(7, 0, { order: true, holds: [{ kind: 'place', pull: 'p3' }], count: 50 }));
    expect(variants.length).toBe(50);
    for (const { pulls } of variants) expect(pulls[3]!.id).toBe('p3');
  });

  it('should start from an empty stack when screens may come in', () => {
    const from = input(0, 5, { bringIn: 3, count: 30 });
    const { variants } = all(from);
    expect(variants.length).toBe(30);
    for (const { pulls } of variants) expect(pulls.length).toBeGreaterThan(0);
  });

  it('should refuse holds that contradict each other', () => {
    const from = input(3, 0, {
      order: true,
      holds: [
        { kind: 'first', pull: 'p0' },
        { kind: 'first', pull: 'p2' },
      ],
    });
    expect(() => createExplorer(from)).toThrow(/Pull 1 stays first, but pull 3 stays first/);
  });
});

describe('checkExplore', () => {
  it('should pass the demo', () => {
    const from = input(8, 4, EVERYTHING);
    expect(checkExplore(from.explore, from.drawer, from.bench)).toEqual([]);
  });

  it.each([
    ['explore.count', { count: 0 }],
    ['explore.count', { count: 10_001 }],
    ['explore.offset-range', { offsetRangeMm: -1 }],
    ['explore.offset-range', { offsetRangeMm: NaN }],
    ['explore.min-delta-e', { minDeltaE: NaN }],
    ['explore.leave-out', { leaveOut: 1.5 }],
    ['explore.bring-in', { bringIn: -1 }],
    ['explore.empty-palette', { palette: [] }],
    ['explore.palette-ink', { palette: ['tar', 'ultraviolet'] }],
    ['explore.no-moves', { order: false, recolour: false, offsetRangeMm: 0, leaveOut: 0, bringIn: 0 }],
    ['hold.unknown-pull', { holds: [{ kind: 'first' as const, pull: 'gone' }] }],
  ] as [string, Partial<ExploreSettings>][])('should tell %s of %j', (code, changes) => {
    const from = input(4, 2, { ...EVERYTHING, ...changes });
    const problems = checkExplore(from.explore, from.drawer, from.bench);
    expect(problems.map((problem) => problem.code)).toContain(code);
    for (const { message } of problems) expect(message).toMatch(/^[A-Z0-9-].*[;].*\.$|^Nothing may change.*\.$/);
  });

  it('should tell zero screens, an empty stack and a pull of nothing', () => {
    const from = input(4, 2, EVERYTHING);
    const codes = (changed: Partial<ExploreInput>, settings = from.explore): string[] => {
      const now = { ...from, ...changed };
      return checkExplore(settings, now.drawer, now.bench).map((problem) => problem.code);
    };
    expect(codes({ drawer: { ...from.drawer, screens: [] } })).toContain('explore.no-screens');
    expect(codes({ bench: [] }, { ...from.explore, bringIn: 0 })).toContain('explore.empty-stack');
    expect(codes({ bench: [pull(99, 'tar')] })).toContain('explore.unknown-screen');
    expect(codes({ bench: [pull(0, 'soot')] })).toContain('explore.unknown-ink');
    const many = Array.from({ length: 500 }, (_, i) => pull(0, 'tar', { id: `n${i}` }));
    expect(codes({ bench: many })).toEqual(['explore.too-many-pulls']);
  });
});
