import { describe, expect, it } from 'vitest';
import { sheetsAsPulled } from '../../../../src/engine/log/as-pulled.ts';
import { checkLog } from '../../../../src/engine/log/check.ts';
import { registerFound } from '../../../../src/engine/log/feedback/register.ts';
import { transferFound } from '../../../../src/engine/log/feedback/transfer.ts';
import { readLog, writeLog } from '../../../../src/engine/log/log-file.ts';
import { settingFor, settingsNoted } from '../../../../src/engine/log/settings.ts';
import type { LogEvent } from '../../../../src/engine/log/types.ts';
import { visitHeadOf } from '../../../../src/engine/log/visit-head.ts';
import { recipeOf } from '../../../../src/engine/recipe/write.ts';
import { setUpInk } from '../../../../src/engine/visit/quantities/set-up-ink.ts';
import { planVisit } from '../../../../src/engine/visit/visit.ts';
import { pullOf, smallProject } from '../../../helpers/small-project.ts';

const { drawer, press } = smallProject();
const recipe = recipeOf([pullOf('p1', 's1', 'rust', { strokes: 2 }), pullOf('p2', 's2', 'weed')], drawer, { id: 'a', title: 'Ebb' });
const TRANSFER = 0.7;
const figures = { ...press, transfer: TRANSFER, lossMl: 50 };
const plan = [...planVisit({ runs: [{ recipe, sheets: 4 }], minDeltaE: 0, press: figures, seed: 'x' }, 20)].at(-1)!;
const head = visitHeadOf(plan, [recipe], { id: 'v', title: 'v', begunMs: 0 });
const printed = setUpInk(plan, [recipe], figures);
const DENSITY = recipe.inks[0]!.densityGPerCm3;

let next = 0;
const event = (rest: Partial<LogEvent>): LogEvent => ({ id: `e${next}`, atMs: ++next, device: 'd', ...rest }) as LogEvent;
const of = { sheet: 0, screen: { number: 1, name: 's1' }, ink: recipe.inks.find(({ id }) => id === 'rust')!.name };
const pulls = [1, 2, 3, 4].flatMap((sheet) => [
  event({ kind: 'pulled', sheet, pulls: ['p1'] }),
  event({ kind: 'pulled', sheet, pulls: ['p2'] }),
]);
const weighed = (grams: number, on: [number, string][], more: object = {}) =>
  event({ ...of, kind: 'weighed', grams, on, ...more } as Partial<LogEvent>);
const RUST: [number, string][] = [1, 2, 3, 4].map((sheet) => [sheet, 'p1']);
const found = (events: LogEvent[], lossMl = 50) =>
  transferFound({ recipes: [recipe], sheets: sheetsAsPulled(head, events, () => null) }, events, lossMl);

describe('ink that was weighed', () => {
  const [rust, weed] = plan.cards.map((card, i) => ({ card, grams: printed[i]!.grams }));
  it('should tell the share that reached the paper: the grams of a plan weigh back to its own', () => {
    expect(rust!.card.ink.ink.id).toBe('rust');
    const taken = rust!.grams + 50 * DENSITY;
    expect(found([...pulls, weighed(taken, RUST)])).toMatchObject({ setUps: 1 });
    expect(found([...pulls, weighed(taken, RUST)])!.value).toBeCloseTo(TRANSFER, 9);
    // Half as much ink on the paper is half the share.
    expect(found([...pulls, weighed(rust!.grams / 2 + 50 * DENSITY, RUST)])!.value).toBeCloseTo(TRANSFER / 2, 9);
  });

  it('should count a second weighing of a set-up with the first, and set-ups apart', () => {
    const half = (rust!.grams + 50 * DENSITY) / 2;
    expect(found([...pulls, weighed(half, RUST.slice(0, 2)), weighed(half, RUST)])!.value).toBeCloseTo(TRANSFER, 9);
    const other = weighed(
      2 * weed!.grams + 50 * DENSITY,
      [1, 2, 3, 4].map((sheet): [number, string] => [sheet, 'p2']),
      { screen: { number: 2, name: 's2' }, ink: 'Weed' },
    );
    const both = found([...pulls, weighed(2 * half, RUST), other])!;
    expect(both.setUps).toBe(2);
    expect([both.least, both.value, both.most].map((share) => share / TRANSFER)).toEqual([
      expect.closeTo(1, 9),
      expect.closeTo(1.5, 9),
      expect.closeTo(2, 9),
    ]);
  });

  it('should say nothing of less than what stays, of pulls that were taken back, and of nothing', () => {
    expect(found([...pulls, weighed(10, RUST)])).toBeNull();
    expect(found([weighed(500, RUST)])).toBeNull();
    expect(found(pulls)).toBeNull();
  });
});

describe('what is noted of a set-up', () => {
  const note = (how: object, more: object = {}) => event({ ...of, kind: 'set-up', how, note: '', ...more } as Partial<LogEvent>);

  it('should be the last word of each screen and ink, found again for that screen', () => {
    const events = [
      note({ snapOffMm: 3, registerMm: 0.4 }),
      note({ snapOffMm: 4, registerMm: 0.2 }),
      note({ shoreA: 70, registerMm: 0.6 }, { ink: 'Weed' }),
    ];
    const noted = settingsNoted(events);
    expect(noted.map(({ ink, how }) => [ink, how])).toEqual([
      ['Weed', { shoreA: 70, registerMm: 0.6 }],
      [of.ink, { snapOffMm: 4, registerMm: 0.2 }],
    ]);
    const screen = { number: 1, name: 's1' };
    expect(settingFor(noted, { screen, ink: { ink: { name: of.ink } } })?.how.snapOffMm).toBe(4);
    expect(settingFor(noted, { screen, ink: { ink: { name: 'Foam' } } })?.ink).toBe('Weed');
    expect(settingFor(noted, { screen: { number: 2, name: 's1' }, ink: { ink: { name: of.ink } } })).toBeNull();
    expect(registerFound(events)).toEqual({ value: 0.4, least: 0.2, most: 0.6, setUps: 2 });
    expect(registerFound([])).toBeNull();
  });

  it('should go through a file, contradict nothing, and be undone', () => {
    const events = [...pulls, note({ snapOffMm: 3, profile: 'square' }), weighed(120, RUST)];
    expect(readLog(writeLog(head, events), 'v.json').value!.events).toEqual(events);
    expect(checkLog(head, events, () => null)).toEqual([]);
    const undone = event({ kind: 'undone', sheet: 0, event: events.at(-2)!.id });
    expect(settingsNoted([...events, undone])).toEqual([]);
    const wrong = JSON.stringify(JSON.parse(writeLog(head, [note({ snapOffMm: 300 })])));
    expect(readLog(wrong, 'v.json').problems[0]!.message).toContain('snapOffMm');
  });
});
