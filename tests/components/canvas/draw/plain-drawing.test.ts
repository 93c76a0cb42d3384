import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { WallPace } from '../../../../src/components/canvas/camera/wall-pace.ts';
import { PlainDrawing } from '../../../../src/components/canvas/draw/plain-drawing.ts';
import { PrintPages } from '../../../../src/components/canvas/draw/print-pages.ts';
import { PlanIndex } from '../../../../src/components/canvas/plan/plan-index.ts';
import { planWall } from '../../../../src/components/canvas/plan/wall-plan.ts';
import type { WallBatch } from '../../../../src/workers/api/wall-api.ts';

class Pixels {
  readonly data: Uint8ClampedArray;
  constructor(
    readonly width: number,
    readonly height: number,
  ) {
    this.data = new Uint8ClampedArray(4 * width * height);
  }
}

/** What was last put on a canvas. */
let shown: Uint32Array;
let put = 0;

beforeEach(() => {
  put = 0;
  const context = {
    createImageData: (width: number, height: number) => new Pixels(width, height),
    putImageData: ({ data }: Pixels) => {
      put++;
      shown = new Uint32Array(data.buffer.slice(0));
    },
    fillRect: () => {},
    clearRect: () => put++,
  };
  vi.stubGlobal('ImageData', Pixels);
  vi.stubGlobal('document', { createElement: () => ({ width: 0, height: 0, getContext: () => context, remove: () => {} }) });
});

afterEach(() => {
  vi.unstubAllGlobals();
});

/** Prints of four colours, each with its own. */
function pages(count: number): PrintPages {
  const found = new PrintPages();
  const map = { name: 'quarters', columns: 2, rows: 2, cells: Uint8Array.of(0, 1, 2, 3) };
  const tiles = Array.from({ length: count }, (_, index) => ({
    variant: { index },
    map: 'quarters',
    colours: Uint32Array.from({ length: 4 }, (_, cell) => 0xff000000 + 1000 * (4 * index + cell) + 1),
    small: { columns: 1, rows: 1, words: Uint32Array.of(0xff000000 + index) },
  }));
  found.add({ maps: [map], tiles, found: count, asked: count } as unknown as WallBatch);
  return found;
}

describe('a canvas that grows or shrinks downwards', () => {
  const width = 660;
  const planned = new PlanIndex(planWall({ kind: 'rows', sequence: null }, 60, 0.74, { width, height: 120 }));
  const view = { scale: 0.5, x: 8, y: 8 };

  function drawing(hung: PrintPages) {
    const pace = new WallPace(() => {});
    const made = new PlainDrawing(hung, pace);
    return (height: number): Uint32Array => {
      const screen = { width, height, density: 1 };
      made.resize(screen);
      made.draw({ view, screen, planned, at: planned.plan.at, rehanging: false, moves: false });
      pace.stop();
      return shown;
    };
  }

  it('should show what it would show drawn anew, with prints cut by its edge before', () => {
    const hung = pages(60);
    const draw = drawing(hung);
    for (const height of [90, 131, 100, 160, 160]) {
      const kept = draw(height);
      const anew = drawing(hung)(height);
      expect(kept).toHaveLength(width * height);
      expect(kept.findIndex((word, i) => word !== anew[i])).toBe(-1);
      expect(new Set(anew).size).toBeGreaterThan(20);
    }
  });

  it('should leave alone a canvas on which nothing hangs', () => {
    drawing(new PrintPages())(90);
    expect(put).toBe(0);
  });
});
