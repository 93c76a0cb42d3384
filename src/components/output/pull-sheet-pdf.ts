import type { PDFImage } from 'pdf-lib';
import { entryAt } from '../../engine/base/at.ts';
import type { Pull } from '../../engine/stack/types.ts';
import type { PageFonts } from '../ui/page-fonts.ts';
import { coverPage } from './cover-page.ts';
import { dayPlanPages } from './day-plan.ts';
import { gridPages } from './grid-pages.ts';
import type { MadePlan } from './made-plan.ts';
import { type DrawState, type PageName, PageWriter } from './page-writer.ts';
import { passportPages } from './passports.ts';
import { PDF_COLOURS } from './pdf-colours.ts';
import type { PlanPages } from './plan-pages.ts';
import { setUpBlock } from './set-up-blocks.ts';
import { stateKey } from './state-key.ts';
import { supplyPages } from './supply-pages.ts';

/** Gives a PNG of a recipe's sheet with some pulls on it; null when it could not be drawn. */
type PictureOf = (recipe: number, pulls: readonly Pull[]) => Promise<Uint8Array | null>;

export interface PullSheetOptions {
  size: PageName;
  heading: string;
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

/**
 * The pull sheet as a PDF, one column: summary and cautions, the visit at a glance, the days, what
 * to have ready, a card for each set-up, a passport for each kind of sheet. Diagrams are vectors,
 * states are pictures.
 */
export async function pullSheetPdf(made: MadePlan, options: PullSheetOptions): Promise<PdfFile> {
  const out = await PageWriter.open(options.size, `Pull sheet: ${options.heading}`, options.fonts);
  const pages: PlanPages = { out, made, draw: stateDrawing(out, made, options.picture) };
  await coverPage(pages, options.heading);
  gridPages(out, made.plan);
  dayPlanPages(out, made.plan);
  supplyPages(out, made);
  // Without a heading, two cards stand on the first page as on the others.
  out.newPage();
  for (const at of made.plan.cards.keys()) {
    await setUpBlock(pages, at);
    // Passports and the writing of the file take about as long as a few cards.
    options.onProgress?.((at + 1) / (made.plan.cards.length + 3));
  }
  await passportPages(pages);
  const bytes = await out.close(`Pull sheet: ${options.heading}`);
  return { bytes, missing: out.missing };
}

/** Draws each state once, however often it is shown. */
function stateDrawing(out: PageWriter, made: MadePlan, picture: PictureOf): DrawState {
  const images = new Map<string, PDFImage | null>();
  return async (recipe, pulls, { x, y, height }) => {
    const { widthMm, heightMm } = entryAt(made.recipes, recipe).paper;
    const width = (height * widthMm) / heightMm;
    if (pulls.length === 0) {
      out.rectangle({ x, y, width, height }, { hex: PDF_COLOURS.white, edge: true });
      return width;
    }
    const key = stateKey(recipe, pulls);
    let image = images.get(key);
    if (image === undefined) {
      const png = await picture(recipe, pulls);
      image = png === null ? null : await out.doc.embedPng(png);
      images.set(key, image);
    }
    if (image === null) out.rectangle({ x, y, width, height }, { edge: true });
    else out.image(image, { x, y, width, height });
    return width;
  };
}
