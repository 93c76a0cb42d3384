import { describe, expect, it } from 'vitest';
import { gridBlocks } from '../../../../src/components/output/papers/grid-blocks.ts';
import type { PaperGrid } from '../../../../src/components/output/papers/paper-blocks.ts';
import { recipeOf } from '../../../../src/engine/recipe/write.ts';
import type { VisitRunInput } from '../../../../src/engine/visit/visit-problem.ts';
import { planVisit } from '../../../../src/engine/visit/visit.ts';
import { smallProject } from '../../../helpers/small-project.ts';

const { drawer, bench, press } = smallProject();
const recipe = recipeOf(bench, drawer, { id: 'a', title: 'First' });

function gridOf(sheets: number, testSheet: boolean, more: Partial<VisitRunInput> = {}): PaperGrid[] {
  const plan = [...planVisit({ runs: [{ recipe, sheets, ...more }], minDeltaE: 1, press, seed: 'x', testSheet }, 20)].at(-1)!;
  return gridBlocks(plan).filter((block): block is PaperGrid => block.kind === 'grid');
}

describe('the set-up grid on paper', () => {
  it('should have a column for the test sheet behind all others, with a square in every set-up', () => {
    const [grid] = gridOf(2, true);
    expect(grid!.columns).toEqual([
      { label: '1', use: '', letter: 'A' },
      { label: '2', use: '', letter: '' },
      { label: '3', use: '', letter: 'test' },
    ]);
    for (const { squares } of grid!.rows) expect(squares.at(-1)).toBe('');
    expect(grid!.note).toMatch(/last column is the test sheet/);
  });

  it('should mark proofs and overs, and say what the marks mean, only where there are some', () => {
    const [grid] = gridOf(2, false, { proofs: 1, overs: 1 });
    expect(grid!.columns.map(({ label, use }) => label + use).sort()).toEqual(['1', '2', '3P', '4O']);
    expect(grid!.note).toContain('P proof, O over.');
    expect(gridOf(2, false)[0]!.note).not.toContain('proof');
  });

  it('should have none where the run has no test sheet', () => {
    const [grid] = gridOf(2, false);
    expect(grid!.columns.map(({ label }) => label)).toEqual(['1', '2']);
    expect(grid!.note).not.toMatch(/test sheet/);
  });
});
