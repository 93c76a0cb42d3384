import { signed, unsigned } from './wasm-bytes.ts';

const GET = 0x20;
const INT_CONST = 0x41;
const REAL_CONST = 0x44;

/** A whole number of 32 bits: the code that works it out, each time anew where it stands. 1 and 0 stand for yes and no. */
export class Int {
  readonly code: readonly number[];

  constructor(code: readonly number[]) {
    this.code = code;
  }

  static of(value: Int | number): Int {
    return typeof value === 'number' ? new Int([INT_CONST, ...signed(value)]) : value;
  }

  plus(other: Int | number): Int {
    return this.with(other, 0x6a);
  }

  minus(other: Int | number): Int {
    return this.with(other, 0x6b);
  }

  times(other: Int | number): Int {
    return this.with(other, 0x6c);
  }

  and(other: Int | number): Int {
    return this.with(other, 0x71);
  }

  or(other: Int | number): Int {
    return this.with(other, 0x72);
  }

  xor(other: Int | number): Int {
    return this.with(other, 0x73);
  }

  left(bits: Int | number): Int {
    return this.with(bits, 0x74);
  }

  /** Without a sign. */
  right(bits: Int | number): Int {
    return this.with(bits, 0x76);
  }

  is(other: Int | number): Int {
    return this.with(other, 0x46);
  }

  below(other: Int | number): Int {
    return this.with(other, 0x48);
  }

  above(other: Int | number): Int {
    return this.with(other, 0x4a);
  }

  not(): Int {
    return new Int([...this.code, 0x45]);
  }

  /** The place of the lowest bit that is set. */
  lowest(): Int {
    return new Int([...this.code, 0x68]);
  }

  private with(other: Int | number, instruction: number): Int {
    return new Int([...this.code, ...Int.of(other).code, instruction]);
  }
}

/** A number with a fraction. */
export class Real {
  readonly code: readonly number[];

  constructor(code: readonly number[]) {
    this.code = code;
  }

  static of(value: Real | number): Real {
    return typeof value === 'number' ? new Real([REAL_CONST, ...new Uint8Array(new Float64Array([value]).buffer)]) : value;
  }

  plus(other: Real | number): Real {
    return this.with(other, 0xa0);
  }

  minus(other: Real | number): Real {
    return this.with(other, 0xa1);
  }

  times(other: Real | number): Real {
    return this.with(other, 0xa2);
  }

  over(other: Real | number): Real {
    return this.with(other, 0xa3);
  }

  root(): Real {
    return new Real([...this.code, 0x9f]);
  }

  size(): Real {
    return new Real([...this.code, 0x99]);
  }

  /**
   * The lesser of two, where neither is NaN and not both are 0: by lanes, as engines make branches of the instruction for single
   * numbers; and by the one that heeds neither, as the other is a chain of eight steps.
   */
  least(other: Real | number): Real {
    const spread = [0xfd, 0x14];
    return new Real([...this.code, ...spread, ...Real.of(other).code, ...spread, 0xfd, ...unsigned(246), 0xfd, 0x21, 0]);
  }

  /** The whole number towards zero; the least or the greatest there is where it lies beyond. */
  whole(): Int {
    return new Int([...this.code, 0xfc, 2]);
  }

  is(other: Real | number): Int {
    return this.asks(other, 0x61);
  }

  below(other: Real | number): Int {
    return this.asks(other, 0x63);
  }

  above(other: Real | number): Int {
    return this.asks(other, 0x64);
  }

  atMost(other: Real | number): Int {
    return this.asks(other, 0x65);
  }

  private with(other: Real | number, instruction: number): Real {
    return new Real([...this.code, ...Real.of(other).code, instruction]);
  }

  private asks(other: Real | number, instruction: number): Int {
    return new Int([...this.code, ...Real.of(other).code, instruction]);
  }
}

/** A variable that holds a whole number. */
export class IntVariable extends Int {
  readonly index: number;

  constructor(index: number) {
    super([GET, ...unsigned(index)]);
    this.index = index;
  }
}

/** A variable that holds a number with a fraction. */
export class RealVariable extends Real {
  readonly index: number;

  constructor(index: number) {
    super([GET, ...unsigned(index)]);
    this.index = index;
  }
}

/** A list of whole numbers in memory. */
export class Ints {
  readonly address: Int;

  constructor(address: Int) {
    this.address = address;
  }

  /** @param further entries beyond that, told when the code is written */
  at(index: Int | number, further = 0): Int {
    return new Int([...this.place(index), 0x28, 2, ...unsigned(further * 4)]);
  }

  place(index: Int | number): readonly number[] {
    return this.address.plus(Int.of(index).left(2)).code;
  }
}

/** A list of numbers with fractions in memory. */
export class Reals {
  readonly address: Int;

  constructor(address: Int) {
    this.address = address;
  }

  /** @param further entries beyond that, told when the code is written */
  at(index: Int | number, further = 0): Real {
    return new Real([...this.place(index), 0x2b, 3, ...unsigned(further * 8)]);
  }

  place(index: Int | number): readonly number[] {
    return this.address.plus(Int.of(index).left(3)).code;
  }
}

/** A list of numbers of single precision in memory. */
export class Singles {
  readonly address: Int;

  constructor(address: Int) {
    this.address = address;
  }

  place(index: Int | number): readonly number[] {
    return this.address.plus(Int.of(index).left(2)).code;
  }
}
