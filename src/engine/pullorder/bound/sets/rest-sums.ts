import { entryAt, u16, u8 } from '../../../base/at.ts';
import { bitCount } from '../../../base/bits.ts';
import type { Meter } from '../../model.ts';
import { setsOf } from './sets-of.ts';

/** Sets of k letters, as bits. */
interface Sets {
  fours: number[][];
  fourBits: Uint16Array;
  /** Fours that hold a letter, by letter. */
  foursWith: Uint16Array[];
  /** Sets of five and more, smaller numbers first; all of them, and those that hold a letter. */
  larger: Uint16Array;
  largerWith: Uint16Array[];
}

/**
 * How often some letters must still come at least, from what is left on each four of them.
 *
 * As `SubsetSums`, but quick enough for every step of a search: only sets with the letter that has
 * just come are looked at anew.
 */
export class RestSums {
  readonly #sets: Sets;
  readonly #meter: Meter;
  /** By set, before a letter comes. */
  readonly #before: Uint8Array;
  /** By set, after it. */
  readonly #after: Uint8Array;

  /** @param letters how many, 5 to 16 */
  constructor(letters: number, meter: Meter) {
    this.#sets = setsOfLetters(letters);
    this.#meter = meter;
    this.#before = new Uint8Array(1 << letters);
    this.#after = new Uint8Array(1 << letters);
  }

  /** All sets of four letters. */
  get fours(): readonly (readonly number[])[] {
    return this.#sets.fours;
  }

  /** Numbers of the fours that hold a letter. */
  foursWith(letter: number): Uint16Array {
    return entryAt(this.#sets.foursWith, letter);
  }

  /**
   * What all letters need; remembers what each set needs for `after`.
   * @param values what each four needs
   */
  all(values: Uint8Array): number {
    const { fourBits, larger } = this.#sets;
    const least = this.#before;
    for (let t = 0; t < fourBits.length; t++) least[u16(fourBits, t)] = u8(values, t);
    this.#conclude(least, larger);
    return u8(least, least.length - 1);
  }

  /** The same when a letter has come since `all`: other fours are as they were. */
  after(letter: number, values: Uint8Array): number {
    const { fourBits, foursWith, largerWith } = this.#sets;
    const least = this.#after;
    least.set(this.#before);
    for (const t of entryAt(foursWith, letter)) least[u16(fourBits, t)] = u8(values, t);
    this.#conclude(least, entryAt(largerWith, letter));
    return u8(least, least.length - 1);
  }

  #conclude(least: Uint8Array, sets: Uint16Array): void {
    for (let i = 0; i < sets.length; i++) {
      const bits = u16(sets, i);
      let sum = 0;
      let size = 0;
      let fewest = 255;
      for (let left = bits; left !== 0; left &= left - 1) {
        const own = u8(least, bits ^ (left & -left));
        sum += own;
        if (own < fewest) fewest = own;
        size++;
      }
      const mean = ((sum + size - 2) / (size - 1)) | 0;
      // Some letter comes at least as often as the mean; the others need what they need without it.
      const uneven = mean === 0 ? 0 : (((mean + size - 1) / size) | 0) + fewest;
      least[bits] = uneven > mean ? uneven : mean;
    }
    this.#meter.units += 1 + (sets.length >> 4);
  }
}

const made = new Map<number, Sets>();

function setsOfLetters(k: number): Sets {
  const known = made.get(k);
  if (known) return known;
  const letters = [...Array(k).keys()];
  const fours = [...setsOf(letters, 4)];
  const larger = Uint16Array.from({ length: 1 << k }, (_, bits) => bits).filter((bits) => bitCount(bits) > 4);
  const sets = {
    fours,
    fourBits: Uint16Array.from(fours, (set) => set.reduce((bits, l) => bits | (1 << l), 0)),
    foursWith: letters.map((l) => Uint16Array.from(fours.flatMap((set, t) => (set.includes(l) ? [t] : [])))),
    larger,
    largerWith: letters.map((l) => larger.filter((bits) => (bits >> l) & 1)),
  };
  made.set(k, sets);
  return sets;
}
