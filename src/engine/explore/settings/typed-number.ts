import { type NumberField, numberSetting } from './setting-table.ts';

/**
 * A typed number as it is kept: on a step of the setting's range and within it.
 * @param typed as the field shows it
 * @param most greatest that may be kept
 */
export function keptNumber(key: NumberField, typed: number, most = Infinity): number {
  const { range, shownTimes = 1 } = numberSetting(key);
  const step = range.step * shownTimes;
  const stepped = Math.round(Math.round(typed / step) * step * 1000) / 1000;
  return Math.min(range.most, most, Math.max(range.least, stepped / shownTimes));
}
