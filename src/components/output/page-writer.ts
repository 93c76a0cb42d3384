import fontkit from '@pdf-lib/fontkit';
import { degrees, PDFDocument, type PDFFont, type PDFImage, type PDFPage, rgb } from 'pdf-lib';
import { num } from '../../engine/base/at.ts';
import { PdfSigns } from '../../workers/jobs/pdf-signs.ts';
import type { PageFonts } from '../ui/page-fonts.ts';
import { say } from '../words/en/output/room.ts';
import { PDF_COLOURS } from './pdf-colours.ts';

/** Points a millimetre. */
export const PT_PER_MM = 72 / 25.4;

/** Sizes of paper that a pull sheet is printed on, mm. */
export const PAGE_SIZES = { A4: [210, 297], Letter: [215.9, 279.4] } as const;
export type PageName = keyof typeof PAGE_SIZES;

const MARGIN_PT = 14 * PT_PER_MM;

/** A place on a page, points from its left and from its top. */
export interface Spot {
  x: number;
  y: number;
}

/** A place and its size, points. */
export interface Box extends Spot {
  width: number;
  height: number;
}

export interface TextStyle {
  size?: number;
  bold?: boolean;
  soft?: boolean;
  /** White, on a dark ground. */
  light?: boolean;
}

/** Text that is cut or wraps where it is wider than `most` points. */
interface FittedStyle extends TextStyle {
  most?: number;
}

/** Writes down a page from the top, with new pages as they are needed. Lengths in points, y from the top. */
export class PageWriter {
  readonly doc: PDFDocument;
  /** Of the page that is written on. */
  width = 0;
  height = 0;
  private readonly size: PageName;
  private landscape = false;
  private readonly plain: PDFFont;
  private readonly bold: PDFFont;
  readonly signs: PdfSigns;
  private page!: PDFPage;
  /** Where the next line begins. */
  y = 0;

  private constructor(doc: PDFDocument, size: PageName, plain: PDFFont, bold: PDFFont) {
    this.doc = doc;
    this.size = size;
    this.plain = plain;
    this.bold = bold;
    this.signs = new PdfSigns(plain);
    this.newPage();
  }

  /** @param fonts put into the file with those of their letters that it uses */
  static async open(size: PageName, title: string, fonts: PageFonts): Promise<PageWriter> {
    const doc = await PDFDocument.create();
    doc.registerFontkit(fontkit);
    doc.setTitle(title);
    // Ligatures would be read back as one sign by programs that search the text.
    const options = { subset: true, features: { liga: false } };
    return new PageWriter(doc, size, await doc.embedFont(fonts.plain, options), await doc.embedFont(fonts.bold, options));
  }

  /** Signs that were to be written and are in no font, as they were found. */
  get missing(): readonly string[] {
    return this.signs.missing;
  }

  get left(): number {
    return MARGIN_PT;
  }

  get right(): number {
    return this.width - MARGIN_PT;
  }

  get room(): number {
    return this.height - MARGIN_PT - this.y;
  }

  /** Height of an empty page between its margins. */
  get pageRoom(): number {
    return this.height - 2 * MARGIN_PT;
  }

  /** Whether nothing is on the page yet. */
  get atTop(): boolean {
    return this.y === MARGIN_PT;
  }

  /** @param landscape whether it and the pages that it runs on to lie on their long side */
  newPage(landscape = false): void {
    const [short, long] = PAGE_SIZES[this.size].map((mm) => mm * PT_PER_MM) as [number, number];
    this.landscape = landscape;
    [this.width, this.height] = landscape ? [long, short] : [short, long];
    this.page = this.doc.addPage([this.width, this.height]);
    this.y = MARGIN_PT;
  }

  /** Begins a new page when so much does not fit on this one. */
  need(height: number): void {
    if (this.room < height && this.y > MARGIN_PT) this.newPage(this.landscape);
  }

  private fontOf({ bold }: TextStyle): PDFFont {
    return bold === true ? this.bold : this.plain;
  }

  widthOf(text: string, style: TextStyle = {}): number {
    return this.fontOf(style).widthOfTextAtSize(this.signs.written(text), style.size ?? 12);
  }

  /** One line whose top is at `y`; cut with dots where it is wider than `most`. */
  line(text: string, { x, y }: Spot, style: FittedStyle = {}): void {
    const { size = 12, most = Infinity } = style;
    let shown = this.signs.written(text);
    const font = this.fontOf(style);
    if (font.widthOfTextAtSize(shown, size) > most) {
      while (shown.length > 1 && font.widthOfTextAtSize(`${shown}…`, size) > most) shown = shown.slice(0, -1);
      shown = `${shown.trimEnd()}…`;
    }
    this.page.drawText(shown, { x, y: this.height - y - size, size, font, color: colourOfText(style) });
  }

  /** One line that runs upwards from `y`, its left side turned down. @param spot `x` is where its letters' feet stand */
  upright(text: string, { x, y }: Spot, style: TextStyle = {}): void {
    this.page.drawText(this.signs.written(text), {
      x,
      y: this.height - y,
      size: style.size ?? 12,
      font: this.fontOf(style),
      color: colourOfText(style),
      rotate: degrees(90),
    });
  }

