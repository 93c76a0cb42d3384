import { EngineError } from '../../base/error.ts';
import { say } from '../../words/en/explore/derived.ts';
import type { Explorer } from '../search/explorer.ts';
import { checkExplore } from '../settings/check.ts';
import { guideOf } from '../taste/taste-guide.ts';
import type { ExploreInput } from '../types.ts';
import type { DerivedRequest } from './derived.ts';
import { Draws } from './draws.ts';
import { TasteDraws } from './taste-draws.ts';
import { Walk } from './walk.ts';

/**
 * Finds prints from other prints, in steps: nearest first, farthest first, along a walk, or crossed and
 * spread out, or what a taste
 * likes. Every print keeps the holds and caps of the settings and carries its lineage; its seed
 * is made from its parents' ids, so the same parents give the same prints.
 * @param input what the parents were found from
 * @throws EngineError with the first problem of checkExplore; 'explore.parents' for the wrong number,
 *   'taste.few' when too little was chosen to find prints by
 */
export function createDerivedExplorer(input: ExploreInput, request: DerivedRequest): Explorer {
  const [problem] = checkExplore(input.explore, input.drawer, input.bench);
  if (problem !== undefined) throw new EngineError(problem.code, problem.message, { path: [problem.where] });
  const { kind, parents, taste } = request;
  if (kind === 'taste') return new TasteDraws(input, request, guideOf(taste));
  const two = kind === 'between' || kind === 'cross';
  if (parents.length !== (two ? 2 : 1)) {
    throw new EngineError('explore.parents', two ? say.chooseTwoPrintsFor : say.chooseOnePrintFor);
  }
  return kind === 'between' ? new Walk(input, request) : new Draws(input, request);
}
