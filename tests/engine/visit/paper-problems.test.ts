import { describe, expect, it } from 'vitest';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { type PressPlan, planVisit, type VisitInput } from '../../../src/engine/visit/visit.ts';
import { pullOf, smallProject } from '../../helpers/small-project.ts';

const { drawer, press } = smallProject();

function problemsOf(runs: VisitInput['runs']): string[] {
  const plan: PressPlan = [...planVisit({ runs, minDeltaE: 1, press, seed: 'x' }, 20)].at(-1)!;
  return plan.problems.filter(({ code }) => code === 'visit.paper-sizes' || code === 'visit.off-sheet').map(({ message }) => message);
}

const one = recipeOf([pullOf('x', 's1', 'rust')], drawer, { id: 'o', title: 'One' });

describe('an order and its paper', () => {
  it('should say that sheets of two sizes share an offset, and where', () => {
    const small = { ...one, id: 's', title: 'Small', paper: { ...one.paper, widthMm: 420, heightMm: 594 } };
    const runs = [one, small].map((recipe) => ({ recipe, sheets: 2 }));
    const [said, ...more] = problemsOf(runs);
    expect(said).toMatch(/^Set-up 1 prints sheets of several sizes \(.*420 × 594 mm.*\) at one offset/);
    expect(more).toEqual([]);
    expect(problemsOf([{ recipe: one, sheets: 4 }])).toEqual([]);
  });

  it('should say that a pull lies off its sheet, but not that one runs over an edge', () => {
    // 200 mm wide with its middle at 200 mm: from −100 mm on it hangs over the edge, from −300 mm on nothing is left.
    const moved = (dxMm: number): string[] => {
      const recipe = recipeOf([pullOf('x', 's1', 'rust', { dxMm })], drawer, { id: 'm', title: 'Moved' });
      return problemsOf([{ recipe, sheets: 1 }]);
    };
    expect(moved(-250)).toEqual([]);
    expect(moved(-310)).toEqual([
      'Screen 1 s1 lies off the sheet in Moved and prints nothing there: move it on the Bench or leave the pull out.',
    ]);
  });
});
