import { entryAt } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { cutEnd } from '../../base/words.ts';
import { say } from '../../words/en/ink/characterise.ts';
import type { CgatsSample } from '../cgats/read-cgats.ts';
import type { Surface } from '../film/saunderson.ts';
import { CARD_BLACK, CARD_WHITE } from './card.ts';
import { coloursOn, inkCurvesOn } from './characterise.ts';
import type { InkDraft } from './ink-draft.ts';
import { type MovedBand, measuredInk } from './measured-ink.ts';
import { sampleCurve, sampleLab } from './sample-colour.ts';
import { type SampleRoles, STANDARD_CARD } from './sample-roles.ts';

/** An ink from chosen samples, or why there is none. */
export interface SampledInk {
  draft: InkDraft | null;
  /** A sentence; '' when there is an ink. */
  problem: string;
  /** Bands that had to be moved; without figures (NaN) where a reading is a Lab alone. */
  moved: MovedBand[];
  /** Bands in which nothing shines through. */
  hiding: number[];
  /** The readings, 36 bands each; null where one is a Lab alone. */
  curves: { overWhite: ArrayLike<number>; overBlack: ArrayLike<number> } | null;
  /** Some reading is a Lab alone, so that its curve is a guess. */
  fromLab: boolean;
}

/**
 * An ink from the samples that were chosen.
 * @param surface that the instrument saw; left out, there is none
 * @returns basis 'measured' where both readings are curves; 'drawdown' where one is a Lab alone
 */
export function inkFromSamples(samples: readonly CgatsSample[], roles: SampleRoles, surface?: Surface): SampledInk {
  const overWhite = entryAt(samples, roles.overWhite);
  const overBlack = entryAt(samples, roles.overBlack);
  const card = (at: number, standard: readonly number[]): CgatsSample =>
    at === STANDARD_CARD ? { id: '', name: '', reflectance: Float64Array.from(standard) } : entryAt(samples, at);
  const white = card(roles.white, CARD_WHITE);
  const black = card(roles.black, CARD_BLACK);
  const fromLab = [overWhite, overBlack, white, black].some((sample) => sample.reflectance === undefined);
  const none: SampledInk = { draft: null, problem: '', moved: [], hiding: [], curves: null, fromLab };
  if (roles.overWhite === roles.overBlack) return { ...none, problem: say.sameSampleIsChosen };
  const name = inkName(overWhite.name, overBlack.name);
  try {
    const grounds = { white: sampleCurve(white), black: sampleCurve(black), surface };
    if (overWhite.reflectance === undefined || overBlack.reflectance === undefined) {
      const { kx, sx, adjusted } = inkCurvesOn(sampleLab(overWhite), sampleLab(overBlack), grounds);
      const curves = { kx: Array.from(kx), sx: Array.from(sx) };
      const moved = adjusted.map((band) => ({ band, overWhite: Number.NaN, overBlack: Number.NaN }));
      return { ...none, moved, draft: { basis: 'drawdown', ...curves, ...coloursOn(curves, CARD_WHITE, CARD_BLACK, surface), name } };
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

/** What two names have in common at their beginning, without 'over' and the like; the first name if nothing. */
export function inkName(overWhite: string, overBlack: string): string {
  let same = 0;
  while (same < overWhite.length && overWhite[same] === overBlack[same]) same++;
  const between = /[\s_,;:.(/-]/u;
  const stem = cutEnd(cutEnd(overWhite.slice(0, same), between).replace(/(^|[\s_-])(over|on)$/i, ''), between);
  return stem.length >= 2 ? stem : overWhite;
}
