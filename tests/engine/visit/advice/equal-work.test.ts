import { beforeAll, describe, expect, it } from 'vitest';
import { type AdviceFigures, adviceFigures, isLess, leastOf } from '../../../../src/engine/visit/advice/advice-figures.ts';
import { type Advice, adviseOn } from '../../../../src/engine/visit/advice/advice.ts';
import { bestFirst } from '../../../../src/engine/visit/advice/best-first.ts';
import type { Edit } from '../../../../src/engine/visit/advice/edits.ts';
import { compareOrders, figuresOf } from '../../../../src/engine/visit/press-plan.ts';
import { type PressPlan, planVisit, type VisitInput } from '../../../../src/engine/visit/visit.ts';
import { jobVisit } from '../../../helpers/printer-cases.ts';

/** The work that advice gives to each plan, ms. */
const PLAN_MS = 100;

function planned(input: VisitInput, atHand?: PressPlan): PressPlan {
  return [...planVisit(atHand === undefined ? input : { ...input, atHand }, PLAN_MS)].at(-1)!;
}

interface Found {
  input: VisitInput;
  plan: PressPlan;
  all: Advice[];
  standing: PressPlan;
  before: AdviceFigures;
}

/** Advice on a plan that was made with little work, so that planning anew saves by itself. */
function advised(input: VisitInput, ways: (Edit[] | undefined)[]): Found {
  const plan = [...planVisit(input, 1)].at(-1)!;
  const all: Advice[] = [];
  let standing = plan;
  let before = adviceFigures(plan);
  for (const only of ways) {
    const steps = adviseOn(input, plan, only);
    for (let next = steps.next(); next.done !== true; next = steps.next()) {
      if (next.value.found !== null) all.push(next.value.found);
      ({ standing, before } = next.value);
    }
  }
  return { input, plan, all, standing, before };
}

const bedsOf = ({ press }: VisitInput): number => press.beds ?? 1;

describe.each([
  { job: 'A' as const, ways: [undefined] },
  // Of job B the ways that say most; each is planned for itself, so that the test stays short.
  {
    job: 'B' as const,
    ways: [[{ kind: 'ink', screen: null, most: 2 }], [{ kind: 'ink', screen: null }], [{ kind: 'days', days: 12 }]] satisfies Edit[][],
  },
])('advice on job $job', ({ job, ways }) => {
  let found: Found;
  let anew: PressPlan;
  let before: AdviceFigures;

  beforeAll(() => {
    found = advised(jobVisit(job), ways);
    anew = planned(found.input, found.plan);
    before = found.before;
  }, 300_000);

  it('should be measured against the visit as it stands, planned with as much work', () => {
    // Without this the rest would hold of any figures.
    expect(isLess(adviceFigures(anew), adviceFigures(found.plan))).toBe(true);
    expect(compareOrders(figuresOf(found.standing), figuresOf(anew), 1)).toBeLessThanOrEqual(0);
    for (const known of [found.plan, anew, found.standing]) expect(leastOf(before, adviceFigures(known))).toEqual(before);
  });

  it('should offer nothing that is worse than told once it is done and planned again with equal work', () => {
    const offered = bestFirst(found.all, before, 'mounts');
    expect(offered.length).toBeGreaterThan(ways.length - 1);
    for (const { plan, figures } of offered) {
      expect(isLess(figures, before)).toBe(true);
      expect(adviceFigures(plan)).toEqual(figures);
    }
    for (const { input, plan } of offered.slice(0, 6)) {
      const done = planned(input, plan);
      expect(compareOrders(figuresOf(done), figuresOf(plan), bedsOf(input))).toBeLessThanOrEqual(0);
    }
  });

  it('should find that nothing of the prints is needed for what staying longer brings but the days', () => {
    const longer = found.all.find(({ edits }) => edits.every(({ kind }) => kind === 'days'))!;
    expect(longer.figures.late).toBe(0);
    expect(before.late).toBeGreaterThan(0);
    // What planning anew saves by itself is no merit of the days.
    expect(longer.figures.mounts).toBeGreaterThanOrEqual(before.mounts);
    expect(longer.figures.minutes).toBeGreaterThanOrEqual(before.minutes);
    expect(longer.deltaE).toBe(0);
  });

  it('should find two inks a screen at most, nearer to the prints than one and in fewer set-ups than all', () => {
    const [two, one] = [2, 1].map((most) =>
      found.all.find(
        ({ edits: [edit, more] }) => more === undefined && edit?.kind === 'ink' && edit.screen === null && (edit.most ?? 1) === most,
      )!,
    );
    expect(two!.figures.setUps).toBeLessThan(before.setUps);
    expect(one!.figures.setUps).toBeLessThan(two!.figures.setUps);
    expect(two!.deltaE).toBeGreaterThan(0);
    expect(two!.deltaE).toBeLessThan(one!.deltaE);
    const inks = new Map<string, Set<string>>();
    for (const { screen, ink } of two!.plan.cards) inks.set(screen.key, (inks.get(screen.key) ?? new Set()).add(ink.key));
    expect(Math.max(...[...inks.values()].map(({ size }) => size))).toBe(2);
    // The print that changes most is shown beside itself: it must be another print.
    const [most] = two!.changes;
    expect(two!.input.runs[most!.run]!.recipe.pulls).not.toEqual(found.input.runs[most!.run]!.recipe.pulls);
  });
});
