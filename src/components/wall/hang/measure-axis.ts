import { defined, num } from '../../../engine/base/at.ts';
import type { MeasureWords } from '../../../engine/explore/measure/variant-measures.ts';
import { numberLocale } from '../../../engine/words/language.ts';
import type { PlanAxis } from '../../canvas/plan/wall-plan.ts';

const TICKS = 5;

/** A number with the digits that mean something, and its unit. */
export function measureText(value: number, { digits, unit }: Pick<MeasureWords, 'digits' | 'unit'>): string {
  const text = value.toLocaleString(numberLocale(), { minimumFractionDigits: digits, maximumFractionDigits: digits });
  return unit === '' ? text : `${text} ${unit}`;
}

/** Round values within a range, about `TICKS` of them. */
export function roundValues(low: number, high: number, digits: number): number[] {
  if (!(high > low)) return [low];
  const rough = (high - low) / TICKS;
  const ten = 10 ** Math.floor(Math.log10(rough));
  const step = Math.max(10 ** -digits, defined([1, 2, 5, 10].map((times) => times * ten).find((each) => each >= rough * 0.999)));
  const values: number[] = [];
  for (let k = Math.ceil(low / step - 1e-9); k * step <= high + step * 1e-9; k++) values.push(Number((k * step).toFixed(10)));
  return values;
}

/**
 * Places of values along an axis.
 * @param ranks true spreads prints evenly by their order; equal values share the middle of their ranks
 * @returns 0 to 1 a value, NaN where the value is none, and the ticks in the measure's own values
 */
export function placeAlong(values: Float32Array, words: MeasureWords, ranks: boolean): { places: Float32Array; axis: PlanAxis } {
  const places = new Float32Array(values.length).fill(Number.NaN);
  const order = Array.from(values.keys())
    .filter((i) => Number.isFinite(values[i]))
    .sort((a, b) => num(values, a) - num(values, b) || a - b);
  const title = words.unit === '' ? words.label : `${words.label}, ${words.unit}`;
  const low = values[num(order, 0)] ?? 0;
  const high = values[defined(order.at(-1))] ?? 0;
  if (!ranks) {
    const at = (value: number): number => (high > low ? (value - low) / (high - low) : 0.5);
    for (const i of order) places[i] = at(num(values, i));
    const ticks = roundValues(low, high, words.digits).map((value) => ({ at: at(value), label: bare(value, words) }));
    return { places, axis: { title, ticks } };
  }
  const last = Math.max(1, order.length - 1);
  for (let from = 0; from < order.length;) {
    let to = from;
    while (to + 1 < order.length && values[num(order, to + 1)] === values[num(order, from)]) to++;
    for (let i = from; i <= to; i++) places[num(order, i)] = high > low ? (from + to) / 2 / last : 0.5;
    from = to + 1;
  }
  const ticks: PlanAxis['ticks'] = [];
  for (let k = 0; k < TICKS; k++) {
    const i = order[Math.round((k / (TICKS - 1)) * (order.length - 1))];
    if (i === undefined) continue;
    const label = bare(num(values, i), words);
    if (ticks.at(-1)?.label !== label) ticks.push({ at: num(places, i), label });
  }
  return { places, axis: { title, ticks } };
}

function bare(value: number, { digits }: MeasureWords): string {
  return measureText(value, { digits, unit: '' });
}
