import { entryAt, f64, num, u16 } from '../base/at.ts';
import { deltaE2000 } from '../colour/delta-e.ts';
import { labD50, type Lab } from '../colour/lab.ts';
import { overFilm } from '../ink/film/film.ts';
import { type FilmProduct, layOver, layUnder, noFilm, showOver } from './film-product.ts';
import { PAPER, type SwapDeltas } from './swap-delta.ts';

/** Piles of at most so many films are looked at in all their orders: 120 of five. */
export const MOST_IN_ALL_ORDERS = 5;

/** All orders of a few films. */
interface Orders {
  /** Places in the pile, first down first, lexicographic. */
  list: readonly (readonly number[])[];
  /** By order and place: the index of the order in which it has changed places with the next one up. */
  swapped: Uint16Array;
}

/** All orders of a few films and their colours. */
export interface PileColours {
  orders: readonly (readonly number[])[];
  /** CIELAB of each order, D50/2°. */
  labs: readonly Lab[];
}

/** What two films are laid on. */
interface Ground {
  ground: Float64Array;
  /** Its topmost film, or PAPER. */
  under: number;
}

const ordersOf = new Map<number, Orders>();

/** Colours of piles of films on a paper, each kind of pile worked out once. */
export class Piles {
  private readonly deltas: SwapDeltas;
  private readonly paper: Float64Array;
  private readonly known = new Map<string, PileColours>();
  private readonly scratch: readonly [Float64Array, Float64Array];

  /** @param paper reflectance, 36 bands */
  constructor(deltas: SwapDeltas, paper: ArrayLike<number>) {
    this.deltas = deltas;
    this.paper = Float64Array.from(paper);
    this.scratch = [new Float64Array(paper.length), new Float64Array(paper.length)];
  }

  /**
   * Every order of a pile.
   * @param films film numbers, at most MOST_IN_ALL_ORDERS
   */
  all(films: readonly number[]): PileColours {
    const key = films.join();
    let pile = this.known.get(key);
    if (pile === undefined) {
      pile = { orders: ordersFor(films.length).list, labs: this.coloursOf(films) };
      this.known.set(key, pile);
    }
    return pile;
  }

  /**
   * The most that pairs of a pile show when they change places next to each other, ΔE00: in all its
   * orders up to MOST_IN_ALL_ORDERS films, else with the upper one brought down to the lower or the
   * lower one up to the upper and all others as they lie.
   * @param films film numbers, first down first
   * @param pairs places of the lower and the upper one
   * @returns one number a pair
   */
  swaps(films: readonly number[], pairs: readonly { i: number; j: number }[]): number[] {
    return films.length <= MOST_IN_ALL_ORDERS ? this.inAllOrders(films, pairs) : this.asTheyLie(films, pairs);
  }

  private inAllOrders(films: readonly number[], pairs: readonly { i: number; j: number }[]): number[] {
    const { labs } = this.all(films);
    const { list, swapped } = ordersFor(films.length);
    const n = films.length;
    const most = new Float64Array(n * n);
    const asked = new Uint8Array(n * n);
    for (const { i, j } of pairs) asked[i * n + j] = 1;
    list.forEach((order, index) => {
      for (let at = 0; at + 1 < n; at++) {
        const pair = num(order, at) * n + num(order, at + 1);
        if (asked[pair] !== 1) continue;
        most[pair] = Math.max(f64(most, pair), deltaE2000(entryAt(labs, index), entryAt(labs, u16(swapped, index * n + at))));
      }
    });
    return pairs.map(({ i, j }) => f64(most, i * n + j));
  }

  private asTheyLie(films: readonly number[], pairs: readonly { i: number; j: number }[]): number[] {
    if (this.deltas.byPairs) return pairs.map(({ i, j }) => this.directly(films, i, j));
    const over = this.productsFrom(films);
    const most = new Map<number, number>();
    const asked = new Set(pairs.map(({ i, j }) => i * films.length + j));
    const below = this.paper.slice();
    const raised = this.paper.slice();
    films.forEach((film, i) => {
      const under = films[i - 1] ?? PAPER;
      const between = noFilm(below.length);
      raised.set(below);
      for (let j = i + 1; j < films.length; j++) {
        const other = num(films, j);
        const last = j > i + 1 ? num(films, j - 1) : under;
        if (asked.has(i * films.length + j)) {
          const above = entryAt(over, j + 1);
          let shown = this.difference({ ground: below, under }, [film, other], [between, above]);
          if (j > i + 1) shown = Math.max(shown, this.difference({ ground: raised, under: last }, [film, other], [above]));
          most.set(i * films.length + j, shown);
        }
        layOver(between, this.deltas.film(other, film));
        overFilm(this.deltas.film(other, last), raised, raised);
      }
      overFilm(this.deltas.film(film, under), below, below);
    });
    return pairs.map(({ i, j }) => most.get(i * films.length + j) ?? 0);
  }

