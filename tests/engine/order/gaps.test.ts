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

it('should not take edges that cross at a shallow angle, or only touch, for edges that run along each other', () => {
  // Two sides 120 mm long that cross at 2° and 5°, from 0.5 mm apart to 1 mm over each other: 43 and 17 mm of them.
  const slanted = (degrees: number): number[] => {
    const run = 60 * Math.tan((degrees * Math.PI) / 180);
    return [150 - run, 40, 250, 40, 250, 160, 150 + run, 160];
  };
  expect(gapsOf([[square(50, 40, 120).map((mm, i) => (i % 2 === 0 ? mm - 20 : mm))], [slanted(2)]], 0.5)).toEqual([]);
  expect(gapsOf([[square(50, 40, 120).map((mm, i) => (i % 2 === 0 ? mm - 20 : mm))], [slanted(5)]], 0.5)).toEqual([]);
  const disc = (x: number): number[] =>
    Array.from({ length: 720 }, (_, i) => [x + 40 * Math.cos((i * Math.PI) / 360), 200 + 40 * Math.sin((i * Math.PI) / 360)]).flat();
  expect(gapsOf([[disc(100)], [disc(180)]], 0.5)).toEqual([]);
  expect(gapsOf([[disc(100)], [disc(179.5)]], 0.5)).toEqual([]);
});

it('should keep the straight part of sides whose corners are round', () => {
  const rounded = (x: number): number[] =>
    Array.from({ length: 360 }, (_, i) => {
      const angle = (i * Math.PI) / 180;
      const quarter = Math.floor(i / 90);
      const [cx, cy] = [x + (quarter === 0 || quarter === 3 ? 80 : 20), quarter < 2 ? 180 : 120];
      return [cx + 20 * Math.cos(angle), cy + 20 * Math.sin(angle)];
    }).flat();
  const [gap] = gapsOf([[rounded(50)], [rounded(150)]], 0.25);
  // 60 mm run straight beside each other, and round corners of 20 mm begin to part: by 0.25 mm within 2.2 mm at either end.
  expect(gap?.lengthMm).toBeGreaterThan(59);
  expect(gap?.lengthMm).toBeLessThan(64.5);
});

it('should ask whether another pull surely lies where the gap opens', () => {
  const pair = [[square(50, 50)], [square(150, 50)]];
  expect(gapsOf(pair, 0.5)[0]).toMatchObject({ covers: [] });
  expect(gapsOf(pair, 0.5)[0]?.bareMm).toBeCloseTo(100, 3);
  // 3 mm to either side: what may open reaches 1 mm, and the third pull may lie 0.5 mm off.
  expect(gapsOf([...pair, [[147, 40, 153, 40, 153, 160, 147, 160]]], 0.5)[0]).toMatchObject({ a: 0, b: 1, bareMm: 0, covers: [2] });
  // It surely covers 60 of 100 mm; at the two ends of the joint, 0.5 mm of what may open is twice as wide.
  const half = gapsOf([...pair, [[147, 89.5, 153, 89.5, 153, 160, 147, 160]]], 0.5)[0];
  expect(half?.covers).toEqual([2]);
  expect(half?.bareMm).toBeCloseTo((100 * (39.5 + 0.5 * 2)) / (99 + 2), 3);
  // As wide as what may open, it does not surely cover it.
  expect(gapsOf([...pair, [[149.9, 40, 150.1, 40, 150.1, 160, 149.9, 160]]], 0.5).find(({ a, b }) => a === 0 && b === 1)).toMatchObject({
    covers: [],
  });
});

it('should refuse a trap that is wider than traps are, or than a pull is beside the gap', () => {
  const strip = (wide: number): number[] => [150, 50, 150 + wide, 50, 150 + wide, 150, 150, 150];
  expect(gapsOf([[square(50, 50)], [square(150, 50)]], 1)[0]?.noTrap).toBeNull();
  expect(gapsOf([[square(50, 50)], [square(150, 50)]], 1.1)[0]?.noTrap).toEqual({ why: 'wide' });
  expect(gapsOf([[square(50, 50)], [strip(0.8)]], 0.5)[0]?.noTrap).toEqual({ why: 'thin', pull: 1 });
  expect(gapsOf([[strip(0.8)], [square(50, 50)]], 0.5)[0]?.noTrap).toEqual({ why: 'thin', pull: 0 });
  expect(gapsOf([[square(50, 50)], [strip(1.3)]], 0.5)[0]?.noTrap).toBeNull();
});
