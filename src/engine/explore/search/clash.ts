import { say } from '../../words/en/explore/search.ts';
import { numberLocale } from '../../words/language.ts';
import { type Condition, conditionsOf, conditionFields } from '../settings/conditions.ts';
import type { ExploreInput, ExploreSettings } from '../types.ts';
import { Finder } from './finder.ts';

/** Draws after which some conditions count as kept by no print. */
const DRAWS = 200;

/** Conditions that no print was found to keep together, though it keeps all but any one of them. */
export interface Clash {
  /** What is wrong and the mend, with the conditions and without. */
  sentence: string;
  lead: string;
  /** One or more; what each says, and the change of the settings that drops it. */
  conditions: { says: string; change: Partial<ExploreSettings> }[];
}

/**
 * Looks for the fewest conditions that clash, when no print fits them all: leaves conditions out, halves first
 * and then one by one, as long as still no print fits (a deletion filter; Chinneck 2008, from memory).
 * Whether a print fits is tried in 200 draws, so a very rare print may be missed; what is said is
 * therefore that none was found.
 * @param input settings that checkExplore has nothing against
 * @yields now and then, so that whoever runs it can stop it
 * @returns null when prints fit all conditions, or when none fits even without them
 */
export function* findClash(input: ExploreInput): Generator<void, Clash | null> {
  const { drawer: studio, bench, explore } = input;
  const all = conditionsOf(explore, studio, bench);
  function* fit(conditions: readonly Condition[]): Generator<void, boolean> {
    const finder = new Finder({ ...input, explore: { ...explore, ...conditionFields(conditions) } });
    for (let draw = 0; draw < DRAWS; draw++) {
      if (finder.draw(draw, 0) !== null) return true;
      yield;
    }
    return false;
  }
  if (all.length === 0 || (yield* fit(all)) || !(yield* fit([]))) return null;
  let clash = all;
  for (let size = Math.ceil(clash.length / 2); ; size = Math.ceil(size / 2)) {
    for (let at = 0; at < clash.length;) {
      const rest = [...clash.slice(0, at), ...clash.slice(at + size)];
      // Without any condition prints do fit.
      if (rest.length === 0 || (yield* fit(rest))) at += size;
      else clash = rest;
    }
    if (size === 1) break;
  }
  return {
    ...wordsOf(clash),
    conditions: clash.map((condition) => ({
      says: condition.says,
      change: { [condition.field]: conditionFields(all.filter((other) => other !== condition))[condition.field] },
    })),
  };
}

const NUMBERS = ['', '', say.two, say.three, say.four, say.five, say.six, say.seven, say.eight, say.nine, say.ten];

function wordsOf(conditions: readonly Condition[]): Pick<Clash, 'sentence' | 'lead'> {
  const one = conditions.length === 1;
  const begin = one
    ? say.noPrintWasFound
    : say.noPrintWasFoundThat(NUMBERS[conditions.length] ?? conditions.length.toLocaleString(numberLocale()));
  const mend = one ? say.dropItOrLet : say.dropOneOfThem;
  return { sentence: `${begin}: ${conditions.map(({ says }) => says).join('; ')}. ${mend}`, lead: `${begin}. ${mend}` };
}
