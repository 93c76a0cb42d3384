import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import { outlineArea } from '../../../../src/engine/geometry/booleans.ts';
import { placeRings, shapeBounds } from '../../../../src/engine/geometry/rings.ts';
import { perform, startHistory, undo } from '../../../../src/engine/project/history.ts';
import { writeProject } from '../../../../src/engine/project/write.ts';
import { changedShape, type ShapeChange } from '../../../../src/engine/shapes/draw/change.ts';
import type { DrawPoint } from '../../../../src/engine/shapes/draw/curve.ts';
import { penPoints } from '../../../../src/engine/shapes/draw/pen.ts';
import { placesAgain } from '../../../../src/engine/shapes/draw/places-again.ts';
import { drawnShape } from '../../../../src/engine/shapes/draw/shape-of.ts';
import type { PlacedShape, Screen, Shape } from '../../../../src/engine/shapes/types.ts';
import { smallProject } from '../../../helpers/small-project.ts';

const HEAD = { id: 'new', name: 'New' };

function corners(...flat: number[]): DrawPoint[] {
  return Array.from({ length: flat.length / 2 }, (_, i) => ({ xMm: flat[2 * i]!, yMm: flat[2 * i + 1]!, round: false }));
}

function square(x: number, y: number, side: number): Shape {
  return drawnShape(corners(x, y, x + side, y, x + side, y + side, x, y + side), { id: `${x} ${y}`, name: 'Square' }).shape;
}

function circlePoints(count: number, radius: number): DrawPoint[] {
  return Array.from({ length: count }, (_, i) => {
    const at = (2 * Math.PI * i) / count;
    return { xMm: 50 + radius * Math.cos(at), yMm: 50 + radius * Math.sin(at), round: true };
  });
}

const done = (shape: Shape, change: ShapeChange): Shape => changedShape(shape, change, HEAD);
const over = (rightMm: number, downMm: number, turnDeg = 0) => ({ rightMm, downMm, turnDeg });

/** Area that another renderer fills of a path, mm², of a page of 100 mm at 20 pixels a mm. */
function renderedMm2(d: string): number {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100"><rect width="100" height="100" fill="#fff"/><path d="${d}"/></svg>`;
  const { pixels } = new Resvg(svg, { fitTo: { mode: 'width', value: 2000 } }).render();
  let dark = 0;
  for (let i = 0; i < pixels.length; i += 4) dark += 255 - pixels[i]!;
  return dark / 255 / 400;
}

