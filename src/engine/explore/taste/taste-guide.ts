import { EngineError } from '../../base/error.ts';
import { say } from '../../words/en/explore/taste.ts';
import type { TasteOrder } from './arrange-by-taste.ts';
import { sayingChoices, type TasteChoice } from './choices.ts';
import type { Scale } from './scale.ts';

/** With fewer choices a single one would turn all that is found about; a choice of ours. */
const LEAST_CHOICES_TO_FIND_BY = 5;

/** A taste by which prints are found. */
export interface TasteGuide extends TasteOrder {
  choices: readonly TasteChoice[];
  /** Of the wall that the prints come from: by it traits are compared. */
  scale: Scale;
  /** Whether the prints of that wall were sketched with the paper as white. */
  relative: boolean;
}

/**
 * A guide that can be gone by.
 * @throws EngineError 'taste.few' when there is none, or too little was chosen
 */
export function guideOf(taste: TasteGuide | undefined): TasteGuide {
  const said = taste === undefined ? 0 : sayingChoices(taste.choices);
  if (taste === undefined || said < LEAST_CHOICES_TO_FIND_BY)
    throw new EngineError('taste.few', say.printsCanBeFound(LEAST_CHOICES_TO_FIND_BY, said === 1 ? say.is1 : say.are(said)));
  return taste;
}
