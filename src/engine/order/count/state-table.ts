import { f64, i32, num } from '../../base/at.ts';

/** States, each named by some words, with residues that are added up. Holds its buffers. */
export class StateTable {
  count = 0;
  /** count × words. */
  keys = new Int32Array(1024);
  /** count × moduli. */
  values = new Float64Array(1024);
  private words = 1;
  private slots = new Int32Array(256);
  private readonly moduli: readonly number[];

  constructor(moduli: readonly number[]) {
    this.moduli = moduli;
  }

  /** Empty, for names of so many words. */
  start(words: number): void {
    this.words = words;
    this.count = 0;
    this.slots.fill(-1);
  }

  /**
   * Adds a multiple of another table's values to a state's, which is made when new.
   * @param key its words
   * @param from where the values begin in `values`
   * @param factor whole, −63 … 63
   */
  add(key: Int32Array, values: Float64Array, from: number, factor: number): void {
    const { moduli } = this;
    let at = this.find(key) * moduli.length;
    for (let i = 0; i < moduli.length; i++, at++) {
      const modulus = num(moduli, i);
      const sum = f64(this.values, at) + factor * f64(values, from + i);
      // The quotient may be rounded up to the next whole number.
      const rest = sum - modulus * Math.floor(sum / modulus);
      this.values[at] = rest < 0 ? rest + modulus : rest;
    }
  }

  private find(key: Int32Array): number {
    const { words, slots, keys } = this;
    const mask = slots.length - 1;
    let slot = hashOf(key, 0, words) & mask;
    for (;;) {
      const state = i32(slots, slot);
      if (state < 0) break;
      let word = 0;
      while (word < words && keys[state * words + word] === key[word]) word++;
      if (word === words) return state;
      slot = (slot + 1) & mask;
    }
    slots[slot] = this.count;
    return this.append(key);
  }

  private append(key: Int32Array): number {
    const { words, moduli } = this;
    const state = this.count++;
    if ((state + 1) * words > this.keys.length) this.keys = grown(this.keys, Int32Array);
    if ((state + 1) * moduli.length > this.values.length) this.values = grown(this.values, Float64Array);
    for (let word = 0; word < words; word++) this.keys[state * words + word] = i32(key, word);
    this.values.fill(0, state * moduli.length, (state + 1) * moduli.length);
    if (this.count * 2 > this.slots.length) this.rehash();
    return state;
  }

  private rehash(): void {
    const slots = new Int32Array(this.slots.length * 2).fill(-1);
    const mask = slots.length - 1;
    for (let state = 0; state < this.count; state++) {
      let slot = hashOf(this.keys, state * this.words, this.words) & mask;
      while (i32(slots, slot) >= 0) slot = (slot + 1) & mask;
      slots[slot] = state;
    }
    this.slots = slots;
  }
}

function grown<T extends Int32Array | Float64Array>(old: T, Kind: new (length: number) => T): T {
  const room = new Kind(old.length * 2);
  room.set(old);
  return room;
}

function hashOf(keys: Int32Array, from: number, words: number): number {
  let hash = 0;
  for (let word = 0; word < words; word++) {
    hash = Math.imul(hash ^ i32(keys, from + word), 0x9e3779b1);
    hash ^= hash >>> 15;
  }
  return hash;
}
