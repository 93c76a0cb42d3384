import { describe, expect, it } from 'vitest';
import { Spending } from '../../../src/components/wall/prepare/spending.ts';
import type { PrepareStep } from '../../../src/engine/explore/prepare/prepare.ts';
import { smallProject } from '../../helpers/small-project.ts';

const { drawer } = smallProject();
const steps = [0, 0, 2, 2, 5, 5].map((printed, count): PrepareStep => ({ count, screens: [], inks: [], printed, bound: printed }));

describe('Spending', () => {
  it('should begin at half of the prints or as wished, and where a budget is set at the least that prints all it buys', () => {
    const free = new Spending(drawer, { moneyEach: 12 });
    expect(free.startOf(steps, { most: 5, all: 5, wished: null })).toBe(4);
    expect(free.startOf(steps, { most: 5, all: 5, wished: 1 })).toBe(1);
    const bound = new Spending(drawer, { money: 36, moneyEach: 12 });
    expect(bound.allowed('screens')).toBe(3);
    expect(bound.startOf(steps, { most: 3, all: 5, wished: 0 })).toBe(2);
    expect(bound.startOf(steps, { most: 1, all: 5, wished: 3 })).toBe(0);
  });

  it('should ask the search anew only where screens take differently', () => {
    const [film, more] = [new Spending(drawer, { filmM2: 1 }), new Spending(drawer, { filmM2: 2 })];
    expect(film.asksAs(more, 'screens')).toBe(false);
    expect(film.asksAs(new Spending(drawer, { filmM2: 1, money: 9, moneyEach: 1 }), 'screens')).toBe(true);
    expect(film.asksAs(more, 'inks')).toBe(true);
    expect(film.asksAs(new Spending(drawer, { filmM2: 1, filmMarginMm: 2 }), 'screens')).toBe(false);
  });
});
