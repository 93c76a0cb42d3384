import type { PlainCode } from '../../base/code/plain-code.ts';
import { Int, Ints, type IntVariable, type Real, type RealVariable } from '../../base/code/values.ts';
import { type MapLists as Lists, MESSY } from './map-names.ts';
import { RunCode } from './run-code.ts';

/** So many events may be passed in a row for each that there is, and so many besides. */
const PASSES = 8;
const MORE_PASSES = 1000;

/** The variables of a row. */
interface Row {
  row: IntVariable;
  /** Events of this row, of the row above, new ones; and those at or before the sheet's left edge. */
  count: IntVariable;
  above: IntVariable;
  news: IntVariable;
  lefts: IntVariable;
  here: IntVariable;
  passes: IntVariable;
  run: IntVariable;
  cells: IntVariable;
  widthMm: RealVariable;
}

/**
 * The function that builds a cell map, see `CellMapBuilder`. From row to row events hardly change their order, and what is
 * covered as in the row above and turned over as there is the same cell: so a row begins with the order of the row above,
 * and cells are looked up by their covers only where the two part.
 * @param words of a cover
 */
export function writeMapCode(code: PlainCode, known: Lists, words: number): void {
  // Lists of a row and of the row above change places.
  const places = (['bit', 'aboveBit', 'cells', 'aboveCells'] as const).map((name) => code.int(known.ints(name).address));
  const [bit, aboveBit, cells, aboveCells] = places as [IntVariable, IntVariable, IntVariable, IntVariable];
  const moving = new Map<string, Ints>(Object.entries({ bit, aboveBit, cells, aboveCells }).map(([name, at]) => [name, new Ints(at)]));
  const lists: Lists = { ...known, ints: (name) => moving.get(name) ?? known.ints(name) };
  const row: Row = {
    row: code.int(),
    count: code.int(),
    above: code.int(),
    news: code.int(),
    lefts: code.int(),
    here: code.int(),
    passes: code.int(),
    run: code.int(),
    cells: code.int(1),
    widthMm: code.real(lists.reals('sheet').at(0)),
  };
  const swapped = code.int();
  const swap = (a: IntVariable, b: IntVariable): void => {
    code.set(swapped, a);
    code.set(a, b);
    code.set(b, swapped);
  };
  const runs = new RunCode(code, lists, { ...row, words });
  code.repeat(
    () => {
      code.put(lists.ints('rowStart'), row.row, row.run);
      swap(bit, aboveBit);
      swap(cells, aboveCells);
      code.set(row.above, row.count);
      gather(code, lists, row);
      order(code, lists, row);
      letIn(code, lists, row);
      code.put(lists.reals('x'), row.count, row.widthMm);
      code.put(lists.ints('bit'), row.count, -1);
      runs.write();
      code.add(row.row, 1);
    },
    () => row.row.below(lists.int('rows')),
  );
  code.put(lists.ints('rowStart'), row.row, row.run);
  code.put(lists.ints('found'), 0, row.cells);
}

