import type { LessonResult, OverlapEdge } from '../../workers/api/picture-api.ts';
import { counted } from '../ui/words.ts';

/** '24 orders, 6 different prints'. */
export function countWords(result: Pick<LessonResult, 'orders' | 'count'>): string {
  return `${counted(result.orders.length, 'order')}, ${counted(result.count, 'different print')}`;
}

/**
 * Why the pictures are as many as they are, in one to three sentences.
 * @param edges all pairs that overlap, also those whose order does not show
 */
export function whyWords(pulls: number, edges: readonly OverlapEdge[], minDeltaE: number): string {
  const pairs = (pulls * (pulls - 1)) / 2;
  const apart = pairs - edges.length;
  const alike = edges.filter((edge) => edge.deltaE < minDeltaE).length;
  if (edges.length === 0) return 'No two shapes overlap, so it makes no difference which goes down first.';
  const words: string[] = [];
  if (apart > 0) {
    words.push(
      `Order shows only where shapes overlap: ${apart} of the ${pairs} pairs do not, so ${apart === 1 ? 'that pair' : 'those pairs'} may go down either way.`,
    );
  } else {
    words.push(`Order shows only where shapes overlap, and here ${pairs === 1 ? 'the two do' : 'every pair does'}.`);
  }
  if (alike > 0) {
    words.push(
      `${counted(alike, 'overlapping pair')} ${alike === 1 ? 'looks' : 'look'} the same both ways (under ΔE ${minDeltaE}), as inks that only absorb light and scatter none always do.`,
    );
  }
  if (alike < edges.length) words.push('Where order shows, the lower ink is seen through the upper, or hidden by it.');
  return words.join(' ');
}

/** '1 under 3 under 2'. */
export function orderWords(order: readonly number[]): string {
  return order.map((pull) => pull + 1).join(' under ');
}
