import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { labD50 } from '../../../../src/engine/colour/lab.ts';
import { edgeShare } from '../../../../src/engine/explore/measure/edge-share.ts';
import { inksMeet } from '../../../../src/engine/explore/measure/inks-meet.ts';
import { needs } from '../../../../src/engine/explore/measure/set-ups.ts';
import { createExplorer } from '../../../../src/engine/explore/search/explorer.ts';
import { checkExplore } from '../../../../src/engine/explore/settings/check.ts';
import type { ExploreInput, ExploreSettings, Variant } from '../../../../src/engine/explore/types.ts';
import { filmBands, overFilm } from '../../../../src/engine/ink/film/film.ts';
import { buildCellMap } from '../../../../src/engine/stack/cell-map.ts';
import { placedSpans } from '../../../../src/engine/stack/screen-spans.ts';
import type { CellMap, Pull } from '../../../../src/engine/stack/types.ts';
import type { Studio } from '../../../../src/engine/studio/studio.ts';
import { pull, rectDrawer } from '../../order/drawer.ts';

const RECTS = [
  [20, 10, 80, 50],
  [50, 20, 90, 60],
  [70, 5, 60, 60],
  [30, 40, 100, 40],
  [90, 30, 60, 50],
  [60, 50, 50, 40],
  [110, 10, 40, 70],
  [15, 15, 60, 60],
] as const;
const DRAWER = rectDrawer(RECTS);
const QUIET: ExploreSettings = {
  seed: 'slack tide',
  count: 80,
  order: true,
  recolour: true,
  palette: ['tar', 'foam', 'rust', 'weed', 'dusk'],
  offsetRangeMm: 0,
  leaveOut: 0,
  bringIn: 0,
  holds: [],
  minDeltaE: 0.5,
};
const BENCH = [pull(0, 'tar'), pull(1, 'foam'), pull(2, 'rust'), pull(3, 'weed'), pull(4, 'dusk')];

function wall(changes: Partial<ExploreSettings>, bench: readonly Pull[] = BENCH): Variant[] {
  const input: ExploreInput = { drawer: DRAWER, bench, explore: { ...QUIET, ...changes } };
  const explorer = createExplorer(input);
  const variants: Variant[] = [];
  while (!explorer.done) variants.push(...explorer.step(16));
  return variants;
}

/** Whether two pulls share area, from their rectangles. */
function share(a: Pull, b: Pull): boolean {
  const [p, q] = [a, b].map((each) =>
    RECTS[Number(each.screen.slice(1))]!.map((v, i) => v + (i === 0 ? each.dxMm : i === 1 ? each.dyMm : 0)),
  );
  const gap = (i: number): number => Math.min(p![i]! + p![i + 2]!, q![i]! + q![i + 2]!) - Math.max(p![i]!, q![i]!);
  return gap(0) > 0.5 && gap(1) > 0.5;
}

function mapOf(drawer: Studio, pulls: readonly Pull[]): CellMap {
  const grid = { widthMm: 200, heightMm: 100, rows: 200 };
  return buildCellMap(placedSpans({ pulls }, drawer, grid), grid);
}

/** Share of the sheet whose colour no swatch of the print comes near, point by point, film by film. */
function overprintShare(pulls: readonly Pull[]): number {
  const paper: Float64Array = Float64Array.from(DRAWER.paper.reflectance);
  const lay = (ink: string, ground: Float64Array): Float64Array => {
    const { kx, sx } = DRAWER.inks.find(({ id }) => id === ink)!;
    return overFilm(filmBands(kx, sx, 1), ground, new Float64Array(36));
  };
  const swatches = [labD50(paper), ...pulls.map(({ ink }) => labD50(lay(ink, paper)))];
  const far = new Map<string, boolean>();
  let points = 0;
  // Rows at the middles of the explorer's 256; columns every mm.
  for (let row = 0; row < 256; row++) {
    for (let x = 0.5; x < 200; x++) {
      const y = ((row + 0.5) * 100) / 256;
      const over = pulls.filter(({ screen }) => {
        const [left, top, width, height] = RECTS[Number(screen.slice(1))]!;
        return x > left && x < left + width && y > top && y < top + height;
      });
      const key = over.map(({ id }) => id).join();
      if (!far.has(key)) {
        const lab = labD50(over.reduce<Float64Array>((ground, { ink }) => lay(ink, ground), paper));
        far.set(key, over.length > 1 && swatches.every((swatch) => deltaE2000(lab, swatch) > 10));
      }
      if (far.get(key)!) points++;
    }
  }
  return points / (256 * 200);
}

