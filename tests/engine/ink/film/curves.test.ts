import { describe, it, expect } from 'vitest';
import { EngineError } from '../../../../src/engine/base/error.ts';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { labD50, type Lab } from '../../../../src/engine/colour/lab.ts';
import { BANDS } from '../../../../src/engine/colour/weights.ts';
import { CARD_BLACK, CARD_WHITE } from '../../../../src/engine/ink/characterise/card.ts';
import { curveFromColour, nearestPossible, pairCurves } from '../../../../src/engine/ink/film/curves.ts';

function thrownBy(run: () => unknown): EngineError {
  try {
    run();
  } catch (error) {
    return error as EngineError;
  }
  throw new Error('nothing was thrown');
}

describe('curveFromColour', () => {
  it('should hit every possible colour of a grid exactly and stay within 0 and 1', () => {
    let tried = 0;
    for (let l = 3; l < 100; l += 16) {
      for (let a = -100; a <= 100; a += 20) {
        for (let b = -100; b <= 120; b += 20) {
          const lab: Lab = [l, a, b];
          if (nearestPossible(lab)[1] !== a || nearestPossible(lab)[2] !== b) continue;
          const curve = curveFromColour(lab);
          tried++;
          expect(Math.min(...curve)).toBeGreaterThanOrEqual(0);
          expect(Math.max(...curve)).toBeLessThanOrEqual(1);
          labD50(curve).forEach((value, i) => expect(value).toBeCloseTo(lab[i]!, 6));
        }
      }
    }
    expect(tried).toBeGreaterThan(200);
  });

  it('should be flat for greys, all 0 for black and all 1 for white', () => {
    const grey = curveFromColour([50, 0, 0]);
    expect(Math.max(...grey) - Math.min(...grey)).toBeLessThan(1e-9);
    expect(Array.from(curveFromColour([0, 0, 0]))).toEqual(Array(BANDS).fill(0));
    expect(Array.from(curveFromColour([100, 0, 0]))).toEqual(Array(BANDS).fill(1));
  });

  it('should name the nearest possible colour, and that one should work', () => {
    for (const lab of [
      [95, 80, 0],
      [10, -60, 60],
      [50, 0, -140],
      [101, 0, 0],
      [-1, 0, 0],
    ] as Lab[]) {
      const error = thrownBy(() => curveFromColour(lab));
      expect(error.code).toBe('colour.outside-solid');
      const nearest = error.details['nearest'] as Lab;
      labD50(curveFromColour(nearest)).forEach((v, i) => expect(v).toBeCloseTo(nearest[i]!, 3));
    }
    expect(thrownBy(() => curveFromColour([NaN, 0, 0])).code).toBe('colour.not-a-colour');
    expect(thrownBy(() => curveFromColour([50, NaN, 0])).code).toBe('colour.not-a-colour');
  });
});

describe('pairCurves', () => {
  it('should hit both colours and keep over black below over white below the card', () => {
    const overWhite: Lab = [60, 30, 20];
    const overBlack: Lab = [40, 15, 10];
    const pair = pairCurves(overWhite, overBlack, CARD_WHITE, CARD_BLACK);
    expect(deltaE2000(labD50(pair.overWhite), overWhite)).toBeLessThan(1e-6);
    expect(deltaE2000(labD50(pair.overBlack), overBlack)).toBeLessThan(1e-6);
    for (let i = 0; i < BANDS; i++) {
      expect(pair.overBlack[i]).toBeLessThanOrEqual(pair.overWhite[i]!);
      expect(pair.overWhite[i]).toBeLessThanOrEqual(CARD_WHITE[i]!);
    }
  });

  it('should take the same colour on both for an ink that hides all', () => {
    const pair = pairCurves([50, 20, 20], [50, 20, 20], CARD_WHITE, CARD_BLACK);
    pair.overBlack.forEach((r, i) => expect(r).toBeCloseTo(pair.overWhite[i]!, 6));
  });

  it('should bear with another hue only where it is too dark to be told', () => {
    // A red film; the Y of these violets lies 2.9 and 3.5 above that of the film without scattering, of 100.
    const red: Lab = [50, 50, 30];
    for (const l of [22, 24]) {
      expect(thrownBy(() => pairCurves(red, [l, 25, -20], CARD_WHITE, CARD_BLACK)).code).toBe('ink.impossible-pair');
    }
    // A green that the film cannot have either, but 0.5 above: too dark for an eye or a camera to tell.
    const { overBlack } = pairCurves(red, [10, -20, 5], CARD_WHITE, CARD_BLACK);
    expect(deltaE2000(labD50(overBlack), [10, -20, 5])).toBeGreaterThan(5);
  });

  it('should refuse another hue over black than the film can have', () => {
    const error = thrownBy(() => pairCurves([50, 50, 30], [40, -30, 10], CARD_WHITE, CARD_BLACK));
    expect(error.code).toBe('ink.impossible-pair');
    expect(error.message).toMatch(/it could be/);
  });
});
