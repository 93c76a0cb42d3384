import { describe, expect, it } from 'vitest';
import { insideOf, readThrough } from '../../../../src/engine/ink/film/saunderson.ts';

/** The light counted bounce by bounce: what enters, what each return lets out, what is thrown back. */
function bounces(r: number, k1: number, k2: number): { out: number; kept: number } {
  let out = k1;
  let kept = 0;
  let down = 1 - k1;
  for (let i = 0; i < 5000; i++) {
    kept += down * (1 - r);
    const up = down * r;
    out += up * (1 - k2);
    down = up * k2;
  }
  return { out, kept };
}

describe('readThrough', () => {
  it('should count every bounce and lose no light', () => {
    for (const k1 of [0, 0.04, 0.1]) {
      for (const k2 of [0, 0.4, 0.6, 0.9]) {
        for (const r of [0, 0.03, 0.5, 0.97, 1]) {
          const { out, kept } = bounces(r, k1, k2);
          expect(readThrough(r, { k1, k2 })).toBeCloseTo(out, 12);
          expect(readThrough(r, { k1, k2 }) + kept).toBeCloseTo(1, 12);
        }
      }
    }
  });

  it('should agree with the inverse that textbooks print', () => {
    // R = (Rm − k1) / (1 − k1 − k2·(1 − Rm)); the equation is from memory.
    for (const [k1, k2] of [
      [0.04, 0.6],
      [0.04, 0.4],
      [0, 0.5],
    ] as const) {
      for (const read of [0.05, 0.2, 0.5, 0.9]) {
        const inside = (read - k1) / (1 - k1 - k2 * (1 - read));
        expect(insideOf(read, { k1, k2 })).toBeCloseTo(inside, 12);
        expect(readThrough(inside, { k1, k2 })).toBeCloseTo(read, 12);
      }
    }
  });

  it('should be undone by insideOf', () => {
    for (const r of [0, 0.02, 0.4, 1]) expect(insideOf(readThrough(r, { k1: 0.04, k2: 0.6 }), { k1: 0.04, k2: 0.6 })).toBeCloseTo(r, 12);
    expect(insideOf(0.01, { k1: 0.04, k2: 0.6 })).toBe(0);
  });
});
