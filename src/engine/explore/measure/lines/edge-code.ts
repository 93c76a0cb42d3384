import type { PlainCode } from '../../../base/code/plain-code.ts';
import type { Int, IntVariable, RealVariable } from '../../../base/code/values.ts';
import { type EdgeLists, MANY, PARTED } from './edge-names.ts';
import { PairCode } from './pair-code.ts';
import { writeMomentCode, writeSizeCode } from './size-code.ts';

/** Puts the function down that finds what all prints of one map share: the lengths of edges, cells by size, moments. */
export function writeFigureCode(code: PlainCode, lists: EdgeLists): void {
  new EdgeCode(code, lists).write();
  writeMomentCode(code, lists);
  writeSizeCode(code, lists);
}

/** Step by step what `EdgeWalk` does, which says why. */
class EdgeCode {
  private readonly code: PlainCode;
  private readonly lists: EdgeLists;
  private readonly pairs: PairCode;
  private readonly rowMm: RealVariable;
  private readonly halfMm: RealVariable;
  private readonly top: IntVariable;
  private readonly mid: IntVariable;
  private readonly end: IntVariable;
  private readonly from: IntVariable;
  private readonly near: IntVariable;
  private readonly a: IntVariable;
  private readonly b: IntVariable;
  private readonly openA: IntVariable;
  private readonly openB: IntVariable;
  private readonly met: IntVariable;

  constructor(code: PlainCode, lists: EdgeLists) {
    this.code = code;
    this.lists = lists;
    this.pairs = new PairCode(code, lists);
    this.rowMm = code.real(lists.reals('sheet').at(0));
    this.halfMm = code.real(this.rowMm.over(2));
    [this.top, this.mid, this.end, this.from] = code.ints();
    [this.near, this.met] = code.ints();
    [this.a, this.b, this.openA, this.openB] = code.ints();
  }

  write(): void {
    const { code, lists, top, mid, end, pairs } = this;
    const starts = lists.ints('rowStart');
    const last = lists.int('rows').minus(1);
    const [run, row, stop] = code.ints();
    code.set(stop, starts.at(1).minus(1));
    code.upTo(run, stop, () => this.begin(run));
    code.upTo(row, last, () => {
      code.set(top, starts.at(row));
      code.set(mid, starts.at(row, 1));
      code.set(end, starts.at(row, 2));
      this.writeRow();
    });
    code.set(run, starts.at(last));
    code.set(stop, starts.at(last, 1).minus(1));
    code.upTo(run, stop, () => pairs.add(lists.ints('edgeOf').at(run), this.halfMm));
    pairs.sumUp();
  }

  private writeRow(): void {
    const { code, a, b, openA, openB, met, mid, end, pairs } = this;
    const [runEndMm, runCell, edgeOf] = [this.lists.reals('runEndMm'), this.lists.ints('runCell'), this.lists.ints('edgeOf')];
    const [fromMm, toMm, endA, endB] = [code.real(0), code.real(), code.real(), code.real()];
    const [beyondA, beyondB, cellA, cellB, note] = code.ints();
    code.set(a, this.top);
    code.set(b, mid);
    code.set(openA, a);
    code.set(openB, b);
    code.set(this.from, b);
    code.set(this.near, b);
    code.set(met, 0);
    code.during(a.below(mid), () => {
      code.set(endA, runEndMm.at(a));
      code.set(endB, runEndMm.at(b));
      code.set(toMm, endA.least(endB));
      code.when(toMm.above(fromMm), () => {
        code.set(cellA, runCell.at(a));
        code.set(cellB, runCell.at(b));
        code.when(
          cellA.is(cellB),
          () => {
            code.when(openA.below(a).or(openB.below(b)), () => this.close(a, b));
            this.goOn();
            code.set(endA, runEndMm.at(a));
            code.set(endB, runEndMm.at(b));
            code.set(toMm, endA.least(endB));
            code.set(openA, a);
            code.set(openB, b);
            code.set(met, 0);
          },
          () => {
            code.set(note, -1);
            code.when([a.below(mid.minus(1)), runCell.at(a, 1).is(cellB)], () => code.set(note, edgeOf.at(a)));
            code.when([note.below(0), this.top.below(a), runCell.at(a.minus(1)).is(cellB)], () => code.set(note, edgeOf.at(a.minus(1))));
            code.when(
              note.below(0),
              () => pairs.note(cellA, cellB, toMm.minus(fromMm)),
              () => pairs.add(note, toMm.minus(fromMm)),
            );
          },
        );
      });
      code.set(fromMm, toMm);
      code.set(beyondA, endA.atMost(toMm));
      code.set(beyondB, endB.atMost(toMm));
      code.set(met, met.or(beyondA.and(beyondB)));
      code.add(a, beyondA);
      code.add(b, beyondB);
    });
    this.close(mid.minus(1), end.minus(1));
  }