describe('createExplorer within limits', () => {
  it('should print in at most so many inks', () => {
    const variants = wall({ maxInks: 2 });
    expect(variants.length).toBe(80);
    for (const { pulls } of variants) expect(new Set(pulls.map(({ ink }) => ink)).size).toBeLessThanOrEqual(2);
  });

  it('should never lay one ink over another, nor put others before the first or after the last', () => {
    const over = ({ pulls }: Variant): boolean =>
      pulls.some((high, at) => high.ink === 'tar' && pulls.slice(0, at).some((low) => low.ink === 'foam' && share(low, high)));
    const first = ({ pulls }: Variant): boolean => pulls[0]!.ink !== 'rust';
    // Left to themselves prints have what is forbidden below.
    expect(wall({}).filter(over).length).toBeGreaterThan(20);
    expect(wall({}).filter(first).length).toBeGreaterThan(20);
    const variants = wall({ neverOver: [['tar', 'foam']], inkFirst: 'rust', inkLast: 'weed' });
    expect(variants.length).toBe(80);
    for (const { pulls } of variants) {
      const inks = pulls.map(({ ink }) => ink);
      expect(inks.lastIndexOf('rust')).toBe(inks.filter((ink) => ink === 'rust').length - 1);
      if (inks.includes('weed')) expect(inks.slice(inks.indexOf('weed')).every((ink) => ink === 'weed')).toBe(true);
      pulls.forEach((high, at) => {
        if (high.ink !== 'tar') return;
        for (const low of pulls.slice(0, at)) if (low.ink === 'foam') expect(share(low, high)).toBe(false);
      });
    }
  });

  it('should keep inks apart that may not touch', () => {
    const touch = ({ pulls }: Variant): boolean => pulls.some((a) => pulls.some((b) => a.ink === 'tar' && b.ink === 'rust' && share(a, b)));
    // Left to themselves they do touch, in many prints.
    expect(wall({ leaveOut: 3, count: 40 }).filter(touch).length).toBeGreaterThan(9);
    const variants = wall({ apart: [['tar', 'rust']], leaveOut: 3, count: 40 });
    expect(variants.length).toBe(40);
    expect(variants.filter(touch)).toEqual([]);
  });

  it('should shift along one way and snap', () => {
    const variants = wall({ offsetRangeMm: 4, offsetDirection: 'across', offsetSnapMm: 0.5 });
    const moved = variants.flatMap(({ pulls }) => pulls).filter(({ dxMm }) => dxMm !== 0);
    expect(moved.length).toBeGreaterThan(30);
    for (const { pulls } of variants) {
      for (const { dxMm, dyMm } of pulls) {
        expect(dyMm).toBe(0);
        expect(Number.isInteger(dxMm * 2)).toBe(true);
        expect(Math.abs(dxMm)).toBeLessThanOrEqual(4);
      }
    }
  });

  it('should turn, lay heavier and repeat off-register, no further than asked', () => {
    const variants = wall({ turns: 'half', maxStrokes: 3, echoes: 2, echoMm: 2 });
    const all = variants.flatMap(({ pulls }) => pulls);
    expect(new Set(all.map(({ turnDeg }) => turnDeg))).toEqual(new Set([0, 180]));
    expect(new Set(all.map(({ strokes }) => strokes))).toEqual(new Set([1, 2, 3]));
    const echoes = variants.map(({ pulls }) => pulls.filter(({ id }) => id.endsWith('-echo')));
    expect(Math.max(...echoes.map(({ length }) => length))).toBe(2);
    for (const each of echoes.flat()) expect(Math.max(Math.abs(each.dxMm), Math.abs(each.dyMm))).toBeLessThanOrEqual(2);
    expect(
      new Set(
        wall({ turns: 'any' })
          .flatMap(({ pulls }) => pulls)
          .map(({ turnDeg }) => turnDeg),
      ).size,
    ).toBeGreaterThan(30);
  });

  it('should lay a veil last and in an ink that lets show what is below', () => {
    const veiled = wall({ veil: true }).filter(({ pulls }) => pulls.some(({ id }) => id.startsWith('veil-')));
    expect(veiled.length).toBeGreaterThan(10);
    for (const { pulls } of veiled) {
      expect(pulls.at(-1)!.id).toMatch(/^veil-/u);
      expect(['tar', 'foam']).not.toContain(pulls.at(-1)!.ink);
    }
  });

  it('should have the screens that it must, and none that it may not', () => {
    const variants = wall({ bringIn: 2, leaveOut: 4, mustScreens: ['s1', 's6'], notScreens: ['s0', 's7'] });
    expect(variants.length).toBe(80);
    for (const { pulls } of variants) {
      const screens = pulls.map(({ screen }) => screen);
      expect(screens).toEqual(expect.arrayContaining(['s1', 's6']));
      expect(screens.filter((screen) => screen === 's0' || screen === 's7')).toEqual([]);
    }
  });

  it('should keep the caps on pulls, screens and set-ups', () => {
    const variants = wall({ bringIn: 3, leaveOut: 3, echoes: 3, echoMm: 3, veil: true, maxPulls: 5, maxScreens: 4, maxSetUps: 5 });
    expect(variants.length).toBe(80);
    for (const { pulls } of variants) {
      expect(pulls.length).toBeLessThanOrEqual(5);
      expect(new Set(pulls.map(({ screen }) => screen)).size).toBeLessThanOrEqual(4);
      expect(needs(pulls).setUps).toBeLessThanOrEqual(5);
    }
    expect(Math.max(...variants.map(({ pulls }) => pulls.length))).toBe(5);
  });

  it('should keep the caps on overprint colours and on the edge', () => {
    const few = wall({ count: 30, maxThirdShare: 0.05, leaveOut: 3 });
    expect(few.length).toBeGreaterThan(5);
    for (const { pulls } of few) expect(overprintShare(pulls)).toBeLessThanOrEqual(0.05);
    expect(wall({ count: 30 }).filter(({ pulls }) => overprintShare(pulls) > 0.05).length).toBeGreaterThan(5);
    // Screens 0, 3 and 7 alone keep 10 mm away from the edge or reach into it by little.
    const inner = wall({ maxEdgeShare: 0.01, leaveOut: 4, count: 10 });
    for (const { pulls } of inner) expect(edgeShare(mapOf(DRAWER, pulls))).toBeLessThanOrEqual(0.01);
  });

  it('should give the same wall again from a fresh explorer, in all moves at once', () => {
    const every = {
      offsetRangeMm: 3,
      leaveOut: 2,
      bringIn: 2,
      turns: 'any',
      echoes: 2,
      echoMm: 2,
      maxStrokes: 2,
      veil: true,
      maxInks: 4,
      neverOver: [['tar', 'foam']],
    } as Partial<ExploreSettings>;
    expect(wall(every)).toEqual(wall(every));
  });
});

