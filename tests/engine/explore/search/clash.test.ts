import { describe, expect, it } from 'vitest';
import { type Clash, findClash } from '../../../../src/engine/explore/search/clash.ts';
import { createExplorer } from '../../../../src/engine/explore/search/explorer.ts';
import type { ExploreInput, ExploreSettings } from '../../../../src/engine/explore/types.ts';
import type { Pull } from '../../../../src/engine/stack/types.ts';
import { pull, rectDrawer } from '../../order/drawer.ts';

// Three bars that all cross the fourth, and one far away.
const DRAWER = rectDrawer([
  [10, 10, 30, 80],
  [50, 10, 30, 80],
  [90, 10, 30, 80],
  [5, 40, 130, 20],
  [150, 10, 30, 30],
]);
const BENCH = [pull(0, 'tar'), pull(1, 'foam'), pull(2, 'rust'), pull(3, 'weed'), pull(4, 'dusk')];
const QUIET: ExploreSettings = {
  seed: 'clash',
  count: 20,
  order: true,
  recolour: false,
  palette: ['tar', 'foam', 'rust', 'weed', 'dusk'],
  offsetRangeMm: 0,
  leaveOut: 0,
  bringIn: 0,
  holds: [],
  minDeltaE: 0.5,
};

function inputOf(changes: Partial<ExploreSettings>, bench: readonly Pull[] = BENCH): ExploreInput {
  return { drawer: DRAWER, bench, explore: { ...QUIET, ...changes } };
}

function clashOf(input: ExploreInput): { clash: Clash | null; steps: number } {
  const search = findClash(input);
  for (let steps = 0; ; steps++) {
    const step = search.next();
    if (step.done === true) return { clash: step.value, steps };
  }
}

function found(input: ExploreInput): number {
  const explorer = createExplorer(input);
  while (!explorer.done) explorer.step(16);
  return explorer.found;
}

describe('findClash', () => {
  it('should name the three conditions that go round, and none beside them', () => {
    // Tar lies below foam, foam below weed, and weed below tar: a circle of three.
    const input = inputOf({
      neverOver: [
        ['weed', 'tar'],
        ['foam', 'weed'],
        ['rust', 'weed'],
      ],
      holds: [
        { kind: 'before', pull: BENCH[0]!.id, other: BENCH[1]!.id },
        { kind: 'before', pull: BENCH[2]!.id, other: BENCH[4]!.id },
      ],
      maxPulls: 5,
    });
    expect(found(input)).toBe(0);
    const { clash } = clashOf(input);
    expect(clash!.conditions.map(({ says }) => says)).toEqual([
      'pull 1 stays under pull 2',
      'weed never lies over tar',
      'foam never lies over weed',
    ]);
    expect(clash!.sentence).toBe(
      'No print was found that keeps these three together: pull 1 stays under pull 2; weed never lies over tar; foam never lies over weed. Drop one of them, or let more change.',
    );
  });

  it('should mend the wall whichever of its conditions is dropped', () => {
    const input = inputOf({
      neverOver: [
        ['weed', 'tar'],
        ['foam', 'weed'],
        ['rust', 'weed'],
      ],
      maxPulls: 5,
    });
    input.explore.holds = [{ kind: 'before', pull: BENCH[0]!.id, other: BENCH[1]!.id }];
    const { clash } = clashOf(input);
    expect(clash!.conditions).toHaveLength(3);
    for (const { change } of clash!.conditions) {
      const mended = { ...input, explore: { ...input.explore, ...change } };
      expect(found(mended)).toBeGreaterThan(0);
      expect(mended.explore.maxPulls).toBe(5);
      expect(mended.explore.neverOver).toContainEqual(['rust', 'weed']);
    }
  });

  it('should name a condition that no print keeps by itself', () => {
    const { clash } = clashOf(inputOf({ apart: [['tar', 'weed']], maxPulls: 5 }));
    expect(clash!.conditions.map(({ says }) => says)).toEqual(['tar never touches weed']);
    expect(clash!.sentence).toBe('No print was found that keeps this: tar never touches weed. Drop it, or let more change.');
    expect(clash!.lead).toBe('No print was found that keeps this. Drop it, or let more change.');
    expect(clash!.conditions[0]!.change).toEqual({ apart: undefined });
  });

  it('should name what screens must be there and inks that never touch', () => {
    // The fourth bar, weed, crosses the second, foam, and both must stay.
    const screens = BENCH.map((each) => each.screen);
    const { clash } = clashOf(
      inputOf({
        leaveOut: 4,
        mustScreens: [screens[0]!, screens[1]!, screens[3]!],
        apart: [
          ['tar', 'foam'],
          ['weed', 'foam'],
        ],
        maxPulls: 3,
      }),
    );
    expect(clash!.conditions.map(({ says }) => says).sort()).toEqual([
      'screen 2 is in every print',
      'screen 4 is in every print',
      'weed never touches foam',
    ]);
  });

  it('should find nothing where prints fit, and yield often', () => {
    expect(clashOf(inputOf({ neverOver: [['tar', 'weed']] })).clash).toBeNull();
    expect(clashOf(inputOf({})).clash).toBeNull();
    const input = inputOf({ apart: [['tar', 'weed']] });
    expect(clashOf(input).steps).toBeGreaterThanOrEqual(200);
  });

  it('should leave conditions about inks that are gone out', () => {
    const { clash } = clashOf(
      inputOf({
        apart: [
          ['gone', 'tar'],
          ['tar', 'weed'],
        ],
        inkFirst: 'gone',
      }),
    );
    expect(clash!.conditions.map(({ says }) => says)).toEqual(['tar never touches weed']);
  });
});
