import { f64 } from '../base/at.ts';

/** Side of the squares in which edges are looked for, mm: a few edges of a drawing lie in each. */
const SQUARE_MM = 5;

/** Squares are numbered row by row; no outline spans as many in a row. */
const SQUARES_A_ROW = 1 << 16;

/** Edges of an area, to be found by where they lie. */
export class EdgeGrid {
  /** x0, y0, x1, y1 of each edge, in the direction of its ring, mm. */
  readonly edges: Float64Array;
  private readonly squares = new Map<number, number[]>();

  /** @param rings flat, mm */
  constructor(rings: readonly Float64Array[]) {
    this.edges = new Float64Array(rings.reduce((sum, ring) => sum + ring.length, 0) * 2);
    let at = 0;
    for (const ring of rings) {
      for (let i = 0; i + 1 < ring.length; i += 2, at += 4) {
        const next = (i + 2) % ring.length;
        const [x, y, toX, toY] = [f64(ring, i), f64(ring, i + 1), f64(ring, next), f64(ring, next + 1)];
        this.edges.set([x, y, toX, toY], at);
        for (const square of squaresOf({ x, y, toX, toY }, 0)) {
          const there = this.squares.get(square);
          if (there === undefined) this.squares.set(square, [at]);
          else there.push(at);
        }
      }
    }
  }

  /**
   * Where in `edges` those begin that lie in squares near an edge, each once.
   * @param spend told how many were looked at, and squares
   */
  near(edge: Span, marginMm: number, spend: (edges: number) => void = () => {}): Iterable<number> {
    const found = new Set<number>();
    let looked = 0;
    for (const square of squaresOf(edge, marginMm)) {
      const there = this.squares.get(square) ?? [];
      looked += 1 + there.length;
      for (const at of there) found.add(at);
    }
    spend(looked);
    return found;
  }
}

/** From where to where an edge goes, mm. */
interface Span {
  x: number;
  y: number;
  toX: number;
  toY: number;
}

/** The squares that the box of an edge lies in, and a margin round it. */
function* squaresOf({ x, y, toX, toY }: Span, marginMm: number): Generator<number> {
  const low = (a: number, b: number): number => Math.floor((Math.min(a, b) - marginMm) / SQUARE_MM);
  const high = (a: number, b: number): number => Math.floor((Math.max(a, b) + marginMm) / SQUARE_MM);
  for (let row = low(y, toY); row <= high(y, toY); row++) {
    for (let column = low(x, toX); column <= high(x, toX); column++) yield row * SQUARES_A_ROW + column;
  }
}
