import { EngineError } from '../../base/error.ts';
import { say } from '../../words/en/explore/taste.ts';
import type { VariantMeasures } from '../measure/variant-measures.ts';

/** How a print was chosen: directly over another, or out of those beside it. */
export type ChoiceWay = 'compared' | 'selected' | 'pinned' | 'kept';

/** A print that was chosen or passed over, with what a taste knows of it. */
export interface TastePrint {
  /** Names its picture, as the explorer does. */
  key: string;
  /** What it is called within a sentence. */
  name: string;
  measures: VariantMeasures;
  /** As sketchText gives it. */
  sketch: string;
}

/** One choice: a print over one other, or over those that hung beside it and were passed over. */
export interface TasteChoice {
  way: ChoiceWay;
  chosen: TastePrint;
  over: TastePrint[];
  /** Whether the two were asked about because the answer was open. */
  open?: true | undefined;
}

/** Choices that are kept; of more, the first go. */
export const MOST_CHOICES = 300;
/** Prints passed over that are kept with a choice. */
export const MOST_PASSED = 4;

/** The same print chosen in the same way over the same. */
function sameChoice(a: TasteChoice, b: TasteChoice): boolean {
  if (a.way !== b.way || a.chosen.key !== b.chosen.key) return false;
  return a.way !== 'compared' || a.over[0]?.key === b.over[0]?.key;
}

/** Choices with further ones, each once: the newest of a kind is what counts. */
export function withChoices(choices: readonly TasteChoice[], more: readonly TasteChoice[]): TasteChoice[] {
  const left = choices.filter((choice) => !more.some((other) => sameChoice(choice, other)));
  return [...left, ...more.filter((choice, i) => !more.slice(i + 1).some((other) => sameChoice(choice, other)))].slice(-MOST_CHOICES);
}

/** Choices without some of them. */
export function withoutChoices(choices: readonly TasteChoice[], gone: readonly TasteChoice[]): TasteChoice[] {
  return choices.filter((choice) => !gone.some((other) => sameChoice(choice, other)));
}

/** A choice out of a wall. */
export interface WallChoice {
  way: ChoiceWay;
  /** Prints by number: those that are chosen in this way, and those chosen in any. */
  chosen: readonly number[];
  all: ReadonlySet<number>;
  /** Numbers in the order in which they hang. */
  sequence: readonly number[];
  print: (index: number) => TastePrint | undefined;
}

/**
 * What prints that are chosen on a wall say: each over those that hang nearest to it and are not chosen.
 * @throws EngineError 'taste.none' when nothing is chosen, 'taste.all' when nothing is passed over
 */
export function choicesOnWall({ way, chosen, all, sequence, print }: WallChoice): TasteChoice[] {
  if (chosen.length === 0) throw new EngineError('taste.none', say.nothingIsChosenSelect);
  const passed = sequence.flatMap((index, place) => (all.has(index) ? [] : [{ index, place }]));
  if (passed.length === 0) throw new EngineError('taste.all', say.everyPrintThatHangs);
  return chosen.flatMap((index): TasteChoice[] => {
    const own = print(index);
    if (own === undefined) return [];
    const at = sequence.indexOf(index);
    const near = passed.toSorted((a, b) => Math.abs(a.place - at) - Math.abs(b.place - at) || a.place - b.place);
    return [{ way, chosen: own, over: near.slice(0, MOST_PASSED).flatMap((each) => print(each.index) ?? []) }];
  });
}

/** One print over another, as often as it counts. */
export interface ChosenPair {
  chosen: TastePrint;
  other: TastePrint;
  count: number;
  /** The choice that it is of. */
  of: number;
  /** Whether the two were compared; else the other was passed by. */
  direct: boolean;
}

/**
 * The pairs that choices say. Who is passed over once and chosen another time was not passed over, but for
 * direct comparisons. A choice over m prints counts 2m ÷ (m + 1) times in all: passing by says less than an
 * answer, and its pairs share their winner (a choice of ours).
 */
export function pairsOf(choices: readonly TasteChoice[]): ChosenPair[] {
  const chosen = new Set(choices.flatMap(({ way, chosen: { key } }) => (way === 'compared' ? [] : [key])));
  return choices.flatMap((choice, of) => {
    const direct = choice.way === 'compared';
    const over = choice.over.filter(({ key }) => key !== choice.chosen.key && (direct || !chosen.has(key)));
    return over.map((other) => ({ chosen: choice.chosen, other, count: 2 / (over.length + 1), of, direct }));
  });
}

/** How many choices say something: a print over another. */
export function sayingChoices(choices: readonly TasteChoice[]): number {
  return new Set(pairsOf(choices).map(({ of }) => of)).size;
}

/** Two prints each of which was chosen over the other in a direct comparison; null when there are none. */
export function contradiction(choices: readonly TasteChoice[]): [TastePrint, TastePrint] | null {
  const direct = choices.flatMap(({ way, chosen, over: [other] }) =>
    way === 'compared' && other !== undefined ? [{ chosen, other }] : [],
  );
  const said = new Set(direct.map(({ chosen, other }) => `${chosen.key} ${other.key}`));
  const found = direct.find(({ chosen, other }) => said.has(`${other.key} ${chosen.key}`));
  return found === undefined ? null : [found.chosen, found.other];
}
