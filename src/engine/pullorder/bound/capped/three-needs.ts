import { entryAt, i32 } from '../../../base/at.ts';

/*
 * What sheets ask of three letters x, y and z, as bits of one number: of two of them in an order, of
 * all three one after another, of one before both others, of both others before one. Every order on
 * three letters is among these; that each letter must come at all is known elsewhere.
 */

/** Places of the letters of what is asked, first those that come first. */
const PAIRS = [
  [0, 1],
  [0, 2],
  [1, 0],
  [1, 2],
  [2, 0],
  [2, 1],
] as const;
const CHAINS = [
  [0, 1, 2],
  [0, 2, 1],
  [1, 0, 2],
  [1, 2, 0],
  [2, 0, 1],
  [2, 1, 0],
] as const;

/** One order: for each letter the bits of those before it; letters that it does not hold are −1. */
type Asked = readonly [number, number, number];

/** In the order of their bits. */
const ASKED: readonly Asked[] = [
  ...PAIRS.map(([a, b]) => [0, 1, 2].map((l) => (l === a ? 0 : l === b ? 1 << a : -1))),
  ...CHAINS.map(([a, b]) => [0, 1, 2].map((l) => (l === a ? 0 : l === b ? 1 << a : (1 << a) | (1 << b)))),
  ...[0, 1, 2].map((x) => [0, 1, 2].map((l) => (l === x ? 0 : 1 << x))),
  ...[0, 1, 2].map((z) => [0, 1, 2].map((l) => (l === z ? 7 & ~(1 << z) : 0))),
].map((preds) => preds as [number, number, number]);

/** By letter, then by bit: the bits of what is left of an order when the letter comes. */
const LEFT = [0, 1, 2].map((letter) =>
  Int32Array.from(ASKED, (order, bit) => {
    if (order[letter] !== 0) return 1 << bit;
    let left = 0;
    PAIRS.forEach(([a, b], pair) => {
      if (a !== letter && b !== letter && order[a] >= 0 && order[b] >= 0 && (order[b] >> a) & 1) left |= 1 << pair;
    });
    return left;
  }),
);

/** Which of some letters sheets have before which. */
export interface PairRows {
  letters: number;
  /** Letters × letters: sheets that have the second before the first, as bits. */
  before: Int32Array;
}

/** What sheets ask of three letters, as bits of orders. */
export function askedOfThree({ letters, before }: PairRows, x: number, y: number, z: number): number {
  const xy = i32(before, y * letters + x);
  const xz = i32(before, z * letters + x);
  const yx = i32(before, x * letters + y);
  const yz = i32(before, z * letters + y);
  const zx = i32(before, x * letters + z);
  const zy = i32(before, y * letters + z);
  return (
    bit(xy, 0) |
    bit(xz, 1) |
    bit(yx, 2) |
    bit(yz, 3) |
    bit(zx, 4) |
    bit(zy, 5) |
    bit(xy & yz, 6) |
    bit(xz & zy, 7) |
    bit(yx & xz, 8) |
    bit(yz & zx, 9) |
    bit(zx & xy, 10) |
    bit(zy & yx, 11) |
    bit(xy & xz, 12) |
    bit(yx & yz, 13) |
    bit(zx & zy, 14) |
    bit(yx & zx, 15) |
    bit(xy & zy, 16) |
    bit(xz & yz, 17)
  );
}

function bit(sheets: number, place: number): number {
  return sheets === 0 ? 0 : 1 << place;
}

/** For what is asked, and letters that must come besides: how long a shortest word is, and how many there are. */
const shortest = new Map<number, { least: number; words: number }>();

/**
 * How long a shortest word is for what is asked, and how many there are.
 * @param besides letters that must come whatever is asked, as bits
 */
export function shortestOfThree(asked: number, besides: number): { least: number; words: number } {
  if (asked === 0 && besides === 0) return { least: 0, words: 1 };
  const key = (asked << 3) | besides;
  const before = shortest.get(key);
  if (before) return before;
  const found = { least: Infinity, words: 0 };
  for (let l = 0; l < 3; l++) {
    const rest = leftOf(asked, l);
    let left = besides & ~(1 << l);
    PAIRS.forEach(([a, b], i) => {
      if (a === l && (asked >> i) & 1) left |= 1 << b;
    });
    if (rest === asked && left === besides) continue;
    const { least, words } = shortestOfThree(rest, left);
    if (least + 1 > found.least) continue;
    if (least + 1 < found.least) found.words = 0;
    found.least = least + 1;
    found.words += words;
  }
  shortest.set(key, found);
  return found;
}

/** Times of three letters, 1 to 3 each, as one number below 27. */
const times = (x: number, y: number, z: number): number => 9 * (x - 1) + 3 * (y - 1) + (z - 1);

/** By what is asked: bits of the times that do; −1 where that was not looked for yet. */
const known = new Int32Array(1 << ASKED.length).fill(-1);

/**
 * Which times of three letters do: those for which some word with each so many times at most
 * finishes all that is asked. More of a letter never hurts.
 * @param asked bits of orders, as above
 * @returns bits of times, 9(x − 1) + 3(y − 1) + z − 1 for x, y and z times from 1 to 3
 */
export function timesThatDo(asked: number): number {
  const before = i32(known, asked);
  if (before >= 0) return before;
  const seen = new Map<number, boolean>();
  let bits = 0;
  for (let x = 1; x <= 3; x++)
    for (let y = 1; y <= 3; y++) for (let z = 1; z <= 3; z++) if (does(asked, [x, y, z], seen)) bits |= 1 << times(x, y, z);
  return (known[asked] = bits);
}

function does(asked: number, left: readonly [number, number, number], seen: Map<number, boolean>): boolean {
  if (asked === 0) return true;
  const key = ((asked * 4 + left[0]) * 4 + left[1]) * 4 + left[2];
  const before = seen.get(key);
  if (before !== undefined) return before;
  const found = left.some((own, l) => {
    if (own === 0) return false;
    const rest = leftOf(asked, l);
    return rest !== asked && does(rest, [left[0] - Number(l === 0), left[1] - Number(l === 1), left[2] - Number(l === 2)], seen);
  });
  seen.set(key, found);
  return found;
}

/** What is left of all that is asked when a letter comes. */
function leftOf(asked: number, letter: number): number {
  const by = entryAt(LEFT, letter);
  let left = 0;
  for (let bits = asked; bits !== 0; bits &= bits - 1) left |= i32(by, 31 - Math.clz32(bits & -bits));
  return left;
}
