import type { PlainCode } from '../../../base/code/plain-code.ts';
import { Int, type Ints, type IntVariable } from '../../../base/code/values.ts';
import { type EdgeLists, PARTED } from './edge-names.ts';

/** A digit of a size. */
const BITS = 10;
export const DIGITS = 2 ** BITS;
/** So often may a cell be moved by one place, on average, before another sort is quicker. */
const MOVES = 30;

/**
 * Writes how cells that take some of the sheet are sorted, largest first, the lower number first of equals. The upper halves of
 * positive numbers keep their order as whole numbers: two digits of what they are below the greatest sort them but for a few neighbours.
 */
export function writeSizeCode(code: PlainCode, lists: EdgeLists): void {
  const count = code.int();
  takeSizes(code, lists, count);
  sortByDigits(code, lists, count);
  putRight(code, lists, count);
  code.put(lists.ints('found'), 1, count);
}

/** Lists the cells and the upper halves of their sizes, as what they are below the greatest, in two digits. */
function takeSizes(code: PlainCode, lists: EdgeLists, count: IntVariable): void {
  const [cell, size, least, most, skipped] = [code.int(), code.int(), code.int(0x7fffffff), code.int(0), code.int()];
  const sizes = lists.ints('sizes');
  code.upTo(cell, lists.int('cells'), () => {
    code.when(lists.reals('areaMm2').at(cell).above(0), () => {
      code.set(size, lists.ints('areaMm2').at(cell.left(1), 1));
      code.when(size.below(least), () => code.set(least, size));
      code.when(size.above(most), () => code.set(most, size));
      code.put(lists.ints('bySize'), count, cell);
      code.put(sizes, count, size);
      code.add(count, 1);
    });
  });
  code.during(
    most
      .minus(least)
      .right(skipped)
      .right(2 * BITS),
    () => code.add(skipped, 1),
  );
  each(code, count, (i) => code.put(sizes, i, most.minus(sizes.at(i)).right(skipped)));
}

/** Sorts by the lower digit, then by the upper one, each in the order of before. */
function sortByDigits(code: PlainCode, lists: EdgeLists, count: IntVariable): void {
  const [size, at, ofLower, ofUpper] = code.ints();
  const [bySize, sizes, half, halfSizes] = [lists.ints('bySize'), lists.ints('sizes'), lists.ints('half'), lists.ints('halfSizes')];
  const [lower, upper] = [lists.ints('lower'), lists.ints('upper')];
  const next = (of: Ints, digit: Int): void => {
    code.set(at, of.at(digit));
    code.put(of, digit, at.plus(1));
  };
  each(code, count, (i) => {
    code.set(size, sizes.at(i));
    next(lower, size.and(DIGITS - 1));
    next(upper, size.right(BITS));
  });
  const begin = (of: Ints, digit: Int, sum: IntVariable): void => {
    code.set(at, of.at(digit));
    code.put(of, digit, sum);
    code.add(sum, at);
  };
  each(code, Int.of(DIGITS), (digit) => {
    begin(lower, digit, ofLower);
    begin(upper, digit, ofUpper);
  });
  each(code, count, (i) => {
    code.set(size, sizes.at(i));
    next(lower, size.and(DIGITS - 1));
    code.put(half, at, bySize.at(i));
    code.put(halfSizes, at, size.right(BITS));
  });
  each(code, count, (i) => {
    next(upper, halfSizes.at(i));
    code.put(bySize, at, half.at(i));
  });
}

/** Sorts what the digits have left; gives back where cells are all about as large. */
function putRight(code: PlainCode, lists: EdgeLists, count: IntVariable): void {
  const [cell, at, moves, area] = [code.int(), code.int(), code.int(count.times(MOVES)), code.real()];
  const [areaMm2, bySize] = [lists.reals('areaMm2'), lists.ints('bySize')];
  each(code, count, (i) => {
    code.set(cell, bySize.at(i));
    code.set(area, areaMm2.at(cell));
    code.set(at, i);
    code.during([at.above(0), areaMm2.at(bySize.at(at.minus(1))).below(area)], () => {
      code.put(bySize, at, bySize.at(at.minus(1)));
      code.add(at, -1);
    });
    code.put(bySize, at, cell);
    code.set(moves, moves.minus(i).plus(at));
    code.when(moves.below(0), () => code.giveBack(PARTED));
  });
}

function each(code: PlainCode, end: Int, body: (i: IntVariable) => void): void {
  const i = code.int(0);
  code.upTo(i, end, () => body(i));
}

/** Writes how the moments of cells are summed up, see `momentsOf`. */
export function writeMomentCode(code: PlainCode, lists: EdgeLists): void {
  const [row, run, end, at] = code.ints();
  const [fromMm, toMm, yMm, lengthMm] = [code.real(), code.real(), code.real(), code.real()];
  const [moments, rowMm] = [lists.reals('moments'), lists.reals('sheet').at(0)];
  code.set(yMm, rowMm.over(2));
  code.during(row.below(lists.int('rows')), () => {
    code.set(fromMm, 0);
    code.set(end, lists.ints('rowStart').at(row, 1));
    code.upTo(run, end, () => {
      code.set(toMm, lists.reals('runEndMm').at(run));
      code.set(lengthMm, toMm.minus(fromMm));
      code.set(at, lists.ints('runCell').at(run).left(1));
      code.put(moments, at, moments.at(at).plus(lengthMm.times(fromMm.plus(toMm)).times(0.5)));
      code.put(moments, at.plus(1), moments.at(at, 1).plus(lengthMm.times(yMm)));
      code.set(fromMm, toMm);
    });
    code.add(row, 1);
    code.set(yMm, yMm.plus(rowMm));
  });
}
