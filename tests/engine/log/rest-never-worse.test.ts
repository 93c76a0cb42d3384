import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../src/engine/base/random.ts';
import { recipesAsPulled, sheetsAsPulled } from '../../../src/engine/log/as-pulled.ts';
import { chosenFor } from '../../../src/engine/log/now/chosen.ts';
import { planRest, type RestInput, type RestPlan } from '../../../src/engine/log/rest.ts';
import type { LogEvent, VisitHead } from '../../../src/engine/log/types.ts';
import { visitHeadOf } from '../../../src/engine/log/visit-head.ts';
import { studioOfRecipe } from '../../../src/engine/recipe/write.ts';
import { type PressPlan, planVisit, type VisitInput } from '../../../src/engine/visit/visit.ts';
import { CASE_PRESS, inventedVisit } from '../../helpers/printer-cases.ts';
import { countedBy, goingOn, gramsByHand, less, pullsOf, unsound } from '../../helpers/rest-checks.ts';

const SEEDS = ['one', 'two', 'three', 'four', 'five', 'six'];
const PRESS = { ...CASE_PRESS, registrationMm: 0.5 };

function last<T>(steps: Iterable<T>): T {
  const all = [...steps];
  return all.at(-1)!;
}

const SMALL = { recipes: 3, sheets: 3, pulls: 7, screens: 6, odd: 5 };
/** So large that a short search finds nothing near the best. */
const LARGE = { recipes: 6, sheets: 3, pulls: 14, screens: 10, odd: 5 };

function visitOf(seed: string, size: typeof SMALL): VisitInput {
  const input = inventedVisit({ ...size, seed }, PRESS);
  return { ...input, runs: input.runs.map((run) => ({ ...run, overs: 1, proofs: 1 })) };
}

/** A visit of which some set-ups are done and another is half done. */
interface Begun {
  input: VisitInput;
  plan: PressPlan;
  head: VisitHead;
  events: LogEvent[];
}

function begun(seed: string, share: number, size = SMALL): Begun {
  const input = visitOf(seed, size);
  const plan = last(planVisit(input, size === LARGE ? 200 : 40));
  const recipes = input.runs.map((run) => run.recipe);
  const head = visitHeadOf(plan, recipes, { id: 'v', title: 'v', begunMs: 0, minDeltaE: 1 });
  const whole = Math.round(share * plan.cards.length);
  const events: LogEvent[] = [];
  plan.cards.slice(0, whole + 1).forEach((card, i) => {
    for (const { recipe, sheets, prints } of card.states) {
      for (const sheet of sheets.slice(0, i < whole ? sheets.length : Math.ceil(sheets.length / 2))) {
        const pulls = prints.map((at) => recipes[recipe]!.pulls[at]!.id);
        events.push({ id: `${i} ${sheet}`, atMs: 60_000 * i, device: 'd', sheet, kind: 'pulled', pulls });
      }
    }
  });
  return { input, plan, head, events };
}

function restOf({ input, plan, head, events }: Begun, change: Partial<RestInput> = {}): RestInput {
  return { ...input, atHand: plan, rest: { recipes: head.recipes, sheets: sheetsAsPulled(head, events) }, ...change };
}

function expectSound(rest: RestPlan, input: RestInput): void {
  expect(unsound(rest, input)).toEqual([]);
}

