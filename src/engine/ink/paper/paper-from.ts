import { EngineError } from '../../base/error.ts';
import type { Lab } from '../../colour/lab.ts';
import { BANDS } from '../../colour/weights.ts';
import { say } from '../../words/en/ink/paper.ts';
import { MOST_REFLECTANCE } from '../cgats/scale.ts';
import { bandWords } from '../characterise/band-words.ts';
import { curveFromColour } from '../film/curves.ts';
import type { Paper } from '../types.ts';

/** A paper's sheet without its colour. */
export type Sheet = Omit<Paper, 'reflectance'>;

/**
 * A paper from its measured curve.
 * @param curve reflectance, 36 bands; from 1 to 1.2, where brightened paper glows, it becomes 1, as
 *   films are laid over reflectances alone
 * @throws EngineError 'paper.bad-curve' naming the bands
 */
export function paperFromCurve(sheet: Sheet, curve: ArrayLike<number>): Paper {
  if (curve?.length !== BANDS) {
    throw new EngineError('paper.bad-curve', say.papersCurveNeedsBands(BANDS, curve?.length ?? say.none));
  }
  const values = Array.from(curve);
  const bad = values.flatMap((value, band) => (value >= 0 && value <= MOST_REFLECTANCE ? [] : [band]));
  if (bad.length > 0) {
    throw new EngineError('paper.bad-curve', say.papersCurveIsNo(bandWords(bad)), {
      details: { bands: bad },
    });
  }
  return { ...sheet, reflectance: values.map((value) => Math.min(1, value)) };
}

/**
 * A paper from its colour alone, with the smoothest curve that has it: a guess of the spectrum.
 * @param lab D50/2°
 * @throws EngineError 'colour.outside-solid', details.nearest the nearest possible colour
 */
export function paperFromColour(sheet: Sheet, lab: Readonly<Lab>): Paper {
  return { ...sheet, reflectance: Array.from(curveFromColour(lab)) };
}
