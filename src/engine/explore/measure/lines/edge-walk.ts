import { f64, i32, u32 } from '../../../base/at.ts';
import type { CellMap } from '../../../stack/types.ts';
import { type EdgeLengths, EdgeTally } from './edge-tally.ts';

/** The lengths of all edges of a map by plain code, see `edgeLengths`. */
export function walkEdges(map: CellMap): EdgeLengths {
  const walk = new EdgeWalk(map);
  walk.walk();
  return walk.tally.lengths();
}

/** One walk over the rows of a map, each with the row below. */
class EdgeWalk {
  readonly tally = new EdgeTally();
  private readonly map: CellMap;
  /** The note of the edge at the right end of each run; −1 while it is not known. */
  private readonly edgeOf: Int32Array;
  private readonly rowMm: number;
  /** The first run of a row, of the one below, and beyond that. */
  private top = 0;
  private mid = 0;
  private end = 0;
  /** The first edge of the row below that may go on from the row; what lies before is not asked for again. */
  private from = 0;
  /** Whether an edge of the row and one of the row below meet at one place since the rows parted. */
  private met = false;

  constructor(map: CellMap) {
    this.map = map;
    this.rowMm = map.heightMm / map.rows;
    this.edgeOf = new Int32Array(u32(map.rowStart, map.rows));
  }

  walk(): void {
    const { rows, rowStart } = this.map;
    for (let run = 0; run + 1 < u32(rowStart, 1); run++) this.begin(run);
    for (let row = 0; row + 1 < rows; row++) {
      this.top = u32(rowStart, row);
      this.mid = u32(rowStart, row + 1);
      this.end = u32(rowStart, row + 2);
      this.walkRow();
    }
    for (let run = u32(rowStart, rows - 1); run + 1 < u32(rowStart, rows); run++) this.tally.add(i32(this.edgeOf, run), this.rowMm / 2);
  }

  /** A row and the next: stretches where their cells differ, and edges. */
  private walkRow(): void {
    const { runEndMm, runCell } = this.map;
    const [lastA, lastB] = [this.mid - 1, this.end - 1];
    let [a, b, fromMm] = [this.top, this.mid, 0];
    // Edges from here on are open: the two rows have parted.
    let [openA, openB] = [a, b];
    this.from = b;
    this.met = false;
    while (a <= lastA) {
      let toMm = Math.min(f64(runEndMm, a), f64(runEndMm, b));
      if (toMm > fromMm) {
        if (runCell[a] === runCell[b]) {
          if (openA < a || openB < b) this.close([openA, a], [openB, b]);
          const same = this.goOn(a, b);
          if (same > 0) {
            a += same;
            b += same;
            toMm = Math.min(f64(runEndMm, a), f64(runEndMm, b));
          }
          openA = a;
          openB = b;
          this.met = false;
        } else this.level([a, b], toMm - fromMm);
      }
      fromMm = toMm;
      const beyondA = f64(runEndMm, a) <= toMm;
      const beyondB = f64(runEndMm, b) <= toMm;
      if (beyondA && beyondB) this.met = true;
      if (beyondA) a++;
      if (beyondB) b++;
    }
    this.close([openA, lastA], [openB, lastB]);
  }

  /** A stretch where a run lies over one of another cell. */
  private level([a, b]: readonly [number, number], lengthMm: number): void {
    const { runCell } = this.map;
    // Mostly an edge of the row has passed by, which is added to.
    if (a + 1 < this.mid && runCell[a + 1] === runCell[b]) this.tally.add(i32(this.edgeOf, a), lengthMm);
    else if (this.top < a && runCell[a - 1] === runCell[b]) this.tally.add(i32(this.edgeOf, a - 1), lengthMm);
    else this.tally.note(u32(runCell, a), u32(runCell, b), lengthMm);
  }

