import { describe, expect, it } from 'vitest';
import { overlapsOf } from '../../../src/engine/order/overlaps.ts';
import { recipeOf, studioOfRecipe } from '../../../src/engine/recipe/write.ts';
import { choiceOf } from '../../../src/engine/visit/fit-choice.ts';
import { recipeWithout } from '../../../src/engine/visit/leave-out.ts';
import { registerRecipes } from '../../../src/engine/visit/registry.ts';
import { smaller, struck } from '../../../src/engine/visit/smaller.ts';
import { Trials } from '../../../src/engine/visit/trials.ts';
import { visitProblem } from '../../../src/engine/visit/visit-problem.ts';
import { type PressPlan, planVisit, type VisitInput } from '../../../src/engine/visit/visit.ts';
import { pullOf, screenAt, smallProject } from '../../helpers/small-project.ts';

const { drawer, bench, press } = smallProject();
const [, , , tar, clear] = drawer.inks;
const stock = { ...tar!, id: 'stock', name: 'Stock black' };
const base = { ...clear!, id: 'base', name: 'Base' };
const grey = {
  ...drawer.inks[1]!,
  id: 'grey',
  name: 'Wet grey',
  mix: [
    { ink: 'stock', parts: 1 },
    { ink: 'base', parts: 4 },
  ],
};
const first = recipeOf(bench, drawer, { id: 'a', title: 'First' });
const turned = recipeOf([...bench].reverse(), drawer, { id: 'b', title: 'Turned' });

function plan(input: VisitInput): PressPlan {
  return [...planVisit(input, 50)].at(-1)!;
}
const visitOf = (change: Partial<VisitInput> = {}): VisitInput => ({
  runs: [
    { recipe: first, sheets: 4 },
    { recipe: turned, sheets: 3 },
  ],
  minDeltaE: 1,
  press,
  seed: 'x',
  ...change,
});

describe('recipeWithout', () => {
  const whole = recipeOf(
    [pullOf('p1', 's1', 'grey'), pullOf('p2', 's2', 'weed'), pullOf('p3', 's3', 'foam')],
    { ...drawer, inks: [...drawer.inks, stock, base, grey] },
    { id: 'a', title: 'First' },
  );

  it('should say what it is without, and bring only what its pulls need, stocks of mixes too', () => {
    const one = recipeWithout(whole, ['s2'], 'x');
    expect(one).toMatchObject({ title: 'First, without 2', id: 'x', seed: '', index: -1 });
    expect(one.screens.map(({ id }) => id)).toEqual(['s1', 's3']);
    expect(one.inks.map(({ id }) => id).sort()).toEqual(['base', 'foam', 'grey', 'stock']);
    // Both are of the wide shape.
    expect(one.shapes.map(({ id }) => id)).toEqual(['wide']);
    const two = recipeWithout(whole, ['s1', 's3'], 'x');
    expect(two.title).toBe('First, without 1 and 3');
    expect(two.inks.map(({ id }) => id)).toEqual(['weed']);
    expect(two.shapes.map(({ id }) => id)).toEqual(['tall']);
    const four = recipeOf(
      [...bench, pullOf('p4', 's4', 'rust')],
      { ...drawer, screens: [...drawer.screens, screenAt('s4', 4, 'wide', 90, 90)] },
      { id: 'a', title: 'First' },
    );
    expect(recipeWithout(four, ['s1', 's2', 's4'], 'x').title).toBe('First, without 1, 2 and 4');
  });
});

