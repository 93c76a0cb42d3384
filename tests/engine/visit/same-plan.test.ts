import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Recipe } from '../../../src/engine/recipe/types.ts';
import { compareOrders, figuresOf } from '../../../src/engine/visit/press-plan.ts';
import { PairMemory } from '../../../src/engine/visit/problem/pair-memory.ts';
import { type PressPlan, planVisit, type VisitInput } from '../../../src/engine/visit/visit.ts';
import { CASE_PRESS, inventedVisit } from '../../helpers/printer-cases.ts';

const input = inventedVisit({ recipes: 4, sheets: 2, pulls: 9, screens: 7, seed: 'same', odd: 4 }, { ...CASE_PRESS, registrationMm: 0.5 });

function planned(of: VisitInput, budgetMs = 40): PressPlan {
  return [...planVisit(of, budgetMs)].at(-1)!;
}

/** What a reader of the plan sees: everything but the search itself. */
function read({ cards, times, bound }: PressPlan): unknown {
  return { cards: cards.map((card) => [card.screen.key, card.ink.key, card.dxMm, card.sheets]), times, bound };
}

describe('a plan', () => {
  afterEach(() => {
    vi.restoreAllMocks();
  });

  it('should be the same however slow the machine', () => {
    const quick = read(planned(input));
    let clock = 0;
    vi.spyOn(performance, 'now').mockImplementation(() => (clock += 1e6));
    vi.spyOn(Date, 'now').mockImplementation(() => (clock += 1e6));
    expect(read(planned(input))).toEqual(quick);
  });

  it('should be the same with pairs of pulls that were measured before, and those are not measured again', () => {
    const memory = new PairMemory();
    const recipes = input.runs.map(({ recipe }) => recipe);
    const steps = (of: readonly Recipe[], minDeltaE: number): number => [...memory.measure(of, minDeltaE)].length;
    const first = steps(recipes, input.minDeltaE);
    const copies = structuredClone(recipes);
    expect(steps(copies, input.minDeltaE)).toBe(recipes.length);
    expect(first).toBeGreaterThan(2 * recipes.length);
    expect(read([...planVisit(input, 40, { memory })].at(-1)!)).toEqual(read(planned(input)));
    // Another offset, or another ΔE, is another question.
    copies[0]!.pulls[0]!.dxMm += 1;
    expect(steps(copies, input.minDeltaE)).toBeGreaterThan(recipes.length);
    expect(steps(recipes, input.minDeltaE + 1)).toBe(first);
  });

  it('should get no worse by a longer search, and that one is the same every time too', () => {
    const first = planned(input, 2);
    const longer = { ...input, atHand: first, longer: 1 };
    const second = planned(longer, 2);
    expect(compareOrders(figuresOf(second), figuresOf(first), 1)).toBeLessThanOrEqual(0);
    expect(second.bound.setUps).toBeGreaterThanOrEqual(first.bound.setUps);
    expect(second.bound.mounts).toBeGreaterThanOrEqual(first.bound.mounts);
    expect(read(planned(longer, 2))).toEqual(read(second));
  });

  it('should say of free swaps only what no other order can deny', () => {
    // Many seeds, little work: two searches that both end early must not be compared.
    for (const seed of ['a', 'b', 'c', 'd']) {
      const of = inventedVisit({ recipes: 5, sheets: 1, pulls: 8, screens: 6, seed, odd: 0 });
      const short = planned(of, 1);
      const rigid = planned({ ...of, minDeltaE: 0 }, 300);
      if (short.freeSwaps === 0) continue;
      // An order without free swaps that is known: no more can be saved than it has more.
      expect(short.savedSetUps!).toBeLessThanOrEqual(Math.max(0, rigid.cards.length - short.cards.length));
      expect(short.savedMounts!).toBeLessThanOrEqual(Math.max(0, rigid.mounts - short.mounts));
    }
  });
});
