import { Int, IntVariable, Ints, Real, RealVariable, Reals, Singles } from './values.ts';
import { list, section, signed, unsigned } from './wasm-bytes.ts';

/** One answer, or some of which all must be yes. */
type Asked = Int | readonly Int[];

type Some = [IntVariable, IntVariable, IntVariable, IntVariable, IntVariable, IntVariable, IntVariable];

const I32 = 0x7f;
const F64 = 0x7c;

/**
 * Writes a WebAssembly function one statement after another. Lists lie in memory and are read without any check: a function
 * is given room enough before it is called. All that it offers is exact by the standard (IEEE 754), so that plain code
 * which takes the same steps gives the same bits. Source of the encoding: WebAssembly Core Specification 2.0, chapters 5.2 to 5.5.
 */
export class PlainCode {
  private readonly code: number[] = [];
  private readonly kinds: number[] = [];
  private readonly params: number;

  /** @param params whole numbers that the function is called with; it gives one back */
  constructor(params: number) {
    this.params = params;
  }

  param(index: number): IntVariable {
    return new IntVariable(index);
  }

  /** A new variable; 0 at the beginning of the function only when left out. */
  int(value?: Int | number): IntVariable {
    const variable = new IntVariable(this.local(I32));
    if (value !== undefined) this.set(variable, Int.of(value));
    return variable;
  }

  /** New variables, of which as many are taken as are needed; 0 at the beginning of the function only. */
  ints(): Some {
    return Array.from({ length: 7 }, () => this.int()) as Some;
  }

  /** A new variable; 0 at the beginning of the function only when left out. */
  real(value?: Real | number): RealVariable {
    const variable = new RealVariable(this.local(F64));
    if (value !== undefined) this.set(variable, Real.of(value));
    return variable;
  }

  set(variable: IntVariable, value: Int | number): void;
  set(variable: RealVariable, value: Real | number): void;
  set(variable: IntVariable | RealVariable, value: Int | Real | number): void {
    const of = variable instanceof IntVariable ? Int.of(value as Int | number) : Real.of(value as Real | number);
    this.code.push(...of.code, 0x21, ...unsigned(variable.index));
  }

  add(variable: IntVariable, value: Int | number): void {
    this.set(variable, variable.plus(value));
  }

  put(to: Ints, index: Int | number, value: Int | number): void;
  put(to: Reals | Singles, index: Int | number, value: Real | number): void;
  put(to: Ints | Reals | Singles, index: Int | number, value: Int | Real | number): void {
    if (to instanceof Singles) this.code.push(...to.place(index), ...Real.of(value as Real | number).code, 0xb6, 0x38, 2, 0);
    else if (to instanceof Ints) this.code.push(...to.place(index), ...Int.of(value as Int | number).code, 0x36, 2, 0);
    else this.code.push(...to.place(index), ...Real.of(value as Real | number).code, 0x39, 3, 0);
  }

  /** @param asked answers that are all yes; each is worked out only after those before it are */
  when(asked: Asked, then: () => void, otherwise?: () => void): void {
    this.code.push(0x02, 0x40, 0x02, 0x40);
    this.unless(answers(asked), 0);
    then();
    this.code.push(0x0c, 1, 0x0b);
    otherwise?.();
    this.code.push(0x0b);
  }

  /** Again and again while all answers are yes; each is worked out only after those before it. */
  during(asked: Asked, body: () => void): void {
    this.code.push(0x02, 0x40, 0x03, 0x40);
    this.unless(answers(asked), 1);
    body();
    this.code.push(0x0c, 0, 0x0b, 0x0b);
  }

  /** For each whole number from what a variable holds on below an end. */
  upTo(variable: IntVariable, end: Int, body: () => void): void {
    this.during(variable.below(end), () => {
      body();
      this.add(variable, 1);
    });
  }

  /** Again and again as long as all answers are yes afterwards. */
  repeat(body: () => void, asked: () => Asked): void {
    this.code.push(0x02, 0x40, 0x03, 0x40);
    body();
    this.unless(answers(asked()), 1);
    this.code.push(0x0c, 0, 0x0b, 0x0b);
  }

  /** For each whole number from 0 on below an end that is 1 or more. */
  each(variable: IntVariable, end: Int, body: () => void): void {
    this.set(variable, 0);
    this.repeat(
      () => {
        body();
        this.add(variable, 1);
      },
      () => variable.below(end),
    );
  }

  /** Ends the function. */
  giveBack(value: Int | number): void {
    this.code.push(...Int.of(value).code, 0x0f);
  }

  /** One of two answers yes; the second is worked out only after the first. */
  either(first: Int, second: Int): Int {
    return new Int([...first.code, 0x04, I32, 0x41, 1, 0x05, ...second.code, 0x0b]);
  }

  /** The module: it imports its memory as `m.m` and exports its function as `f`. */
  module(): Uint8Array<ArrayBuffer> {
    const locals = [...unsigned(this.kinds.length), ...this.kinds.flatMap((kind) => [1, kind])];
    const body = [...locals, ...this.code, 0x41, ...signed(0), 0x0b];
    return new Uint8Array([
      ...[0x00, 0x61, 0x73, 0x6d, 0x01, 0x00, 0x00, 0x00],
      ...section(1, [1, 0x60, ...list(Array.from({ length: this.params }, () => I32)), 1, I32]),
      ...section(2, [1, 1, 0x6d, 1, 0x6d, 0x02, 0x00, 1]),
      ...section(3, [1, 0]),
      ...section(7, [1, 1, 0x66, 0x00, 0]),
      ...section(10, [1, ...unsigned(body.length), ...body]),
    ]);
  }

  /** Leaves so many blocks where an answer is no. */
  private unless(asked: readonly Int[], blocks: number): void {
    for (const answer of asked) this.code.push(...answer.code, 0x45, 0x0d, blocks);
  }

  private local(kind: number): number {
    return this.params + this.kinds.push(kind) - 1;
  }
}

function answers(asked: Asked): readonly Int[] {
  return asked instanceof Int ? [asked] : asked;
}
