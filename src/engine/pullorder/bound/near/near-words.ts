import { i32, num, u8 } from '../../../base/at.ts';
import { bitCount } from '../../../base/bits.ts';
import type { Meter } from '../../model.ts';
import { masksOf } from '../capped/set-masks.ts';
import type { SetOrder } from '../sets/set-order.ts';
import { Piercing, type Words } from './piercing.ts';

/** A source of words: words of a length on all letters but one. */
interface Source {
  letter: number;
  words: Words;
  length: number;
  /** Letters whose sources came before, at the same excess. */
  earlier: readonly number[];
  excess: number;
}

/** Words of a length on a set that come from one source; some of them do. */
interface Extension {
  set: number;
  members: readonly number[];
  length: number;
  source: Source;
  some: boolean;
}

/** Where words of a length on a set come from that leave such an excess at least. */
interface Asked {
  set: number;
  members: readonly number[];
  length: number;
  /** What the set needs without each letter. */
  needs: readonly number[];
  excess: number;
  /** What all excesses come to beyond that. */
  spare: number;
}

/** Letters of sets up to which all are looked at, whatever excess their words may have. */
const ALWAYS = 5;
/** Units of work of one look at a word. */
const A_LOOK = 2;
/** Bytes of lists that are kept. */
const MOST_KEPT = 2 ** 25;

const NO_WORDS: Words = { count: 0, letters: new Uint8Array(0) };

/**
 * How often sets of letters must come, from lists of all words of a length that finish them.
 *
 * Strike a letter out of a word for k letters, one letter after another: what is left are k words, each
 * of which finishes its k − 1 letters and so exceeds what they need by some excess, 0 or more. All
 * together they have (k − 1) times the letters of the word; so the excesses come to that less what
 * the sets need, a small number, and some of them is at most the k-th part of it. So all words of a
 * length come from words hardly longer than need be on one letter fewer, and where there are none, more
 * is needed. Words that can be had in several ways are taken where their excess is least, the first way
 * in the order of sources.
 */
export class NearWords {
  readonly #k: number;
  readonly #meter: Meter;
  readonly #piercing: Piercing;
  /** Scratch, by letter. */
  readonly #caps: Int32Array;
  readonly #counts: Int32Array;
  /** By set: no word on it is shorter. */
  readonly #least: Uint8Array;
  /** All words of a length on a set, by set + length · 2^k. */
  readonly #lists = new Map<number, Words>();
  readonly #all: number;
  #kept = 0;
  /** Units at which a proof is given up. */
  #until = 0;
  /** Sets that some word of the least length finishes. */
  readonly #exact = new Set<number>();

