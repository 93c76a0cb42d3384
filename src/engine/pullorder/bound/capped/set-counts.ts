import { i32, u8 } from '../../../base/at.ts';
import { grown } from '../../grown.ts';
import type { Meter } from '../../model.ts';
import { SmallSets } from '../sets/small-sets.ts';

/** Most times of a letter that are told apart. */
export const MOST_TIMES = 3;

/**
 * Whether some word finishes a set of orders on three or four letters with so many of each letter at
 * most, remembered. Times of the letters are packed in two bits each. More of a letter never hurts,
 * so times that do let all do that are as many or more, and those that do not rule out all that are fewer.
 */
export class SetCounts {
  readonly sets: SmallSets;
  readonly #k: number;
  readonly #meter: Meter;
  /** 32-bit words for all times of the letters. */
  readonly #words: number;
  readonly #closures: Closures;
  /** Sets × words: times that do, and times that do not. */
  #enough: Int32Array;
  #short: Int32Array;

  /** @param k letters, 3 or 4 */
  constructor(k: number, meter: Meter) {
    this.sets = new SmallSets(k, meter);
    this.#k = k;
    this.#meter = meter;
    this.#words = (4 ** k) >> 5;
    this.#closures = closuresOf(k);
    this.#enough = new Int32Array(1024 * this.#words);
    this.#short = new Int32Array(1024 * this.#words);
  }

  /**
   * @param set number of a set
   * @param times how often each letter may come, at most `MOST_TIMES`; packed
   */
  suffice(set: number, times: number): boolean {
    const letters = this.sets.lettersOf(set);
    if (letters === 0) return true;
    // Letters that are not needed are left out, so that the same question is known again.
    const asked = times & u8(FIELDS, letters);
    const at = set * this.#words + (asked >> 5);
    if (at >= this.#enough.length) this.#grow(set);
    const bit = 1 << (asked & 31);
    if ((i32(this.#enough, at) & bit) !== 0) return true;
    if ((i32(this.#short, at) & bit) !== 0) return false;
    this.#meter.units += 8;
    const does = this.#search(set, letters, asked);
    const into = does ? this.#enough : this.#short;
    const closure = does ? this.#closures.above : this.#closures.below;
    for (let w = 0; w < this.#words; w++)
      into[set * this.#words + w] = i32(into, set * this.#words + w) | i32(closure, asked * this.#words + w);
    return does;
  }

  #search(set: number, letters: number, times: number): boolean {
    let sum = 0;
    for (let l = 0; l < this.#k; l++) {
      const own = (times >> (2 * l)) & 3;
      if (own === 0 && (letters >> l) & 1) return false;
      sum += own;
    }
    if (this.sets.atLeast(set) > sum) return false;
    for (let l = 0; l < this.#k; l++) {
      if (!((letters >> l) & 1)) continue;
      const kid = this.sets.kid(set, l);
      if (kid === set) continue;
      const finished = !((this.sets.lettersOf(kid) >> l) & 1);
      // What may come once more only must wait until it finishes.
      if (!finished && ((times >> (2 * l)) & 3) === 1) continue;
      if (this.suffice(kid, times - (1 << (2 * l)))) return true;
      // A letter that finishes never does worse for coming sooner.
      if (finished) return false;
    }
    return false;
  }

  #grow(set: number): void {
    const size = 2 * (set + 1) * this.#words;
    this.#enough = grown(this.#enough, size);
    this.#short = grown(this.#short, size);
  }
}

/** For each mask of four letters the bits of their times. */
const FIELDS = Uint8Array.from({ length: 16 }, (_, mask) => {
  let bits = 0;
  for (let l = 0; l < 4; l++) if ((mask >> l) & 1) bits |= 3 << (2 * l);
  return bits;
});

/** Times of the letters × words. */
interface Closures {
  /** Times that are as many or more of every letter. */
  above: Int32Array;
  /** Times that are as many or fewer of every letter. */
  below: Int32Array;
}

const made = new Map<number, Closures>();

/** Made once for each number of letters. */
function closuresOf(k: number): Closures {
  const known = made.get(k);
  if (known) return known;
  const all = 4 ** k;
  const closures = { above: new Int32Array((all * all) >> 5), below: new Int32Array((all * all) >> 5) };
  for (let few = 0; few < all; few++) {
    for (let many = 0; many < all; many++) {
      let within = true;
      for (let l = 0; l < k; l++) if (((few >> (2 * l)) & 3) > ((many >> (2 * l)) & 3)) within = false;
      if (!within) continue;
      const above = (few * all + many) >> 5;
      const below = (many * all + few) >> 5;
      closures.above[above] = i32(closures.above, above) | (1 << (many & 31));
      closures.below[below] = i32(closures.below, below) | (1 << (few & 31));
    }
  }
  made.set(k, closures);
  return closures;
}
