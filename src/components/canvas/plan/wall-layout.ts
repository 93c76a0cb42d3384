/** A print's height in wall units; everything else on the wall is measured by it. */
export const PRINT_HEIGHT = 100;
const GAP_ACROSS = 17;
/** On a narrow view prints are never laid narrower than this, px, so that they can be judged; such a wall is walked downwards. */
const LEAST_PRINT_PX = 92;
const NARROW_PX = 600;
/** Room under a print for its number. */
const GAP_DOWN = 24;

export interface Extent {
  width: number;
  height: number;
}

/** An extent and where it lies. */
export interface Box extends Extent {
  left: number;
  top: number;
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
 * that they can be judged, with as many rows as that takes.
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
  if (view.width < NARROW_PX && best * printWidth < LEAST_PRINT_PX) {
    columns = Math.max(1, Math.min(count, Math.floor(view.width / ((cellWidth * LEAST_PRINT_PX) / printWidth))));
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
