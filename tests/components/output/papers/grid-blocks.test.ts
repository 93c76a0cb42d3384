import { describe, expect, it } from 'vitest';
import { gridBlocks } from '../../../../src/components/output/papers/grid-blocks.ts';
import type { PaperGrid } from '../../../../src/components/output/papers/paper-blocks.ts';
import { recipeOf } from '../../../../src/engine/recipe/write.ts';
import { planVisit } from '../../../../src/engine/visit/visit.ts';
import { smallProject } from '../../../helpers/small-project.ts';

const { drawer, bench, press } = smallProject();
const recipe = recipeOf(bench, drawer, { id: 'a', title: 'First' });

function gridOf(sheets: number, testSheet: boolean): PaperGrid[] {
  const plan = [...planVisit({ runs: [{ recipe, sheets }], minDeltaE: 1, press, seed: 'x', testSheet }, 20)].at(-1)!;
  return gridBlocks(plan).filter((block): block is PaperGrid => block.kind === 'grid');
}

describe('the set-up grid on paper', () => {
  it('should have a column for the test sheet behind all others, with a square in every set-up', () => {
    const [grid] = gridOf(2, true);
    expect(grid!.columns).toEqual([
      { label: '1', letter: 'A' },
      { label: '2', letter: '' },
      { label: '3', letter: 'test' },
    ]);
    for (const { squares } of grid!.rows) expect(squares.at(-1)).toBe('');
    expect(grid!.note).toMatch(/last column is the test sheet/);
  });

  it('should have none where the run has no test sheet', () => {
    const [grid] = gridOf(2, false);
    expect(grid!.columns.map(({ label }) => label)).toEqual(['1', '2']);
    expect(grid!.note).not.toMatch(/test sheet/);
  });
});
