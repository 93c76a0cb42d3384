import { defined, entryAt } from '../../engine/base/at.ts';
import { newScreens } from '../../engine/shapes/place/new-screens.ts';
import type { Screen, Shape } from '../../engine/shapes/types.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import { newId } from '../ui/new-id.ts';
import type { FilesRead } from './read-files.ts';
import { sizeText } from './shape-tray.ts';

/** Below this a shape is most likely smaller than it was meant, mm; no source. */
const SMALL_MM = 15;

/** What the last files came to. */
export interface Report {
  head: string;
  remarks: { text: string; kept: boolean }[];
  /** Ids of the screens that were made. */
  screens: string[];
  /** Whether they lie where they were drawn on one page. */
  register: boolean;
}

/** A screen a shape, and what is to be said of it. */
export function screensFor(read: FilesRead, { paper, screens: there }: Studio): Omit<Report, 'head' | 'screens'> & { screens: Screen[] } {
  const { screens, page, fitted } = newScreens(read, paper, there, newId);
  const remarks: Report['remarks'] = fitted.map((i) => {
    const shape = entryAt(read.shapes, i);
    const { number, placed } = entryAt(screens, i);
    const percent = (entryAt(placed, 0).scale * 100).toFixed(1);
    return {
      text: `${shape.name} is ${sizeText(shape)}, larger than the printable part of the sheet; on screen ${number} it is placed at ${percent} % so that it fits.`,
      kept: true,
    };
  });
  if (page !== null && screens.length > 1) {
    const text = `All were drawn on a page of ${sizeText(page)}, so they keep their places on it; the page lies in the middle of the sheet.`;
    remarks.unshift({ text, kept: true });
  }
  const small = read.shapes.flatMap((shape, i) => (printedSide(shape, entryAt(screens, i)) < SMALL_MM ? [entryAt(screens, i)] : []));
  const [one] = small;
  if (one !== undefined) {
    const text =
      small.length === 1
        ? `${one.name} prints under ${SMALL_MM} mm across; if that is too small, give it a size on screen ${one.number}.`
        : `${small.length} shapes print under ${SMALL_MM} mm across, ${one.name} first; where that is too small, give them a size on their screens.`;
    remarks.push({ text, kept: true });
  }
  return { screens, register: page !== null, remarks };
}

function printedSide({ widthMm, heightMm }: Shape, { placed }: Screen): number {
  return Math.max(widthMm, heightMm) * (placed[0]?.scale ?? 1);
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
