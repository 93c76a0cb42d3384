import fontkit from '@pdf-lib/fontkit';
import { concatTransformationMatrix, drawObject, PDFDocument, popGraphicsState, pushGraphicsState, rgb } from 'pdf-lib';
import { num } from '../../engine/base/at.ts';
import { EngineError } from '../../engine/base/error.ts';
import type { Picture } from '../api/picture-api.ts';
import type { ContactSheetRequest, SheetOptions, SheetPrint } from '../api/wall-tools-api.ts';
import { say } from '../words/en/jobs.ts';
import { offscreenCanvas } from './offscreen-canvas.ts';
import { PdfSigns } from './pdf-signs.ts';
import { StudioPictures } from './pictures.ts';
import { deflate } from './png-stream.ts';

/** A contact sheet holds so many prints at most. */
const MOST_PRINTS = 1000;
const PAPERS = { a4: { widthMm: 210, heightMm: 297 }, a3: { widthMm: 297, heightMm: 420 } };
const MARGIN_MM = 12;
const HEAD_MM = 9;
const GAP_MM = 4;
const CAPTION_MM = 5;
const DPI = 200;
const MM_PER_INCH = 25.4;
const PT_PER_MM = 72 / MM_PER_INCH;
/** Canvases of browsers go no higher. */
const MOST_CANVAS_PX = 16_000;

/** Sizes of a sheet's places, mm; places run across, then down, then to the next page. */
export function layOutSheet(count: number, options: Pick<SheetOptions, 'paper' | 'columns'>, aspect: number) {
  const columns = Math.min(20, Math.max(1, Math.round(options.columns)));
  const page = PAPERS[options.paper];
  const widthMm = (page.widthMm - 2 * MARGIN_MM - (columns - 1) * GAP_MM) / columns;
  const fits = page.heightMm - 2 * MARGIN_MM - HEAD_MM;
  // A tall sheet in one column is as high as the page at most.
  const printWidthMm = Math.min(widthMm, (fits - CAPTION_MM) * aspect);
  const heightMm = printWidthMm / aspect;
  const rowsPerPage = Math.max(1, Math.floor((fits + GAP_MM) / (heightMm + CAPTION_MM + GAP_MM)));
  const rows = Math.max(1, Math.ceil(count / columns));
  return {
    page,
    columns,
    rows,
    rowsPerPage,
    pages: Math.ceil(rows / rowsPerPage),
    printWidthMm,
    heightMm,
    leftMm: (column: number) => MARGIN_MM + column * (widthMm + GAP_MM),
    topMm: (row: number) => MARGIN_MM + HEAD_MM + row * (heightMm + CAPTION_MM + GAP_MM),
  };
}

function check(prints: readonly SheetPrint[]): void {
  if (prints.length === 0) throw new EngineError('sheet.empty', say.noPrintForSheet);
  if (prints.length > MOST_PRINTS) {
    throw new EngineError('sheet.too-many', say.sheetHoldsAtMost(MOST_PRINTS, prints.length));
  }
}

function caption({ index, seed }: SheetPrint): string {
  return `${index + 1}  ${seed}`;
}

function rgbOf({ pixels }: Picture): Uint8Array<ArrayBuffer> {
  const out = new Uint8Array((pixels.length / 4) * 3);
  for (let from = 0, to = 0; from < pixels.length; from += 4, to += 3) {
    out[to] = num(pixels, from);
    out[to + 1] = num(pixels, from + 1);
    out[to + 2] = num(pixels, from + 2);
  }
  return out;
}

/**
 * A contact sheet as PDF: numbers and seeds are text, pictures are not lossy.
 * @param request with a TrueType file, of which the letters that are used go into the PDF
 * @param onPrint gets how many are done; false stops
 * @returns null when stopped
 * @throws EngineError 'sheet.empty', 'sheet.too-many', and as the painting of thumbnails
 */
