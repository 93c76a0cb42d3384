import { num } from './at.ts';

/** How many bits of a 32-bit number are set. Source: sums of bits side by side, in pairs, fours and bytes (common practice, no source). */
export function bitCount(value: number): number {
  const pairs = value - ((value >>> 1) & 0x55555555);
  const fours = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}

/** The bits of a mask at some places, as the lowest bits, one after another. */
export function bitsAt(mask: number, places: readonly number[]): number {
  let bits = 0;
  for (let i = 0; i < places.length; i++) bits |= ((mask >> num(places, i)) & 1) << i;
  return bits;
}
