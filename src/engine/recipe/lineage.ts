import { defined, entryAt } from '../base/at.ts';
import type { DerivedKind } from '../explore/types.ts';
import { say } from '../words/en/recipe/recipe.ts';
import { capital } from '../words/language.ts';

/** Generations of parents that are kept; those before are of no use to anyone. */
export const MOST_GENERATIONS = 8;

/** Where a print comes from: its wall and number on it, and the prints that it was found from. */
export interface PrintLineage {
  /** Seed of the wall; for a print found from others their names and the way, as the explorer writes it. */
  seed: string;
  /** Number on the wall, from 0. */
  index: number;
  /** How it came of other prints; absent on prints that come from the base stack. */
  way?: DerivedKind | undefined;
  /** One print, or two in their order; absent as `way`, and before the generations that are kept. */
  parents?: PrintLineage[] | undefined;
}

/** A lineage without the generations before those that are kept. */
export function cutLineage(lineage: PrintLineage, generations = MOST_GENERATIONS): PrintLineage {
  const { parents, ...own } = lineage;
  if (parents === undefined || generations <= 0) return own;
  return { ...own, parents: parents.map((parent) => cutLineage(parent, generations - 1)) };
}

/** What a print is called within a sentence: 'no. 12 of wall “tide-3”', 'no. 2 of the prints near no. 12 of wall “tide-3”'. */
export function printName({ seed, index, way, parents }: PrintLineage): string {
  const number = say.no(index + 1);
  if (way === undefined) return say.ofWall(number, seed);
  if (parents === undefined || parents.length === 0) return say.ofWallFoundFrom(number);
  switch (way) {
    case 'nearer':
      return say.ofPrintsNear(number, printName(entryAt(parents, 0)));
    case 'away':
      return say.ofPrintsUnlike(number, printName(entryAt(parents, 0)));
    case 'between':
      return say.onWayFrom(number, pairName(parents, say.to));
    case 'cross':
      return say.ofCrossesOf(number, pairName(parents, say.and));
    case 'taste':
      return say.ofPrintsFoundBy(number, pairName(parents, say.and));
  }
}

/** Where a print comes from, in a sentence: 'Nearer to no. 12 of wall “tide-3”.' */
export function lineageSentence(lineage: PrintLineage): string {
  const { way, parents } = lineage;
  if (way === undefined || parents === undefined || parents.length === 0) return `${capital(printName(lineage))}.`;
  switch (way) {
    case 'nearer':
      return say.nearerTo(printName(entryAt(parents, 0)));
    case 'away':
      return say.awayFrom(printName(entryAt(parents, 0)));
    case 'between':
      return say.onWayFromPairName(pairName(parents, say.to));
    case 'cross':
      return say.crossOf(pairName(parents, say.and));
    case 'taste':
      return say.foundByYourChoices(pairName(parents, say.and));
  }
}

/** What a kept print is called until it gets a title: short, without the names of walls before its own. */
export function printTitle({ seed, index, way, parents }: PrintLineage): string {
  const print = say.print(index + 1);
  if (way === undefined || parents === undefined) return say.of(print, seed);
  const [first, second = first] = parents.map((parent) => say.no(parent.index + 1));
  switch (way) {
    case 'nearer':
      return say.near(print, first ?? '');
    case 'away':
      return say.unlike(print, first ?? '');
    case 'between':
      return say.betweenAnd(print, first ?? '', second ?? '');
    case 'cross':
      return `${print}, ${first} × ${second}`;
    case 'taste':
      return say.byChoiceOf(print, (parents.length === 1 ? first : say.andFirst(first ?? '', second ?? '')) ?? '');
  }
}

/** Two prints with a word between, or one; one wall that both hang on is named once. */
export function pairName([first, second]: readonly PrintLineage[], word: string): string {
  const one = defined(first);
  if (second === undefined) return printName(one);
  if (one.seed !== second.seed) return `${printName(one)} ${word} ${printName(second)}`;
  const number = say.noIndex(one.index + 1, word);
  // Of a wall found by choices each print comes from others.
  return second.way === 'taste' ? say.noOfPrintsFound(number, second.index + 1) : `${number} ${printName(second)}`;
}
