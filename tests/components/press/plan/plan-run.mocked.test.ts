import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { PlanRun } from '../../../../src/components/press/plan/plan-run.ts';
import type { PressPlan } from '../../../../src/engine/visit/visit.ts';
import type { VisitInput } from '../../../../src/engine/visit/visit.ts';
import type { PlanProgress } from '../../../../src/workers/api/plan-api.ts';

const asked = vi.hoisted(() => ({ tell: null as ((progress: PlanProgress) => void) | null }));
vi.mock('../../../../src/workers/client/client.ts', () => ({
  sentenceOf: String,
  askedInVain: () => false,
  engineFor: () => ({
    plan: (_: unknown, { onProgress }: { onProgress: (progress: PlanProgress) => void }) => {
      asked.tell = onProgress;
      return new Promise(() => undefined);
    },
  }),
}));

const host = {
  addController: () => undefined,
  removeController: () => undefined,
  requestUpdate: () => undefined,
  updateComplete: Promise.resolve(true),
};
const order = (mounts: number): PressPlan => ({ mounts }) as PressPlan;

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('PlanRun', () => {
  it('should show each better order soon, also when the search was silent for long before it', async () => {
    const run = new PlanRun(host, { failed: () => undefined, settled: () => undefined });
    void run.start({ runs: [] } as unknown as VisitInput);
    await vi.advanceTimersByTimeAsync(0);
    const found = (mounts: number): void => asked.tell!({ plan: order(mounts), worked: 0.1, measured: 1 });
    found(9);
    expect(run.made?.plan.mounts).toBe(9);
    await vi.advanceTimersByTimeAsync(5000);
    for (const mounts of [8, 7, 6]) {
      found(mounts);
      await vi.advanceTimersByTimeAsync(5000);
      expect(run.made?.plan.mounts).toBe(mounts);
    }
    // What comes close together is shown once, at its end.
    found(5);
    found(4);
    expect(run.made?.plan.mounts).toBe(6);
    await vi.advanceTimersByTimeAsync(5000);
    expect(run.made?.plan.mounts).toBe(4);
    // What was found last is not lost by a stop.
    found(3);
    run.stop();
    expect(run.made?.plan.mounts).toBe(3);
  });
});
