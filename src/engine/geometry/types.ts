/** How overlapping outlines fill, as in SVG 1.1 §11.3. */
export type FillRule = 'nonzero' | 'evenodd';

/** A closed outline, flat [x0, y0, x1, y1, …], mm, y down; the last point joins the first. */
export type Ring = ArrayLike<number>;

/** Closed outlines with their fill rule. */
export interface Outline {
  rings: readonly Ring[];
  fillRule: FillRule;
}

/** An axis-parallel box, mm, y down. */
export interface Box {
  xMm: number;
  yMm: number;
  widthMm: number;
  heightMm: number;
}
