import { entryAt } from '../../engine/base/at.ts';
import type { DrawerCommand } from '../../engine/project/commands/drawer.ts';
import type { ShapeOf } from '../../engine/shapes/read/parts.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import { headOf, type Report, screensFor } from './files-report.ts';
import { dividedAs, type FilesRead, shapesOf } from './read-files.ts';

/** Some files, and what was said of them. */
export interface Told {
  files: FilesRead;
  report: Report;
}

/** What takes one of the files as other shapes, and what is to be said then. @param to which file, and how it is taken */
export function exchange(
  { files, report }: Told,
  { at, each }: { at: number; each: ShapeOf },
  studio: Studio,
): Told & { command: Extract<DrawerCommand, { kind: 'exchange-shapes' }> } {
  const before = shapesOf(entryAt(files.divided, at)).map(({ id }) => id);
  const from = files.shapes.findIndex(({ id }) => id === before[0]);
  const gone = { shapes: before, screens: report.screens.slice(from, from + before.length) };
  const next = dividedAs(files, at, each);
  const { screens, ...said } = screensFor(next, studio, report.longestMm ?? undefined);
  const shapes = shapesOf(entryAt(next.divided, at));
  const added = screens.slice(from, from + shapes.length).map((screen, i) => ({ ...screen, number: firstFree(studio, gone.screens) + i }));
  const made = report.screens.toSpliced(from, before.length, ...added.map(({ id }) => id));
  const there = made.flatMap((id) => [...added, ...studio.screens].find((screen) => screen.id === id) ?? []);
  return {
    command: { kind: 'exchange-shapes', gone, shapes, screens: added },
    files: next,
    report: {
      ...report,
      ...said,
      head: headOf(next.shapes, report.refused, there),
      screens: made,
      remarks: [...next.remarks, ...said.remarks],
    },
  };
}

/** The number after the highest of those that stay. */
function firstFree({ screens }: Studio, gone: readonly string[]): number {
  return Math.max(0, ...screens.flatMap(({ id, number }) => (gone.includes(id) ? [] : [number]))) + 1;
}

/** What is there after an undo or redo, when that is no longer what was last told; else null. */
export function turnedBack(
  { files, report }: { files: FilesRead | null; report: Report | null },
  others: readonly Told[],
  { shapes }: Studio,
): (Told & { others: Told[] }) | null {
  if (files === null || report === null || others.length === 0) return null;
  const there = new Set(shapes.map(({ id }) => id));
  const isThere = (told: FilesRead): boolean => told.shapes.every(({ id }) => there.has(id));
  const back = isThere(files) ? undefined : others.findLast((one) => isThere(one.files));
  return back === undefined ? null : { ...back, others: [...others.filter((one) => one !== back), { files, report }] };
}
