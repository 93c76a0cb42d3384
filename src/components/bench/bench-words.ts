import type { Paper } from '../../engine/ink/types.ts';
import { mmText } from '../ui/words.ts';

/**
 * What the readout under the picture says.
 * @param shown the state that is played, null when none is
 * @param pointed the place on the sheet that is pointed at, null when none is
 */
export function readoutWords(
  { widthMm, heightMm }: Pick<Paper, 'widthMm' | 'heightMm'>,
  pulls: number,
  shown: number | null,
  pointed: { xMm: number; yMm: number } | null,
): string {
  if (shown !== null) return shown === 0 ? 'Bare paper' : `After pull ${shown} of ${pulls}`;
  if (pointed === null) return `Sheet ${widthMm} × ${heightMm} mm`;
  const { xMm, yMm } = pointed;
  const off = xMm < 0 || yMm < 0 || xMm > widthMm || yMm > heightMm;
  return off ? 'Off the sheet' : `${mmText(xMm)} mm right, ${mmText(yMm)} mm down`;
}

/** What the keys do on the picture. @param selected index of the pull that is selected, below 0 when none is */
export function keysWords(selected: number): string {
  const arrows = selected < 0 ? 'Arrow keys move the sheet' : `Arrow keys move pull ${selected + 1} by 0.1 mm, with Shift by 1 mm`;
  return `Picture. ${arrows}; plus, minus and 0 come closer, further, to the whole sheet; hold B to build it up.`;
}
