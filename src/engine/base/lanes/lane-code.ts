import { entryAt } from '../at.ts';
import { list, section, signed, unsigned } from '../code/wasm-bytes.ts';

/** A whole number of 32 bits in lane code, such as an address. */
export interface Whole {
  readonly whole: number;
}

/** Two numbers with fractions that are worked on at once, four in single precision, or a mask of them. */
export interface Lanes {
  readonly lanes: number;
}

const I32 = 0x7f;
const V128 = 0x7b;
/** Instructions, by precision. */
const DOUBLE = { abs: 236, sqrt: 239, add: 240, sub: 241, mul: 242, div: 243, above: 74, atLeast: 76, bytes: 8 };
const SINGLE: typeof DOUBLE = { abs: 224, sqrt: 227, add: 228, sub: 229, mul: 230, div: 231, above: 68, atLeast: 70, bytes: 4 };

/**
 * Writes a WebAssembly function of loops whose every step works on two numbers at once, or on four in single precision, as other
 * code would be written out by hand: `lanes.add(x, y)` puts the instruction down and gives its result a name. All that it offers is exact by
 * the standard (IEEE 754: sums, products, quotients, roots, comparisons), so that plain code which takes the same
 * steps gives the same bits. Source of the encoding: WebAssembly Core Specification 2.0, chapters 5.2 to 5.5.
 */
export class LaneCode {
  /** What is done once, before the loop. */
  private readonly head: number[] = [];
  private readonly code: number[] = [];
  private readonly kinds: number[] = [];
  private readonly known = new Map<string, Lanes>();
  private readonly params: number;
  private readonly kind: typeof DOUBLE;

  /**
   * @param params whole numbers that the function is called with
   * @param single four numbers of single precision at once
   */
  constructor(params: number, single = false) {
    this.params = params;
    this.kind = single ? SINGLE : DOUBLE;
  }

  param(index: number): Whole {
    return { whole: index };
  }

  /** A new variable of the loop. */
  variable(value: number): Whole {
    return this.setWhole([0x41, ...signed(value)]);
  }

  /** a + b · times */
  offset(a: Whole, b: Whole, times: number): Whole {
    return this.setWhole([...get(b), 0x41, ...signed(times), 0x6c, ...get(a), 0x6a]);
  }

  /** a ÷ 2 ** bits, rounded down. */
  share(a: Whole, bits: number): Whole {
    return this.setWhole([...get(a), 0x41, bits, 0x76]);
  }

  /** The whole number of 32 bits in memory. */
  wholeAt(address: Whole, bytes: number): Whole {
    return this.setWhole([...get(address), 0x28, 2, ...unsigned(bytes)]);
  }

  /** Runs the body again and again while `variable` is below `end`, adding `step` each time; at least once. */
  loop(variable: Whole, [end, step]: readonly [Whole, number], body: () => void): void {
    this.code.push(0x03, 0x40);
    body();
    this.code.push(...get(variable), 0x41, ...signed(step), 0x6a, 0x22, ...unsigned(variable.whole));
    this.code.push(...get(end), 0x49, 0x0d, 0x00, 0x0b);
  }

  /** Runs the body again and again while `variable` is not 0; it gives what the variable is next. */
  chase(variable: Whole, body: () => Whole): void {
    this.code.push(0x02, 0x40, ...get(variable), 0x45, 0x0d, 0x00, 0x03, 0x40);
    this.put(variable, body());
    this.code.push(...get(variable), 0x0d, 0x00, 0x0b, 0x0b);
  }

  /** Gives a variable another value. */
  put(variable: Whole, value: Whole): void {
    this.code.push(...get(value), 0x21, ...unsigned(variable.whole));
  }

  /** A variable of the loop. */
  lanes(value: Lanes): Lanes {
    return this.setLanes(get(value));
  }

  /** Gives a variable another value. */
  putLanes(variable: Lanes, value: Lanes): void {
    this.code.push(...get(value), 0x21, ...unsigned(variable.lanes));
  }