describe('edgeShare', () => {
  it('should give what a sheet of bars covers of its outermost 10 mm', () => {
    // 200 × 100 mm: the rim is 200 × 100 − 180 × 80 = 5,600 mm²; a bar 40 mm wide down the middle covers 2 × 10 × 40 of it.
    const drawer = rectDrawer([
      [80, 0, 40, 100],
      [0, 0, 200, 100],
    ]);
    expect(edgeShare(mapOf(drawer, [pull(0, 'tar')]))).toBeCloseTo(800 / 5600, 9);
    expect(edgeShare(mapOf(drawer, [pull(1, 'tar')]))).toBeCloseTo(1, 9);
  });
});

describe('inksMeet', () => {
  it('should see overlaps, upright and level edges, and nothing across a gap', () => {
    const drawer = rectDrawer([
      [10, 10, 30, 30],
      [40, 10, 30, 30],
      [10, 40, 30, 30],
      [80, 10, 30, 30],
      [20, 20, 10, 10],
    ]);
    const meet = (a: number, b: number): boolean =>
      inksMeet(mapOf(drawer, [pull(a, 'tar'), pull(b, 'rust')]), ['tar', 'rust'], [['tar', 'rust']], 1);
    expect([meet(0, 1), meet(0, 2), meet(0, 4)]).toEqual([true, true, true]);
    expect([meet(0, 3), meet(1, 3), meet(2, 3)]).toEqual([false, false, false]);
  });
});