  /** Edges that go on one after another, from two runs of the same cell on. @returns how many */
  private goOn(a: number, b: number): number {
    const { runEndMm, runCell } = this.map;
    const first = a;
    const rowRow = this.rowMm * this.rowMm;
    for (; a + 1 < this.mid && b + 1 < this.end && runCell[a + 1] === runCell[b + 1]; a++, b++) {
      const atA = f64(runEndMm, a);
      const atB = f64(runEndMm, b);
      if (atA > f64(runEndMm, b + 1) || atB > f64(runEndMm, a + 1)) break;
      if (this.isTaken(a, b)) break;
      const note = i32(this.edgeOf, a);
      this.edgeOf[b] = note;
      this.from = b + 1;
      this.tally.add(note, Math.sqrt((atB - atA) * (atB - atA) + rowRow));
    }
    return a - first;
  }

  /** Edges between places where both rows agree: those that go on though others came between, and those that end or begin. */
  private close([a, endA]: readonly [number, number], [beginB, endB]: readonly [number, number]): void {
    for (let b = beginB; b < endB; b++) this.edgeOf[b] = -1;
    // Runs of the same cell that lay over each other would not have parted: only those that meet at a place may touch.
    if (this.met) this.closeMet([a, endA], endB);
    else for (; a < endA; a++) this.tally.add(i32(this.edgeOf, a), this.rowMm / 2);
    for (let b = beginB; b < endB; b++) if (i32(this.edgeOf, b) < 0) this.begin(b);
  }

  /** Whether another of its like comes before an edge of the row below: the first is the one that would go on. */
  private isTaken(a: number, b: number): boolean {
    for (let before = this.from; before < b; before++) if (this.isLike(a, before)) return true;
    return false;
  }

  private isLike(a: number, b: number): boolean {
    const { runCell } = this.map;
    return runCell[a] === runCell[b] && runCell[a + 1] === runCell[b + 1];
  }

  /** Whether the runs on both sides touch their like: what slants further than its neighbours let it is another edge. */
  private touch(a: number, b: number): boolean {
    const { runEndMm } = this.map;
    const fromA = a === this.top ? 0 : f64(runEndMm, a - 1);
    const fromB = b === this.mid ? 0 : f64(runEndMm, b - 1);
    if (fromB > f64(runEndMm, a) || fromA > f64(runEndMm, b)) return false;
    return f64(runEndMm, a) <= f64(runEndMm, b + 1) && f64(runEndMm, b) <= f64(runEndMm, a + 1);
  }

  /** An edge goes on; what was taken as level of it is taken back. */
  private slant(a: number, b: number): void {
    const { runEndMm } = this.map;
    const across = f64(runEndMm, b) - f64(runEndMm, a);
    this.edgeOf[b] = i32(this.edgeOf, a);
    this.from = b + 1;
    this.tally.add(i32(this.edgeOf, a), Math.sqrt(across * across + this.rowMm * this.rowMm) - Math.abs(across));
  }

  /** An edge that begins at its row. */
  private begin(run: number): void {
    const { runCell } = this.map;
    this.edgeOf[run] = this.tally.note(u32(runCell, run), u32(runCell, run + 1), this.rowMm / 2);
  }

  /** Each goes on in the first of its like that is left, if they touch. */
  private closeMet([a, endA]: readonly [number, number], endB: number): void {
    const { runCell } = this.map;
    const nameOf = (run: number): number => u32(runCell, run) * 2 ** 20 + u32(runCell, run + 1);
    const like = new Map<number, number[]>();
    for (let b = this.from; b < endB; b++) {
      const list = like.get(nameOf(b));
      if (list === undefined) like.set(nameOf(b), [b]);
      else list.push(b);
    }
    const passed = new Map<number, number>();
    for (; a < endA; a++) {
      const name = nameOf(a);
      const list = like.get(name) ?? [];
      let at = passed.get(name) ?? 0;
      while (at < list.length && (list[at] ?? 0) < this.from) at++;
      passed.set(name, at);
      const b = list[at];
      if (b !== undefined && this.touch(a, b)) this.slant(a, b);
      else this.tally.add(i32(this.edgeOf, a), this.rowMm / 2);
    }
  }
}
