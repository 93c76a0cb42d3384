import { entryAt, i32, num, u8 } from '../../../base/at.ts';
import { bitCount } from '../../../base/bits.ts';
import { grown } from '../../grown.ts';
import type { Meter } from '../../model.ts';
import type { SetMasks } from '../capped/set-masks.ts';
import { type Core, CoreSums } from './core-sums.ts';
import { MAX_WORD, WordPoints } from './word-points.ts';

/** Words that come of one level before they are followed. */
const A_CHUNK = 64;
/** Words that go on with the same letter once the core is done. */
const AFTER_CORE = 8;
/** Words of a chunk that are asked in how many ways a letter can be put in, and most ways that are told apart. */
const ASKED = 4;
const MOST_WAYS = 300;
/** Work between two pauses. */
const A_PAUSE = 20_000;
/** Units of work of reading a word, and of one look at a letter in it. */
const A_READ = 4;
const A_LOOK = 3;

/** Words for the same letters. */
interface Level {
  members: Int32Array;
  /** Letters that are not in yet, those first that are likely to be asked for more. */
  others: number[];
  rest: Int32Array;
  count: number;
  words: Uint8Array;
  lengths: Int32Array;
  /** Words × letters: how often each letter must come at least. */
  points: Uint8Array;
}

/**
 * Whether a word of few letters finishes all sheets on a set of letters, though it has exactly so many
 * letters of one core of the set.
 *
 * A word that is hardly longer than it must be on some letters pins the others: the gaps that sheets leave
 * for them are so narrow that they must come far more often than by themselves. So words grow letter by
 * letter, those of the core first, each put in with all its mounts at once, and are dropped where what
 * they have and what the others must have comes to too much (`CoreSums`). A letter is put in only as often
 * as it must be; that it comes more often is a branch of its own, in which it is put in later, when its
 * gaps are narrower and others have used up what may be spared.
 */
export class PinnedSearch {
  readonly #letters: number;
  readonly #meter: Meter;
  readonly #points: WordPoints;
  readonly #sums: CoreSums;
  readonly #limit: number;
  readonly #core: readonly number[];
  /** Letters × letters: sheets that have both in some order. */
  readonly #ties: Int32Array;
  readonly #levels: Level[];
  readonly #open = new Int32Array(MAX_WORD + 1);
  readonly #word = new Uint8Array(MAX_WORD + 1);
  #from: Level;
  #into: Level;
  #at = 0;
  #letter = 0;
  #ways = 0;
  #pause = 0;