  /** @param letters how many, at most 16; each comes on some sheet */
  constructor(orders: readonly SetOrder[], letters: number, meter: Meter) {
    const masks = masksOf(orders, 2 ** letters - 1);
    this.#k = masks.whole.length;
    this.#meter = meter;
    this.#piercing = new Piercing(masks);
    this.#caps = new Int32Array(this.#k);
    this.#counts = new Int32Array(this.#k);
    this.#all = 2 ** this.#k - 1;
    this.#least = new Uint8Array(2 ** this.#k);
    for (let bits = 1; bits <= this.#all; bits++) this.#least[bits] = this.#concluded(bits);
  }

  /** No word on a set, as bits of places, is shorter, as far as is known. */
  leastOf(set: number): number {
    return u8(this.#least, set);
  }

  /**
   * Proves sets of up to so many letters, smaller ones first.
   * @param units work on each
   * @param share larger ones only where the excess of their words is at most so much a letter
   */
  *sets(size: number, units: number, share: number): Generator<void, void> {
    for (let k = 1; k <= Math.min(size, this.#k); k++) {
      for (let set = 2 ** k - 1; set <= this.#all; set = nextSet(set)) {
        if (k <= ALWAYS || this.#spareOf(set) <= share * k) this.prove(set, units);
        yield;
      }
    }
  }

  /**
   * Raises what a set needs until it is exact or so much work is done.
   * @returns whether it is exact
   */
  prove(set: number, units: number): boolean {
    this.#until = this.#meter.units + units;
    if (this.#kept > MOST_KEPT) {
      this.#lists.clear();
      this.#kept = 0;
    }
    while (!this.#exact.has(set)) {
      const words = this.#words(set, u8(this.#least, set), true);
      if (words === null) return false;
      if (words.count > 0) this.#exact.add(set);
    }
    return true;
  }

  /** Excess that all words together have which a shortest word leaves, one letter left out at a time. */
  #spareOf(set: number): number {
    let spare = 0;
    for (let left = set; left !== 0; left &= left - 1) spare += u8(this.#least, set) - u8(this.#least, set ^ (left & -left));
    return spare - u8(this.#least, set);
  }

  /** All words of a length on a set, or `some` of them if there are any; null when that takes too long. */
  #words(set: number, length: number, some = false): Words | null {
    if (length < u8(this.#least, set)) return NO_WORDS;
    const key = length * (this.#all + 1) + set;
    const known = this.#lists.get(key);
    if (known) return known;
    const members = membersOf(set);
    const out: Words = { count: 0, letters: new Uint8Array(0) };
    if (members.length === 1) {
      out.count = 1;
      out.letters = new Uint8Array(length).fill(num(members, 0));
    } else {
      const sources = this.#sources(set, members, length);
      if (sources === null) return null;
      for (const source of sources) {
        if (!this.#extend({ set, members, length, source, some }, out)) return null;
        if (some && out.count > 0) return out;
      }
    }
    this.#lists.set(key, out);
    this.#kept += out.letters.length;
    if (out.count === 0) this.#note(set, length + 1);
    return out;
  }

  /** Words that all words of a length on a set come from; null when that takes too long. */
  #sources(set: number, members: readonly number[], length: number): Source[] | null {
    for (;;) {
      const needs = members.map((l) => u8(this.#least, set ^ (1 << l)));
      const sources: Source[] = [];
      let found: boolean | null = true;
      const spare = (members.length - 1) * length - needs.reduce((a, b) => a + b, 0);
      for (let excess = 0; found && excess * members.length <= spare; excess++)
        found = this.#sourcesAt({ set, members, length, needs, excess, spare: spare - excess * members.length }, sources);
      if (found === null) return null;
      // What turns out on the way to need more leaves less excess, so that all begins afresh.
      if (found) return sources;
    }
  }

  /** Adds sources of words whose least excess is a given one. @returns false when some set needs more than was known, null when that takes too long */
  #sourcesAt({ set, members, length, needs, excess, spare }: Asked, sources: Source[]): boolean | null {
    const costs = members.map((l, i) => this.#costOf(set ^ (1 << l), num(needs, i) + excess));
    const order = members.map((_, i) => i).sort((a, b) => num(costs, a) - num(costs, b) || a - b);
    const earlier: number[] = [];
    // No more than `spare` letters leave a larger excess.
    for (const i of order.slice(0, spare + 1)) {
      const letter = num(members, i);
      const own = num(needs, i) + excess;
      if (own < length) {
        const words = this.#words(set ^ (1 << letter), own);
        if (words === null) return null;
        if (members.some((l, j) => u8(this.#least, set ^ (1 << l)) !== num(needs, j))) return false;
        sources.push({ letter, words, length: own, earlier: [...earlier], excess });
      }
      earlier.push(letter);
    }
    return true;
  }

  /** How dear a list is likely to be. */
  #costOf(set: number, length: number): number {
    const known = this.#lists.get(length * (this.#all + 1) + set);
    if (known) return known.count;
    let sum = 0;
    let k = 0;
    for (let left = set; left !== 0; left &= left - 1) {
      sum += u8(this.#least, set ^ (left & -left));
      k++;
    }
    return 100 * 20 ** (k < 2 ? 0 : ((k - 1) * length - sum) / k);
  }

  /** Puts a letter into all words of a source. @returns false when that takes too long */
  #extend({ set, members, length, source, some }: Extension, out: Words): boolean {
    const { letter, words, earlier, excess } = source;
    const from = source.length;
    const times = length - from;
    const same = length - u8(this.#least, set) + 1;
    // Where some letter comes more often than this, an excess is smaller, or as small at an earlier source.
    const caps = this.#caps;
    for (const l of members) caps[l] = length - u8(this.#least, set ^ (1 << l)) - excess;
    for (const l of earlier) caps[l] = i32(caps, l) - 1;
    const counts = this.#counts;
    const piercing = this.#piercing;
    piercing.prepare(
      members.filter((l) => l !== letter),
      letter,
    );
    let looked = 0;
    for (let w = 0, at = 0; w < words.count; w++, at += from) {
      counts.fill(0);
      let i = at;
      for (const to = at + from; i < to; i++) {
        const l = u8(words.letters, i);
        if ((counts[l] = i32(counts, l) + 1) > i32(caps, l)) break;
      }
      if (i < at + from) continue;
      looked++;
      if (piercing.does(words.letters, at, from, times)) {
        const before = out.count;
        piercing.write(times, same, out);
        looked += out.count - before;
        if (some && out.count > 0) break;
      }
      if ((looked & 63) === 0 && this.#meter.units + looked * A_LOOK > this.#until) {
        this.#meter.units += looked * A_LOOK;
        return false;
      }
    }
    this.#meter.units += looked * A_LOOK + (words.count >> 3) + 2;
    return true;
  }

  #note(set: number, least: number): void {
    if (u8(this.#least, set) >= least) return;
    this.#least[set] = least;
    const others = this.#all & ~set;
    // Larger sets that hold it, smaller numbers first.
    for (let more = (0 - others) & others; more !== 0; more = (more - others) & others) {
      const bits = set | more;
      this.#least[bits] = this.#concluded(bits);
    }
    this.#meter.units += 1 << Math.max(0, bitCount(others) - 3);
  }

  /** What a set needs for all that its parts need. */
  #concluded(bits: number): number {
    const least = this.#least;
    let size = 0;
    let sum = 0;
    let most = Math.max(1, u8(least, bits));
    let fewest = Infinity;
    for (let left = bits; left !== 0; left &= left - 1) {
      const without = u8(least, bits ^ (left & -left));
      sum += without;
      size++;
      if (without < fewest) fewest = without;
    }
    if (size > 1) most = Math.max(most, Math.ceil(sum / (size - 1)));
    // Some letter comes at least as often as the mean; the others need what they need without it.
    return size > 1 ? Math.max(most, Math.ceil(most / size) + fewest) : most;
  }
}

/** The letters of a set. */
function membersOf(set: number): number[] {
  const members: number[] = [];
  for (let left = set; left !== 0; left &= left - 1) members.push(31 - Math.clz32(left & -left));
  return members;
}

/** The next larger number with as many bits. */
function nextSet(set: number): number {
  const low = set & -set;
  const high = set + low;
  return high | Math.floor(((set ^ high) >>> 2) / low);
}
