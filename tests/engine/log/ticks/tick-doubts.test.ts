import { describe, expect, it } from 'vitest';
import { recipesAsPulled, sheetsAsPulled } from '../../../../src/engine/log/as-pulled.ts';
import { minutesLate } from '../../../../src/engine/log/ticks/late.ts';
import { nextState } from '../../../../src/engine/log/ticks/next-state.ts';
import { tickDoubts } from '../../../../src/engine/log/ticks/tick-doubts.ts';
import { measuredPairs, type OrderPairs } from '../../../../src/engine/log/turns.ts';
import type { LogEvent, VisitHead } from '../../../../src/engine/log/types.ts';
import { recipeOf } from '../../../../src/engine/recipe/write.ts';
import type { SetUpCard } from '../../../../src/engine/visit/set-up-cards.ts';
import type { PressPlan } from '../../../../src/engine/visit/visit.ts';
import { pullOf, rectangle, screenAt, smallProject } from '../../../helpers/small-project.ts';

const MINUTE = 60_000;
const { drawer } = smallProject();
// Two that overlap and one that lies by itself.
const recipe = recipeOf(
  [pullOf('under', 's1', 'rust'), pullOf('over', 's2', 'tar'), pullOf('apart', 's4', 'foam')],
  { ...drawer, shapes: [...drawer.shapes, rectangle('small', 40, 40)], screens: [...drawer.screens, screenAt('s4', 4, 'small', 480, 700)] },
  { id: 'a', title: 'Ebb' },
);
const inks = recipe.inks.map((ink) => ({ ...ink, dryMinutes: 30 }));
const head: VisitHead = {
  id: 'v',
  title: 'Visit',
  begunMs: 0,
  recipes: [{ ...recipe, inks }],
  sheets: [1, 2].map((number) => ({ number, recipe: 0 })),
};
const cardOf = (at: number): SetUpCard =>
  ({ number: at + 1, sheets: [1, 2], states: [{ recipe: 0, sheets: [1, 2], prints: [at] }] }) as unknown as SetUpCard;
const pulled = (sheet: number, at: number, atMs: number): LogEvent => ({
  id: `${sheet} ${at} ${atMs}`,
  atMs,
  device: 'd',
  sheet,
  kind: 'pulled',
  pulls: [recipe.pulls[at]!.id],
});

function doubts(at: number, events: LogEvent[], nowMs: number, touching: OrderPairs = measuredPairs(0)) {
  const ticking = { card: cardOf(at), numbers: [1, 2], sheets: sheetsAsPulled(head, events), recipes: recipesAsPulled(head, events) };
  return tickDoubts(ticking, { order: measuredPairs(1), touching }, nowMs);
}

describe('tickDoubts', () => {
  it('should doubt a pull whose under-pull is not down, on the sheets where it is not', () => {
    expect(doubts(1, [pulled(1, 0, 0)], 40 * MINUTE)).toEqual([{ sheet: 2, recipe: 0, kind: 'under', at: 0 }]);
    expect(doubts(0, [], 0)).toEqual([]);
    expect(doubts(2, [], 0)).toEqual([]);
  });

  it('should doubt a pull under one that is down', () => {
    expect(doubts(0, [pulled(1, 1, 0)], 40 * MINUTE)).toEqual([{ sheet: 1, recipe: 0, kind: 'over', at: 1 }]);
  });

  it('should doubt a pull over a wet film that it touches, until the minute in which that is dry', () => {
    const events = [pulled(1, 0, 0), pulled(2, 0, 5 * MINUTE)];
    const rust = inks.find((ink) => ink.id === 'rust')!.name;
    expect(doubts(1, events, 29 * MINUTE).map(({ sheet, kind }) => [sheet, kind])).toEqual([
      [1, 'wet'],
      [2, 'wet'],
    ]);
    expect(doubts(1, events, 30 * MINUTE)).toEqual([{ sheet: 2, recipe: 0, kind: 'wet', ink: rust, dryMs: 35 * MINUTE }]);
    expect(doubts(1, events, 35 * MINUTE)).toEqual([]);
    expect(doubts(2, events, 0)).toEqual([]);
    // Nobody knows yet what touches: then every wet film counts.
    expect(doubts(2, events, 34 * MINUTE, () => null)).toHaveLength(1);
  });

  it('should have none of what is pulled already or spoiled', () => {
    const spoiled: LogEvent = { id: 's', atMs: 1, device: 'd', sheet: 2, kind: 'spoiled', note: '' };
    expect(doubts(0, [pulled(1, 0, 0), spoiled], 0)).toEqual([]);
    expect(doubts(1, [pulled(1, 0, 0), pulled(1, 1, 1), spoiled], 0)).toEqual([]);
  });
});

