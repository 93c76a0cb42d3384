import { describe, expect, it } from 'vitest';
import { checkGoal, type GoalState, type GoalVerdict, type MadeGoal } from '../../../src/engine/lesson/check-goal.ts';
import { goalAnswer } from '../../../src/engine/lesson/goal-answers.ts';
import { GOAL_KINDS } from '../../../src/engine/lesson/goal-kinds.ts';
import { goalSheet } from '../../../src/engine/lesson/goal-sheets.ts';
import { alike, hiddenOrder, topQuestion } from '../../../src/engine/lesson/hidden-order.ts';
import { type LessonSheet, lessonStudio } from '../../../src/engine/lesson/lesson-sheet.ts';
import { suitingGoals } from '../../../src/engine/lesson/suiting-goals.ts';
import { groupOrders } from '../../../src/engine/order/groups/group-orders.ts';
import type { Pull } from '../../../src/engine/stack/types.ts';
import { coverAreas, printColours } from '../../published/order/raster.ts';

const sorted = (sheet: LessonSheet) =>
  groupOrders({ pulls: sheet.pulls }, lessonStudio(sheet.studio, sheet.inks), { ...sheet.limits, toleranceMm: 0.05 });

const moved = (pulls: readonly Pull[], id: string, dxMm: number, dyMm: number): Pull[] =>
  pulls.map((pull) => (pull.id === id ? { ...pull, dxMm, dyMm } : pull));

function judged(kind: MadeGoal, change: (start: GoalState) => Partial<GoalState> = () => ({})): GoalVerdict {
  const { studio, limits, pulls, inks } = goalSheet(kind);
  const start = { pulls, inks };
  return checkGoal(kind, { studio, limits, start, now: { ...start, ...change(start) } });
}

const withAll = (kind: MadeGoal, opacity: number) => ({ inks: goalSheet(kind).pulls.map(({ ink }) => ({ ink, opacity })) });

describe('checkGoal', () => {
  it('should find every goal open on its own sheet', () => {
    const made = GOAL_KINDS.filter((kind) => kind !== 'on-top' && kind !== 'alike' && kind !== 'found-back');
    expect(made.map((kind) => [kind, judged(kind).done])).toEqual(made.map((kind) => [kind, false]));
  });

  it('should be reached by the way that is shown', () => {
    const made = GOAL_KINDS.filter((kind) => kind !== 'on-top' && kind !== 'alike' && kind !== 'found-back');
    expect(made.map((kind) => [kind, judged(kind, () => goalAnswer(kind))])).toEqual(
      made.map((kind) => [kind, expect.objectContaining({ done: true })]),
    );
  });

  it('should know three pictures: two tiles on one place of a disc that hides them', () => {
    expect(judged('three-pictures')).toEqual({ done: false, why: 'pictures', pictures: 5 });
    // Disc on top; the left tile on top of all else; the right one.
    expect(judged('three-pictures', ({ pulls }) => ({ pulls: moved(pulls, 'p2', 60, -40) }))).toEqual({
      done: true,
      why: 'pictures',
      pictures: 3,
    });
  });

  it('should know 24 orders, one picture: films that only absorb commute, as Bouguer’s law multiplies', () => {
    expect(judged('one-picture', () => withAll('one-picture', -1))).toEqual({ done: true, why: 'pictures', pictures: 1 });
    // Pulled apart there is one picture too, but that is not what was asked.
    const apart = judged('one-picture', ({ pulls }) => ({ ...withAll('one-picture', -1), pulls: moved(pulls, 'p1', -90, -170) }));
    expect(apart).toEqual({ done: false, why: 'apart', pull: 'p1' });
    expect(judged('one-picture', ({ pulls }) => ({ pulls: moved(pulls, 'p3', 2000, 0) }))).toEqual({
      done: false,
      why: 'off-sheet',
      pull: 'p3',
    });
  });

  it('should see an overprint colour made and avoided, as a raster and culori see it', () => {
    for (const kind of ['overprint-made', 'overprint-avoided'] as const) {
      for (const opacity of [-1, 0, 1]) {
        const { studio, pulls } = goalSheet(kind);
        const { inks } = withAll(kind, opacity);
        const found = judged(kind, () => ({ inks }));
        expect(found.why).toBe('overprint');
        const areaMm2 = found.why === 'overprint' ? found.areaMm2 : NaN;
        expect(Math.abs(areaMm2 - overprintByRaster(pulls, lessonStudio(studio, inks)))).toBeLessThan(400);
        expect([kind, opacity, found.done]).toEqual([kind, opacity, kind === 'overprint-made' ? areaMm2 >= 500 : areaMm2 <= 25]);
      }
    }
    expect(judged('overprint-made', () => withAll('overprint-made', -1)).done).toBe(true);
    expect(judged('overprint-avoided', () => withAll('overprint-avoided', 1)).done).toBe(true);
  });

  it('should not take pulls moved apart for an overprint colour avoided', () => {
    const verdict = judged('overprint-avoided', ({ pulls }) => ({ pulls: moved(pulls, 'p1', -100, -180) }));
    expect(verdict).toEqual({ done: false, why: 'apart', pull: 'p1' });
  });

  it('should know less contrast, and that some order alone gives it', () => {
    const { pulls } = goalSheet('less-contrast');
    const shares = sorted(goalSheet('less-contrast')).orders.map((order) => {
      const verdict = judged('less-contrast', () => ({ pulls: order.map((at) => pulls[at]!) }));
      return verdict.why === 'contrast' ? verdict.share : NaN;
    });
    expect(shares[0]).toBe(1);
    expect(Math.min(...shares)).toBeLessThan(0.8);
    expect(Math.max(...shares)).toBeGreaterThan(0.8);
  });
});

