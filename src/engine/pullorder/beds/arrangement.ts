import { defined, entryAt, i32 } from '../../base/at.ts';
import type { SetUp } from '../types.ts';
import type { BedSetUp } from './bed-clock.ts';
import type { Shop } from './shop.ts';

/** Between which places of an order pulls may stand: after `low` and before `high`, set-ups by index. */
export interface Window {
  low: number;
  high: number;
}

/** Set-ups in the order in which they are taken up, each with its bed: what a search goes on from. It is never changed. */
export class BedOrder {
  readonly setUps: readonly BedSetUp[];
  /** By pull: the index of its set-up. */
  readonly #at: Int32Array;
  readonly #shop: Shop;
  readonly #ofKind = new Map<number, number[]>();
  readonly #ofScreen = new Map<number, number[]>();

  constructor(setUps: readonly BedSetUp[], shop: Shop) {
    this.setUps = setUps;
    this.#shop = shop;
    this.#at = new Int32Array(shop.pulls).fill(-1);
    for (let i = 0; i < setUps.length; i++) {
      const { pulls } = entryAt(setUps, i);
      for (let k = 0; k < pulls.length; k++) this.#at[i32(pulls, k)] = i;
    }
  }

  /** Where pulls may stand: behind all that must lie under them, before all that must lie over them. */
  windowOf(pulls: Int32Array): Window {
    const { under, over } = this.#shop;
    let [low, high] = [-1, this.setUps.length];
    for (let k = 0; k < pulls.length; k++) {
      const pull = i32(pulls, k);
      for (let i = i32(under.from, pull); i < i32(under.from, pull + 1); i++) low = Math.max(low, i32(this.#at, i32(under.items, i)));
      for (let i = i32(over.from, pull); i < i32(over.from, pull + 1); i++) high = Math.min(high, i32(this.#at, i32(over.items, i)));
    }
    return { low, high };
  }

  /** The set-up behind which all lies that must lie under a pull. */
  freeAfter(pull: number): number {
    const { under } = this.#shop;
    let low = -1;
    for (let i = i32(under.from, pull); i < i32(under.from, pull + 1); i++) low = Math.max(low, i32(this.#at, i32(under.items, i)));
    return low;
  }

  /** Indices of the set-ups of a kind, ascending. */
  ofKind(kind: number): readonly number[] {
    return this.#having(this.#ofKind, kind, (each) => each);
  }

  /** Indices of the set-ups of a screen, ascending. */
  ofScreen(screen: number): readonly number[] {
    return this.#having(this.#ofScreen, screen, (kind) => entryAt(this.#shop.kinds, kind).screen);
  }

  #having(known: Map<number, number[]>, what: number, whatOf: (kind: number) => number): readonly number[] {
    let list = known.get(what);
    if (list === undefined) known.set(what, (list = this.setUps.flatMap(({ kind }, i) => (whatOf(kind) === what ? [i] : []))));
    return list;
  }
}

/** Set-ups of a plan in numbers. @param beds by set-up, from 0 */
export function numbered(setUps: readonly SetUp[], beds: readonly number[], shop: Shop): BedSetUp[] {
  return setUps.map((setUp, i) => {
    const pulls = Int32Array.from(setUp.pulls, ([s, p]) => shop.pullAt(s, p)).sort();
    return { kind: i32(shop.kindOf, i32(pulls, 0)), pulls, bed: defined(beds[i]) };
  });
}

/** An arrangement in the words of a plan. @param kindOf the screen, ink and offset of a kind, by one of its pulls */
export function inWords(
  setUps: readonly BedSetUp[],
  kindOf: (sheet: number, pull: number) => Omit<SetUp, 'pulls'>,
  shop: Shop,
): { setUps: SetUp[]; beds: number[] } {
  return {
    setUps: setUps.map(({ pulls }) => {
      const places = Array.from(pulls, shop.placeOf);
      return { ...kindOf(...entryAt(places, 0)), pulls: places };
    }),
    beds: setUps.map(({ bed }) => bed),
  };
}
