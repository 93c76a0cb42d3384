import { describe, expect, it } from 'vitest';
import { randomFrom, type Random } from '../../../../src/engine/base/random.ts';
import { SKETCH_LENGTH } from '../../../../src/engine/explore/look/sketch.ts';
import { arrangeByTaste } from '../../../../src/engine/explore/taste/arrange-by-taste.ts';
import type { TasteChoice, TastePrint } from '../../../../src/engine/explore/taste/choices.ts';
import { tasteOfWall } from '../../../../src/engine/explore/taste/taste-of-wall.ts';
import { learnTaste, viewOf } from '../../../../src/engine/explore/taste/taste.ts';
import { answer, answers, chance, COUNT, known, prints, share, standard, VARYING, worths } from './simulated-choices.ts';

/** Prints that choices are made among; the rest are held out. */
const SHOWN = 80;

const normal = (random: Random): number => Math.sqrt(-2 * Math.log(share(random))) * Math.cos(2 * Math.PI * share(random));

/** Tastes that generate choices: how much each print of the wall is worth to one. */
const TASTES: Record<string, (random: Random) => number[]> = {
  'of all traits, linear': (random) => {
    const weights = VARYING.map(() => normal(random));
    return standard.map((row) => VARYING.reduce((sum, trait, i) => sum + row[trait]! * weights[i]!, 0));
  },
  'of three traits, linear': (random) => {
    const some = random.shuffle(VARYING).slice(0, 3);
    const signs = some.map(() => (random.chance(1, 2) ? 1 : -1));
    return standard.map((row) => some.reduce((sum, trait, i) => sum + row[trait]! * signs[i]!, 0));
  },
  'of two traits, for a value of each': (random) => {
    const some = random.shuffle(VARYING).slice(0, 2);
    const best = some.map(() => 0.7 * normal(random));
    return standard.map((row) => -some.reduce((sum, trait, i) => sum + Math.abs(row[trait]! - best[i]!), 0));
  },
  'of two traits, both wanted': (random) => {
    const some = random.shuffle(VARYING).slice(0, 2);
    return standard.map((row) => Math.min(...some.map((trait) => row[trait]!)));
  },
  'of the sketch, linear, mostly unknown to the model': (random) => {
    const weights = Array.from({ length: SKETCH_LENGTH }, () => normal(random));
    return prints.map(({ sketch }) => weights.reduce((sum, weight, i) => sum + weight * sketch[i]!, 0));
  },
};

interface HeldOut {
  taste: number;
  bayes: number;
}

/** Share of the choices between held-out prints that are foretold, by the taste that was learnt and by the one that makes them. */
function heldOut(name: string, count: number, runs: number): HeldOut {
  const sum = { taste: 0, bayes: 0, all: 0 };
  for (let run = 0; run < runs; run++) {
    const random = randomFrom(`${name} ${run}`);
    const worth = worths(TASTES[name]!(random));
    const order = random.shuffle(prints.map((_, i) => i));
    const taste = learnTaste(answers(worth, order.slice(0, SHOWN), random, count), prints)!;
    const scores = prints.map((print) => viewOf(taste, print).score);
    const held = order.slice(SHOWN);
    for (const a of held) {
      for (const b of held) {
        if (a >= b) continue;
        const first = chance(worth, a, b);
        sum.all++;
        sum.taste += scores[a]! > scores[b]! ? first : scores[a]! < scores[b]! ? 1 - first : 0.5;
        sum.bayes += Math.max(first, 1 - first);
      }
    }
  }
  return { taste: sum.taste / sum.all, bayes: sum.bayes / sum.all };
}

