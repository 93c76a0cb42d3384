import { expect, it } from 'vitest';
import { createExplorer } from '../../../../src/engine/explore/search/explorer.ts';
import { pull, rectDrawer } from '../../order/drawer.ts';

it('should hang no print of more pulls than a stack takes, though pulls have echoes', () => {
  const drawer = rectDrawer(
    Array.from({ length: 200 }, (_, i): [number, number, number, number] => [2 + (i % 20) * 9, 2 + Math.floor(i / 20) * 9, 8, 8]),
  );
  const bench = drawer.screens.map((_, i) => pull(i, ['tar', 'rust', 'foam'][i % 3]!));
  const search = createExplorer({
    drawer,
    bench,
    explore: {
      seed: 'full',
      count: 8,
      order: false,
      recolour: true,
      palette: ['tar', 'rust', 'foam'],
      offsetRangeMm: 0,
      leaveOut: 0,
      bringIn: 0,
      holds: [],
      minDeltaE: 0.5,
      echoes: 3,
      echoMm: 1,
    },
  });
  const counts: number[] = [];
  while (!search.done) counts.push(...search.step(8).map(({ pulls }) => pulls.length));
  expect(counts).toHaveLength(8);
  // Draws that add one are not taken.
  expect(Math.max(...counts)).toBe(200);
});
