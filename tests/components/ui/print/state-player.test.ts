import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { StatePlayer } from '../../../../src/components/ui/print/state-player.ts';

const PACE = { wholeMs: 4000, shortestMs: 100, longestMs: 400 };

function player(pace = PACE) {
  const host = { addController() {}, removeController() {}, requestUpdate() {}, updateComplete: Promise.resolve(true) };
  return new StatePlayer(host, pace);
}

/** The states shown, looked at each 10 ms, and how long each was. */
function watched(states: StatePlayer, forMs: number): [number | null, number][] {
  const seen: [number | null, number][] = [];
  for (let ms = 0; ms < forMs; ms += 10) {
    const last = seen.at(-1);
    if (last?.[0] === states.shown) last[1] += 10;
    else seen.push([states.shown, 10]);
    vi.advanceTimersByTime(10);
  }
  return seen;
}

describe('StatePlayer', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('should go from bare paper to the last down, as long at each, and stay', () => {
    const states = player();
    states.play(3);
    expect(watched(states, 3000)).toEqual([
      [0, 400],
      [1, 400],
      [2, 400],
      [3, 1800],
    ]);
  });

  it('should hurry through many, but keep bare paper as long as asked', () => {
    const states = player({ ...PACE, barePaperMs: 300 } as typeof PACE);
    states.play(99);
    const seen = watched(states, 5000);
    expect(seen[0]).toEqual([0, 300]);
    expect(seen[1]).toEqual([1, 100]);
  });

  it('should say when it has ended, and nothing once it was stopped', () => {
    const states = player();
    const ended = vi.fn(() => states.stop());
    states.play(1, ended);
    expect(watched(states, 2000)).toEqual([
      [0, 400],
      [1, 800],
      [null, 800],
    ]);
    expect(ended).toHaveBeenCalledTimes(1);
    states.play(5, ended);
    vi.advanceTimersByTime(500);
    states.hostDisconnected();
    vi.advanceTimersByTime(9000);
    expect(states.shown).toBeNull();
    expect(ended).toHaveBeenCalledTimes(1);
  });
});