  private goOn(): void {
    const { code, lists, a, b, mid, end, from } = this;
    const [runEndMm, runCell, edgeOf] = [lists.reals('runEndMm'), lists.ints('runCell'), lists.ints('edgeOf')];
    const [atA, atB, across] = [code.real(), code.real(), code.real()];
    const [note, on, taken] = [code.int(), code.int(1), code.int(0)];
    const like = runCell.at(a, 1).is(runCell.at(b, 1));
    code.during([on, a.plus(1).below(mid), b.plus(1).below(end), like], () => {
      code.set(atA, runEndMm.at(a));
      code.set(atB, runEndMm.at(b));
      code.set(on, atA.atMost(runEndMm.at(b, 1)).and(atB.atMost(runEndMm.at(a, 1))));
      code.when([on, from.below(b)], () => {
        this.isTaken(taken, a, b);
        code.set(on, taken.not());
      });
      code.when(on, () => {
        code.set(note, edgeOf.at(a));
        code.put(edgeOf, b, note);
        code.set(across, atB.minus(atA));
        this.pairs.add(note, across.times(across).plus(this.rowMm.times(this.rowMm)).root());
        code.add(a, 1);
        code.add(b, 1);
        code.set(from, b);
      });
    });
  }

  /** @param endA and endB where the two rows agree again */
  private close(endA: Int, endB: Int): void {
    const { code, lists, openA, openB, pairs } = this;
    const edgeOf = lists.ints('edgeOf');
    code.when(
      this.met,
      () => this.closeMet(endA, endB),
      () => {
        code.upTo(openA, endA, () => pairs.add(edgeOf.at(openA), this.halfMm));
        code.upTo(openB, endB, () => this.begin(openB));
      },
    );
  }

  private closeMet(endA: Int, endB: Int): void {
    const { code, lists, openA, openB, from, pairs } = this;
    const [edgeOf, runEndMm] = [lists.ints('edgeOf'), lists.reals('runEndMm')];
    const [b, taken, across] = [code.int(openB), code.int(), code.real()];
    code.when(endA.minus(openA).times(endB.minus(from)).above(MANY), () => code.giveBack(PARTED));
    code.upTo(b, endB, () => code.put(edgeOf, b, -1));
    code.upTo(openA, endA, () => {
      this.firstLike(b, openA, endB);
      code.set(taken, 1);
      code.when([b.below(endB), ...this.touch(openA, b)], () => this.isTaken(taken, openA, b));
      code.when(
        taken.not(),
        () => {
          code.set(across, runEndMm.at(b).minus(runEndMm.at(openA)));
          code.put(edgeOf, b, edgeOf.at(openA));
          code.set(from, b.plus(1));
          pairs.add(edgeOf.at(openA), across.times(across).plus(this.rowMm.times(this.rowMm)).root().minus(across.size()));
        },
        () => pairs.add(edgeOf.at(openA), this.halfMm),
      );
    });
    code.upTo(openB, endB, () => code.when(edgeOf.at(openB).below(0), () => this.begin(openB)));
  }

  private firstLike(b: IntVariable, a: Int, endB: Int): void {
    const { code, mid, near, from } = this;
    const runEndMm = this.lists.reals('runEndMm');
    const atMm = code.real(runEndMm.at(a));
    const on = code.int(1);
    code.set(b, near);
    code.when(b.below(from), () => code.set(b, from));
    code.during([b.below(endB), runEndMm.at(b, 1).below(atMm)], () => code.add(b, 1));
    code.set(near, b);
    code.during([b.below(endB), on], () => {
      code.when(
        code.either(b.is(mid), runEndMm.at(b.minus(1)).atMost(atMm)),
        () =>
          code.when(
            this.isLike(a, b),
            () => code.set(on, 0),
            () => code.add(b, 1),
          ),
        () => code.set(b, endB),
      );
    });
  }

  private isTaken(taken: IntVariable, a: Int, b: Int): void {
    const { code } = this;
    const before = code.int(this.from);
    code.set(taken, 0);
    code.during([before.below(b), taken.not()], () => {
      code.set(taken, this.isLike(a, before));
      code.add(before, 1);
    });
  }

  private isLike(a: Int, b: Int): Int {
    const runCell = this.lists.ints('runCell');
    return runCell
      .at(a)
      .is(runCell.at(b))
      .and(runCell.at(a, 1).is(runCell.at(b, 1)));
  }

  private touch(a: Int, b: Int): Int[] {
    const { code, top, mid } = this;
    const runEndMm = this.lists.reals('runEndMm');
    const beginB = code.either(b.is(mid), runEndMm.at(b.minus(1)).atMost(runEndMm.at(a)));
    const beginA = code.either(a.is(top), runEndMm.at(a.minus(1)).atMost(runEndMm.at(b)));
    return [beginB, beginA, runEndMm.at(a).atMost(runEndMm.at(b, 1)), runEndMm.at(b).atMost(runEndMm.at(a, 1))];
  }

  private begin(run: Int): void {
    const { code, lists, pairs } = this;
    code.put(lists.ints('edgeOf'), run, pairs.notes);
    pairs.note(lists.ints('runCell').at(run), lists.ints('runCell').at(run, 1), this.halfMm);
  }
}
