import { describe, expect, it } from 'vitest';
import { changeOfLeavingOut, recipeWithout } from '../../../src/engine/output/leave-out.ts';
import { planVisit, type PressPlan, type VisitInput } from '../../../src/engine/output/visit.ts';
import { type FitChoice, whatToDrop, workMinutes } from '../../../src/engine/output/what-to-drop.ts';
import { apply } from '../../../src/engine/project/apply.ts';
import { recipeSchema } from '../../../src/engine/recipe/schema.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { pullOf, smallProject } from '../../helpers/small-project.ts';

const project = smallProject();
const { drawer } = project;
const first = recipeOf(project.bench, drawer, { id: 'a', title: 'First' });
const turned = recipeOf([...project.bench].reverse(), drawer, { id: 'b', title: 'Turned' });
const input: VisitInput = {
  runs: [{ recipe: first, sheets: 6 }, { recipe: turned, sheets: 4 }],
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
      const after = plan({ ...input, runs: choice.runs, press: { ...input.press, ...choice.press } });
      // The long search may do better, never much worse: what was promised is an order that exists.
      expect(after.cards.length).toBeLessThanOrEqual(base.cards.length - choice.savedSetUps);
      if (choice.fits && !('run' in choice.change)) expect(after.times.every((time) => time.fits)).toBe(true);
      expect(Math.abs(workMinutes(base) - workMinutes(after) - choice.savedMinutes)).toBeLessThanOrEqual(60);
    }
  });

  it('should set what fits first and more time last', () => {
    const found = choices(input);
    const taking = found.filter(({ change }) => 'run' in change);
    expect(taking.map(({ fits }) => fits)).toEqual([...taking.map(({ fits }) => fits)].sort((a, b) => Number(b) - Number(a)));
    expect(found.findIndex(({ change }) => !('run' in change))).toBe(taking.length);
    expect(found.at(-1)!).toMatchObject({ change: { kind: 'days' }, fits: true, deltaE: 0, sheets: [] });
  });

  it('should name the sheets that a change touches', () => {
    for (const { change, sheets } of choices(input)) {
      if (change.kind === 'screen' || change.kind === 'recipe') expect(sheets).toEqual(change.run === 0 ? [1, 2, 3, 4, 5, 6] : [7, 8, 9, 10]);
      if (change.kind === 'sheets') expect(sheets).toHaveLength(change.fewer);
    }
  });

  it('should be taken up as one step that leaves the kept recipe alone', () => {
    const kept = { ...project, recipes: [first, turned], visit: [{ recipe: 'a', sheets: 6 }] };
    const thin = recipeWithout(first, first.pulls[0]!.screen, 'thin');
    const { project: after } = apply(kept, { kind: 'thin-visit', recipe: thin, runs: [{ recipe: 'thin', sheets: 6 }] });
    expect(after.recipes.map((recipe) => recipe.id)).toEqual(['a', 'b', 'thin']);
    expect(after.recipes[0]).toEqual(first);
    expect(after.visit).toEqual([{ recipe: 'thin', sheets: 6 }]);
  });
});

describe('leaving out', () => {
  it('should give a recipe that is whole by itself', () => {
    const thin = recipeWithout(first, first.pulls[0]!.screen, 'thin');
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