describe('a taste learnt from choices', () => {
  it.each([
    // Least share of what lies between chance and the best that can be known.
    ['of all traits, linear', 0.6],
    ['of three traits, linear', 0.6],
    ['of two traits, for a value of each', 0.35],
    ['of two traits, both wanted', 0.45],
    ['of the sketch, linear, mostly unknown to the model', 0.25],
  ])('should foretell held-out choices by a taste %s', (name, least) => {
    const [few, many] = [heldOut(name, 20, 8), heldOut(name, 60, 8)];
    if (process.env['TASTE_FIGURES'] !== undefined) console.log(name, { few, many });
    expect((many.taste - 0.5) / (many.bayes - 0.5)).toBeGreaterThan(least);
    expect(few.taste).toBeGreaterThan(0.55);
    expect(many.taste).toBeGreaterThan(few.taste);
  });

  it('should learn more from pairs that it asks for than from pairs by chance', () => {
    const name = 'of three traits, linear';
    const sum = { asked: 0, chance: 0 };
    for (let run = 0; run < 4; run++) {
      const random = randomFrom(`asked ${run}`);
      const worth = worths(TASTES[name]!(random));
      const asked: TasteChoice[] = [];
      const wall = { keys: known.map(({ key }) => key), measures: prints.map(({ measures }) => measures), sketches: sketches() };
      while (asked.length < 20) {
        const { pair } = tasteOfWall({ ...wall, choices: asked, towards: 100, unsure: 20, passed: 0 });
        asked.push(answer(worth, pair![0], pair![1], random));
      }
      const right = (choices: TasteChoice[]): number => {
        const taste = learnTaste(choices, prints)!;
        const scores = prints.map((print) => viewOf(taste, print).score);
        return prints.reduce(
          (all, _, a) =>
            all + prints.reduce((some, __, b) => some + (a !== b && scores[a]! > scores[b]! === worth[a]! > worth[b]! ? 1 : 0), 0),
          0,
        );
      };
      sum.asked += right(asked);
      sum.chance += right(
        answers(
          worth,
          prints.map((_, i) => i),
          random,
          20,
        ),
      );
    }
    expect(sum.asked).toBeGreaterThan(sum.chance);
  });

  it('should be the same whatever order the choices come in, as far as a wall shows it', () => {
    const random = randomFrom('order');
    const worth = worths(TASTES['of three traits, linear']!(random));
    const choices = answers(
      worth,
      prints.map((_, i) => i),
      random,
      30,
    );
    const scores = (list: TasteChoice[]) => {
      const taste = learnTaste(list, prints)!;
      return prints.map((print) => viewOf(taste, print).score);
    };
    const [there, back] = [scores(choices), scores(choices.toReversed())];
    there.forEach((score, i) => expect(Math.abs(score - back[i]!)).toBeLessThanOrEqual(1));
  });
});

function sketches(): Float32Array {
  const all = new Float32Array(COUNT * SKETCH_LENGTH);
  prints.forEach(({ sketch }, i) => all.set(sketch, i * SKETCH_LENGTH));
  return all;
}

/** Mean distance from each of some prints to the nearest other, in OKLab. */
function spreadOf(some: readonly number[]): number {
  const far = (a: number, b: number): number =>
    Math.sqrt(prints[a]!.sketch.reduce((sum, value, i) => sum + (value - prints[b]!.sketch[i]!) ** 2, 0));
  return some.reduce((sum, a) => sum + Math.min(...some.filter((b) => b !== a).map((b) => far(a, b))), 0) / some.length;
}

