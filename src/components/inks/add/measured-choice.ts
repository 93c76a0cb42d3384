import { defined, entryAt } from '../../../engine/base/at.ts';
import { EngineError } from '../../../engine/base/error.ts';
import { labD50 } from '../../../engine/colour/lab.ts';
import type { CgatsSample } from '../../../engine/ink/cgats/read-cgats.ts';
import { CARD_BLACK, CARD_WHITE } from '../../../engine/ink/characterise/card.ts';
import { coloursOn, inkCurvesFromColours } from '../../../engine/ink/characterise/characterise.ts';
import { measuredInk } from '../../../engine/ink/characterise/measured-ink.ts';
import { curveFromColour } from '../../../engine/ink/film/curves.ts';
import type { Lab } from '../../../engine/ink/types.ts';
import type { InkDraft } from './ink-draft.ts';

/** What each chosen sample is a reading of; -1 for the card stands for the standard card. */
export interface Roles {
  overWhite: number;
  overBlack: number;
  white: number;
  black: number;
}

export const STANDARD_CARD = -1;

/** How far a band was from what a film can show, as shares of full reflectance. */
interface Moved {
  band: number;
  overWhite: number;
  overBlack: number;
}

/** An ink from chosen samples, or why there is none. */
export interface Chosen {
  draft: InkDraft | null;
  /** A sentence; '' when there is an ink. */
  problem: string;
  moved: Moved[];
  /** Bands in which nothing shines through. */
  hiding: number[];
  /** The readings, 36 bands each; null where one is a Lab alone. */
  curves: { overWhite: ArrayLike<number>; overBlack: ArrayLike<number> } | null;
  /** Some reading is a Lab alone, so that its curve is a guess. */
  fromLab: boolean;
}

const IS_CARD = /\b(card|paper|bare|blank|unprinted|substrate|stock)\b/i;
const IS_WHITE = /(\b|_|\d)(white|wht|wh|w|light)(\b|_|\d)/i;
const IS_BLACK = /(\b|_|\d)(black|blk|bk|k|dark)(\b|_|\d)/i;

/** The sample's own lightness, L of D50. */
export function labOf(sample: CgatsSample): Lab {
  return sample.reflectance === undefined ? defined(sample.lab) : labD50(sample.reflectance);
}

/**
 * Which sample is which, as far as names and lightness tell; to be checked by whoever measured.
 * @param samples at least one
 */
export function guessRoles(samples: readonly CgatsSample[]): Roles {
  const all = samples.map((sample, at) => ({ at, name: `${sample.name} ${sample.id}` }));
  const card = all.filter(({ name }) => IS_CARD.test(name) && !/\b(on|over)\b/i.test(name));
  const inks = all.filter((one) => !card.includes(one));
  const first = (list: typeof all, test: RegExp, not = -1): number => list.find(({ at, name }) => at !== not && test.test(name))?.at ?? -1;
  let overWhite = first(inks, IS_WHITE);
  let overBlack = first(inks, IS_BLACK, overWhite);
  const rest = (not: number): number => (inks.find(({ at }) => at !== not) ?? all.find(({ at }) => at !== not) ?? entryAt(all, 0)).at;
  if (overWhite < 0 && overBlack < 0) {
    overWhite = rest(-1);
    overBlack = rest(overWhite);
    if (labOf(entryAt(samples, overBlack))[0] > labOf(entryAt(samples, overWhite))[0]) [overWhite, overBlack] = [overBlack, overWhite];
  } else if (overWhite < 0) overWhite = rest(overBlack);
  else if (overBlack < 0) overBlack = rest(overWhite);
  const black = first(card, IS_BLACK);
  let white = first(card, IS_WHITE);
  // 'Paper' alone is the white one.
  if (white < 0) white = card.find(({ at }) => at !== black && labOf(entryAt(samples, at))[0] > 60)?.at ?? -1;
  return { overWhite, overBlack, white, black };
}

/**
 * An ink from the samples that were chosen.
 * @returns basis 'measured' where both readings are curves; 'drawdown' where one is a Lab alone
 */
export function inkFromSamples(samples: readonly CgatsSample[], roles: Roles): Chosen {
  const overWhite = entryAt(samples, roles.overWhite);
  const overBlack = entryAt(samples, roles.overBlack);
  const card = (at: number, standard: readonly number[]): CgatsSample =>
    at === STANDARD_CARD ? { id: '', name: '', reflectance: Float64Array.from(standard) } : entryAt(samples, at);
  const white = card(roles.white, CARD_WHITE);
  const black = card(roles.black, CARD_BLACK);
  const fromLab = [overWhite, overBlack, white, black].some((sample) => sample.reflectance === undefined);
  const none: Chosen = { draft: null, problem: '', moved: [], hiding: [], curves: null, fromLab };
  if (roles.overWhite === roles.overBlack)
    return { ...none, problem: 'The same sample is chosen over white and over black; choose the two readings of one ink.' };
  const name = inkName(overWhite.name, overBlack.name);
  try {
    const grounds = { white: curveOf(white), black: curveOf(black) };
    if (overWhite.reflectance === undefined || overBlack.reflectance === undefined) {
      const { kx, sx, adjusted } = inkCurvesFromColours(labOf(overWhite), labOf(overBlack), grounds.white, grounds.black);
      const curves = { kx: Array.from(kx), sx: Array.from(sx) };
      const moved = adjusted.map((band) => ({ band, overWhite: Number.NaN, overBlack: Number.NaN }));
      return { ...none, moved, draft: { basis: 'drawdown', ...curves, ...coloursOn(curves, CARD_WHITE, CARD_BLACK), name } };
    }
    const readings = { overWhite: overWhite.reflectance, overBlack: overBlack.reflectance, ...grounds };
    const { ink, adjusted, hiding } = measuredInk({ id: 'read', name }, readings);
    const { kx, sx, ...colours } = ink;
    return {
      ...none,
      moved: adjusted,
      hiding,
      curves: readings,
      draft: { basis: 'measured', overWhite: colours.overWhite, overBlack: colours.overBlack, kx, sx, name },
    };
  } catch (error) {
    if (!(error instanceof EngineError)) throw error;
    return {
      ...none,
      problem: error.message,
      curves:
        overWhite.reflectance && overBlack.reflectance ? { overWhite: overWhite.reflectance, overBlack: overBlack.reflectance } : null,
    };
  }
}

/** The sample's curve; of a Lab alone the smoothest that has it. */
export function curveOf(sample: CgatsSample): ArrayLike<number> {
  return sample.reflectance ?? curveFromColour(defined(sample.lab));
}

/** What two names have in common at their beginning, without 'over' and the like; the first name if nothing. */
export function inkName(overWhite: string, overBlack: string): string {
  let same = 0;
  while (same < overWhite.length && overWhite[same] === overBlack[same]) same++;
  const stem = overWhite
    .slice(0, same)
    .replace(/[\s_,;:.(/-]+$/, '')
    .replace(/(^|[\s_-])(over|on)$/i, '')
    .replace(/[\s_,;:.(/-]+$/, '');
  return stem.length >= 2 ? stem : overWhite;
}
