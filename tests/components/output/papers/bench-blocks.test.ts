import { describe, expect, it } from 'vitest';
import type { MadePlan } from '../../../../src/components/output/made-plan.ts';
import { benchBlocks } from '../../../../src/components/output/papers/bench-blocks.ts';
import type { PaperTable } from '../../../../src/components/output/papers/paper-blocks.ts';
import { madeForPaper } from '../../../../src/components/press/sheet/made-for-paper.ts';
import { sheetsAsPulled } from '../../../../src/engine/log/as-pulled.ts';
import { retimed } from '../../../../src/engine/log/now/retimed.ts';
import { measuredPairs } from '../../../../src/engine/log/turns.ts';
import type { LogEvent } from '../../../../src/engine/log/types.ts';
import { visitHeadOf } from '../../../../src/engine/log/visit-head.ts';
import { recipeOf } from '../../../../src/engine/recipe/write.ts';
import { planVisit } from '../../../../src/engine/visit/visit.ts';
import { smallProject } from '../../../helpers/small-project.ts';

const { drawer, bench, press } = smallProject();
const recipe = recipeOf(bench, drawer, { id: 'a', title: 'First' });
const input = { runs: [{ recipe, sheets: 1 }], minDeltaE: 1, press: { ...press, dayStartMinute: 570 }, seed: 'x' };
const plan = [...planVisit(input, 20)].at(-1)!;
const made: MadePlan = { plan, input, recipes: [recipe] };
const head = visitHeadOf(plan, [recipe], { id: 'v', title: 'v', begunMs: 0, minDeltaE: 1 });
const momentOf = (ms: number) => ({ atMs: ms, day: 1, minuteOfDay: ms / 60_000 });

function bench1(of: MadePlan): { rows: PaperTable['rows']; note: string } {
  const blocks = benchBlocks(of, null);
  const table = blocks.find((block): block is PaperTable => block.kind === 'table')!;
  return { rows: table.rows, note: blocks.flatMap((block) => (block.kind === 'text' ? [block.text] : [])).join(' ') };
}

describe('the bench sheet', () => {
  it('should have a box and the planned time for each set-up while nothing is ticked', () => {
    const { rows, note } = bench1(madeForPaper(made, null));
    expect(rows.every(({ cells }) => cells[0]!.box === true)).toBe(true);
    expect(note).not.toMatch(/ticked/);
  });

  it('should stand on the clock of what was ticked, say until when, and have no box for what is done', () => {
    const first = plan.cards[0]!;
    // The first set-up is ticked two hours late, at 12:00.
    const pulls = first.states[0]!.prints.map((at) => recipe.pulls[at]!.id);
    const events: LogEvent[] = [{ id: 'e', atMs: 720 * 60_000, device: 'd', sheet: 1, kind: 'pulled', pulls }];
    const sheets = sheetsAsPulled(head, events, () => null);
    const way = { plan, sheets, recipes: [recipe], test: null, touching: measuredPairs(0), press: input.press, momentOf };
    const { rows, note } = bench1(madeForPaper(made, retimed({ ...way, now: momentOf(725 * 60_000) })));
    expect(rows[0]!.cells[0]).toEqual({ lines: [{ text: 'done', size: 'small' }] });
    expect(rows[0]!.cells[1]!.lines[1]!.text).toBe('to 12:00');
    expect(rows[1]!.cells[0]!.box).toBe(true);
    expect(rows[1]!.cells[1]!.lines[0]!.text).toBe('12:05');
    expect(note).toMatch(/^Times by what was ticked until day 1, 12:05\. Grams/);
  });
});
