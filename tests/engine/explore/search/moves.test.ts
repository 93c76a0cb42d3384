import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import type { MoveSource } from '../../../../src/engine/explore/search/move-source.ts';
import { drawMoves, type Moved } from '../../../../src/engine/explore/search/moves.ts';
import type { ExploreSettings } from '../../../../src/engine/explore/types.ts';
import { pull } from '../../order/drawer.ts';

const PALETTE = ['tar', 'foam', 'rust', 'weed', 'clay', 'dusk'];
const SETTINGS: ExploreSettings = {
  seed: 'any',
  count: 1,
  order: true,
  recolour: true,
  palette: PALETTE,
  offsetRangeMm: 3,
  leaveOut: 2,
  bringIn: 2,
  holds: [],
  minDeltaE: 1,
};

function source(pulls: number, spares: number, settings: Partial<ExploreSettings> = {}, inkHeld: string[] = []): MoveSource {
  return {
    settings: { ...SETTINGS, ...settings },
    bench: Array.from({ length: pulls }, (_, i) => pull(i, PALETTE[i % PALETTE.length]!)),
    spares: Array.from({ length: spares }, (_, i) => pull(pulls + i, '')),
    kept: new Set(),
    veils: [],
    placer: null,
    mirrors: new Map(),
    still: new Set(),
    inkHeld: new Set(inkHeld),
  };
}

function draws(from: MoveSource, many = 400): Moved[] {
  return Array.from({ length: many }, (_, i) => drawMoves(from, randomFrom(`draw ${i}`)));
}

const inksOf = ({ pulls }: Moved): number => new Set(pulls.map((each) => each.ink)).size;

describe('drawMoves', () => {
  it('should never change the lays alone while something that shows more may change', () => {
    const from = source(8, 4);
    for (const moved of draws(from)) {
      const inksChanged = moved.pulls.some((each, i) => each.ink !== from.bench.find(({ id }) => id === each.id)?.ink || i >= moved.base);
      expect(moved.reorder || inksChanged || moved.pulls.length !== 8).toBe(true);
    }
  });

  it('should still change the lays when nothing else may', () => {
    const only = { order: false, recolour: false, leaveOut: 0, bringIn: 0 };
    expect(draws(source(5, 0, only), 50).filter(({ shifted }) => shifted).length).toBeGreaterThan(45);
  });

  it('should keep some prints to few inks and give others many', () => {
    const counts = draws(source(12, 0)).map(inksOf);
    expect(counts.filter((count) => count <= 4).length).toBeGreaterThan(60);
    expect(counts.filter((count) => count >= 5).length).toBeGreaterThan(150);
  });

  it('should keep held inks also where a print is kept to few', () => {
    for (const { pulls } of draws(source(6, 0, { leaveOut: 0 }, ['p0', 'p3']))) {
      const inkOf = (id: string): string | undefined => pulls.find((each) => each.id === id)?.ink;
      expect([inkOf('p0'), inkOf('p3')]).toEqual(['tar', 'weed']);
    }
  });

  it('should layer two screens or more where there is no stack to start from', () => {
    const sizes = draws(source(0, 9, { bringIn: 5 }), 200).map(({ pulls }) => pulls.length);
    expect(new Set(sizes)).toEqual(new Set([2, 3, 4, 5]));
    expect(draws(source(0, 1), 20).every(({ pulls }) => pulls.length === 1)).toBe(true);
  });
});
