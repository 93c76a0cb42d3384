import { Resvg } from '@resvg/resvg-js';
import { expect, it } from 'vitest';
import { intersectionArea, outlineArea } from '../../../../src/engine/geometry/booleans.ts';
import { shapeBounds } from '../../../../src/engine/geometry/rings.ts';
import { perform, startHistory, undo } from '../../../../src/engine/project/history.ts';
import { writeProject } from '../../../../src/engine/project/write.ts';
import type { Project } from '../../../../src/engine/project/types.ts';
import { bladePieces } from '../../../../src/engine/shapes/draw/blade.ts';
import { piecesAgain } from '../../../../src/engine/shapes/draw/places-again.ts';
import { screenRings } from '../../../../src/engine/shapes/place/placed.ts';
import type { PlacedShape, Screen, Shape } from '../../../../src/engine/shapes/types.ts';
import { smallProject } from '../../../helpers/small-project.ts';
import { blobRing, numbersFrom, sheetShape } from '../../stack/fixtures.ts';

const square = (x: number, y: number, side: number): number[] => [x, y, x + side, y, x + side, y + side, x, y + side];
const circle = (x: number, y: number, radius: number, corners = 720): number[] =>
  Array.from({ length: corners }, (_, i) => [x + radius * Math.cos((2 * Math.PI * i) / corners), y + radius * Math.sin((2 * Math.PI * i) / corners)]).flat();
const areas = (pieces: readonly Shape[]): number[] => pieces.map(outlineArea);
const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);

/** Area that another renderer fills, mm², of a page of 100 mm at 20 pixels a mm. */
function renderedMm2({ rings }: Shape): number {
  const d = rings.map((ring) => `M${ring.join(' ')}Z`).join('');
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100"><rect width="100" height="100" fill="#fff"/><path d="${d}"/></svg>`;
  const { pixels } = new Resvg(svg, { fitTo: { mode: 'width', value: 2000 } }).render();
  let dark = 0;
  for (let i = 0; i < pixels.length; i += 4) dark += 255 - pixels[i]!;
  return dark / 255 / 400;
}

// Areas are worked out by hand.

it('should cut a square in two along a straight line, a slanted one, and one that ends on its edges', () => {
  const shape = sheetShape('s', [square(10, 10, 80)]);
  const [upper, lower, ...more] = bladePieces(shape, [0, 40, 100, 40]);
  expect(more).toEqual([]);
  expect(outlineArea(upper!)).toBeCloseTo(80 * 50, 1);
  expect(outlineArea(lower!)).toBeCloseTo(80 * 30, 1);
  expect([upper!.name, lower!.name]).toEqual(['s, piece 1', 's, piece 2']);
  expect(areas(bladePieces(shape, [10, 10, 90, 90]))).toEqual([expect.closeTo(3200, 1), expect.closeTo(3200, 1)]);
  expect(areas(bladePieces(shape, [10, 30, 50, 50, 90, 30]))).toEqual([expect.closeTo(4000, 1), expect.closeTo(2400, 1)]);
});

it('should keep every bit of the area whatever line is drawn, without overlaps', () => {
  const next = numbersFrom('blade');
  for (let i = 0; i < 12; i++) {
    const shape = sheetShape('b', [blobRing(next, 50, 50, 40, 90), blobRing(next, 50, 50, 12, 40).reverse().flatMap((_, at, all) => (at % 2 === 0 ? [all[at + 1]!, all[at]!] : []))]);
    const line = [-10, 100 * next(), ...Array.from({ length: 24 }, () => 100 * next()), 110, 100 * next()];
    const pieces = bladePieces(shape, line);
    expect(pieces.length).toBeGreaterThan(1);
    // Corners go to the micrometre: half of one along some metres of edges.
    expect(Math.abs(sum(areas(pieces)) - outlineArea(shape))).toBeLessThan(0.3);
    for (const [at, piece] of pieces.slice(0, 6).entries()) {
      for (const other of pieces.slice(at + 1, 7)) expect(intersectionArea(piece, other)).toBeLessThan(0.02);
    }
  }
});

