import type { PDFImage } from 'pdf-lib';
import { entryAt } from '../../engine/base/at.ts';
import type { Pull } from '../../engine/stack/types.ts';
import type { PageFonts } from '../ui/page-fonts.ts';
import { drawBlocks } from './draw/draw-blocks.ts';
import type { Drawing } from './draw/pieces.ts';
import type { MadePlan } from './made-plan.ts';
import { type PageName, PageWriter } from './page-writer.ts';
import { choiceTitle, type PaperAsked } from './papers/paper-choice.ts';
import { papersOf, type PaperWords, statesOf } from './papers/papers.ts';
import { PDF_COLOURS } from './pdf-colours.ts';
import { stateKey } from './state-key.ts';

/** Gives a PNG of a recipe's sheet with some pulls on it; null when it could not be drawn. */
type PictureOf = (recipe: number, pulls: readonly Pull[]) => Promise<Uint8Array | null>;

export interface PullSheetOptions extends PaperWords {
  size: PageName;
  asked: PaperAsked;
  picture: PictureOf;
  fonts: PageFonts;
  /** Gets the share that is done, 0–1. */
  onProgress?: (share: number) => void;
}

/** A file, and the signs that its fonts lack: they stand in it as boxes. */
export interface PdfFile {
  bytes: Uint8Array;
  missing: readonly string[];
}

/** The blocks are drawn in about the time of so many states. */
const BLOCKS_AS_STATES = 5;

/** The papers of a visit as a PDF. Diagrams are vectors, states are pictures. */
export async function pullSheetPdf(made: MadePlan, options: PullSheetOptions): Promise<PdfFile> {
  const { asked, heading } = options;
  const title = `${choiceTitle(asked, made.plan)}: ${heading}`;
  const out = await PageWriter.open(options.size, title, options.fonts);
  const blocks = papersOf(made, asked, options);
  const images = new Map<string, PDFImage | null>();
  const states = statesOf(blocks);
  for (const [at, { recipe, pulls }] of states.entries()) {
    const png = await options.picture(recipe, pulls);
    images.set(stateKey(recipe, pulls), png === null ? null : await out.doc.embedPng(png));
    options.onProgress?.((at + 1) / (states.length + BLOCKS_AS_STATES));
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
      const image = images.get(stateKey(state.recipe, state.pulls)) ?? null;
      if (image === null) out.rectangle(box, { ...(state.pulls.length === 0 ? { hex: PDF_COLOURS.white } : {}), edge: true });
      else out.image(image, box);
    },
  };
  drawBlocks(drawing, blocks, made.recipes);
  return { bytes: await out.close(title), missing: out.missing };
}
