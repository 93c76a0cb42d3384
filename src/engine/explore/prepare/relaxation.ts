import { entryAt } from '../../base/at.ts';
import { Flow } from './flow.ts';
import { costOf, type Group, type Limit, within } from './screen-sets.ts';

/** A choice of screens by some price, and what it prints. */
interface Choice {
  /** Screens beyond those that are settled. */
  screens: number[];
  cost: number;
  weight: number;
}

/** A bound on what so many screens print, and choices near it. */
export interface Relaxed {
  bound: number;
  /** A choice that keeps to what there is. */
  fits: Choice;
  /** The choice at the same price that goes beyond it; the same as `fits` where the bound is met. */
  beyond: Choice;
}

/** Rounds of the search for the price; each finds a new choice, so few are ever needed. */
const MOST_ROUNDS = 60;

/**
 * The relaxation of 'print as much weight as what there is allows' by a price of what screens cost. At a price the
 * best choice is a closure of greatest worth, found by a largest flow (Picard 1976, 'Maximal closure of
 * a graph'); the least over all prices is the value of the programme's linear relaxation.
 */
export class Relaxation {
  private readonly groups: readonly Group[];
  private readonly limit: Limit;

  constructor(groups: readonly Group[], limit: Limit) {
    this.groups = groups;
    this.limit = limit;
  }

  /**
   * @param settled screens that are made (true) or not (false), by index
   * @param most what is left of what there is for screens beyond those settled as made
   */
  solve(settled: ReadonlyMap<number, boolean>, most: number): Relaxed {
    const open = this.groups.filter(({ lacks }) => {
      const more = lacks.filter((screen) => settled.get(screen) !== true);
      return !more.some((screen) => settled.has(screen)) && within(costOf(more, this.limit), most);
    });
    let beyond = this.choose(open, settled, 0);
    if (within(beyond.cost, most)) return { bound: beyond.weight, fits: beyond, beyond };
    const free = open.filter(({ lacks }) => lacks.every((screen) => settled.get(screen) === true));
    let fits: Choice = { screens: [], cost: 0, weight: free.reduce((sum, { weight }) => sum + weight, 0) };
    let bound = beyond.weight;
    for (let round = 0; round < MOST_ROUNDS; round++) {
      const price = (beyond.weight - fits.weight) / (beyond.cost - fits.cost);
      const level = fits.weight + price * (most - fits.cost);
      const next = this.choose(open, settled, price);
      const worth = next.weight + price * (most - next.cost);
      // Any price gives a bound, so the least that was seen holds even where rounding ends the search.
      bound = Math.min(bound, Math.max(worth, level));
      if (worth <= level + 1e-9 * Math.max(1, level)) break;
      if (within(next.cost, most)) fits = next;
      else beyond = next;
    }
    return { bound, fits, beyond };
  }

  /** The choice whose weight less the price of its screens is greatest. */
  private choose(open: readonly Group[], settled: ReadonlyMap<number, boolean>, price: number): Choice {
    const firstScreen = 1 + open.length;
    const { costs } = this.limit;
    const sink = firstScreen + costs.length;
    const flow = new Flow(sink + 1);
    const priced = new Set<number>();
    open.forEach(({ lacks, weight }, i) => {
      flow.pipe(0, 1 + i, weight);
      for (const screen of lacks) {
        if (settled.get(screen) === true) continue;
        flow.pipe(1 + i, firstScreen + screen, Infinity);
        priced.add(screen);
      }
    });
    for (const screen of priced) {
      const cost = price * entryAt(costs, screen);
      if (cost > 0) flow.pipe(firstScreen + screen, sink, cost);
    }
    flow.largest();
    const screens = [...priced].filter((screen) => flow.reached(firstScreen + screen));
    const made = new Set(screens);
    const printed = open.filter(({ lacks }) => lacks.every((screen) => settled.get(screen) === true || made.has(screen)));
    return { screens, cost: costOf(screens, this.limit), weight: printed.reduce((sum, { weight }) => sum + weight, 0) };
  }
}

/**
 * The screen over which two choices differ and which most weight wants; where they do not differ, one that is not
 * settled yet, as another limit may stand against the choice. -1 where there is none.
 */
export function disputed(groups: readonly Group[], { fits, beyond }: Relaxed): number {
  const settled = new Set(fits.screens);
  const differ = beyond.screens.filter((screen) => !settled.has(screen));
  const wanted = new Map((differ.length > 0 ? differ : fits.screens).map((screen) => [screen, 0]));
  for (const { lacks, weight } of groups) {
    for (const screen of lacks) {
      const sum = wanted.get(screen);
      if (sum !== undefined) wanted.set(screen, sum + weight);
    }
  }
  const list = [...wanted].sort(([a, one], [b, other]) => other - one || a - b);
  return list.length === 0 ? -1 : entryAt(list, 0)[0];
}
