import { describe, expect, it } from 'vitest';
import { dryingPairs, overlapsOf } from '../../../src/engine/index.ts';
import { screenRings } from '../../../src/engine/shapes/place/placed.ts';
import type { Shape } from '../../../src/engine/shapes/types.ts';
import { smallProject } from '../../helpers/small-project.ts';

const { drawer, bench } = smallProject();
const options = { toleranceMm: 0.1, minDeltaE: 2 };
const box = (x: number, y: number, width: number, height: number): number[] => [x, y, x + width, y, x + width, y + height, x, y + height];
const across = (n: number): number[][] => Array.from({ length: n }, (_, i) => box(0, i / 10, n / 10, 0.05));
const down = (n: number): number[][] => Array.from({ length: n }, (_, i) => box(i / 10, 0, 0.05, n / 10));

function shape(name: string, rings: number[][]): Shape {
  return { id: name, name, rings, fillRule: 'nonzero', widthMm: 100, heightMm: 100 };
}

/** A pull of each shape, each on a screen of its own. */
function stackOf(shapes: Shape[]) {
  const place = { xMm: 150, yMm: 150, turnDeg: 0, scale: 1 };
  const screens = shapes.map(({ id }, i) => ({ ...drawer.screens[0]!, id, number: i + 1, placed: [{ shape: id, ...place }] }));
  const pulls = shapes.map(({ id }, i) => ({ ...bench[0]!, id: `p${i}`, screen: id, ink: drawer.inks[i % 2]!.id }));
  return { stack: { pulls }, studio: { ...drawer, shapes, screens } };
}

describe('outlines that would take minutes to compare', () => {
  it.each<[what: string, shapes: Shape[], names: string]>([
    ['1,000 stripes that cross', [shape('net', [...across(500), ...down(500)])], '“net” on screen 1'],
    [
      '20,000 boxes on one line',
      [
        shape(
          'shingles',
          Array.from({ length: 20_000 }, (_, i) => box(i / 100, 1, 20, 9)),
        ),
      ],
      '“shingles” on screen 1',
    ],
    [
      '3,000 stripes across 3,000',
      [shape('across', across(3000)), shape('down', down(3000))],
      '“across” on screen 1 and “down” on screen 2',
    ],
  ])('should be refused in one sentence that names them: %s', (_what, shapes, names) => {
    const { stack, studio } = stackOf(shapes);
    const refusal = expect.objectContaining({
      code: 'order.too-much-work',
      message: expect.stringMatching(new RegExp(`^The outlines of ${names} [^.]*\\.$`, 'u')),
    });
    expect(() => overlapsOf(stack, studio, options)).toThrow(refusal);
    expect(() => dryingPairs(stack, studio, options)).toThrow(refusal);
  });

  it('should be refused where shapes of one screen are joined, with its number', () => {
    const shapes = [shape('across', across(1000)), shape('down', down(1000))];
    const placed = shapes.map(({ id }) => ({ shape: id, xMm: 150, yMm: 150, turnDeg: 0, scale: 1 }));
    expect(() => screenRings({ number: 4, placed }, shapes)).toThrow(
      expect.objectContaining({ code: 'screen.too-much-work', message: expect.stringMatching(/^The shapes on screen 4 [^.]*\.$/u) }),
    );
  });

  it('should be compared where they are many and simple', () => {
    // 60 across 60 of 0.05 mm share 3,600 squares of 0.0025 mm².
    const { stack, studio } = stackOf([shape('across', across(60)), shape('down', down(60))]);
    expect(dryingPairs(stack, studio, { toleranceMm: 0 })[0]!.areaMm2).toBeCloseTo(9, 6);
  });
});
