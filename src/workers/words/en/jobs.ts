import { speak } from '../../../engine/words/language.ts';

export const say = speak('workers/jobs', {
  noPrintForSheet: 'There is no print to put on the sheet; show or select some first.',
  sheetHoldsAtMost: (most: number, prints: number) => `A contact sheet holds ${most} prints at most, not ${prints}; filter or mark fewer.`,
  pictureTooLong: 'One picture of so many prints would be longer than browsers can make; take more columns, fewer prints, or a PDF.',
  noCanvasForSheet: 'This browser gives no canvas to draw the sheet on; take a PDF.',
  pictureSizes: 'A picture is 5 to 20 000 mm wide at 10 to 2400 dpi; change the width or the dpi.',
  tooManyPixels: (size: { widthMm: number; dpi: number; million: number; mostMillion: number; mostDpi: number }) =>
    `At ${size.widthMm} mm and ${size.dpi} dpi the picture has ${size.million} million pixels, and ${size.mostMillion} million is the most; up to ${size.mostDpi} dpi will do at this width.`,
  planningWasStopped: 'The planning was stopped before it found an order; start it again.',
  drawerIsGone: 'The drawer is no longer at hand; try again.',
});
