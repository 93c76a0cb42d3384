import { describe, expect, it } from 'vitest';
import type { Ink } from '../../../src/engine/ink/types.ts';
import { sheetsAsPulled } from '../../../src/engine/log/as-pulled.ts';
import { restStart } from '../../../src/engine/log/rest-start.ts';
import { planRest, type RestInput } from '../../../src/engine/log/rest.ts';
import type { LogEvent, VisitHead } from '../../../src/engine/log/types.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import type { PressPlan } from '../../../src/engine/visit/press-plan.ts';
import { visitProblem } from '../../../src/engine/visit/visit-problem.ts';
import { planVisit } from '../../../src/engine/visit/visit.ts';
import { pullOf, smallProject } from '../../helpers/small-project.ts';

const { drawer, bench, press } = smallProject();
const DRY: Readonly<Record<string, [dry: number, stack: number]>> = { rust: [100, 300], weed: [30, 70], foam: [20, 40] };
const inks = drawer.inks.map((ink): Ink => {
  const [dryMinutes, stackMinutes] = DRY[ink.id] ?? [10, 20];
  return { ...ink, dryMinutes, stackMinutes };
});
// The third pull touches the second alone, and the fourth nothing.
const pulls = [
  bench[0]!,
  bench[1]!,
  pullOf('p3', 's2', 'foam', { dxMm: 60, dyMm: 180 }),
  pullOf('p4', 's3', 'foam', { dxMm: 200, dyMm: 380 }),
];
const recipe = recipeOf(pulls, { ...drawer, inks }, { id: 'a', title: 'First' });
const head: VisitHead = {
  id: 'v',
  title: 'Visit',
  begunMs: 0,
  recipes: [recipe],
  sheets: [1, 2].map((number) => ({ number, recipe: 0 })),
};
const NOW = 1_000_000_000;
const NOON = 12 * 60;
/** Day 2 begins at 9:30, so noon is 150 minutes on. */
const NOON_OF_DAY_2 = 1440 + 150;

let next = 0;
const ago = (minutes: number, sheet: number, ...of: string[]): LogEvent => ({
  id: `e${next++}`,
  atMs: NOW - minutes * 60_000,
  device: 'd',
  sheet,
  kind: 'pulled',
  pulls: of,
});
const inputOf = (events: LogEvent[], day = 2, minuteOfDay = NOON): RestInput => ({
  runs: [{ recipe, sheets: 2 }],
  minDeltaE: 1,
  press,
  seed: 'x',
  rest: { recipes: [recipe], sheets: sheetsAsPulled(head, events, () => null), now: { atMs: NOW, day, minuteOfDay } },
});

/** How the visit stands with sheet 1 as the events leave it and sheet 2 bare. */
function startOf(events: LogEvent[], change: Partial<RestInput> = {}) {
  const input = { ...inputOf(events), ...change };
  const sheets = input.rest.sheets;
  const left = (at: number) => recipe.pulls.filter((_, i) => !sheets[at]!.done.includes(i));
  const runs = [0, 1].map((at) => ({
    recipe: { ...recipe, pulls: left(at) },
    sheets: 1,
    numbered: [{ number: at + 1 }],
    whole: { recipe, left: left(at).map((pull) => recipe.pulls.indexOf(pull)), sheets: 2 },
  }));
  return restStart(input, input.rest.now!, visitProblem(runs, 1), new Map([0, 1].map((at) => [at + 1, left(at)])));
}

function last<T extends PressPlan>(steps: Iterable<T>): T {
  let plan: T | null = null;
  for (const step of steps) plan = step;
  return plan!;
}

