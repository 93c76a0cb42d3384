import { describe, expect, it } from 'vitest';
import { PlanIndex } from '../../../../src/components/canvas/plan/plan-index.ts';
import { layWall, leftOf, topOf } from '../../../../src/components/canvas/plan/wall-layout.ts';
import { planWall, type PlanSpec, type WallPlan } from '../../../../src/components/canvas/plan/wall-plan.ts';

const VIEW = { width: 1100, height: 800 };
const ALL = () => true;

function mapOf(points: readonly [number, number][]): PlanSpec {
  return {
    kind: 'map',
    x: Float32Array.from(points, ([x]) => x),
    y: Float32Array.from(points, ([, y]) => y),
    xAxis: null,
    yAxis: null,
    shown: new Set(points.keys()),
  };
}

function overlaps(plan: WallPlan): number {
  const seen = new Set<string>();
  for (const index of plan.sequence) seen.add(`${plan.at[index * 2]},${plan.at[index * 2 + 1]}`);
  return plan.sequence.length - seen.size;
}

describe('PlanIndex.touches', () => {
  it('should hold for a print in view, its shadow and its number, and for none further off', () => {
    const plan = planWall({ kind: 'rows', sequence: null }, 400, 0.7, VIEW);
    const index = new PlanIndex(plan);
    const view = { x: 310, y: 420, width: 500, height: 260 };
    const near = new Set(index.touching(view.x - 24, view.y - 24, view.width + 48, view.height + 48));
    for (let print = 0; print < 400; print++) expect(index.touches(print, view)).toBe(near.has(print));
    expect(near.size).toBeGreaterThan(5);
    expect(near.size).toBeLessThan(200);
  });
});

describe('planWall', () => {
  it('should hang rows exactly where the wall lays them', () => {
    const plan = planWall({ kind: 'rows', sequence: null }, 37, 0.7, VIEW);
    const layout = layWall(37, 0.7, VIEW);
    for (let index = 0; index < 37; index++) {
      expect(plan.at[index * 2]).toBeCloseTo(leftOf(layout, index), 3);
      expect(plan.at[index * 2 + 1]).toBeCloseTo(topOf(layout, index), 3);
    }
  });

  it('should close up when only some are shown', () => {
    const plan = planWall({ kind: 'rows', sequence: [5, 30] }, 37, 0.7, VIEW);
    expect([plan.at[10], plan.at[11]]).toEqual([0, 0]);
    expect(Number.isNaN(plan.at[0]!)).toBe(true);
  });

  it('should keep the order of two measures on a map of few prints', () => {
    const plan = planWall(
      mapOf([
        [0, 0],
        [1, 1],
        [0.5, 0.5],
      ]),
      3,
      0.7,
      VIEW,
    );
    expect(plan.at[0]!).toBeLessThan(plan.at[4]!);
    expect(plan.at[4]!).toBeLessThan(plan.at[2]!);
    // Up is more.
    expect(plan.at[1]!).toBeGreaterThan(plan.at[3]!);
  });

  it('should find every print of a crowd a place of its own', () => {
    const plan = planWall(mapOf(Array.from({ length: 400 }, () => [0.5, 0.5])), 400, 0.7, VIEW);
    expect(plan.sequence.length).toBe(400);
    expect(overlaps(plan)).toBe(0);
    // All in a heap about the middle, not strewn.
    const left = plan.sequence.map((index) => plan.at[index * 2]!);
    expect(Math.max(...left) - Math.min(...left)).toBeLessThan(plan.width * 0.95);
  });

  it('should leave each print where it is when others are hidden', () => {
    const points = Array.from({ length: 50 }, (_, i): [number, number] => [((i * 17) % 50) / 49, ((i * 29) % 50) / 49]);
    const all = planWall(mapOf(points), 50, 0.7, VIEW);
    const some = planWall({ ...mapOf(points), shown: new Set([3, 40]) } as PlanSpec, 50, 0.7, VIEW);
    expect([some.at[6], some.at[81]]).toEqual([all.at[6], all.at[81]]);
    expect([some.width, some.sequence.length]).toEqual([all.width, 2]);
    expect(some.at[0]).toBeNaN();
  });

  it('should hang a print without a figure nowhere', () => {
    const plan = planWall(
      mapOf([
        [0, 0],
        [Number.NaN, 1],
      ]),
      2,
      0.7,
      VIEW,
    );
    expect(plan.sequence).toEqual([0]);
  });

  it('should put groups under their titles, one below the other', () => {
    const plan = planWall(
      {
        kind: 'groups',
        groups: [
          { title: '3 pulls', prints: [1, 2] },
          { title: '4 pulls', prints: [0] },
        ],
      },
      3,
      0.7,
      VIEW,
    );
    expect(plan.titles.map(({ text }) => text)).toEqual(['3 pulls', '4 pulls']);
    expect(plan.at[1]!).toBeGreaterThan(plan.at[3]!);
    expect(plan.sequence).toEqual([1, 2, 0]);
  });
});

describe('PlanIndex', () => {
  it('should find the same prints as looking at each', () => {
    const points = Array.from({ length: 300 }, (_, i): [number, number] => [((i * 37) % 300) / 299, ((i * 91) % 300) / 299]);
    const plan = planWall(mapOf(points), 300, 0.7, VIEW);
    const index = new PlanIndex(plan);
    const [x, y, width, height] = [plan.width * 0.2, plan.height * 0.3, plan.width * 0.25, plan.height * 0.2];
    const each = plan.sequence.filter((print) => {
      const left = plan.at[print * 2]!;
      const top = plan.at[print * 2 + 1]!;
      return left < x + width && left + plan.printWidth > x && top < y + height && top + plan.printHeight > y;
    });
    expect(each.length).toBeGreaterThan(5);
    expect(index.touching(x, y, width, height).sort((a, b) => a - b)).toEqual(each.sort((a, b) => a - b));
  });

  it('should reach every print of a map by arrow keys', () => {
    const points = Array.from({ length: 40 }, (_, i): [number, number] => [((i * 17) % 40) / 39, ((i * 29) % 40) / 39]);
    const index = new PlanIndex(planWall(mapOf(points), 40, 0.7, VIEW));
    const reached = new Set([0]);
    const open = [0];
    while (open.length > 0) {
      const from = open.pop()!;
      for (const key of ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown']) {
        const to = index.after(from, key, ALL);
        if (!reached.has(to)) {
          reached.add(to);
          open.push(to);
        }
      }
    }
    expect(reached.size).toBe(40);
  });

  it('should walk rows to their end and on', () => {
    const plan = planWall({ kind: 'rows', sequence: [4, 2, 7, 1] }, 8, 0.7, { width: 200, height: 800 });
    const index = new PlanIndex(plan);
    expect(index.after(4, 'ArrowRight', ALL)).toBe(2);
    expect(index.after(4, 'ArrowLeft', ALL)).toBe(4);
    expect(index.after(2, 'End', ALL)).toBe(1);
    expect(index.after(99, 'ArrowDown', ALL)).toBe(4);
  });
});
