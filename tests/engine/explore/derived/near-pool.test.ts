import { describe, expect, it } from 'vitest';
import { NearPool } from '../../../../src/engine/explore/derived/near-pool.ts';
import { DESCRIPTOR_LENGTH } from '../../../../src/engine/explore/look/descriptor.ts';

/** A descriptor so many steps (of 1/1024) along one of its numbers. */
function at(steps: number, along = 0): Uint8Array {
  const out = new Uint8Array(DESCRIPTOR_LENGTH).fill(100);
  out[along]! += steps;
  return out;
}

describe('NearPool', () => {
  it('should take the nearest that is neither like the parent nor like one taken before', () => {
    const pool = new NearPool<number>(at(0));
    for (const steps of [60, 1, 20, 14, 2, 40, 15]) pool.offer(steps, at(steps));
    expect([pool.take(), pool.take(), pool.take()].map((taken) => taken!.item)).toEqual([14, 40, 60]);
  });

  it('should take what differs less when nothing else is left, and then end', () => {
    const pool = new NearPool<string>(at(0));
    pool.offer('same', at(0));
    pool.offer('a little', at(3));
    pool.offer('more', at(7));
    pool.offer('elsewhere', at(13, 1));
    expect([1, 2, 3, 4, 5].map(() => pool.take()?.item ?? null)).toEqual(['elsewhere', 'more', 'a little', 'same', null]);
  });
});
