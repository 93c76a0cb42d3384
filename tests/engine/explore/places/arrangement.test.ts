/* oxlint-disable unicorn/no-thenable -- a hold's `then` is a pull's id, nothing that is called */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createDerivedExplorer } from '../../../../src/engine/explore/derived/derived-explorer.ts';
import { needs } from '../../../../src/engine/explore/measure/set-ups.ts';
import { createExplorer } from '../../../../src/engine/explore/search/explorer.ts';
import { FirstDraws } from '../../../../src/engine/explore/search/first-draw.ts';
import { checkExplore } from '../../../../src/engine/explore/settings/check.ts';
import type { ExploreSettings, Hold, Variant } from '../../../../src/engine/explore/types.ts';
import { intersectionArea, outlineArea } from '../../../../src/engine/geometry/booleans.ts';
import { shapeBounds } from '../../../../src/engine/geometry/rings.ts';
import { demoProject } from '../../../../src/engine/project/demo.ts';
import { firstWall } from '../../../../src/engine/project/first-wall.ts';
import { pullRings, screenRings } from '../../../../src/engine/shapes/place/placed.ts';
import type { Pull } from '../../../../src/engine/stack/types.ts';
import { differenceByResvg } from '../../../published/shapes/raster.ts';
import { pull, rectDrawer } from '../../order/drawer.ts';

const folder = new URL('../../../../shapes/', import.meta.url);
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.svg'))
  .map((name) => ({ name, text: readFileSync(new URL(name, folder), 'utf8') }));
const demo = firstWall(demoProject(files));
const { drawer, bench } = demo;
const { paper } = drawer;

function wall(changes: Partial<ExploreSettings>): Variant[] {
  const explorer = createExplorer({ ...demo, explore: { ...demo.explore, count: 60, ...changes } });
  const variants: Variant[] = [];
  while (!explorer.done) variants.push(...explorer.step(16));
  return variants;
}

/** Share of what a pull prints that lies on the sheet, by clipping its outlines with the sheet's. */
const shares = new Map<string, number>();
function shareOn(pulled: Pull): number {
  const key = JSON.stringify([pulled.screen, pulled.dxMm, pulled.dyMm, pulled.turnDeg]);
  const share = shares.get(key) ?? clippedShare(pulled);
  shares.set(key, share);
  return share;
}

function clippedShare(pulled: Pull): number {
  const screen = drawer.screens.find(({ id }) => id === pulled.screen)!;
  const outline = pullRings(screen, drawer.shapes, pulled, paper);
  const sheet = { rings: [[0, 0, paper.widthMm, 0, paper.widthMm, paper.heightMm, 0, paper.heightMm]], fillRule: 'nonzero' as const };
  return intersectionArea(outline, sheet) / outlineArea(outline);
}

function drawn(pulled: Pull): Pull {
  const own = bench.find(({ id }) => id === pulled.id.replace(/-again\+*$/u, ''));
  return own ?? { ...pulled, dxMm: 0, dyMm: 0, turnDeg: 0 };
}

const lies = (a: Pull, b: Pull): boolean => a.dxMm === b.dxMm && a.dyMm === b.dyMm && a.turnDeg === b.turnDeg;

