import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Steering, type SteeredWall } from '../../../../src/components/canvas/camera/steering.ts';
import { frameOf } from '../../../../src/components/canvas/draw/print-frame.ts';
import { PlanIndex } from '../../../../src/components/canvas/plan/plan-index.ts';
import { planWall, type PlanSpec } from '../../../../src/components/canvas/plan/wall-plan.ts';

const size = { width: 1116, height: 741 };
const ROWS: PlanSpec = { kind: 'rows', sequence: null };

class Wall implements SteeredWall {
  readonly size = size;
  readonly focus = -1;
  planned = new PlanIndex(planWall(ROWS, 200, 0.74, size));
  readonly steering = new Steering(this);

  hang(spec: PlanSpec): void {
    this.planned = new PlanIndex(planWall(spec, 200, 0.74, size));
    this.steering.camera.keeps = 'start';
    this.steering.fit();
  }

  frameOf(index: number) {
    return frameOf(index, this.planned.plan.at, this.planned.plan, this.steering.camera);
  }

  layToView(): void {}
  requestDraw(): void {}
}

beforeEach(() => {
  vi.stubGlobal('matchMedia', () => ({ matches: false }));
  vi.spyOn(performance, 'now').mockReturnValue(1000);
});

afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

describe('Steering', () => {
  it('should show a wall that hangs anew in full, whatever it was on the way to before', () => {
    const wall = new Wall();
    wall.hang(ROWS);
    const start = wall.steering.camera.startView();
    const alike = Float32Array.from({ length: 200 }, (_, i) => (i * 0.618) % 1);
    const map: PlanSpec = { kind: 'map', x: alike, y: alike, xAxis: null, yAxis: null, shown: new Set(Array.from(alike.keys())) };
    const goes = [(): void => wall.steering.zoomBy(0.5), (): void => wall.steering.showWhole(), (): void => wall.steering.reveal(199)];
    for (const go of goes) {
      wall.hang(map);
      go();
      wall.hang(ROWS);
      wall.steering.step(2000);
      const { scale, x, y } = wall.steering.camera;
      expect({ scale, x, y }).toEqual(start);
    }
  });

  it('should bring a print out from under what lies over the wall, beside it or above it, and leave one that is free', () => {
    const panels = [
      { covered: { left: 476, top: 250, width: 640, height: 491 }, prints: [0, 2, 3, 44, 63] },
      { covered: { left: 0, top: 250, width: 640, height: 491 }, prints: [6, 7, 44, 66, 199] },
      { covered: { left: 0, top: 420, width: 1116, height: 321 }, prints: [0, 3, 7, 44, 63, 66, 199] },
    ];
    for (const { covered, prints } of panels) {
      let moved = 0;
      for (const index of prints) {
        const wall = new Wall();
        wall.hang(ROWS);
        wall.steering.reveal(index);
        wall.steering.step(2000);
        const before = wall.frameOf(index);
        wall.steering.bringOut(index, covered);
        wall.steering.step(4000);
        const { left, top, width, height } = wall.frameOf(index);
        const out = left + width < covered.left || left > covered.left + covered.width || top + height < covered.top;
        expect(out, `print ${index + 1}`).toBe(true);
        expect(left >= 0 && top >= 0 && left + width <= size.width, `print ${index + 1}`).toBe(true);
        const wasFree =
          before.left + before.width + 12 <= covered.left ||
          before.left >= covered.left + covered.width + 12 ||
          before.top + before.height + 36 <= covered.top;
        if (wasFree) expect({ left, top, width, height }).toEqual(before);
        else moved++;
      }
      expect(moved).toBeGreaterThan(0);
    }
  });
});
