import * as fc from 'fast-check';
import { describe, it, expect } from 'vitest';
import { checkInk } from '../../../../src/engine/ink/characterise/check-ink.ts';
import { nearestInkColours } from '../../../../src/engine/ink/characterise/nearest-colours.ts';
import type { Lab } from '../../../../src/engine/ink/types.ts';

const lab = fc.tuple(
  fc.double({ min: 1, max: 99, noNaN: true }),
  fc.double({ min: -128, max: 128, noNaN: true }),
  fc.double({ min: -128, max: 128, noNaN: true }),
);

describe('nearestInkColours', () => {
  it('should leave colours alone that an ink can have', () => {
    const overWhite: Lab = [51, 42, 36];
    const overBlack: Lab = [28, 10, 10];
    expect(nearestInkColours(overWhite, overBlack)).toEqual({ overWhite, overBlack });
  });

  it('should give colours that an ink can have, whatever is asked', () => {
    fc.assert(
      fc.property(lab, lab, (overWhite, overBlack) => {
        const near = nearestInkColours(overWhite, overBlack);
        const problems = checkInk({ id: 'x', name: 'x', basis: 'drawdown', ...near });
        expect(problems).toEqual([]);
      }),
      { seed: 7, numRuns: 60 },
    );
  });
});
