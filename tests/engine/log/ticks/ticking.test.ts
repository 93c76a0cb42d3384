import { describe, expect, it } from 'vitest';
import { sheetsAsPulled } from '../../../../src/engine/log/as-pulled.ts';
import { tickedAgain, tickedOff, ticksOf } from '../../../../src/engine/log/ticks/ticking.ts';
import type { Happening, LogEvent, VisitHead } from '../../../../src/engine/log/types.ts';
import { recipeOf } from '../../../../src/engine/recipe/write.ts';
import type { SetUpCard } from '../../../../src/engine/visit/set-up-cards.ts';
import type { PressPlan } from '../../../../src/engine/visit/visit.ts';
import { smallProject } from '../../../helpers/small-project.ts';

const { drawer, bench } = smallProject();
const recipe = recipeOf(bench, drawer, { id: 'a', title: 'Ebb' });
const head: VisitHead = { id: 'v', title: 'Visit', begunMs: 0, recipes: [recipe], sheets: [{ number: 1, recipe: 0 }] };
const cardOf = (at: number): SetUpCard =>
  ({ number: at + 1, sheets: [1], states: [{ recipe: 0, sheets: [1], prints: [at] }] }) as unknown as SetUpCard;

/** A log that is written by ticking, one event a second unless the clock is set. */
function press() {
  const events: LogEvent[] = [];
  let atMs = 0;
  const sheets = () => sheetsAsPulled(head, events);
  const ticking = (at: number) => ({ card: cardOf(at), numbers: [1], sheets: sheets(), recipes: head.recipes });
  const add = (happenings: readonly Happening[]): void => {
    for (const happening of happenings) events.push({ ...happening, id: `e${events.length}`, atMs: (atMs += 1000), device: 'd' });
  };
  return {
    wait: (ms: number): void => void (atMs += ms),
    on: (at: number): void => add(tickedAgain(ticking(at), events, atMs)),
    off: (at: number): void => add(tickedOff(ticking(at))),
    done: (): number[] => sheets()[0]!.done,
  };
}

describe('tickedAgain', () => {
  it('should put a tick back where it was when a finger slipped, as often as it slips', () => {
    const { on, off, done } = press();
    on(0);
    on(1);
    off(0);
    expect(done()).toEqual([1]);
    on(0);
    expect(done()).toEqual([0, 1]);
    off(0);
    on(0);
    expect(done()).toEqual([0, 1]);
  });

  it('should log a pull anew that was taken back long ago', () => {
    const { on, off, wait, done } = press();
    on(0);
    on(1);
    off(0);
    wait(121_000);
    on(0);
    expect(done()).toEqual([1, 0]);
  });
});

describe('ticksOf', () => {
  it('should tick what is pulled, and a spoiled sheet everywhere: nothing is left to do on it', () => {
    const two: VisitHead = { ...head, sheets: [1, 2, 3].map((number) => ({ number, recipe: 0 })) };
    const plan = {
      cards: [0, 1, 2].map((at) => ({
        number: at + 1,
        sheets: [1, 2, 3],
        states: [{ recipe: 0, sheets: [1, 2, 3], prints: [at] }],
      })),
    } as unknown as PressPlan;
    const [first] = recipe.pulls;
    const events: LogEvent[] = [
      { id: 'a', atMs: 1, device: 'd', sheet: 1, kind: 'pulled', pulls: [first!.id] },
      { id: 'b', atMs: 2, device: 'd', sheet: 2, kind: 'spoiled', note: 'torn' },
    ];
    expect([...ticksOf(plan, sheetsAsPulled(two, events))].sort()).toEqual(['1:1', '1:2', '2:2', '3:2']);
  });
});
