import { defined, entryAt } from '../../engine/base/at.ts';
import { type PageSize, placeByPage, samePage } from '../../engine/shapes/place/lay-out.ts';
import { nextScreenNumber, screenOfShape } from '../../engine/shapes/place/new-screen.ts';
import type { Screen, Shape } from '../../engine/shapes/types.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import type { FilesRead } from './read-files.ts';
import { sizeText } from './shape-tray.ts';

/** What the last files came to. */
export interface Report {
  head: string;
  remarks: { text: string; kept: boolean }[];
  /** Ids of the screens that were made. */
  screens: string[];
  /** Whether they lie where they were drawn on one page. */
  register: boolean;
}

/** A screen a shape. What was drawn on one page stays in register; other shapes lie in the middle. */
export function screensFor(read: FilesRead, drawer: Studio): Pick<Report, 'register' | 'remarks'> & { screens: Screen[] } {
  const { paper } = drawer;
  const page = pageOf(read, paper);
  const first = nextScreenNumber(drawer.screens);
  const remarks: Report['remarks'] = [];
  if (page !== null && read.shapes.length > 1) {
    remarks.push({
      text: `All were drawn on a page of ${sizeText(page)}, so they keep their places on it; the page lies in the middle of the sheet.`,
      kept: true,
    });
  }
  const screens = read.shapes.map((shape, i) => {
    const { screen, fitted } = screenOfShape(shape, paper.printable, { id: crypto.randomUUID(), number: first + i });
    if (page !== null) screen.placed = [placeByPage(shape, page, paper)];
    else if (fitted) {
      const percent = (entryAt(screen.placed, 0).scale * 100).toFixed(1);
      remarks.push({
        text: `${shape.name} is ${sizeText(shape)}, larger than the printable part of the sheet; on screen ${first + i} it is placed at ${percent} % so that it fits.`,
        kept: true,
      });
    }
    return screen;
  });
  return { screens, register: page !== null, remarks };
}

/** The one page that all was drawn on, or that is as large as the sheet; else null. */
function pageOf({ pages }: FilesRead, sheet: PageSize): PageSize | null {
  const [page] = pages;
  if (page === undefined || page === null) return null;
  if (pages.length === 1 && !samePage(page, sheet)) return null;
  return pages.every((other) => other !== null && samePage(page, other)) ? page : null;
}

/** The report's first line. */
export function headOf(shapes: readonly Shape[], refused: number, screens: readonly Screen[]): string {
  const added =
    shapes.length === 0
      ? 'Nothing was added'
      : shapes.length === 1
        ? `${entryAt(shapes, 0).name} was added, on screen ${entryAt(screens, 0).number}`
        : `${shapes.length} shapes were added, on screens ${entryAt(screens, 0).number} to ${defined(screens.at(-1)).number}`;
  if (refused === 0) return added;
  return `${added}; ${refused === 1 ? 'one file was' : `${refused} files were`} refused`;
}
