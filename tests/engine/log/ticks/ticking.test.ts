import { describe, expect, it } from 'vitest';
import { sheetsAsPulled } from '../../../../src/engine/log/as-pulled.ts';
import { otherwiseTicks, tickedAgain, tickedOff, ticksOf } from '../../../../src/engine/log/ticks/ticking.ts';
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
    last: (): LogEvent => events.at(-1)!,
    add,
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

describe('what one tick knows', () => {
  it('should go by the latest tick of a pull where it was ticked anew', () => {
    const { on, off, wait, done, last } = press();
    on(0);
    off(0);
    wait(121_000);
    on(0);
    const anew = last();
    expect(anew.kind).toBe('pulled');
    off(0);
    const slip = last();
    expect(slip).toMatchObject({ kind: 'undone', event: anew.id });
    on(0);
    expect(last()).toMatchObject({ kind: 'undone', event: slip.id });
    expect(done()).toEqual([0]);
  });

  it('should not take the undoing of another pull, or of another sheet, for its own', () => {
    const { on, off, add, done, last } = press();
    on(0);
    off(0);
    on(1);
    expect(last()).toMatchObject({ kind: 'pulled', pulls: [recipe.pulls[1]!.id] });
    add([{ kind: 'pulled', sheet: 2, pulls: [recipe.pulls[2]!.id] }]);
    add([{ kind: 'undone', sheet: 2, event: last().id }]);
    on(2);
    expect(last()).toMatchObject({ kind: 'pulled', sheet: 1 });
    expect(done()).toEqual([1, 2]);
  });

  it('should take back an entry of several pulls when one of them is unticked', () => {
    const { off, add, done } = press();
    add([{ kind: 'pulled', sheet: 1, pulls: recipe.pulls.slice(0, 2).map(({ id }) => id) }]);
    off(0);
    expect(done()).toEqual([]);
  });

  it('should leave alone sheets that the visit does not have', () => {
    const ticking = { card: cardOf(0), numbers: [7], sheets: sheetsAsPulled(head, []), recipes: head.recipes };
    expect(tickedOff(ticking)).toEqual([]);
    expect(tickedAgain(ticking, [], 0)).toEqual([]);
  });
});

describe('ticksOf', () => {
  it('should tick a set-up of two pulls when both are on the sheet, and pass over sheets without a state', () => {
    const plan = { cards: [{ number: 1, states: [{ recipe: 0, sheets: [1, 9], prints: [0, 1] }] }] } as unknown as PressPlan;
    const pulled = (...ats: number[]): LogEvent[] => [
      { id: 'a', atMs: 1, device: 'd', sheet: 1, kind: 'pulled', pulls: ats.map((at) => recipe.pulls[at]!.id) },
    ];
    expect([...ticksOf(plan, sheetsAsPulled(head, pulled(0)))]).toEqual([]);
    expect([...ticksOf(plan, sheetsAsPulled(head, pulled(0, 1)))]).toEqual(['1:1']);
  });

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

describe('sheets that were pulled otherwise', () => {
  const plan = { cards: [0, 1].map(cardOf) } as unknown as PressPlan;

  it('should be told at the set-up in which they were, and no more when it is taken back', () => {
    const log: LogEvent[] = [];
    const keys = (): string[] => [...otherwiseTicks(plan, sheetsAsPulled(head, log), head.recipes)];
    const say = (happening: Happening): void => void log.push({ ...happening, id: `o${log.length}`, atMs: log.length, device: 'd' });
    say({ kind: 'pulled', sheet: 1, pulls: [recipe.pulls[0]!.id] });
    expect(keys()).toEqual([]);
    say({ kind: 'otherwise', sheet: 1, pulls: [recipe.pulls[1]!.id], how: { strokes: 2, dxMm: 0, dyMm: 0 }, note: '' });
    expect(keys()).toEqual(['2:1']);
    say({ kind: 'undone', sheet: 1, event: 'o1' });
    expect(keys()).toEqual([]);
  });
});