describe('registerRecipes', () => {
  it('should name frames of one number and inks of one name apart, however many they are', () => {
    const moved = (xMm: number, ink: string) =>
      recipeOf(
        [pullOf('p', 's', ink)],
        { ...drawer, screens: [screenAt('s', 7, 'wide', xMm, 200)], inks: drawer.inks.map((each) => ({ ...each, name: 'Blue' })) },
        { id: String(xMm), title: 'T' },
      );
    const { screens, inks, screenKey } = registerRecipes([moved(200, 'rust'), moved(210, 'weed'), moved(220, 'foam'), moved(200, 'rust')]);
    const keys = screens.map(({ key }) => key);
    expect(keys[0]).toBe('7');
    expect(new Set(keys).size).toBe(3);
    expect(keys.slice(1)).toEqual(['7 b', '7 c']);
    expect(inks.map(({ key }) => key)).toEqual(['Blue', 'Blue b', 'Blue c']);
    // The same stencil in two recipes is one frame.
    expect(screenKey[3]!.get('s')).toBe('7');
  });

  it('should go on in numbers where the letters end', () => {
    const recipes = Array.from({ length: 29 }, (_, i) =>
      recipeOf([pullOf('p', 's', 'rust')], { ...drawer, screens: [screenAt('s', 7, 'wide', 200 + i, 200)] }, { id: String(i), title: 'T' }),
    );
    const keys = registerRecipes(recipes).screens.map(({ key }) => key);
    expect(keys.slice(25)).toEqual(['7 z', '7 26', '7 27', '7 28']);
  });

  it('should tell stencils apart by their shapes, and weigh a mix from its stocks', () => {
    const tall = recipeOf(
      [pullOf('p', 's1', 'rust')],
      { ...drawer, screens: [screenAt('s1', 1, 'tall', 200, 200)] },
      { id: 't', title: 'T' },
    );
    const wide = recipeOf([pullOf('p', 's1', 'rust')], drawer, { id: 'w', title: 'W' });
    expect(registerRecipes([wide, tall]).screens.map(({ key }) => key)).toEqual(['1', '1 b']);
    // Shapes of other names and the same outlines are one stencil.
    const renamed = structuredClone(wide);
    renamed.shapes[0]!.id = renamed.screens[0]!.placed[0]!.shape = 'other';
    expect(registerRecipes([wide, renamed]).screens).toHaveLength(1);
    const mixed = recipeOf([pullOf('p', 's1', 'grey')], { ...drawer, inks: [stock, base, grey] }, { id: 'm', title: 'M' });
    const [ink] = registerRecipes([mixed]).inks;
    expect(ink!.stocks.map(({ ink: { name }, parts }) => [name, parts])).toEqual([
      ['Stock black', 1],
      ['Base', 4],
    ]);
  });
});

describe('a plan', () => {
  it('should tell the sheets of each recipe, and how soon it could end', () => {
    const made = plan(visitOf());
    expect(made.recipes.map(({ id, sheets }) => [id, sheets])).toEqual([
      ['a', [1, 2, 3, 4]],
      ['b', [5, 6, 7]],
    ]);
    const minutes = ({ day, minute }: { day: number; minute: number }): number => day * 1440 + minute;
    expect(minutes(made.endsAtLeast!)).toBeGreaterThan(1440);
    expect(minutes(made.endsAtLeast!)).toBeLessThanOrEqual(minutes(made.ends));
  });

  it('should not say how soon it could end where one set-up is longer than a day', () => {
    const one = recipeOf([pullOf('x', 's1', 'rust')], drawer, { id: 'o', title: 'One' });
    const made = plan(visitOf({ runs: [{ recipe: one, sheets: 300 }], press: { ...press, hoursPerDay: 2 } }));
    expect(made.problems.map(({ code }) => code)).toContain('visit.long-set-up');
    expect(made.endsAtLeast).toBeNull();
  });

  it('should give the instruction of most sheets first, each sheet once and in turn', () => {
    const of = (id: string, strokes: number) => recipeOf([pullOf('x', 's1', 'rust', { strokes })], drawer, { id, title: id });
    const [a, b] = [of('a', 1), of('b', 2)];
    const { cards } = plan(
      visitOf({
        runs: [
          { recipe: a, sheets: 1 },
          { recipe: b, sheets: 3, proofs: 1 },
        ],
      }),
    );
    expect(cards).toHaveLength(1);
    expect(cards[0]!.strokes).toBe(2);
    // The proof has the last number and is pulled first.
    expect(cards[0]!.instructions!.map(({ strokes, sheets }) => [strokes, sheets])).toEqual([
      [2, [2, 3, 4, 5]],
      [1, [1]],
    ]);
    // The same way of two recipes is one, its sheets joined: 1 and the proof 4 of the first, 2 and 3 of the other.
    const again = plan(
      visitOf({
        runs: [
          { recipe: b, sheets: 1, proofs: 1 },
          { recipe: of('c', 2), sheets: 2 },
        ],
      }),
    );
    expect(again.cards[0]!.instructions!.map(({ sheets }) => sheets)).toEqual([[1, 2, 3, 4]]);
  });
});

