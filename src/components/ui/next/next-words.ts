import type { OnwardMeasures } from '../../../engine/explore/onward/ground.ts';
import type { OnwardBy, OnwardResult } from '../../../engine/explore/onward/onward.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { capital } from '../../words/plan-words.ts';
import { counted, mmText, screenWords } from '../words.ts';

/** Ways to rank what could come next, with their words. */
export const RANKS: readonly (readonly [OnwardBy, string])[] = [
  ['change', 'most change'],
  ['softer', 'least contrast of edges'],
  ['sharper', 'most contrast of edges'],
  ['nearer', 'nearest to a chosen print'],
];

const NUMBERS = ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six'];

/** 'One more pull', 'Two more pulls'. */
export function moreWords(count: number): string {
  return `${NUMBERS[count] ?? count} more ${count === 1 ? 'pull' : 'pulls'}`;
}

/** 'Screen 7 Gull wing in Rust, 5.0 mm right'. */
export function nextPullWords(pull: Pull, studio: Studio): string {
  const ink = studio.inks.find(({ id }) => id === pull.ink)?.name ?? pull.ink;
  const moved = [
    pull.dxMm === 0 ? '' : `${mmText(Math.abs(pull.dxMm))} mm ${pull.dxMm > 0 ? 'right' : 'left'}`,
    pull.dyMm === 0 ? '' : `${mmText(Math.abs(pull.dyMm))} mm ${pull.dyMm > 0 ? 'down' : 'up'}`,
  ].filter((text) => text !== '');
  return capital([`${screenWords(pull.screen, studio)} in ${ink}`, ...moved].join(', '));
}

/** Contrast of edges from one to the other: '14 % less contrast of edges'. */
function contrastWords(from: number, to: number): string {
  // A bare sheet, or one colour all over, has no edges to compare with.
  if (from <= 0) return to <= 0 ? 'no edges' : `its first edges, ${to.toFixed(2)} ΔE/mm`;
  const share = Math.round((100 * (to - from)) / from);
  if (share === 0) return 'contrast of edges as before';
  return `${Math.abs(share)} % ${share < 0 ? 'less' : 'more'} contrast of edges`;
}

/** What a print is like beside the sheet that it begins with: 'ΔE 6.2 in the mean, 14 % less contrast of edges'. */
export function onwardWords(now: OnwardMeasures, { change, edgeContrast, distance }: OnwardMeasures): string {
  const parts = [`ΔE ${change.toFixed(1)} in the mean`, contrastWords(now.edgeContrast, edgeContrast)];
  if (distance !== null && now.distance !== null) {
    parts.push(`ΔE ${distance.toFixed(1)} from the chosen print, where it is ${now.distance.toFixed(1)} now`);
  }
  return parts.join(', ');
}

/** How many prints of so many pulls were looked at. */
export function triedWords({ tried, all, found }: OnwardResult): string {
  const whole = all.filter(Boolean).length;
  const last = found.length > whole ? ', and beyond that those that go on from the best' : '';
  return `${counted(tried, 'print')} looked at: ${whole === 0 ? 'not yet all' : whole === 1 ? 'all of one more pull' : `all of up to ${whole} more pulls`}${last}. Prints that look alike hang once.`;
}
