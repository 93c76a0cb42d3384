import { f64, i32 } from '../base/at.ts';

/** Up to so many events are sorted without gaps. */
const FEW = 60;

/**
 * The places on one row where covers change: at x mm the cover bit is turned over.
 * Buffers that only grow; `x` and `bit` are other arrays after `fit`.
 */
export class RowEvents {
  x = new Float64Array(64);
  bit = new Int32Array(64);
  count = 0;

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
  }

  /** Ascending by x: insertion sort, with shell-sort gaps when there are many. */
  sort(): void {
    const { x, bit, count } = this;
    let gap = 1;
    if (count > FEW) while (gap < count / 9) gap = 3 * gap + 1;
    for (; gap > 0; gap = (gap - 1) / 3) {
      for (let i = gap; i < count; i++) {
        const value = f64(x, i);
        let j = i - gap;
        if (f64(x, j) <= value) continue;
        const turned = i32(bit, i);
        do {
          x[j + gap] = f64(x, j);
          bit[j + gap] = i32(bit, j);
          j -= gap;
        } while (j >= 0 && f64(x, j) > value);
        x[j + gap] = value;
        bit[j + gap] = turned;
      }
    }
  }
}
