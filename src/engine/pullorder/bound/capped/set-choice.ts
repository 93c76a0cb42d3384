import { num, u8 } from '../../../base/at.ts';
import { noteEveryWay } from '../every-way.ts';

/** Which letters of a set are most likely not to fit: those of which each three need much. */
export class SetChoice {
  readonly #letters: number;
  /** Letters × letters × letters, every way round. */
  readonly #needs: Uint8Array;

  /** @param needOf what three letters need together, places descending */
  constructor(letters: number, needOf: (i: number, j: number, h: number) => number) {
    const n = letters;
    this.#letters = n;
    this.#needs = new Uint8Array(n ** 3);
    for (let i = 2; i < n; i++)
      for (let j = 1; j < i; j++) for (let h = 0; h < j; h++) noteEveryWay(this.#needs, n, [i, j, h], needOf(i, j, h));
  }

  /** The first letters of a set, each after those before it such that they need most together. */
  first(set: number, most: number): number[] {
    const left: number[] = [];
    for (let bits = set; bits !== 0; bits &= bits - 1) left.push(31 - Math.clz32(bits & -bits));
    if (left.length < 3) return left;
    const order = this.#worstThree(left);
    const scores = new Int32Array(this.#letters);
    order.forEach((a, i) => order.slice(0, i).forEach((b) => this.#count(scores, left, a, b)));
    while (order.length < Math.min(most, left.length)) {
      let best = -1;
      for (const l of left) if (!order.includes(l) && (best < 0 || num(scores, l) > num(scores, best))) best = l;
      for (const other of order) this.#count(scores, left, best, other);
      order.push(best);
    }
    return order;
  }

  #worstThree(left: readonly number[]): number[] {
    const n = this.#letters;
    let worst = left.slice(0, 3);
    let most = -1;
    for (let i = 2; i < left.length; i++)
      for (let j = 1; j < i; j++)
        for (let h = 0; h < j; h++) {
          const need = u8(this.#needs, (num(left, i) * n + num(left, j)) * n + num(left, h));
          if (need <= most) continue;
          most = need;
          worst = [num(left, i), num(left, j), num(left, h)];
        }
    return worst;
  }

  /** Adds to each letter's score what it needs with two others. */
  #count(scores: Int32Array, left: readonly number[], a: number, b: number): void {
    const row = (a * this.#letters + b) * this.#letters;
    for (const l of left) scores[l] = num(scores, l) + u8(this.#needs, row + l);
  }
}