describe('checkExplore on limits', () => {
  it.each([
    [
      { maxPulls: 3, leaveOut: 1 },
      /at most 3 pulls, but the stack has 5 of which at most 1 may be left out; leave out more or allow more\.$/u,
    ],
    [{ maxScreens: 2 }, /at most 2 screens, but the stack has 5/u],
    [{ maxSetUps: 4 }, /at most 4 set-ups, but the stack has 5/u],
    [{ recolour: false, maxInks: 3 }, /at most 3 inks, but the stack has 5 that may not change/u],
    [{ mustScreens: ['s1'], notScreens: ['s1'] }, /^Screen 2 must be in every print, but may be in none/u],
    [{ mustScreens: ['s6'], bringIn: 0 }, /1 screen that every print must have is not on the Bench, but at most 0/u],
    [{ mustScreens: ['s1'], holds: [{ kind: 'out', pull: 'p1' }] }, /Screen 2 must be in every print, but pull 2 of it is never there/u],
    [{ notScreens: ['s1'], holds: [{ kind: 'first', pull: 'p1' }] }, /Screen 2 may be in no print, but pull 2 of it stays in its place/u],
    [{ inkFirst: 'tar', inkLast: 'tar' }, /tar goes down before all other inks, but also after/u],
    [
      {
        neverOver: [
          ['tar', 'rust'],
          ['rust', 'tar'],
        ],
      },
      /tar never lies over rust, but rust never over tar/u,
    ],
    [{ neverOver: [['tar', 'rust']], inkFirst: 'rust' }, /tar never lies over rust, but rust goes down before/u],
    [
      { recolour: false, inkFirst: 'tar', holds: [{ kind: 'first', pull: 'p1' }] },
      /^tar goes down before all other inks, but pull 2 stays first, and their inks are kept; take one/u,
    ],
    [
      { recolour: false, inkLast: 'weed', holds: [{ kind: 'before', pull: 'p3', other: 'p2' }] },
      /^weed goes down after all other inks, but pull 4 stays under pull 3/u,
    ],
    [
      { recolour: false, neverOver: [['foam', 'tar']], holds: [{ kind: 'before', pull: 'p0', other: 'p1' }] },
      /^foam never lies over tar, but pull 1 stays under pull 2/u,
    ],
    [
      {
        neverOver: [['foam', 'tar']],
        leaveOut: 0,
        holds: [
          { kind: 'ink', pull: 'p0' },
          { kind: 'ink', pull: 'p1' },
          { kind: 'last', pull: 'p1' },
        ],
      },
      /^foam never lies over tar, but pull 2 stays last/u,
    ],
    [{ echoes: 2 }, /Repeats are asked for, but they are off by 0 mm/u],
    [{ offsetRangeMm: 0.3, offsetSnapMm: 1 }, /up to 0.3 mm, but in steps of 1 mm/u],
    [{ veil: true, holds: [{ kind: 'last', pull: 'p2' }] }, /A veil goes down last, but pull 3 stays last/u],
    [{ veil: true, palette: ['tar', 'foam'] }, /No ink that may be used lets enough show through/u],
  ] as [Partial<ExploreSettings>, RegExp][])('should name which two of %j', (changes, sentence) => {
    const problems = checkExplore({ ...QUIET, ...changes }, DRAWER, BENCH);
    expect(problems.map(({ message }) => message)).toEqual([expect.stringMatching(sentence)]);
  });

  it('should ask nothing of inks and screens that are gone', () => {
    const gone: Partial<ExploreSettings> = {
      neverOver: [
        ['ochre', 'tar'],
        ['tar', 'ochre'],
      ],
      inkFirst: 'ochre',
      inkLast: 'ochre',
      mustScreens: ['s99'],
      veil: true,
    };
    expect(checkExplore({ ...QUIET, ...gone }, DRAWER, BENCH)).toEqual([]);
    expect(wall({ ...gone, count: 10 }).length).toBe(10);
  });

  it('should let a hold stand beside a condition that inks or pulls may give way to', () => {
    const condition: Partial<ExploreSettings> = { neverOver: [['foam', 'tar']], holds: [{ kind: 'before', pull: 'p0', other: 'p1' }] };
    expect(checkExplore({ ...QUIET, ...condition }, DRAWER, BENCH)).toEqual([]);
    expect(checkExplore({ ...QUIET, ...condition, recolour: false, leaveOut: 1 }, DRAWER, BENCH)).toEqual([]);
  });
});
