import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Steering, type SteeredWall } from '../../../../src/components/canvas/camera/steering.ts';
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

  frameOf() {
    return { left: 0, top: 0, width: 1, height: 1 };
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
});
