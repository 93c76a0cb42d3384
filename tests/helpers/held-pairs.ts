/** Pairs of a stack whose order shows: one in so many, the same each time. */
export function heldPairs(pulls: number, oneIn: number): { a: number; b: number }[] {
  let turn = oneIn;
  const draw = (below: number): number => (turn = (turn * 48271) % 2147483647) % below;
  return Array.from({ length: pulls }, (_, b) => Array.from({ length: b }, (__, a) => ({ a, b })))
    .flat()
    .filter(() => draw(oneIn) === 0);
}
