import { speak } from '../../language.ts';

export const say = speak('engine/ink/paper', {
  wide: 'wide',
  high: 'high',
  sheetIsMmGive: (value: number, side: string, most: number) =>
    `The sheet is ${value} mm ${side}; give more than 0 and at most ${most} mm.`,
  sheetIsMmGiveLong: (widthMm: number, heightMm: number, paperProportion: number) =>
    `The sheet is ${widthMm} × ${heightMm} mm; give a long side of at most ${paperProportion} times the short one.`,
  printablePartHasNo: 'The printable part has no size; give it a width and a height.',
  printablePartBeginsOff: 'The printable part begins off the sheet; give margins of 0 mm or more.',
  printablePartReachesMm: (xMm: number, yMm: number, widthMm: number, heightMm: number) =>
    `The printable part reaches ${xMm} × ${yMm} mm from the corner, but the sheet is ${widthMm} × ${heightMm} mm; make it smaller or the sheet larger.`,
  none: 'none',
  papersCurveNeedsBands: (bands: number, curve: number) => `A paper's curve needs ${bands} bands, 380 to 730 nm; this one has ${curve}.`,
  papersCurveIsNo: (band: string) => `The paper's curve is no reflectance at ${band}: measure it again.`,
  white: 'White',
  cream: 'Cream',
  grey: 'Grey',
  black: 'Black',
});
