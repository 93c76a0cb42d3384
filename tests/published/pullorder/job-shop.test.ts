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

/**
 * When a machine's work is followed to its end at the earliest if it may be broken off: minute by minute
 * what is there and has the most to follow. Source: J. Carlier, The one-machine sequencing problem,
 * European Journal of Operational Research 11, 1982, 42–47 (Jackson's preemptive schedule).
 */
function brokenOff(machine: number): number {
  const work = facts.jobs.map((job) => {
    const at = job.findIndex(([each]) => each === machine);
    const sum = (steps: number[][]): number => steps.reduce((all, [, minutes]) => all + minutes!, 0);
    return { head: sum(job.slice(0, at)), left: job[at]![1]!, tail: sum(job.slice(at + 1)) };
  });
  let end = 0;
  for (let minute = 0; work.some(({ left }) => left > 0); minute++) {
    const [now] = work.filter(({ head, left }) => head <= minute && left > 0).sort((a, b) => b.tail - a.tail);
    if (now === undefined) continue;
    now.left--;
    if (now.left === 0) end = Math.max(end, minute + 1 + now.tail);
  }
  return end;
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
    expect(bound).toBe(Math.max(...facts.jobs.map((_, machine) => brokenOff(machine))));
  });
});