  storeWhole(address: Whole, bytes: number, value: Whole): void {
    this.code.push(...get(address), ...get(value), 0x36, 2, ...unsigned(bytes));
  }

  /** Of a mask of four lanes whether one is set, 0 or 1. */
  isSet(mask: Lanes, lane: number): Whole {
    const bits = this.setWhole([...get(mask), 0xfd, ...unsigned(164)]);
    return this.setWhole([...get(bits), 0x41, lane, 0x76, 0x41, 1, 0x71]);
  }

  /** The same number in all lanes. */
  number(value: number): Lanes {
    const numbers = this.kind === SINGLE ? new Float32Array(4).fill(value) : new Float64Array(2).fill(value);
    const bytes = [...new Uint8Array(numbers.buffer)];
    const key = bytes.join();
    let lanes = this.known.get(key);
    if (lanes === undefined) {
      lanes = { lanes: this.local(V128) };
      this.head.push(0xfd, 0x0c, ...bytes, 0x21, ...unsigned(lanes.lanes));
      this.known.set(key, lanes);
    }
    return lanes;
  }

  /** Numbers that lie side by side in memory. */
  load(address: Whole, number: number): Lanes {
    return this.setLanes([...get(address), 0xfd, 0x00, 3, ...unsigned(number * this.kind.bytes)]);
  }

  /**
   * Four numbers that lie side by side at each of several places.
   * @param places one a lane
   * @param from which number on
   * @returns the first of all places, the second …
   */
  fours(places: readonly Whole[], from = 0): [Lanes, Lanes, Lanes, Lanes] {
    const row = (place: number, number: number): Lanes => this.load(entryAt(places, place), from + number);
    if (this.kind === DOUBLE) return [...this.turned(row(0, 0), row(1, 0)), ...this.turned(row(0, 2), row(1, 2))];
    const [one, two, three, four] = [row(0, 0), row(1, 0), row(2, 0), row(3, 0)];
    const [first, last] = [
      [0, 4, 1, 5],
      [2, 6, 3, 7],
    ] as const;
    return [
      ...this.turned(this.words(one, two, first), this.words(three, four, first)),
      ...this.turned(this.words(one, two, last), this.words(three, four, last)),
    ];
  }

  /** The first halves of both, and the second halves. */
  turned(a: Lanes, b: Lanes): [Lanes, Lanes] {
    return [this.halves(a, 0, b, 0), this.halves(a, 1, b, 1)];
  }

  /** A half of one, and a half of the other. */
  halves(a: Lanes, ofA: 0 | 1, b: Lanes, ofB: 0 | 1): Lanes {
    const [one, other] = [ofA * 2, 4 + ofB * 2];
    return this.words(a, b, [one, one + 1, other, other + 1]);
  }

  /** One number of memory in all lanes. */
  spread(address: Whole, number: number): Lanes {
    const { bytes } = this.kind;
    return this.setLanes([...get(address), 0xfd, ...(bytes === 8 ? [0x0a, 3] : [0x09, 2]), ...unsigned(number * bytes)]);
  }

  /** Two numbers of double precision that lie apart. */
  gather(first: Whole, second: Whole, number: number): Lanes {
    const bytes = unsigned(number * DOUBLE.bytes);
    return this.setLanes([...get(second), ...get(first), 0xfd, 0x5d, 3, ...bytes, 0xfd, 0x57, 3, ...bytes, 1]);
  }

  store(address: Whole, number: number, value: Lanes): void {
    this.code.push(...get(address), ...get(value), 0xfd, 0x0b, 3, ...unsigned(number * this.kind.bytes));
  }

  add(a: Lanes, b: Lanes): Lanes {
    return this.two(a, b, this.kind.add);
  }

  sub(a: Lanes, b: Lanes): Lanes {
    return this.two(a, b, this.kind.sub);
  }

  mul(a: Lanes, b: Lanes): Lanes {
    return this.two(a, b, this.kind.mul);
  }

