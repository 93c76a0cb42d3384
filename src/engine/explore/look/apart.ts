import { MEASURES, type MeasureWords, type VariantMeasures } from '../measure/variant-measures.ts';

/** A measure by which a print stands apart from others. */
export interface Apart {
  measure: MeasureWords;
  value: number;
  /** The mean of the others. */
  usual: number;
}

/** Less than this part of what the prints of a wall spread by (one standard deviation) is not worth a word. */
const LEAST_SPREAD = 0.6;

/**
 * The measures by which a print differs most from some others, against how much the prints of the wall differ.
 * @param others at least one, else nothing is found
 * @param wall measures of all that hangs
 * @returns at most two, the one that sets it apart most first
 */
export function apartFrom(of: VariantMeasures, others: readonly VariantMeasures[], wall: readonly VariantMeasures[]): Apart[] {
  if (others.length === 0) return [];
  const mean = (list: readonly VariantMeasures[], key: keyof VariantMeasures): number =>
    list.reduce((sum, each) => sum + each[key], 0) / list.length;
  const found = MEASURES.map((measure) => {
    const { key, digits } = measure;
    const middle = mean(wall, key);
    const spread = Math.sqrt(wall.reduce((sum, each) => sum + (each[key] - middle) ** 2, 0) / Math.max(1, wall.length));
    const usual = mean(others, key);
    // What reads alike is alike.
    const same = of[key].toFixed(digits) === usual.toFixed(digits);
    return { measure, value: of[key], usual, worth: same || spread < 1e-9 ? 0 : Math.abs(of[key] - usual) / spread };
  });
  return found
    .filter(({ worth }) => worth >= LEAST_SPREAD)
    .sort((a, b) => b.worth - a.worth)
    .slice(0, 2)
    .map(({ measure, value, usual }) => ({ measure, value, usual }));
}
