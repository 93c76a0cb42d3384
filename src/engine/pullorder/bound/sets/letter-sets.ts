import { entryAt, num } from '../../../base/at.ts';
import { bitCount } from '../../../base/bits.ts';
import type { Meter, Model } from '../../model.ts';
import { holds, pullsByLetter } from '../letter-pulls.ts';
import { enterBit, LetterRelations } from '../letter-relations.ts';
import { FourNeeds } from './four-needs.ts';
import type { SetOrder } from './set-order.ts';
import { SetSearch } from './set-search.ts';
import { codeOf, smallOrders, type SmallOrders } from './small-orders.ts';
import { SmallSets } from './small-sets.ts';

/** Most letters of a set; larger ones take long a step. */
export const MAX_SET = 12;
const FOURS = smallOrders(4);
/** Ways to choose one pull of each letter of a sheet that are looked at. */
const MAX_CHOICES = 6;
/** Most orders that a search goes by; leaving some out keeps a lower bound one. */
const MAX_ORDERS = 80;

/**
 * How often the letters of a small set must come together, by A* over the tuples of what is left on
 * each sheet when all other letters are struck out (`SetSearch`). What is still to come is
 * underestimated by the exact least lengths on all sets of four of the letters (`FourNeeds`), rounded
 * up at every size of set (`RestSums`).
 *
 * A letter that comes several times on a sheet is taken as each of its pulls in turn, as sheets of
 * their own: a word that finishes the sheet finishes what is left when pulls are struck out. That
 * may make the answer smaller, never larger than the truth.
 */
export class LetterSets {
  readonly #model: Model;
  readonly #meter: Meter;
  readonly #small: SmallSets[] = [];
  readonly #fours: FourNeeds;
  readonly #pullsOf: Map<number, number[]>[];
  readonly #relations: LetterRelations | null;

  constructor(model: Model, meter: Meter) {
    this.#model = model;
    this.#meter = meter;
    this.#fours = new FourNeeds(meter);
    this.#relations = LetterRelations.of(model, meter);
    this.#pullsOf = pullsByLetter(model.orders);
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
    if (letters.length <= 4) return { least: this.#leastOfFour(letters), finished: true };
    const orders = this.#ordersOn(letters);
    if (orders.length === 0) return { least: 0, finished: true };
    return yield* new SetSearch(orders, letters.length, this.#fours, this.#meter).run(maxNodes);
  }

  #sets(k: number): SmallSets {
    return (this.#small[k] ??= new SmallSets(k, this.#meter));
  }

  /** Exact, for at most four letters with one pull of each a sheet; else a lower bound. */
  #leastOfFour(letters: readonly number[]): number {
    if (letters.length === 4) {
      const set = new Int32Array(FOURS.words);
      this.#enterOrders(letters, FOURS, set);
      return this.#fours.of(set, 0) >> 4;
    }
    const sets = this.#sets(letters.length);
    const set = new Int32Array(sets.orders.words);
    this.#enterOrders(letters, sets.orders, set);
    return sets.least(sets.setOf(set));
  }

  /** Enters the numbers of the orders on at most four letters. */
  #enterOrders(letters: readonly number[], { idOf }: SmallOrders, set: Int32Array): void {
    const relations = this.#relations;
    if (relations !== null && letters.length > 1 && !relations.anyTwice(letters)) {
      relations.enter(letters, idOf, set);
      this.#meter.units += letters.length === 3 ? 4 : 6 + (relations.orders >> 1);
    } else for (const { present, preds } of this.#ordersOn(letters)) enterBit(set, num(idOf, codeOf(letters.length, present, preds)));
  }

  /** The distinct orders on the letters, without those that another one implies. */
  #ordersOn(letters: readonly number[]): SetOrder[] {
    const found = new Map<string, SetOrder>();
    this.#model.orders.forEach(({ preds }, c) => {
      const pulls = letters.map((l) => entryAt(this.#pullsOf, c).get(l) ?? []);
      const choices = Math.min(
        MAX_CHOICES,
        pulls.reduce((n, own) => n * Math.max(1, own.length), 1),
      );
      for (let choice = 0; choice < choices; choice++) {
        const order = orderOn(chosen(pulls, choice), preds);
        const key = `${order.present},${order.preds.join()}`;
        if (!found.has(key)) found.set(key, order);
      }
      this.#meter.units += choices * 2 * letters.length;
    });
    const list = [...found.values()].slice(0, 4 * MAX_ORDERS);
    this.#meter.units += (list.length * list.length) >> 3;
    const kept = list.filter((a, i) => !list.some((b, j) => i !== j && implies(b, a)));
    // Those that ask most come first.
    return kept.length > MAX_ORDERS ? kept.sort((a, b) => asks(b) - asks(a)).slice(0, MAX_ORDERS) : kept;
  }
}

/** One pull of each letter, −1 for a letter that the sheet lacks; `choice` counts through all ways. */
function chosen(pulls: readonly (readonly number[])[], choice: number): number[] {
  let rest = choice;
  return pulls.map((own) => {
    if (own.length === 0) return -1;
    const at = rest % own.length;
    rest = Math.floor(rest / own.length);
    return num(own, at);
  });
}

/** The order among the chosen pulls. */
export function orderOn(pulls: readonly number[], preds: readonly (readonly number[])[]): SetOrder {
  let present = 0;
  const masks = pulls.map((p, l) => {
    if (p < 0) return 0;
    present |= 1 << l;
    let mask = 0;
    pulls.forEach((q, m) => {
      if (q >= 0 && q < p && holds(entryAt(preds, p), q)) mask |= 1 << m;
    });
    return mask;
  });
  return { present, preds: masks };
}

/** Whether a word that finishes the first order finishes the second. */
export function implies(a: SetOrder, b: SetOrder): boolean {
  return (b.present & ~a.present) === 0 && b.preds.every((mask, l) => (mask & ~num(a.preds, l)) === 0);
}

/** How many pairs an order asks for. */
function asks({ preds }: SetOrder): number {
  return preds.reduce((n, mask) => n + bitCount(mask), 0);
}