  div(a: Lanes, b: Lanes): Lanes {
    return this.two(a, b, this.kind.div);
  }

  sqrt(a: Lanes): Lanes {
    return this.setLanes([...get(a), 0xfd, ...unsigned(this.kind.sqrt)]);
  }

  abs(a: Lanes): Lanes {
    return this.setLanes([...get(a), 0xfd, ...unsigned(this.kind.abs)]);
  }

  /** Of each lane the sign changed where that of the mask's number is set. */
  flip(a: Lanes, sign: Lanes): Lanes {
    const bit = this.two(sign, this.number(-0), 78);
    return this.two(a, bit, 81);
  }

  /** A mask: where a > b. */
  above(a: Lanes, b: Lanes): Lanes {
    return this.two(a, b, this.kind.above);
  }

  /** A mask: where a ≥ b. */
  atLeast(a: Lanes, b: Lanes): Lanes {
    return this.two(a, b, this.kind.atLeast);
  }

  and(a: Lanes, b: Lanes): Lanes {
    return this.two(a, b, 78);
  }

  /** `a` where the mask is set, `b` elsewhere. */
  choose(mask: Lanes, a: Lanes, b: Lanes): Lanes {
    return this.setLanes([...get(a), ...get(b), ...get(mask), 0xfd, 82]);
  }

  /** Whole parts of both lanes, towards zero, and the same as numbers. What is no number gives 0. */
  truncate(a: Lanes): { first: Whole; second: Whole; numbers: Lanes } {
    const whole = this.setLanes([...get(a), 0xfd, ...unsigned(252)]);
    return {
      first: this.setWhole([...get(whole), 0xfd, 0x1b, 0]),
      second: this.setWhole([...get(whole), 0xfd, 0x1b, 1]),
      numbers: this.setLanes([...get(whole), 0xfd, ...unsigned(254)]),
    };
  }

  /** The module: it imports its memory as `m.m` and exports its function as `f`. */
  module(): Uint8Array<ArrayBuffer> {
    const body = [...this.locals(), ...this.head, ...this.code, 0x0b];
    return new Uint8Array([
      ...[0x00, 0x61, 0x73, 0x6d, 0x01, 0x00, 0x00, 0x00],
      ...section(1, [1, 0x60, ...list(Array.from({ length: this.params }, () => I32)), 0]),
      ...section(2, [1, 1, 0x6d, 1, 0x6d, 0x02, 0x00, 1]),
      ...section(3, [1, 0]),
      ...section(7, [1, 1, 0x66, 0x00, 0]),
      ...section(10, [1, ...unsigned(body.length), ...body]),
    ]);
  }

  private two(a: Lanes, b: Lanes, instruction: number): Lanes {
    return this.setLanes([...get(a), ...get(b), 0xfd, ...unsigned(instruction)]);
  }

  /** Four words of 32 bits of two lanes, by their place: the first's from 0, the second's from 4. */
  private words(a: Lanes, b: Lanes, places: readonly number[]): Lanes {
    return this.setLanes([...get(a), ...get(b), 0xfd, 0x0d, ...places.flatMap((word) => [0, 1, 2, 3].map((byte) => word * 4 + byte))]);
  }

  private setWhole(code: readonly number[]): Whole {
    return { whole: this.set(code, I32) };
  }

  private setLanes(code: readonly number[]): Lanes {
    return { lanes: this.set(code, V128) };
  }

  private set(code: readonly number[], kind: number): number {
    const local = this.local(kind);
    this.code.push(...code, 0x21, ...unsigned(local));
    return local;
  }

  private local(kind: number): number {
    return this.params + this.kinds.push(kind) - 1;
  }

  private locals(): number[] {
    return [...unsigned(this.kinds.length), ...this.kinds.flatMap((kind) => [1, kind])];
  }
}

function get(value: Whole | Lanes): number[] {
  return [0x20, ...unsigned('whole' in value ? value.whole : value.lanes)];
}