describe('a wall as one chooses', () => {
  const FIRST = 24;
  const run = (towards: number, unsure: number, seed = 'wall') => {
    const random = randomFrom(seed);
    const worth = worths(TASTES['of three traits, linear']!(random));
    const taste = learnTaste(
      answers(
        worth,
        prints.map((_, i) => i),
        random,
        40,
      ),
      prints,
    )!;
    const views = prints.map((print) => viewOf(taste, print));
    const points = { scores: Int32Array.from(views, ({ score }) => score), doubts: Int32Array.from(views, ({ doubt }) => doubt) };
    return { worth, views, order: arrangeByTaste({ ...points, points: sketches(), dimensions: SKETCH_LENGTH }, { towards, unsure }) };
  };
  const mean = (worth: readonly number[], some: readonly number[]): number => some.reduce((sum, i) => sum + worth[i]!, 0) / some.length;

  it('should hang every print once', () => {
    expect(run(100, 20).order.toSorted((a, b) => a - b)).toEqual(prints.map((_, i) => i));
  });

  it('should hang what one chooses first, what one never chooses at the other end, and neither in the middle', () => {
    const [liked, never, middle] = [run(100, 0), run(-100, 0), run(0, 0)];
    const top = mean(liked.worth, liked.order.slice(0, FIRST));
    const bottom = mean(never.worth, never.order.slice(0, FIRST));
    if (process.env['TASTE_FIGURES'] !== undefined) console.log({ top, bottom, middle: mean(middle.worth, middle.order.slice(0, FIRST)) });
    expect(top).toBeGreaterThan(0.8);
    expect(bottom).toBeLessThan(-0.8);
    const between = mean(middle.worth, middle.order.slice(0, FIRST));
    expect(between).toBeLessThan(top - 1);
    expect(between).toBeGreaterThan(bottom + 1);
  });

  it('should never be a wall of sameness: the first prints are spread at least nine tenths as far as as many prints by chance', () => {
    const shares = ['a', 'b', 'c', 'd'].map((seed) => {
      const random = randomFrom(`chance ${seed}`);
      const usual = Array.from({ length: 10 }, () => spreadOf(random.shuffle(prints.map((_, i) => i)).slice(0, FIRST)));
      return spreadOf(run(100, 20, seed).order.slice(0, FIRST)) / (usual.reduce((sum, each) => sum + each, 0) / usual.length);
    });
    if (process.env['TASTE_FIGURES'] !== undefined) console.log('spread of the first, against chance', shares);
    for (const each of shares) expect(each).toBeGreaterThan(0.9);
  });

  it('should keep a share of places for prints that the taste is unsure about', () => {
    const { order, views } = run(100, 25);
    const doubt = (some: readonly number[]): number => some.reduce((sum, i) => sum + views[i]!.doubt, 0) / some.length;
    const open = order.slice(0, FIRST).filter((_, place) => place % 4 === 3);
    expect(doubt(open)).toBeGreaterThan(doubt(order));
    expect(run(100, 0).order.slice(0, FIRST)).not.toEqual(order.slice(0, FIRST));
  });
});

describe('choices that say nothing, or too much', () => {
  const wall = { keys: known.map(({ key }) => key), measures: prints.map(({ measures }) => measures), sketches: sketches() };
  const asked = { ...wall, towards: 100, unsure: 20, passed: 0 };

  it('should leave the wall as it was found without choices, and offer two prints', () => {
    const { order, learnt, pair } = tasteOfWall({ ...asked, choices: [] });
    expect({ order, learnt }).toEqual({ order: null, learnt: { choices: 0, claims: [], foretold: null, against: null } });
    expect(pair![0]).not.toBe(pair![1]);
  });

  it('should learn nothing from prints that were all chosen', () => {
    const choices = known.slice(0, 6).map((chosen, i): TasteChoice => ({ way: 'selected', chosen, over: [known[(i + 1) % 6]!] }));
    expect(tasteOfWall({ ...asked, choices })).toMatchObject({ order: null, learnt: { choices: 0 } });
  });

  it('should name two prints of which each was chosen over the other', () => {
    const [a, b] = known as [TastePrint, TastePrint];
    const choices: TasteChoice[] = [
      { way: 'compared', chosen: a, over: [b] },
      { way: 'compared', chosen: b, over: [a] },
    ];
    const { learnt, order } = tasteOfWall({ ...asked, choices });
    expect(learnt.against).toEqual(['no. 1', 'no. 2']);
    expect(learnt.claims).toEqual([]);
    expect(order).toHaveLength(COUNT);
  });

  it('should offer a pair once, and another when none was chosen', () => {
    const first = tasteOfWall({ ...asked, choices: [] }).pair!;
    expect(tasteOfWall({ ...asked, choices: [], passed: 1 }).pair).not.toEqual(first);
    const choices: TasteChoice[] = [{ way: 'compared', chosen: known[first[0]]!, over: [known[first[1]]!] }];
    expect(tasteOfWall({ ...asked, choices }).pair!.toSorted((a, b) => a - b)).not.toEqual(first.toSorted((a, b) => a - b));
  });
});
