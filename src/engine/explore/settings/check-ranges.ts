import type { Problem } from '../../base/error.ts';
import type { ExploreSettings } from '../types.ts';
import { inRange } from './range.ts';
import { NUMBER_SETTINGS } from './setting-table.ts';

/**
 * Numbers of the settings that lie outside what the table allows, and shifts finer than their grid.
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
      message: `Offsets go up to ${offsetRangeMm} mm, but in steps of ${offsetSnapMm} mm; let them go further, or in finer steps.`,
    });
  }
  return problems;
}
