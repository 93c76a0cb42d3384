import { describe, it, expect } from 'vitest';
import { choiceOf, holdsOf, withHold, withoutHold } from '../../../src/components/wall/hold-menu.ts';
import type { Hold } from '../../../src/engine/explore/types.ts';

function chosen(...choices: [pull: string, choice: string][]): Hold[] {
  return choices.reduce<Hold[]>((holds, [pull, choice]) => withHold(holds, pull, choice), []);
}

describe('withHold', () => {
  it('should let holds on the place replace each other and others add up', () => {
    const holds = chosen(['a', 'first'], ['a', 'ink'], ['a', 'before:b'], ['a', 'last'], ['b', 'place']);
    expect(holdsOf(holds, 'a').map(choiceOf)).toEqual(['last', 'ink', 'before:b']);
    expect(holdsOf(holds, 'b').map(choiceOf)).toEqual(['place']);
  });

  it('should put a pull that is left out under no other hold, and bring it back by any other', () => {
    expect(chosen(['a', 'ink'], ['a', 'first'], ['a', 'out'])).toEqual([{ kind: 'out', pull: 'a' }]);
    expect(chosen(['a', 'out'], ['a', 'ink'])).toEqual([{ kind: 'ink', pull: 'a' }]);
  });

  it('should free one pull and leave the holds of others, also those that name it', () => {
    const holds = chosen(['a', 'first'], ['a', 'ink'], ['b', 'before:a']);
    expect(withHold(holds, 'a', 'free')).toEqual([{ kind: 'before', pull: 'b', then: 'a' }]);
  });

  it('should not hold twice what is held already', () => {
    expect(chosen(['a', 'ink'], ['a', 'ink'], ['a', 'before:b'], ['a', 'before:b'])).toHaveLength(2);
  });
});

describe('withoutHold', () => {
  it('should lift just the one', () => {
    const holds = chosen(['a', 'before:b'], ['a', 'before:c'], ['c', 'before:b']);
    expect(withoutHold(holds, { kind: 'before', pull: 'a', then: 'b' }).map(choiceOf)).toEqual(['before:c', 'before:b']);
  });
});
