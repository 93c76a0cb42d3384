import { num } from '../../base/at.ts';

/** Below this a residue times a factor of up to 63, and a residue more, stays whole in a double. */
const LARGEST = 2 ** 47;
const BITS = 46;

/**
 * Moduli without a common factor whose product is above 2^bits: a whole number below that is told by
 * its residues, which doubles hold and add up far faster than whole numbers of any length.
 */
export function moduliFor(bits: number): number[] {
  const moduli: number[] = [];
  for (let next = LARGEST; moduli.length * BITS < bits; next--) {
    if (moduli.every((other) => commonDivisor(other, next) === 1)) moduli.push(next);
  }
  return moduli;
}

function commonDivisor(a: number, b: number): number {
  while (b !== 0) [a, b] = [b, a % b];
  return a;
}

/**
 * The least whole number ≥ 0 with these residues.
 * @param residues one a modulus, 0 … modulus − 1
 * Source: Chinese remainder theorem, in Garner's form.
 */
export function fromResidues(residues: ArrayLike<number>, moduli: readonly number[]): bigint {
  let found = 0n;
  let product = 1n;
  moduli.forEach((modulus, i) => {
    const m = BigInt(modulus);
    const off = (((BigInt(num(residues, i)) - found) % m) + m) % m;
    found += product * ((off * inverse(product % m, m)) % m);
    product *= m;
  });
  return found;
}

function inverse(value: bigint, modulus: bigint): bigint {
  let [a, b, x, y] = [value, modulus, 1n, 0n];
  while (b !== 0n) [a, b, x, y] = [b, a % b, y, x - (a / b) * y];
  return ((x % modulus) + modulus) % modulus;
}
