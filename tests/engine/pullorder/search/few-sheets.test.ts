import { describe, expect, it } from 'vitest';
import { randomFrom, type Random } from '../../../../src/engine/base/random.ts';
import { BoundSearch } from '../../../../src/engine/pullorder/bound/bound.ts';
import { compile, partOf, type Model } from '../../../../src/engine/pullorder/model.ts';
import { automataOf } from '../../../../src/engine/pullorder/search/beam.ts';
import { exact } from '../../../../src/engine/pullorder/search/exact.ts';
import { fewSheets, tabledGroups, type FewSheetsResult } from '../../../../src/engine/pullorder/search/few-sheets.ts';
import { GroupTable } from '../../../../src/engine/pullorder/search/group-table.ts';
import type { PlanProblem } from '../../../../src/engine/pullorder/types.ts';
import { bruteForce } from '../brute-force.ts';
import { knownLeast } from '../known-least.ts';

const meter = { units: 0 };

/** Two or three sheets on 5 or 6 screens, some of them twice on a sheet. */
function wide(random: Random): PlanProblem {
  const screens = 5 + random.int(2);
  return {
    sheets: Array.from({ length: 2 + random.int(2) }, () => {
      const order = random.shuffle(Array.from({ length: screens }, (_, s) => s)).slice(0, 5);
      if (random.chance(1, 3)) order.push(order[random.int(3)]!);
      const pulls = order.map((s) => ({ screen: `S${s}`, ink: `I${random.int(2)}` }));
      const overlaps = pulls.flatMap((_, b) =>
        pulls.slice(0, b).flatMap((_, a): [number, number][] => (random.chance(7, 10) ? [[a, b]] : [])),
      );
      return { pulls, overlaps };
    }),
  };
}

/** Searches with random splits; every bound on the way is checked against `truth`. */
function solve(
  given: Model,
  random: Random,
  truth: number,
  options: { below?: number; maxNodes?: number; maxStates?: number } = {},
): FewSheetsResult {
  const model = { ...given, kinds: null };
  const automata = automataOf(model, meter);
  const splits = Array.from({ length: 1 + random.int(3) }, () => {
    const letters = random.shuffle(Array.from({ length: model.letterCount }, (_, l) => l));
    const size = 1 + random.int(4);
    const groups: number[][] = [];
    while (letters.length > 0) groups.push(letters.splice(0, size));
    const shares = tabledGroups(model, automata, groups, { most: 1e6, meter });
    for (;;) {
      const next = shares.next();
      if (next.done) return next.value!;
    }
  });
  const { below = Infinity, ...caps } = options;
  const search = fewSheets(model, automata, splits, { below: () => below, maxNodes: 1e6, meter, ...caps });
  for (;;) {
    const { value, done } = search.next();
    if (done) return value;
    expect(value).toBeLessThanOrEqual(truth);
  }
}

function finishes(model: Model, word: readonly number[]): boolean {
  const automata = automataOf({ ...model, kinds: null }, meter);
  return automata.every((automaton) => {
    // Steps may make the lists longer, so they come first.
    const end = word.reduce((state, l) => automaton.step(state, l), 0);
    return automaton.chain[end] === 0;
  });
}

