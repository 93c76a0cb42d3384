import { describe, expect, it } from 'vitest';
import { type ShopOperation, shopBound, shopMinutes, shopOrder } from '../../../src/engine/pullorder/timeline/one-day-shop.ts';
import facts from './job-shop.json';

const operations: ShopOperation[] = facts.jobs.flatMap((job, j) =>
  job.map(([machine, minutes], step) => ({
    machine: String(machine),
    minutes: minutes!,
    after: step === 0 ? [] : [{ operation: j * job.length + step - 1, lagMinutes: 0 }],
  })),
);

/** Minute by minute, by another way than the engine's: no machine and no job is in two places at once. */
function replay(order: readonly number[]): number {
  const steps = facts.jobs[0]!.length;
  const busy = new Map<number, Set<number>>();
  const jobEnd = facts.jobs.map(() => 0);
  const lastOn = new Map<number, number>();
  for (const at of order) {
    const job = Math.floor(at / steps);
    const [machine, minutes] = facts.jobs[job]![at % steps]!;
    const taken = busy.get(machine!) ?? new Set();
    busy.set(machine!, taken);
    let start = Math.max(jobEnd[job]!, lastOn.get(machine!) ?? 0);
    while (taken.has(start)) start++;
    for (let minute = start; minute < start + minutes!; minute++) {
      expect(taken.has(minute)).toBe(false);
      taken.add(minute);
    }
    jobEnd[job] = start + minutes!;
    lastOn.set(machine!, start + minutes!);
  }
  return Math.max(...jobEnd);
}

describe('the job shop of Fisher and Thompson', () => {
  it('should be laid out in its shortest time, 55', () => {
    for (const seed of facts.seeds) {
      const { order, minutes } = shopOrder(operations, seed, facts.rounds);
      expect([...order].sort((a, b) => a - b)).toEqual(operations.map((_, at) => at));
      for (const [at, { after }] of operations.entries()) {
        for (const { operation } of after) expect(order.indexOf(operation)).toBeLessThan(order.indexOf(at));
      }
      expect(replay(order)).toBe(minutes);
      expect(shopMinutes(operations, order)).toBe(minutes);
      expect(minutes).toBe(facts.shortest);
    }
  });

  it('should be bounded from below, never above its shortest time', () => {
    const bound = shopBound(operations);
    // No job is shorter than its own steps, no machine than its work.
    const jobs = facts.jobs.map((job) => job.reduce((sum, [, minutes]) => sum + minutes!, 0));
    expect(bound).toBeGreaterThanOrEqual(Math.max(...jobs));
    expect(bound).toBeLessThanOrEqual(facts.shortest);
    // What breaking work off on one machine proves for it; from memory.
    expect(bound).toBe(52);
  });
});
