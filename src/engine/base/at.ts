import { say } from '../words/en/base/base.ts';

/**
 * Reads by index that say what happens beyond the end.
 * One function a kind of array: the engine's inner loops run through them, and a function that sees
 * one kind only is compiled to a plain load.
 */

/**
 * The entry of a list.
 * @throws RangeError when there is none: a fault of ours, never of a file
 */
export function entryAt<T>(list: readonly T[], index: number): T {
  const value = list[index];
  if (value === undefined) throw new RangeError(say.noEntryInList(index, list.length));
  return value;
}

/**
 * A value that must be there.
 * @throws RangeError when it is not: a fault of ours, never of a file
 */
export function defined<T>(value: T | null | undefined): T {
  if (value === undefined || value === null) throw new RangeError(say.valueThatMustBe);
  return value;
}

/** A number of a list; NaN beyond its end, so that comparisons fail and sums show it. */
export function num(list: ArrayLike<number>, index: number): number {
  return list[index] ?? NaN;
}

/** A number of a Float64Array; NaN beyond its end. */
export function f64(list: Float64Array, index: number): number {
  return list[index] ?? NaN;
}

/** A number of an Int16Array; NaN beyond its end. */
export function i16(list: Int16Array, index: number): number {
  return list[index] ?? NaN;
}

/** A number of an Int32Array; NaN beyond its end. */
export function i32(list: Int32Array, index: number): number {
  return list[index] ?? NaN;
}

/** A number of a Uint32Array; NaN beyond its end. */
export function u32(list: Uint32Array, index: number): number {
  return list[index] ?? NaN;
}

/** A number of a Uint16Array; NaN beyond its end. */
export function u16(list: Uint16Array, index: number): number {
  return list[index] ?? NaN;
}

/** A number of a Uint8Array; NaN beyond its end. */
export function u8(list: Uint8Array, index: number): number {
  return list[index] ?? NaN;
}
