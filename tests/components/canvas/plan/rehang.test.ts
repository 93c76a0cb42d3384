import { describe, expect, it } from 'vitest';
import { Rehang } from '../../../../src/components/canvas/plan/rehang.ts';

const WHOLE = { scale: 1, x: 0, y: 0 };

describe('Rehang', () => {
  it('should set out from where prints were seen, be half way at half time and arrive exactly', () => {
    const rehang = new Rehang(Float32Array.of(10, 20));
    const from = rehang.at.slice();
    const goal = Float32Array.of(110, 60);
    rehang.hang(goal);
    // Seen at (10 × 2 + 5, 20 × 2 + 7) = (25, 47) before, and so at (25, 47) of a wall that is seen as it is.
    rehang.sendFrom(from, { scale: 2, x: 5, y: 7 }, WHOLE, 1000);
    rehang.step(1000);
    expect([...rehang.at]).toEqual([25, 47]);
    // Slow at both ends: an eighth of the way in the first quarter of the time, as little in the last.
    rehang.step(1105);
    expect([...rehang.at]).toEqual([35.625, 48.625]);
    rehang.step(1315);
    expect([...rehang.at]).toEqual([99.375, 58.375]);
    rehang.step(1210);
    expect([...rehang.at]).toEqual([67.5, 53.5]);
    expect(rehang.moving).toBe(true);
    rehang.step(1420);
    expect(rehang.at).toBe(goal);
    expect(rehang.moving).toBe(false);
  });

  it('should have prints that hung nowhere at their places at once', () => {
    const rehang = new Rehang(Float32Array.of(0, 0, Number.NaN, Number.NaN));
    const from = rehang.at.slice();
    rehang.hang(Float32Array.of(100, 0, 30, 40));
    rehang.sendFrom(from, WHOLE, WHOLE, 0);
    rehang.step(0);
    expect([...rehang.at]).toEqual([0, 0, 30, 40]);
  });

  it('should forget the way when prints are hung anew meanwhile', () => {
    const rehang = new Rehang(Float32Array.of(0, 0));
    rehang.sendFrom(Float32Array.of(50, 50), WHOLE, WHOLE, 0);
    rehang.hang(Float32Array.of(7, 8));
    rehang.step(100);
    expect([...rehang.at]).toEqual([7, 8]);
  });
});
