import { num } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { REFLECTANCE } from '../base/limits.ts';
import { say } from '../words/en/colour/colour.ts';
import { type Lab, labD50 } from './lab.ts';

/** Noise of an instrument about zero. */
const NOISE = 0.01;

/**
 * labD50 for scripts: refuses what no surface gives back. Inside the engine curves come of films, which
 * hold to it.
 * @throws EngineError 'colour.bands' as labD50, and for a reflectance below −0.01 or above 1.2
 */
export function checkedLabD50(reflectance: ArrayLike<number>): Lab {
  const lab = labD50(reflectance);
  for (let band = 0; band < reflectance.length; band++) {
    const r = num(reflectance, band);
    if (r < REFLECTANCE.least - NOISE || r > REFLECTANCE.most) {
      throw new EngineError('colour.bands', say.reflectanceRunsFromTo(REFLECTANCE.least, REFLECTANCE.most, band + 1, r));
    }
  }
  return lab;
}
