import type { DerivedRequest } from '../../../engine/explore/derived/derived.ts';
import type { TasteGuide } from '../../../engine/explore/taste/taste-guide.ts';
import type { DerivedKind, Variant } from '../../../engine/explore/types.ts';
import { pairName, printName } from '../../../engine/recipe/lineage.ts';
import { capital } from '../../../engine/words/language.ts';
import { say } from '../../words/en/wall/run.ts';
import { lineageOf, type Parent } from './wall-origins.ts';

/** Prints of a wall that are found from others. */
const PRINTS = 60;
/** Steps between two prints unless the user says otherwise. */
const STEPS = 10;
export const MOST_STEPS = 60;

/** A wall that is found from prints of another, and what it is called. */
export interface DerivedAsk {
  request: DerivedRequest;
  parents: readonly Parent[];
  /** What hangs, in a sentence. */
  sentence: string;
}

/** `print-derived`: a wall is wanted that comes from these prints. */
export type DerivedEvent = CustomEvent<DerivedAsk>;

function parentOf(print: Variant): Parent {
  const lineage = lineageOf(print);
  return { name: printName(lineage), pulls: print.pulls, lineage };
}

/**
 * Words and numbers of a wall that is found from prints.
 * @param prints one, or two for 'between' and 'cross'
 */
export function derivedAsk(kind: Exclude<DerivedKind, 'taste'>, prints: readonly Variant[]): DerivedAsk {
  const parents = prints.map(parentOf);
  const names = parents.map(({ name }) => name);
  const pair = (word: string): string => pairName(prints.map(lineageOf), word);
  const sentences: Record<typeof kind, () => string> = {
    nearer: () => say.printsNearNearestFirst(names[0] ?? ''),
    away: () => say.printsUnlike(names[0] ?? ''),
    between: () => say.wayFrom(pair(say.to)),
    cross: () => `${pair(say.crossedWith)}.`,
  };
  const sentence = sentences[kind]();
  return {
    request: { kind, parents: prints.map(({ id, pulls }) => ({ id, pulls })), count: kind === 'between' ? STEPS : PRINTS },
    parents,
    sentence: capital(sentence),
  };
}

/**
 * The same of a wall that is found by what one chooses.
 * @param prints those that the wall comes from, best first
 * @param open how many places are for prints that are unsure, in words; '' for none
 */
export function tasteAsk(taste: TasteGuide, prints: readonly Variant[], open: string): DerivedAsk {
  const { towards } = taste;
  const by = towards > 0 ? say.foundByWhatYou : towards < 0 ? say.foundByWhatYouNever : say.asUnlikeEachOther;
  return {
    request: { kind: 'taste', parents: prints.map(({ id, pulls }) => ({ id, pulls })), count: PRINTS, taste },
    parents: prints.map(parentOf),
    sentence: say.printsFromPrintsOf(by, prints.length, open === '' ? '' : say.isHereBecauseYour(open)),
  };
}

/** What a print of such a wall comes from: of a wall found by what one chooses, each comes from one or two of many. */
export function parentsOf({ request, parents }: DerivedAsk, { lineage }: Variant): readonly Parent[] {
  const at = new Map(request.parents.map(({ id }, i) => [id, parents[i]]));
  return (lineage?.parents ?? []).flatMap((id) => at.get(id) ?? []);
}

/** The same wall with another number of steps between its two prints. */
export function withSteps(ask: DerivedAsk, steps: number): DerivedAsk {
  return { ...ask, request: { ...ask.request, count: Math.max(1, Math.min(MOST_STEPS, Math.round(steps))) } };
}
