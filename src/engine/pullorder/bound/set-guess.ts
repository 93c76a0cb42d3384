import { entryAt, f64, num } from '../../base/at.ts';
import type { Meter } from '../model.ts';
import { GRAIN, packing } from './packing.ts';

/** Steps of the simplex; sets of ten letters take some tens. */
const MAX_PIVOTS = 100;

/** One way to share letters among sets of four: weights of sets, and what each letter has left, in parts of `GRAIN`. */
interface Share {
  /** Places in `SetGuess.used`. */
  fours: number[];
  weights: number[];
  spare: Float64Array;
}

/**
 * How many letters are still to come at least, from what each set of four needs exactly.
 *
 * Shares: sets have weights that sum to at most 1 over each letter. A letter comes at least as often
 * as the sets that hold it take of it, so the needs times the weights, and what each letter that is
 * left has to spare, are together a lower bound. The weights that show most at some places on the
 * way are found by the simplex method, and the largest sum of all shares counts. That looks up some
 * eight sets a share where the even share of all sets, which was here before, takes all 35 of seven
 * letters or 70 of eight, and shows one or two letters more.
 */
export class SetGuess {
  /** Sets of four that some share uses, as places in `fours`. */
  readonly used: number[] = [];
  readonly #letters: number;
  readonly #fours: readonly (readonly number[])[];
  readonly #meter: Meter;
  readonly #shares: Share[] = [];

  /** @param fours all sets of four of the letters */
  constructor(letters: number, fours: readonly (readonly number[])[], meter: Meter) {
    this.#letters = letters;
    this.#fours = fours;
    this.#meter = meter;
  }

  /**
   * Adds the share that shows most at one place.
   * @param needs what each set of four needs there
   * @param open letters that are left there, as bits
   */
  add(needs: readonly number[], open: number): void {
    const sets = this.#fours.flatMap((four, t) => {
      const worth = num(needs, t) - four.reduce((n, l) => n + ((open >> l) & 1), 0);
      return worth > 0 ? [{ lines: [...four], worth, t }] : [];
    });
    const { weights } = packing(this.#letters, sets, MAX_PIVOTS, this.#meter);
    const share: Share = { fours: [], weights: [], spare: new Float64Array(this.#letters).fill(GRAIN) };
    sets.forEach(({ lines, t }, j) => {
      const weight = f64(weights, j);
      if (weight === 0) return;
      share.fours.push(this.#placeOf(t));
      share.weights.push(weight);
      for (const l of lines) share.spare[l] = f64(share.spare, l) - weight;
    });
    this.#shares.push(share);
  }

  /**
   * @param need what each of `used` needs
   * @param open letters that are left, as bits
   * @returns no word for the rest is shorter
   */
  least(need: ArrayLike<number>, open: number): number {
    let most = 0;
    for (const { fours, weights, spare } of this.#shares) {
      let sum = 0;
      for (let i = 0; i < fours.length; i++) sum += num(weights, i) * num(need, num(fours, i));
      for (let l = 0; l < this.#letters; l++) if ((open >> l) & 1) sum += f64(spare, l);
      if (sum > most) most = sum;
    }
    return Math.ceil(most / GRAIN);
  }

  /** Sets of four with a letter, as places in `used`. */
  holding(letter: number): number[] {
    return this.used.flatMap((t, i) => (entryAt(this.#fours, t).includes(letter) ? [i] : []));
  }

  #placeOf(four: number): number {
    const known = this.used.indexOf(four);
    return known >= 0 ? known : this.used.push(four) - 1;
  }
}
