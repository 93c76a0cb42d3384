import { entryAt, u32 } from '../base/at.ts';
import { copyPacked, NamePlaces, packPull, roomForPulls, unpackPulls } from './packed-pulls.ts';
import type { Pull } from './types.ts';

const FIRST_SLOTS = 16;
const FIRST_PULLS = 8;

/**
 * Keeps the pulls of stacks that come and go, packed. As objects each lives just long enough to be copied twice by V8's
 * collector, whose young space grows by what was copied and never shrinks while there is work: 48 MB of a worker.
 */
export class PullSlots {
  private readonly places = new NamePlaces();
  private room = roomForPulls(0);
  private counts = new Uint32Array(0);
  /** Room of a slot, pulls. */
  private width = FIRST_PULLS;
  private readonly free: number[] = [];

  /** Keeps a stack. @returns its slot */
  keep(pulls: readonly Pull[]): number {
    if (pulls.length > this.width || this.free.length === 0) this.grow(pulls.length);
    const slot = this.free.pop() ?? 0;
    this.counts[slot] = pulls.length;
    for (let i = 0; i < pulls.length; i++) packPull(this.room, slot * this.width + i, entryAt(pulls, i), this.places.of);
    return slot;
  }

  /** Gives a stack back, once: its slot is free from now on. */
  take(slot: number): Pull[] {
    this.drop(slot);
    return unpackPulls({ names: this.places.names, ...this.room }, slot * this.width, u32(this.counts, slot));
  }

  /** Forgets a stack. */
  drop(slot: number): void {
    this.free.push(slot);
  }

  /** Makes twice as many slots where none is free, and wider ones where a stack has more pulls. */
  private grow(pulls: number): void {
    const had = this.counts.length;
    const slots = this.free.length > 0 ? had : Math.max(FIRST_SLOTS, had * 2);
    const width = Math.max(this.width, pulls);
    const room = roomForPulls(slots * width);
    for (let slot = 0; slot < had; slot++) copyPacked(this.room, room, { first: slot * this.width, at: slot * width, count: this.width });
    const counts = new Uint32Array(slots);
    counts.set(this.counts);
    for (let slot = slots - 1; slot >= had; slot--) this.free.push(slot);
    Object.assign(this, { room, counts, width });
  }
}
