import { describe, expect, it } from 'vitest';
import { sheetsAsPulled } from '../../../../src/engine/log/as-pulled.ts';
import { retimed, type UnderWay } from '../../../../src/engine/log/now/retimed.ts';
import { measuredPairs } from '../../../../src/engine/log/turns.ts';
import type { LogEvent } from '../../../../src/engine/log/types.ts';
import { visitHeadOf } from '../../../../src/engine/log/visit-head.ts';
import { recipeOf } from '../../../../src/engine/recipe/write.ts';
import { planVisit } from '../../../../src/engine/visit/visit.ts';
import { pullOf, smallProject } from '../../../helpers/small-project.ts';

const { drawer, press } = smallProject();
/** Rust first, then weed over it: they overlap, so each sheet waits until rust is dry. */
const recipe = recipeOf([pullOf('p1', 's1', 'rust'), pullOf('p2', 's2', 'weed')], drawer, { id: 'a', title: 'First' });
const DRY = recipe.inks.find(({ id }) => id === 'rust')!.dryMinutes;
// A pull a minute, nothing else but mounts of 10 and washes of 20, from 9:30.
const figures = {
  ...press,
  pullsPerHour: 60,
  mountMinutes: 10,
  washUpMinutes: 20,
  mixMinutes: 0,
  lunchMinutes: 0,
  dayStartMinute: 570,
  hoursPerDay: 8,
};
const plan = [...planVisit({ runs: [{ recipe, sheets: 3 }], minDeltaE: 0, press: figures, seed: 'x' }, 20)].at(-1)!;
const head = visitHeadOf(plan, [recipe], { id: 'v', title: 'v', begunMs: 0, minDeltaE: 0 });
/** Moments are minutes of the first day, from midnight. */
const at = (minutes: number): number => minutes * 60_000;
const pulled = (minutes: number, sheet: number, pull: string): LogEvent => ({
  id: `${minutes} ${sheet}`,
  atMs: at(minutes),
  device: 'd',
  sheet,
  kind: 'pulled',
  pulls: [pull],
});
const momentOf = (ms: number) => ({ atMs: ms, day: 1 + Math.floor(ms / at(1440)), minuteOfDay: Math.floor(ms / 60_000) % 1440 });

function way(events: LogEvent[], nowMinutes: number, change: Partial<UnderWay> = {}): UnderWay {
  return {
    plan,
    sheets: sheetsAsPulled(head, events, () => null),
    recipes: [recipe],
    test: null,
    touching: measuredPairs(0),
    press: figures,
    now: momentOf(at(nowMinutes)),
    momentOf,
    ...change,
  };
}

const ALL_RUST = [1, 2, 3].map((sheet) => pulled(600 + sheet, sheet, 'p1'));

describe('an order on the clock of what was ticked', () => {
  it('should be as planned until something is', () => {
    expect(plan.cards).toHaveLength(2);
    expect(retimed(way([], 600))).toBeNull();
    expect(retimed(way(ALL_RUST, 610, { touching: () => null }))).toBeNull();
  });

  it('should begin what is left now, washed, mounted and dry by the real films', () => {
    const now = retimed(way(ALL_RUST, 605))!;
    // By hand, minutes from 9:30: the last rust at 33, now 35; wash 20 and mount 10 until 65.
    // Sheet 1 is dry DRY after 31, and each takes a minute.
    const first = Math.max(65, 31 + DRY);
    expect(now.times[1]).toMatchObject({ day: 1, startMinute: 35, endMinute: Math.max(first + 3, 33 + DRY + 1) });
    // What is done stands where it was: from a pull before the first tick to the last.
    expect(now.times[0]).toMatchObject({ day: 1, startMinute: 30, endMinute: 33, waitMinutes: 0 });
    expect(plan.times[1]!.startMinute).not.toBe(35);
  });

  it('should need no mount for the frame that is on the press', () => {
    const begun = retimed(way([ALL_RUST[0]!], 602))!;
    // Two sheets are left, a minute each, from 32 on; it was begun a pull before the tick at 31.
    expect(begun.times[0]).toMatchObject({ startMinute: 30, endMinute: 34 });
    // The next morning it is mounted anew: 10 and two pulls from the day's start on.
    const nextDay = retimed(way([ALL_RUST[0]!], 1440 + 570))!;
    expect(nextDay.times[0]).toMatchObject({ day: 2, startMinute: 0, endMinute: 12 });
  });

  it('should be later by the minutes that nobody ticked', () => {
    const ends = (minutes: number): number => retimed(way(ALL_RUST, minutes))!.ends.minute;
    const late = 33 + DRY;
    expect(ends(570 + late + 60) - ends(570 + late)).toBe(60);
  });

  it('should leave out spoiled sheets and end where all is done', () => {
    const spoiled: LogEvent = { id: 's', atMs: at(604), device: 'd', sheet: 3, kind: 'spoiled', note: '' };
    const late = 570 + 33 + DRY;
    const [three, two] = [[], [spoiled]].map((more) => retimed(way([...ALL_RUST, ...more], late))!.times[1]!.endMinute);
    expect(three! - two!).toBe(1);
    const done = [...ALL_RUST, ...[1, 2, 3].map((sheet) => pulled(700 + sheet, sheet, 'p2'))];
    expect(retimed(way(done, 800))!.ends).toEqual({ day: 1, minute: 703 - 570 });
  });

  it('should count opening hours only: what was ticked at night stands at the opening, and what is left begins then', () => {
    const night = retimed(
      way(
        [1, 2, 3].map((sheet) => pulled(120 + sheet, sheet, 'p1')),
        125,
      ),
    )!;
    expect([...night.outside]).toEqual([0]);
    expect(night.times[0]).toMatchObject({ day: 1, startMinute: 0, endMinute: 0 });
    expect(night.parts.filter(({ setUp, kind }) => setUp === 0 && kind === 'print')).toEqual([]);
    // Dry since the night; washed and mounted from 9:30 on, then a pull a minute. No hour of the night is in it.
    expect(night.times[1]).toMatchObject({ day: 1, startMinute: 0, endMinute: 33 });
    // Begun at night and gone on with by day: only what is left takes time.
    const half = (now: number) => retimed(way([pulled(121, 1, 'p1')], now))!.times[0];
    expect(half(130)).toMatchObject({ day: 1, startMinute: 0, endMinute: 2 });
    // After a night the frame is mounted anew.
    expect(half(570)).toMatchObject({ day: 1, startMinute: 0, endMinute: 12 });
    const late = retimed(
      way(
        [1, 2, 3].map((sheet) => pulled(1200 + sheet, sheet, 'p1')),
        1210,
      ),
    )!;
    expect(late.times[0]).toMatchObject({ startMinute: 480, endMinute: 480 });
    expect(retimed(way(ALL_RUST, 605))!.outside.size).toBe(0);
  });

  it('should leave the frame on the press over midnight, and not over a night', () => {
    const begun = (now: number): number => retimed(way([pulled(1430, 1, 'p1')], now))!.times[0]!.endMinute;
    // Two sheets are left, a minute each; a mount takes 10.
    expect(begun(1450)).toBe(2);
    expect(begun(1440 + 570)).toBe(12);
  });
});
