import { describe, expect, it } from 'vitest';
import { filmsName, readOf, withSamples, withTyped } from '../../../../src/engine/ink/target/few-squares.ts';
import type { FewSquare } from '../../../../src/engine/ink/target/target.ts';

const inks = [
  { id: 'a', name: 'Ochre' },
  { id: 'b', name: 'Tar' },
];
const squares: FewSquare[] = [{ films: ['a'] }, { films: ['b'], lab: [20, 1, 2] }, { films: ['a', 'b'] }];

describe('few squares', () => {
  it('should be named from the top down', () => {
    expect(squares.map(({ films }) => filmsName(films, inks))).toEqual(['Ochre alone', 'Tar alone', 'Tar over Ochre']);
    expect(filmsName(['a', 'x'], inks)).toBe('an ink that is gone over Ochre');
  });
  it('should take what is typed, and tell what is no colour', () => {
    const { squares: next, misread } = withTyped(
      squares,
      new Map([
        [1, '61,5 12 38'],
        [2, ''],
        [3, 'brown'],
      ]),
    );
    expect(next[0]).toEqual({ films: ['a'], lab: [61.5, 12, 38] });
    expect(next[1]).toEqual({ films: ['b'] });
    expect(next[2]).toBe(squares[2]);
    expect(misread.get(3)?.problem).toMatch(/no colour/);
    expect(readOf(next)).toHaveLength(1);
  });
  it('should be the same list where what is typed is there already', () => {
    expect(withTyped(squares, new Map([[2, '20 1 2']])).squares).toBe(squares);
    expect(withTyped(squares, new Map([[1, ' ']])).squares).toBe(squares);
  });
  it('should take a file by the numbers of its samples, curves with their colour', () => {
    const reflectance = new Float64Array(36).fill(0.5);
    const {
      squares: next,
      read,
      remarks,
    } = withSamples(squares, [
      { id: 'S03', name: '', reflectance },
      { id: '9', name: '', lab: [50, 0, 0] },
    ]);
    expect(read).toBe(1);
    expect(next[2]).toMatchObject({ films: ['a', 'b'], reflectance: Array.from(reflectance) });
    expect(next[2]!.lab![0]).toBeCloseTo(76.07, 1);
    expect(next[1]).toEqual(squares[1]);
    expect(remarks[0]).toMatch(/9 are no numbers of this target's squares, 1 to 3/);
  });
});
