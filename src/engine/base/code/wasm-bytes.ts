// Source of the encoding: WebAssembly Core Specification 2.0, chapters 5.2 to 5.5.

/** Section of a module. */
export function section(id: number, content: readonly number[]): number[] {
  return [id, ...unsigned(content.length), ...content];
}

/** A list with its length before it. */
export function list(items: readonly number[]): number[] {
  return [...unsigned(items.length), ...items];
}

/** LEB128 without a sign. */
export function unsigned(value: number): number[] {
  return value < 128 ? [value] : [(value & 127) | 128, ...unsigned(value >>> 7)];
}

/** LEB128 with a sign. */
export function signed(value: number): number[] {
  return value >= -64 && value < 64 ? [value & 127] : [(value & 127) | 128, ...signed(value >> 7)];
}
