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
    const priced = new Priced(open, this.limit, settled);
    let beyond = priced.choose(0);
    if (within(beyond.cost, most)) return { bound: beyond.weight, fits: beyond, beyond };
    const free = open.filter(({ lacks }) => lacks.every((screen) => settled.get(screen) === true));
    let fits: Choice = { screens: [], cost: 0, weight: free.reduce((sum, { weight }) => sum + weight, 0) };
    let bound = beyond.weight;
    for (let round = 0; round < MOST_ROUNDS; round++) {
      const price = (beyond.weight - fits.weight) / (beyond.cost - fits.cost);
      const level = fits.weight + price * (most - fits.cost);
      const next = priced.choose(price);
      const worth = next.weight + price * (most - next.cost);
      // Any price gives a bound, so the least that was seen holds even where rounding ends the search.
      bound = Math.min(bound, Math.max(worth, level));
      if (worth <= level + 1e-9 * Math.max(1, level)) break;
      if (within(next.cost, most)) fits = next;
      else beyond = next;
    }
    return { bound, fits, beyond };
  }
}

/** Groups and the screens that they lack as a network, for any price. */
class Priced {
  private readonly open: readonly Group[];
  private readonly limit: Limit;
  private readonly settled: ReadonlyMap<number, boolean>;
  private readonly firstScreen: number;
  private readonly flow: Flow;
  /** Screens that have a price, and their pipes to the sink. */
  private readonly pipes = new Map<number, number>();

  constructor(open: readonly Group[], limit: Limit, settled: ReadonlyMap<number, boolean>) {
    this.open = open;
    this.limit = limit;
    this.settled = settled;
    this.firstScreen = 1 + open.length;
    const screens = limit.costs.length;
    const sink = this.firstScreen + screens;
    this.flow = new Flow(
      sink + 1,
      open.reduce((sum, { lacks }) => sum + 1 + lacks.length, screens),
    );
    open.forEach(({ lacks, weight }, i) => {
      this.flow.pipe(0, 1 + i, weight);
      for (const screen of lacks) {
        if (settled.get(screen) === true) continue;
        this.flow.pipe(1 + i, this.firstScreen + screen, Infinity);
        this.pipes.set(screen, -1);
      }
    });
    for (const screen of this.pipes.keys()) this.pipes.set(screen, this.flow.pipe(this.firstScreen + screen, sink, 0));
  }

  /** The choice whose weight less the price of its screens is greatest. */
  choose(price: number): Choice {
    for (const [screen, pipe] of this.pipes) this.flow.widen(pipe, price * entryAt(this.limit.costs, screen));
    this.flow.largest();
    const screens = [...this.pipes.keys()].filter((screen) => this.flow.reached(this.firstScreen + screen));
    const made = new Set(screens);
    const weight = this.open.reduce(
      (sum, group) => (group.lacks.every((screen) => this.settled.get(screen) === true || made.has(screen)) ? sum + group.weight : sum),
      0,
    );
    return { screens, cost: costOf(screens, this.limit), weight };
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
