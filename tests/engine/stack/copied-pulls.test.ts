import { describe, expect, it } from 'vitest';
import { chooseCopies, copyAnew, copyChoices, isMoved, isOutdated, moveCopy, putBack } from '../../../src/engine/stack/copied-pulls.ts';
import type { Pull } from '../../../src/engine/stack/types.ts';

const pull = (id: string, change: Partial<Pull> = {}): Pull => ({
  id,
  screen: 's',
  ink: 'tar',
  dxMm: 0,
  dyMm: 0,
  turnDeg: 0,
  strokes: 1,
  ...change,
});
const stack = [pull('a'), pull('b', { dxMm: 3 })];
const gone = pull('c', { dyMm: 7 });

describe('copied pulls', () => {
  it('should offer the pulls of the stack and copies that it no longer has', () => {
    expect(copyChoices(stack, [pull('b'), gone]).map(({ id }) => id)).toEqual(['a', 'b', 'c']);
  });
  it('should keep a copy that is there and take others from the stack', () => {
    const copy = pull('b', { dxMm: 9 });
    expect(chooseCopies(stack, [copy], ['a', 'b'])).toEqual([stack[0], copy]);
  });
  it('should be outdated by another ink, not by another place', () => {
    expect(isOutdated(stack, [pull('a', { dxMm: 5 }), gone])).toBe(false);
    expect(isOutdated(stack, [pull('a', { ink: 'rust' })])).toBe(true);
  });
  it('should take over all but the place', () => {
    expect(copyAnew([pull('a', { ink: 'rust' })], [pull('a', { dxMm: 5 }), gone])).toEqual([pull('a', { ink: 'rust', dxMm: 5 }), gone]);
  });
  it('should put copies back to where they lay', () => {
    const moved = moveCopy(stack, 'b', { dxMm: 1, dyMm: 2 });
    expect(isMoved(stack, stack)).toBe(false);
    expect(isMoved(stack, moved)).toBe(true);
    expect(putBack(stack, moved)).toEqual(stack);
    expect(putBack(stack, [gone])).toEqual([{ ...gone, dyMm: 0 }]);
  });
});
