import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { crossStacks, nearStack, walkStacks } from '../../../../src/engine/explore/derived/derive.ts';
import { createDerivedExplorer } from '../../../../src/engine/explore/derived/derived-explorer.ts';
import { descriptorDistance, Describer } from '../../../../src/engine/explore/look/descriptor.ts';
import { createExplorer, type Explorer } from '../../../../src/engine/explore/search/explorer.ts';
import type { ExploreSettings, DerivedKind, Variant } from '../../../../src/engine/explore/types.ts';
import type { Pull } from '../../../../src/engine/stack/types.ts';
import { pull, rectDrawer } from '../../order/drawer.ts';

const drawer = rectDrawer(Array.from({ length: 12 }, (_, i) => [8 + 13 * i, 5 + ((i * 37) % 40), 60, 45] as const));
const bench = Array.from({ length: 8 }, (_, i) => pull(i, ['tar', 'foam', 'rust'][i % 3]!));
const explore: ExploreSettings = {
  seed: 'neap',
  count: 30,
  order: true,
  recolour: true,
  palette: ['tar', 'foam', 'rust', 'weed'],
  offsetRangeMm: 3,
  leaveOut: 2,
  bringIn: 2,
  holds: [
    { kind: 'first', pull: 'p3' },
    { kind: 'before', pull: 'p1', other: 'p5' },
    { kind: 'ink', pull: 'p2' },
  ],
  minDeltaE: 1,
};
const input = { drawer, bench, explore };

function all(explorer: Explorer, draws = 7): Variant[] {
  const found: Variant[] = [];
  while (!explorer.done) found.push(...explorer.step(draws));
  return found;
}

const wall = all(createExplorer(input));
const [a, b] = [wall[2]!, wall[9]!];

/** Every pair of ids that a stack has, low before high. */
function pairs(pulls: readonly Pull[]): Set<string> {
  return new Set(pulls.flatMap((low, i) => pulls.slice(i + 1).map((high) => `${low.id} ${high.id}`)));
}

describe('walkStacks', () => {
  it('should go from one stack to the other by single edits, and never back', () => {
    for (const [from, to] of [
      [a, b],
      [b, a],
      [wall[0]!, wall[20]!],
      [wall[5]!, wall[6]!],
    ] as const) {
      const walk = walkStacks(from.pulls, to.pulls, 'ebb');
      expect(walk[0]).toEqual(from.pulls);
      expect(walk.at(-1)).toEqual(to.pulls);
      const ends = [pairs(from.pulls), pairs(to.pulls)];
      const shared = [...ends[0]!].filter((pair) => ends[1]!.has(pair));
      walk.slice(1).forEach((stack, i) => {
        const before = walk[i]!;
        const ids = new Set(before.map(({ id }) => id));
        const changed = stack.filter((each) => !before.some((was) => JSON.stringify(was) === JSON.stringify(each))).length;
        const moved = [...pairs(stack)].filter((pair) => !pairs(before).has(pair) && pair.split(' ').every((id) => ids.has(id))).length;
        const gone = before.filter(({ id }) => !stack.some((each) => each.id === id)).length;
        // A step changes one pull, or one pair's order, or takes one out.
        expect(changed + moved + gone).toBe(1);
        const now = pairs(stack);
        for (const pair of shared) expect(now.has(pair)).toBe(true);
      });
    }
  });
});

describe('crossStacks', () => {
  it('should take every pull from a parent and keep orders that both have', () => {
    const random = randomFrom('cross');
    const [inA, inB] = [pairs(a.pulls), pairs(b.pulls)];
    const both = [...inA].filter((pair) => inB.has(pair));
    const seen = new Set<string>();
    for (let i = 0; i < 60; i++) {
      const child = crossStacks(a.pulls, b.pulls, random);
      const ids = new Set(child.map(({ id }) => id));
      expect(ids.size).toBe(child.length);
      for (const each of child) {
        const of = [...a.pulls, ...b.pulls].filter(({ id }) => id === each.id);
        expect(of.map(({ ink }) => ink)).toContain(each.ink);
        expect(of.map(({ dxMm, dyMm }) => [dxMm, dyMm])).toContainEqual([each.dxMm, each.dyMm]);
      }
      const now = pairs(child);
      for (const pair of both) if (pair.split(' ').every((id) => ids.has(id))) expect(now.has(pair)).toBe(true);
      seen.add(JSON.stringify(child));
    }
    expect(seen.size).toBeGreaterThan(50);
  });
});

