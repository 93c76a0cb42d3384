import { describe, expect, it } from 'vitest';
import { familiesOf } from '../../../../src/components/wall/hang/families.ts';
import { keptPrints } from '../../../../src/components/wall/run/kept-prints.ts';
import { missingPins, pinnedPlaces, pinnedVariant, togglePin } from '../../../../src/components/wall/run/pinned-prints.ts';
import { lineageOf, rememberOrigin } from '../../../../src/components/wall/run/wall-origins.ts';
import type { Variant } from '../../../../src/engine/explore/types.ts';
import type { Pin } from '../../../../src/engine/project/types.ts';
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
    const pins = togglePin([other], wall[1]!);
    expect(pins).toEqual([other, { key: 'ebb 1', pulls, lineage: { seed: 'ebb', index: 1 } }]);
    expect(togglePin(pins, wall[1]!)).toEqual([other]);
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
    rememberOrigin(variant, { parents: [], lineage: other.lineage } as never);
    expect(lineageOf(variant)).toEqual(other.lineage);
    const plain = pinnedVariant({ ...other, lineage: { seed: 'tide', index: 4 } });
    rememberOrigin(plain, { parents: [], lineage: { seed: 'tide', index: 4 } } as never);
    const families = familiesOf([variant, plain, wall[0]!, wall[2]!], drawer, [3, 4, 0, 2]);
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
});
