import { SHAPE_SCALE } from '../../base/limits.ts';
import { roundTo, toOffsetGrid } from '../../base/units.ts';
import { shapeBounds } from '../../geometry/rings.ts';
import type { Box } from '../../geometry/types.ts';
import type { PlacedShape, Shape } from '../types.ts';

/** Width and height, mm. */
export interface PageSize {
  widthMm: number;
  heightMm: number;
}

/** Pages that differ by less count as one size, mm. */
const SAME_PAGE_MM = 0.5;
/** Steps across and down of a sequence that fills a square evenly (R2: powers of 1 ÷ 1.32471796, from memory). */
const STEP_X = 0.7548776662466927;
const STEP_Y = 0.5698402909980532;

/** Whether two pages are of one size. */
export function samePage(a: PageSize, b: PageSize): boolean {
  return Math.abs(a.widthMm - b.widthMm) < SAME_PAGE_MM && Math.abs(a.heightMm - b.heightMm) < SAME_PAGE_MM;
}

/**
 * Lays a shape where it lies on its page, the page in the middle of the sheet, so that shapes drawn
 * on like pages stay in register. A page larger than the sheet is made smaller to fit.
 * @param page of the file that the shape's outlines come from
 * @param wanted how much larger than in the file the page is laid
 */
export function placeByPage(shape: Pick<Shape, 'id' | 'rings'>, page: PageSize, sheet: PageSize, wanted = 1): PlacedShape {
  const fit = Math.min(sheet.widthMm / page.widthMm, sheet.heightMm / page.heightMm);
  // A sheet's rounding is no reason to scale what was drawn for it.
  const whole = wanted === 1 && samePage(page, sheet);
  const scale = whole || fit >= wanted ? roundTo(Math.min(SHAPE_SCALE.most, Math.max(0.001, wanted)), 3) : Math.max(0.001, Math.floor(fit * 1000 + 1e-6) / 1000);
  const box = shapeBounds(shape.rings);
  const along = (sheetMm: number, pageMm: number, middleMm: number): number =>
    toOffsetGrid(sheetMm / 2 + (middleMm - pageMm / 2) * scale);
  return {
    shape: shape.id,
    xMm: along(sheet.widthMm, page.widthMm, box.xMm + box.widthMm / 2),
    yMm: along(sheet.heightMm, page.heightMm, box.yMm + box.heightMm / 2),
    turnDeg: 0,
    scale,
  };
}

/**
 * Spreads shapes evenly over a box at their true sizes; where the longest would not fit, all are made
 * smaller by one factor. The same shapes always come to lie alike.
 * @param shapes one or more, each with a width and a height above zero
 * @returns a place a shape, all within the box
 */
export function spreadOver(shapes: readonly Pick<Shape, 'id' | 'widthMm' | 'heightMm'>[], printable: Box): PlacedShape[] {
  const most = shapes.reduce(
    (fit, { widthMm, heightMm }) => Math.min(fit, printable.widthMm / widthMm, printable.heightMm / heightMm),
    Infinity,
  );
  const scale = most >= 1 ? 1 : Math.max(0.001, Math.floor(most * 1000) / 1000);
  return shapes.map((shape, i) => {
    const free = { x: printable.widthMm - shape.widthMm * scale, y: printable.heightMm - shape.heightMm * scale };
    return {
      shape: shape.id,
      xMm: toOffsetGrid(printable.xMm + (shape.widthMm * scale) / 2 + ((0.5 + (i + 1) * STEP_X) % 1) * free.x),
      yMm: toOffsetGrid(printable.yMm + (shape.heightMm * scale) / 2 + ((0.5 + (i + 1) * STEP_Y) % 1) * free.y),
      turnDeg: 0,
      scale,
    };
  });
}
