import { defined } from '../../base/at.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import type { CgatsSample } from '../cgats/read-cgats.ts';
import { curveFromColour } from '../film/curves.ts';
import { labSwatch } from '../film/lab-swatch.ts';
import { type Swatch, swatchOf } from '../film/swatch.ts';

/** The sample's colour, D50/2°. */
export function sampleLab(sample: CgatsSample): Lab {
  return sample.reflectance === undefined ? defined(sample.lab) : labD50(sample.reflectance);
}

/**
 * The sample's curve, 36 bands; of a Lab alone the smoothest that has it.
 * @throws EngineError 'colour.outside-solid' when no surface can have the Lab
 */
export function sampleCurve(sample: CgatsSample): ArrayLike<number> {
  return sample.reflectance ?? curveFromColour(defined(sample.lab));
}

/** The sample as a screen shows it. */
export function sampleSwatch(sample: CgatsSample): Swatch {
  return sample.reflectance === undefined ? labSwatch(defined(sample.lab)) : swatchOf(sample.reflectance);
}