describe('screens placed elsewhere', () => {
  it('should lie on the grid, turned by quarters, with as much on the sheet as is asked', () => {
    for (const onSheet of [1, 0.7, 0.3]) {
      const pulls = wall({ onSheet, count: 12, offsetRangeMm: 0 }).flatMap((variant) => variant.pulls);
      expect(pulls.filter((each) => !lies(each, drawn(each))).length).toBeGreaterThan(pulls.length / 2);
      for (const each of pulls.filter((_, i) => i % 4 === 0)) {
        for (const mm of [each.dxMm, each.dyMm]) expect(Math.abs(mm * 10 - Math.round(mm * 10))).toBeLessThan(1e-9);
        expect([0, 90, 180, 270]).toContain(each.turnDeg);
        // Rows stand for areas, so half a percent of it is not told.
        expect(shareOn(each)).toBeGreaterThan(Math.min(onSheet, shareOn(drawn(each))) - 0.005);
      }
    }
  });

  it('should be turned as often by a half or by any angle as by quarters, with as much on the sheet', () => {
    const turned = (turns: ExploreSettings['turns'], allowed: (turnDeg: number) => boolean): number => {
      const pulls = wall({ turns, onSheet: 0.7, count: 12, offsetRangeMm: 0 }).flatMap((variant) => variant.pulls);
      expect(pulls.filter(({ turnDeg }) => !allowed(turnDeg))).toEqual([]);
      for (const each of pulls.filter((_, i) => i % 12 === 0))
        expect(shareOn(each)).toBeGreaterThan(Math.min(0.7, shareOn(drawn(each))) - 0.005);
      return pulls.filter(({ turnDeg }) => turnDeg !== 0).length / pulls.length;
    };
    expect(turned('half', (deg) => deg % 180 === 0)).toBeGreaterThan(0.4);
    expect(turned('any', (deg) => deg === Math.trunc(deg))).toBeGreaterThan(0.4);
  });

  it('should be cropped by the edge only where it is let', () => {
    const cropped = (changes: Partial<ExploreSettings>): number =>
      wall({ count: 5, offsetRangeMm: 0, ...changes })
        .flatMap((variant) => variant.pulls)
        .filter((each) => shareOn(each) < shareOn(drawn(each)) - 0.01).length;
    expect(cropped({ onSheet: undefined })).toBe(0);
    expect(cropped({ onSheet: 0.5 })).toBeGreaterThan(8);
  });

  it('should stay within reach of where they were drawn', () => {
    const near = wall({ places: 'near', placeMm: 40, turns: 'none', repeats: 0, offsetRangeMm: 0 }).flatMap((variant) => variant.pulls);
    for (const each of near) {
      expect(Math.abs(each.dxMm - drawn(each).dxMm)).toBeLessThanOrEqual(40);
      expect(Math.abs(each.dyMm - drawn(each).dyMm)).toBeLessThanOrEqual(40);
    }
    expect(near.some((each) => Math.abs(each.dxMm - drawn(each).dxMm) > 30)).toBe(true);
  });

  it('should be pulled again elsewhere at most as often as asked, each a set-up of its own', () => {
    const prints = wall({ repeats: 2 }).map(({ pulls }) => pulls);
    const again = prints.map((pulls) => pulls.filter(({ id }) => id.includes('-again')));
    expect(Math.max(...again.map(({ length }) => length))).toBe(2);
    expect(again.filter(({ length }) => length > 0).length).toBeGreaterThan(10);
    prints.forEach((pulls, i) => {
      for (const each of again[i]!) expect(pulls.some((other) => other.screen === each.screen && !lies(other, each))).toBe(true);
      expect(needs(pulls).setUps).toBe(pulls.length);
    });
  });

  it('should keep what must stay, and the limits', () => {
    const holds: Hold[] = [
      { kind: 'lies', pull: 'p4' },
      { kind: 'lies', pull: 'p1' },
      { kind: 'first', pull: 'p1' },
      { kind: 'ink', pull: 'p1' },
      { kind: 'before', pull: 'p4', other: 'p6' },
    ];
    const settings = { holds, maxSetUps: 10, maxScreens: 8, veil: true, echoes: 2, echoMm: 5 };
    const prints = wall(settings);
    const more = createDerivedExplorer(
      { ...demo, explore: { ...demo.explore, count: 20, ...settings } },
      { kind: 'nearer', parents: [{ id: 'a', pulls: prints[0]!.pulls }], count: 20 },
    );
    while (!more.done) prints.push(...more.step(8));
    expect(prints.length).toBeGreaterThan(60);
    for (const { pulls } of prints) {
      const own = (id: string): Pull | undefined => pulls.find((each) => each.id === id);
      for (const id of ['p1', 'p4'])
        if (own(id) !== undefined)
          expect(
            lies(
              own(id)!,
              bench.find((each) => each.id === id)!,
            ),
          ).toBe(true);
      if (own('p1') !== undefined) expect(pulls[0]).toMatchObject({ id: 'p1', ink: bench[0]!.ink });
      const [low, high] = ['p4', 'p6'].map((id) => pulls.findIndex((each) => each.id === id)) as [number, number];
      if (low >= 0 && high >= 0) expect(low).toBeLessThan(high);
      expect(needs(pulls).setUps).toBeLessThanOrEqual(10);
      expect(new Set(pulls.map(({ screen }) => screen)).size).toBeLessThanOrEqual(8);
    }
  });

  it('should hang the same prints when helpers draw ahead, and begin alike when more is asked for', () => {
    const helper = new FirstDraws(demo);
    const ahead = createExplorer({ ...demo, explore: { ...demo.explore, count: 20 } }, [], (candidate) =>
      candidate % 3 === 0 ? undefined : helper.of(candidate),
    );
    const drawnAhead: Variant[] = [];
    while (!ahead.done) drawnAhead.push(...ahead.step(5));
    expect(drawnAhead).toEqual(wall({ count: 20 }));
    expect(wall({ count: 40 }).slice(0, 20)).toEqual(drawnAhead);
  });

  // What a pull prints, against a renderer that moves and turns the screen's path by itself (resvg).
  it('should print where a renderer puts the screen at that offset and turn', { timeout: 60_000 }, () => {
    const pulls = wall({ count: 2 }).flatMap((variant) => variant.pulls);
    expect(new Set(pulls.map(({ turnDeg }) => turnDeg)).size).toBe(4);
    for (const each of pulls) {
      const screen = drawer.screens.find(({ id }) => id === each.screen)!;
      const { rings, fillRule } = screenRings(screen, drawer.shapes);
      const d = rings.map((ring) => `M${Array.from(ring).join(' ')}Z`).join('');
      const { widthMm, heightMm } = paper;
      const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${widthMm}mm" height="${heightMm}mm" viewBox="0 0 ${widthMm} ${heightMm}"><path fill-rule="${fillRule}" transform="translate(${each.dxMm} ${each.dyMm}) rotate(${each.turnDeg} ${widthMm / 2} ${heightMm / 2})" d="${d}"/></svg>`;
      const outline = pullRings(screen, drawer.shapes, each, paper);
      const box = shapeBounds(outline.rings);
      const { apart } = differenceByResvg(svg, outline, paper, 560);
      expect((apart * widthMm * heightMm) / (box.widthMm * box.heightMm), JSON.stringify(each)).toBeLessThan(0.005);
    }
  });
});

