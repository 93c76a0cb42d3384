import type { Random } from '../../../src/engine/base/random.ts';
import { CoverRows } from '../../../src/engine/pullorder/bound/cover-rows.ts';
import { SumBlocks } from '../../../src/engine/pullorder/bound/sum-blocks.ts';
import { compile, type Model } from '../../../src/engine/pullorder/model.ts';
import type { PlanProblem } from '../../../src/engine/pullorder/types.ts';
import { bruteForce } from './brute-force.ts';

/** A problem's two models, with the fewest set-ups and the fewest mounts that the brute force finds. */
export function knownLeast(problem: PlanProblem): [Model, number][] {
  const truth = bruteForce(problem);
  const { kindModel, screenModel } = compile(problem);
  return [
    [kindModel, truth.setUps],
    [screenModel, truth.mounts],
  ];
}

/** A model's letters in two blocks, cut anywhere. */
export function inTwoBlocks(model: Model, random: Random): SumBlocks {
  const rows = new CoverRows(model, { units: 0 });
  const letters = random.shuffle(rows.letters);
  const middle = random.int(letters.length + 1);
  return new SumBlocks([letters.slice(0, middle), letters.slice(middle)], rows);
}