/** Area further than ΔE00 10 from the paper and from each pull alone, under two or more, on points 1 mm apart. */
function overprintByRaster(pulls: readonly Pull[], studio: ReturnType<typeof lessonStudio>): number {
  const between = printColours(pulls, studio);
  let sum = 0;
  for (const [set, area] of coverAreas(pulls, studio, 1)) {
    const here = pulls.map((_, at) => at).filter((at) => (set & (1 << at)) !== 0);
    const alone = [[], ...pulls.map((_, at) => [at])];
    if (here.length >= 2 && alone.every((swatch) => between(here, swatch) > 10)) sum += area;
  }
  return sum;
}

describe('hidden orders', () => {
  it('should be the same for the same name, and any of the pictures in time', () => {
    const found = sorted(goalSheet('found-back'));
    const all = Array.from({ length: 200 }, (_, round) => hiddenOrder(found, `${round}`)!);
    expect(all.map((_, round) => hiddenOrder(found, `${round}`))).toEqual(all);
    expect(new Set(all.map(({ picture }) => picture)).size).toBe(found.count);
    for (const { order, picture } of all) expect(found.groups[picture]).toContain(order);
  });

  it('should ask which lies on top only where every order that prints it agrees', () => {
    const found = sorted(goalSheet('on-top'));
    const all = Array.from({ length: 200 }, (_, round) => topQuestion(found, `${round}`)!);
    expect(new Set(all.map(({ pair }) => pair.join())).size).toBeGreaterThan(1);
    for (const { picture, pair, top } of all) {
      const other = pair[0] === top ? pair[1] : pair[0];
      for (const index of found.groups[picture]!) {
        const order = found.orders[index]!;
        expect(order.indexOf(top)).toBeGreaterThan(order.indexOf(other));
      }
    }
  });

  it('should give none where all orders print one picture', () => {
    const sheet = goalSheet('one-picture');
    const clear = sorted({ ...sheet, inks: sheet.pulls.map(({ ink }) => ({ ink, opacity: -1 })) });
    expect(clear.count).toBe(1);
    expect(hiddenOrder(clear, 'x')).toBeNull();
    expect(topQuestion(clear, 'x')).toBeNull();
  });

  it('should offer a goal only where there is something to find', () => {
    for (const kind of GOAL_KINDS) expect(suitingGoals(sorted(goalSheet(kind)))).toContain(kind);
    const sheet = goalSheet('one-picture');
    const clear = sorted({ ...sheet, inks: sheet.pulls.map(({ ink }) => ({ ink, opacity: -1 })) });
    expect(suitingGoals(clear)).toEqual(['alike', 'overprint-made', 'overprint-avoided', 'three-pictures', 'less-contrast']);
  });

  it('should know two orders that look the same', () => {
    const found = sorted(goalSheet('alike'));
    expect(found.count).toBe(2);
    expect(alike(found, [0, 1, 2], [2, 0, 1])).toBe(true);
    expect(alike(found, [0, 1, 2], [1, 0, 2])).toBe(false);
    expect(alike(found, [0, 1, 2], [0, 1, 2])).toBe(false);
  });
});
