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
  colours: ArrayLike<number>,
  times: number,
): SmallPicture {
  const columns = Math.max(1, Math.round(map.columns / times));
  const rows = Math.max(1, Math.round(map.rows / times));
  const squares = new Float64Array(colours.length * 3);
  for (let i = 0; i < colours.length; i++) {
    for (let channel = 0; channel < 3; channel++) squares[i * 3 + channel] = ((colours[i]! >> (8 * channel)) & 255) ** 2;
  }
  const fieldOf = Uint32Array.from({ length: map.columns }, (_, column) => Math.floor((column * columns) / map.columns));
  const sums = new Float64Array(columns * rows * 4);
  for (let row = 0, at = 0; row < map.rows; row++) {
    const band = Math.floor((row * rows) / map.rows) * columns;
    for (let column = 0; column < map.columns; column++, at++) {
      const field = (band + fieldOf[column]!) * 4;
      const cell = map.cells[at]! * 3;
      sums[field]! += squares[cell]!;
      sums[field + 1]! += squares[cell + 1]!;
      sums[field + 2]! += squares[cell + 2]!;
      sums[field + 3]!++;
    }
  }
  const words = new Uint32Array(columns * rows);
  for (let field = 0; field < words.length; field++) {
    const code = (channel: number): number => Math.round(Math.sqrt(sums[field * 4 + channel]! / sums[field * 4 + 3]!));
    words[field] = (0xff000000 | (code(2) << 16) | (code(1) << 8) | code(0)) >>> 0;
  }
  return { columns, rows, words };
}