describe('fewSheets', () => {
  it('should find as short a word as the brute force, for set-ups and for mounts', () => {
    for (let i = 0; i < 60; i++) {
      const random = randomFrom(`few ${i}`);
      const problem = wide(random);
      for (const [model, least] of knownLeast(problem)) {
        const { lower, word, finished } = solve(model, random, least);
        expect({ lower, finished }, `case ${i}`).toEqual({ lower: least, finished: true });
        expect(word).toHaveLength(least);
        expect(finishes(model, word!), `case ${i}`).toBe(true);
        expect(solve(model, random, least, { below: least }), `case ${i}`).toEqual({ lower: least, word: null, finished: true });
        expect(solve(model, random, least, { below: least + 1 }).word, `case ${i}`).toHaveLength(least);
      }
    }
  });

  it('should hold when it is cut short', () => {
    let cut = 0;
    for (let i = 0; i < 60; i++) {
      const random = randomFrom(`cut ${i}`);
      const problem = wide(random);
      const { screenModel } = compile(problem);
      const truth = bruteForce(problem).mounts;
      for (const options of [{ maxNodes: 1 }, { maxNodes: 4 }, { maxNodes: 15 }, { maxStates: 3 }, { maxStates: 6 }]) {
        const { lower, word, finished } = solve(screenModel, random, truth, options);
        expect(lower, `case ${i}`).toBeLessThanOrEqual(truth);
        if (word) expect(word).toHaveLength(truth);
        if (!finished) cut++;
      }
    }
    expect(cut).toBeGreaterThan(120);
  });

  it('should heed a shorter word that is met elsewhere meanwhile', () => {
    const { screenModel } = compile(shuffled('meanwhile'));
    const search = new BoundSearch(screenModel, randomFrom('a'), meter);
    while (!search.word && search.run(1e5));
    const least = search.word!.length;
    expect(search.best).toBe(least);
    expect(finishes(screenModel, search.word!)).toBe(true);
    const again = new BoundSearch(screenModel, randomFrom('a'), meter);
    again.below = least + 3;
    again.run(5e5);
    again.below = least;
    while (again.best < least && again.run(1e5));
    expect(again.best).toBe(least);
    expect(again.word).toBeNull();
  });
});

/** Five sheets through twelve screens, each in an order of its own. */
function shuffled(seed: string): PlanProblem {
  const random = randomFrom(seed);
  const screens = Array.from({ length: 12 }, (_, s) => ({ screen: `S${s}`, ink: 'I' }));
  return {
    sheets: Array.from({ length: 5 }, () => ({
      pulls: random.shuffle(screens),
      overlaps: screens.flatMap((_, b) =>
        screens.slice(0, b).flatMap((_, a): [number, number][] => (random.chance(3, 10) ? [[a, b]] : [])),
      ),
    })),
  };
}

describe('GroupTable', () => {
  it('should give what an exact search gives for what is left of a group, from any tuple', () => {
    for (let i = 0; i < 60; i++) {
      const random = randomFrom(`table ${i}`);
      const compiled = compile(wide(random));
      const model = { ...(i % 2 ? compiled.screenModel : compiled.kindModel), kinds: null };
      const automata = automataOf(model, meter);
      const letters = random.shuffle(Array.from({ length: model.letterCount }, (_, l) => l)).slice(0, 4);
      const table = GroupTable.of(model, automata, letters, { most: 1e6, meter })!;
      const states = automata.map(() => 0);
      while (automata.some((automaton, c) => automaton.chain[states[c]!] !== 0)) {
        const part = partOf(model, (c, p) => letters.includes(model.orders[c]!.letters[p]!) && !automata[c]!.has(states[c]!, p));
        const truth = exact(part, automataOf(part, meter), { below: Infinity, before: -1, after: -1, maxNodes: 1e5, meter });
        const place = states.reduce((sum, state, c) => sum + table.placeOf(c, state), 0);
        expect(table.least[place], `case ${i}`).toBe(truth.lower);
        const letter = random.int(model.letterCount);
        automata.forEach((automaton, c) => (states[c] = automaton.step(states[c]!, letter)));
      }
    }
  });

  it('should refuse tables that are too long, and sheets that are too free', () => {
    const { screenModel } = compile(shuffled('long'));
    const automata = automataOf(screenModel, meter);
    expect(GroupTable.of(screenModel, automata, [0, 1, 2, 3, 4], { most: 100, meter })).toBeNull();
    const free = compile({
      sheets: [{ pulls: Array.from({ length: 40 }, (_, p) => ({ screen: `S${p}`, ink: 'I' })), overlaps: [] }],
    }).screenModel;
    expect(
      GroupTable.of(
        free,
        automataOf(free, meter),
        Array.from({ length: 40 }, (_, l) => l),
        { most: 1e9, meter },
      ),
    ).toBeNull();
  });
});
