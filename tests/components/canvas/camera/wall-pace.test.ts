import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { WallPace } from '../../../../src/components/canvas/camera/wall-pace.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** Frames one after the other, each so late after it was asked for, all prints drawn in each. */
function frames(pace: WallPace, count: number, lateMs: number): boolean {
  let moves = false;
  for (let i = 0; i < count; i++) {
    pace.asked();
    vi.advanceTimersByTime(lateMs);
    moves = pace.begins(performance.now());
    pace.drewAll();
  }
  return moves;
}

describe('WallPace', () => {
  it('should call a screen slow whose frames come late, and quick again when they do not', () => {
    const pace = new WallPace(() => {});
    frames(pace, 10, 16);
    expect(pace.slow).toBe(false);
    frames(pace, 10, 90);
    expect(pace.slow).toBe(true);
    frames(pace, 10, 8);
    expect(pace.slow).toBe(false);
    pace.stop();
  });

  it('should have a slow screen drawn once more when it rests, as one that does not move', () => {
    const draw = vi.fn();
    const pace = new WallPace(draw);
    expect(frames(pace, 10, 90)).toBe(true);
    expect(draw).not.toHaveBeenCalled();
    vi.advanceTimersByTime(1000);
    expect(draw).toHaveBeenCalledTimes(1);
    expect(pace.begins(performance.now())).toBe(false);
    pace.stop();
  });

  it('should have prints that arrive together drawn together', () => {
    const draw = vi.fn();
    const pace = new WallPace(draw);
    frames(pace, 1, 16);
    for (let i = 0; i < 5; i++) pace.arrived();
    vi.advanceTimersByTime(1000);
    expect(draw).toHaveBeenCalledTimes(1);
  });

  it('should ask for nothing once it is stopped', () => {
    const draw = vi.fn();
    const pace = new WallPace(draw);
    pace.arrived();
    pace.fineSoon();
    pace.stop();
    vi.advanceTimersByTime(2000);
    expect(draw).not.toHaveBeenCalled();
  });
});