it('should fill in pieces what another renderer fills of the shape', () => {
  const shape = sheetShape('ring', [circle(50, 50, 40), circle(50, 50, 15).reverse().flatMap((_, i, all) => (i % 2 === 0 ? [all[i + 1]!, all[i]!] : []))]);
  const pieces = bladePieces(shape, [5, 20, 40, 60, 60, 35, 95, 80]);
  expect(pieces).toHaveLength(2);
  for (const piece of pieces) expect(Math.abs(renderedMm2(piece) - outlineArea(piece))).toBeLessThan(1);
  expect(Math.abs(sum(pieces.map(renderedMm2)) - renderedMm2(shape))).toBeLessThan(1);
  expect(sum(areas(pieces))).toBeCloseTo(Math.PI * (1600 - 225) * (Math.sin(Math.PI / 360) / (Math.PI / 360)), 0);
});

it('should leave holes with the piece they lie in, and cut a loop out of the middle', () => {
  const holed = sheetShape('h', [square(10, 10, 80), [20, 20, 20, 30, 30, 30, 30, 20]]);
  const [right, left] = bladePieces(holed, [45, 0, 45, 100]);
  expect([outlineArea(left!), outlineArea(right!)]).toEqual([expect.closeTo(35 * 80 - 100, 1), expect.closeTo(45 * 80, 1)]);
  // A line that crosses itself within: the loop falls out, its two tails cut nothing.
  const looped = bladePieces(sheetShape('s', [square(10, 10, 80)]), [30, 60, 60, 30, 60, 60, 30, 30]);
  // The tails meet at 45, 45: a triangle 30 wide and 15 high falls out.
  expect(areas(looped)).toEqual([expect.closeTo(6400 - 225, 1), expect.closeTo(225, 1)]);
});

it('should count the pieces of a line that goes across several times', () => {
  const comb = bladePieces(sheetShape('s', [square(10, 10, 80)]), [20, 0, 20, 100, 40, 100, 40, 0, 60, 0, 60, 100]);
  expect(areas(comb).map((area) => Math.round(area))).toEqual([2400, 1600, 1600, 800]);
});

it('should refuse a line that cuts nothing apart, in a sentence', () => {
  const shape = sheetShape('s', [square(10, 10, 80)]);
  const hole = sheetShape('h', [square(10, 10, 80), [40, 40, 40, 60, 60, 60, 60, 40]]);
  for (const [what, line] of [
    [shape, [0, 0, 5, 90]],
    [shape, [0, 50, 50, 50]],
    [shape, [30, 30, 60, 60]],
    [hole, [0, 50, 50, 50]],
  ] as const) {
    expect(() => bladePieces(what, line)).toThrow(/does not cut the shape apart: draw it right across/);
  }
  expect(() => bladePieces(shape, [0, 50, 0, 50])).toThrow(/two points or more/);
  expect(bladePieces(hole, [0, 50, 100, 50])).toHaveLength(2);
});

it('should put the pieces in the place of the shape, so that a screen prints as before, in one step to undo', () => {
  const project = smallProject();
  const [shape] = project.drawer.shapes;
  const box = shapeBounds(shape!.rings);
  const placed: PlacedShape = { shape: shape!.id, xMm: 200, yMm: 300, turnDeg: 35, scale: 1.5, mirrored: true };
  const screens: Screen[] = project.drawer.screens.map((screen, i) => (i === 0 ? { ...screen, placed: [placed] } : screen));
  const before: Project = { ...project, drawer: { ...project.drawer, screens } };
  const middle = box.xMm + box.widthMm / 2;
  const pieces = bladePieces(shape!, [middle, box.yMm - 5, middle, box.yMm + box.heightMm + 5]).map((piece, i) => ({ ...piece, id: `piece ${i}` }));
  const command = { kind: 'cut-to-pieces', shape: shape!.id, pieces, places: piecesAgain(shape!, pieces, screens) } as const;
  const done = perform(startHistory(before), command);
  const ringsOn = ({ drawer }: Project) => screenRings(drawer.screens[0]!, new Map(drawer.shapes.map((one) => [one.id, one])));
  const [was, is] = [ringsOn(before), ringsOn(done.project)];
  expect(Math.abs(outlineArea(is) - outlineArea(was))).toBeLessThan(0.2);
  expect(outlineArea(was) - intersectionArea(was, is)).toBeLessThan(0.2);
  expect(done.project.drawer.shapes.map(({ id }) => id)).toEqual([...pieces.map(({ id }) => id), ...before.drawer.shapes.slice(1).map(({ id }) => id)]);
  expect(writeProject(undo(done).project)).toBe(writeProject(before));
  expect(() => perform(startHistory(before), { ...command, shape: 'ghost' })).toThrow(/no shape "ghost"/);
});