describe('nearStack', () => {
  it('should only make edits that the settings allow', () => {
    const random = randomFrom('near');
    const still = { ...explore, order: false, recolour: false, offsetRangeMm: 0, leaveOut: 0, bringIn: 0 };
    expect(nearStack(a.pulls, still, [], random)).toEqual(a.pulls);
    for (let i = 0; i < 50; i++) {
      const inks = nearStack(a.pulls, { ...still, recolour: true }, [], random);
      expect(inks.map(({ id }) => id)).toEqual(a.pulls.map(({ id }) => id));
      expect(inks.find(({ id }) => id === 'p2')?.ink).toBe(a.pulls.find(({ id }) => id === 'p2')?.ink);
    }
  });
});

describe('createDerivedExplorer', () => {
  const find = (kind: DerivedKind, count = 12, draws = 7): Variant[] => {
    const parents = kind === 'between' || kind === 'cross' ? [a, b] : [a];
    return all(createDerivedExplorer(input, { kind, parents, count }), draws);
  };
  const describer = new Describer(drawer);
  const from = (variant: Variant): number => descriptorDistance(describer.describe(a.pulls), describer.describe(variant.pulls));
  const mean = (list: number[]): number => list.reduce((sum, value) => sum + value, 0) / list.length;

  it.each(['nearer', 'away', 'between', 'cross'] as const)('should find the same prints %s, however cut up, with their lineage', (kind) => {
    const found = find(kind);
    expect(found.length).toBeGreaterThan(5);
    expect(find(kind, 12, 1)).toEqual(found);
    expect(new Set(found.map(({ key }) => key)).size).toBe(found.length);
    found.forEach((variant, index) => {
      expect(variant).toMatchObject({ index, id: `${variant.seed}:${index}`, lineage: { kind, seed: variant.seed } });
      expect(variant.lineage!.parents).toEqual(kind === 'between' || kind === 'cross' ? [a.id, b.id] : [a.id]);
    });
  });

  it.each(['nearer', 'away', 'between', 'cross'] as const)('should keep the holds in prints %s', (kind) => {
    for (const { pulls } of find(kind)) {
      const at = (id: string): number => pulls.findIndex((each) => each.id === id);
      if (at('p3') >= 0) expect(at('p3')).toBe(0);
      if (at('p1') >= 0 && at('p5') >= 0) expect(at('p1')).toBeLessThan(at('p5'));
      if (at('p2') >= 0) expect(pulls[at('p2')]!.ink).toBe('rust');
    }
  });

  it('should hang near prints nearer and unlike ones farther than the wall does', () => {
    const plain = mean(wall.filter((variant) => variant !== a).map(from));
    expect(mean(find('nearer').map(from))).toBeLessThan(plain / 3);
    expect(mean(find('away').map(from))).toBeGreaterThan(plain);
  });

  it('should hang near prints that show to be others, the nearest of them first', () => {
    const found = find('nearer', 12);
    const looks = found.map(({ pulls }) => describer.describe(pulls));
    const away = found.map(from);
    for (let i = 0; i < 12; i++) {
      expect(away[i]).toBeGreaterThan(0.011);
      for (let k = 0; k < i; k++) {
        expect(descriptorDistance(looks[i]!, looks[k]!)).toBeGreaterThan(0.011);
        expect(away[i]).toBeGreaterThanOrEqual(away[k]!);
      }
    }
  });

  it('should begin and end a walk at its two prints, in steps that look even', () => {
    const found = find('between', 6);
    expect(found[0]!.key).toBe(a.key);
    expect(found.at(-1)!.key).toBe(b.key);
    const looks = found.map(({ pulls }) => describer.describe(pulls));
    const steps = looks.slice(1).map((look, i) => descriptorDistance(looks[i]!, look));
    expect(Math.max(...steps)).toBeLessThan(descriptorDistance(looks[0]!, looks.at(-1)!));
  });

  it('should refuse the wrong number of prints', () => {
    expect(() => createDerivedExplorer(input, { kind: 'cross', parents: [a], count: 5 })).toThrow(/Choose two prints/);
  });
});
