import { describe, expect, it } from 'vitest';
import { newScreens } from '../../../../src/engine/shapes/place/new-screens.ts';
import type { Shape } from '../../../../src/engine/shapes/types.ts';

const box = (id: string, x: number, y: number, side: number): Shape => ({
  id,
  name: id,
  rings: [[x, y, x + side, y, x + side, y + side, x, y + side]],
  fillRule: 'nonzero',
  widthMm: side,
  heightMm: side,
});
const sheet = { widthMm: 500, heightMm: 700, printable: { xMm: 20, yMm: 20, widthMm: 460, heightMm: 660 } };
const ids = () => {
  let n = 0;
  return () => `id-${n++}`;
};
const A4 = { widthMm: 210, heightMm: 297 };

describe('newScreens', () => {
  it('should number on from the highest frame, an id each', () => {
    const { screens } = newScreens({ shapes: [box('a', 0, 0, 50), box('b', 0, 0, 50)], pages: [null, null] }, sheet, [{ number: 7 }], ids());
    expect(screens.map(({ id, number, name }) => [id, number, name])).toEqual([
      ['id-0', 8, 'a'],
      ['id-1', 9, 'b'],
    ]);
  });
  it('should keep what was drawn on one page in register, the page in the middle of the sheet', () => {
    const shapes = [box('a', 0, 0, 50), box('b', 100, 200, 50)];
    const { screens, page, fitted } = newScreens({ shapes, pages: [A4, A4] }, sheet, [], ids());
    expect(page).toEqual(A4);
    expect(fitted).toEqual([]);
    const [a, b] = screens.map(({ placed }) => placed[0]!);
    // (500 − 210) / 2 + 25 and (700 − 297) / 2 + 25, on the 0.1 mm grid.
    expect([a!.xMm, a!.yMm]).toEqual([170, 226.5]);
    expect([b!.xMm - a!.xMm, b!.yMm - a!.yMm]).toEqual([100, 200]);
  });
  it('should lay a shape in the middle when pages differ, and say which had to be made smaller', () => {
    const shapes = [box('a', 0, 0, 50), box('b', 0, 0, 920)];
    const { screens, page, fitted } = newScreens({ shapes, pages: [A4, null] }, sheet, [], ids());
    expect(page).toBeNull();
    expect(fitted).toEqual([1]);
    expect(screens[1]!.placed[0]).toMatchObject({ xMm: 250, yMm: 350, scale: 0.5 });
  });
  it('should not take the box of an icon as a page that layers lie on', () => {
    // 24 px at 96 to the inch.
    const icon = { widthMm: 6.35, heightMm: 6.35 };
    const { page, screens } = newScreens({ shapes: [box('a', 0, 0, 2), box('b', 4, 4, 2)], pages: [icon, icon] }, sheet, [], ids());
    expect(page).toBeNull();
    expect(screens.map(({ placed }) => [placed[0]!.xMm, placed[0]!.yMm])).toEqual([
      [250, 350],
      [250, 350],
    ]);
  });
  it('should take a single page only when it is the sheet itself', () => {
    const one = (page: { widthMm: number; heightMm: number }) =>
      newScreens({ shapes: [box('a', 0, 0, 50)], pages: [page] }, sheet, [], ids()).page;
    expect(one(A4)).toBeNull();
    expect(one({ widthMm: 500.2, heightMm: 700 })).toEqual({ widthMm: 500.2, heightMm: 700 });
  });
});