  /** The same for one pair film by film, where each is as thick as the ink below it lets it be. */
  private directly(films: readonly number[], i: number, j: number): number {
    const [a, b] = [num(films, i), num(films, j)];
    const below = films.slice(0, i);
    const between = films.slice(i + 1, j);
    const above = films.slice(j + 1);
    const down = this.apart([...below, a, b, ...between, ...above], [...below, b, a, ...between, ...above]);
    const up = this.apart([...below, ...between, a, b, ...above], [...below, ...between, b, a, ...above]);
    return Math.max(down, up);
  }

  private apart(one: readonly number[], other: readonly number[]): number {
    return deltaE2000(this.colourOf(one), this.colourOf(other));
  }

  private colourOf(films: readonly number[]): Lab {
    const ground = this.paper.slice();
    films.forEach((film, at) => overFilm(this.deltas.film(film, films[at - 1] ?? PAPER), ground, ground));
    return labD50(ground);
  }

  /** Of each place of a pile above its first, all films from there up as one; at its end none. */
  private productsFrom(films: readonly number[]): FilmProduct[] {
    const product = noFilm(this.paper.length);
    const out = [product.slice()];
    for (const film of films.toReversed()) {
      layUnder(product, this.deltas.film(film, film));
      out.unshift(product.slice());
    }
    return out;
  }

  /** ΔE00 of two films' orders on a ground, under others. */
  private difference({ ground, under }: Ground, [a, b]: readonly [number, number], above: readonly FilmProduct[]): number {
    const { deltas } = this;
    const [one, other] = this.scratch;
    overFilm(deltas.film(a, under), ground, one);
    overFilm(deltas.film(b, a), one, one);
    overFilm(deltas.film(b, under), ground, other);
    overFilm(deltas.film(a, b), other, other);
    for (const product of above) {
      showOver(product, one, one);
      showOver(product, other, other);
    }
    return deltaE2000(labD50(one), labD50(other));
  }

  /** In the order of the list; orders that begin alike share the films they begin with. */
  private coloursOf(films: readonly number[]): Lab[] {
    const grounds = [this.paper, ...films.map(() => new Float64Array(this.paper.length))];
    const laid = films.map(() => false);
    const labs: Lab[] = [];
    const lay = (depth: number, under: number): void => {
      if (depth === films.length) labs.push(labD50(entryAt(grounds, depth)));
      films.forEach((film, i) => {
        if (laid[i]) return;
        laid[i] = true;
        overFilm(this.deltas.film(film, under), entryAt(grounds, depth), entryAt(grounds, depth + 1));
        lay(depth + 1, film);
        laid[i] = false;
      });
    };
    lay(0, PAPER);
    return labs;
  }
}

/** All orders of 0 … n − 1. */
function ordersFor(n: number): Orders {
  const known = ordersOf.get(n);
  if (known !== undefined) return known;
  const list: number[][] = [];
  const extend = (taken: number[]): void => {
    if (taken.length === n) list.push(taken);
    for (let next = 0; next < n; next++) if (!taken.includes(next)) extend([...taken, next]);
  };
  extend([]);
  const at = new Map(list.map((order, i) => [order.join(), i]));
  const swapped = new Uint16Array(list.length * n);
  list.forEach((order, index) => {
    for (let i = 0; i + 1 < n; i++) {
      const other = [...order.slice(0, i), num(order, i + 1), num(order, i), ...order.slice(i + 2)];
      swapped[index * n + i] = at.get(other.join()) ?? index;
    }
  });
  const orders = { list, swapped };
  ordersOf.set(n, orders);
  return orders;
}
