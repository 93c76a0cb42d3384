import { describe, expect, it } from 'vitest';
import { apply } from '../../../src/engine/project/apply.ts';
import { recipeSchema } from '../../../src/engine/recipe/schema.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import type { FitChoice } from '../../../src/engine/visit/fit-choice.ts';
import { changeOfLeavingOut, recipeWithout } from '../../../src/engine/visit/leave-out.ts';
import { Trials } from '../../../src/engine/visit/trials.ts';
import { takingsOf, timesOf } from '../../../src/engine/visit/visit-changes.ts';
import { workMinutes } from '../../../src/engine/visit/visit-times.ts';
import { planVisit, type PressPlan, type VisitInput } from '../../../src/engine/visit/visit.ts';
import { whatToDrop } from '../../../src/engine/visit/what-to-drop.ts';
import { pullOf, smallProject } from '../../helpers/small-project.ts';

const project = smallProject();
const { drawer } = project;
const first = recipeOf(project.bench, drawer, { id: 'a', title: 'First' });
const turned = recipeOf([...project.bench].reverse(), drawer, { id: 'b', title: 'Turned' });
const input: VisitInput = {
  runs: [
    { recipe: first, sheets: 6 },
    { recipe: turned, sheets: 4 },
  ],
  minDeltaE: 1,
  press: { ...project.press, days: 1, hoursPerDay: 2 },
  seed: 'x',
};

function plan(of: VisitInput): PressPlan {
  let last: PressPlan | null = null;
  for (const step of planVisit(of, 200)) last = step;
  return last!;
}

function choices(of: VisitInput): FitChoice[] {
  const search = whatToDrop(of, plan(of));
  for (let next = search.next(); ; next = search.next()) if (next.done) return next.value;
}

