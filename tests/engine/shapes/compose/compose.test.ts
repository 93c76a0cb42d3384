import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { placeRings } from '../../../../src/engine/geometry/rings.ts';
import { prepareOutline, sharedArea } from '../../../../src/engine/geometry/meet/shared-area.ts';
import { WorkBudget } from '../../../../src/engine/geometry/work.ts';
import { demoProject } from '../../../../src/engine/project/demo.ts';
import { alignedIn, alignedTogether, boxOf, fetchedBack, mirroredAbout, movedBy, offSheet, scaledBy, turnedBy } from '../../../../src/engine/shapes/compose/arrange.ts';
import { type Scatter, scatter } from '../../../../src/engine/shapes/compose/scatter.ts';
import { reachBeyondMm } from '../../../../src/engine/shapes/place/new-screen.ts';
import type { PlacedShape } from '../../../../src/engine/shapes/types.ts';
import { rectangle } from '../../../helpers/small-project.ts';

const shape = rectangle('bar', 40, 20);
const at = (xMm: number, yMm: number, more: Partial<PlacedShape> = {}): PlacedShape => ({ shape: 'bar', xMm, yMm, turnDeg: 0, scale: 1, ...more });
const pieces = (...placed: PlacedShape[]) => placed.map((one) => ({ shape, placed: one }));

describe('shapes on the whole sheet', () => {
  it('should move on the 0.1 mm grid, and turn and scale as one about a place', () => {
    expect(movedBy([at(10, 10)], 0.26, -0.1 - 0.2)).toEqual([at(10.3, 9.7)]);
    // A quarter turn clockwise, y down: right becomes down.
    expect(turnedBy([at(60, 50), at(40, 50)], 90, { xMm: 50, yMm: 50 })).toEqual([at(50, 60, { turnDeg: 90 }), at(50, 40, { turnDeg: 90 })]);
    expect(scaledBy([at(60, 50, { scale: 0.5 })], 3, { xMm: 50, yMm: 50 })).toEqual([at(80, 50, { scale: 1.5 })]);
    expect(scaledBy([at(60, 50, { scale: 60 })], 1000, { xMm: 60, yMm: 50 })[0]).toMatchObject({ scale: 100 });
  });

  it('should mirror about a line, and twice be as it was', () => {
    const once = mirroredAbout([at(30, 10, { turnDeg: 30 })], 50);
    expect(once).toEqual([at(70, 10, { turnDeg: 330, mirrored: true })]);
    expect(mirroredAbout(once, 50)).toEqual([at(30, 10, { turnDeg: 30 })]);
  });

  it('should align the box of all of them, and fetch back what lies off the sheet by no more than it takes', () => {
    const sheet = { xMm: 0, yMm: 0, widthMm: 200, heightMm: 100 };
    expect(alignedIn(pieces(at(50, 50), at(120, 70)), sheet, 'right')).toEqual([at(110, 50), at(180, 70)]);
    expect(alignedIn(pieces(at(50, 20)), sheet, 'middle')).toEqual([at(50, 50)]);
    const off = pieces(at(-60, 50), at(-30, 120));
    expect([offSheet(off, sheet), offSheet(pieces(at(0, 50)), sheet), offSheet(pieces(at(20, 10)), sheet)]).toEqual(['wholly', 'in part', 'not']);
    const back = fetchedBack(off, sheet);
    expect(back).toEqual([at(20, 20), at(50, 90)]);
    expect(boxOf(back.map((placed) => ({ shape, placed })))).toEqual({ xMm: 0, yMm: 10, widthMm: 70, heightMm: 90 });
    expect(fetchedBack(pieces(at(-60, 50, { scale: 10 })), sheet)).toEqual([at(100, 50, { scale: 10 })]);
  });
});

