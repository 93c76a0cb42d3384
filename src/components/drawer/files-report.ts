import { defined, entryAt } from '../../engine/base/at.ts';
import { roundTo } from '../../engine/base/units.ts';
import { shapeBounds } from '../../engine/geometry/rings.ts';
import type { Box } from '../../engine/geometry/types.ts';
import { placeByPage, spreadOver } from '../../engine/shapes/place/lay-out.ts';
import { newScreens } from '../../engine/shapes/place/new-screens.ts';
import type { PlacedShape, Screen, Shape } from '../../engine/shapes/types.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import { fixed } from '../../engine/words/language.ts';
import { newId } from '../ui/new-id.ts';
import { say } from '../words/en/drawer/room.ts';
import { isSmall, scalesFor, SMALL_MM, unsizedOf, usualLongest } from './drawn-sizes.ts';
import { type FilesRead, shapesOf } from './read-files.ts';
import { sizeText } from './shape-tray.ts';

/** What the last files came to. */
export interface Report {
  head: string;
  remarks: { text: string; kept: boolean }[];
  /** Files that became no shape. */
  refused: number;
  /** Ids of the screens that were made. */
  screens: string[];
  /** Whether they lie where they were drawn on one page. */
  register: boolean;
  /** How long the largest of the shapes without a size in mm is laid, mm; null when all have one. */
  longestMm: number | null;
}

/**
 * A screen a shape, and what is to be said of it.
 * @param asked how long the largest of the shapes without a size in mm is to be, mm; else so long that it is seen
 */
export function screensFor(
  read: FilesRead,
  { paper, screens: there }: Studio,
  asked?: number,
): Omit<Report, 'head' | 'refused' | 'screens'> & { screens: Screen[] } {
  const unsized = unsizedOf(read);
  const longestMm = unsized === null ? null : (asked ?? usualLongest(unsized));
  const { screens, page, fitted } = newScreens({ ...read, scales: scalesFor(read, longestMm) }, paper, there, newId);
  const parts = inRegister(read, screens, paper);
  const remarks: Report['remarks'] = fitted
    .filter((i) => !parts.has(i))
    .map((i) => {
      const shape = entryAt(read.shapes, i);
      const { number, placed } = entryAt(screens, i);
      const percent = fixed(entryAt(placed, 0).scale * 100, 1);
      return {
        text: say.isLargerThanPrintable(shape.name, sizeText(shape), number, percent),
        kept: true,
      };
    });
  if (page !== null && screens.length > 1) {
    const text = say.allWereDrawnOn(sizeText(page));
    remarks.unshift({ text, kept: true });
  }
  const small = read.shapes.flatMap((shape, i) => (isSmall(shape, entryAt(screens, i).placed[0]?.scale ?? 1) ? [entryAt(screens, i)] : []));
  const [one] = small;
  if (one !== undefined) {
    const text =
      small.length === 1
        ? say.printsUnderMmAcross(one.name, SMALL_MM, one.number)
        : say.shapesPrintUnderMm(small.length, SMALL_MM, one.name);
    remarks.push({ text, kept: true });
  }
  return { screens, register: page !== null, remarks, longestMm };
}

/** Lays the shapes that one file was divided into as they lie in it. @returns their places in the list */
function inRegister({ divided, shapes }: FilesRead, screens: Screen[], paper: Studio['paper']): ReadonlySet<number> {
  const laid = new Set<number>();
  for (const one of divided) {
    const parts = shapesOf(one);
    if (parts.length < 2) continue;
    const box = shapeBounds(parts.flatMap(({ rings }) => rings));
    const page = one.page ?? { widthMm: box.xMm + box.widthMm, heightMm: box.yMm + box.heightMm };
    for (const part of parts) {
      const at = shapes.indexOf(part);
      const screen = screens[at];
      if (screen === undefined) continue;
      laid.add(at);
      screens[at] = { ...screen, placed: [placeByPage(part, page, paper, screen.placed[0]?.scale ?? 1)] };
    }
  }
  return laid;
}

/**
 * Where shapes that were read or sized anew come to lie on the screens that were made for them; those that
 * were changed by hand since, or are gone, are left out.
 */
function placesOn(there: readonly Screen[], made: readonly string[], anew: readonly Screen[]): { screen: string; placed: PlacedShape[] }[] {
  return anew.flatMap(({ placed }, i) => {
    const own = there.find(({ id }) => id === made[i]);
    return own?.placed.length === 1 && own.placed[0]?.shape === placed[0]?.shape ? [{ screen: own.id, placed }] : [];
  });
}

/**
 * Where the shapes of some files come to lie when they are read or sized anew, and the report that says so.
 * @param longestMm how long the largest of the shapes without a size in mm is to be, mm
 */
export function laidAgain(files: FilesRead, report: Report, studio: Studio, longestMm: number | null) {
  const others = studio.screens.filter(({ id }) => !report.screens.includes(id));
  const { screens, ...said } = screensFor(files, { ...studio, screens: others }, longestMm ?? undefined);
  const places = placesOn(studio.screens, report.screens, screens);
  return { places, report: { ...report, ...said, remarks: [...files.remarks, ...said.remarks] } };
}

/**
 * Spreads shapes over the sheet at the sizes at which they are laid.
 * @returns null where a shape is not there
 */
export function spreadAsLaid(
  laid: readonly { id: string; scale: number; shape: Shape | undefined }[],
  printable: Box,
): { screen: string; placed: PlacedShape[] }[] | null {
  const sized = laid.flatMap(({ scale, shape }) =>
    shape === undefined ? [] : [{ id: shape.id, widthMm: shape.widthMm * scale, heightMm: shape.heightMm * scale }],
  );
  if (sized.length < laid.length) return null;
  return spreadOver(sized, printable).map((placed, i) => {
    const { id, scale } = entryAt(laid, i);
    return { screen: id, placed: [{ ...placed, scale: roundTo(placed.scale * scale, 3) }] };
  });
}

/** The report's first line. */
export function headOf(shapes: readonly Shape[], refused: number, screens: readonly Screen[]): string {
  const added =
    shapes.length === 0
      ? say.nothingWasAdded
      : shapes.length === 1
        ? say.wasAddedOnScreen(entryAt(shapes, 0).name, entryAt(screens, 0).number)
        : say.shapesWereAddedOn(shapes.length, entryAt(screens, 0).number, defined(screens.at(-1)).number);
  if (refused === 0) return added;
  return say.refused(added, refused === 1 ? say.oneFileWas : say.filesWere(refused));
}
