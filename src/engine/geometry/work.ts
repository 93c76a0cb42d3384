import type { Path64, Paths64 } from 'clipper2-ts';
import { entryAt, f64 } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { say } from '../words/en/geometry/geometry.ts';

/** Steps that one step of a kind takes, measured on stripes, stars, dots and overlaps on one line. */
const A_SCAN = 0.5;
const A_CROSSING = 25;
const A_LEVEL_PAIR = 3;
/** Steps that a corner takes which crosses nothing: it is put in order among some dozens. */
const A_CORNER = 10;

/** Booleans of fewer corners are done first and counted after: the worst of them is over within a second. */
const FEW_CORNERS = 1000;

/** Work of one boolean, about ten seconds: a screen of thirty drawings of 10,000 corners has two thirds of it. */
const MOST_AT_ONCE = 100_000_000;

/** Columns in which edges are compared. */
const MOST_COLUMNS = 4096;

/** Crossings of one boolean; with as many it fills some 500 MB. */
const MOST_CROSSINGS = 400_000;

/**
 * How much work booleans may be, counted before they begin: the same outlines are refused on every
 * machine, fast or slow. A step is about a tenth of a microsecond.
 */
export class WorkBudget {
  private left: number;

  /** @param steps of all booleans together; of a single one when left out */
  constructor(steps = MOST_AT_ONCE) {
    this.left = steps;
  }

  /**
   * Does a boolean of these paths, within what is left and what one boolean may be.
   * @throws EngineError 'geometry.too-much-work'
   */
  run(paths: Paths64, boolean: () => Paths64): Paths64 {
    const corners = cornersOf(paths);
    if (corners > FEW_CORNERS) {
      const one = new WorkBudget(Math.min(this.left, MOST_AT_ONCE));
      const before = one.left;
      one.spend(paths);
      this.left -= before - one.left;
      return boolean();
    }
    const found = boolean();
    this.take(corners * A_CORNER + cornersOf(found) * A_CROSSING);
    return found;
  }

  /**
   * Takes off what a boolean of these paths will cost.
   * @throws EngineError 'geometry.too-much-work' when it is more than is left
   */
  spend(paths: Paths64): void {
    const edges = new Edges(paths);
    let crossings = 0;
    this.take(edges.beams());
    this.take(edges.levelPairs() * A_LEVEL_PAIR);
    edges.meet(
      (scans) => this.take(scans * A_SCAN),
      () => {
        if (++crossings > MOST_CROSSINGS) throw tooMuch();
        this.take(A_CROSSING);
      },
    );
  }

  private take(steps: number): void {
    this.left -= steps;
    if (this.left < 0) throw tooMuch();
  }
}

function tooMuch(): EngineError {
  return new EngineError('geometry.too-much-work', say.outlinesHaveTooMany);
}

function cornersOf(paths: Paths64): number {
  return paths.reduce((sum, path) => sum + path.length, 0);
}

/** Edges of paths, upper end first: x0, y0, x1, y1 each. */
class Edges {
  private readonly table: Float64Array;
  private readonly count: number;

  constructor(paths: Paths64) {
    let count = 0;
    for (const path of paths) count += path.length;
    this.count = count;
    this.table = new Float64Array(count * 4);
    let at = 0;
    for (const path of paths) {
      path.forEach((p, i) => {
        const q = entryAt(path, i + 1 === path.length ? 0 : i + 1);
        this.put(at, p.y <= q.y ? p : q, p.y <= q.y ? q : p);
        at += 4;
      });
    }
  }

  /** Heights of corners that the edges pass, all together: at each, all edges there are put in order. */
  beams(): number {
    const heights = Float64Array.from({ length: this.count }, (_, i) => f64(this.table, i * 4 + 1)).sort();
    let sum = 0;
    let distinct = 0;
    const rank = new Map<number, number>();
    for (const y of heights) if (!rank.has(y)) rank.set(y, distinct++);
    for (let i = 0; i < this.table.length; i += 4) {
      sum += (rank.get(f64(this.table, i + 3)) ?? distinct) - (rank.get(f64(this.table, i + 1)) ?? 0);
    }
    return sum;
  }

