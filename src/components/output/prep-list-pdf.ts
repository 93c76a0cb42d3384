import type { FrameState } from '../../engine/explore/prepare/frames.ts';
import type { PageFonts } from '../ui/page-fonts.ts';
import { say } from '../words/en/output/room.ts';
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

const TICKED = 'x';

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
      { head: say.no, width: 24, bold: true },
      { head: say.screen, width: 88 },
      { head: say.shapes, width: 82 },
      { head: say.prints, width: 78 },
      { head: say.mesh, width: 78 },
      { head: say.filmPositive, width: 84 },
      { head: say.filmIsThere, width: 26, box: true },
      { head: say.screenIsMade, width: 34, box: true },
    ],
    rows.map(({ number, name, shapes, size, mesh, film, state }) => {
      const made = state === 'made' ? TICKED : '';
      return [number, name, shapes, size, mesh, film, state === 'film made' ? TICKED : made, made];
    }),
    9.5,
  );
  out.paragraph(say.tickedIsDone, { size: 9 });
  const bytes = await out.close(say.screensTitle(title));
  return { bytes, missing: out.missing };
}
