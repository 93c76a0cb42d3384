import { f64, num } from '../../base/at.ts';

/** Pictures of one sheet as it is meant and as it may come, all alike in size. */
export interface SheetsDrawn {
  widthPx: number;
  heightPx: number;
  /** RGBA, 8 bits, rows from the top. */
  meant: Uint8ClampedArray;
  sheets: readonly Uint8ClampedArray[];
  /** Side of the square that is looked at, px. */
  windowPx: number;
}

/**
 * The square of a sheet in which most changes from sheet to sheet: where gaps open and edges show. What changes is
 * measured as distance of sRGB codes, enough to choose a place by.
 * @returns its middle, px from the top left, the first of the best from the top; null where nothing changes
 */
export function mostChange({ widthPx, heightPx, meant, sheets, windowPx }: SheetsDrawn): { xPx: number; yPx: number } | null {
  const across = Math.max(1, Math.min(Math.round(windowPx), widthPx, heightPx));
  const columns = widthPx + 1;
  /** Of all that lies above and to the left of each corner. */
  const sums = new Float64Array(columns * (heightPx + 1));
  for (let y = 0; y < heightPx; y++) {
    let row = 0;
    for (let x = 0; x < widthPx; x++) {
      row += changeAt(meant, sheets, 4 * (y * widthPx + x));
      sums[(y + 1) * columns + x + 1] = f64(sums, y * columns + x + 1) + row;
    }
  }
  let [most, best] = [0, -1];
  for (let y = 0; y + across <= heightPx; y++) {
    for (let x = 0; x + across <= widthPx; x++) {
      const at = y * columns + x;
      const below = at + across * columns;
      const change = f64(sums, below + across) - f64(sums, below) - f64(sums, at + across) + f64(sums, at);
      if (change > most + 1e-6) [most, best] = [change, at];
    }
  }
  return best < 0 ? null : { xPx: (best % columns) + across / 2, yPx: Math.floor(best / columns) + across / 2 };
}

function changeAt(meant: Uint8ClampedArray, sheets: readonly Uint8ClampedArray[], at: number): number {
  let change = 0;
  for (const sheet of sheets) {
    const [red, green, blue] = [
      num(sheet, at) - num(meant, at),
      num(sheet, at + 1) - num(meant, at + 1),
      num(sheet, at + 2) - num(meant, at + 2),
    ];
    change += Math.sqrt(red * red + green * green + blue * blue);
  }
  return change;
}
