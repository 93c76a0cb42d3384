import type { PairOrder, PairReason } from '../../engine/order/groups/pair-reasons.ts';
import type { LessonResult } from '../../workers/api/picture-api.ts';
import { counted } from '../ui/words.ts';
import type { LessonQuestion } from './lesson-run.ts';

/** '24 orders, 6 different prints'. */
export function countWords(result: Pick<LessonResult, 'orders' | 'count'>): string {
  return `${counted(result.orders.length, 'order')}, ${counted(result.count, 'different print')}`;
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
    const named = `${pair.a + 1} and ${pair.b + 1}`;
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
      return 'which lies on top shows in every order';
    case 'hidden':
      return hiddenUnder.length === 0
        ? 'which lies on top shows in some orders; in others the pulls around them hide it'
        : `which lies on top is hidden when ${hiddenUnder.map((at) => at + 1).join(' or ')} goes over both`;
    case 'alike':
      return `look the same both ways: they differ by at most ΔE ${deltaE.toFixed(1)}, and up to ${minDeltaE.toFixed(1)} counts as the same`;
    case 'absorb':
      return 'films that only absorb light, so either order takes away the same light';
    case 'same-ink':
      return 'the same ink, so either order leaves the same film';
    case 'small':
      return areaMm2 <= minAreaMm2
        ? `meet on ${areaWords(areaMm2)} only; up to ${areaWords(minAreaMm2)} does not count`
        : `differ on ${areaWords(shownMm2)} only; up to ${areaWords(minAreaMm2)} does not count`;
    case 'apart':
      return 'never meet, so either may go down first';
  }
}

function areaWords(areaMm2: number): string {
  return `${areaMm2 < 10 ? areaMm2.toFixed(1) : Math.round(areaMm2)} mm²`;
}

/** '1 under 3 under 2'. */
export function orderWords(order: readonly number[]): string {
  return order.map((pull) => pull + 1).join(' under ');
}
