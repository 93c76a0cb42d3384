import { num } from '../../../engine/base/at.ts';
import type { View } from '../camera/camera.ts';

/** How long prints take to hang elsewhere. */
const REHANG_MS = 420;

/** Where prints are drawn: where they hang, or on the way there. All places are left and top by number, wall units. */
export class Rehang {
  /** Where prints are drawn now. */
  at: Float32Array;
  private goal: Float32Array;
  private way: { from: Float32Array; start: number } | null = null;

  constructor(at: Float32Array) {
    this.at = at;
    this.goal = at;
  }

  /** Whether prints are on their way. */
  get moving(): boolean {
    return this.way !== null;
  }

  /** Hangs all prints at once. */
  hang(at: Float32Array): void {
    this.at = at;
    this.goal = at;
    this.way = null;
  }

  /**
   * Sends all prints to where they hang, from where they were drawn.
   * @param from where they were drawn, as seen by `before`; it is changed
   * @param start when they set out, ms
   */
  sendFrom(from: Float32Array, before: View, now: View, start: number): void {
    // The wall changes its size with its order: prints start from where they are seen.
    for (let i = 0; i < from.length; i += 2) {
      from[i] = (num(from, i) * before.scale + before.x - now.x) / now.scale;
      from[i + 1] = (num(from, i + 1) * before.scale + before.y - now.y) / now.scale;
    }
    this.way = { from, start };
  }

  /** Moves prints on to where they are at a time, ms. */
  step(now: number): void {
    if (this.way === null) return;
    const { from, start } = this.way;
    const part = Math.min(1, Math.max(0, now - start) / REHANG_MS);
    if (part >= 1) return this.hang(this.goal);
    const eased = part < 0.5 ? 2 * part * part : 1 - 2 * (1 - part) ** 2;
    // Those that hung nowhere before are there at once.
    this.at = this.goal.map((goal, i) => (Number.isNaN(from[i] ?? Number.NaN) ? goal : num(from, i) + (goal - num(from, i)) * eased));
  }
}
