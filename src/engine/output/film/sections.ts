import { entryAt } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import type { Box } from '../../geometry/types.ts';
import { say } from '../../words/en/output/film.ts';

/** Lines along which a sheet is cut, mm from its left and from its top. */
export interface SheetCuts {
  acrossMm: readonly number[];
  downMm: readonly number[];
}

/** A part of a sheet with films of its own. */
export interface Section {
  /** From 1, row by row. */
  number: number;
  /** 'section 2 of 6, row 1, column 2'; '' when the sheet is whole. */
  words: string;
  /** On the sheet. */
  box: Box;
}

/** Narrower sections are taken for a mistake, mm. */
const LEAST_SECTION_MM = 20;
const MOST_SECTIONS = 100;

/**
 * The sections of a sheet between its cuts, row by row.
 * @throws EngineError 'film.cut' for a cut that does not lie on the sheet or leaves a sliver, 'film.sections' for too many
 */
export function sectionsOf({ widthMm, heightMm }: { widthMm: number; heightMm: number }, { acrossMm, downMm }: SheetCuts): Section[] {
  const columns = edges(widthMm, acrossMm, 'left');
  const rows = edges(heightMm, downMm, 'top');
  const count = (columns.length - 1) * (rows.length - 1);
  if (count > MOST_SECTIONS) {
    throw new EngineError('film.sections', say.theseCutsMakeSections(count, MOST_SECTIONS));
  }
  return rows.slice(1).flatMap((bottom, row) =>
    columns.slice(1).map((right, column): Section => {
      const [xMm, yMm] = [entryAt(columns, column), entryAt(rows, row)];
      const number = row * (columns.length - 1) + column + 1;
      return {
        number,
        words: count === 1 ? '' : say.sectionOfRowColumn(number, count, row + 1, column + 1),
        box: { xMm, yMm, widthMm: right - xMm, heightMm: bottom - yMm },
      };
    }),
  );
}

/** A section with all that is printed beyond those of its edges that are the sheet's. */
export function outerBox(box: Box, paper: { widthMm: number; heightMm: number }, beyondMm: number): Box {
  const [right, bottom] = [box.xMm + box.widthMm, box.yMm + box.heightMm];
  // Sides are differences of edges, so that sums of them can miss the sheet's by dust.
  const ends = (edge: number, side: number): boolean => Math.abs(edge - side) < 1e-6;
  const left = box.xMm === 0 ? -beyondMm : box.xMm;
  const top = box.yMm === 0 ? -beyondMm : box.yMm;
  return {
    xMm: left,
    yMm: top,
    widthMm: (ends(right, paper.widthMm) ? right + beyondMm : right) - left,
    heightMm: (ends(bottom, paper.heightMm) ? bottom + beyondMm : bottom) - top,
  };
}

function edges(sideMm: number, cuts: readonly number[], from: 'left' | 'top'): number[] {
  const side = say.whichIsMmWide(sideMm, from === 'left');
  const off = cuts.find((cut) => !(cut > 0 && cut < sideMm));
  if (off !== undefined) throw new EngineError('film.cut', say.cutAtMmFrom(off, from, side));
  const all = [0, ...[...new Set(cuts)].sort((a, b) => a - b), sideMm];
  for (const [i, edge] of all.entries()) {
    const before = all[i - 1];
    if (before === undefined || edge - before >= LEAST_SECTION_MM) continue;
    const cut = i === all.length - 1 ? before : edge;
    throw new EngineError('film.cut', say.cutAtMmFromLeaves(cut, from, LEAST_SECTION_MM, side));
  }
  return all;
}
