import type { SetOrder } from '../../../src/engine/pullorder/bound/sets/set-order.ts';

/** Length of a shortest word for the orders on a set of letters, by trying all words level by level. */
export function shortest(orders: readonly SetOrder[], set: number): number {
  let level = [orders.map(({ present }) => present & set)];
  const seen = new Set<string>();
  for (let length = 0; ; length++) {
    const next: typeof level = [];
    for (const left of level) {
      if (left.every((bits) => bits === 0)) return length;
      for (let l = 0; l < 31; l++) {
        if (!((set >> l) & 1)) continue;
        const rest = left.map((bits, c) => ((orders[c]!.preds[l]! & bits) === 0 ? bits & ~(1 << l) : bits));
        const key = rest.join();
        if (!seen.has(key)) next.push(rest);
        seen.add(key);
      }
    }
    level = next;
  }
}
