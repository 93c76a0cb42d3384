import { f64, num } from '../../base/at.ts';
import { EngineError, type Problem } from '../../base/error.ts';
import { BANDS } from '../../colour/weights.ts';
import { say } from '../../words/en/ink/characterise.ts';
import { MOST_REFLECTANCE } from '../cgats/scale.ts';
import { filmBands, overFilm } from '../film/film.ts';
import { realSurface } from '../film/printing.ts';
import { insideOf, type Surface } from '../film/saunderson.ts';
import type { Ink } from '../types.ts';
import { bandWords } from './band-words.ts';
import { CARD_BLACK, CARD_WHITE } from './card.ts';
import { coloursOn, filmFromReadings, LEAST_CONTRAST, LEAST_TRANSMITTANCE, MOST_EXCESS } from './characterise.ts';
import { DEFAULT_DENSITY_G_PER_CM3, DEFAULT_DRY_MINUTES } from './make-ink.ts';

/** One stroke of an ink measured over a card's (or paper's) white and black, 36 bands each, 0–1. */
export interface InkReadings {
  overWhite: ArrayLike<number>;
  overBlack: ArrayLike<number>;
  /** The bare white; CARD_WHITE is only right for the invented card. */
  white: ArrayLike<number>;
  black: ArrayLike<number>;
  /** That the instrument saw; left out, there is none. */
  surface?: Surface | undefined;
}

/** What names an ink besides its curves. */
export interface InkNaming {
  id: string;
  name: string;
  dryMinutes?: number;
  densityGPerCm3?: number;
}

/** How far a band's readings were from what a film can show. */
export interface MovedBand {
  /** From 0. */
  band: number;
  /** What the ink now shows less what was read, over white and over black, 0–1. */
  overWhite: number;
  overBlack: number;
}

/** An ink from readings, and what had to give. */
export interface MeasuredInk {
  ink: Ink;
  /** Bands whose readings no film can show, mended; empty for good readings. */
  adjusted: MovedBand[];
  /** Bands in which the ink hides its ground, so that only K/S is known: two strokes are a guess. */
  hiding: number[];
}

/**
 * What is wrong with readings, before an ink is made of them.
 * @returns no problems when measuredInk will succeed; codes 'ink.bands', 'ink.bad-reflectance',
 *   'ink.card-contrast', 'ink.over-black-brighter', each naming its bands
 */
export function checkReadings(readings: InkReadings): Problem[] {
  const curves = [
    ['overWhite', say.readingOverWhite],
    ['overBlack', say.readingOverBlack],
    ['white', say.bareWhite],
    ['black', say.bareBlack],
  ] as const;
  const problems: Problem[] = [];
  for (const [where, called] of curves) {
    const curve = readings[where];
    if (curve.length !== BANDS) {
      problems.push({ code: 'ink.bands', message: say.hasBandsItNeeds(called, curve.length, BANDS), where });
      continue;
    }
    const bad = bandsWhere((band) => !(num(curve, band) >= 0 && num(curve, band) <= MOST_REFLECTANCE));
    if (bad.length > 0) {
      problems.push({ code: 'ink.bad-reflectance', message: say.isNoReflectanceAt(called, bandWords(bad)), where });
    }
  }
  if (problems.length > 0) return problems;
  const { overWhite, overBlack, white, black } = clipped(readings);
  const swapped = bandsWhere((band) => f64(overBlack, band) > f64(overWhite, band) + MOST_EXCESS);
  if (swapped.length > 0) {
    const message = say.inkIsBrighterOver(bandWords(swapped));
    problems.push({ code: 'ink.over-black-brighter', message, where: 'overBlack' });
  }
  const real = realSurface(readings.surface);
  const inside = (curve: Float64Array, band: number): number => (real === undefined ? f64(curve, band) : insideOf(f64(curve, band), real));
  const alike = bandsWhere((band) => {
    const [w, b] = [inside(white, band), inside(black, band)];
    const gap = w - b;
    return !(gap >= LEAST_CONTRAST && gap - w * b * (inside(overWhite, band) - inside(overBlack, band)) > LEAST_CONTRAST / 10);
  });
  if (alike.length > 0) {
    const message = say.whiteAndBlackAre(bandWords(alike));
    problems.push({ code: 'ink.card-contrast', message, where: 'white' });
  }
  return problems;
}

/**
 * An ink from its measured curves over white and over black.
 * @returns an ink with basis 'measured', its colours those on the standard card; with the bands that
 *   had to be mended and by how much
 * @throws EngineError with the code of the first of checkReadings
 * Source: see twoBackground. Noise of 0.5 % costs predicted overprints a median ΔE00 of about 0.5,
 * dark inks far more: their film's transmittance is smaller than the noise.
 */
export function measuredInk(naming: InkNaming, readings: InkReadings): MeasuredInk {
  const [problem] = checkReadings(readings);
  if (problem) throw new EngineError(problem.code, problem.message, { details: { where: problem.where } });
  const { overWhite, overBlack, white, black } = clipped(readings);
  const { surface } = readings;
  const { kx, sx, adjusted } = filmFromReadings(overWhite, overBlack, { white, black, surface });
  const film = filmBands(kx, sx, 1, surface);
  const shownWhite = overFilm(film, white, new Float64Array(BANDS));
  const shownBlack = overFilm(film, black, new Float64Array(BANDS));
  // Readings above 1 were cut before the film was sought, so they count as moved as well.
  const moved = bandsWhere((band) => adjusted.includes(band) || num(readings.overWhite, band) > 1 || num(readings.overBlack, band) > 1);
  const inside = filmBands(kx, sx);
  const least = LEAST_TRANSMITTANCE * LEAST_TRANSMITTANCE * 1.001;
  return {
    ink: {
      id: naming.id,
      name: naming.name,
      basis: 'measured',
      ...coloursOn({ kx, sx }, CARD_WHITE, CARD_BLACK, surface),
      kx: Array.from(kx),
      sx: Array.from(sx),
      dryMinutes: naming.dryMinutes ?? DEFAULT_DRY_MINUTES,
      densityGPerCm3: naming.densityGPerCm3 ?? DEFAULT_DENSITY_G_PER_CM3,
    },
    adjusted: moved.map((band) => ({
      band,
      overWhite: f64(shownWhite, band) - num(readings.overWhite, band),
      overBlack: f64(shownBlack, band) - num(readings.overBlack, band),
    })),
    hiding: bandsWhere((band) => f64(inside.q, band) + f64(inside.r0, band) ** 2 <= least),
  };
}

function bandsWhere(holds: (band: number) => boolean): number[] {
  return Array.from({ length: BANDS }, (_, band) => band).filter(holds);
}

/** Readings as a film can show them. */
function clipped(readings: InkReadings): Record<'overWhite' | 'overBlack' | 'white' | 'black', Float64Array> {
  const cut = (curve: ArrayLike<number>): Float64Array => Float64Array.from(curve, (value) => Math.min(1, value));
  return { overWhite: cut(readings.overWhite), overBlack: cut(readings.overBlack), white: cut(readings.white), black: cut(readings.black) };
}
