import { describe, it, expect } from 'vitest';
import { choiceOf, holdsOf, withHold, withInkKept, withoutHold } from '../../../../src/engine/explore/settings/hold-menu.ts';
import type { Hold } from '../../../../src/engine/explore/types.ts';

function chosen(...choices: [pull: string, choice: string][]): Hold[] {
  return choices.reduce<Hold[]>((holds, [pull, choice]) => withHold(holds, pull, choice), []);
}

function choices(holds: readonly Hold[], pull: string): string[] {
  return holdsOf(holds, pull).map(choiceOf);
}

describe('withHold', () => {
  it('should take the place of the hold before it', () => {
    const holds = chosen(['a', 'first'], ['b', 'place'], ['a', 'last']);
    expect(choices(holds, 'a')).toEqual(['last']);
    expect(choices(holds, 'b')).toEqual(['place']);
    expect(choices(withHold(holds, 'a', 'ink'), 'a')).toEqual(['ink']);
    expect(choices(withHold(holds, 'a', 'out'), 'a')).toEqual(['out']);
  });

  it('should let a pull go down before several others, once each', () => {
    const holds = chosen(['a', 'first'], ['a', 'before:b'], ['a', 'before:c'], ['a', 'before:b']);
    expect(choices(holds, 'a')).toEqual(['before:c', 'before:b']);
  });

  it('should keep a kept ink beside a hold on the place', () => {
    expect(choices(chosen(['a', 'ink'], ['a', 'first']), 'a')).toEqual(['first', 'ink']);
    expect(choices(chosen(['a', 'ink'], ['a', 'out']), 'a')).toEqual(['out']);
  });

  it('should free one pull and leave the holds of others, also those that name it', () => {
    const holds = chosen(['a', 'ink'], ['a', 'first'], ['b', 'before:a']);
    // oxlint-disable-next-line unicorn/no-thenable -- a hold's own field, never awaited
    expect(withHold(holds, 'a', 'free')).toEqual([{ kind: 'before', pull: 'b', other: 'a' }]);
  });
});

describe('withInkKept', () => {
  it('should keep and let go of the ink alone, and bring a pull back that was left out', () => {
    const first = chosen(['a', 'first']);
    const kept = withInkKept(first, 'a', true);
    expect(choices(kept, 'a')).toEqual(['first', 'ink']);
    expect(withInkKept(kept, 'a', false)).toEqual(first);
    expect(choices(withInkKept(chosen(['a', 'out']), 'a', true), 'a')).toEqual(['ink']);
  });
});

describe('withoutHold', () => {
  it('should lift just the one', () => {
    const holds = chosen(['a', 'before:b'], ['a', 'before:c'], ['c', 'before:b']);
    // oxlint-disable-next-line unicorn/no-thenable -- a hold's own field, never awaited
    expect(withoutHold(holds, { kind: 'before', pull: 'a', other: 'b' }).map(choiceOf)).toEqual(['before:c', 'before:b']);
  });
});