describe('the rest planned anew', () => {
  it('should never be worse than going on as before', () => {
    let worseWithout = 0;
    for (const [i, seed] of SEEDS.entries()) {
      for (const share of i < 2 ? [0.1] : [0.2, 0.6]) {
        const visit = begun(seed, share, i < 2 ? LARGE : SMALL);
        const before = countedBy(goingOn(visit));
        const input = restOf(visit);
        // Hardly any work: what a long search would hide, a short one shows.
        for (const budgetMs of [1, 20]) {
          const rest = last(planRest(input, budgetMs));
          const now = countedBy(rest.cards);
          expect(less(now, before)).toBeLessThanOrEqual(0);
          if (less(now, before) === 0) {
            const [end, was] = [rest.ends, rest.before!.ends];
            expect(1440 * end.day + end.minute).toBeLessThanOrEqual(1440 * was.day + was.minute);
          }
          expect(rest.before).toMatchObject({ mounts: before[0], inkChanges: before[1], registerMoves: before[2] });
          expectSound(rest, input);
          // No step on the way is worse either.
          for (const step of planRest(input, budgetMs)) expect(less(countedBy(step.cards), before)).toBeLessThanOrEqual(0);
        }
        if (less(countedBy(last(planRest({ ...input, atHand: undefined }, 1)).cards), before) > 0) worseWithout++;
      }
    }
    // Without the order at hand it would have been: the check can fail.
    expect(worseWithout).toBeGreaterThan(0);
  });

  it('should keep the order at hand when nothing better is found', () => {
    const visit = begun('kept', 0.4);
    const found = last(planRest(restOf(visit), 200));
    const again = last(planRest(restOf({ ...visit, plan: found }), 1));
    expect(again.kept).toBe(true);
    expect(again.cards.map(pullsOf)).toEqual(found.cards.map(pullsOf));
  });

  it('should cost no more than a set-up when sheets take another pull that was chosen at the press', () => {
    let joined = 0;
    for (const seed of SEEDS.slice(0, 1)) {
      const visit = begun(seed, 0.2, LARGE);
      const before = goingOn(visit);
      const [mounts, inks] = countedBy(before);
      // Once what is on the press, half pulled, and once what was finished before it.
      for (const card of [before[0]!, visit.plan.cards[1]!]) {
        const { recipe, prints } = card.states[0]!;
        const from = visit.head.recipes[recipe]!;
        const sheets = sheetsAsPulled(visit.head, visit.events);
        const takers = sheets.filter((sheet) => !card.states.some((state) => state.sheets.includes(sheet.number))).slice(0, 3);
        const choice = { more: [from.pulls[prints[0]!]!], studio: studioOfRecipe(from), id: 'new', planned: true };
        const happenings = chosenFor(takers, visit.head.recipes, choice);
        const chosen = happenings.map((each, i) => ({ ...each, id: `c${i}`, atMs: 1e9, device: 'd' }) as LogEvent);
        const events = [...visit.events, ...chosen];
        const recipes = recipesAsPulled(visit.head, events);
        const input = { ...restOf({ ...visit, events }), rest: { recipes, sheets: sheetsAsPulled(visit.head, events) } };
        const rest = last(planRest(input, 1));
        expectSound(rest, input);
        const now = countedBy(rest.cards);
        expect(rest.cards.length).toBeLessThanOrEqual(before.length + 1);
        expect(now[0]).toBeLessThanOrEqual(mounts! + 2);
        if (now[0] === mounts) expect(now[1]).toBeLessThanOrEqual(inks! + 2);
        if (rest.cards.length <= before.length) joined++;
      }
    }
    expect(joined).toBeGreaterThan(0);
  });

  it('should go on soundly after sheets were spoiled and ticks taken back', () => {
    const random = randomFrom('faults');
    for (const seed of SEEDS) {
      const visit = begun(seed, 0.5);
      const spoiled = 1 + random.int(visit.head.sheets.length);
      const back = random.pick(visit.events);
      const faults: LogEvent[] = [
        { id: 's', atMs: 1e9, device: 'd', sheet: spoiled, kind: 'spoiled', note: '' },
        { id: 'u', atMs: 1e9, device: 'd', sheet: back.sheet, kind: 'undone', event: back.id },
      ];
      const rest = restOf({ ...visit, events: [...visit.events, ...faults] });
      const planned = last(planRest(rest, 20));
      // A later pull may lie on the sheet already, and then nothing goes under it any more; the rest still keeps its order.
      expect(planned.cards.length).toBeGreaterThan(0);
      const only = restOf({ ...visit, events: [...visit.events, faults[0]!] });
      const going = goingOn({ ...visit, events: [...visit.events, faults[0]!] });
      const anew = last(planRest(only, 20));
      expect(less(countedBy(anew.cards), countedBy(going))).toBeLessThanOrEqual(0);
      expectSound(anew, only);
    }
  });
});

describe('ink over a visit', () => {
  /** Whether a set-up has another ink than the one before it. */
  function changed(cards: PressPlan['cards'], card: PressPlan['cards'][number]): boolean {
    return cards[cards.indexOf(card) - 1]?.ink.key !== card.ink.key;
  }

  it('should be used up or left, never more and never less', () => {
    for (const seed of SEEDS.slice(0, 3)) {
      for (const share of [0.1, 0.5, 0.9]) {
        const visit = begun(seed, share);
        const rest = last(planRest(restOf(visit), 1));
        const used = new Map<string, number>();
        for (const event of visit.events) {
          if (event.kind !== 'pulled') continue;
          const { recipe } = visit.head.sheets.find(({ number }) => number === event.sheet)!;
          for (const id of event.pulls) {
            const at = visit.head.recipes[recipe]!.pulls.findIndex((pull) => pull.id === id);
            const { ink, grams } = gramsByHand(visit.head.recipes[recipe]!, at);
            used.set(ink, (used.get(ink) ?? 0) + grams);
          }
        }
        for (const planned of visit.plan.inks) {
          const left = rest.inks.find((need) => need.name === planned.name);
          const leftG = (left?.printedG ?? 0) + (left?.proofsG ?? 0);
          expect(leftG + (used.get(planned.name) ?? 0)).toBeCloseTo(planned.printedG + planned.proofsG, 3);
          // What stays in screen and bucket is lost at each change of ink, however many half-printed sheets there are.
          const lost = (cards: PressPlan['cards']): number => {
            const own = cards.filter((card) => card.ink.key === planned.key);
            return (own[0]?.ink.ink.densityGPerCm3 ?? 0) * CASE_PRESS.lossMl * own.filter((card) => changed(cards, card)).length;
          };
          expect(planned.lossG).toBeCloseTo(lost(visit.plan.cards), 9);
          expect(left?.lossG ?? 0).toBeCloseTo(lost(rest.cards), 9);
          expect((left?.grams ?? 0) - 1.1 * (left?.lossG ?? 0)).toBeLessThanOrEqual(planned.grams - 1.1 * planned.lossG + 1e-9);
        }
      }
    }
  });
});