export async function sheetPdf(
  { studio, prints, options, typeface }: ContactSheetRequest & { typeface: Uint8Array },
  onPrint: (done: number) => boolean | Promise<boolean>,
): Promise<Uint8Array<ArrayBuffer> | null> {
  check(prints);
  const pictures = new StudioPictures(studio);
  const layout = layOutSheet(prints.length, options, studio.paper.widthMm / studio.paper.heightMm);
  const rows = Math.max(24, Math.round((layout.heightMm / MM_PER_INCH) * DPI));
  const doc = await PDFDocument.create();
  doc.setTitle(options.title);
  doc.registerFontkit(fontkit);
  // Ligatures would be read back as one sign by programs that search the text.
  const font = await doc.embedFont(typeface, { subset: true, features: { liga: false } });
  const signs = new PdfSigns(font);
  const perPage = layout.columns * layout.rowsPerPage;
  let page = doc.addPage();
  for (const [place, print] of prints.entries()) {
    const on = place % perPage;
    if (on === 0) {
      if (place > 0) page = doc.addPage();
      page.setSize(layout.page.widthMm * PT_PER_MM, layout.page.heightMm * PT_PER_MM);
      const y = page.getHeight() - (MARGIN_MM + 3) * PT_PER_MM;
      page.drawText(signs.written(options.title), { x: MARGIN_MM * PT_PER_MM, y, size: 10, font });
      const number = `${Math.floor(place / perPage) + 1} of ${layout.pages}`;
      page.drawText(number, { x: page.getWidth() - MARGIN_MM * PT_PER_MM - font.widthOfTextAtSize(number, 9), y, size: 9, font });
    }
    const picture = pictures.thumbnail({ pulls: print.pulls, heightPx: rows, relative: options.relative });
    const image = doc.context.register(
      doc.context.stream(await deflate(rgbOf(picture)), {
        Type: 'XObject',
        Subtype: 'Image',
        Width: picture.widthPx,
        Height: picture.heightPx,
        ColorSpace: 'DeviceRGB',
        BitsPerComponent: 8,
        Filter: 'FlateDecode',
      }),
    );
    const left = layout.leftMm(on % layout.columns) * PT_PER_MM;
    const foot = page.getHeight() - (layout.topMm(Math.floor(on / layout.columns)) + layout.heightMm) * PT_PER_MM;
    const [width, height] = [layout.printWidthMm * PT_PER_MM, layout.heightMm * PT_PER_MM];
    page.pushOperators(
      pushGraphicsState(),
      concatTransformationMatrix(width, 0, 0, height, left, foot),
      drawObject(page.node.newXObject('Print', image)),
      popGraphicsState(),
    );
    page.drawRectangle({ x: left, y: foot, width, height, borderWidth: 0.3, borderColor: rgb(0.75, 0.73, 0.7) });
    const size = Math.min(8, Math.max(3.5, (7 * width) / 90));
    let text = signs.written(caption(print));
    while (text.length > 4 && font.widthOfTextAtSize(text, size) > width + GAP_MM) text = text.slice(0, -1);
    page.drawText(text, { x: left, y: foot - size - 1.5, size, font });
    if (!(await onPrint(place + 1))) return null;
  }
  return new Uint8Array(await doc.save());
}

/**
 * A contact sheet as one PNG picture, 200 dots an inch, as long as it must be.
 * @throws EngineError as sheetPdf, and 'sheet.too-long'
 */
export async function sheetPng(
  { studio, prints, options }: ContactSheetRequest,
  onPrint: (done: number) => boolean | Promise<boolean>,
): Promise<Blob | null> {
  check(prints);
  const pictures = new StudioPictures(studio);
  const layout = layOutSheet(prints.length, options, studio.paper.widthMm / studio.paper.heightMm);
  const pxPerMm = DPI / MM_PER_INCH;
  const widthPx = Math.round(layout.page.widthMm * pxPerMm);
  const heightPx = Math.round((layout.topMm(layout.rows) + MARGIN_MM - GAP_MM) * pxPerMm);
  if (heightPx > MOST_CANVAS_PX) {
    throw new EngineError('sheet.too-long', say.pictureTooLong);
  }
  const canvas = offscreenCanvas(widthPx, heightPx);
  const context = canvas?.getContext('2d') ?? null;
  if (canvas === null || context === null) throw new EngineError('sheet.no-canvas', say.noCanvasForSheet);
  context.fillStyle = '#fff';
  context.fillRect(0, 0, widthPx, heightPx);
  context.fillStyle = '#1c1a17';
  context.font = `${Math.round(3.6 * pxPerMm)}px sans-serif`;
  context.fillText(options.title, MARGIN_MM * pxPerMm, (MARGIN_MM + 3) * pxPerMm);
  const rows = Math.max(24, Math.round(layout.heightMm * pxPerMm));
  context.font = `${Math.round(Math.min(2.6, layout.printWidthMm / 9) * pxPerMm)}px sans-serif`;
  context.strokeStyle = '#c0bbb3';
  for (const [place, print] of prints.entries()) {
    const picture = pictures.thumbnail({ pulls: print.pulls, heightPx: rows, relative: options.relative });
    const left = Math.round(layout.leftMm(place % layout.columns) * pxPerMm);
    const top = Math.round(layout.topMm(Math.floor(place / layout.columns)) * pxPerMm);
    context.putImageData(new ImageData(picture.pixels, picture.widthPx, picture.heightPx), left, top);
    context.strokeRect(left - 0.5, top - 0.5, picture.widthPx + 1, picture.heightPx + 1);
    context.fillText(caption(print), left, top + picture.heightPx + 3.4 * pxPerMm, picture.widthPx + GAP_MM * pxPerMm * 0.6);
    if (!(await onPrint(place + 1))) return null;
  }
  return canvas.convertToBlob({ type: 'image/png' });
}
