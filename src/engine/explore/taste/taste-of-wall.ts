import { randomFrom } from '../../base/random.ts';
import { SKETCH_LENGTH } from '../look/sketch.ts';
import type { VariantMeasures } from '../measure/variant-measures.ts';
import { arrangeByTaste, type TasteOrder } from './arrange-by-taste.ts';
import { contradiction, sayingChoices, type TasteChoice } from './choices.ts';
import { type Claim, claimsOf } from './claims.ts';
import { foretold, type Foretold } from './foretold.ts';
import { openPair } from './open-pair.ts';
import type { Scale } from './scale.ts';
import { learnTaste, viewOf } from './taste.ts';
import type { TasteFacts } from './traits.ts';

/** A wall that is to be arranged by what was chosen. */
export interface TasteAsked extends TasteOrder {
  choices: readonly TasteChoice[];
  /** Keys of the prints that hang. */
  keys: readonly string[];
  measures: readonly VariantMeasures[];
  /** Their sketches, one after another. */
  sketches: Float32Array;
  /** How often no answer was given since the last one: each time another pair is offered. */
  passed: number;
}

/** What is known of a taste. */
export interface Learnt {
  /** Choices that say something: a print over another. */
  choices: number;
  claims: Claim[];
  foretold: Foretold | null;
  /** Names of two prints that were each chosen over the other. */
  against: [string, string] | null;
}

/** A wall by what was chosen. */
export interface TasteOfWall {
  /** All prints by number; null when nothing was learnt. */
  order: number[] | null;
  learnt: Learnt;
  /** By what the traits of these prints are compared; null when nothing was learnt. */
  scale: Scale | null;
  /** Two prints, by number; null when all were asked. */
  pair: [number, number] | null;
  /** Whether it was taken because its answer is open, else by chance. */
  open: boolean;
}

/** Learns from choices, arranges the prints of a wall by it, and offers two prints to choose from. */
export function tasteOfWall(asked: TasteAsked): TasteOfWall {
  const { choices, keys, measures, sketches } = asked;
  const prints = measures.map((each, i): TasteFacts => ({
    measures: each,
    sketch: sketches.subarray(i * SKETCH_LENGTH, (i + 1) * SKETCH_LENGTH),
  }));
  const taste = learnTaste(choices, prints);
  const tried = tryOrder(asked);
  const compared = comparedPairs(choices, keys);
  const against = contradiction(choices);
  const learnt: Learnt = {
    choices: sayingChoices(choices),
    claims: taste === null ? [] : claimsOf(taste),
    foretold: foretold(choices, prints),
    against: against === null ? null : [against[0].name, against[1].name],
  };
  if (taste === null) return { order: null, learnt, scale: null, pair: firstPair(tried, compared), open: false };
  const views = prints.map((print) => viewOf(taste, print));
  const order = arrangeByTaste(
    {
      scores: Int32Array.from(views, ({ score }) => score),
      doubts: Int32Array.from(views, ({ doubt }) => doubt),
      points: sketches,
      dimensions: SKETCH_LENGTH,
    },
    asked,
  );
  // By pairs that were not taken as the hardest it is seen how well the rest is foretold.
  const open = (choices.length + asked.passed) % 2 === 1;
  const pair = open ? openPair(taste, views, tried, compared) : firstPair(tried, compared);
  return { order, learnt, scale: taste.scale, pair, open };
}

/** The prints in an order of their own for each answer, so that other pairs are looked at. */
function tryOrder({ choices, keys, passed }: TasteAsked): number[] {
  return randomFrom(`this or that ${choices.length} ${passed}`).shuffle(Array.from(keys.keys()));
}

/** Pairs of prints that hang and were compared, as openPair wants them. */
function comparedPairs(choices: readonly TasteChoice[], keys: readonly string[]): Set<string> {
  const places = new Map(keys.map((key, place) => [key, place]));
  return new Set(
    choices.flatMap(({ way, chosen, over: [other] }) => {
      if (way !== 'compared' || other === undefined) return [];
      const [a, b] = [places.get(chosen.key), places.get(other.key)];
      return a === undefined || b === undefined ? [] : [`${Math.min(a, b)} ${Math.max(a, b)}`];
    }),
  );
}

/** The first two that were not compared. */
function firstPair(tried: readonly number[], compared: ReadonlySet<string>): [number, number] | null {
  for (const [i, a] of tried.entries()) {
    const b = tried.slice(i + 1).find((other) => !compared.has(`${Math.min(a, other)} ${Math.max(a, other)}`));
    if (b !== undefined) return [a, b];
  }
  return null;
}
