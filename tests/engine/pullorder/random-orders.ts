import { randomFrom } from '../../../src/engine/base/random.ts';
import type { SetOrder } from '../../../src/engine/pullorder/bound/sets/set-order.ts';

/** Up to so many orders on some letters, each with most of them, as bits; relations are closed. */
export function randomOrders(seed: string, letters: number, most: number): SetOrder[] {
  const random = randomFrom(seed);
  return Array.from({ length: 1 + random.int(most) }, () => {
    const row = random.shuffle([...Array(letters).keys()]).filter(() => random.chance(8, 10));
    const preds = new Array<number>(letters).fill(0);
    row.forEach((l, i) =>
      row.slice(0, i).forEach((before) => {
        if (random.chance(6, 10)) preds[l]! |= (1 << before) | preds[before]!;
      }),
    );
    return { present: row.reduce((bits, l) => bits | (1 << l), 0), preds };
  });
}
