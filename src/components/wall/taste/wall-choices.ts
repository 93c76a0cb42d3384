import { entryAt } from '../../../engine/base/at.ts';
import { type ChoiceWay, choicesOnWall, type TasteChoice, type TastePrint } from '../../../engine/explore/taste/choices.ts';
import type { TasteAsked } from '../../../engine/explore/taste/taste-of-wall.ts';
import { sketchText } from '../../../engine/explore/taste/traits.ts';
import type { Variant } from '../../../engine/explore/types.ts';
import { printName } from '../../../engine/recipe/lineage.ts';
import type { PrintFacts } from '../print/print-facts.ts';
import { lineageOf } from '../run/wall-origins.ts';

/** The prints that hang, by number, with what is known of them. */
export interface KnownPrints {
  variants: readonly Variant[];
  facts: PrintFacts;
  /** Numbers in the order in which they hang. */
  sequence: readonly number[];
  selected: ReadonlySet<number>;
  pinned: ReadonlySet<number>;
  kept: ReadonlySet<number>;
}

/** A print as a taste keeps it; undefined for one of which nothing is known. */
export function tastePrint({ variants, facts }: Pick<KnownPrints, 'variants' | 'facts'>, index: number): TastePrint | undefined {
  const [variant, measures, sketch] = [variants[index], facts.measures[index], facts.sketch(index)];
  if (variant === undefined || measures === undefined || sketch === undefined) return undefined;
  return { key: variant.key, name: printName(lineageOf(variant)), measures, sketch: sketchText(sketch) };
}

/**
 * What prints of this wall say when they are chosen in one way.
 * @throws EngineError as choicesOnWall
 */
export function choicesOf(known: KnownPrints, way: ChoiceWay, chosen: readonly number[]): TasteChoice[] {
  const { sequence, selected, pinned, kept } = known;
  const all = new Set([...chosen, ...selected, ...pinned, ...kept]);
  return choicesOnWall({ way, chosen, all, sequence, print: (index) => tastePrint(known, index) });
}

/**
 * What is asked of the worker of some prints of the wall.
 * @param indexes prints of which all is known; the answer numbers them from 0
 */
export function askOf(
  facts: PrintFacts,
  indexes: readonly number[],
  asked: Pick<TasteAsked, 'choices' | 'towards' | 'unsure' | 'passed'>,
): TasteAsked {
  return {
    ...asked,
    keys: indexes.map((index) => entryAt(facts.keys, index)),
    measures: indexes.flatMap((index) => facts.measures[index] ?? []),
    sketches: facts.points(indexes).points,
  };
}

/** The prints of which all is known. */
export function knownOf(facts: PrintFacts, indexes: readonly number[]): number[] {
  return indexes.filter((index) => facts.measures[index] !== undefined && facts.sketch(index) !== undefined);
}