describe('arrangements that cannot be', () => {
  const told = (changes: Partial<ExploreSettings>, from = demo): string[] =>
    checkExplore({ ...from.explore, ...changes }, from.drawer, from.bench).map(({ message }) => message);

  it('should be told in one plain sentence each', () => {
    expect(told({})).toEqual([]);
    const strip = rectDrawer([[0, 0, 200, 20]]);
    const wide = { ...demo, drawer: strip, bench: [pull(0, 'tar')], explore: { ...demo.explore, bringIn: 0, palette: ['tar'] } };
    const { widthMm, heightMm } = strip.paper;
    const whole = { ...wide, drawer: { ...strip, paper: { ...strip.paper, widthMm: 200, heightMm: 20 } } };
    expect(widthMm).not.toBe(heightMm);
    expect(told({ onSheet: 1, repeats: 0 }, whole)).toEqual([
      'Screens may lie elsewhere, but none has room to while 100 % of it stays on the sheet; let less of it stay, or take a larger sheet.',
      'Screens may turn by 90°, but none fits the sheet so while 100 % of it stays on it; let less of it stay, or turn by 180° only.',
    ]);
    expect(told({ onSheet: 0.05, repeats: 0 }, whole)).toEqual([]);
    expect(told({ places: 'near', placeMm: 0.3, offsetSnapMm: 1, offsetRangeMm: 0 })).toEqual([
      'Screens may lie up to 0.3 mm from where they were drawn, but in steps of 1 mm; let them lie further off, or in finer steps.',
    ]);
    expect(told({ holds: bench.map(({ id }) => ({ kind: 'lies', pull: id })), bringIn: 0 })).toEqual([
      'Screens may lie elsewhere, turn or be pulled again, but every pull lies as it does; let one of them move.',
    ]);
    expect(told({ onSheet: 0 })).toEqual(['At least 0 % of a screen is to stay on the sheet; give 5 to 100 %, or none.']);
  });
});
