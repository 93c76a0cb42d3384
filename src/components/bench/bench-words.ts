import type { Paper } from '../../engine/ink/types.ts';
import type { Pull } from '../../engine/stack/types.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import { mmText } from '../ui/words.ts';
import { say } from '../words/en/bench/room.ts';

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
  if (shown !== null) return shown === 0 ? say.barePaper : say.afterPullOf(shown, pulls);
  if (pointed === null) return say.sheetMm(widthMm, heightMm);
  const { xMm, yMm } = pointed;
  const off = xMm < 0 || yMm < 0 || xMm > widthMm || yMm > heightMm;
  return off ? say.offSheet : say.mmRightMmDown(mmText(xMm), mmText(yMm));
}

/** The name of a pull's ink. */
export function inkNameOf(pull: Pull | undefined, { inks }: Pick<Studio, 'inks'>): string {
  return inks.find(({ id }) => id === pull?.ink)?.name ?? say.inkThatIsGone;
}

/** More films than this are not all named: they are listed below each other. */
const MOST_NAMED = 5;
const NAMED_OF_MORE = 3;

/** Which films lie at a place: 'Tar over Ochre (pulls 1 and 3)'; of many, the uppermost and how many more. @param at places in the stack, first down first */
export function placePullsWords(at: readonly number[], pulls: readonly Pull[], studio: Pick<Studio, 'inks'>): string {
  if (at.length === 0) return say.barePaper;
  const names = at.map((index) => inkNameOf(pulls[index], studio));
  if (names.length > MOST_NAMED) {
    const upper = names.slice(-NAMED_OF_MORE).reverse();
    return say.overMore(upper.join(say.over), names.length - NAMED_OF_MORE);
  }
  const numbers = at.map((index) => String(index + 1));
  const last = numbers.at(-1) ?? '';
  const counted = numbers.length === 1 ? say.pull(last) : say.pullsAnd(numbers.slice(0, -1).join(', '), last);
  return `${names.reverse().join(say.over)} (${counted})`;
}

/** What the keys do on the picture. @param selected index of the pull that is selected, below 0 when none is */
export function keysWords(selected: number): string {
  const arrows = selected < 0 ? say.arrowKeysMoveSheet : say.arrowKeysMovePull(selected + 1);
  return say.pictureWhatIsSelected(arrows);
}
