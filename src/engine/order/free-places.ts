/** What holds a pull in its place. */
export interface HeldBy {
  /** Places of the pulls that it lies over, and under, so that their order shows; the nearest first. */
  over: number[];
  under: number[];
  /** The places that it may have without going past one of them, both with them. */
  from: number;
  to: number;
}

/**
 * Between which places a pull may be moved so that nothing shows.
 * @param at its place in the stack, first down 0
 * @param pulls how many pulls there are
 * @param edges pairs whose order shows, by places in the stack
 */
export function freePlaces(at: number, pulls: number, edges: readonly { a: number; b: number }[]): HeldBy {
  const others = edges.flatMap(({ a, b }) => (a === at ? [b] : b === at ? [a] : []));
  const over = others.filter((other) => other < at).sort((a, b) => b - a);
  const under = others.filter((other) => other > at).sort((a, b) => a - b);
  return { over, under, from: (over[0] ?? -1) + 1, to: (under[0] ?? pulls) - 1 };
}