describe('restStart', () => {
  it('should let each pull wait for the film that it touches and that is dry last', () => {
    const { minute, readyAt, stackAt } = startOf([ago(40, 1, 'p1'), ago(10, 1, 'p2')]);
    expect(minute).toBe(NOON_OF_DAY_2);
    // Weed was pulled ten minutes ago and dries in thirty; the third pull does not touch rust.
    expect(readyAt![0]).toEqual([
      { minute: NOON_OF_DAY_2 + 20, ink: 'Weed' },
      { minute: 0, ink: null },
    ]);
    expect(readyAt![1]!.every(({ minute: at }) => at === 0)).toBe(true);
    // The slowest film keeps the sheet in the racks: rust, five hours from when it was pulled.
    expect(stackAt).toEqual([NOON_OF_DAY_2 - 40 + 300, 0]);
  });

  it('should dry as the ink that was really in the screen, of the pull that it was', () => {
    const otherwise: LogEvent = {
      ...ago(5, 1),
      kind: 'otherwise',
      pulls: ['p1'],
      how: { ink: recipe.inks.find(({ id }) => id === 'foam')!, dxMm: 0, dyMm: 0 },
      note: '',
    };
    const placed: LogEvent = { ...ago(400, 1), kind: 'placed', box: 'Rack 2' } as LogEvent;
    const { readyAt, stackAt } = startOf([placed, otherwise]);
    expect(readyAt![0]![0]).toEqual({ minute: NOON_OF_DAY_2 - 5 + 20, ink: 'Foam' });
    expect(stackAt![0]).toBe(NOON_OF_DAY_2 - 5 + 40);
  });

  it('should leave each frame on its own bed, and plan on from there', () => {
    const two = { ...press, beds: 2 };
    const found = last(planVisit({ runs: [{ recipe, sheets: 2 }], minDeltaE: 1, press: two, seed: 'x' }, 50));
    const whole = { ...found, times: found.times.map((time, at) => ({ ...time, bed: at % 2 })) };
    const bedOf = (id: string): number =>
      whole.times[whole.cards.findIndex((card) => card.states.some(({ prints }) => prints.some((at) => recipe.pulls[at]!.id === id)))]!.bed;
    const ids = recipe.pulls.map(({ id }) => id);
    const there = ids.filter((id) => bedOf(id) === 1)[0]!;
    const here = ids.filter((id) => bedOf(id) === 0)[0]!;
    const input = { ...inputOf([ago(30, 1, here), ago(20, 1, there)]), press: two, atHand: whole };
    const rest = last(planRest(input, 50));
    expect(rest.begins!.lastOn).toEqual([
      [1, here],
      [1, there],
    ]);
    const screenOf = (id: string) => ({ screen: recipe.pulls.find((pull) => pull.id === id)!.screen.slice(1) });
    expect(startOf([ago(30, 1, here), ago(20, 1, there)], { press: two, atHand: whole }).onPress).toMatchObject([
      screenOf(here),
      screenOf(there),
    ]);
    // Planned once more, with nothing pulled since: what this order no longer lists is known from the one before.
    expect(last(planRest({ ...input, atHand: rest }, 50)).begins!.lastOn).toEqual(rest.begins!.lastOn);
  });

  it('should know the inks that are mixed and the frame that was pulled last, today', () => {
    const { mixed, onPress } = startOf([ago(40, 1, 'p1'), ago(10, 1, 'p2')]);
    expect([...mixed!].sort()).toEqual(['Rust', 'Weed']);
    expect(onPress).toMatchObject([{ screen: '2', ink: 'Weed' }]);
    expect(startOf([ago(1000, 1, 'p1')]).onPress).toBeUndefined();
    // Pulled this morning since it opened, or four hours ago at the most, whatever the time is.
    expect(startOf([ago(149, 1, 'p1')]).onPress).toBeDefined();
    expect(startOf([ago(239, 1, 'p1')]).onPress).toBeDefined();
    expect(startOf([ago(241, 1, 'p1')]).onPress).toBeUndefined();
  });

  it('should leave the frame on the press where it is planned at night, before the studio opens', () => {
    const rest = last(planRest(inputOf([ago(20, 1, 'p1')], 2, 120), 100));
    expect(rest.begins).toMatchObject({ day: 2, minute: 0, stays: [rest.cards[0]!.screen.key] });
    expect(rest.cards[0]!.mount).toBe(false);
  });

  it('should not make a film wet that is yet to come, where a clock was set back', () => {
    const { readyAt } = startOf([ago(-500, 1, 'p1')]);
    expect(readyAt![0]![0]).toEqual({ minute: NOON_OF_DAY_2 + 100, ink: 'Rust' });
  });
});

describe('planRest', () => {
  it('should count a sheet as wet when one of its pulls must wait, and none on the first morning', () => {
    expect(last(planRest(inputOf([ago(1, 1, 'p1', 'p2')]), 100)).begins!.wetSheets).toBe(1);
    const morning = last(planRest(inputOf([], 1, 9 * 60 + 30), 100)).begins!;
    expect(morning).toEqual({ day: 1, minute: 0, wetSheets: 0, stays: null });
  });

  it('should keep no frame on the press that nothing is left to be pulled with', () => {
    const plan = last(planRest(inputOf([ago(5, 1, 'p1'), ago(4, 2, 'p1')]), 100));
    expect(plan.cards[0]!.mount).toBe(true);
    expect(plan.begins!.stays).toBeNull();
  });
});
