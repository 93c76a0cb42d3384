import { entryAt, f64, i32 } from '../../base/at.ts';
import { type Random, randomFrom } from '../../base/random.ts';
import { costOf, type Group, type Limit, type ScreenSets, weightWith, within } from './screen-sets.ts';

/** What a print counts for each of its screens that is not there, as a share: how far a climb looks ahead. */
const AHEAD = [0.2, 0.35, 0.5] as const;
/** Steps without a better choice after which a climb begins elsewhere. */
const PATIENCE = 150;

/**
 * A choice of screens that is changed one by one. The search goes by what is nearly printable as well, as most
 * single changes print neither more nor less; what was changed stays for some steps, so that it leaves where it
 * can go no higher. Source: Glover (1986), 'Future paths for integer programming' (tabu search).
 */
export class Climb {
  private readonly groups: readonly Group[];
  private readonly limits: readonly Limit[];
  private readonly screens: number;
  private readonly random: Random;
  /** Places of the groups that lack a screen. */
  private readonly at: number[][];
  private readonly missing: Int32Array;
  private readonly spent: Float64Array;
  private readonly until: Int32Array;
  private readonly made = new Set<number>();
  private weight = 0;
  private done = 0;
  private best: { made: Set<number>; weight: number };

  constructor({ groups, limits, names }: ScreenSets) {
    this.groups = groups;
    this.limits = limits;
    this.screens = names.length;
    this.random = randomFrom('screens to make');
    this.at = names.map(() => []);
    groups.forEach(({ lacks }, i) => lacks.forEach((screen) => entryAt(this.at, screen).push(i)));
    this.missing = Int32Array.from(groups, ({ lacks }) => lacks.length);
    this.spent = new Float64Array(limits.length);
    this.until = new Int32Array(this.screens);
    this.best = { made: new Set(), weight: 0 };
  }

  /**
   * Climbs from a choice, then from parts of the best one and from nothing, in turns.
   * @param work looks at prints, about 10⁸ a second
   */
  from(start: Iterable<number>, work: number): { made: Set<number>; weight: number } {
    for (const screen of [...this.made]) this.drop(screen);
    for (const screen of start) this.add(screen);
    this.note();
    const stop = this.done + work;
    for (let round = 0; this.done < stop; round++) {
      if (round > 0) this.begin(round % 2 === 0);
      this.fill();
      this.climb(AHEAD[round % AHEAD.length] ?? AHEAD[0], stop);
    }
    return this.best;
  }

  private begin(anew: boolean): void {
    for (const screen of [...this.made]) this.drop(screen);
    if (anew) return;
    for (const screen of this.best.made) if (this.random.chance(1, 2)) this.add(screen);
  }

  private climb(ahead: number, stop: number): void {
    const longest = this.groups.reduce((most, { lacks }) => Math.max(most, lacks.length), 0);
    const share = Float64Array.from({ length: longest + 1 }, () => 1);
    for (let i = 1; i <= longest; i++) share[i] = f64(share, i - 1) * ahead;
    this.until.fill(0);
    this.note();
    let highest = this.weight;
    let since = 0;
    for (let step = 1; since < PATIENCE && this.done < stop; step++, since++) {
      const more = this.pick(false, step, share);
      if (more < 0) continue;
      this.add(more);
      this.until[more] = step + 3 + this.random.int(7);
      while (!this.affords()) {
        const less = this.pick(true, step, share);
        // All that is made is held where it is: the last one made goes again.
        const gone = less < 0 ? more : less;
        this.drop(gone);
        this.until[gone] = step + 5 + this.random.int(10);
      }
      this.note();
      if (this.weight <= highest) continue;
      highest = this.weight;
      since = 0;
    }
  }

  /** Of the screens that may change, the one made that is worth least, or the one not made that is worth most; -1 for none. */
  private pick(made: boolean, step: number, share: Float64Array): number {
    let found = -1;
    let value = 0;
    for (let screen = 0; screen < this.screens; screen++) {
      if (this.made.has(screen) !== made || i32(this.until, screen) > step) continue;
      const worth = this.worth(screen, made ? 0 : 1, share);
      if (found >= 0 && (made ? worth >= value : worth <= value)) continue;
      found = screen;
      value = worth;
    }
    return found;
  }

  private worth(screen: number, fewer: number, share: Float64Array): number {
    const groups = entryAt(this.at, screen);
    this.done += groups.length + 1;
    let sum = 0;
    for (const place of groups) sum += entryAt(this.groups, place).weight * f64(share, i32(this.missing, place) - fewer);
    return sum;
  }

  /** Adds prints as long as they may be had, those with most weight for a screen first, more or less. */
  private fill(): void {
    for (;;) {
      let best: number[] = [];
      let value = 0;
      this.done += this.groups.length;
      this.groups.forEach(({ lacks, weight }, i) => {
        const missing = i32(this.missing, i);
        if (missing === 0) return;
        const worth = (weight / missing) * (500 + this.random.int(1000));
        if (worth <= value) return;
        const more = lacks.filter((screen) => !this.made.has(screen));
        if (!this.affords(more)) return;
        best = more;
        value = worth;
      });
      if (best.length === 0) return;
      for (const screen of best) this.add(screen);
    }
  }

  private affords(more: readonly number[] = []): boolean {
    return this.limits.every((limit, i) => within(f64(this.spent, i) + costOf(more, limit), limit.most));
  }

  private note(): void {
    if (this.weight <= this.best.weight) return;
    // Sums that were added to and taken from stray by rounding; this one does not.
    const weight = weightWith(this.groups, this.made);
    if (weight > this.best.weight) this.best = { made: new Set(this.made), weight };
  }

  private add(screen: number): void {
    if (this.made.has(screen)) return;
    this.made.add(screen);
    this.spend(screen, 1);
    for (const place of entryAt(this.at, screen)) {
      this.missing[place] = i32(this.missing, place) - 1;
      if (i32(this.missing, place) === 0) this.weight += entryAt(this.groups, place).weight;
    }
  }

  private drop(screen: number): void {
    if (!this.made.delete(screen)) return;
    this.spend(screen, -1);
    for (const place of entryAt(this.at, screen)) {
      if (i32(this.missing, place) === 0) this.weight -= entryAt(this.groups, place).weight;
      this.missing[place] = i32(this.missing, place) + 1;
    }
  }

  private spend(screen: number, times: number): void {
    this.done += entryAt(this.at, screen).length;
    this.limits.forEach(({ costs }, i) => (this.spent[i] = f64(this.spent, i) + times * entryAt(costs, screen)));
  }
}