describe('what is left of a recipe', () => {
  it('should keep the order that shows and the drying of the whole, under its own places', () => {
    const runs = [{ recipe: { ...first, pulls: first.pulls.slice(1) }, sheets: 1, whole: { recipe: first, left: [1, 2], sheets: 1 } }];
    const { problem, drying, freeSwaps } = visitProblem(runs, 1);
    const all = overlapsOf({ pulls: first.pulls }, studioOfRecipe(first), { toleranceMm: 0.05, minDeltaE: 1 });
    expect(all.map(({ a, b }) => [a, b])).toEqual([
      [0, 1],
      [0, 2],
      [1, 2],
    ]);
    expect(problem.sheets[0]!.overlaps).toEqual([[0, 1]]);
    expect(drying).toEqual([[[0, 1]]]);
    expect(freeSwaps).toEqual([0]);
    const apart = [{ ...runs[0]!, recipe: { ...first, pulls: [first.pulls[2]!] }, whole: { recipe: first, left: [2], sheets: 1 } }];
    expect(visitProblem(apart, 1).problem.sheets[0]!.overlaps).toEqual([]);
  });
});

describe('changes on an order at hand', () => {
  const input = visitOf({
    runs: [
      { recipe: first, sheets: 0 },
      { recipe: first, sheets: 4, overs: 1 },
      { recipe: turned, sheets: 3 },
    ],
  });
  const made = plan(input);
  const trials = new Trials(input, made);

  it('should name the sheets by the runs that print, and of fewer sheets the last that are wanted', () => {
    expect(trials.sheets({ kind: 'recipe', run: 1 }).sort()).toEqual([1, 2, 3, 4, 8]);
    expect(trials.sheets({ kind: 'sheets', run: 1, fewer: 2 })).toEqual([3, 4]);
    expect(trials.sheets({ kind: 'sheets', run: 2, fewer: 1 })).toEqual([7]);
    expect(trials.sheets({ kind: 'screen', run: 2, screen: 's1' })).toEqual([5, 6, 7]);
    expect(trials.sheets({ kind: 'days', days: 9 })).toEqual([]);
  });

  it('should strike a recipe from it and keep every pull of the rest', () => {
    const whole = visitProblem(input.runs, { minDeltaE: 1, registrationMm: press.registrationMm });
    const less = smaller(whole, input, [{ kind: 'recipe', run: 2 }]);
    const { setUps, beds } = struck(made, less);
    const pulls = setUps.flatMap((setUp) => setUp.pulls.map(([sheet, pull]) => `${sheet} ${pull}`));
    expect(pulls.toSorted()).toEqual([0, 1, 2, 3, 4].flatMap((sheet) => [0, 1, 2].map((pull) => `${sheet} ${pull}`)).toSorted());
    expect(beds).toEqual(setUps.map(() => 0));
  });

  it('should tell in tenths what a change does to a print', () => {
    const change = { kind: 'screen', run: 1, screen: 's1' } as const;
    const tried = trials.quick([change]);
    const { steps, savedMinutes } = choiceOf(trials, [change], tried, null);
    expect(steps).toHaveLength(1);
    expect(Math.abs(steps[0]!.deltaE - trials.deltaE(change))).toBeLessThanOrEqual(0.05 + 1e-9);
    expect(steps[0]!.deltaE).toBeGreaterThan(0);
    expect(savedMinutes).toBe(Math.round(trials.base.minutes) - Math.round(tried.minutes));
    const three = [change, { kind: 'screen', run: 2, screen: 's2' }, { kind: 'sheets', run: 1, fewer: 2 }] as const;
    const after = [0, 1, 2, 3].map((taken) => Math.round((taken === 0 ? trials.base : trials.quick(three.slice(0, taken))).minutes));
    expect(choiceOf(trials, three, trials.quick(three), null).steps.map((step) => step.savedMinutes)).toEqual(
      [0, 1, 2].map((i) => after[i]! - after[i + 1]!),
    );
    expect(new Set(after).size).toBe(4);
  });
});
