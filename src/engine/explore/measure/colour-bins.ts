import { f64, i32 } from '../../base/at.ts';
import type { WithinDeltaE } from '../../colour/within-delta-e.ts';

/** Widths of a bin in L, and in a and b. */
const L_WIDTH = 4;
const AB_WIDTH = 16;
/** Bins in L, and in a and in b; what lies beyond is in the first and the last. */
const L_BINS = 26;
const AB_BINS = 16;

/**
 * Numbered colours, found by bins of Lab: a colour lies in each bin where something may be within a difference of it, so that
 * one bin holds all that a colour can be within it of, lowest number first. Holds its buffers, for many lists.
 */
export class ColourBins {
  /** Lab of each colour. */
  lab = new Float64Array(3 * 256);
  /** Of each colour three shares, of the squares of a difference in L and in a and b (where neither is bluish, and where one is): see WithinDeltaE.shares. */
  shares = new Float64Array(3 * 256);
  count = 0;
  /** Of each entry of a bin the colour, and the bin's next entry; −1 for none. */
  colour = new Uint32Array(1024);
  next = new Int32Array(1024);
  private entries = 0;
  private readonly first = new Int32Array(L_BINS * AB_BINS * AB_BINS);
  private readonly last = new Int32Array(L_BINS * AB_BINS * AB_BINS);
  private within: WithinDeltaE | null = null;

  start(within: WithinDeltaE): void {
    this.within = within;
    this.count = 0;
    this.entries = 0;
    this.first.fill(-1);
  }

  /** The first entry of the bin that a colour lies in; −1 for none. */
  entryOf(lab: Float64Array, at: number): number {
    const place = binL(f64(lab, at)) * AB_BINS * AB_BINS + binAb(f64(lab, at + 1)) * AB_BINS + binAb(f64(lab, at + 2));
    return i32(this.first, place);
  }

  /** Gives a colour the next number. */
  add(lab: Float64Array, at: number): void {
    if (this.within === null) return;
    if (this.lab.length < this.count * 3 + 3) {
      this.lab = longer(this.lab, new Float64Array(this.lab.length * 2));
      this.shares = longer(this.shares, new Float64Array(this.shares.length * 2));
    }
    const l = f64(lab, at);
    const a = f64(lab, at + 1);
    const b = f64(lab, at + 2);
    this.lab[this.count * 3] = l;
    this.lab[this.count * 3 + 1] = a;
    this.lab[this.count * 3 + 2] = b;
    const far = this.within.reachAb(a, b, true);
    // Where nothing below b = 0 is within reach, what is within lies nearer.
    const near = this.within.reachAb(a, b, false);
    const reach = b >= far ? near : far;
    const reachL = this.within.reachL(l);
    this.shares[this.count * 3] = 1 / (reachL * reachL);
    this.shares[this.count * 3 + 1] = 1 / (near * near);
    this.shares[this.count * 3 + 2] = 1 / (far * far);
    const [fromA, toA, fromB, toB] = [binAb(a - reach), binAb(a + reach), binAb(b - reach), binAb(b + reach)];
    for (let inL = binL(l - reachL); inL <= binL(l + reachL); inL++) {
      for (let inA = fromA; inA <= toA; inA++) {
        const row = (inL * AB_BINS + inA) * AB_BINS;
        for (let bin = row + fromB; bin <= row + toB; bin++) this.enter(bin);
      }
    }
    this.count++;
  }

  private enter(bin: number): void {
    const entry = this.entries++;
    if (this.colour.length <= entry) {
      this.colour = longer(this.colour, new Uint32Array(entry * 2));
      this.next = longer(this.next, new Int32Array(entry * 2));
    }
    this.colour[entry] = this.count;
    this.next[entry] = -1;
    if (i32(this.first, bin) < 0) this.first[bin] = entry;
    else this.next[i32(this.last, bin)] = entry;
    this.last[bin] = entry;
  }
}

function binL(l: number): number {
  return Math.max(0, Math.min(L_BINS - 1, Math.floor(l / L_WIDTH)));
}

function binAb(value: number): number {
  return Math.max(0, Math.min(AB_BINS - 1, Math.floor(value / AB_WIDTH) + AB_BINS / 2));
}

function longer<T extends Float64Array | Uint32Array | Int32Array>(from: T, to: T): T {
  to.set(from);
  return to;
}