  /** Pairs of level edges that lie over each other. */
  levelPairs(): number {
    const levels = new Map<number, [number, number][]>();
    for (let i = 0; i < this.table.length; i += 4) {
      const y = f64(this.table, i + 1);
      if (y !== f64(this.table, i + 3)) continue;
      const x0 = f64(this.table, i);
      const x1 = f64(this.table, i + 2);
      const there = levels.get(y);
      const edge: [number, number] = [Math.min(x0, x1), Math.max(x0, x1)];
      if (there === undefined) levels.set(y, [edge]);
      else there.push(edge);
    }
    let pairs = 0;
    for (const level of levels.values()) {
      level.sort((a, b) => a[0] - b[0]);
      const ends = level.map(([, end]) => end).sort((a, b) => a - b);
      // Each edge meets those that began before it and have not ended.
      let ended = 0;
      level.forEach(([start], i) => {
        while (ended < ends.length && (ends[ended] ?? Infinity) <= start) ended++;
        pairs += Math.max(0, i - ended);
      });
    }
    return pairs;
  }

  /**
   * Goes down the heights with the edges that are there, column by column, so that edges side by side
   * are hardly ever compared.
   * @param scanned told how many edges a new one is compared with
   * @param crossed told of each pair that crosses
   */
  meet(scanned: (edges: number) => void, crossed: () => void): void {
    const { table } = this;
    const order = Int32Array.from({ length: this.count }, (_, i) => i * 4).sort((a, b) => f64(table, a + 1) - f64(table, b + 1));
    const columns = new Columns(table);
    const there: number[][] = Array.from({ length: columns.count }, () => []);
    for (const edge of order) {
      const [first, last] = [columns.firstOf(edge), columns.lastOf(edge)];
      for (let column = first; column <= last; column++) {
        const others = entryAt(there, column);
        scanned(others.length);
        this.compare(edge, others, (other) => {
          // A pair that shares several columns counts in the first of them.
          if (Math.max(first, columns.firstOf(other)) === column && cross(table, edge, other)) crossed();
        });
        others.push(edge);
      }
    }
  }

  /** Forgets the edges that have ended above a new one, and tells of those that lie beside some of it. */
  private compare(edge: number, others: number[], beside: (other: number) => void): void {
    const { table } = this;
    const y = f64(table, edge + 1);
    const left = Math.min(f64(table, edge), f64(table, edge + 2));
    const right = Math.max(f64(table, edge), f64(table, edge + 2));
    let kept = 0;
    for (const other of others) {
      if (f64(table, other + 3) <= y) continue;
      others[kept++] = other;
      const x0 = f64(table, other);
      const x1 = f64(table, other + 2);
      if ((x0 >= left || x1 >= left) && (x0 <= right || x1 <= right)) beside(other);
    }
    others.length = kept;
  }

  private put(at: number, upper: Path64[number], lower: Path64[number]): void {
    this.table[at] = upper.x;
    this.table[at + 1] = upper.y;
    this.table[at + 2] = lower.x;
    this.table[at + 3] = lower.y;
  }
}

/** Columns of equal width, about as wide as an edge is, so that an edge lies in one or two of them. */
class Columns {
  readonly count: number;
  private readonly table: Float64Array;
  private readonly from: number;
  private readonly width: number;

  constructor(table: Float64Array) {
    this.table = table;
    let [from, to, wide] = [Infinity, -Infinity, 0];
    for (let i = 0; i < table.length; i += 4) {
      const [x0, x1] = [f64(table, i), f64(table, i + 2)];
      from = Math.min(from, x0, x1);
      to = Math.max(to, x0, x1);
      wide += Math.abs(x1 - x0);
    }
    const edges = table.length / 4;
    const share = wide > 0 ? ((to - from) * edges) / wide : edges;
    this.count = Math.max(1, Math.min(MOST_COLUMNS, Math.floor(share)));
    this.from = from;
    this.width = (to - from) / this.count;
  }

  /** The column in which an edge begins at its left. */
  firstOf(edge: number): number {
    return this.at(Math.min(f64(this.table, edge), f64(this.table, edge + 2)));
  }

  lastOf(edge: number): number {
    return this.at(Math.max(f64(this.table, edge), f64(this.table, edge + 2)));
  }

  private at(x: number): number {
    return this.width > 0 ? Math.min(this.count - 1, Math.floor((x - this.from) / this.width)) : 0;
  }
}

/** Whether two edges of the table cross; i and j are where they begin there. */
function cross(table: Float64Array, i: number, j: number): boolean {
  return sideOf(table, i, j) * sideOf(table, i, j + 2) < 0 && sideOf(table, j, i) * sideOf(table, j, i + 2) < 0;
}

/** On which side of an edge a point of the table lies: above 0, below 0, or 0 on its line. */
function sideOf(table: Float64Array, edge: number, point: number): number {
  const ax = f64(table, edge);
  const ay = f64(table, edge + 1);
  return (f64(table, edge + 2) - ax) * (f64(table, point + 1) - ay) - (f64(table, edge + 3) - ay) * (f64(table, point) - ax);
}
