import type { PairOrder, PairReason } from '../../../engine/order/groups/pair-reasons.ts';
import type { DifferentPlace } from '../../../engine/order/groups/where-different.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { fixed, numberLocale } from '../../../engine/words/language.ts';
import type { LessonResult } from '../../../workers/api/picture-api.ts';
import { say } from '../../words/en/lesson/board.ts';
import type { LessonQuestion } from './lesson-run.ts';

/** '24 orders, 6 different prints'. */
export function countWords(result: Pick<LessonResult, 'orders' | 'count'>): string {
  return say.ordersDifferentPrints(result.orders.length, result.count);
}

/** Pairs of pulls and what is to say of their order. */
export interface ReasonLine {
  /** '1 and 3', '1 and 3, 2 and 4'. */
  pairs: string;
  words: string;
}

/** The limits that a lesson was sorted by. */
type Limits = Pick<LessonQuestion, 'minDeltaE' | 'minAreaMm2'>;

/**
 * Why the order of each pair shows or not; pairs of one reason share a line.
 * @param pairs all pairs of the lesson
 */
export function reasonLines(pairs: readonly PairOrder[], limits: Limits): ReasonLine[] {
  const lines = new Map<string, string[]>();
  const ranked = pairs.toSorted((one, other) => REASONS.indexOf(one.reason) - REASONS.indexOf(other.reason));
  for (const pair of ranked) {
    const words = reasonWords(pair, limits);
    const named = say.and(pair.a + 1, pair.b + 1);
    const line = lines.get(words);
    if (line === undefined) lines.set(words, [named]);
    else line.push(named);
  }
  return [...lines].map(([words, named]) => ({ pairs: named.join(', '), words }));
}

/** In the order in which they are told. */
const REASONS: readonly PairReason[] = ['shows', 'hidden', 'alike', 'absorb', 'same-ink', 'small', 'apart'];

function reasonWords({ reason, areaMm2, shownMm2, deltaE, hiddenUnder }: PairOrder, { minDeltaE, minAreaMm2 }: Limits): string {
  switch (reason) {
    case 'shows':
      return say.whichLiesOnTop;
    case 'hidden':
      return hiddenUnder.length === 0 ? say.whichLiesOnTopShows : say.whichLiesOnTopIs(hiddenUnder.map((at) => at + 1).join(say.or));
    case 'alike':
      return say.lookSameBothWays(fixed(deltaE, 1), fixed(minDeltaE, 1));
    case 'absorb':
      return say.filmsThatOnlyAbsorb;
    case 'same-ink':
      return say.sameInkSoEither;
    case 'small':
      return areaMm2 <= minAreaMm2
        ? say.meetOnOnlyUp(areaWords(areaMm2), areaWords(minAreaMm2))
        : say.differOnOnlyUp(areaWords(shownMm2), areaWords(minAreaMm2));
    case 'apart':
      return say.neverMeetSoEither;
  }
}

function areaWords(areaMm2: number): string {
  return `${areaMm2 < 10 ? fixed(areaMm2, 1) : Math.round(areaMm2).toLocaleString(numberLocale())} mm²`;
}

/** '1 under 3 under 2'. */
export function orderWords(order: readonly number[]): string {
  return order.map((pull) => pull + 1).join(say.under);
}

/** 'as it is', '40 % clearer', 'opaque'. @param opacity −1 to 1 */
export function opacityWords(opacity: number): string {
  const percent = Math.round(Math.abs(opacity) * 100);
  if (percent === 0) return say.asItIs;
  if (percent === 100) return opacity < 0 ? say.clear : say.opaque;
  return say.clearer(percent, opacity < 0);
}

/** 'Where 1 and 2 lie: 4,210 mm², ΔE 8.2'. @param pulls in the order of the lesson */
export function placeWords(place: DifferentPlace, pulls: readonly Pull[]): string {
  const numbers = place.pulls.map((id) => pulls.findIndex((pull) => pull.id === id) + 1).sort((a, b) => a - b);
  const named = numbers.length < 2 ? numbers.join('') : say.andNumbers(numbers.slice(0, -1).join(', '), numbers.at(-1) ?? '');
  return say.whereLieDeltaE(named, areaWords(place.areaMm2), fixed(place.deltaE, 1));
}

/**
 * What lies on the sheet while a print is built: 'Bare paper', '2 of 4: Rope coil, weed'.
 * @param down the pulls, first down first
 * @param built how many of them lie there
 * @param short '2: Rope coil'
 */
export function builtWords(down: readonly Pull[], built: number, studio: Studio, short = false): string {
  const last = down[built - 1];
  if (last === undefined) return say.barePaper;
  const screen = studio.screens.find(({ id }) => id === last.screen)?.name ?? say.screenThatIsGone;
  if (short) return `${built}: ${screen}`;
  const ink = studio.inks.find(({ id }) => id === last.ink)?.name ?? say.inkThatIsGone;
  return say.of(built, down.length, screen, ink);
}

/** 'Picture 3 of 12, printed by 2 orders'. @param short whether the orders are left out */
export function pictureWords(result: Pick<LessonResult, 'groups' | 'count'>, picture: number, short = false): string {
  if (short) return say.pictureOf(picture + 1, result.count);
  const orders = result.groups[picture]?.length ?? 0;
  return say.pictureOfPrintedBy(picture + 1, result.count, orders);
}
