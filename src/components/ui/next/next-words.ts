import type { OnwardMeasures } from '../../../engine/explore/onward/ground.ts';
import type { OnwardBy, OnwardResult } from '../../../engine/explore/onward/onward.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { capital, fixed } from '../../../engine/words/language.ts';
import { say } from '../../words/en/ui/next.ts';
import { mmText, screenWords } from '../words.ts';

/** Ways to rank what could come next, with their words. */
export const RANKS: readonly (readonly [OnwardBy, string])[] = [
  ['change', say.mostChange],
  ['softer', say.leastContrastOfEdges],
  ['sharper', say.mostContrastOfEdges],
  ['nearer', say.nearestToChosenPrint],
];

const NUMBERS = [say.no, say.one, say.two, say.three, say.four, say.five, say.six];

/** 'One more pull', 'Two more pulls'. */
export function moreWords(count: number): string {
  return say.morePulls(NUMBERS[count] ?? count, count);
}

/** 'Screen 7 Gull wing in Rust, 5.0 mm right'. */
export function nextPullWords(pull: Pull, studio: Studio): string {
  const ink = studio.inks.find(({ id }) => id === pull.ink)?.name ?? pull.ink;
  const moved = [
    pull.dxMm === 0 ? '' : say.mmRight(mmText(Math.abs(pull.dxMm)), pull.dxMm > 0),
    pull.dyMm === 0 ? '' : say.mmDown(mmText(Math.abs(pull.dyMm)), pull.dyMm > 0),
  ].filter((text) => text !== '');
  return capital([say.in(screenWords(pull.screen, studio), ink), ...moved].join(', '));
}

/** Contrast of edges from one to the other: '14 % less contrast of edges'. */
function contrastWords(from: number, to: number): string {
  // A bare sheet, or one colour all over, has no edges to compare with.
  if (from <= 0) return to <= 0 ? say.noEdges : say.itsFirstEdgesDeltaE(fixed(to, 2));
  const share = Math.round((100 * (to - from)) / from);
  if (share === 0) return say.contrastOfEdgesAs;
  return say.lessContrastOfEdges(Math.abs(share), share < 0);
}

/** What a print is like beside the sheet that it begins with: 'ΔE 6.2 in the mean, 14 % less contrast of edges'. */
export function onwardWords(now: OnwardMeasures, { change, edgeContrast, distance }: OnwardMeasures): string {
  const parts = [say.deltaEInMean(fixed(change, 1)), contrastWords(now.edgeContrast, edgeContrast)];
  if (distance !== null && now.distance !== null) {
    // By it they are ranked then.
    parts.unshift(say.deltaEFromChosenPrint(fixed(distance, 1), fixed(now.distance, 1)));
  }
  return parts.join(', ');
}

/** How many prints of so many pulls were looked at. */
export function triedWords({ tried, all, found }: OnwardResult): string {
  const whole = all.filter(Boolean).length;
  const last = found.length > whole ? say.andBeyondThatThose : '';
  return say.printsLookedAtPrints(tried, whole === 0 ? say.notYetAll : whole === 1 ? say.allOfOneMore : say.allOfUpTo(whole), last);
}