describe('drawing a shape', () => {
  it('should enclose what the points say, straight between corners', () => {
    const { shape, crosses } = drawnShape(corners(10, 10, 40, 10, 40, 30), HEAD);
    expect([outlineArea(shape), crosses, shape.widthMm, shape.heightMm]).toEqual([300, false, 30, 20]);
  });

  it('should come within 0.01 mm of a circle through 24 round points', () => {
    const { shape } = drawnShape(circlePoints(24, 20), HEAD);
    const [ring] = shape.rings;
    for (let i = 0; i < ring!.length; i += 2) expect(Math.abs(Math.hypot(ring![i]! - 50, ring![i + 1]! - 50) - 20)).toBeLessThan(0.01);
  });

  it('should fill what another renderer fills of the same curve', () => {
    // Evenly spaced, a centripetal span is the uniform one, whose Bézier handles are a sixth of the way
    // between the neighbours (Catmull and Rom 1974).
    const at = (i: number): [number, number] => [[20, 20], [80, 20], [80, 80], [20, 80]][(i + 4) % 4] as [number, number];
    const handle = (i: number, by: 1 | -1): string => `${at(i)[0] + (by * (at(i + 1)[0] - at(i - 1)[0])) / 6} ${at(i)[1] + (by * (at(i + 1)[1] - at(i - 1)[1])) / 6}`;
    const d = `M20 20${[0, 1, 2, 3].map((i) => `C${handle(i, 1)} ${handle(i + 1, -1)} ${at(i + 1).join(' ')}`).join('')}Z`;
    const { shape } = drawnShape(corners(20, 20, 80, 20, 80, 80, 20, 80).map((point) => ({ ...point, round: true })), HEAD);
    expect(outlineArea(shape) / renderedMm2(d)).toBeCloseTo(1, 3);
  });

  it('should keep a shaky line within the error, with few points', () => {
    const pen = circlePoints(2000, 30).flatMap(({ xMm, yMm }, i) => [xMm + 0.2 * Math.sin(i * 1.7), yMm + 0.2 * Math.cos(i * 2.3)]);
    const kept = penPoints(pen, 0.5);
    expect(kept.length).toBeLessThan(60);
    const { shape } = drawnShape(kept, HEAD);
    for (const ring of shape.rings) for (let i = 0; i < ring.length; i += 2) expect(Math.abs(Math.hypot(ring[i]! - 50, ring[i + 1]! - 50) - 30)).toBeLessThan(0.9);
    expect(outlineArea(shape) / (900 * Math.PI)).toBeCloseTo(1, 2);
  });

  it('should stray from no point of the pen by more than the error, at corners too', () => {
    // A star drawn in steps of half a millimetre.
    const tips = Array.from({ length: 10 }, (_, i) => ({ r: i % 2 === 0 ? 40 : 15, at: (Math.PI * i) / 5 })).map(({ r, at }) => [50 + r * Math.cos(at), 50 + r * Math.sin(at)]);
    const pen = tips.flatMap(([x, y], i) => {
      const [u, v] = tips[(i + 1) % 10]!;
      return Array.from({ length: 60 }, (_, k) => [x! + ((u! - x!) * k) / 60, y! + ((v! - y!) * k) / 60]).flat();
    });
    for (const error of [2, 0.5, 0.1]) {
      const [ring] = drawnShape(penPoints(pen, error), HEAD).shape.rings;
      for (let i = 0; i < pen.length; i += 2) {
        let least = Infinity;
        for (let j = 0; j < ring!.length; j += 2) {
          const [x, y] = [ring![j]!, ring![j + 1]!];
          const [dx, dy] = [ring![(j + 2) % ring!.length]! - x, ring![(j + 3) % ring!.length]! - y];
          const along = Math.min(1, Math.max(0, ((pen[i]! - x) * dx + (pen[i + 1]! - y) * dy) / (dx * dx + dy * dy)));
          least = Math.min(least, Math.hypot(pen[i]! - x - along * dx, pen[i + 1]! - y - along * dy));
        }
        // The outline itself is kept to 0.01 mm.
        expect(least).toBeLessThan(error + 0.01);
      }
    }
  });

  it('should take all that an outline encloses that crosses itself, and say so', () => {
    const { shape, crosses } = drawnShape(corners(0, 0, 40, 40, 40, 0, 0, 40), HEAD);
    expect([outlineArea(shape), crosses]).toEqual([800, true]);
  });

  it('should refuse what is no shape in a sentence', () => {
    expect(() => drawnShape(corners(0, 0, 10, 10, 10, 10), HEAD)).toThrow('at least three points');
    expect(() => drawnShape(corners(0, 0, 10, 10, 20, 20), HEAD)).toThrow('encloses nothing');
    const scribble = Array.from({ length: 9000 }, (_, i) => ({ xMm: 50 + 40 * Math.sin(i * 2.4), yMm: 50 + 40 * Math.cos(i * 1.7), round: false }));
    expect(() => drawnShape(scribble, HEAD)).toThrow('too many small turns');
    expect(() => penPoints([5, 5, 5, 5], 0.5)).toThrow('at least three points');
    expect(() => penPoints(Array.from({ length: 20_002 }, (_, i) => i), 0.5)).toThrow('10,000 points');
  });
});

