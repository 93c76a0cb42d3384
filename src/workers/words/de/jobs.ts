import type { say as english } from '../en/jobs.ts';

export const say: typeof english = {
  noPrintForSheet: 'Es gibt keinen Druck für den Bogen; bitte erst welche zeigen oder auswählen.',
  sheetHoldsAtMost: (most, prints) =>
    `Ein Kontaktbogen fasst höchstens ${most} Drucke, nicht ${prints}; bitte filtern oder weniger auswählen.`,
  pictureTooLong: 'Ein Bild so vieler Drucke würde länger, als Browser es machen können; mehr Spalten, weniger Drucke oder ein PDF nehmen.',
  noCanvasForSheet: 'Dieser Browser gibt keine Fläche, um den Bogen zu zeichnen; ein PDF nehmen.',
  pictureSizes: 'Ein Bild ist 5 bis 20 000 mm breit bei 10 bis 2400 dpi; Breite oder dpi ändern.',
  tooManyPixels: ({ widthMm, dpi, million, mostMillion, mostDpi }) =>
    `Bei ${widthMm} mm und ${dpi} dpi hat das Bild ${million} Millionen Pixel, und ${mostMillion} Millionen sind das Höchste; bis ${mostDpi} dpi gehen bei dieser Breite.`,
  planningWasStopped: 'Das Planen wurde angehalten, bevor es eine Reihenfolge fand; bitte neu beginnen.',
  drawerIsGone: 'Die Schublade ist nicht mehr zur Hand; bitte noch einmal versuchen.',
};
