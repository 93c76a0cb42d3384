import { defined } from '../../../engine/base/at.ts';
import type { OrderCount } from '../../../engine/explore/types.ts';

/**
 * The sentence that tells a count: of orders that may differ, since pairs of pulls are counted
 * whatever lies over them.
 */
export function countSentence({ pulls, count, least, most }: OrderCount): string {
  const from = pulls === 1 ? 'this one pull' : `these ${pulls.toLocaleString('en')} pulls`;
  if (count === null && least !== undefined && most !== undefined) {
    return `Between ${power(least.length - 1)} and ${power(most.length)} orders of ${from} may print differently.`;
  }
  if (count === null) return `More orders of ${from} that may print differently than can be counted.`;
  if (count === '1') return `All orders of ${from} print the same.`;
  const shown = count.length > 15 ? `About ${count[0]}.${count[1]} × ${power(count.length - 1)}` : BigInt(count).toLocaleString('en');
  return `${shown} orders of ${from} may print differently.`;
}

/**
 * What is not in the count, and how a wall goes through so many.
 * @param ranged whether orders stray by a range only, of which the settings speak beside
 */
export function drawnSentence({ count, oneByOne }: OrderCount, ranged = false): string {
  if (count === '1') return '';
  const fewer = 'Fewer prints differ where a pull hides what lies below it.';
  if (ranged) return fewer;
  if (oneByOne) return `${fewer} While nothing else may change, the wall hangs every one before it ends.`;
  return `${fewer} The wall draws from them evenly; what must stay leaves fewer.`;
}

function power(exponent: number): string {
  return '10' + String(exponent).replaceAll(/\d/g, (digit) => defined('⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(digit)]));
}
