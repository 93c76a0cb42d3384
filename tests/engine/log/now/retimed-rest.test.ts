import { describe, expect, it } from 'vitest';
import { sheetsAsPulled } from '../../../../src/engine/log/as-pulled.ts';
import { retimed } from '../../../../src/engine/log/now/retimed.ts';
import { planRest } from '../../../../src/engine/log/rest.ts';
import { measuredPairs } from '../../../../src/engine/log/turns.ts';
import type { LogEvent } from '../../../../src/engine/log/types.ts';
import { visitHeadOf } from '../../../../src/engine/log/visit-head.ts';
import { recipeOf } from '../../../../src/engine/recipe/write.ts';
import { planVisit } from '../../../../src/engine/visit/visit.ts';
import { pullOf, smallProject } from '../../../helpers/small-project.ts';

const { drawer, bench, press } = smallProject();
const recipe = recipeOf([...bench, pullOf('p4', 's1', 'tar', { dxMm: 8 })], drawer, { id: 'a', title: 'First' });
const input = { runs: [{ recipe, sheets: 4, proofs: 1 }], minDeltaE: 1, press, seed: 'x' };
const plan = [...planVisit(input, 50)].at(-1)!;
const head = visitHeadOf(plan, [recipe], { id: 'v', title: 'v', begunMs: 0, minDeltaE: 1 });
const momentOf = (ms: number) => ({ atMs: ms, day: 1, minuteOfDay: ms / 60_000 });

/** The pulls of the first set-ups, a minute each from a time of day on. */
function ticked(setUps: number, fromMinute: number): LogEvent[] {
  return plan.cards
    .slice(0, setUps)
    .flatMap((card) => card.states.flatMap((state) => state.sheets.map((sheet) => ({ sheet, prints: state.prints }))))
    .map(({ sheet, prints }, i) => ({
      id: `e${i}`,
      atMs: (fromMinute + i) * 60_000,
      device: 'd',
      sheet,
      kind: 'pulled',
      pulls: prints.map((at) => recipe.pulls[at]!.id),
    }));
}

describe('the clock of an order that was planned just now', () => {
  it.each([
    [1, 600],
    [2, 600],
    [3, 640],
    [1, 120],
    [2, 125],
  ])('should be its own: %i set-ups ticked from minute %i of the day', (setUps, fromMinute) => {
    const events = ticked(setUps, fromMinute);
    const nowMs = Math.max(...events.map(({ atMs }) => atMs)) + 60_000;
    const sheets = sheetsAsPulled(head, events, () => null);
    const rest = { recipes: [recipe], sheets, now: momentOf(nowMs), setUpsBefore: setUps };
    const left = [...planRest({ ...input, atHand: plan, rest }, 50)].at(-1)!;
    const touching = measuredPairs(0);
    const now = retimed({ plan: left, sheets, recipes: [recipe], test: null, touching, press, now: momentOf(nowMs), momentOf })!;
    expect(now.times.map(({ day, startMinute, endMinute }) => [day, startMinute, endMinute])).toEqual(
      left.times.map(({ day, startMinute, endMinute }) => [day, startMinute, endMinute]),
    );
    expect(now.ends).toEqual(left.ends);
  });
});
