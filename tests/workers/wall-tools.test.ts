import { loadImage, createCanvas } from '@napi-rs/canvas';
import fontkit from '@pdf-lib/fontkit';
import { PDFDocument, type PDFFont } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { layOutSheet, sheetPdf } from '../../src/workers/jobs/contact-sheet.ts';
import { PdfSigns } from '../../src/workers/jobs/pdf-signs.ts';
import { StudioPictures } from '../../src/workers/jobs/pictures.ts';
import { printPng, printSize } from '../../src/workers/jobs/print-png.ts';
import { pageFonts } from '../helpers/page-fonts.ts';
import { smallProject } from '../helpers/small-project.ts';

const project = smallProject();
const { drawer, bench } = project;

describe('printPng', () => {
  it('should write a file that another reader opens, in its size, with the print in it', async () => {
    const blob = await printPng({ studio: drawer, pulls: bench, size: { widthMm: 100, dpi: 72, relative: true } }, () => true);
    const bytes = Buffer.from(await blob!.arrayBuffer());
    // pHYs: pixels a metre, 72 dpi = 2835 (PNG specification, W3C 2025, 11.3.4.3).
    const at = bytes.indexOf('pHYs');
    expect(bytes.readUInt32BE(at + 4)).toBe(2835);
    const image = await loadImage(bytes);
    const { widthPx, heightPx } = printSize(drawer.paper, 100, 72);
    expect([image.width, image.height]).toEqual([widthPx, heightPx]);
    const context = createCanvas(widthPx, heightPx).getContext('2d');
    context.drawImage(image, 0, 0);
    const { data } = context.getImageData(0, 0, widthPx, heightPx);
    // The same sheet painted at once, one row of crossings a pixel: alike but for edges.
    const whole = new StudioPictures(drawer).thumbnail({ pulls: bench, heightPx, relative: true });
    expect(whole.widthPx).toBe(widthPx);
    let far = 0;
    for (let i = 0; i < data.length; i += 4) if (Math.abs(data[i]! - whole.pixels[i]!) > 24) far++;
    expect(far / (data.length / 4)).toBeLessThan(0.06);
  });

  it('should stop when told to', async () => {
    expect(await printPng({ studio: drawer, pulls: bench, size: { widthMm: 100, dpi: 72, relative: true } }, () => false)).toBeNull();
  });

  it('should refuse what is too large with the dpi that would do', () => {
    const paper = { widthMm: 1500, heightMm: 2000 };
    expect(printSize(paper, 1500, 150)).toEqual({ widthPx: 8858, heightPx: 11811 });
    expect(() => printSize(paper, 1500, 300)).toThrow(/up to 231 dpi/);
    expect(() => printSize(paper, 1500, 231)).not.toThrow();
    expect(() => printSize(paper, Number.NaN, 150)).toThrow(/width or the dpi/);
  });
});

describe('sheetPdf', () => {
  const prints = Array.from({ length: 23 }, (_, index) => ({ index, seed: 'Ebbe ≈ 3', pulls: bench }));

  it('should fill pages of the size asked for, with every print on one', async () => {
    const options = { paper: 'a4', columns: 4, title: 'Slack tide', relative: true } as const;
    const bytes = await sheetPdf({ studio: drawer, prints, options, typeface: pageFonts.plain }, () => true);
    const doc = await PDFDocument.load(bytes!);
    const { pages } = layOutSheet(23, options, drawer.paper.widthMm / drawer.paper.heightMm);
    expect(doc.getPageCount()).toBe(pages);
    // A4 in points: 595.28 × 841.89 (ISO 216, 72 points an inch).
    expect(doc.getPage(0).getWidth()).toBeCloseTo(595.28, 1);
    expect(doc.getPage(0).getHeight()).toBeCloseTo(841.89, 1);
    const images = doc.context.enumerateIndirectObjects().filter(([, object]) => String(object).includes('/Subtype /Image'));
    expect(images.length).toBe(23);
  });

  it('should write seeds in letters of any European script, and a box for others', async () => {
    const doc = await PDFDocument.create();
    doc.registerFontkit(fontkit);
    const signs = new PdfSigns(await doc.embedFont(pageFonts.plain));
    expect(signs.written('“Ebb” – ≈ Łódź Ψάρι Прилив')).toBe('“Ebb” – ≈ Łódź Ψάρι Прилив');
    expect(signs.written('潮 3')).toBe('□ 3');
    expect(signs.missing).toEqual(['潮']);
  });

  it('should lay out places by a margin of 12 mm, a head of 9, captions of 5 and gaps of 4', () => {
    // By hand: A4 is 210 mm wide; 210 − 24 − 3 × 4 = 174 in four columns of 43.5; at 3 : 4 they are 58 mm high.
    const lay = layOutSheet(23, { paper: 'a4', columns: 4 }, 0.75);
    expect(lay).toMatchObject({ columns: 4, rows: 6, printWidthMm: 43.5, heightMm: 58 });
    expect([0, 1, 3].map(lay.leftMm)).toEqual([12, 59.5, 154.5]);
    expect([0, 1, 2].map(lay.topMm)).toEqual([21, 88, 155]);
    // 297 − 24 − 9 = 264 mm: four rows of 58 + 5 and three gaps of 4 just fit.
    expect([lay.rowsPerPage, lay.pages]).toEqual([4, 2]);
    // Two to six prints in one column are as high as the page at most.
    expect(layOutSheet(2, { paper: 'a4', columns: 1 }, 0.5)).toMatchObject({
      heightMm: 259,
      printWidthMm: 129.5,
      rowsPerPage: 1,
      pages: 2,
    });
    expect([0, 2.4, 99].map((columns) => layOutSheet(9, { paper: 'a3', columns }, 1).columns)).toEqual([1, 2, 20]);
  });

  it('should take accents off letters that a typeface has only bare, and write a box where it lacks a part', () => {
    const codes = (text: string): number[] => [...text].map((sign) => sign.codePointAt(0)!);
    const signs = new PdfSigns({ getCharacterSet: () => codes('aevf □é') } as unknown as PDFFont);
    // ligature ﬀ is two letters that are there, ﬁ has one that is not.
    expect(signs.written('é ê ǟ\u00a0ﬀ')).toBe('é e a ff');
    expect(signs.missing).toEqual([]);
    expect(signs.written('ﬁ ü \u0301')).toBe('□ □ □');
    expect(signs.missing).toEqual(['ﬁ', 'ü', '\u0301']);
  });

  it('should keep every print within its page', () => {
    for (const columns of [1, 3, 12, 20]) {
      const lay = layOutSheet(100, { paper: 'a3', columns }, 0.7);
      expect(lay.leftMm(lay.columns - 1) + lay.printWidthMm).toBeLessThanOrEqual(297 - 11.9);
      expect(lay.topMm(lay.rowsPerPage - 1) + lay.heightMm + 5).toBeLessThanOrEqual(420 - 11.9);
    }
  });

  it('should tell of an empty sheet', async () => {
    await expect(
      sheetPdf(
        { studio: drawer, prints: [], options: { paper: 'a4', columns: 4, title: '', relative: true }, typeface: pageFonts.plain },
        () => true,
      ),
    ).rejects.toThrow(/no print/);
  });
});
