import { f64, num, u32 } from '../base/at.ts';

/** A print so small that it is seen from far: a colour for each of a few fields of its sheet. */
export interface SmallPicture {
  columns: number;
  rows: number;
  /** Row by row, packed as ImageData packs it (little endian: 0xAABBGGRR, sRGB). */
  words: Uint32Array<ArrayBuffer>;
}

/**
 * Shrinks a print: the mean colour of each field, in about linear light (squares of the codes), as
 * the eye sees a field whose shapes it no longer tells apart.
 * @param map cell numbers of the sheet, row by row
 * @param colours a word for each number: 0xAABBGGRR, sRGB
 * @param times how many columns and rows of the map go into one field, 1 or more; fields at the
 *   right and below may take one more or fewer
 */
export function smallPicture(
  map: { columns: number; rows: number; cells: ArrayLike<number> },
  colours: Uint32Array,
  times: number,
): SmallPicture {
  const columns = Math.max(1, Math.round(map.columns / times));
  const rows = Math.max(1, Math.round(map.rows / times));
  const squares = new Uint32Array(colours.length * 3);
  for (let i = 0; i < colours.length; i++) {
    const colour = u32(colours, i);
    for (let channel = 0; channel < 3; channel++) {
      const code = (colour >> (8 * channel)) & 255;
      squares[i * 3 + channel] = code * code;
    }
  }
  /** The first column after each field. */
  const ends = Uint32Array.from({ length: columns }, (_, field) => Math.ceil(((field + 1) * map.columns) / columns));
  const sums = new Float64Array(columns * rows * 4);
  for (let row = 0; row < map.rows; row++) {
    const band = Math.floor((row * rows) / map.rows) * columns;
    const first = row * map.columns;
    for (let field = 0, column = 0; field < columns; field++) {
      const at = (band + field) * 4;
      const end = u32(ends, field);
      // Most neighbours are of one cell.
      while (column < end) {
        const from = column;
        const cell = num(map.cells, first + column);
        do column++;
        while (column < end && map.cells[first + column] === cell);
        const count = column - from;
        sums[at] = f64(sums, at) + count * u32(squares, cell * 3);
        sums[at + 1] = f64(sums, at + 1) + count * u32(squares, cell * 3 + 1);
        sums[at + 2] = f64(sums, at + 2) + count * u32(squares, cell * 3 + 2);
        sums[at + 3] = f64(sums, at + 3) + count;
      }
    }
  }
  const words = new Uint32Array(columns * rows);
  for (let field = 0; field < words.length; field++) {
    const cells = f64(sums, field * 4 + 3);
    let word = 0xff;
    for (let channel = 2; channel >= 0; channel--) word = (word << 8) | Math.round(Math.sqrt(f64(sums, field * 4 + channel) / cells));
    words[field] = word;
  }
  return { columns, rows, words };
}
