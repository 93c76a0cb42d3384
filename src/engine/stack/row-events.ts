import { f64, i32, u32 } from '../base/at.ts';

/** Up to so many events are sorted as they are. */
const FEW = 20;
/** Up to so many, sorted into buckets, are finished by one insertion sort. */
const SOME = 200;
const MOST_BUCKETS = 4096;

/**
 * The places on one row where covers change: at x mm the cover bit is turned over.
 * Buffers that only grow; `x` and `bit` are other arrays after `fit` and `sort`.
 */
export class RowEvents {
  x = new Float64Array(64);
  bit = new Int32Array(64);
  count = 0;
  private otherX = new Float64Array(64);
  private otherBit = new Int32Array(64);
  private readonly bucketEnd = new Uint32Array(MOST_BUCKETS + 1);

  /** Makes room for so many more. */
  fit(more: number): void {
    const wanted = this.count + more;
    if (wanted <= this.x.length) return;
    const x = new Float64Array(wanted * 2);
    const bit = new Int32Array(wanted * 2);
    x.set(this.x.subarray(0, this.count));
    bit.set(this.bit.subarray(0, this.count));
    this.x = x;
    this.bit = bit;
    this.otherX = new Float64Array(wanted * 2);
    this.otherBit = new Int32Array(wanted * 2);
  }

  /** Ascending by x; all x lie in 0 ≤ x < widthMm. */
  sort(widthMm: number): void {
    const { count } = this;
    if (count <= FEW) {
      sortRange(this.x, this.bit, 0, count);
      return;
    }
    const buckets = Math.min(MOST_BUCKETS, 4 << (31 - Math.clz32(count)));
    this.scatter(buckets, buckets / widthMm);
    if (count <= SOME) {
      sortRange(this.x, this.bit, 0, count);
      return;
    }
    let from = 0;
    for (let bucket = 0; bucket < buckets; bucket++) {
      const to = u32(this.bucketEnd, bucket);
      if (to - from > 1) sortRange(this.x, this.bit, from, to);
      from = to;
    }
  }

  /** Counting sort by bucket; leaves `bucketEnd`. */
  private scatter(buckets: number, scale: number): void {
    const { x, bit, otherX, otherBit, bucketEnd, count } = this;
    const last = buckets - 1;
    bucketEnd.fill(0, 0, buckets + 1);
    for (let i = 0; i < count; i++) {
      const bucket = (f64(x, i) * scale) | 0;
      bucketEnd[(bucket < last ? bucket : last) + 1] = u32(bucketEnd, (bucket < last ? bucket : last) + 1) + 1;
    }
    for (let bucket = 1; bucket < buckets; bucket++) bucketEnd[bucket] = u32(bucketEnd, bucket) + u32(bucketEnd, bucket - 1);
    for (let i = 0; i < count; i++) {
      const value = f64(x, i);
      const bucket = (value * scale) | 0;
      const slot = bucket < last ? bucket : last;
      const at = u32(bucketEnd, slot);
      bucketEnd[slot] = at + 1;
      otherX[at] = value;
      otherBit[at] = i32(bit, i);
    }
    this.x = otherX;
    this.bit = otherBit;
    this.otherX = x;
    this.otherBit = bit;
  }
}

/** Insertion sort of [from, to), with shell-sort gaps when there are many. */
function sortRange(x: Float64Array, bit: Int32Array, from: number, to: number): void {
  let gap = 1;
  if (to - from > SOME) while (gap < (to - from) / 9) gap = 3 * gap + 1;
  for (; gap > 0; gap = (gap - 1) / 3) {
    for (let i = from + gap; i < to; i++) {
      const value = f64(x, i);
      let j = i - gap;
      if (f64(x, j) <= value) continue;
      const turned = i32(bit, i);
      do {
        x[j + gap] = f64(x, j);
        bit[j + gap] = i32(bit, j);
        j -= gap;
      } while (j >= from && f64(x, j) > value);
      x[j + gap] = value;
      bit[j + gap] = turned;
    }
  }
}
