import type { Paper } from '../../engine/ink/types.ts';
import type { Pull } from '../../engine/stack/types.ts';
import type { Studio } from '../../engine/studio/studio.ts';
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

/** The name of a pull's ink. */
export function inkNameOf(pull: Pull | undefined, { inks }: Pick<Studio, 'inks'>): string {
  return inks.find(({ id }) => id === pull?.ink)?.name ?? 'an ink that is gone';
}

/** Which films lie at a place: 'Tar over Ochre (pulls 1 and 3)'. @param at places in the stack, first down first */
export function placePullsWords(at: readonly number[], pulls: readonly Pull[], studio: Pick<Studio, 'inks'>): string {
  if (at.length === 0) return 'Bare paper';
  const names = at.map((index) => inkNameOf(pulls[index], studio));
  const numbers = at.map((index) => String(index + 1));
  const last = numbers.at(-1) ?? '';
  const counted = numbers.length === 1 ? `pull ${last}` : `pulls ${numbers.slice(0, -1).join(', ')} and ${last}`;
  return `${names.reverse().join(' over ')} (${counted})`;
}

/** What the keys do on the picture. @param selected index of the pull that is selected, below 0 when none is */
export function keysWords(selected: number): string {
  const arrows = selected < 0 ? 'Arrow keys move the sheet' : `Arrow keys move pull ${selected + 1} by 0.1 mm, with Shift by 1 mm`;
  return `Picture. ${arrows}; what is selected is dragged on the sheet; Enter reads the colour in the middle; plus, minus and 0 come closer, further, to the whole sheet; hold B to build it up.`;
}
