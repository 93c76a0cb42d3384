import { INK_MESH } from '../../engine/ink/film/film-factor.ts';
import { meshName } from '../../engine/ink/film/mesh-choices.ts';
import { filmsName } from '../../engine/ink/target/few-squares.ts';
import type { FewSquare } from '../../engine/ink/target/target.ts';
import type { Ink, Paper } from '../../engine/ink/types.ts';
import type { PageFonts } from '../ui/page-fonts.ts';
import { CAUTIONS, CAUTIONS_BY_TOPIC } from '../words/cautions.ts';
import { say } from '../words/en/output/room.ts';
import { type PageName, PageWriter, PT_PER_MM } from './page-writer.ts';
import type { PdfFile } from './pull-sheet-pdf.ts';
import { wrappedTable } from './tables.ts';

/** A square that is to be pulled, and the colour that is expected of it. */
interface SquareToPull extends Pick<FewSquare, 'films'> {
  hex: string;
}

/** What the page of a few squares is made of. */
export interface TargetPdf {
  squares: readonly SquareToPull[];
  /** All that the squares name. */
  inks: readonly Ink[];
  paper: Pick<Paper, 'name'>;
  /** The project's title. */
  title: string;
  size: PageName;
  fonts: PageFonts;
}

/** Side of a square, and from one to the next; room for two lines of words below each. */
const SIDE_MM = 36;
const ACROSS = 4;
const STEP_MM = { x: (210 - 28 - SIDE_MM) / (ACROSS - 1), y: 56 };

/**
 * A few squares to be pulled by hand, as a PDF: the squares at their size, how to pull them, and lines to
 * write down what they measure.
 */
export async function targetPdf(target: TargetPdf): Promise<PdfFile> {
  const { squares, title, size, fonts } = target;
  const heading = say.squaresToPull(squares.length, title);
  const out = await PageWriter.open(size, heading, fonts);
  squaresPage(out, target, heading);
  out.newPage();
  pullingPage(out, target);
  const bytes = await out.close(heading);
  return { bytes, missing: out.missing };
}

function squaresPage(out: PageWriter, { squares, inks, paper }: TargetPdf, heading: string): void {
  out.paragraph(heading, { size: 16, bold: true });
  out.paragraph(say.pullEachSquareOn(paper.name === '' ? say.yourPaper : paper.name), { size: 10, soft: true });
  out.y += 8;
  const side = SIDE_MM * PT_PER_MM;
  const pitch = { x: STEP_MM.x * PT_PER_MM, y: STEP_MM.y * PT_PER_MM };
  for (const [at, { films, hex }] of squares.entries()) {
    const column = at % ACROSS;
    if (column === 0) out.need(pitch.y);
    const [x, y] = [out.left + column * pitch.x, out.y];
    out.rectangle({ x, y, width: side, height: side }, { edge: true });
    out.line(`${at + 1}`, { x: x + 4, y: y + 3 }, { size: 11, bold: true });
    out.rectangle({ x: x + side - 16, y: y + side - 16, width: 12, height: 12 }, { hex });
    for (const [i, line] of out
      .lines(filmsName(films, inks), pitch.x - 8, { size: 9 })
      .slice(0, 3)
      .entries()) {
      out.line(line, { x, y: y + side + 4 + i * 12 }, { size: 9 });
    }
    if (column === ACROSS - 1 || at === squares.length - 1) out.y += pitch.y;
  }
  out.paragraph(say.squaresOfMmWhen(SIDE_MM), { size: 9, soft: true });
}

function pullingPage(out: PageWriter, { squares, inks }: TargetPdf): void {
  out.heading(say.pullingThem, 15);
  const steps = [say.makeOneStencilWith, say.pullEachFilmIn, say.whenAllIsDry];
  for (const [at, step] of steps.entries()) out.paragraph(`${at + 1}. ${step}`, { size: 11 });
  out.y += 4;
  out.paragraph([CAUTIONS[0], ...CAUTIONS_BY_TOPIC.target].join(' '), { size: 9.5, soft: true });
  out.heading(say.inks, 13);
  const used = inks.filter(({ id }) => squares.some(({ films }) => films.includes(id)));
  wrappedTable(
    out,
    [
      { head: say.ink, width: 150, bold: true },
      { head: say.mesh, width: 110 },
      { head: say.dry, width: 60 },
      { head: say.batchNotes, width: 100 },
    ],
    used.map((ink) => [ink.name, say.orYours(meshName(ink.mesh ?? INK_MESH), ink.mesh === undefined), say.min(ink.dryMinutes), '']),
  );
  out.heading(say.whatYouMeasure, 13);
  wrappedTable(
    out,
    [
      { head: say.square, width: 44, bold: true },
      { head: say.firstDownFirst, width: 250 },
      { head: 'L', width: 60 },
      { head: 'a', width: 60 },
      { head: 'b', width: 60 },
    ],
    squares.map(({ films }, at) => [
      `${at + 1}`,
      films.map((id) => inks.find((ink) => ink.id === id)?.name ?? '').join(say.then2),
      '',
      '',
      '',
    ]),
  );
}
