/** Places on a lattice, of which each is taken once. */
export class FreePlaces {
  private readonly columns: number;
  private readonly rows: number;
  private readonly taken: Uint8Array;
  /** How far off a search last ended for a place; those nearer are all taken. */
  private readonly reached = new Map<number, number>();

  constructor(columns: number, rows: number) {
    this.columns = columns;
    this.rows = rows;
    this.taken = new Uint8Array(columns * rows);
  }

  /**
   * Takes the free place nearest to a point of the lattice.
   * @returns its number, row by row; −1 when none is free
   */
  takeNearest(column: number, row: number): number {
    const { columns } = this;
    const atColumn = Math.round(column);
    const atRow = Math.round(row);
    const start = atRow * columns + atColumn;
    let best = -1;
    let bestAway = Infinity;
    const most = Math.max(columns, this.rows);
    for (let ring = this.reached.get(start) ?? 0; ring <= most; ring++) {
      // Anything in a later ring is at least so far away.
      if (best >= 0 && (ring - 0.5) ** 2 > bestAway) break;
      for (const place of this.freeOnRing(atColumn, atRow, ring)) {
        const away = ((place % columns) - column) ** 2 + (Math.floor(place / columns) - row) ** 2;
        if (away < bestAway) {
          bestAway = away;
          best = place;
        }
      }
      if (best < 0) this.reached.set(start, ring);
    }
    if (best >= 0) this.taken[best] = 1;
    return best;
  }

  /** The free places that are so many steps off, straight or aslant. */
  private *freeOnRing(atColumn: number, atRow: number, ring: number): Generator<number> {
    const { columns, rows, taken } = this;
    for (let r = Math.max(0, atRow - ring); r <= Math.min(rows - 1, atRow + ring); r++) {
      const step = Math.abs(r - atRow) === ring ? 1 : Math.max(1, ring * 2);
      for (let c = atColumn - ring; c <= atColumn + ring; c += step) {
        if (c >= 0 && c < columns && taken[r * columns + c] === 0) yield r * columns + c;
      }
    }
  }
}
