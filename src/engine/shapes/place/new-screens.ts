import { entryAt } from '../../base/at.ts';
import type { Box } from '../../geometry/types.ts';
import type { Screen, Shape } from '../types.ts';
import { type PageSize, placeByPage, samePage } from './lay-out.ts';
import { nextScreenNumber, screenOfShape } from './new-screen.ts';

/** Drawings on smaller pages, longer side in mm, are not taken as layers of one print; no source. */
const LEAST_PAGE_MM = 15;

/** The sheet that new screens are for. */
export interface ScreenSheet extends PageSize {
  /** The part that can be printed, mm. */
  printable: Box;
}

/** Screens for shapes that were read from files. */
export interface NewScreens {
  /** In the order of the shapes, numbered on from the highest frame there is. */
  screens: Screen[];
  /** The page that all shapes keep their places on; null when each lies in the middle. */
  page: PageSize | null;
  /** Places of the shapes that had to be made smaller to fit. */
  fitted: number[];
}

/**
 * A screen a shape. What was drawn on one page stays in register; other shapes lie in the middle.
 * @param read the shapes with their pages, null for a file that gives none, and how much larger than in
 *   its file each is laid
 * @param there the screens that there are
 * @param newId gives an id not yet in use at each call
 */
export function newScreens(
  read: { shapes: readonly Shape[]; pages: readonly (PageSize | null)[]; scales?: readonly number[] },
  sheet: ScreenSheet,
  there: readonly Pick<Screen, 'number'>[],
  newId: () => string,
): NewScreens {
  const scaleOf = (i: number): number => read.scales?.[i] ?? 1;
  // Layers of one print stay in register only at one scale.
  const page = read.shapes.every((_, i) => scaleOf(i) === scaleOf(0)) ? commonPage(read.pages, sheet) : null;
  const first = nextScreenNumber(there);
  const made = read.shapes.map((shape, i) => screenOfShape(shape, sheet.printable, { id: newId(), number: first + i }, scaleOf(i)));
  if (page === null) return { screens: made.map(({ screen }) => screen), page, fitted: made.flatMap(({ fitted }, i) => (fitted ? [i] : [])) };
  const screens = made.map(({ screen }, i): Screen => ({ ...screen, placed: [placeByPage(entryAt(read.shapes, i), page, sheet, scaleOf(0))] }));
  return { screens, page, fitted: [] };
}

/** The one page that all was drawn on, or that is as large as the sheet; else null. */
function commonPage(pages: readonly (PageSize | null)[], sheet: PageSize): PageSize | null {
  const [page] = pages;
  if (page === undefined || page === null) return null;
  // A page as small as an icon's is the box of one drawing, not a sheet that several lie on.
  if (Math.max(page.widthMm, page.heightMm) < LEAST_PAGE_MM) return null;
  if (pages.length === 1 && !samePage(page, sheet)) return null;
  return pages.every((other) => other !== null && samePage(page, other)) ? page : null;
}
