import type { PlainCode } from '../../base/code/plain-code.ts';
import { Int, type IntVariable } from '../../base/code/values.ts';
import { CellCode } from './cell-code.ts';
import { type MapLists, PAD } from './map-names.ts';

/** How far from its place in the row above a cell is looked for. */
const TRIES = [0, 1, -1, 2, -2];

/** Writes how the runs of a row are made of its events. */
export class RunCode {
  private readonly code: PlainCode;
  private readonly lists: MapLists;
  private readonly row: { count: IntVariable; above: IntVariable; lefts: IntVariable; run: IntVariable };
  private readonly cells: CellCode;
  /** The cell of a run, and of the one after it. */
  private readonly cell: IntVariable;
  private readonly next: IntVariable;
  /** Events before this place, and those of the row above; whether covers agree there. */
  private readonly at: IntVariable;
  private readonly up: IntVariable;
  private readonly agree: IntVariable;

  /** @param row events of a row, of the row above and left of the sheet; runs so far; cells so far, and words of their covers */
  constructor(code: PlainCode, lists: MapLists, row: RunCode['row'] & { cells: IntVariable; words: number }) {
    this.code = code;
    this.lists = lists;
    this.row = row;
    [this.cell, this.next, this.at, this.up, this.agree] = code.ints();
    this.cells = new CellCode(code, lists, { cell: this.cell, next: this.next, cells: row.cells, words: row.words });
  }

  write(): void {
    const { code, lists, cell, next, at, up } = this;
    const { count, lefts, run } = this.row;
    const areaMm2 = lists.reals('areaMm2');
    const [fromMm, toMm] = [code.real(0), code.real()];
    const rowHeightMm = lists.reals('sheet').at(1);
    code.set(cell, 0);
    code.set(next, 0);
    code.when(lefts.above(0), () => this.cells.lookUp(lists.ints('left'), [Int.of(0), lefts]));
    code.set(cell, next);
    code.put(lists.ints('cells'), PAD, cell);
    code.set(up, 0);
    this.place();
    code.set(at, 0);
    code.during(at.above(-1), () => {
      code.set(toMm, lists.reals('x').at(at));
      code.put(lists.ints('runCell'), run, cell);
      code.put(lists.reals('runEndMm'), run, toMm);
      code.add(run, 1);
      code.put(areaMm2, cell, areaMm2.at(cell).plus(toMm.minus(fromMm).times(rowHeightMm)));
      code.set(fromMm, toMm);
      code.when(
        at.below(count),
        () => {
          this.goOn(toMm);
          // A run of the cell before it is that run going on (two edges that cancelled out).
          code.set(run, run.minus(next.is(cell)));
          code.set(cell, next);
        },
        () => code.set(at, -1),
      );
    });
    for (let i = 1; i <= PAD; i++) code.put(lists.ints('cells'), count.plus(PAD + i), -1);
  }

  /** Passes the events of a place, and finds the cell beyond them. */
  private goOn(toMm: ReturnType<PlainCode['real']>): void {
    const { code, lists, next, at, up, agree } = this;
    const bit = lists.ints('bit');
    const first = code.int(at);
    code.repeat(
      () => {
        code.set(agree, agree.and(lists.ints('aboveBit').at(up).is(bit.at(at))));
        code.add(up, up.below(this.row.above));
        code.add(at, 1);
        code.put(lists.ints('cells'), at.plus(PAD), -1);
      },
      () => lists.reals('x').at(at).is(toMm),
    );
    code.set(next, lists.ints('aboveCells').at(up.plus(PAD)));
    code.when(code.either(agree.not(), next.below(0)), () => {
      this.cells.lookUp(bit, [first, at]);
      code.when(agree.not(), () => this.place());
    });
    code.put(lists.ints('cells'), at.plus(PAD), next);
  }

  /** Looks whether the row above has the cell near its place. */
  private place(from = 0): void {
    const { code, up, agree } = this;
    const step = TRIES[from];
    if (step === undefined) {
      code.set(agree, 0);
      return;
    }
    code.when(
      this.lists
        .ints('aboveCells')
        .at(up.plus(PAD + step))
        .is(this.next),
      () => {
        code.add(up, step);
        code.set(agree, 1);
      },
      () => this.place(from + 1),
    );
  }
}
