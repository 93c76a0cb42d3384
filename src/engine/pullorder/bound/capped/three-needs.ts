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
