import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { NumberLabels } from '../../../../src/components/canvas/draw/number-labels.ts';
import { PlanIndex } from '../../../../src/components/canvas/plan/plan-index.ts';
import { planWall } from '../../../../src/components/canvas/plan/wall-plan.ts';

const size = { width: 1116, height: 741 };

/** Where circles were drawn, and how often all was wiped away. */
const drawn = { circles: [] as number[][], wiped: 0 };

beforeEach(() => {
  Object.assign(drawn, { circles: [], wiped: 0 });
  const context = {
    arc: (...circle: number[]) => drawn.circles.push(circle.slice(0, 3)),
    clearRect: () => drawn.wiped++,
    ...Object.fromEntries(['setTransform', 'beginPath', 'stroke', 'fill', 'fillText'].map((name) => [name, () => {}])),
  };
  vi.stubGlobal('document', { createElement: () => ({ getContext: () => context, setAttribute: () => {} }) });
});

afterEach(() => {
  vi.unstubAllGlobals();
});

describe('pins', () => {
  it('should stand at the upper edge of pinned prints in view, at any distance, and be wiped away with the last', () => {
    const planned = new PlanIndex(planWall({ kind: 'rows', sequence: null }, 200, 0.74, size));
    const { plan } = planned;
    const labels = new NumberLabels();
    labels.pinned = new Set([1, 199, 250]);
    for (const scale of [0.05, 1]) {
      drawn.circles = [];
      const view = { scale, x: 10, y: 20 };
      labels.draw(plan, view, () => [], -1);
      labels.drawPins(planned, view, size);
      // Of the two that hang, the last is far below the view from close by.
      expect(drawn.circles).toHaveLength(scale < 1 ? 2 : 1);
      const [[x, y, radius]] = drawn.circles as [number[]];
      expect(x).toBeCloseTo((plan.at[2]! + plan.printWidth / 2) * scale + 10, 3);
      expect(Math.abs(y! - (plan.at[3]! * scale + 20))).toBeLessThan(radius!);
      expect(radius).toBeGreaterThanOrEqual(2.5);
    }
    labels.pinned = new Set();
    drawn.wiped = 0;
    labels.draw(plan, { scale: 0.05, x: 0, y: 0 }, () => [], -1);
    expect(drawn.wiped).toBe(1);
  });
});
