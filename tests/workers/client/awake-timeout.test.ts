import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { awakeTimeout } from '../../../src/workers/client/awake-timeout.ts';

describe('awakeTimeout', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('should act once, after the whole time and not before', () => {
    const act = vi.fn();
    awakeTimeout(act, 10_000);
    vi.advanceTimersByTime(9999);
    expect(act).not.toHaveBeenCalled();
    vi.advanceTimersByTime(1);
    expect(act).toHaveBeenCalledTimes(1);
    vi.advanceTimersByTime(60_000);
    expect(act).toHaveBeenCalledTimes(1);
    expect(vi.getTimerCount()).toBe(0);
  });

  it('should not act once it is ended', () => {
    const act = vi.fn();
    const end = awakeTimeout(act, 10_000);
    vi.advanceTimersByTime(9000);
    end();
    vi.advanceTimersByTime(60_000);
    expect(act).not.toHaveBeenCalled();
  });
});
