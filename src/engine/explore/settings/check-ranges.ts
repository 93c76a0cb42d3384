import type { Problem } from '../../base/error.ts';
import { say } from '../../words/en/explore/settings.ts';
import type { ExploreSettings } from '../types.ts';
import { inRange } from './range.ts';
import { NUMBER_SETTINGS } from './setting-table.ts';

/**
 * Numbers of the settings that lie outside what the table allows, shifts finer than their grid, and a range that ends before it begins.
 * @returns problems with the table's codes; where = a field of the settings
 */
export function checkRanges(settings: ExploreSettings): Problem[] {
  const problems = NUMBER_SETTINGS.flatMap(([field, { range, code, wrong, empty }]): Problem[] => {
    const value: number | undefined = settings[field];
    const fits = value === undefined ? empty !== undefined : inRange(range, value);
    return fits ? [] : [{ code, where: field, message: wrong(value ?? Number.NaN) }];
  });
  const { offsetSnapMm = 0.1, offsetRangeMm } = settings;
  if (offsetSnapMm >= 0.1 && offsetRangeMm > 0 && offsetRangeMm < offsetSnapMm) {
    problems.push({
      code: 'limit.snap',
      where: 'offsetRangeMm',
      message: say.offsetsGoUpTo(offsetRangeMm, offsetSnapMm),
    });
  }
  const { orderFrom = 0, orderTo = 1 } = settings;
  if (problems.length === 0 && orderFrom > orderTo) {
    problems.push({
      code: 'explore.order-range',
      where: 'orderTo',
      message: say.fromOfPairsTo(Math.round(orderFrom * 100), Math.round(orderTo * 100)),
    });
  }
  return problems;
}