describe('cutting and joining', () => {
  const [a, b] = [square(10, 10, 20), square(60, 60, 20)];

  it('should join, cut away and keep the exact areas of two squares that lie over each other', () => {
    const place = { other: b, over: over(10, 5) };
    expect(outlineArea(done(a, { kind: 'join', ...place }))).toBeCloseTo(650, 6);
    expect(outlineArea(done(a, { kind: 'cut', ...place }))).toBeCloseTo(250, 6);
    expect(outlineArea(done(a, { kind: 'keep', ...place }))).toBeCloseTo(150, 6);
    expect(shapeBounds(done(a, { kind: 'keep', ...place }).rings)).toEqual({ xMm: 20, yMm: 15, widthMm: 10, heightMm: 15 });
  });

  it('should lay the other shape turned about its middle', () => {
    // Two equal squares about one middle, one turned by 45°, have the octagon of that width in common: 2(√2 − 1) s².
    expect(outlineArea(done(a, { kind: 'keep', other: b, over: over(0, 0, 45) }))).toBeCloseTo(800 * (Math.SQRT2 - 1), 1);
  });

  it('should weld over a gap that is narrower than asked, and leave a wider one', () => {
    const gap = (gapMm: number) => done(a, { kind: 'weld', other: b, over: over(21, 0), gapMm });
    expect(gap(0.9).rings).toHaveLength(2);
    expect(outlineArea(gap(0.9))).toBeCloseTo(800, 1);
    expect(gap(1.1).rings).toHaveLength(1);
    expect(outlineArea(gap(1.1)) - 820).toBeLessThan(0.1);
    expect(820 - outlineArea(gap(1.1))).toBeLessThan(0.5);
  });

  it('should grow by rounds and shrink to straight edges', () => {
    // A square grown by r is the square, a band along each side and a whole circle of corners.
    expect(outlineArea(done(a, { kind: 'grow', mm: 3 }))).toBeCloseTo(400 + 4 * 20 * 3 + 9 * Math.PI, 1);
    expect(outlineArea(done(a, { kind: 'grow', mm: -3 }))).toBeCloseTo(14 * 14, 1);
    const disc = drawnShape(circlePoints(60, 20), HEAD).shape;
    const ring = done(done(disc, { kind: 'grow', mm: 4 }), { kind: 'cut', other: done(disc, { kind: 'grow', mm: -4 }), over: over(0, 0) });
    expect(ring.rings).toHaveLength(2);
    expect(Math.abs(outlineArea(ring) - Math.PI * (24 ** 2 - 16 ** 2))).toBeLessThan(0.01 * 2 * Math.PI * 40);
  });

  it('should mirror and turn about the middle', () => {
    const corner = drawnShape(corners(0, 0, 30, 0, 0, 10), HEAD).shape;
    const points = (shape: Shape) => new Set(shape.rings[0]!.reduce<string[]>((all, x, i, ring) => (i % 2 === 0 ? [...all, `${x} ${ring[i + 1]}`] : all), []));
    expect(points(done(corner, { kind: 'mirror', across: 'left-right' }))).toEqual(new Set(['30 0', '0 0', '30 10']));
    expect(points(done(corner, { kind: 'mirror', across: 'top-bottom' }))).toEqual(new Set(['0 10', '30 10', '0 0']));
    expect(points(done(corner, { kind: 'turn', turnDeg: 90 }))).toEqual(new Set(['20 -10', '20 20', '10 -10']));
  });

  it('should repeat along a line and about a point, overlaps once', () => {
    expect(outlineArea(done(a, { kind: 'along', times: 5, rightMm: 15, downMm: 0 }))).toBeCloseTo(20 * 80, 6);
    const six = done(a, { kind: 'about', times: 6, turnDeg: 60, radiusMm: 50 });
    expect([six.rings.length, Math.round(outlineArea(six) * 10)]).toEqual([6, 24_000]);
    // The point is 50 mm below the middle at 20, 20; the copy that was turned three times lies as far below it.
    expect(shapeBounds(six.rings)).toMatchObject({ yMm: 10, heightMm: 120 });
  });

  it('should refuse what leaves nothing in a sentence', () => {
    expect(() => done(a, { kind: 'cut', other: square(0, 0, 40), over: over(0, 0) })).toThrow('Nothing is left after the cut');
    expect(() => done(a, { kind: 'keep', other: b, over: over(50, 0) })).toThrow('nothing in common');
    expect(() => done(a, { kind: 'grow', mm: -10 })).toThrow('narrower than twice');
    expect(() => done(a, { kind: 'along', times: 201, rightMm: 1, downMm: 0 })).toThrow('1 to 200 times');
  });

  it('should leave what was not cut away where it was printed', () => {
    const after = changedShape(a, { kind: 'cut', other: b, over: over(10, 5) }, { id: a.id, name: a.name });
    const placed: PlacedShape = { shape: a.id, xMm: 200, yMm: 300, turnDeg: 30, scale: 2, mirrored: true };
    const screen: Screen = { id: 's', number: 1, name: '', placed: [placed], mesh: { threadsPerCm: 90, threadUm: 48 } };
    const half = changedShape(a, { kind: 'cut', other: b, over: over(10, 0) }, { id: a.id, name: a.name });
    const [found] = placesAgain(a, half, [screen]);
    const printed = (shape: Shape, at: PlacedShape) => placeRings(shape.rings, at).map((ring) => ({ rings: [ring], fillRule: shape.fillRule }))[0]!;
    const [before, now] = [printed(a, placed), printed(half, found!.placed[0]!)];
    expect(outlineArea(now)).toBeCloseTo(800, 2);
    expect(outlineArea({ rings: [...before.rings, ...now.rings], fillRule: 'nonzero' })).toBeCloseTo(1600, 2);
    expect(placesAgain(a, after, [screen])[0]!.placed[0]).toEqual(placed);
  });

  it('should take the place of a shape on its screens in one step, which one undo takes back', () => {
    const project = smallProject();
    const [screen] = project.drawer.screens;
    const before = project.drawer.shapes.find(({ id }) => id === screen!.placed[0]!.shape)!;
    const after = changedShape(before, { kind: 'along', times: 2, rightMm: 1000, downMm: 0 }, before);
    const places = placesAgain(before, after, project.drawer.screens);
    const done = perform(startHistory(project), { kind: 'replace-shape', shape: after, places });
    expect(done.past).toHaveLength(1);
    expect(done.project.drawer.shapes.find(({ id }) => id === before.id)!.widthMm).toBeCloseTo(before.widthMm + 1000, 3);
    const { xMm, turnDeg, scale } = done.project.drawer.screens[0]!.placed[0]!;
    expect(xMm).toBeCloseTo(screen!.placed[0]!.xMm + 500 * scale * Math.cos((turnDeg * Math.PI) / 180), 3);
    expect(writeProject(undo(done).project)).toBe(writeProject(project));
    expect(() => perform(startHistory(project), { kind: 'replace-shape', shape: { ...after, id: 'ghost' }, places: [] })).toThrow(/no shape "ghost"/);
  });
});
