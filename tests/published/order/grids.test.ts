import { describe, expect, it } from 'vitest';
import { countOrderClasses } from '../../../src/engine/order/count/count.ts';
import { bruteForceCount, grid } from '../../engine/order/graphs.ts';

// Acyclic orientations of the n × n grid, OEIS A182406. The web was out of reach, so the counts are held
// against a transfer matrix written here: |P(−1)| of the chromatic polynomial (Stanley 1973), cell by
// cell, a state being which of the last n cells have one colour. Only the remainder is kept.
const PRIME = 2 ** 31 - 1;

function byTransferMatrix(n: number): number {
  // A state is the colours of the last n cells, oldest first, numbered as they appear, in base 16; 15 for none yet.
  let states = new Map<number, number>([[16 ** n - 1, 1]]);
  const colours = new Int8Array(n + 1);
  for (let cell = 0; cell < n * n; cell++) {
    const next = new Map<number, number>();
    for (const [state, count] of states) {
      let used = 0;
      for (let i = n - 1, rest = state; i >= 0; i--) {
        const above = Math.floor(rest / 16);
        colours[i] = rest - above * 16;
        rest = above;
      }
      for (let i = 0; i < n; i++) if (colours[i]! < 15) used = Math.max(used, colours[i]! + 1);
      const left = cell % n === 0 ? 15 : colours[n - 1]!;
      for (let colour = 0; colour <= used; colour++) {
        if (colour === colours[0] || colour === left) continue;
        colours[n] = colour;
        const key = numbered(colours);
        // Of −1 colours, so many less are not used yet.
        const sum = (next.get(key) ?? 0) + (colour === used ? -1 - used : 1) * count;
        next.set(key, ((sum % PRIME) + PRIME) % PRIME);
      }
    }
    states = next;
  }
  let sum = 0;
  for (const count of states.values()) sum = (sum + count) % PRIME;
  return n % 2 === 0 ? sum : (PRIME - sum) % PRIME;
}

const names = new Int8Array(16);

/** All colours but the first, numbered anew. */
function numbered(colours: Int8Array): number {
  names.fill(-1);
  names[15] = 15;
  let key = 0;
  for (let i = 1, found = 0; i < colours.length; i++) {
    if (names[colours[i]!] === -1) names[colours[i]!] = found++;
    key = key * 16 + names[colours[i]!]!;
  }
  return key;
}

describe('countOrderClasses against grids', () => {
  it('should count what all orientations tried one by one give', () => {
    for (const n of [1, 2, 3]) expect(countOrderClasses(n * n, grid(n, n))).toBe(BigInt(bruteForceCount(n * n, grid(n, n))));
  });

  it('should agree with the transfer matrix up to 9 × 9', () => {
    for (let n = 1; n <= 9; n++)
      expect(Number(countOrderClasses(n * n, grid(n, n)) % BigInt(PRIME)), `${n} × ${n}`).toBe(byTransferMatrix(n));
  });

  it('should count the 10 × 10 grid exactly', () => {
    // By colour classes in whole numbers, without end of time: 12 million steps.
    const count = countOrderClasses(100, grid(10, 10));
    expect(count).toBe(27719972687144020161876951888422165049044889741764n);
    expect(Number(count % BigInt(PRIME))).toBe(byTransferMatrix(10));
  });
});
