import { describe, expect, it } from 'vitest';
import { randomFrom, type Random } from '../../../../src/engine/base/random.ts';
import { createDerivedExplorer } from '../../../../src/engine/explore/derived/derived-explorer.ts';
import type { DerivedRequest } from '../../../../src/engine/explore/derived/derived.ts';
import { Describer, descriptorDistance } from '../../../../src/engine/explore/look/descriptor.ts';
import { createExplorer, type Explorer } from '../../../../src/engine/explore/search/explorer.ts';
import type { TasteChoice, TastePrint } from '../../../../src/engine/explore/taste/choices.ts';
import { scaleOf } from '../../../../src/engine/explore/taste/scale.ts';
import { TasteEye } from '../../../../src/engine/explore/taste/taste-eye.ts';
import type { TasteGuide } from '../../../../src/engine/explore/taste/taste-guide.ts';
import { tasteOfWall } from '../../../../src/engine/explore/taste/taste-of-wall.ts';
import { learnTaste, viewOf } from '../../../../src/engine/explore/taste/taste.ts';
import { sketchText, TRAITS, traitsOf } from '../../../../src/engine/explore/taste/traits.ts';
import type { ExploreSettings, Variant } from '../../../../src/engine/explore/types.ts';
import { pull, rectDrawer } from '../../order/drawer.ts';

const drawer = rectDrawer(Array.from({ length: 12 }, (_, i) => [8 + 13 * i, 5 + ((i * 37) % 40), 60, 45] as const));
const bench = Array.from({ length: 8 }, (_, i) => pull(i, ['tar', 'foam', 'rust'][i % 3]!));
const explore: ExploreSettings = {
  seed: 'neap',
  count: 80,
  order: true,
  recolour: true,
  palette: ['tar', 'foam', 'rust', 'weed'],
  offsetRangeMm: 10,
  leaveOut: 3,
  bringIn: 2,
  holds: [{ kind: 'first', pull: 'p3' }],
  minDeltaE: 1,
};
const input = { drawer, bench, explore };
const FOUND = 30;
const PARENTS = 12;

function all(explorer: Explorer, draws = 9): Variant[] {
  const found: Variant[] = [];
  while (!explorer.done) found.push(...explorer.step(draws));
  return found;
}

const eye = new TasteEye(drawer, true);
const wall = all(createExplorer(input));
const facts = wall.map(({ pulls }) => eye.facts(pulls));
const prints = facts.map(({ measures, sketch }, i): TastePrint => ({
  key: wall[i]!.key,
  name: `no. ${i + 1}`,
  measures,
  sketch: sketchText(sketch),
}));
const scale = scaleOf(facts);

/** Traits of the wall in standard deviations, worked out here from the traits alone. */
const traits = facts.map(traitsOf);
const mean = (list: readonly number[]): number => list.reduce((sum, value) => sum + value, 0) / list.length;
const middles = TRAITS.map((_, i) => mean(traits.map((row) => row[i]!)));
const spreads = TRAITS.map((_, i) => Math.sqrt(mean(traits.map((row) => (row[i]! - middles[i]!) ** 2))));
const VARYING = TRAITS.flatMap((_, i) => (spreads[i]! > 1e-9 ? [i] : []));

/** A known taste: three traits that count alike, more or less of each; in standard deviations of the wall. */
function knownTaste(random: Random): (row: readonly number[]) => number {
  const some = random.shuffle(VARYING).slice(0, 3);
  const signs = some.map(() => (random.chance(1, 2) ? 1 : -1));
  const raw = (row: readonly number[]): number =>
    some.reduce((sum, trait, i) => sum + (signs[i]! * (row[trait]! - middles[trait]!)) / spreads[trait]!, 0);
  const spread = Math.sqrt(mean(traits.map((row) => raw(row) ** 2)));
  return (row) => raw(row) / spread;
}

/** Answers of one who takes the better of two prints a standard deviation apart in about seven of eight cases. */
function answers(worth: (row: readonly number[]) => number, random: Random, count: number): TasteChoice[] {
  return Array.from({ length: count }, () => {
    const [a = 0, b = 0] = random.shuffle([...wall.keys()]);
    const first = 1 / (1 + Math.exp(2 * (worth(traits[b]!) - worth(traits[a]!))));
    const [chosen, other] = random.chance(Math.round(first * 1000), 1000) ? [a, b] : [b, a];
    return { way: 'compared', chosen: prints[chosen]!, over: [prints[other]!] };
  });
}

