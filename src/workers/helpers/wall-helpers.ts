import { entryAt, num } from '../../engine/base/at.ts';
import type { FirstDraw } from '../../engine/explore/search/first-draw.ts';
import type { Variant } from '../../engine/explore/types.ts';
import type { DrawnTile } from '../jobs/wall-painter.ts';
import type { HelperOrder } from './wall-helper.ts';

/** A WallHelper in a worker. */
export interface RemoteHelper {
  begin(order: HelperOrder): Promise<void>;
  draw(from: number, count: number): Promise<(FirstDraw | null)[]>;
  paint(variants: readonly Variant[]): Promise<DrawnTile[]>;
  /** Whether its worker still is to be started, on a core that the page has as well. */
  readonly late?: boolean;
  /** Whether it is to be asked for nothing just now. */
  readonly away?: boolean;
}

/** Candidates asked for at once, at most; fewer where they take long, for which the search would wait. */
const MOST_IN_BLOCK = 8;
/** A block is to take about so long, ms. */
const BLOCK_MS = 200;
/** Blocks that a helper has before it at most. */
const AHEAD = 2;
/** Candidates drawn ahead at most by the search itself while it would wait. */
const MOST_LENT = 24;
/** More would wait for the one search that they help. */
const MOST_HELPERS = 6;

/**
 * How many helpers a search has on a machine of so many cores: the page and the search have one each, but where there are
 * but two: the page has so little to do while a wall hangs that a helper can have its core as well.
 */
export function helpersFor(cores: number): number {
  return cores === 2 ? 1 : Math.max(0, Math.min(MOST_HELPERS, cores - 2));
}

/**
 * Helpers of one wall: they draw candidates ahead of the search and paint what it has
 * found. The wall is the same with any number of them: what a helper has not given in time, or cannot,
 * is done by the search itself.
 */
export class WallHelpers {
  private readonly helpers: readonly RemoteHelper[];
  private readonly order: HelperOrder;
  private readonly begun = new Set<RemoteHelper>();
  private readonly work: number[];
  private readonly ready: boolean[];
  private readonly drawn = new Map<number, FirstDraw | null>();
  private asked = 0;
  /** Candidates that are asked for next. */
  private block = 1;
  /** The last candidate whose first attempt was taken, or made by the search itself. */
  private taken = -1;
  private failed = false;

  constructor(helpers: readonly RemoteHelper[], order: HelperOrder) {
    this.helpers = helpers;
    this.order = order;
    this.work = helpers.map(() => 0);
    this.ready = helpers.map(() => false);
    this.begin(helpers.filter(({ late }) => late !== true));
  }

  /** Begins those that were late: the page has its room opened. */
  beginLate(): void {
    if (this.begun.size < this.helpers.length) this.begin(this.helpers);
  }

  private begin(some: readonly RemoteHelper[]): void {
    this.helpers.forEach((helper, i) => {
      if (this.begun.has(helper) || !some.includes(helper)) return;
      this.begun.add(helper);
      helper.begin(this.order).then(
        () => {
          this.ready[i] = true;
        },
        () => this.fail(),
      );
    });
  }

  /** Whether there is one that could be given work. */
  get any(): boolean {
    return !this.failed && this.idlest() >= 0;
  }

  /** What was drawn of a candidate; undefined when it was not. */
  readonly first = (candidate: number): FirstDraw | null | undefined => {
    const found = this.drawn.get(candidate);
    this.drawn.delete(candidate);
    this.taken = candidate;
    return found;
  };

  /**
   * Asks for what the search needs next.
   * @param next the candidate that it draws next
   * @param draws how many it may draw before it asks again
   * @returns whether it need not wait
   */
  ahead(next: number, draws: number): boolean {
    if (!this.any) return true;
    this.asked = Math.max(this.asked, next);
    for (let helper = this.idlest(); helper >= 0 && num(this.work, helper) < AHEAD; helper = this.idlest()) {
      this.ask(helper, this.asked, this.block);
      this.asked += this.block;
    }
    for (let candidate = Math.max(next, this.taken + 1); candidate < Math.min(next + draws, this.asked); candidate++)
      if (!this.drawn.has(candidate)) return false;
    return true;
  }

  /**
   * Has the search draw a candidate that no helper was asked for yet, in the place of waiting.
   * @returns false when enough are drawn ahead
   */
  lend(draw: (candidate: number) => FirstDraw | null): boolean {
    if (!this.any || this.drawn.size >= MOST_LENT) return false;
    const candidate = this.asked++;
    this.drawn.set(candidate, draw(candidate));
    return true;
  }

  /** Paints prints; null when they must be painted elsewhere. */
  async paint(variants: readonly Variant[]): Promise<DrawnTile[] | null> {
    // One helper has enough to do with drawing.
    const helper = this.any && this.helpers.length > 1 ? this.idlest() : -1;
    if (helper < 0) return null;
    return await this.give(helper, (each) => each.paint(variants));
  }

  private ask(helper: number, from: number, count: number): void {
    const start = performance.now();
    void this.give(helper, (each) => each.draw(from, count)).then((drawn) => {
      const took = performance.now() - start;
      if (took > BLOCK_MS) this.block = Math.max(1, count >> 1);
      else if (took < BLOCK_MS / 2) this.block = Math.min(MOST_IN_BLOCK, count * 2);
      drawn?.forEach((each, i) => {
        if (from + i > this.taken) this.drawn.set(from + i, each);
      });
    });
  }

  private async give<T>(helper: number, work: (helper: RemoteHelper) => Promise<T>): Promise<T | null> {
    this.work[helper] = num(this.work, helper) + 1;
    try {
      return await work(entryAt(this.helpers, helper));
    } catch {
      this.fail();
      return null;
    } finally {
      this.work[helper] = num(this.work, helper) - 1;
    }
  }

  private idlest(): number {
    let best = -1;
    this.ready.forEach((ready, i) => {
      if (ready && entryAt(this.helpers, i).away !== true && (best < 0 || num(this.work, i) < num(this.work, best))) best = i;
    });
    return best;
  }

  /** The search does without them; an error of the input comes to light there. */
  private fail(): void {
    this.failed = true;
  }
}