/** Finds the events of each screen: those of screens with as many as above stay where they are, others become new ones. */
function gather(code: PlainCode, lists: Lists, { row, news, lefts, here, passes, above, widthMm }: Row): void {
  const [xMm, starts, list] = [lists.reals('xMm'), lists.ints('starts'), lists.ints('here')];
  const [bit, own, at, end, stay, i] = code.ints();
  const dxMm = code.real();
  code.set(bit, lists.ints('firstIn').at(row));
  code.during(bit.above(-1), () => {
    code.put(list, here, bit);
    code.add(here, 1);
    code.set(bit, lists.ints('nextIn').at(bit));
  });
  code.set(news, 0);
  code.set(lefts, 0);
  code.set(stay, 0);
  code.set(passes, above.times(PASSES).plus(MORE_PASSES));
  code.set(i, 0);
  code.upTo(i, here, () => {
    code.set(bit, list.at(i));
    code.set(own, row.minus(lists.ints('firstRow').at(bit)));
    code.when(
      own.below(lists.ints('rowCount').at(bit)),
      () => {
        code.put(list, stay, bit);
        code.add(stay, 1);
        code.set(dxMm, lists.reals('dxMm').at(bit));
        code.set(own, own.plus(lists.ints('startAt').at(bit)));
        code.set(at, lists.ints('xAt').at(bit).plus(starts.at(own)));
        code.set(end, lists.ints('xAt').at(bit).plus(starts.at(own, 1)));
        code.during([at.below(end), xMm.at(at).plus(dxMm).atMost(0)], () => {
          code.put(lists.ints('left'), lefts, bit);
          code.add(lefts, 1);
          code.add(at, 1);
        });
        code.during([at.below(end), xMm.at(end.minus(1)).plus(dxMm).below(widthMm).not()], () => code.add(end, -1));
        code.when(
          lists.ints('had').at(bit).is(end.minus(at)),
          () => code.put(lists.ints('next'), bit, at),
          () => {
            code.put(lists.ints('had'), bit, end.minus(at));
            code.put(lists.ints('next'), bit, -1);
            code.upTo(at, end, () => {
              insert(code, [lists, passes], { x: 'newX', bit: 'newBit', count: news }, [xMm.at(at).plus(dxMm), bit]);
            });
          },
        );
      },
      () => code.put(lists.ints('next'), bit, -1),
    );
  });
  code.set(here, stay);
}

/** Puts the events that stay down in the order of the row above; what has passed others goes back. */
function order(code: PlainCode, lists: Lists, { count, above, passes }: Row): void {
  const [aboveBit, next] = [lists.ints('aboveBit'), lists.ints('next')];
  const [i, bit, at] = code.ints();
  code.set(count, 0);
  code.set(i, 0);
  code.upTo(i, above, () => {
    code.set(bit, aboveBit.at(i));
    code.set(at, next.at(bit));
    code.when(at.above(-1), () => {
      code.put(next, bit, at.plus(1));
      insert(code, [lists, passes], { x: 'x', bit: 'bit', count }, [lists.reals('xMm').at(at).plus(lists.reals('dxMm').at(bit)), bit]);
    });
  });
}

/** Adds an event to a list that is ascending. */
function insert(
  code: PlainCode,
  [lists, passes]: readonly [Lists, IntVariable],
  to: { x: 'x' | 'newX'; bit: 'bit' | 'newBit'; count: IntVariable },
  [xMm, bit]: readonly [Real, IntVariable],
): void {
  const [x, bits] = [lists.reals(to.x), lists.ints(to.bit)];
  const value = code.real(xMm);
  const at = code.int(to.count);
  const passed = (): Int[] => [at.above(0), value.below(x.at(at.minus(1)))];
  code.when(passed(), () => {
    code.repeat(() => {
      code.put(x, at, x.at(at.minus(1)));
      code.put(bits, at, bits.at(at.minus(1)));
      code.add(at, -1);
    }, passed);
    code.set(passes, passes.minus(to.count).plus(at));
    code.when(passes.below(0), () => code.giveBack(MESSY));
  });
  code.put(x, at, value);
  code.put(bits, at, bit);
  code.add(to.count, 1);
}

/** Merges the new events with the others, from the end. */
function letIn(code: PlainCode, lists: Lists, { count, news }: Row): void {
  const [x, bit, newX, newBit] = [lists.reals('x'), lists.ints('bit'), lists.reals('newX'), lists.ints('newBit')];
  const [from, to] = code.ints();
  code.set(from, count.minus(1));
  code.set(count, count.plus(news));
  code.set(to, count.minus(1));
  code.during(news.above(0), () => {
    code.when(
      [from.above(-1), newX.at(news.minus(1)).below(x.at(from))],
      () => {
        code.put(x, to, x.at(from));
        code.put(bit, to, bit.at(from));
        code.add(from, -1);
      },
      () => {
        code.add(news, -1);
        code.put(x, to, newX.at(news));
        code.put(bit, to, newBit.at(news));
      },
    );
    code.add(to, -1);
  });
}
