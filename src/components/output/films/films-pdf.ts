import fontkit from '@pdf-lib/fontkit';
import {
  clip,
  closePath,
  concatTransformationMatrix,
  endPath,
  fill,
  grayscale,
  lineTo,
  moveTo,
  PDFDocument,
  type PDFFont,
  type PDFOperator,
  type PDFPage,
  popGraphicsState,
  pushGraphicsState,
  rectangle,
  setFillingGrayscaleColor,
  setLineWidth,
  setStrokingGrayscaleColor,
  stroke,
} from 'pdf-lib';
import { num } from '../../../engine/base/at.ts';
import { roundTo } from '../../../engine/base/units.ts';
import type { Drawn, OutPage } from '../../../engine/output/film/page.ts';
import { PdfSigns } from '../../../workers/jobs/pdf-signs.ts';
import type { PageFonts } from '../../ui/page-fonts.ts';
import { PT_PER_MM } from '../page-writer.ts';
import type { PdfFile } from '../pull-sheet-pdf.ts';

interface Letters {
  plain: PDFFont;
  bold: PDFFont;
  signs: PdfSigns;
}

/**
 * Pages at their size as one PDF, all of it in device black alone, so that no printer mixes it of colours.
 * Source: ISO 32000-1, 8.5 (paths), 8.6.4.2 (DeviceGray).
 */
export async function pagesPdf(pages: readonly OutPage[], title: string, fonts: PageFonts): Promise<PdfFile> {
  const doc = await PDFDocument.create();
  doc.registerFontkit(fontkit);
  doc.setTitle(title);
  const options = { subset: true, features: { liga: false } };
  const plain = await doc.embedFont(fonts.plain, options);
  const bold = await doc.embedFont(fonts.bold, options);
  const letters: Letters = { plain, bold, signs: new PdfSigns(plain) };
  for (const { widthMm, heightMm, parts } of pages) {
    const page = doc.addPage([widthMm * PT_PER_MM, heightMm * PT_PER_MM]);
    for (const { drawn, clip: inside } of parts) {
      page.pushOperators(pushGraphicsState());
      if (inside !== undefined) {
        const { xMm, yMm, widthMm: wide, heightMm: high } = inside;
        page.pushOperators(rectangle(pt(xMm), pt(heightMm - yMm - high), pt(wide), pt(high)), clip(), endPath());
      }
      draw(page, drawn, heightMm, letters);
      page.pushOperators(popGraphicsState());
    }
  }
  return { bytes: await doc.save(), missing: [...letters.signs.missing] };
}

function draw(page: PDFPage, { filled, lines, texts }: Drawn, heightMm: number, { plain, bold, signs }: Letters): void {
  const rings = filled.filter((ring) => ring.length >= 6);
  page.pushOperators(setFillingGrayscaleColor(0), setStrokingGrayscaleColor(0));
  if (rings.length > 0) page.pushOperators(...rings.flatMap((ring) => [...along(ring, heightMm), closePath()]), fill());
  for (const { points, widthMm } of lines) page.pushOperators(setLineWidth(pt(widthMm)), ...along(points, heightMm), stroke());
  for (const { text, xMm, yMm, sizeMm, bold: strong, mirrored } of texts) {
    page.pushOperators(pushGraphicsState(), concatTransformationMatrix(mirrored ? -1 : 1, 0, 0, 1, pt(xMm), pt(heightMm - yMm)));
    page.drawText(signs.written(text), { x: 0, y: 0, size: pt(sizeMm), font: strong ? bold : plain, color: grayscale(0) });
    page.pushOperators(popGraphicsState());
  }
}

function along(points: ArrayLike<number>, heightMm: number): PDFOperator[] {
  const out: PDFOperator[] = [];
  for (let i = 0; i + 1 < points.length; i += 2) {
    const [x, y] = [pt(num(points, i)), pt(heightMm - num(points, i + 1))];
    out.push(i === 0 ? moveTo(x, y) : lineTo(x, y));
  }
  return out;
}

/** Points, to less than a micrometre. */
function pt(mm: number): number {
  return roundTo(mm * PT_PER_MM, 3);
}
