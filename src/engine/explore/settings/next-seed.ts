/**
 * The seed after a seed, so that walking from wall to wall can be walked again.
 * @param seed any text
 * @returns the text with its last number raised by one, or with a 2 behind it
 */
export function nextSeed(seed: string): string {
  const found = /^(.*?)(\d{1,9})$/s.exec(seed.trim());
  if (found === null) return seed.trim() === '' ? '1' : `${seed.trim()} 2`;
  return `${found[1]}${Number(found[2]) + 1}`;
}
