import { i32, u16, u8 } from '../../../base/at.ts';
import { bitCount } from '../../../base/bits.ts';
import type { Meter } from '../../model.ts';
import { smallOrders, type SmallOrders } from './small-orders.ts';

/** Sets that are found again without being tidied up. */
const ASKED = 8192;

/**
 * Exact least lengths of words that finish a set of small orders at once, remembered. A search is
 * guided by the least lengths on all sets of one letter fewer: a letter of a word lies in all of
 * them but one, so their sum over k − 1 is a lower bound.
 */
export class SmallSets {
  readonly orders: SmallOrders;
  readonly #below: SmallSets | null;
  readonly #meter: Meter;
  #table = new Int32Array(1024).fill(-1);
  #count = 0;
  #masks: Int32Array;
  #lower = new Uint8Array(256);
  #letters = new Uint8Array(256);
  /** The length is known not to exceed this; 255 = not known. */
  #upper = new Uint8Array(256);
  #kids: Int32Array;
  /** What was asked for lately, as it was asked. */
  readonly #asked: Int32Array;
  readonly #askedSet = new Int32Array(ASKED).fill(-1);
  readonly #scratch: Int32Array;
  readonly #lent: Int32Array;

  /** @param k letters, 1 to 4 */
  constructor(k: number, meter: Meter) {
    this.orders = smallOrders(k);
    this.#meter = meter;
    this.#below = k > 1 ? new SmallSets(k - 1, meter) : null;
    this.#masks = new Int32Array(256 * this.orders.words);
    this.#kids = new Int32Array(256 * k).fill(-1);
    this.#asked = new Int32Array(ASKED * this.orders.words);
    this.#scratch = new Int32Array(this.orders.words);
    this.#lent = this.#below ? new Int32Array(this.#below.orders.words) : this.#scratch;
  }

  /** Sets that are remembered. */
  get size(): number {
    return this.#count;
  }

