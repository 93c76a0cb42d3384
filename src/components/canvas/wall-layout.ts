/** A print's height in wall units; everything else on the wall is measured by it. */
export const PRINT_HEIGHT = 100;
const GAP_ACROSS = 17;
/** On a narrow view prints are never laid smaller than this, px; such a wall is walked downwards. */
const LEAST_PRINT_PX = 62;
const NARROW_PX = 600;
/** Room under a print for its number. */
const GAP_DOWN = 24;

export interface Extent {
  width: number;
  height: number;
}

/** Which places of the wall, as half-open ranges. */
export interface PlaceRange {
  firstColumn: number;
  endColumn: number;
  firstRow: number;
  endRow: number;
}

/** Where prints hang: row by row in seed order, all at one size. */
export interface WallLayout extends Extent {
  places: number;
  columns: number;
  rows: number;
  printWidth: number;
  printHeight: number;
  cellWidth: number;
  cellHeight: number;
}

/**
 * Lays out a wall so that, seen whole, its prints are as large as they can be; on a narrow view so
 * that they can still be told apart, with as many rows as that takes.
 * @param places how many prints hang on it
 * @param sheetAspect width ÷ height of the paper
 * @param view what the wall is seen through, CSS px
 * @returns sizes in wall units
 */
export function layWall(places: number, sheetAspect: number, view: Extent): WallLayout {
  const printWidth = PRINT_HEIGHT * sheetAspect;
  const cellWidth = printWidth + GAP_ACROSS;
  const cellHeight = PRINT_HEIGHT + GAP_DOWN;
  const count = Math.max(1, places);
  let columns = 1;
  let best = 0;
  for (let tried = 1; tried <= count; tried++) {
    const scale = Math.min(view.width / (tried * cellWidth), view.height / (Math.ceil(count / tried) * cellHeight));
    if (scale > best * 1.0001) {
      best = scale;
      columns = tried;
    }
  }
  if (view.width < NARROW_PX && best * PRINT_HEIGHT < LEAST_PRINT_PX) {
    columns = Math.max(1, Math.min(count, Math.floor(view.width / ((cellWidth * LEAST_PRINT_PX) / PRINT_HEIGHT))));
  }
  const rows = Math.ceil(count / columns);
  return {
    places,
    columns,
    rows,
    printWidth,
    printHeight: PRINT_HEIGHT,
    cellWidth,
    cellHeight,
    width: columns * cellWidth - GAP_ACROSS,
    height: rows * cellHeight - GAP_DOWN,
  };
}

/** Left edge of a place, wall units. */
export function leftOf(layout: WallLayout, index: number): number {
  return (index % layout.columns) * layout.cellWidth;
}

/** Top edge of a place, wall units. */
export function topOf(layout: WallLayout, index: number): number {
  return Math.floor(index / layout.columns) * layout.cellHeight;
}

/** The place at a point of the wall, its number included; −1 between prints. */
export function placeAt(layout: WallLayout, x: number, y: number): number {
  const column = Math.floor(x / layout.cellWidth);
  const row = Math.floor(y / layout.cellHeight);
  if (column < 0 || column >= layout.columns || row < 0 || row >= layout.rows) return -1;
  if (x - column * layout.cellWidth > layout.printWidth) return -1;
  const index = row * layout.columns + column;
  return index < layout.places ? index : -1;
}

function clamp(value: number, most: number): number {
  return Math.min(most, Math.max(0, value));
}

/** The places that touch a part of the wall, with their numbers and shadows. */
export function placesIn(layout: WallLayout, x: number, y: number, width: number, height: number): PlaceRange {
  return {
    firstColumn: clamp(Math.floor((x - GAP_ACROSS) / layout.cellWidth), layout.columns),
    endColumn: clamp(Math.floor((x + width + GAP_ACROSS) / layout.cellWidth) + 1, layout.columns),
    firstRow: clamp(Math.floor((y - GAP_DOWN) / layout.cellHeight), layout.rows),
    endRow: clamp(Math.floor((y + height + GAP_DOWN) / layout.cellHeight) + 1, layout.rows),
  };
}

/** The place reached from another by an arrow or page key; the same when there is none. */
export function placeAfter(layout: WallLayout, from: number, key: string, last: number): number {
  const steps: Record<string, number> = {
    ArrowLeft: -1,
    ArrowRight: 1,
    ArrowUp: -layout.columns,
    ArrowDown: layout.columns,
    PageUp: -layout.columns * 3,
    PageDown: layout.columns * 3,
    Home: -from,
    End: last - from,
  };
  const to = from + (steps[key] ?? 0);
  if (to >= 0 && to <= last) return to;
  if (key === 'PageUp') return from % layout.columns;
  if (key === 'PageDown') return last;
  return from;
}
