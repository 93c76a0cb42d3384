import { defined, entryAt, i32, num, u16, u8 } from '../../base/at.ts';
import type { Meter, Model } from '../model.ts';
import { bitCount, codeOf } from './small-orders.ts';
import { SmallSets } from './small-sets.ts';

/** Most letters of a set; down-sets of an order then number at most 1024. */
export const MAX_SET = 10;
/** Ways to choose one pull of each letter of a sheet that are looked at. */
const MAX_CHOICES = 6;
/** Most orders that a search goes by; leaving some out keeps a lower bound one. */
const MAX_ORDERS = 80;

/** One order on a few letters: bits of its letters, and for each letter the bits of those before it. */
interface FewLetters {
  present: number;
  preds: number[];
}

/**
 * How often the letters of a small set must come together, by A* over the tuples of what is printed
 * on each sheet when all other letters are struck out. What is still to come is underestimated by
 * the exact least lengths on all sets of four of the letters (`SmallSets`): a letter lies in
 * C(k − 1, 3) of those sets, so their sum over that number is a lower bound.
 *
 * A letter that comes several times on a sheet is taken as each of its pulls in turn, as sheets of
 * their own: a word that finishes the sheet finishes what is left when pulls are struck out. That
 * may make the answer smaller, never larger than the truth.
 */
export class LetterSets {
  readonly #model: Model;
  readonly #meter: Meter;
  readonly #small: SmallSets[] = [];
  readonly #pullsOf: Map<number, number[]>[];