describe('shapes aligned to each other', () => {
  // The bar is 40 × 20 mm: the box round all is 30…140 by 40…110 mm, worked by hand.
  const bars = [pieces(at(50, 50)), pieces(at(120, 100), at(100, 70))];

  it.each([
    ['left', [[at(50, 50)], [at(70, 100), at(50, 70)]]],
    ['centre', [[at(85, 50)], [at(95, 100), at(75, 70)]]],
    ['right', [[at(120, 50)], [at(120, 100), at(100, 70)]]],
    ['top', [[at(50, 50)], [at(120, 80), at(100, 50)]]],
    ['middle', [[at(50, 75)], [at(120, 90), at(100, 60)]]],
    ['bottom', [[at(50, 100)], [at(120, 100), at(100, 70)]]],
  ] as const)('should bring each group as one to the %s of the box round all', (to, placed) => {
    expect(alignedTogether(bars, to)).toEqual(placed);
  });

  it('should leave a screen of no shapes empty', () => {
    expect(alignedTogether([pieces(at(50, 50)), []], 'left')).toEqual([[at(50, 50)], []]);
  });
});

describe('scatter', () => {
  const folder = new URL('../../../../shapes/', import.meta.url);
  const { drawer } = demoProject(readdirSync(folder).map((name) => ({ name, text: readFileSync(new URL(name, folder), 'utf8') })));
  const { printable } = drawer.paper;
  const ask: Scatter = { shapes: drawer.shapes, screens: 3, leastMm: 30, mostMm: 90, cover: 0.12, overlap: 0.3, turned: true, seed: 'one', printable };
  const outlineOf = (placed: PlacedShape) => {
    const own = drawer.shapes.find(({ id }) => id === placed.shape)!;
    return { own, rings: placeRings(own.rings, placed) };
  };
  const found = scatter(ask);

  it('should put the same for the same seed and another for another', () => {
    expect(scatter(ask)).toEqual(found);
    expect(scatter({ ...ask, seed: 'two' }).placed).not.toEqual(found.placed);
  });

  it('should keep to the sizes, the printable part and what is asked to be covered', () => {
    expect(found.placed).toHaveLength(3);
    for (const one of found.placed.flat()) {
      const { own } = outlineOf(one);
      const longest = Math.max(own.widthMm, own.heightMm) * one.scale;
      expect(longest).toBeGreaterThan(29.9);
      expect(longest).toBeLessThan(90.1);
      expect(reachBeyondMm(own, one, printable)).toBeLessThan(0.2);
    }
    expect(found.cover).toBeGreaterThan(0.12);
    expect(found.cover).toBeLessThan(0.18);
  });

  it('should leave pieces of one screen apart, by exact clipping', () => {
    const within = { xMm: 0, yMm: 0, widthMm: drawer.paper.widthMm, heightMm: drawer.paper.heightMm };
    const outlines = found.placed[0]!.map((one) => {
      const { own, rings } = outlineOf(one);
      return prepareOutline({ rings, fillRule: own.fillRule });
    });
    // Rows of the grid are 3 mm apart, so that corners may meet between two of them.
    for (let a = 0; a < outlines.length; a++) {
      for (let b = a + 1; b < outlines.length; b++)
        expect(sharedArea(outlines[a]!, outlines[b]!, { toleranceMm: 1, within, budget: new WorkBudget(1e7) })).toBeLessThan(3);
    }
  });

  it('should lay screens over each other as much as is asked', () => {
    const overlap = (share: number): number => scatter({ ...ask, overlap: share }).overlap;
    expect(overlap(0)).toBe(0);
    expect(overlap(0.6)).toBeGreaterThan(overlap(0.2) + 0.1);
  });

  it.each([
    [{ shapes: [] }, 'scatter.shapes'],
    [{ screens: 0 }, 'scatter.screens'],
    [{ leastMm: 50, mostMm: 20 }, 'scatter.size'],
    [{ cover: 0 }, 'scatter.share'],
  ] as [Partial<Scatter>, string][])('should refuse what cannot be: %o', (wrong, code) => {
    expect(() => scatter({ ...ask, ...wrong })).toThrow(expect.objectContaining({ code }));
  });
});
