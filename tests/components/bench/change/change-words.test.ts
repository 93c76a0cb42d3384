import { describe, expect, it } from 'vitest';
import { changeWords } from '../../../../src/components/bench/change/change-words.ts';
import { movedTo } from '../../../../src/engine/stack/edit/rearrange.ts';
import { stackChange } from '../../../../src/engine/stack/edit/stack-change.ts';
import type { Pull } from '../../../../src/engine/stack/types.ts';
import { pullOf, smallProject } from '../../../helpers/small-project.ts';

const studio = smallProject().drawer;
const before = [pullOf('a', 's1', 'rust'), pullOf('b', 's2', 'tar'), pullOf('c', 's3', 'tar'), pullOf('d', 's2', 'foam')];

function said(after: readonly Pull[], touching: { a: number; b: number }[] | null = null): string {
  return changeWords(stackChange(before, after, touching), { pulls: after, studio, known: touching !== null, minDeltaE: 1 });
}

describe('what is different in a print', () => {
  it('should say over and under which screens one that was moved now lies', () => {
    const after = movedTo(before, new Set('a'), 3);
    expect(said(after)).toBe('Screen 1 is pull 4 of 4.');
    expect(said(after, [{ a: 1, b: 3 }])).toBe('Screen 1 now lies over screen 3.');
    expect(
      said(after, [
        { a: 0, b: 3 },
        { a: 1, b: 3 },
      ]),
    ).toBe('Screen 1 now lies over screens 3 and 2 (pull 1).');
    expect(said(after, [])).toBe('Screen 1 is pull 4 of 4; the print stays the same within ΔE 1.');
  });

  it('should say colours, offsets, strokes, and what came and went', () => {
    const change = (id: string, by: Partial<Pull>): Pull[] => before.map((pull) => (pull.id === id ? { ...pull, ...by } : pull));
    expect(said(change('a', { ink: 'tar' }))).toBe('Screen 1 is in Tar in place of Rust.');
    expect(said(before.map((pull) => ({ ...pull, ink: 'rust' })))).toBe('Screens 2 (pull 2), 3 and 2 (pull 4) are in Rust.');
    expect(said(change('c', { dxMm: -2.5 }))).toBe('Screen 3 lies 2.5 mm left.');
    expect(said(change('d', { strokes: 3 }))).toBe('Screen 2 (pull 4) has 3 strokes.');
    expect(said(before.slice(1))).toBe('Screen 1 is off the stack; 3 pulls left.');
    expect(said([...before, pullOf('e', 's1', 'foam')])).toBe('Screen 1 (pull 5) is pull 5 of 5, in Foam.');
    expect(said(before)).toBe('');
  });
});
