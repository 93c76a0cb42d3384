import type { ReactiveControllerHost } from 'lit';
import { describe, expect, it } from 'vitest';
import { AppStore } from '../../../src/components/app-store.ts';
import { goOn } from '../../../src/components/press/next/go-on.ts';
import { PressVisit } from '../../../src/components/press/press-visit.ts';
import { planRest } from '../../../src/engine/log/rest.ts';
import type { LogEvent } from '../../../src/engine/log/types.ts';
import type { Project } from '../../../src/engine/project/types.ts';
import { visitInputOf } from '../../../src/engine/project/visit-input.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { planVisit, type PressPlan } from '../../../src/engine/visit/visit.ts';
import { pullOf, smallProject } from '../../helpers/small-project.ts';

const base = smallProject();
const recipe = recipeOf(base.bench, base.drawer, { id: 'a', title: 'Ebb' });
const project: Project = { ...base, recipes: [recipe], visit: [{ recipe: 'a', sheets: 3 }] };

/** A visit at the press that plans here, without a worker, and keeps what is saved as a database does. */
async function atPress() {
  const parts: Record<string, unknown> = {};
  const saver = {
    save: () => {},
    openPress: () => Promise.resolve(structuredClone(parts)),
    savePress: (changed: Record<string, unknown>) => Promise.resolve(void Object.assign(parts, structuredClone(changed))),
    readVisits: () => Promise.resolve([]),
    readEvents: () => Promise.resolve([] as LogEvent[]),
    addEvents: () => Promise.resolve(),
  };
  const store = new AppStore(project, saver);
  const host = { addController: () => {}, requestUpdate: () => {}, removeController: () => {}, updateComplete: Promise.resolve(true) };
  const visit = new PressVisit(
    host as ReactiveControllerHost,
    () => store,
    () => {},
  );
  visit.hostConnected();
  visit.run.start = (input) => {
    const plans: PressPlan[] = 'rest' in input ? [...planRest(input, 20)] : [...planVisit(input, 20)];
    visit.run.put({ plan: plans.at(-1)!, input, recipes: [recipe] });
    return Promise.resolve();
  };
  await visit.run.start(visitInputOf(project));
  visit.follow();
  return { store, visit, parts };
}

/** Ticks every sheet of the first set-up. */
async function tickFirst(visit: PressVisit): Promise<void> {
  const [card] = visit.made!.plan.cards;
  visit.tick({ setUp: card!.number, sheets: card!.sheets, on: true, where: 'all' });
  await new Promise((resolve) => setTimeout(resolve));
}

describe('goOn', () => {
  it('should number what is left on from the set-ups that were done, also where its sheets were pulled in these', async () => {
    const { store, visit } = await atPress();
    await tickFirst(visit);
    const [number] = visit.made!.plan.cards[0]!.sheets;
    const more = [pullOf('again', 's2', 'tar')];
    await goOn(visit, store, { numbers: [number!], more, studio: project.drawer, planned: true });
    visit.follow();
    const { plan } = visit.made!;
    expect(plan.setUpsBefore).toBe(1);
    expect(plan.cards[0]!.number).toBe(2);
  });
});

describe('undo at the press', () => {
  it('should take acts back in reverse order and do them again, with their orders and all that was logged', async () => {
    const { store, visit } = await atPress();
    const settle = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));
    const shown: { label: string | null; stands: string; plan: PressPlan }[] = [];
    const look = () => ({
      label: store.undoLabel,
      stands: JSON.stringify(visit.log.sheets.map(({ recipe: of, pulls, done }) => [of, pulls, done])),
      plan: visit.made!.plan,
    });
    const step = async (act: () => unknown): Promise<void> => {
      shown.push(look());
      await act();
      await settle();
      visit.follow();
      await settle();
    };
    await step(() => tickFirst(visit));
    const [number] = visit.made!.plan.cards[0]!.sheets;
    const going = { more: [pullOf('again', 's2', 'tar')], studio: project.drawer, planned: true };
    await step(() => goOn(visit, store, { numbers: [number!], ...going }));
    await step(() => goOn(visit, store, { numbers: [number!], ...going, pulled: true }));
    await step(() => visit.log.add([{ kind: 'spoiled', sheet: number!, note: '' }]));
    shown.push(look());
    expect(shown.map(({ label }) => label)).toEqual([
      null,
      'log sheets 1–5 as pulled',
      'let sheet 1 go on in another way',
      'log an extra pull on sheet 1',
      'log what happened to sheet 1',
    ]);
    const logged = visit.log.events.length;
    for (const expected of shown.slice(0, -1).toReversed()) {
      store.undo();
      await settle();
      const { label, stands, plan } = look();
      expect(label).toBe(expected.label);
      expect(plan).toEqual(expected.plan);
      // Recipes that sheets went on with keep their place, unused.
      expect(stands).toBe(expected.stands);
    }
    // Nothing is taken out of a log: taking back is logged too.
    expect(visit.log.events.length).toBe(2 * logged);
    for (const expected of shown.slice(1)) {
      store.redo();
      await settle();
      expect(look()).toEqual(expected);
    }
    expect(store.redoLabel).toBeNull();
  });
});

describe('undo after the rest was planned', () => {
  it('should put the order back that was worked from, as it is shown and as it is kept, with its ticks', async () => {
    const { store, visit, parts } = await atPress();
    const whole = visit.made!;
    await tickFirst(visit);
    const { events, head } = visit.log;
    expect(events).toHaveLength(whole.plan.cards[0]!.sheets.length);
    visit.findRest();
    await Promise.resolve();
    visit.follow();
    // It is kept in a task of its own.
    await new Promise((resolve) => setTimeout(resolve));
    const rest = visit.made!;
    expect(rest.plan.setUpsBefore).toBe(1);
    expect(rest.plan.cards.map(({ number }) => number)).toEqual(whole.plan.cards.slice(1).map(({ number }) => number));
    expect((parts['made'] as typeof rest).plan).toEqual(rest.plan);
    expect(store.undoLabel).toBe('plan again');

    store.undo();
    visit.follow();
    expect(visit.made!.plan).toEqual(whole.plan);
    expect((parts['made'] as typeof whole).plan).toEqual(whole.plan);
    // No other visit was begun for it, and nothing that was ticked is lost.
    expect(visit.log.head).toBe(head);
    expect(visit.log.events).toEqual(events);
    // What comes next is the set-up behind the one that is done.
    expect(visit.selected).toBe(1);
    expect(store.undoLabel).not.toBe('plan again');
  });

  it('should leave an order alone that another visit was begun with since', async () => {
    const { visit } = await atPress();
    const [before, head] = [visit.made!, visit.log.head];
    await tickFirst(visit);
    visit.ask(true);
    visit.find();
    visit.follow();
    const next = visit.made!;
    expect(visit.log.head).not.toBe(head);
    visit.goBack(before, head);
    expect(visit.made).toBe(next);
  });
});
