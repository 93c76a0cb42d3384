import { defined } from '../../../engine/base/at.ts';
import type { OrderCount } from '../../../engine/explore/types.ts';
import { numberLocale } from '../../../engine/words/language.ts';
import { say } from '../../words/en/wall/settings.ts';

/**
 * The sentence that tells a count: of orders that may differ, since pairs of pulls are counted
 * whatever lies over them.
 */
export function countSentence({ pulls, count, least, most }: OrderCount): string {
  const from = pulls === 1 ? say.thisOnePull : say.thesePulls(pulls.toLocaleString(numberLocale()));
  if (count === null && least !== undefined && most !== undefined) {
    return say.betweenAndOrdersOf(power(least.length - 1), power(most.length), from);
  }
  if (count === null) return say.moreOrdersOfThat(from);
  if (count === '1') return say.allOrdersOfPrint(from);
  const shown =
    count.length > 15 ? say.about(count[0] ?? '', count[1] ?? '', power(count.length - 1)) : BigInt(count).toLocaleString(numberLocale());
  return say.ordersOfMayPrint(shown, from);
}

/**
 * What is not in the count, and how a wall goes through so many.
 * @param ranged whether orders stray by a range only, of which the settings speak beside
 */
export function drawnSentence({ count, oneByOne }: OrderCount, ranged = false): string {
  if (count === '1') return '';
  const fewer = say.fewerPrintsDifferWhere;
  if (ranged) return fewer;
  if (oneByOne) return say.whileNothingElseMay(fewer);
  return say.wallDrawsFromThem(fewer);
}

function power(exponent: number): string {
  return '10' + String(exponent).replaceAll(/\d/g, (digit) => defined('⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(digit)]));
}
