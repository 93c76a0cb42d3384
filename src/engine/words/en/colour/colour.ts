import { speak } from '../../language.ts';

export const say = speak('engine/colour/colour', {
  reflectanceRunsFromTo: (least: number, most: number, band: number, r: number) =>
    `A reflectance runs from ${least} to ${most}; band ${band} has ${r}, so divide percent by 100.`,
  twoColoursOfThree: (stringify: string, stringify2: string) =>
    `Two colours of three numbers each, L, a and b, are needed; these are ${stringify} and ${stringify2}.`,
  none: 'none',
  reflectanceNeedsBands380: (bands: number, reflectance: number) =>
    `A reflectance needs ${bands} bands, 380 to 730 nm by 10 nm; this one has ${reflectance}.`,
  reflectanceNeedsNumberIn: (band: number, reflectance: string | number) =>
    `A reflectance needs a number in each band; band ${band} has ${reflectance}.`,
  colourNeedsThreeNumbers: (cut: string) => `A colour needs three numbers, L, a and b; this is ${cut}.`,
  isNotColourWrite: (hex: string) => `“${hex}” is not a colour: write # and six hex digits.`,
});
