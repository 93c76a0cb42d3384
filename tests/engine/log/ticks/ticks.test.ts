import { describe, expect, it } from 'vitest';
import { nextAtBed, nextAtBeds, nextSetUp, setUpsDone, tickGroups, tickKey } from '../../../../src/engine/log/ticks/ticks.ts';
import type { PressPlan } from '../../../../src/engine/visit/visit.ts';

const PLAN = {
  cards: [
    { number: 1, sheets: [1, 2] },
    { number: 2, sheets: [2] },
    { number: 3, sheets: [1, 2] },
  ],
} as unknown as PressPlan;

describe('tickGroups', () => {
  it('should give a few sheets a box each', () => {
    expect(tickGroups([3, 4, 9])).toEqual([[3], [4], [9]]);
  });
  it('should give many sheets a box for ten, never over a gap, and lose none', () => {
    const sheets = [...Array.from({ length: 44 }, (_, i) => i + 1), ...Array.from({ length: 12 }, (_, i) => i + 101)];
    const groups = tickGroups(sheets);
    expect(groups.flat()).toEqual(sheets);
    expect(groups.map((group) => group.length)).toEqual([10, 10, 10, 10, 4, 10, 2]);
    expect(groups[5]![0]).toBe(101);
  });
});

describe('setUpsDone', () => {
  it('should count a set-up only when every sheet of it is ticked', () => {
    const ticked = new Set([tickKey(1, 1), tickKey(1, 2), tickKey(3, 1)]);
    expect([...setUpsDone(PLAN, ticked)]).toEqual([0]);
    expect(nextSetUp(PLAN, ticked)).toBe(1);
  });
  it('should stay at the last set-up when all are done', () => {
    const ticked = new Set(PLAN.cards.flatMap((card) => card.sheets.map((sheet) => tickKey(card.number, sheet))));
    expect(setUpsDone(PLAN, ticked).size).toBe(3);
    expect(nextSetUp(PLAN, ticked)).toBe(2);
    expect(nextSetUp(PLAN, new Set())).toBe(0);
  });
});

describe('nextAtBed', () => {
  const numbers = [1, 2, 3, 4, 5];
  const onBeds = (...beds: number[]): PressPlan =>
    ({ cards: numbers.map((number) => ({ number, sheets: [1] })), times: beds.map((bed) => ({ bed })) }) as unknown as PressPlan;
  const ticked = (...done: number[]): Set<string> => new Set(done.map((number) => tickKey(number, 1)));

  it('should go on at the bed of the printer who asks', () => {
    const plan = onBeds(0, 1, 0, 1, 1);
    expect(nextAtBed(plan, ticked(), 0)).toBe(2);
    expect(nextAtBed(plan, ticked(), 1)).toBe(3);
    expect(nextAtBed(plan, ticked(2), 1)).toBe(3);
    expect(nextAtBed(plan, ticked(4), 3), 'what was passed over comes first').toBe(1);
  });
  it('should help at another bed when its own has none left, and end with the last', () => {
    const plan = onBeds(0, 1, 0, 1, 1);
    expect(nextAtBed(plan, ticked(1, 3), 2)).toBe(1);
    expect(nextAtBed(plan, ticked(), 2)).toBe(5);
    expect(nextAtBed(plan, ticked(), 4)).toBe(5);
  });
  it('should take set-ups of one bed one after the other', () => {
    const plan = onBeds(0, 0, 0, 0, 0);
    expect(numbers.map((_, at) => nextAtBed(plan, ticked(), at))).toEqual([1, 2, 3, 4, 5]);
    expect(nextAtBed(plan, ticked(1, 2, 4), 3)).toBe(2);
  });
});

describe('nextAtBeds', () => {
  it('should give what each bed goes on with, whatever was pulled out of order, and -1 where a bed has none left', () => {
    const plan = { ...PLAN, times: [{ bed: 0 }, { bed: 1 }, { bed: 0 }] } as unknown as PressPlan;
    const ticked = (...numbers: number[]): Set<string> =>
      new Set(
        PLAN.cards
          .filter(({ number }) => numbers.includes(number))
          .flatMap((card) => card.sheets.map((sheet) => tickKey(card.number, sheet))),
      );
    expect(nextAtBeds(plan, ticked())).toEqual([0, 1]);
    expect(nextAtBeds(plan, ticked(3))).toEqual([0, 1]);
    expect(nextAtBeds(plan, ticked(1))).toEqual([2, 1]);
    expect(nextAtBeds(plan, ticked(1, 2))).toEqual([2, -1]);
  });
});