  lines(text: string, most: number, style: TextStyle = {}): string[] {
    const out: string[] = [];
    let now = '';
    for (const word of text.split(' ')) {
      const longer = now === '' ? word : `${now} ${word}`;
      if (now !== '' && this.widthOf(longer, style) > most) {
        out.push(now);
        now = word;
      } else now = longer;
      // A word that is wider than its place goes on in the next line.
      while (now.length > 1 && this.widthOf(now, style) > most) {
        let fits = now.length - 1;
        while (fits > 1 && this.widthOf(now.slice(0, fits), style) > most) fits--;
        out.push(now.slice(0, fits));
        now = now.slice(fits);
      }
    }
    out.push(now);
    return out;
  }

  /** Wrapped text at `y`, which it moves on. */
  paragraph(text: string, style: FittedStyle & { x?: number } = {}): void {
    const { size = 12, x = this.left, most = this.right - x } = style;
    for (const line of this.lines(text, most, style)) {
      this.need(size * 1.35);
      this.line(line, { x, y: this.y }, { ...style, most });
      this.y += size * 1.35;
    }
  }

  heading(text: string, size = 18): void {
    this.need(70);
    this.y += (size * 2) / 3;
    this.paragraph(text, { size, bold: true });
    this.y += 4;
  }

  /** A fine line across the page, or from `x` to `to`. */
  rule({ y = this.y, x = this.left, to = this.right } = {}): void {
    this.page.drawLine({
      start: { x, y: this.height - y },
      end: { x: to, y: this.height - y },
      thickness: 0.7,
      color: colourOf(PDF_COLOURS.line),
    });
  }

  /** A box to tick, or one that is. */
  box({ x, y }: Spot, size: number, ticked = false): void {
    this.page.drawRectangle({
      x,
      y: this.height - y - size,
      width: size,
      height: size,
      borderColor: colourOf(PDF_COLOURS.black),
      borderWidth: 1,
    });
    if (!ticked) return;
    const style = { thickness: 1.6, hex: PDF_COLOURS.black };
    const foot = { x: x + size * 0.42, y: y + size * 0.78 };
    this.stroke({ x: x + size * 0.16, y: y + size * 0.5 }, foot, style);
    this.stroke(foot, { x: x + size * 0.88, y: y + size * 0.16 }, style);
  }

  /** A rectangle, filled where a colour is named, with a fine edge where one is asked for. */
  rectangle({ x, y, width, height }: Box, { hex, edge }: { hex?: string; edge?: boolean }): void {
    this.page.drawRectangle({
      x,
      y: this.height - y - height,
      width,
      height,
      ...(hex === undefined ? {} : { color: colourOf(hex) }),
      ...(edge === true ? { borderColor: colourOf(PDF_COLOURS.line), borderWidth: 0.7 } : {}),
    });
  }

  stroke(from: Spot, to: Spot, { thickness, hex }: { thickness: number; hex: string }): void {
    const [start, end] = [from, to].map(({ x, y }) => ({ x, y: this.height - y })) as [Spot, Spot];
    this.page.drawLine({ start, end, thickness, color: colourOf(hex) });
  }

  /** Closed rings as one vector shape, even-odd by their own turning. @param scale points a unit */
  shape(rings: readonly ArrayLike<number>[], { x, y, scale, hex }: Spot & { scale: number; hex: string }): void {
    const path = rings
      .filter((ring) => ring.length >= 6)
      .map((ring) => {
        let text = '';
        for (let i = 0; i < ring.length; i += 2) text += `${i === 0 ? 'M' : 'L'}${num(ring, i).toFixed(2)} ${num(ring, i + 1).toFixed(2)}`;
        return `${text}Z`;
      })
      .join('');
    if (path !== '') this.page.drawSvgPath(path, { x, y: this.height - y, scale, color: colourOf(hex) });
  }

  image(image: PDFImage, box: Box): void {
    const { x, y, width, height } = box;
    this.page.drawImage(image, { x, y: this.height - y - height, width, height });
    this.rectangle(box, { edge: true });
  }

  /** Numbers the pages and gives the file. */
  async close(foot: string): Promise<Uint8Array> {
    const pages = this.doc.getPages();
    for (const [at, page] of pages.entries()) {
      this.page = page;
      ({ width: this.width, height: this.height } = page.getSize());
      const number = say.of(at + 1, pages.length);
      this.line(number, { x: this.right - this.widthOf(number, { size: 10 }), y: this.height - 26 }, { size: 10, soft: true });
      this.line(foot, { x: this.left, y: this.height - 26 }, { size: 10, soft: true, most: this.right - this.left - 80 });
    }
    return this.doc.save();
  }
}

function colourOfText({ soft, light }: TextStyle) {
  if (light === true) return colourOf(PDF_COLOURS.white);
  return soft === true ? colourOf(PDF_COLOURS.soft) : colourOf(PDF_COLOURS.black);
}

function colourOf(hex: string) {
  const part = (at: number): number => parseInt(hex.slice(at, at + 2), 16) / 255;
  return rgb(part(1), part(3), part(5));
}
