import { apartFrom } from '../../../engine/explore/look/apart.ts';
import type { VariantMeasures } from '../../../engine/explore/measure/variant-measures.ts';
import { fixed } from '../../../engine/words/language.ts';
import { say } from '../../words/en/wall/print.ts';

/** What a measure that is larger, and one that is smaller, is in words. */
export const MEASURE_WORDS: Record<keyof VariantMeasures, readonly [string, string]> = {
  coverage: [say.moreOfSheetCovered, say.lessOfSheetCovered],
  colours: [say.moreColours, say.fewerColours],
  mainColour: [say.largerMainColour, say.smallerMainColour],
  overprintColour: [say.moreOverprintColours, say.fewerOverprintColours],
  darkest: [say.lighterDarkestPlace, say.darkerDarkestPlace],
  lightest: [say.lighterLightestPlace, say.darkerLightestPlace],
  contrast: [say.widerRangeOfLightness, say.narrowerRangeOfLightness],
  edgeContrast: [say.moreContrastOfEdges, say.lessContrastOfEdges],
  imbalance: [say.itsWeightFurtherFrom, say.itsWeightNearerTo],
  pulls: [say.morePulls, say.fewerPulls],
  screens: [say.moreScreens, say.fewerScreens],
  inks: [say.moreInks, say.fewerInks],
  setUps: [say.moreSetUps, say.fewerSetUps],
};

/** A print among those that hang, by their numbers. */
export interface Beside {
  index: number;
  /** By number; none where it is not known yet. */
  measures: readonly (VariantMeasures | undefined)[];
  /** Numbers in the order in which prints hang, and how many hang in a row. */
  sequence: readonly number[];
  columns: number;
}

/** 'Beside its neighbours: more contrast of edges (0.31, they 0.22 ΔE/mm), fewer inks (4, they 6).'; '' where there are none. */
export function besideWords({ index, measures, sequence, columns }: Beside): string {
  const known = (list: readonly number[]): VariantMeasures[] => list.flatMap((each) => measures[each] ?? []);
  const of = measures[index];
  const neighbours = known(neighboursOf(sequence, columns, index));
  if (of === undefined || neighbours.length === 0) return '';
  const apart = apartFrom(of, neighbours, known(sequence)).map(({ measure: { key, digits, unit }, value, usual }) => {
    const words = MEASURE_WORDS[key][value > usual ? 0 : 1];
    return say.they(words, fixed(value, digits), fixed(usual, digits), unit === '' ? '' : ` ${unit}`);
  });
  return apart.length === 0 ? say.measuresMuchLikeIts : say.besideItsNeighbours(apart.join(', '));
}

/** Places of the prints that hang round one: left, right, above and below. */
export function neighboursOf(sequence: readonly number[], columns: number, index: number): number[] {
  const at = sequence.indexOf(index);
  if (at < 0) return [];
  const column = at % columns;
  const places = [column > 0 ? at - 1 : -1, column < columns - 1 ? at + 1 : -1, at - columns, at + columns];
  return places.flatMap((place) => (place >= 0 ? (sequence[place] ?? []) : []));
}
