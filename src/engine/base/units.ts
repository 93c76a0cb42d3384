/**
 * Puts a length on the 0.1 mm grid that offsets lie on, so that the same stack is the same numbers everywhere.
 * @param mm any finite length, mm
 * @returns the nearest multiple of 0.1 mm, free of binary dust (0.3, not 0.30000000000000004)
 */
export function toOffsetGrid(mm: number): number {
  return Math.round(mm * 10) / 10 + 0;
}

/**
 * Rounds to a number of decimals, so that scores compare alike on every machine.
 * @param value any finite number
 * @param decimals 0 to 12
 */
export function roundTo(value: number, decimals: number): number {
  const scale = 10 ** decimals;
  return Math.round(value * scale) / scale + 0;
}