  /**
   * @param limit letters of a word at most
   * @param needs by core: no word has fewer of its letters; they may rise on the way
   * @param exact the core of which words have exactly as many letters as it needs at first
   */
  constructor(
    masks: SetMasks,
    cores: readonly Core[],
    { limit, needs, exact }: { limit: number; needs: ArrayLike<number>; exact: number },
    meter: Meter,
  ) {
    const k = (this.#letters = masks.whole.length);
    this.#meter = meter;
    this.#points = new WordPoints(masks);
    this.#sums = new CoreSums(k, cores, needs, exact);
    this.#limit = Math.min(limit, MAX_WORD);
    this.#core = entryAt(cores, exact).letters;
    this.#ties = new Int32Array(k * k);
    for (let a = 0; a < k; a++) {
      for (let b = 0; b < k; b++) this.#ties[a * k + b] = bitCount(i32(masks.before, a * k + b)) + bitCount(i32(masks.before, b * k + a));
    }
    this.#levels = Array.from({ length: k + 1 }, () => ({
      members: new Int32Array(0),
      others: [],
      rest: new Int32Array(0),
      count: 0,
      words: new Uint8Array(0),
      lengths: new Int32Array(0),
      points: new Uint8Array(0),
    }));
    this.#from = this.#into = entryAt(this.#levels, 0);
    meter.units += k * k;
  }

  /** @returns yields now and then; false when there is such a word */
  *none(): Generator<void, boolean> {
    const root = entryAt(this.#levels, 0);
    this.#enter(root, new Int32Array(0));
    this.#makeRoom(root);
    root.count = 1;
    root.lengths[0] = 0;
    root.points.fill(1, 0, this.#letters);
    this.#pause = this.#meter.units + A_PAUSE;
    return yield* this.#follow(0);
  }

  /** Follows all words of a level. */
  *#follow(depth: number): Generator<void, boolean> {
    if (depth === this.#letters) return false;
    const level = entryAt(this.#levels, depth);
    const next = entryAt(this.#levels, depth + 1);
    const step = this.#core.every((l) => level.members.includes(l)) ? AFTER_CORE : level.count;
    for (let from = 0; from < level.count; from += step) {
      let words = Array.from({ length: Math.min(step, level.count - from) }, (_, i) => from + i);
      while (words.length > 0) {
        const letter = this.#choose(level, words);
        this.#enter(next, Int32Array.of(...level.members, letter));
        for (let i = 0; i < words.length;) {
          next.count = 0;
          while (i < words.length && next.count < A_CHUNK) this.#extend({ level, next, letter }, num(words, i++));
          if (this.#meter.units > this.#pause) {
            yield;
            this.#pause = this.#meter.units + A_PAUSE;
          }
          if (next.count > 0 && !(yield* this.#follow(depth + 1))) return false;
        }
        words = words.filter((w) => this.#oftener(level, w, letter));
      }
    }
    return true;
  }

  /** Makes a level ready for words on some letters. */
  #enter(level: Level, members: Int32Array): void {
    const k = this.#letters;
    const last = members.at(-1);
    const others: number[] = [];
    for (let l = 0; l < k; l++) if (!members.includes(l)) others.push(l);
    if (last !== undefined) others.sort((a, b) => i32(this.#ties, last * k + b) - i32(this.#ties, last * k + a) || a - b);
    level.members = members;
    level.others = others;
    level.rest = this.#sums.restOf(others);
    this.#meter.units += k;
  }

  /** The letter that can be put into words in fewest ways, as often as it must be; of the core while there is one. */
  #choose(level: Level, words: readonly number[]): number {
    const own = this.#core.filter((l) => !level.members.includes(l));
    const choice = own.length > 0 ? own : level.others;
    if (choice.length === 1) return num(choice, 0);
    const ways = choice.map(() => 0);
    const step = Math.ceil(words.length / ASKED);
    for (let i = 0; i < words.length; i += step) {
      const w = num(words, i);
      const length = this.#read(level, w);
      choice.forEach((letter, c) => {
        const times = Math.max(this.#points.of(letter), u8(level.points, w * this.#letters + letter));
        this.#ways = 0;
        this.#countWays({ gap: 0, length }, i32(this.#points.whole, letter), times);
        ways[c] = num(ways, c) + this.#ways;
        this.#meter.units += A_LOOK + (this.#ways >> 4);
      });
    }
    return num(choice, ways.indexOf(Math.min(...ways)));
  }

  #read({ words, lengths, members }: Level, w: number): number {
    const length = i32(lengths, w);
    this.#points.read(words, w * this.#limit, length, members);
    this.#meter.units += A_READ;
    return length;
  }

  /** Asks for one more of a letter in a word. @returns whether that is not too much */
  #oftener(level: Level, w: number, letter: number): boolean {
    const at = w * this.#letters;
    level.points[at + letter] = u8(level.points, at + letter) + 1;
    this.#sums.count(level.words, w * this.#limit, i32(level.lengths, w));
    this.#meter.units++;
    return this.#sums.total(level.rest, level.points, at) <= this.#limit;
  }

  #countWays({ gap, length }: { gap: number; length: number }, wait: number, times: number): void {
    const { open } = this.#points;
    for (let g = gap; this.#ways < MOST_WAYS; g++) {
      const here = i32(open, g);
      const rest = wait & ~here;
      if (rest === 0) this.#ways++;
      for (let own = 1; own < times && g < length; own++) this.#countWays({ gap: g + 1, length }, rest, times - own);
      if (g === length || (wait & here & ~i32(open, g + 1)) !== 0) return;
    }
  }

  /** Puts a letter into a word in all ways, as often as it must be. */
  #extend({ level, next, letter }: { level: Level; next: Level; letter: number }, w: number): void {
    const length = this.#read(level, w);
    const at = w * this.#letters + letter;
    const times = Math.max(this.#points.of(letter), u8(level.points, at));
    level.points[at] = times;
    this.#meter.units += A_LOOK;
    this.#sums.count(level.words, w * this.#limit, length);
    this.#sums.add(letter, times);
    if (this.#sums.total(next.rest, level.points, w * this.#letters) > this.#limit) return;
    this.#open.set(this.#points.open.subarray(0, length + 1));
    this.#from = level;
    this.#into = next;
    this.#at = w;
    this.#letter = letter;
    this.#put({ gap: 0, to: 0 }, i32(this.#points.whole, letter), times);
  }

  /** Goes on from a gap of the word that is looked at, and a place in the one that is written. */
  #put({ gap, to }: { gap: number; to: number }, wait: number, times: number): void {
    const open = this.#open;
    const length = i32(this.#from.lengths, this.#at);
    const start = this.#at * this.#limit;
    for (let g = gap, at = to; ; g++, at++) {
      const here = i32(open, g);
      const rest = wait & ~here;
      for (let own = 1; own <= times; own++) {
        this.#word[at + own - 1] = this.#letter;
        if (own === times) {
          if (rest === 0) this.#take(g, at + own);
        } else if (g < length) {
          this.#word[at + own] = u8(this.#from.words, start + g);
          this.#put({ gap: g + 1, to: at + own + 1 }, rest, times - own);
        }
      }
      // What closes here would never be met.
      if (g === length || (wait & here & ~i32(open, g + 1)) !== 0) return;
      this.#word[at] = u8(this.#from.words, start + g);
    }
  }

  /** Takes the word at hand with what is left of the one that is looked at, unless it comes to too much. */
  #take(gap: number, to: number): void {
    const k = this.#letters;
    const next = this.#into;
    const { others, rest } = next;
    const size = to + i32(this.#from.lengths, this.#at) - gap;
    for (let i = to, g = this.#at * this.#limit + gap; i < size; i++, g++) this.#word[i] = u8(this.#from.words, g);
    this.#makeRoom(next);
    const at = next.count * k;
    const { points } = next;
    for (let l = 0; l < k; l++) points[at + l] = u8(this.#from.points, this.#at * k + l);
    this.#points.read(this.#word, 0, size, next.members);
    this.#meter.units += A_READ;
    let total = this.#sums.total(rest, points, at);
    for (let i = 0; i < others.length; i++) {
      const l = num(others, i);
      const now = this.#points.of(l);
      this.#meter.units += A_LOOK;
      if (now <= u8(points, at + l)) continue;
      points[at + l] = now;
      total = this.#sums.again(l, rest, points, at);
      if (total <= this.#limit) continue;
      // It is likely to be too much for the next one too.
      for (let j = i; j > 0; j--) others[j] = num(others, j - 1);
      others[0] = l;
      return;
    }
    next.words.set(this.#word.subarray(0, size), next.count * this.#limit);
    next.lengths[next.count++] = size;
  }

  /** Room for one word more. */
  #makeRoom(level: Level): void {
    if (level.count < level.lengths.length) return;
    const room = 2 * level.count + 16;
    level.lengths = grown(level.lengths, room);
    level.words = grown(level.words, room * this.#limit);
    level.points = grown(level.points, room * this.#letters);
  }
}
