import { describe, expect, it } from 'vitest';
import { turnOfBlues } from '../../../src/engine/colour/rotation.ts';

describe('turnOfBlues', () => {
  // The term of R_T as it is written: Sharma, Wu, Dalal (2005), Color Res. Appl. 30(1), 21–30.
  it('should be sin(60° · exp(−((h − 275°) ÷ 25°)²)) all round, places of its pieces and between', () => {
    const rad = Math.PI / 180;
    let worst = 0;
    for (let i = 0; i < 100_000; i++) {
      const deg = (i * 360) / 100_000;
      const around = (deg - 275) / 25;
      const wanted = Math.sin(60 * rad * Math.exp(-around * around));
      worst = Math.max(worst, Math.abs(turnOfBlues(Math.cos(deg * rad), Math.sin(deg * rad)) - wanted));
    }
    expect(worst).toBeLessThan(1e-13);
  });
});
