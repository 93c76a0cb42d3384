import type { say as english } from '../../en/ink/paper.ts';

export const say: typeof english = {
  wide: 'breit',
  high: 'hoch',
  sheetIsMmGive: (value, side, most) => `Der Bogen ist ${value} mm ${side}; mehr als 0 und höchstens ${most} mm angeben.`,
  sheetIsMmGiveLong: (widthMm, heightMm, paperProportion) =>
    `Der Bogen misst ${widthMm} × ${heightMm} mm; eine lange Seite von höchstens dem ${paperProportion}-Fachen der kurzen angeben.`,
  printablePartHasNo: 'Der bedruckbare Teil hat keine Größe; Breite und Höhe angeben.',
  printablePartBeginsOff: 'Der bedruckbare Teil beginnt außerhalb des Bogens; Ränder von 0 mm oder mehr angeben.',
  printablePartReachesMm: (xMm, yMm, widthMm, heightMm) =>
    `Der bedruckbare Teil reicht ${xMm} × ${yMm} mm von der Ecke, der Bogen misst aber ${widthMm} × ${heightMm} mm; den Teil kleiner oder den Bogen größer machen.`,
  none: 'keine',
  papersCurveNeedsBands: (bands, curve) => `Die Kurve eines Papiers braucht ${bands} Bänder, 380 bis 730 nm; diese hat ${curve}.`,
  papersCurveIsNo: (band) => `Die Kurve des Papiers ist bei ${band} keine Remission: noch einmal messen.`,
  white: 'Weiß',
  cream: 'Creme',
  grey: 'Grau',
  black: 'Schwarz',
};
