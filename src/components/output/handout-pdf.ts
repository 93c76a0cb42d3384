import type { PDFImage } from 'pdf-lib';
import { entryAt } from '../../engine/base/at.ts';
import type { PageFonts } from '../ui/page-fonts.ts';
import { say } from '../words/en/output/room.ts';
import { type PageName, PageWriter, PT_PER_MM } from './page-writer.ts';
import type { PdfFile } from './pull-sheet-pdf.ts';

/** A pull of the lesson as it is named on the paper. */
interface HandoutPull {
  screen: string;
  ink: string;
  /** Its ink on white paper. */
  hex: string;
}

/** A picture with the orders that print it, each as numbers of pulls counted from 0, first down first. */
interface HandoutPrint {
  letter: string;
  orders: readonly (readonly number[])[];
  png: Uint8Array;
}

/** What a lesson's handout is made of. */
export interface HandoutOptions {
  title: string;
  pulls: readonly HandoutPull[];
  prints: readonly HandoutPrint[];
  /** Number of all orders, and of all the pictures that they print. */
  orders: number;
  pictures: number;
  size: PageName;
  fonts: PageFonts;
}

/** Words that a student needs, and what they mean. */
const WORDS: readonly (readonly [word: string, meaning: string])[] = [
  [say.film, say.layerOfInkThat],
  [say.pull2, say.oneImpressionOfOne],
  [say.order, say.whichPullGoesDown],
  [say.opaque, say.ofInkItHides],
  [say.transparent, say.ofInkItLets],
  [say.overprintColour, say.colourThatAppearsWhere],
];

const GAP_PT = 14;
/** Three rows to a page where there are four pictures in each. */
const TALLEST_PT = { 3: 190, 4: 146 } as const;
const BLANK_PT = 22;

/** A lesson on paper: its pictures with blanks for the order, a word list, and the answers on a page of their own. */
export async function handoutPdf(options: HandoutOptions): Promise<PdfFile> {
  const { title, size, fonts } = options;
  const heading = say.lesson(title);
  const out = await PageWriter.open(size, heading, fonts);
  nameLine(out);
  out.paragraph(heading, { size: 20, bold: true });
  out.paragraph(say.inWhichOrderWere, { size: 11.5 });
  out.y += 6;
  pullList(out, options.pulls);
  await printRows(out, options);
  wordList(out);
  out.newPage();
  answers(out, options);
  return { bytes: await out.close(heading), missing: out.missing };
}

/** A line for the name and one for the day. */
function nameLine(out: PageWriter): void {
  const half = (out.left + out.right) / 2;
  for (const [word, from, to] of [
    [say.name, out.left, half + 60],
    [say.date, half + 80, out.right],
  ] as const) {
    out.line(word, { x: from, y: out.y }, { size: 11, soft: true });
    out.rule({ y: out.y + 15, x: from + 36, to });
  }
  out.y += 34;
}

/** Each pull's number on its ink, its screen and its ink. */
function pullList(out: PageWriter, pulls: readonly HandoutPull[]): void {
  const across = (out.right - out.left) / Math.min(3, pulls.length);
  for (const [at, { screen, ink, hex }] of pulls.entries()) {
    const x = out.left + (at % 3) * across;
    out.rectangle({ x, y: out.y, width: 16, height: 16 }, { hex, edge: true });
    out.line(`${at + 1}`, { x: x + 21, y: out.y + 2 }, { size: 12, bold: true });
    out.line(`${screen}, ${ink}`, { x: x + 33, y: out.y + 2 }, { size: 11, most: across - 40 });
    if (at % 3 === 2 || at === pulls.length - 1) out.y += 22;
  }
  out.y += 8;
}

async function printRows(out: PageWriter, { prints, pulls }: HandoutOptions): Promise<void> {
  const images: PDFImage[] = [];
  for (const { png } of prints) images.push(await out.doc.embedPng(png));
  const columns = prints.length > 6 ? 4 : 3;
  const width = (out.right - out.left - (columns - 1) * GAP_PT) / columns;
  for (let from = 0; from < prints.length; from += columns) {
    const row = prints.slice(from, from + columns);
    const boxes = row.map((_, i) => fitted(entryAt(images, from + i), { width, height: TALLEST_PT[columns] }));
    const height = Math.max(...boxes.map((box) => box.height));
    out.need(height + 50);
    for (const [i, { letter }] of row.entries()) {
      const x = out.left + i * (width + GAP_PT);
      out.image(entryAt(images, from + i), { x, y: out.y, ...entryAt(boxes, i) });
      out.line(letter, { x, y: out.y + height + 8 }, { size: 13, bold: true });
      blanks(out, pulls.length, { x: x + 18, y: out.y + height + 4, room: width - 18 });
    }
    out.y += height + 44;
  }
}

interface Size {
  width: number;
  height: number;
}

function fitted({ width, height }: Size, most: Size): Size {
  const scale = Math.min(most.width / width, most.height / height);
  return { width: width * scale, height: height * scale };
}

/** A box for each pull, the first down at the left. */
function blanks(out: PageWriter, count: number, { x, y, room }: { x: number; y: number; room: number }): void {
  const side = Math.min(BLANK_PT, room / count - 3);
  for (let at = 0; at < count; at++) out.rectangle({ x: x + at * (side + 3), y, width: side, height: side }, { edge: true });
}

function wordList(out: PageWriter): void {
  out.need(40 + WORDS.length * 15);
  out.heading(say.words, 14);
  for (const [word, meaning] of WORDS) {
    out.line(word, { x: out.left, y: out.y }, { size: 10.5, bold: true });
    out.line(meaning, { x: out.left + 40 * PT_PER_MM, y: out.y }, { size: 10.5, most: out.right - out.left - 40 * PT_PER_MM });
    out.y += 15;
  }
}

/** On a page of its own, so that it can be kept back. */
function answers(out: PageWriter, { title, prints, orders, pictures }: HandoutOptions): void {
  out.paragraph(say.answers(title), { size: 20, bold: true });
  out.paragraph(say.ordersPrintFirstDown(orders, pictures === 1 ? say.onePicture : say.differentPictures(pictures)), {
    size: 11.5,
  });
  out.y += 8;
  for (const print of prints) {
    const text = print.orders.map((order) => order.map((pull) => pull + 1).join(', ')).join(say.or);
    out.need(24);
    out.line(print.letter, { x: out.left, y: out.y }, { size: 12, bold: true });
    out.paragraph(text, { size: 12, x: out.left + 26 });
    out.y += 4;
  }
  if (pictures > prints.length) out.paragraph(say.ofPicturesAreOn(prints.length, pictures), { size: 10.5, soft: true });
  out.rule({ y: out.y + 4 });
}
