import { say } from '../../words/en/stack/look.ts';

/**
 * How large a print is drawn on a screen so that it fills as much of the view as the print itself
 * would from further away: both span one angle.
 * @param screen.pxPerMm of the screen, CSS px in a mm of its glass
 * @param screen.eyeMm from the eye to the screen, mm
 * @param distanceMm from the eye to the print, mm
 * @returns CSS px for a mm of the print
 * @throws RangeError when one of them is no number above 0
 * Source: similar triangles; exact, and flat to the eye, for prints looked at straight on.
 */
export function pxPerMmFromAfar({ pxPerMm, eyeMm }: { pxPerMm: number; eyeMm: number }, distanceMm: number): number {
  if (!(pxPerMm > 0 && eyeMm > 0 && distanceMm > 0)) throw new RangeError(say.screenEyeAndDistance);
  return (pxPerMm * eyeMm) / distanceMm;
}
