import { entryAt } from '../../base/at.ts';
import { type DayClock, dayClock } from './day-clock.ts';
import { DEFAULT_PRESS_TIMES } from './default-times.ts';
import type { TimelineInput, TimelineStart } from './start-state.ts';

/** What is the same for every plan that is laid out for one visit. */
export interface PressRules {
  input: TimelineInput;
  start: TimelineStart;
  clock: DayClock;
  pullMinutes: number;
  /** Each stroke after the first of a pull. */
  strokeMinutes: number;
  mountMinutes: number;
  washUpMinutes: number;
  registerMinutes: number;
  mixMinutes: number;
  testPulls: number;
  stackMinutesByInk: Readonly<Record<string, number>>;
  /** Wet sheets that there is room for; Infinity for as many as need be. */
  rackPlaces: number;
  /** For each sheet and pull the pulls that touch it. */
  touching: number[][][];
}

/** The rules of a visit, from what its timeline is laid out for. */
export function pressRules(input: TimelineInput): PressRules {
  const { problem, times, visit, start = {} } = input;
  return {
    input,
    start,
    clock: dayClock(visit),
    pullMinutes: 60 / times.pullsPerHour,
    strokeMinutes: times.strokeMinutes ?? 0,
    mountMinutes: times.mountMinutes,
    washUpMinutes: times.washUpMinutes,
    registerMinutes: times.registerMinutes ?? DEFAULT_PRESS_TIMES.registerMinutes,
    mixMinutes: times.mixMinutes ?? 0,
    testPulls: times.testPulls ?? 0,
    stackMinutesByInk: input.stackMinutesByInk ?? input.dryMinutesByInk,
    rackPlaces: visit.rackPlaces ?? Infinity,
    touching: problem.sheets.map((sheet, s) => {
      const lists: number[][] = sheet.pulls.map(() => []);
      for (const [a, b] of input.touching?.[s] ?? sheet.overlaps) {
        entryAt(lists, a).push(b);
        entryAt(lists, b).push(a);
      }
      return lists;
    }),
  };
}
