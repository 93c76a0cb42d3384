import type { PDFImage } from 'pdf-lib';
import { entryAt } from '../../engine/base/at.ts';
import type { Pull } from '../../engine/stack/types.ts';
import type { PageFonts } from '../ui/page-fonts.ts';
import { drawBlocks } from './draw/draw-blocks.ts';
import type { Drawing } from './draw/pieces.ts';
import type { MadePlan } from './made-plan.ts';
import { type PageName, PageWriter } from './page-writer.ts';
import { choiceTitle, type PaperAsked } from './papers/paper-choice.ts';
import { papersOf, type PaperWords, stateKey, statesOf } from './papers/papers.ts';
import { PDF_COLOURS } from './pdf-colours.ts';

/** Gives a PNG of a recipe's sheet with some pulls on it, so many pixels high; null when it could not be drawn. */
type PictureOf = (recipe: number, pulls: readonly Pull[], rows: number) => Promise<Uint8Array | null>;

export interface PullSheetOptions extends PaperWords {
  size: PageName;
  asked: PaperAsked;
  picture: PictureOf;
  fonts: PageFonts;
}

/** A file, and the signs that its fonts lack: they stand in it as boxes. */
export interface PdfFile {
  bytes: Uint8Array;
  missing: readonly string[];
}

/** Rows of the pictures: of a card alone, and where there are many, each of them small. */
const ROWS_ALONE = 520;
const ROWS = 240;

/** The papers of a visit as a PDF. Diagrams are vectors, states are pictures. */
export async function pullSheetPdf(made: MadePlan, options: PullSheetOptions): Promise<PdfFile> {
  const { asked, heading } = options;
  const title = `${choiceTitle(asked)}: ${heading}`;
  const out = await PageWriter.open(options.size, title, options.fonts);
  const blocks = papersOf(made, asked, options);
  const images = new Map<string, PDFImage | null>();
  for (const state of statesOf(blocks)) {
    const png = await options.picture(state.recipe, state.pulls, asked.what === 'set-up' ? ROWS_ALONE : ROWS);
    images.set(stateKey(state), png === null ? null : await out.doc.embedPng(png));
  }
  const aspect = (recipe: number): number => {
    const { widthMm, heightMm } = entryAt(made.recipes, recipe).paper;
    return widthMm / heightMm;
  };
  const drawing: Drawing = {
    out,
    aspect,
    state(state, { x, y }, height) {
      const box = { x, y, width: height * aspect(state.recipe), height };
      const image = images.get(stateKey(state)) ?? null;
      if (image === null) out.rectangle(box, { ...(state.pulls.length === 0 ? { hex: PDF_COLOURS.white } : {}), edge: true });
      else out.image(image, box);
    },
  };
  drawBlocks(drawing, blocks, made.recipes);
  return { bytes: await out.close(title), missing: out.missing };
}
