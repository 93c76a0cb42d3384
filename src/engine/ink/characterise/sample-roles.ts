import { entryAt } from '../../base/at.ts';
import type { CgatsSample } from '../cgats/read-cgats.ts';
import { sampleLab } from './sample-colour.ts';

/** What each chosen sample is a reading of; -1 for the card stands for the standard card. */
export interface SampleRoles {
  overWhite: number;
  overBlack: number;
  white: number;
  black: number;
}

/** In the place of a sample: the standard card, which was not measured. */
export const STANDARD_CARD = -1;

const IS_CARD = /\b(card|paper|bare|blank|unprinted|substrate|stock)\b/i;
const IS_WHITE = /(\b|\d)(white|wht|wh|w|light)(\b|\d)/i;
const IS_BLACK = /(\b|\d)(black|blk|bk|k|dark)(\b|\d)/i;
/** A ground alone, with no ink named on it. */
const IS_GROUND = /^[\d\s.#-]*(white|black)[\d\s.#-]*((white|black)[\d\s.#-]*)?$/i;

/**
 * Which sample is which, as far as names and lightness tell; to be checked by whoever measured.
 * @param samples at least one
 */
export function guessRoles(samples: readonly CgatsSample[]): SampleRoles {
  // Names are often joined with underscores, which count as letters at a word's end.
  const all = samples.map((sample, at) => ({ at, name: `${sample.name} ${sample.id}`.replaceAll('_', ' ') }));
  const bare = all.filter(({ name }) => IS_CARD.test(name) && !/\b(on|over)\b/i.test(name));
  const grounds = all.filter(({ name }) => IS_GROUND.test(name));
  // 'White' and 'Black' are the card where something else is the ink; alone they are the ink over both.
  const card = bare.length + grounds.length < all.length ? [...bare, ...grounds] : bare;
  const inks = all.filter((one) => !card.includes(one));
  const first = (list: typeof all, test: RegExp, not = -1): number => list.find(({ at, name }) => at !== not && test.test(name))?.at ?? -1;
  let overWhite = first(inks, IS_WHITE);
  let overBlack = first(inks, IS_BLACK, overWhite);
  const rest = (not: number): number => (inks.find(({ at }) => at !== not) ?? all.find(({ at }) => at !== not) ?? entryAt(all, 0)).at;
  if (overWhite < 0 && overBlack < 0) {
    overWhite = rest(-1);
    overBlack = rest(overWhite);
    if (sampleLab(entryAt(samples, overBlack))[0] > sampleLab(entryAt(samples, overWhite))[0])
      [overWhite, overBlack] = [overBlack, overWhite];
  } else if (overWhite < 0) overWhite = rest(overBlack);
  else if (overBlack < 0) overBlack = rest(overWhite);
  const black = first(card, IS_BLACK);
  let white = first(card, IS_WHITE);
  // 'Paper' alone is the white one.
  if (white < 0) white = card.find(({ at }) => at !== black && sampleLab(entryAt(samples, at))[0] > 60)?.at ?? -1;
  return { overWhite, overBlack, white, black };
}

/**
 * Which sample is the bare paper, by its name, else the lightest, as it is in nearly every chart.
 * @param samples at least one
 * @returns its place
 */
export function guessPaper(samples: readonly CgatsSample[]): number {
  const named = samples.findIndex(({ name, id }) => /paper|substrate|bare|blank/i.test(`${name} ${id}`));
  const lightness = samples.map((sample) => sampleLab(sample)[0]);
  return named >= 0 ? named : lightness.indexOf(Math.max(...lightness));
}
