import { i32 } from './at.ts';

/**
 * Numbers pairs of whole numbers in the order in which they come. As keys of a Map, pairs would be texts, or numbers too
 * large to be anything but objects; hot loops ask thousands of times a print.
 */
export class PairNumbers {
  /** Slots × (first, second, number); −1 for the number where it is free. */
  private slots: Int32Array;
  private count = 0;

  /** @param room pairs that it holds before it grows, a power of two */
  constructor(room = 64) {
    this.slots = new Int32Array(room * 6).fill(-1);
  }

  /** How many pairs there are. */
  get size(): number {
    return this.count;
  }

  /** The number of a pair of 32-bit whole numbers; −1 when it has none. */
  of(first: number, second: number): number {
    return i32(this.slots, this.slotOf(first, second) * 3 + 2);
  }

  /** Gives a pair that has none the next number, from 0. */
  add(first: number, second: number): number {
    if (this.count * 6 >= this.slots.length) this.grow();
    this.put(first, second, this.count);
    return this.count++;
  }

  clear(): void {
    this.slots.fill(-1);
    this.count = 0;
  }

  private put(first: number, second: number, number: number): void {
    const at = this.slotOf(first, second) * 3;
    this.slots[at] = first;
    this.slots[at + 1] = second;
    this.slots[at + 2] = number;
  }

  /** Where a pair is, or would be. */
  private slotOf(first: number, second: number): number {
    const { slots } = this;
    const last = slots.length / 3 - 1;
    const hash = Math.imul(first, 0x9e3779b1) ^ Math.imul(second + 1, 0x85ebca6b);
    let slot = (hash ^ (hash >>> 15)) & last;
    while (i32(slots, slot * 3 + 2) >= 0 && (slots[slot * 3] !== first || slots[slot * 3 + 1] !== second)) slot = (slot + 1) & last;
    return slot;
  }

  private grow(): void {
    const before = this.slots;
    this.slots = new Int32Array(before.length * 2).fill(-1);
    for (let at = 0; at < before.length; at += 3) {
      if (i32(before, at + 2) >= 0) this.put(i32(before, at), i32(before, at + 1), i32(before, at + 2));
    }
  }
}
