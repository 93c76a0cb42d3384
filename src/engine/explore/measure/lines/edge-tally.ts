import { num } from '../../../base/at.ts';

/** How long the edges between each two cells are; the same for every colouring of a map. */
export interface EdgeLengths {
  /** Two cells, the lower number first, for each pair that meets. */
  cells: Uint32Array;
  /** One a pair, mm. */
  lengthMm: Float64Array;
}

/** Lengths of edges as they are noted. */
export class EdgeTally {
  private readonly notes: { low: number; high: number; lengthMm: number }[] = [];

  /** Notes a length of the edge between two cells, mm. @returns the number of this note */
  note(a: number, b: number, lengthMm: number): number {
    return this.notes.push({ low: Math.min(a, b), high: Math.max(a, b), lengthMm }) - 1;
  }

  /** Adds to a note's length, mm. */
  add(note: number, lengthMm: number): void {
    const noted = this.notes[note];
    if (noted !== undefined) noted.lengthMm += lengthMm;
  }

  /** What was noted, summed up by pairs of cells: by their lower numbers, then in the order in which they first met. */
  lengths(): EdgeLengths {
    const cells: number[] = [];
    const sums: number[] = [];
    const pairs = new Map<number, number>();
    for (const { low, high, lengthMm } of this.notes.toSorted((one, other) => one.low - other.low)) {
      const name = low * 2 ** 20 + high;
      const pair = pairs.get(name) ?? sums.length;
      if (pair === sums.length) {
        pairs.set(name, pair);
        cells.push(low, high);
        sums.push(0);
      }
      sums[pair] = num(sums, pair) + lengthMm;
    }
    return { cells: Uint32Array.from(cells), lengthMm: Float64Array.from(sums) };
  }
}
