import type { FrameState } from '../../engine/explore/prepare/frames.ts';
import type { PageFonts } from '../ui/page-fonts.ts';
import { say } from '../words/en/output/room.ts';
import { frameWord } from '../words/frame-words.ts';
import { PageWriter } from './page-writer.ts';
import type { PdfFile } from './pull-sheet-pdf.ts';
import { wrappedTable } from './tables.ts';

/** A screen to have at hand, in words. */
export interface PrepRow {
  number: string;
  name: string;
  shapes: string;
  size: string;
  mesh: string;
  film: string;
  state: FrameState;
}

/** The list of screens to have made, as a PDF on A4. */
export async function prepListPdf(
  rows: readonly PrepRow[],
  { title, note, fonts }: { title: string; note: string; fonts: PageFonts },
): Promise<PdfFile> {
  const out = await PageWriter.open('A4', say.screensTitle(title), fonts);
  out.heading(say.screensToHave(title));
  out.paragraph(note, { size: 10.5 });
  out.y += 10;
  wrappedTable(
    out,
    [
      { head: say.no, width: 26, bold: true },
      { head: say.screen, width: 98 },
      { head: say.shapes, width: 92 },
      { head: say.prints, width: 86 },
      { head: say.mesh, width: 80 },
      { head: say.filmPositive, width: 62 },
      { head: say.state, width: 50 },
    ],
    rows.map(({ number, name, shapes, size, mesh, film, state }) => [number, name, shapes, size, mesh, film, frameWord(state)]),
  );
  const bytes = await out.close(say.screensTitle(title));
  return { bytes, missing: out.missing };
}
