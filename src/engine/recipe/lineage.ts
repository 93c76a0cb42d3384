import { defined, entryAt } from '../base/at.ts';
import type { DerivedKind } from '../explore/types.ts';

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
  const number = `no. ${index + 1}`;
  if (way === undefined) return `${number} of wall “${seed}”`;
  if (parents === undefined || parents.length === 0) return `${number} of a wall found from earlier prints`;
  switch (way) {
    case 'nearer':
      return `${number} of the prints near ${printName(entryAt(parents, 0))}`;
    case 'away':
      return `${number} of the prints unlike ${printName(entryAt(parents, 0))}`;
    case 'between':
      return `${number} on the way from ${pairName(parents, 'to')}`;
    case 'cross':
      return `${number} of the crosses of ${pairName(parents, 'and')}`;
    case 'taste':
      return `${number} of the prints found by your choices from ${pairName(parents, 'and')}`;
  }
}

/** Where a print comes from, in a sentence: 'Nearer to no. 12 of wall “tide-3”.' */
export function lineageSentence(lineage: PrintLineage): string {
  const { way, parents } = lineage;
  if (way === undefined || parents === undefined || parents.length === 0) return `${capital(printName(lineage))}.`;
  switch (way) {
    case 'nearer':
      return `Nearer to ${printName(entryAt(parents, 0))}.`;
    case 'away':
      return `Away from ${printName(entryAt(parents, 0))}.`;
    case 'between':
      return `On the way from ${pairName(parents, 'to')}.`;
    case 'cross':
      return `A cross of ${pairName(parents, 'and')}.`;
    case 'taste':
      return `Found by your choices from ${pairName(parents, 'and')}.`;
  }
}

/** What a kept print is called until it gets a title: short, without the names of walls before its own. */
export function printTitle({ seed, index, way, parents }: PrintLineage): string {
  const print = `Print ${index + 1}`;
  if (way === undefined || parents === undefined) return `${print} of “${seed}”`;
  const [first, second = first] = parents.map((parent) => `no. ${parent.index + 1}`);
  switch (way) {
    case 'nearer':
      return `${print} near ${first}`;
    case 'away':
      return `${print} unlike ${first}`;
    case 'between':
      return `${print} between ${first} and ${second}`;
    case 'cross':
      return `${print}, ${first} × ${second}`;
    case 'taste':
      return `${print} by choice, of ${parents.length === 1 ? first : `${first} and ${second}`}`;
  }
}

/** Two prints with a word between, or one; one wall that both hang on is named once. */
export function pairName([first, second]: readonly PrintLineage[], word: string): string {
  const one = defined(first);
  if (second === undefined) return printName(one);
  if (one.seed !== second.seed) return `${printName(one)} ${word} ${printName(second)}`;
  const number = `no. ${one.index + 1} ${word}`;
  // Of a wall found by choices each print comes from others.
  return second.way === 'taste' ? `${number} no. ${second.index + 1} of prints found by your choices` : `${number} ${printName(second)}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
