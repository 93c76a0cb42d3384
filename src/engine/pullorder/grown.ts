/** A longer copy of a list; what is new is 0. */
export function grown<T extends Int8Array | Uint8Array | Uint16Array | Int32Array | Float64Array>(from: T, length: number): T {
  const to = new (from.constructor as new (length: number) => T)(length);
  to.set(from as never);
  return to;
}
