import { entryAt } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import type { Box } from '../../geometry/types.ts';
import { say } from '../../words/en/output/film.ts';
import { JOINT_MM, MOST_SECTIONS } from './film-limits.ts';

/** Lines along which a sheet is cut, mm from its left and from its top. */
export interface SheetCuts {
  acrossMm: readonly number[];
  downMm: readonly number[];
  /** How wide a strip two neighbours share, half on either side of their cut, mm; left out for none. */
  overlapMm?: number | undefined;
}

/** Lines at which a section is trimmed to meet its neighbours, mm from its own left and from its own top. */
export interface Joints {
  acrossMm: number[];
  downMm: number[];
}

/** A part of a sheet with films of its own. */
export interface Section {
  /** From 1, row by row. */
  number: number;
  /** 'section 2 of 6, row 1, column 2'; '' when the sheet is whole. */
  words: string;
  /** On the sheet, with what it shares with its neighbours. */
  box: Box;
  /** Empty where it shares nothing: then its edges are the cuts. */
  joints: Joints;
}

/** Narrower sections are taken for a mistake, mm. */
const LEAST_SECTION_MM = 20;

/**
 * The sections of a sheet between its cuts, row by row.
 * @throws EngineError 'film.cut' for a cut that does not lie on the sheet or leaves a sliver, 'film.joint' for an overlap that
 *   cannot be, 'film.sections' for too many
 */
export function sectionsOf(
  { widthMm, heightMm }: { widthMm: number; heightMm: number },
  { acrossMm, downMm, overlapMm = 0 }: SheetCuts,
): Section[] {
  if (!(overlapMm >= JOINT_MM.least && overlapMm <= JOINT_MM.most)) {
    throw new EngineError('film.joint', say.sectionsCannotOverlapBy(overlapMm, JOINT_MM.least, JOINT_MM.most));
  }
  const columns = edges(widthMm, acrossMm, 'left');
  const rows = edges(heightMm, downMm, 'top');
  const count = (columns.length - 1) * (rows.length - 1);
  if (count > MOST_SECTIONS) {
    throw new EngineError('film.sections', say.theseCutsMakeSections(count, MOST_SECTIONS));
  }
  return rows.slice(1).flatMap((bottom, row) =>
    columns.slice(1).map((right, column): Section => {
      const across = widened(entryAt(columns, column), right, { sideMm: widthMm, overlapMm });
      const down = widened(entryAt(rows, row), bottom, { sideMm: heightMm, overlapMm });
      const number = row * (columns.length - 1) + column + 1;
      return {
        number,
        words: count === 1 ? '' : say.sectionOfRowColumn(number, count, row + 1, column + 1),
        box: { xMm: across.from, yMm: down.from, widthMm: across.to - across.from, heightMm: down.to - down.from },
        joints: { acrossMm: across.joints, downMm: down.joints },
      };
    }),
  );
}

/** The way from one cut to the next with half of what is shared beyond each; the sheet's own edges stay. */
function widened(
  from: number,
  to: number,
  { sideMm, overlapMm }: { sideMm: number; overlapMm: number },
): { from: number; to: number; joints: number[] } {
  const start = from === 0 ? 0 : from - overlapMm / 2;
  const cuts = overlapMm === 0 ? [] : [from, to].filter((cut) => cut > 0 && cut < sideMm);
  return { from: start, to: to === sideMm ? to : to + overlapMm / 2, joints: cuts.map((cut) => cut - start) };
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
