import { describe, expect, it } from 'vitest';
import { type Random, randomFrom } from '../../../../src/engine/base/random.ts';
import { compile, type Model } from '../../../../src/engine/pullorder/model.ts';
import { canExchange, Exchanger } from '../../../../src/engine/pullorder/search/exchange/exchange.ts';
import { OpenRows } from '../../../../src/engine/pullorder/search/exchange/open-rows.ts';
import { bruteForce } from '../brute-force.ts';
import { smallProblem } from '../small-problem.ts';

/** Sheets through the same screens in orders of their own, part of the pairs touching. */
function model(random: Random, sheets: number, pulls: number, screens: number): Model {
  return compile({
    sheets: Array.from({ length: sheets }, () => {
      const own = Array.from({ length: pulls }, () => ({ screen: `S${random.int(screens)}`, ink: 'i' }));
      const overlaps = own.flatMap((_, b) => own.slice(0, b).flatMap((__, a): [number, number][] => (random.chance(1, 3) ? [[a, b]] : [])));
      return { pulls: own, overlaps };
    }),
  }).screenModel;
}

/** Pulls that a word leaves on all sheets, printed one after another with lists only. */
function leftBy({ orders }: Model, word: readonly number[]): number {
  return orders.reduce((sum, { letters, preds }) => {
    const done = new Set<number>();
    for (const letter of word) {
      for (const [p, own] of letters.entries()) if (own === letter && preds[p]!.every((q) => done.has(q))) done.add(p);
    }
    return sum + letters.length - done.size;
  }, 0);
}

/** How many pulls are open at each place of a word. */
function open(rows: OpenRows): number[] {
  return Array.from({ length: rows.length + 1 }, (_, i) => rows.missing(i, i));
}

/** Every pull by a mount of its own: the longest word that anybody would think of. */
function plain({ orders }: Model): number[] {
  return orders.flatMap(({ letters }) => letters);
}

describe('OpenRows', () => {
  it.each([
    [12, 14, 6],
    [3, 70, 9],
  ])('should follow letters that are put in and struck out as if all was counted anew: %i sheets of %i', (sheets, pulls, screens) => {
    const random = randomFrom(`rows ${sheets}`);
    const of = model(random, sheets, pulls, screens);
    const rows = new OpenRows(of, { units: 0 });
    rows.set(random.shuffle(plain(of)).slice(0, 40));
    for (let i = 0; i < 200; i++) {
      if (random.chance(1, 2) && rows.length > 1) rows.strike(random.int(rows.length));
      else rows.put(random.int(rows.length + 1), random.int(of.letterCount));
      const anew = new OpenRows(of, { units: 0 });
      const word = rows.word.slice(0, rows.length);
      anew.set(word);
      expect(open(rows)).toEqual(open(anew));
      expect(rows.lost.slice(0, rows.length)).toEqual(anew.lost.slice(0, anew.length));
      expect(rows.openOrders.slice(0, rows.openCount)).toEqual(anew.openOrders.slice(0, anew.openCount));
      // Behind the last letter only what was printed counts, and before the first only what comes.
      expect(open(rows).at(-1)).toBe(leftBy(of, [...word]));
    }
  });
});

describe('Exchanger', () => {
  it('should come to the fewest mounts of a brute force from every pull by itself, and never below', () => {
    let reached = 0;
    for (let i = 0; i < 200; i++) {
      const problem = smallProblem(randomFrom(`exchange ${i}`));
      const { screenModel } = compile(problem);
      if (screenModel.orders.length === 0) {
        reached++;
        continue;
      }
      const exchanger = new Exchanger(screenModel, randomFrom('x'), { units: 0 });
      exchanger.set(plain(screenModel));
      exchanger.run(20_000);
      const { mounts } = bruteForce(problem);
      expect(leftBy(screenModel, exchanger.word)).toBe(0);
      expect(exchanger.word.length).toBeGreaterThanOrEqual(mounts);
      if (exchanger.word.length === mounts) reached++;
    }
    expect(reached).toBeGreaterThan(180);
  });

  it('should give whole words of sheets with more pulls than a number has bits, the same for the same seed', () => {
    const of = model(randomFrom('many pulls'), 5, 70, 12);
    expect(canExchange(of, 350)).toBe(true);
    const words = [0, 1].map(() => {
      const exchanger = new Exchanger(of, randomFrom('x'), { units: 0 });
      exchanger.set(plain(of));
      expect(exchanger.run(1_000_000)).toBe(true);
      return exchanger.word;
    });
    expect(leftBy(of, words[0]!)).toBe(0);
    expect(words[0]!.length).toBeLessThan(350);
    expect(words[1]).toEqual(words[0]);
  });

  it('should be for models of screens alone', () => {
    const { kindModel } = compile(smallProblem(randomFrom('kinds')));
    expect(canExchange(kindModel, 10)).toBe(false);
  });
});
