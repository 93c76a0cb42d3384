import { describe, expect, it } from 'vitest';
import { recipeOf } from '../../../../src/engine/recipe/write.ts';
import { cutList } from '../../../../src/engine/visit/stencils/cut-list.ts';
import { emulsionMl, framesOf } from '../../../../src/engine/visit/stencils/frames.ts';
import { type Stencil, stencilsOf } from '../../../../src/engine/visit/stencils/stencil-list.ts';
import { planVisit, type PressPlan } from '../../../../src/engine/visit/visit.ts';
import { pullOf, screenAt, smallProject } from '../../../helpers/small-project.ts';

const { bench, drawer, press } = smallProject();

function planned(recipe: ReturnType<typeof recipeOf>): PressPlan {
  let last: PressPlan | null = null;
  for (const step of planVisit({ runs: [{ recipe, sheets: 2 }], minDeltaE: 1, press, seed: 'x' }, 100)) last = step;
  return last!;
}

describe('stencilsOf', () => {
  it('should tell the image as it is drawn, with what overlaps counted once, not the sheet', () => {
    const two = screenAt('s1', 1, 'wide', 200, 200);
    // By hand: two rectangles of 200 × 100 mm, one 50 mm right of the other: a box of 250 × 100, all of it open.
    const placed = [...two.placed, { ...two.placed[0]!, xMm: 250 }];
    const screens = [{ ...two, placed }, ...drawer.screens.slice(1)];
    const recipe = recipeOf([...bench, pullOf('p4', 's1', 'tar', { dxMm: 3 })], { ...drawer, screens }, { id: 'a', title: 'A' });
    const stencils = stencilsOf(planned(recipe), [recipe]);
    const first = stencils.find(({ screen }) => screen.key === '1')!;
    expect([first.imageWidthMm, first.imageHeightMm]).toEqual([250, 100]);
    expect(first.imageM2).toBeCloseTo(0.025, 9);
    expect(first.inks.toSorted()).toEqual(['Rust', 'Tar']);
    expect(first.last).toBeGreaterThan(first.first);
    expect(stencils.map(({ screen }) => screen.key).sort()).toEqual(['1', '2', '3']);
    // By hand: 330 × 180 mm with a rim of 40 mm on each side, at 120 mL/m²: 7.128 mL.
    expect(emulsionMl(first)).toBeCloseTo(7.128, 9);
  });
});

function stencil(key: number, firstDay: number, lastDay: number, threadsPerCm = 90, side = 100): Stencil {
  const mesh = { threadsPerCm, threadUm: 48 };
  const screen = { key: String(key), number: key, name: '', mesh };
  return {
    screen,
    recipe: 0,
    id: String(key),
    first: key,
    last: key,
    firstDay,
    lastDay,
    mounts: 1,
    inks: [],
    imageWidthMm: side,
    imageHeightMm: side,
    imageM2: 0,
  };
}

/** The fewest frames by trying every way to share them out. */
function fewest(stencils: readonly Stencil[]): number {
  let best = stencils.length;
  const on = (at: number, frames: Stencil[][]): void => {
    if (frames.length >= best) return;
    if (at === stencils.length) {
      best = frames.length;
      return;
    }
    const next = stencils[at]!;
    for (const [i, frame] of frames.entries()) {
      const apart = frame.every((other) => other.lastDay < next.firstDay || next.lastDay < other.firstDay);
      if (apart && frame[0]!.screen.mesh.threadsPerCm === next.screen.mesh.threadsPerCm) on(at + 1, frames.with(i, [...frame, next]));
    }
    on(at + 1, [...frames, [next]]);
  };
  on(0, []);
  return best;
}

describe('framesOf', () => {
  it('should need as few frames as trying every way finds', () => {
    let turn = 7;
    const draw = (below: number): number => (turn = (turn * 48271) % 2147483647) % below;
    for (let round = 0; round < 200; round++) {
      const stencils = Array.from({ length: 1 + draw(8) }, (_, i) => {
        const firstDay = 1 + draw(5);
        return stencil(i, firstDay, firstDay + draw(3), draw(2) === 0 ? 43 : 90, 100 + draw(300));
      });
      const frames = framesOf(stencils);
      expect(frames.length).toBe(fewest(stencils));
      expect(frames.flatMap((frame) => frame.stencils.map(({ screen }) => screen.key)).sort()).toEqual(
        stencils.map(({ screen }) => screen.key).sort(),
      );
      for (const { stencils: own } of frames)
        for (let i = 1; i < own.length; i++) expect(own[i]!.firstDay).toBeGreaterThan(own[i - 1]!.lastDay);
    }
  });

  it('should be as large inside as its largest image and the room for ink ask', () => {
    // By hand: 305 mm and 120 mm on each side are 545 mm, told as 550.
    const [frame] = framesOf([stencil(1, 1, 1), stencil(2, 2, 2, 90, 305)]);
    expect([frame!.insideWidthMm, frame!.insideHeightMm]).toEqual([550, 550]);
  });
});

describe('cutList', () => {
  it('should fit sheets into a stock sheet along and across its grain', () => {
    const recipe = recipeOf(bench, { ...drawer, paper: { ...drawer.paper, widthMm: 300, heightMm: 400 } }, { id: 'a', title: 'A' });
    const plan = {
      sheets: Array.from({ length: 7 }, (_, i) => ({ number: i + 1, recipe: 0 })),
      recipes: [{ id: 'a', title: 'A', sheets: [] }],
    };
    const [row] = cutList(plan, [recipe], { widthMm: 700, heightMm: 1000, grain: 'height' });
    const [along, upright] = row!.ways;
    // By hand, 700 × 1000 with its grain along 1000: upright 2 × 2 = 4 sheets, so 2 for seven; turned 1 × 3 = 3, so 3.
    expect(upright).toEqual({ grain: 'height', across: 2, down: 2, aStock: 4, stockSheets: 2, wasted: expect.closeTo(1 - 0.48 / 0.7, 9) });
    expect(along).toMatchObject({ grain: 'width', across: 1, down: 3, aStock: 3, stockSheets: 3 });
    // Recipes on one paper are cut together, another size apart.
    const other = { ...recipe, paper: { ...recipe.paper, widthMm: 200 } };
    const three = {
      sheets: [0, 1, 2, 2].map((at, i) => ({ number: i + 1, recipe: at })),
      recipes: [0, 1, 2].map((at) => ({ id: `${at}`, title: '', sheets: [] })),
    };
    const rows = cutList(three, [recipe, other, recipe], { widthMm: 700, heightMm: 1000, grain: 'height' });
    expect(rows.map(({ recipes, sheets }) => [recipes, sheets])).toEqual([
      [[0, 2], 3],
      [[1], 1],
    ]);
    const [small] = cutList(plan, [recipe], { widthMm: 200, heightMm: 200, grain: 'width' });
    expect(small!.ways.map(({ stockSheets }) => stockSheets)).toEqual([null, null]);
    expect(() => cutList(plan, [recipe], { widthMm: 0, heightMm: 200, grain: 'width' })).toThrow('give two sides in mm');
  });
});