function requestFor(choices: readonly TasteChoice[], order: Partial<TasteGuide> = {}): DerivedRequest {
  const guide: TasteGuide = { choices, scale, relative: true, towards: 100, unsure: 20, ...order };
  const { order: sequence } = tasteOfWall({
    ...guide,
    keys: prints.map(({ key }) => key),
    measures: facts.map(({ measures }) => measures),
    sketches: Float32Array.from(facts.flatMap(({ sketch }) => Array.from(sketch))),
    passed: 0,
  });
  return { kind: 'taste', parents: sequence!.slice(0, PARENTS).map((at) => wall[at]!), count: FOUND, taste: guide };
}

const find = (request: DerivedRequest, draws = 9): Variant[] => all(createDerivedExplorer(input, request), draws);
const describer = new Describer(drawer);

/** Mean distance of prints to the nearest other of them. */
function nearest(variants: readonly Variant[]): number {
  const looks = variants.map(({ pulls }) => describer.describe(pulls));
  return mean(looks.map((look, i) => Math.min(...looks.filter((_, k) => k !== i).map((other) => descriptorDistance(look, other)))));
}

const RUNS = ['ebb', 'flood', 'slack', 'spring'].map((name) => {
  const random = randomFrom(name);
  const worth = knownTaste(random);
  const choices = answers(worth, random, 20);
  return { name, random, worth, choices, request: requestFor(choices), found: find(requestFor(choices)) };
});

describe('prints found by what one chooses', () => {
  it('should be worth far more to the taste that made the choices than the wall they came from, in each of four tastes', () => {
    const gains = RUNS.map(({ worth, found }) => mean(found.map(({ pulls }) => worth(traitsOf(eye.facts(pulls))))));
    if (process.env['TASTE_FIGURES'] !== undefined) console.log('standard deviations above the wall', gains);
    // The wall's own mean is 0, and its best half is worth about 0.8 where tastes are known fully.
    for (const gain of gains) expect(gain).toBeGreaterThan(0.5);
    expect(mean(gains)).toBeGreaterThan(1);
  });

  it('should never be a wall of sameness: spread at least eight tenths as far as as many prints of the wall by chance', () => {
    const shares = RUNS.map(({ found, random }) => {
      const chance = mean(Array.from({ length: 8 }, () => nearest(random.shuffle(wall).slice(0, FOUND))));
      return nearest(found) / chance;
    });
    if (process.env['TASTE_FIGURES'] !== undefined) console.log('spread against chance', shares);
    for (const each of shares) expect(each).toBeGreaterThan(0.8);
  });

  it('should be the same prints however cut up, come of one or two parents each, and keep what must stay', () => {
    const { request, found } = RUNS[0]!;
    expect(find(request, 1)).toEqual(found);
    expect(found).toHaveLength(FOUND);
    expect(new Set([...found, ...wall].map(({ key }) => key)).size).toBe(FOUND + wall.length);
    const ids = new Set(request.parents.map(({ id }) => id));
    found.forEach(({ id, index, seed, lineage, pulls }, i) => {
      expect({ id, index }).toEqual({ id: `${seed}:${i}`, index: i });
      expect(lineage).toMatchObject({ kind: 'taste', seed });
      expect([1, 2]).toContain(lineage!.parents.length);
      for (const parent of lineage!.parents) expect(ids.has(parent)).toBe(true);
      expect(pulls.findIndex((each) => each.id === 'p3')).toBeLessThanOrEqual(0);
    });
  });

  it('should follow the slider: what one never chooses at the other end, and other prints when other things were chosen', () => {
    const { choices, worth, found } = RUNS[1]!;
    const never = find(requestFor(choices, { towards: -100 }));
    expect(mean(never.map(({ pulls }) => worth(traitsOf(eye.facts(pulls)))))).toBeLessThan(-0.5);
    const other = find(requestFor(choices.slice(0, 12)));
    expect(other[0]!.seed).not.toBe(found[0]!.seed);
  });

  it('should keep a share of places for prints that the taste is unsure about', () => {
    const { choices } = RUNS[2]!;
    const taste = learnTaste(choices, facts)!;
    const doubts = find(requestFor(choices, { unsure: 25 })).map(({ pulls }) => viewOf(taste, eye.facts(pulls)).doubt);
    const open = doubts.filter((_, place) => place % 4 === 3);
    expect(mean(open)).toBeGreaterThan(mean(doubts.filter((_, place) => place % 4 !== 3)));
  });

  it('should say in one sentence that too little was chosen', () => {
    const { request, choices } = RUNS[3]!;
    const few = (some: readonly TasteChoice[]) => () =>
      createDerivedExplorer(input, { ...request, taste: { ...request.taste!, choices: some } });
    expect(few(choices.slice(0, 4))).toThrow(/from 5 choices on.*there are 4 so far/u);
    expect(few(choices.slice(0, 1))).toThrow(/there is 1 so far/u);
    expect(few(choices.slice(0, 5))).not.toThrow();
  });
});