describe('nextState', () => {
  it('should be after this set-up while it has something left, then after the next one that has', () => {
    const plan = { cards: [cardOf(0), cardOf(1), cardOf(2)] };
    const of = (events: LogEvent[], from: number) => nextState(plan, sheetsAsPulled(head, events)[0]!, head.recipes[0]!, from);
    expect(of([], 0)).toEqual({ setUp: 1, pulls: [recipe.pulls[0]] });
    expect(of([pulled(1, 0, 0)], 0)).toEqual({ setUp: 2, pulls: recipe.pulls.slice(0, 2) });
    expect(of([pulled(1, 0, 0), pulled(1, 1, 1), pulled(1, 2, 2)], 0)).toBeNull();
  });
});

describe('minutesLate', () => {
  // From 9:30: a set-up of two sheets until 10:30, another until 11:30.
  const plan = {
    cards: [cardOf(0), cardOf(1)],
    times: [
      { day: 1, bed: 0, startMinute: 0, endMinute: 60 },
      { day: 1, bed: 0, startMinute: 60, endMinute: 120 },
    ],
    parts: [0, 1].map((setUp) => ({ kind: 'print', setUp, day: 1, bed: 0, fromMinute: 60 * setUp, toMinute: 60 * setUp + 60 })),
    clock: { startMinute: 570, workMinutes: 420, lunch: { fromMinute: 210, minutes: 30 } },
  } as unknown as PressPlan;
  const at = (minuteOfDay: number, day = 1) => ({ atMs: 0, day, minuteOfDay });

  it('should count from the share of the set-up at hand that is ticked', () => {
    expect(minutesLate(plan, new Set(), at(700))).toBeNull();
    expect(minutesLate(plan, new Set(['1:1']), at(600))).toBe(0);
    expect(minutesLate(plan, new Set(['1:1', '1:2']), at(645))).toBe(15);
    expect(minutesLate(plan, new Set(['1:1', '1:2', '2:1']), at(640))).toBe(-20);
    // The studio is open for 450 minutes a day: nights make nobody late, nor does coming early.
    expect(minutesLate(plan, new Set(['1:1']), at(600, 2))).toBe(450);
    expect(minutesLate(plan, new Set(['1:1']), at(1300))).toBe(420);
    expect(minutesLate(plan, new Set(['1:1']), at(60, 2))).toBe(420);
    expect(minutesLate(plan, new Set(['1:1', '1:2', '2:1', '2:2']), at(640))).toBeNull();
  });

  it('should count for the bed that is asked for, and call nobody late who mounts as planned', () => {
    const times = [
      { day: 1, bed: 1, startMinute: 0, endMinute: 60 },
      { day: 1, bed: 0, startMinute: 60, endMinute: 120 },
    ] as PressPlan['times'];
    const parts = [
      { kind: 'print', setUp: 0, day: 1, bed: 1, fromMinute: 0, toMinute: 60 },
      { kind: 'mount', setUp: 1, day: 1, bed: 0, fromMinute: 60, toMinute: 90 },
      { kind: 'print', setUp: 1, day: 1, bed: 0, fromMinute: 90, toMinute: 120 },
    ] as PressPlan['parts'];
    const beds = { ...plan, times, parts };
    const ticks = new Set(['1:1']);
    expect(minutesLate(beds, ticks, at(640), 1)).toBe(40);
    expect(minutesLate(beds, ticks, at(640), 0), 'mounting').toBe(0);
    expect(minutesLate(beds, ticks, at(670), 0)).toBe(10);
    expect(minutesLate(beds, ticks, at(615), 0)).toBe(-15);
    expect(minutesLate(beds, new Set(['1:1', '2:1']), at(680), 0)).toBe(5);
  });
});
