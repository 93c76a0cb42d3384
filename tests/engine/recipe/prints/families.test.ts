import { describe, expect, it } from 'vitest';
import type { Variant } from '../../../../src/engine/explore/types.ts';
import { familiesOf, type HungPrint } from '../../../../src/engine/recipe/prints/families.ts';
import { smallProject } from '../../../helpers/small-project.ts';

const { drawer, bench } = smallProject();

function variant(index: number, pulls: Variant['pulls']): Variant {
  return { id: `t:${index}`, seed: 't', index, pulls, key: String(index) };
}

function hung(variants: readonly Variant[], parent?: Variant['pulls']): HungPrint[] {
  const origin = parent && { parents: [{ name: 'the stack on the Bench', pulls: parent }] };
  return variants.map((each, place) => ({ variant: each, origin, place }));
}

describe('familiesOf', () => {
  it('should put prints of the same screens together, in any order, nearest to the parent first', () => {
    const all = [variant(0, bench.slice(1)), variant(1, bench), variant(2, bench.toReversed()), variant(3, bench.slice(1).toReversed())];
    const families = familiesOf(hung(all, bench), drawer);
    expect(families.map(({ prints }) => prints)).toEqual([
      [1, 2],
      [0, 3],
    ]);
    expect(families[0]!.title).toBe('From the stack on the Bench, the same screens');
    expect(families[1]!.title).toBe('From the stack on the Bench, without s1');
  });

  it('should name the screens of prints that have no parent', () => {
    expect(familiesOf(hung([variant(0, bench)]), drawer)[0]!.title).toBe('Of s1, s2, s3');
  });

  it('should share one telling screen where hardly two prints have the same', () => {
    const many = Array.from({ length: 12 }, (_, i) => ({ ...bench[0]!, id: `m${i}`, screen: `m${i}` }));
    // Every three of twelve in a row and every third: 22 prints, no two of the same screens.
    const all = many
      .flatMap((_, i) => [[i, (i + 1) % 12, (i + 2) % 12], ...(i < 10 ? [[i, (i + 3) % 12, (i + 7) % 12]] : [])])
      .map((of, index) => {
        return variant(
          index,
          of.map((at) => many[at]!),
        );
      });
    const families = familiesOf(hung(all, many), drawer);
    expect(families.length).toBeLessThan(12);
    expect(families.flatMap(({ prints }) => prints).sort((a, b) => a - b)).toEqual(all.map((_, i) => i));
    for (const { title, prints } of families) {
      const screen = /^From the stack on the Bench, with (m\d+)$/u.exec(title)![1];
      for (const print of prints) expect(all[print]!.pulls.map((pull) => pull.screen)).toContain(screen);
    }
    for (let i = 1; i < families.length; i++) expect(families[i]!.prints.length).toBeLessThanOrEqual(families[i - 1]!.prints.length);
  });

  it('should share what is left out where most screens are in every print', () => {
    const many = Array.from({ length: 8 }, (_, i) => ({ ...bench[0]!, id: `m${i}`, screen: `m${i}` }));
    const all = many
      .flatMap((_, a) => many.slice(a + 1).map((__, b) => [a, a + 1 + b]))
      .map((lost, index) => {
        return variant(
          index,
          many.filter((___, i) => !lost.includes(i)),
        );
      });
    const families = familiesOf(hung(all, many), drawer);
    expect(families.map(({ prints }) => prints.length)).toEqual([7, 6, 5, 4, 3, 2, 1]);
    expect(families[0]!.title).toBe('From the stack on the Bench, without m0');
  });

  it('should name no parents in a title of prints that come of others each', () => {
    const many = Array.from({ length: 8 }, (_, i) => ({ ...bench[0]!, id: `m${i}`, screen: `m${i}` }));
    const all = many.flatMap((a, i) => many.slice(i + 1).map((b) => [a, b])).map((pulls, index) => variant(index, pulls));
    const prints = hung(all).map((print, i) => ({ ...print, origin: { parents: [{ name: `no. ${i}`, pulls: many.slice(0, 1) }] } }));
    for (const { title, prints: of } of familiesOf(prints, drawer))
      expect(title).toMatch(of.length === 1 ? /^(Of|From)/u : /^(Of|Without) m\d$/u);
  });
});
