import { describe, expect, it } from 'vitest';
import { familiesOf } from '../../../src/components/wall/families.ts';
import { rememberOrigin } from '../../../src/components/wall/wall-origins.ts';
import type { Variant } from '../../../src/engine/explore/types.ts';
import { smallProject } from '../../helpers/small-project.ts';

const { drawer, bench } = smallProject();

function variant(index: number, pulls: Variant['pulls']): Variant {
  return { id: `t:${index}`, seed: 't', index, pulls, key: String(index) };
}

describe('familiesOf', () => {
  it('should put prints of the same screens together, in any order, nearest to the parent first', () => {
    const all = [variant(0, bench.slice(1)), variant(1, bench), variant(2, bench.toReversed()), variant(3, bench.slice(1).toReversed())];
    for (const each of all) rememberOrigin(each, { parents: [{ name: 'the stack on the Bench', pulls: bench }] } as never);
    const families = familiesOf(all, drawer);
    expect(families.map(({ prints }) => prints)).toEqual([[1, 2], [0, 3]]);
    expect(families[0]!.title).toBe('From the stack on the Bench, the same screens');
    expect(families[1]!.title).toBe('From the stack on the Bench, without s1');
  });

  it('should name the screens of prints that have no parent', () => {
    expect(familiesOf([variant(0, bench)], drawer)[0]!.title).toBe('Of s1, s2, s3');
  });
});
