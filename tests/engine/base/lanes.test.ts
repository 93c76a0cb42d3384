import { describe, expect, it } from 'vitest';
import { LaneCode, type Lanes } from '../../../src/engine/base/lanes/lane-code.ts';
import { LaneRoom } from '../../../src/engine/base/lanes/lane-room.ts';

const VALUES = [0, -0, 1.5, -2.25, 1e300, -1e-300, Number.NaN, Infinity, 0.1, 257.99, -3.7, 1e-8];

/** Runs a step over all pairs of neighbours in VALUES, in memory that has grown. */
function run(step: (code: LaneCode, a: Lanes, b: Lanes) => Lanes): Float64Array {
  const code = new LaneCode(2);
  const at = code.variable(0);
  code.loop(at, [code.param(1), 1], () => {
    const place = code.offset(code.param(0), at, 16);
    code.store(place, 300, step(code, code.load(place, 0), code.gather(code.offset(place, code.variable(1), 8), place, 0)));
  });
  const room = new LaneRoom();
  room.fit(200_000);
  const numbers = new Float64Array(room.buffer, 160_000);
  numbers.set([...VALUES, 7]);
  room.load(code.module())!(numbers.byteOffset, VALUES.length / 2);
  return numbers.slice(300, 300 + VALUES.length);
}

describe('LaneCode', () => {
  const cases: [string, (code: LaneCode, a: Lanes, b: Lanes) => Lanes, (a: number, b: number) => number][] = [
    ['add', (code, a, b) => code.add(a, b), (a, b) => a + b],
    ['sub', (code, a, b) => code.sub(a, b), (a, b) => a - b],
    ['mul', (code, a, b) => code.mul(a, b), (a, b) => a * b],
    ['div', (code, a, b) => code.div(a, b), (a, b) => a / b],
    ['sqrt', (code, a) => code.sqrt(a), (a) => Math.sqrt(a)],
    ['abs', (code, a) => code.abs(a), (a) => Math.abs(a)],
    ['a number', (code, a) => code.add(a, code.number(-1e-7)), (a) => a + -1e-7],
    ['choose and compare', (code, a, b) => code.choose(code.above(a, b), a, b), (a, b) => (a > b ? a : b)],
    [
      'both of two',
      (code, a, b) => code.choose(code.and(code.atLeast(a, b), code.above(a, code.number(0))), a, code.number(-0)),
      (a, b) => (a >= b && a > 0 ? a : -0),
    ],
    [
      'whole parts',
      (code, a) => code.truncate(a).numbers,
      (a) => (Math.abs(a) < 1e9 ? Math.trunc(a) + 0 : Number.isNaN(a) ? 0 : a > 0 ? 2 ** 31 - 1 : -(2 ** 31)),
    ],
  ];

  it.each(cases)('should do on two numbers what plain code does on one: %s', (_name, step, plain) => {
    const found = run(step);
    const all = [...VALUES, 7];
    VALUES.forEach((a, i) => {
      // The second operand is gathered from the next two numbers the wrong way round: b of both lanes.
      const b = i % 2 === 0 ? all[i + 1]! : all[i - 1]!;
      expect(found[i], `${a} and ${b}`).toBe(plain(a, b));
    });
  });

  it.each([false, true])('should put fours of numbers side by side, single precision: %s', (single) => {
    const code = new LaneCode(1, single);
    const lanes = single ? 4 : 2;
    const bytes = single ? 4 : 8;
    const at = code.variable(0);
    code.loop(at, [code.variable(1), 1], () => {
      const places = Array.from({ length: lanes }, (_, lane) => code.offset(code.param(0), code.variable(lane), 4 * bytes));
      code.fours(places).forEach((four, k) => code.store(code.param(0), lanes * (4 + k), code.sqrt(code.sub(four, code.number(0.1)))));
    });
    const room = new LaneRoom();
    const numbers = new (single ? Float32Array : Float64Array)(room.buffer, 64, 64);
    for (let i = 0; i < lanes * 4; i++) numbers[i] = i + 0.5;
    room.load(code.module())!(64);
    const round = single ? Math.fround : (value: number): number => value;
    const expected = [0, 1, 2, 3].flatMap((k) =>
      Array.from({ length: lanes }, (_, lane) => round(Math.sqrt(round(lane * 4 + k + 0.5 - round(0.1))))),
    );
    expect([...numbers.subarray(lanes * 4, lanes * 8)]).toEqual(expected);
  });

  it('should change signs by signs', () => {
    const found = run((code, a, b) => code.flip(a, b));
    const expected = VALUES.map((a, i) => {
      const b = VALUES[i % 2 === 0 ? i + 1 : i - 1]!;
      return b < 0 || Object.is(b, -0) ? -a : a;
    });
    expect([...found]).toEqual(expected);
  });
});
