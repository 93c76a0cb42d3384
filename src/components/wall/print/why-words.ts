import { apartFrom } from '../../../engine/explore/look/apart.ts';
import type { VariantMeasures } from '../../../engine/explore/measure/variant-measures.ts';

/** What a measure that is larger, and one that is smaller, is in words. */
export const MEASURE_WORDS: Record<keyof VariantMeasures, readonly [string, string]> = {
  coverage: ['more of the sheet covered', 'less of the sheet covered'],
  colours: ['more colours', 'fewer colours'],
  mainColour: ['a larger main colour', 'a smaller main colour'],
  overprintColour: ['more overprint colours', 'fewer overprint colours'],
  darkest: ['a lighter darkest place', 'a darker darkest place'],
  lightest: ['a lighter lightest place', 'a darker lightest place'],
  contrast: ['a wider range of lightness', 'a narrower range of lightness'],
  edgeContrast: ['more contrast of edges', 'less contrast of edges'],
  imbalance: ['its weight further from the middle', 'its weight nearer to the middle'],
  pulls: ['more pulls', 'fewer pulls'],
  screens: ['more screens', 'fewer screens'],
  inks: ['more inks', 'fewer inks'],
  setUps: ['more set-ups', 'fewer set-ups'],
};

/** 'Beside its neighbours: more contrast of edges (0.31, they 0.22 ΔE/mm), fewer inks (4, they 6).'; '' where there are none. */
export function besideWords(
  of: VariantMeasures | undefined,
  neighbours: readonly VariantMeasures[],
  wall: readonly VariantMeasures[],
): string {
  if (of === undefined || neighbours.length === 0) return '';
  const apart = apartFrom(of, neighbours, wall).map(({ measure: { key, digits, unit }, value, usual }) => {
    const words = MEASURE_WORDS[key][value > usual ? 0 : 1];
    return `${words} (${value.toFixed(digits)}, they ${usual.toFixed(digits)}${unit === '' ? '' : ` ${unit}`})`;
  });
  return apart.length === 0 ? 'Measures much like its neighbours.' : `Beside its neighbours: ${apart.join(', ')}.`;
}

/** Places of the prints that hang round one: left, right, above and below. */
export function neighboursOf(sequence: readonly number[], columns: number, index: number): number[] {
  const at = sequence.indexOf(index);
  if (at < 0) return [];
  const column = at % columns;
  const places = [column > 0 ? at - 1 : -1, column < columns - 1 ? at + 1 : -1, at - columns, at + columns];
  return places.flatMap((place) => (place >= 0 ? (sequence[place] ?? []) : []));
}
