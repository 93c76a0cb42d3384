import { describe, expect, it } from 'vitest';
import type { Variant } from '../../../../src/engine/explore/types.ts';
import { familiesOf } from '../../../../src/engine/recipe/prints/families.ts';
import { KeptPrints, keptPrints } from '../../../../src/engine/recipe/prints/kept-prints.ts';
import { lineageWith } from '../../../../src/engine/recipe/prints/origin.ts';
import { missingPins, type Pin, pinnedPlaces, pinnedVariant, togglePin } from '../../../../src/engine/recipe/prints/pinned-prints.ts';
import { pullOf, smallProject } from '../../../helpers/small-project.ts';

const { drawer } = smallProject();
const pulls = [pullOf('a', drawer.screens[0]!.id, drawer.inks[0]!.id)];
const print = (index: number, seed = 'ebb'): Variant => ({ id: `${seed}:${index}`, seed, index, pulls, key: `${seed} ${index}` });
const wall = [print(0), print(1), print(2)];
const other: Pin = {
  key: 'tide 7',
  pulls,
  lineage: { seed: '(tide:1) nearer', index: 7, way: 'nearer', parents: [{ seed: 'tide', index: 1 }] },
};

describe('pinned prints', () => {
  it('should go in at the end and come out again', () => {
    const print: Pin = { key: 'ebb 1', pulls, lineage: { seed: 'ebb', index: 1 } };
    const pins = togglePin([other], print);
    expect(pins).toEqual([other, print]);
    expect(togglePin(pins, { ...print })).toEqual([other]);
  });

  it('should hang where their picture is, in the order of the pins', () => {
    expect([...pinnedPlaces([{ ...other, key: 'ebb 2' }, other, { ...other, key: 'ebb 0' }], wall)]).toEqual([2, 0]);
  });

  it('should be missing on other walls, but not when their screen is gone', () => {
    expect(missingPins([other, { ...other, key: 'ebb 2' }], wall, drawer)).toEqual([other]);
    expect(missingPins([other], wall, { ...drawer, screens: [] })).toEqual([]);
  });

  it('should keep number and lineage of their own wall, and be a family of it', () => {
    const variant = pinnedVariant(other);
    expect(variant).toMatchObject({ id: '(tide:1) nearer:7', index: 7, lineage: { kind: 'nearer', parents: ['tide:1'] } });
    const origin = { parents: [], lineage: other.lineage };
    expect(lineageWith(variant, origin)).toEqual(other.lineage);
    const plain = pinnedVariant({ ...other, lineage: { seed: 'tide', index: 4 } });
    const families = familiesOf(
      [
        { variant, origin, place: 3 },
        { variant: plain, origin: { parents: [], lineage: { seed: 'tide', index: 4 } }, place: 4 },
        { variant: wall[0]!, origin: undefined, place: 0 },
        { variant: wall[2]!, origin: undefined, place: 2 },
      ],
      drawer,
    );
    expect(families.map(({ title, prints }) => [title, prints])).toEqual([
      ['Pinned, found from other prints', [3]],
      ['Pinned, of wall “tide”', [4]],
      [`Of ${drawer.screens[0]!.name}`, [0, 2]],
    ]);
  });

  it('should be known in the Chest by their own number', () => {
    const recipe = { seed: '(tide:1) nearer', index: 7, pulls } as never;
    expect([...keptPrints([...wall, pinnedVariant(other)], [recipe])]).toEqual([3]);
  });

  it('should be found again as the same set only while nothing changed', () => {
    const kept = new KeptPrints();
    const recipe = { seed: 'ebb', index: 1, pulls } as never;
    const first = kept.of(wall, [recipe]);
    expect([...first]).toEqual([1]);
    expect(kept.of(wall, [recipe, { seed: 'other', index: 1, pulls } as never])).toBe(first);
    expect([...kept.of([...wall, print(1)], [recipe])]).toEqual([1, 3]);
    expect([...kept.of(wall, [])]).toEqual([]);
  });
});

describe('lineageWith', () => {
  const found: Variant = {
    ...print(2, '(ebb:0) × (ebb:1)'),
    lineage: { kind: 'cross', parents: ['ebb:0', 'ebb:1'], seed: '(ebb:0) × (ebb:1)' },
  };

  it('should name wall and number of a print that comes from no other', () => {
    expect(lineageWith(wall[1]!, { parents: [{ name: 'the stack on the Bench', pulls }] })).toEqual({ seed: 'ebb', index: 1 });
  });

  it('should name the prints that it comes from, as far as they are known', () => {
    const parents = [0, 1].map((index) => ({ name: `no. ${index + 1}`, pulls, lineage: { seed: 'ebb', index } }));
    const own = { seed: found.seed, index: 2, way: 'cross' };
    expect(lineageWith(found, { parents })).toEqual({
      ...own,
      parents: [
        { seed: 'ebb', index: 0 },
        { seed: 'ebb', index: 1 },
      ],
    });
    expect(lineageWith(found, undefined)).toEqual(own);
  });
});