describe('whatToDrop', () => {
  it('should promise no more than planning the smaller visit gives', () => {
    const base = plan(input);
    expect(base.times.some((time) => !time.fits)).toBe(true);
    const found = choices(input);
    expect(found.length).toBeGreaterThan(1);
    for (const choice of found) {
      const after = choice.plan ?? plan({ ...input, runs: choice.runs, press: { ...input.press, ...choice.press } });
      // The long search may do better, never much worse: what was promised is an order that exists.
      expect(after.cards.length).toBeLessThanOrEqual(base.cards.length - choice.savedSetUps);
      if (choice.fits) expect(choice.plan!.times.every((time) => time.fits)).toBe(true);
      expect(choice.steps.reduce((sum, step) => sum + step.savedSetUps, 0)).toBe(choice.savedSetUps);
      expect(choice.steps.reduce((sum, step) => sum + step.savedMinutes, 0)).toBe(choice.savedMinutes);
      expect(Math.abs(workMinutes(base) - workMinutes(after) - choice.savedMinutes)).toBeLessThanOrEqual(60);
    }
  });

  it('should set what fits first and more time last', () => {
    const found = choices(input);
    const taking = found.filter(({ steps }) => steps.some(({ change }) => 'run' in change));
    expect(taking.map(({ fits }) => fits)).toEqual([...taking.map(({ fits }) => fits)].sort((a, b) => Number(b) - Number(a)));
    expect(found.slice(0, taking.length)).toEqual(taking);
    expect(found.at(-1)!).toMatchObject({ steps: [{ change: { kind: 'days' }, deltaE: 0, sheets: [] }], fits: true });
  });

  it('should rank what only helps by minutes saved for its harm, and leave out what saves nothing', () => {
    // A long visit, so that hardly one change makes it fit.
    const much: VisitInput = { ...input, runs: input.runs.map((run) => ({ ...run, sheets: run.sheets * 3 })) };
    const trials = new Trials(much, plan(much));
    const found = choices(much);
    const helping = found.filter(({ fits, steps }) => !fits && steps.length === 1);
    expect(helping.length).toBeGreaterThan(1);
    const worth = helping.map(({ steps: [step] }) => {
      const { change } = step!;
      if (!('run' in change)) throw new Error('more time does not only help');
      const tried = trials.searched([change]);
      expect(step!.savedMinutes).toBeGreaterThanOrEqual(1);
      return (trials.base.minutes - tried.minutes) / trials.harm(change);
    });
    expect(worth).toEqual(worth.toSorted((a, b) => b - a));
    // None that was left out is worth more.
    const named = new Set(helping.map(({ steps }) => JSON.stringify(steps[0]!.change)));
    const others = takingsOf(much).filter((change) => !named.has(JSON.stringify(change)));
    const rest = others.map((change) => ({ change, tried: trials.searched([change]) })).filter(({ tried }) => !tried.fits);
    if (helping.length === 5)
      for (const { change, tried } of rest)
        expect((trials.base.minutes - tried.minutes) / trials.harm(change)).toBeLessThanOrEqual(worth.at(-1)! + 1e-9);
  });

  it('should give one longer day, the least that fits, and only where it does', () => {
    const short: VisitInput = { ...input, press: { ...input.press, hoursPerDay: 4 } };
    const base = plan(short);
    const hours = choices(short).flatMap(({ steps, fits }) =>
      steps.length === 1 && steps[0]!.change.kind === 'hours' ? [{ change: steps[0]!.change, fits }] : [],
    );
    const trials = new Trials(short, base);
    const least = timesOf(short, base).find((change) => change.kind === 'hours' && trials.quick([change]).fits);
    expect(least).toBeDefined();
    expect(hours).toEqual([{ change: least, fits: true }]);
  });

  it('should name the sheets that a change touches', () => {
    for (const { change, sheets } of choices(input).flatMap(({ steps }) => steps)) {
      if (change.kind === 'screen' || change.kind === 'recipe')
        expect(sheets).toEqual(change.run === 0 ? [1, 2, 3, 4, 5, 6] : [7, 8, 9, 10]);
      if (change.kind === 'sheets') expect(sheets).toHaveLength(change.fewer);
    }
  });

  it('should combine changes where no single one is enough, each needed and planned anew', () => {
    const third = recipeOf([project.bench[1]!, project.bench[0]!, project.bench[2]!], drawer, { id: 'c', title: 'Third' });
    const much: VisitInput = {
      ...input,
      runs: [
        { recipe: first, sheets: 16 },
        { recipe: turned, sheets: 14 },
        { recipe: third, sheets: 12 },
      ],
      press: { ...project.press, days: 1, hoursPerDay: 3 },
    };
    const found = choices(much);
    const combined = found.filter(({ steps }) => steps.length > 1);
    expect(combined.length).toBeGreaterThan(0);
    for (const choice of combined) {
      expect(choice.steps.length).toBeLessThanOrEqual(4);
      expect(choice.fits).toBe(true);
      // The order is there already, and it is one of the visit as thinned.
      expect(choice.plan!.times.every((time) => time.fits)).toBe(true);
      expect(choice.plan!.sheets).toHaveLength(choice.runs.reduce((sum, run) => sum + run.sheets, 0));
      const pulls = choice
        .plan!.cards.flatMap((card) => card.states)
        .reduce((sum, state) => sum + state.sheets.length * state.prints.length, 0);
      expect(pulls).toBe(choice.runs.reduce((sum, run) => sum + run.sheets * run.recipe.pulls.length, 0));
      for (const { recipe } of choice.runs) expect(recipeSchema.safeParse(recipe).success).toBe(true);
      // Nothing fits before the last change, or it would not be there.
      expect(choice.steps.every(({ savedMinutes, change }) => savedMinutes > 0 || !('run' in change))).toBe(true);
    }
    expect(found[0]!.fits).toBe(true);
  });

  it('should be stoppable after each of many small steps', () => {
    let steps = 0;
    let last = 0;
    for (const share of whatToDrop(input, plan(input))) {
      expect(share).toBeGreaterThanOrEqual(last - 1e-9);
      expect(share).toBeLessThanOrEqual(1);
      last = share;
      steps++;
    }
    expect(steps).toBeGreaterThan(10);
  });

  it('should be taken up as one step that leaves the kept recipe alone', () => {
    const kept = { ...project, recipes: [first, turned], visit: [{ recipe: 'a', sheets: 6 }] };
    const thin = recipeWithout(first, [first.pulls[0]!.screen], 'thin');
    const { project: after } = apply(kept, {
      kind: 'thin-visit',
      recipes: [thin],
      runs: [{ recipe: 'thin', sheets: 6 }],
      press: { hoursPerDay: 9 },
    });
    expect(after.recipes.map((recipe) => recipe.id)).toEqual(['a', 'b', 'thin']);
    expect(after.recipes[0]).toEqual(first);
    expect(after.visit).toEqual([{ recipe: 'thin', sheets: 6 }]);
    expect(after.press.hoursPerDay).toBe(9);
  });
});

describe('leaving out', () => {
  it('should give a recipe that is whole by itself', () => {
    const thin = recipeWithout(first, [first.pulls[0]!.screen], 'thin');
    expect(recipeSchema.safeParse(thin).success).toBe(true);
    expect(thin.pulls).toHaveLength(first.pulls.length - 1);
  });

  it('should count no change where nothing goes, and the most where all goes', () => {
    const [none, some, all] = changeOfLeavingOut(first, [first.pulls, first.pulls.slice(1), []]);
    expect(none).toBe(0);
    expect(some).toBeGreaterThan(0);
    expect(all).toBeGreaterThan(some!);
  });

  it('should weigh the change by its share of the sheet', () => {
    // The same film on one more place: where both lie on bare paper the mean changes add up.
    const one = recipeOf([pullOf('x', 's1', 'rust')], drawer, { id: 'o', title: 'One' });
    const [whole] = changeOfLeavingOut(one, [[]]);
    const wide = structuredClone(one);
    wide.paper = { ...wide.paper, heightMm: wide.paper.heightMm * 2 };
    wide.pulls = one.pulls.map((pull) => ({ ...pull }));
    const [halved] = changeOfLeavingOut(wide, [[]]);
    expect(halved! / whole!).toBeCloseTo(0.5, 1);
  });
});