  /**
   * @param mask bits of the set, `orders.words` words
   * @returns number of the set, the same for sets that the same words finish as far as is seen
   */
  setOf(mask: Int32Array): number {
    const { words } = this.orders;
    let h = 0;
    for (let w = 0; w < words; w++) h = Math.imul(h ^ i32(mask, w), 0x9e3779b1) ^ (h >>> 15);
    const slot = (h ^ (h >>> 13)) & (ASKED - 1);
    const known = i32(this.#askedSet, slot);
    if (known >= 0) {
      let w = 0;
      while (w < words && this.#asked[slot * words + w] === mask[w]) w++;
      if (w === words) return known;
    }
    this.#asked.set(mask, slot * words);
    return (this.#askedSet[slot] = this.#idOf(mask));
  }

  /** Least length of a word that finishes all orders of a set. */
  least(set: number): number {
    while (u8(this.#lower, set) < u8(this.#upper, set)) this.#within(set, u8(this.#lower, set));
    return u8(this.#lower, set);
  }

  /** No word for a set is shorter, as far as is known. */
  atLeast(set: number): number {
    return u8(this.#lower, set);
  }

  /** Letters that are left in a set, as bits. */
  lettersOf(set: number): number {
    return u8(this.#letters, set);
  }

  /** Whether some word of at most `length` letters does; sharpens what is remembered. */
  #within(set: number, length: number): boolean {
    if (u8(this.#upper, set) <= length) return true;
    if (u8(this.#lower, set) > length) return false;
    const { k } = this.orders;
    let tries = 0;
    for (let l = 0; l < k; l++) {
      const kid = this.kid(set, l);
      if (kid === set) continue;
      if (u8(this.#lower, kid) < length) tries |= 1 << l;
      // A letter that finishes never does worse for coming sooner.
      if (((u8(this.#letters, kid) >> l) & 1) === 0) {
        tries &= 1 << l;
        break;
      }
    }
    // Likeliest first.
    for (let most = 0; most < length && tries !== 0; most++) {
      for (let l = 0; l < k; l++) {
        if (!((tries >> l) & 1)) continue;
        const kid = i32(this.#kids, set * k + l);
        if (u8(this.#lower, kid) > most) continue;
        tries &= ~(1 << l);
        if (this.#within(kid, length - 1)) {
          this.#upper[set] = length;
          return true;
        }
      }
    }
    this.#lower[set] = length + 1;
    return false;
  }

  /** What is left of a set when a letter comes; the same set when it finds no work. */
  kid(set: number, letter: number): number {
    const { k, words, next } = this.orders;
    const known = i32(this.#kids, set * k + letter);
    if (known >= 0) return known;
    const mask = new Int32Array(words);
    for (let w = 0; w < words; w++) {
      for (let bits = i32(this.#masks, set * words + w); bits !== 0; bits &= bits - 1) {
        const id = (w << 5) + (31 - Math.clz32(bits & -bits));
        const to = u16(next, id * k + letter);
        mask[to >> 5] = i32(mask, to >> 5) | (1 << (to & 31));
      }
    }
    this.#meter.units += 2;
    const kid = this.#idOf(mask);
    this.#kids[set * k + letter] = kid;
    return kid;
  }

  /** The number of a set; what other members imply is left out of it. */
  #idOf(given: Int32Array): number {
    const { words, implied } = this.orders;
    const mask = this.#scratch;
    mask.set(given);
    mask[0] = i32(mask, 0) & ~1;
    for (let w = words - 1; w >= 0; w--) {
      for (let bits = i32(mask, w); bits !== 0;) {
        const bit = 31 - Math.clz32(bits);
        const row = ((w << 5) + bit) * words;
        // What an order implies asks less and has a smaller number, so that most is left out before its turn.
        for (let v = 0; v <= w; v++) mask[v] = i32(mask, v) & ~i32(implied, row + v);
        bits = i32(mask, w) & ((1 << bit) - 1);
      }
    }
    this.#meter.units += 1;
    let h = 0;
    for (let w = 0; w < words; w++) h = Math.imul(h ^ i32(mask, w), 0x9e3779b1) ^ (h >>> 15);
    let slot = (h ^ (h >>> 13)) & (this.#table.length - 1);
    for (; i32(this.#table, slot) >= 0; slot = (slot + 1) & (this.#table.length - 1)) {
      const at = i32(this.#table, slot) * words;
      let w = 0;
      while (w < words && this.#masks[at + w] === mask[w]) w++;
      if (w === words) return i32(this.#table, slot);
    }
    return this.#add(slot, mask);
  }

  #add(slot: number, mask: Int32Array): number {
    const { words, k, without, present } = this.orders;
    const set = this.#count++;
    this.#table[slot] = set;
    this.#masks.set(mask, set * words);
    const own: number[] = [];
    let letters = 0;
    for (let w = 0; w < words; w++) {
      for (let bits = i32(mask, w); bits !== 0; bits &= bits - 1) {
        const id = (w << 5) + (31 - Math.clz32(bits & -bits));
        own.push(id);
        letters |= u8(present, id);
      }
    }
    let lower = 0;
    if (this.#below) {
      let sum = 0;
      for (let l = 0; l < k; l++) {
        const part = this.#lent;
        part.fill(0);
        for (const id of own) {
          const to = u16(without, id * k + l);
          part[to >> 5] = i32(part, to >> 5) | (1 << (to & 31));
        }
        const value = this.#below.least(this.#below.setOf(part));
        sum += value;
        lower = Math.max(lower, value + ((letters >> l) & 1));
      }
      lower = Math.max(lower, k > 1 ? Math.ceil(sum / (k - 1)) : 0);
    } else lower = letters === 0 ? 0 : 1;
    this.#meter.units += k;
    this.#lower[set] = lower;
    this.#letters[set] = letters;
    this.#upper[set] = own.length === 0 ? 0 : own.length === 1 ? Math.max(lower, bitCount(letters)) : 255;
    if (this.#count === this.#lower.length) this.#grow();
    return set;
  }

  #grow(): void {
    const { words, k } = this.orders;
    const size = this.#count * 2;
    const grown = <T extends Int32Array | Uint8Array>(to: T, from: T): T => {
      to.set(from as never);
      return to;
    };
    this.#masks = grown(new Int32Array(size * words), this.#masks);
    this.#lower = grown(new Uint8Array(size), this.#lower);
    this.#letters = grown(new Uint8Array(size), this.#letters);
    this.#upper = grown(new Uint8Array(size), this.#upper);
    this.#kids = grown(new Int32Array(size * k).fill(-1), this.#kids);
    this.#table = new Int32Array(size * 4).fill(-1);
    for (let set = 0; set < this.#count; set++) {
      let h = 0;
      for (let w = 0; w < words; w++) h = Math.imul(h ^ i32(this.#masks, set * words + w), 0x9e3779b1) ^ (h >>> 15);
      let slot = (h ^ (h >>> 13)) & (this.#table.length - 1);
      while (i32(this.#table, slot) >= 0) slot = (slot + 1) & (this.#table.length - 1);
      this.#table[slot] = set;
    }
  }
}