  constructor(model: Model, meter: Meter) {
    this.#model = model;
    this.#meter = meter;
    this.#pullsOf = model.orders.map((order) => {
      const pulls = new Map<number, number[]>();
      order.letters.forEach((l, p) => {
        if (!pulls.has(l)) pulls.set(l, []);
        defined(pulls.get(l)).push(p);
      });
      return pulls;
    });
  }

  #sets(k: number): SmallSets {
    return (this.#small[k] ??= new SmallSets(k, this.#meter));
  }

  /** The distinct orders on the letters, without those that another one implies. */
  #few(letters: readonly number[]): FewLetters[] {
    const k = letters.length;
    const found = new Map<string, FewLetters>();
    this.#model.orders.forEach(({ preds }, c) => {
      const pulls = letters.map((l) => entryAt(this.#pullsOf, c).get(l) ?? []);
      const all = pulls.reduce((n, own) => n * Math.max(1, own.length), 1);
      for (let choice = 0; choice < Math.min(all, MAX_CHOICES); choice++) {
        let rest = choice;
        let present = 0;
        const chosen = pulls.map((own, l) => {
          if (own.length === 0) return -1;
          present |= 1 << l;
          const at = rest % own.length;
          rest = Math.floor(rest / own.length);
          return num(own, at);
        });
        const masks = chosen.map((p) => {
          let mask = 0;
          if (p >= 0)
            for (let m = 0; m < k; m++)
              if (num(chosen, m) >= 0 && num(chosen, m) < p && holds(entryAt(preds, p), num(chosen, m))) mask |= 1 << m;
          return mask;
        });
        const key = `${present},${masks.join()}`;
        if (!found.has(key)) found.set(key, { present, preds: masks });
      }
      this.#meter.units += Math.min(all, MAX_CHOICES) * 2 * k;
    });
    // Those that ask most come first.
    const weight = (few: FewLetters): number => few.preds.reduce((n, mask) => n + bitCount(mask), 0);
    const list = [...found.values()];
    if (list.length > 4 * MAX_ORDERS) list.length = 4 * MAX_ORDERS;
    this.#meter.units += (list.length * list.length) >> 3;
    const kept = list.filter(
      (a, i) =>
        !list.some((b, j) => i !== j && (a.present & ~b.present) === 0 && a.preds.every((mask, l) => (mask & ~num(b.preds, l)) === 0)),
    );
    return kept.length > MAX_ORDERS ? kept.sort((a, b) => weight(b) - weight(a)).slice(0, MAX_ORDERS) : kept;
  }

  /** Exact, for at most four letters with one pull of each a sheet; else a lower bound. */
  #leastOfFour(letters: readonly number[]): number {
    const sets = this.#sets(letters.length);
    const mask = new Int32Array(sets.orders.words);
    for (const { present, preds } of this.#few(letters)) {
      const id = num(sets.orders.idOf, codeOf(letters.length, present, preds));
      mask[id >> 5] = i32(mask, id >> 5) | (1 << (id & 31));
    }
    return sets.least(sets.setOf(mask));
  }

  /** All of `steps` in one go. */
  least(letters: readonly number[], maxNodes: number): { least: number; finished: boolean } {
    const steps = this.steps(letters, maxNodes);
    for (;;) {
      const next = steps.next();
      if (next.done) return next.value;
    }
  }

  /**
   * @param letters different letters, at most `MAX_SET`
   * @param maxNodes states after which the search ends with what it has shown
   * @returns `least`: no word has fewer of these letters together; `finished`: whether that is the
   *   least number exactly (when no letter comes twice on a sheet)
   */
  *steps(letters: readonly number[], maxNodes: number): Generator<void, { least: number; finished: boolean }> {
    const k = letters.length;
    if (k <= 4) return { least: this.#leastOfFour(letters), finished: true };
    const orders = this.#few(letters);
    const n = orders.length;
    if (n === 0) return { least: 0, finished: true };
    const four = this.#sets(4);
    const { words, idOf } = four.orders;
    const fours = foursOf(k);
    const share = (fours.length * 4) / k;
    const inFour = new Uint8Array(k * fours.length);
    fours.forEach((set, t) => set.forEach((l) => (inFour[l * fours.length + t] = 1)));
    // Tables of each order: its down-sets, where letters lead, and what is left of it on each four letters.
    const steps: Uint16Array[] = [];
    const lefts: Int16Array[] = [];
    const sizes: number[] = [];
    for (const { present, preds } of orders) {
      const number = new Map<number, number>([[0, 0]]);
      const downs = [0];
      for (let s = 0; s < downs.length; s++) {
        for (let l = 0; l < k; l++) {
          const down = num(downs, s) | (1 << l);
          if (!(((present & ~num(downs, s)) >> l) & 1) || (num(preds, l) & ~num(downs, s)) !== 0 || number.has(down)) continue;
          number.set(down, downs.length);
          downs.push(down);
        }
      }
      const step = new Uint16Array(downs.length * k);
      downs.forEach((down, s) => {
        for (let l = 0; l < k; l++) {
          const comes = ((present & ~down) >> l) & 1 && (num(preds, l) & ~down) === 0;
          step[s * k + l] = comes ? defined(number.get(down | (1 << l))) : s;
        }
      });
      // Row-major, down-sets × fours.
      const left = new Int16Array(downs.length * fours.length);
      const owns = fours.map((set) => set.map((l) => set.reduce((bits, m, j) => bits | (((num(preds, l) >> m) & 1) << j), 0)));
      downs.forEach((down, s) => {
        for (let t = 0; t < fours.length; t++) {
          const set = entryAt(fours, t);
          const own = entryAt(owns, t);
          const open = present & ~down;
          const here =
            ((open >> num(set, 0)) & 1) |
            (((open >> num(set, 1)) & 1) << 1) |
            (((open >> num(set, 2)) & 1) << 2) |
            (((open >> num(set, 3)) & 1) << 3);
          let code = here;
          for (let i = 0; i < 4; i++) if ((here >> i) & 1) code |= (num(own, i) & here) << (4 * (i + 1));
          left[s * fours.length + t] = num(idOf, code);
        }
      });
      lefts.push(left);
      sizes.push(downs.length - 1);
      this.#meter.units += downs.length * (1 + (fours.length >> 2));
      steps.push(step);
    }

    let room = 1024;
    let states = new Uint16Array(room * n);
    /** Numbers of what is left on each four letters, a row a node. */
    let rests = new Int32Array(room * fours.length);
    let costs = new Uint8Array(room);
    let guesses = new Uint8Array(room);
    let closed = new Uint8Array(room);
    let count = 0;
    let looked = 0;
    let table = new Int32Array(4096).fill(-1);
    const buckets: number[][] = [];
    const hashOf = (at: number): number => {
      let h = 0;
      for (let c = 0; c < n; c++) h = Math.imul(h ^ u16(states, at + c), 0x9e3779b1) ^ (h >>> 15);
      return (h ^ (h >>> 13)) >>> 0;
    };
    const mask = new Int32Array(words);
    const restOf = (at: number, t: number): number => {
      mask.fill(0);
      for (let c = 0; c < n; c++) {
        const id = num(entryAt(lefts, c), u16(states, at + c) * fours.length + t);
        mask[id >> 5] = i32(mask, id >> 5) | (1 << (id & 31));
      }
      this.#meter.units += 1 + (n >> 4);
      return four.setOf(mask);
    };
    const guess = (at: number): number => {
      let sum = 0;
      let most = 0;
      for (let t = 0; t < fours.length; t++) {
        const value = four.least(i32(rests, at + t));
        sum += value;
        if (value > most) most = value;
      }
      this.#meter.units += 1 + (fours.length >> 3);
      return Math.max(most, Math.ceil(sum / share));
    };
    /** Enters the tuple written at slot `count`. */
    const enter = (cost: number, parent: number, letter: number): void => {
      const at = count * n;
      let slot = hashOf(at) & (table.length - 1);
      for (; i32(table, slot) >= 0; slot = (slot + 1) & (table.length - 1)) {
        const node = i32(table, slot);
        let c = 0;
        while (c < n && states[node * n + c] === states[at + c]) c++;
        if (c < n) continue;
        if (u8(costs, node) > cost) {
          costs[node] = cost;
          closed[node] = 0;
          (buckets[cost + u8(guesses, node)] ??= []).push(node);
        }
        return;
      }
      table[slot] = count;
      costs[count] = cost;
      const row = count * fours.length;
      if (parent >= 0)
        for (let t = 0; t < fours.length; t++) {
          if (inFour[letter * fours.length + t]) rests[row + t] = restOf(at, t);
          else rests[row + t] = i32(rests, parent * fours.length + t);
        }
      guesses[count] = guess(row);
      (buckets[cost + u8(guesses, count)] ??= []).push(count);
      count++;
      if (count === room) {
        room *= 2;
        states = grown(new Uint16Array(room * n), states);
        rests = grown(new Int32Array(room * fours.length), rests);
        costs = grown(new Uint8Array(room), costs);
        guesses = grown(new Uint8Array(room), guesses);
        closed = grown(new Uint8Array(room), closed);
      }
      if (count * 2 > table.length) {
        table = new Int32Array(table.length * 2).fill(-1);
        for (let node = 0; node < count; node++) {
          let s = hashOf(node * n) & (table.length - 1);
          while (i32(table, s) >= 0) s = (s + 1) & (table.length - 1);
          table[s] = node;
        }
      }
    };
    for (let t = 0; t < fours.length; t++) rests[t] = restOf(0, t);
    enter(0, -1, -1);
    for (let total = 0; total < buckets.length; total++) {
      const bucket = (buckets[total] ??= []);
      while (bucket.length > 0) {
        const node = defined(bucket.pop());
        const cost = u8(costs, node);
        if (closed[node] || cost + u8(guesses, node) !== total) continue;
        closed[node] = 1;
        if (++looked % 200 === 0) yield;
        let done = true;
        for (let c = 0; c < n && done; c++) done = states[node * n + c] === sizes[c];
        if (done) return { least: total, finished: true };
        if (count >= maxNodes) return { least: total, finished: false };
        for (let l = 0; l < k; l++) {
          let moves = false;
          for (let c = 0; c < n; c++) {
            const from = u16(states, node * n + c);
            const to = u16(entryAt(steps, c), from * k + l);
            states[count * n + c] = to;
            if (to !== from) moves = true;
          }
          this.#meter.units += 1 + (n >> 4);
          if (moves) enter(cost + 1, node, l);
        }
      }
    }
    throw new Error('Some sheet cannot be finished: its order goes round in a circle.');
  }
}

function grown<T extends Uint8Array | Uint16Array | Int32Array>(to: T, from: T): T {
  to.set(from as never);
  return to;
}

/** All sets of four of k letters. */
function foursOf(k: number): number[][] {
  const out: number[][] = [];
  for (let a = 0; a < k; a++)
    for (let b = a + 1; b < k; b++) for (let c = b + 1; c < k; c++) for (let d = c + 1; d < k; d++) out.push([a, b, c, d]);
  return out;
}

/** Whether an ascending list holds a number. */
export function holds(list: readonly number[], value: number): boolean {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (num(list, middle) < value) low = middle + 1;
    else high = middle;
  }
  return list[low] === value;
}
