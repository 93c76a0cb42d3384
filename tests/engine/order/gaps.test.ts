import { expect, it } from 'vitest';
import { atOnce } from '../../../src/engine/base/at-once.ts';
import { gapSteps } from '../../../src/engine/order/gaps.ts';
import { numbersFrom, sheetShape, stackOf } from '../stack/fixtures.ts';

const square = (x: number, y: number, side = 100): number[] => [x, y, x + side, y, x + side, y + side, x, y + side];

/** Gaps of shapes, one a pull, the first in the lightest ink. */
function gapsOf(rings: number[][][], toleranceMm: number) {
  const { studio, pulls } = stackOf(
    rings.map((each, i) => sheetShape(`g${i}`, each)),
    numbersFrom('gaps'),
  );
  const inks = pulls.map((_, i) => ({ ...studio.inks[0]!, id: `of ${i}`, overWhite: [80 - 10 * i, 0, 0] as [number, number, number] }));
  const stack = { pulls: pulls.map((pull, i) => ({ ...pull, ink: `of ${i}` })) };
  return atOnce(gapSteps(stack, { ...studio, inks }, toleranceMm));
}

// What is expected is worked out by hand from the squares and circles.

it('should find a shared edge, its length and the spread that closes it', () => {
  const [gap, ...more] = gapsOf([[square(50, 50)], [square(150, 50)]], 0.5);
  expect(more).toEqual([]);
  expect(gap).toMatchObject({ a: 0, b: 1, spread: 0, standsMm: 0 });
  expect(gap?.lengthMm).toBeCloseTo(100, 3);
  // Each of the two may lie 0.5 mm off, so that they come 1 mm apart.
  expect(gap?.opensMm).toBeCloseTo(1, 3);
  expect([gap?.xMm, gap?.yMm].map((mm) => Math.round(mm!))).toEqual([150, 100]);
});

it('should find nothing where they overlap enough, lie apart, share an edge on one side, or touch at a corner', () => {
  expect(gapsOf([[square(50, 50)], [square(145, 50)]], 0.5)).toEqual([]);
  expect(gapsOf([[square(50, 50)], [square(149, 50)]], 0.5)).toEqual([]);
  expect(gapsOf([[square(50, 50)], [square(150.6, 50)]], 0.5)).toEqual([]);
  expect(gapsOf([[square(50, 50)], [square(50, 50, 30)]], 0.5)).toEqual([]);
  expect(gapsOf([[square(50, 50)], [square(150, 150)]], 0.5)).toEqual([]);
  expect(gapsOf([[square(50, 50)], [square(100, 100)]], 0.5)).toEqual([]);
  expect(gapsOf([[square(50, 50)], [square(150, 50)]], 0)).toEqual([]);
});

it('should take off what they overlap, and tell of a gap that stands', () => {
  const [lap] = gapsOf([[square(50, 50)], [square(149.6, 50)]], 0.5);
  expect(lap?.standsMm).toBe(0);
  expect(lap?.opensMm).toBeCloseTo(0.6, 3);
  const [apart] = gapsOf([[square(50, 50)], [square(150.3, 80)]], 0.5);
  expect(apart?.standsMm).toBeCloseTo(0.3, 3);
  expect(apart?.opensMm).toBeCloseTo(1.3, 3);
  expect(apart?.lengthMm).toBeCloseTo(70, 3);
});

it('should follow a disc that fills a hole all round, drawn with other corners', () => {
  const circle = (corners: number, radius: number): number[] =>
    Array.from({ length: corners }, (_, i) => [
      200 + radius * Math.cos((2 * Math.PI * i) / corners),
      200 + radius * Math.sin((2 * Math.PI * i) / corners),
    ]).flat();
  const plate = [
    square(100, 100, 200),
    circle(360, 40)
      .reverse()
      .flatMap((_, i, all) => (i % 2 === 0 ? [all[i + 1]!, all[i]!] : [])),
  ];
  const [gap, ...more] = gapsOf([plate, [circle(250, 40)]], 0.25);
  expect(more).toEqual([]);
  // 2π · 40 mm, less what a polygon of 360 corners is shorter.
  expect(Math.abs((gap?.lengthMm ?? 0) - 2 * Math.PI * 40)).toBeLessThan(0.1);
  expect(gap?.standsMm).toBeLessThan(0.01);
  expect(Math.abs((gap?.opensMm ?? 0) - 0.5)).toBeLessThan(0.01);
});

it('should name the lighter ink of the two, first down or last, and the longest pair first', () => {
  const found = gapsOf([[square(50, 50, 40)], [square(50, 90, 100)], [square(150, 90, 100)]], 0.2);
  expect(found.map(({ a, b, spread }) => [a, b, spread])).toEqual([
    [1, 2, 1],
    [0, 1, 0],
  ]);
});
