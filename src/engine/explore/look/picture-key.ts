import { entryAt, num } from '../../base/at.ts';
import { canonicalOrder } from '../../order/canonical.ts';
import { graphOf } from '../../order/graph.ts';
import type { Pull } from '../../stack/types.ts';

/**
 * A name for the picture that a stack prints: equal for stacks that differ only in pull ids, in
 * free swaps, and in which of two equal pulls is which.
 * @param pulls first down first
 * @param overlaps pairs of positions whose order matters, a < b
 * @returns 32 hex digits; two pictures share one with a chance of about 2^−128
 */
export function pictureKey(pulls: readonly Pull[], overlaps: readonly { a: number; b: number }[]): string {
  const texts = pulls.map((pull) =>
    JSON.stringify([pull.screen, pull.ink, pull.strokes, pull.dxMm, pull.dyMm, ((pull.turnDeg % 360) + 360) % 360]),
  );
  // Equal pulls are numbered as they lie, so that it does not matter which is which.
  const byText = texts
    .map((_, i) => i)
    .sort((i, j) => (entryAt(texts, i) < entryAt(texts, j) ? -1 : entryAt(texts, i) > entryAt(texts, j) ? 1 : i - j));
  const name: number[] = [];
  byText.forEach((position, rank) => {
    name[position] = rank;
  });
  const { neighbours } = graphOf(
    pulls.length,
    overlaps.map(({ a, b }): [number, number] => [num(name, a), num(name, b)]),
  );
  const order = canonicalOrder(name, neighbours);
  return hash128(order.map((rank) => texts[num(byText, rank)]).join('\n'));
}

/**
 * A 128-bit hash of a text, four 32-bit lanes stirred into each other; no cryptographic use.
 * Source: the multiply–xorshift construction of MurmurHash3 (A. Appleby, public domain), from memory.
 */
export function hash128(text: string): string {
  let a = 0x3c6ef372;
  let b = 0x9e3779b9;
  let c = 0x1b873593;
  let d = 0x85ebca6b;
  for (let i = 0; i < text.length; i++) {
    const k = text.charCodeAt(i);
    a = b ^ Math.imul(a ^ k, 0x239b961b);
    b = c ^ Math.imul(b ^ k, 0xab0e9789);
    c = d ^ Math.imul(c ^ k, 0x38b34ae5);
    d = a ^ Math.imul(d ^ k, 0xa1e38b93);
    a ^= a >>> 15;
    c ^= c >>> 13;
  }
  return [a + b, b ^ text.length, c + a, d + b].map(finish).map(hex).join('');
}

function finish(lane: number): number {
  let h = lane ^ (lane >>> 16);
  h = Math.imul(h, 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}

function hex(lane: number): string {
  return lane.toString(16).padStart(8, '0');
}
