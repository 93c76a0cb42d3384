import { num } from '../../base/at.ts';
import { SKETCH_FIELDS, SKETCH_LENGTH } from '../look/sketch.ts';
import { MEASURES, type VariantMeasures } from '../measure/variant-measures.ts';

/** What a sketch adds to the measures: colour on the whole, and where light and dark lie. */
const LOOKS = ['light', 'red', 'yellow', 'strength', 'lightSpread', 'above', 'left', 'middle'] as const;

/** By what a taste tells prints apart. `contrast` is no trait: it is lightest − darkest. */
export type TraitKey = Exclude<keyof VariantMeasures, 'contrast'> | (typeof LOOKS)[number];

/** All traits, in the order of the numbers of traitsOf. */
export const TRAITS: readonly TraitKey[] = [...MEASURES.flatMap(({ key }) => (key === 'contrast' ? [] : [key])), ...LOOKS];

/** What a taste knows of a print. */
export interface TasteFacts {
  measures: VariantMeasures;
  /** As sketchOf gives it. */
  sketch: ArrayLike<number>;
}

/** The traits of a print, one number each in its own unit. */
export function traitsOf({ measures, sketch }: TasteFacts): number[] {
  const measured = MEASURES.flatMap(({ key }) => (key === 'contrast' ? [] : [measures[key]]));
  return [...measured, ...looksOf(sketch)];
}

/** Mean OKLab L, a and b, mean chroma, the standard deviation of L, and L above − below, left − right, middle − rim. */
function looksOf(sketch: ArrayLike<number>): number[] {
  const { across, down } = SKETCH_FIELDS;
  const fields = across * down;
  const sums = { light: 0, square: 0, red: 0, yellow: 0, strength: 0, above: 0, left: 0, middle: 0, inMiddle: 0 };
  for (let field = 0; field < fields; field++) {
    const [l, a, b] = [num(sketch, field * 3), num(sketch, field * 3 + 1), num(sketch, field * 3 + 2)];
    const [column, row] = [field % across, Math.floor(field / across)];
    sums.light += l;
    sums.square += l * l;
    sums.red += a;
    sums.yellow += b;
    sums.strength += Math.sqrt(a * a + b * b);
    sums.above += l * Math.sign((down - 1) / 2 - row);
    sums.left += l * Math.sign((across - 1) / 2 - column);
    if (column > 0 && column < across - 1 && row > 0 && row < down - 1) {
      sums.middle += l;
      sums.inMiddle++;
    }
  }
  const light = sums.light / fields;
  const rim = (sums.light - sums.middle) / (fields - sums.inMiddle);
  return [
    light,
    sums.red / fields,
    sums.yellow / fields,
    sums.strength / fields,
    Math.sqrt(Math.max(0, sums.square / fields - light * light)),
    (2 * sums.above) / fields,
    (2 * sums.left) / fields,
    sums.middle / sums.inMiddle - rim,
  ];
}

/** A sketch as text, two hex digits a number: OKLab L in steps of 1/255, a and b from −0.5 to 0.5. */
export function sketchText(sketch: ArrayLike<number>): string {
  let text = '';
  for (let i = 0; i < SKETCH_LENGTH; i++) {
    const share = num(sketch, i) + (i % 3 === 0 ? 0 : 0.5);
    text += Math.max(0, Math.min(255, Math.round(share * 255)))
      .toString(16)
      .padStart(2, '0');
  }
  return text;
}

/** The sketch of a text that `sketchText` wrote. */
export function sketchOfText(text: string): Float32Array {
  return Float32Array.from({ length: SKETCH_LENGTH }, (_, i) => {
    const share = Number.parseInt(text.slice(i * 2, i * 2 + 2), 16) / 255;
    return i % 3 === 0 ? share : share - 0.5;
  });
}
