import { num } from '../../../base/at.ts';

/** How long the edges between each two cells are; the same for every colouring of a map. */
export interface EdgeLengths {
  /** Two cells, the lower number first, for each pair that meets. */
  cells: Uint32Array;
  /** One a pair, mm. */
  lengthMm: Float64Array;
}

/** Pairs of cells in the order in which they first met, each with a length. */
export class EdgeTally {
  private readonly cells: number[] = [];
  private readonly lengthMm: number[] = [];
  private readonly pairs = new Map<number, number>();

  /** Number of a pair, whichever cell is named first, made when new. */
  pairOf(a: number, b: number): number {
    const [low, high] = a < b ? [a, b] : [b, a];
    const name = low * 2 ** 20 + high;
    const pair = this.pairs.get(name) ?? this.pairs.size;
    if (pair === this.pairs.size) {
      this.pairs.set(name, pair);
      this.cells.push(low, high);
      this.lengthMm.push(0);
    }
    return pair;
  }

  /** Adds to a pair's length, mm. */
  add(pair: number, lengthMm: number): void {
    this.lengthMm[pair] = num(this.lengthMm, pair) + lengthMm;
  }

  /** What was added up. */
  lengths(): EdgeLengths {
    return { cells: Uint32Array.from(this.cells), lengthMm: Float64Array.from(this.lengthMm) };
  }
}
