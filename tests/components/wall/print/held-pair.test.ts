import { describe, expect, it } from 'vitest';
import type { WallScene } from '../../../../src/components/canvas/wall-scene.ts';
import { freeSide, heldPair } from '../../../../src/components/wall/print/held-pair.ts';

const NONE: ReadonlySet<number> = new Set();

describe('heldPair', () => {
  it('should hold the print in focus against the one under the mouse, whatever is selected', () => {
    expect(heldPair({ focused: 3, over: 7, selected: NONE })).toEqual([3, 7]);
    expect(heldPair({ focused: 3, over: 7, selected: new Set([1, 2]) })).toEqual([3, 7]);
  });

  it('should hold two selected prints against each other, without a mouse', () => {
    for (const focused of [5, 2, -1]) expect(heldPair({ focused, over: -1, selected: new Set([5, 2]) })).toEqual([5, 2]);
  });

  it('should tell of a print that comes into focus beside two selected ones', () => {
    expect(heldPair({ focused: 3, over: -1, selected: new Set([5, 2]) })).toEqual([3, -1]);
  });

  it('should hold one selected print against whichever comes into focus', () => {
    expect(heldPair({ focused: 3, over: -1, selected: new Set([5]) })).toEqual([5, 3]);
    expect(heldPair({ focused: 5, over: -1, selected: new Set([5]) })).toEqual([5, -1]);
  });

  it('should hold nothing against a print alone', () => {
    expect(heldPair({ focused: 3, over: 3, selected: NONE })).toEqual([3, -1]);
    expect(heldPair({ focused: -1, over: 4, selected: NONE })).toEqual([-1, -1]);
    expect(heldPair({ focused: 3, over: -1, selected: new Set([1, 2, 4]) })).toEqual([3, -1]);
  });
});

describe('freeSide', () => {
  const scene = (frames: Record<number, { left: number; top: number }>) =>
    ({
      size: { width: 1000, height: 700 },
      planned: { hangs: (index: number) => frames[index] !== undefined },
      frameOf: (index: number) => ({ ...frames[index]!, width: 120, height: 168 }),
    }) as unknown as WallScene;

  it('should go to the right where a print lies at the lower left, and stay left elsewhere', () => {
    expect(freeSide(scene({ 1: { left: 20, top: 500 }, 2: { left: 400, top: 10 } }), [1, 2])).toBe('right');
    expect(freeSide(scene({ 1: { left: 20, top: 100 }, 2: { left: 860, top: 500 } }), [1, 2])).toBe('left');
    expect(freeSide(null, [1, -1])).toBe('left');
  });
});
