import { describe, expect, it } from 'vitest';
import { nextSetUp, setUpsDone, tickGroups, tickKey } from '../../../../src/engine/log/ticks/ticks.ts';
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
