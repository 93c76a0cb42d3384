import type { PathSegment } from '../../geometry/flatten.ts';
import type { Affine } from '../../geometry/rings.ts';
import type { FillRule } from '../../geometry/types.ts';
import type { Nib } from '../../geometry/stroke/stroke-outline.ts';

/** One filled or drawn outline, not yet flattened. */
export interface Drawn {
  segments: readonly PathSegment[];
  /** From the element's coordinates to mm on the page. */
  to: Affine;
  fillRule: FillRule;
  clips: readonly Clip[];
  /** Painted white or nearly so: paper rather than ink. */
  white?: boolean;
  /** Goes along the outline instead of filling it. */
  pen?: Pen;
  /** What it is painted in, one text a colour; absent in a clipping path. */
  colour?: string;
  /** Which of the drawing's groups it lies in, by place; absent outside them. */
  layer?: number;
}

/** A stroke as a file gives it. */
export interface Pen extends Nib {
  dashes: readonly number[];
  /** Where in the dashes the line begins. */
  dashFrom: number;
  /** What the file calls the length of the whole path; null where it says nothing. */
  pathLength: number | null;
  /** From the pen's coordinates to mm: a stretched pen is as wide as it is stretched. */
  frame: Affine;
}

/** An area that cuts off what lies outside it. */
export interface Clip {
  drawn: readonly Drawn[];
}

/** A box from 0, 0 as a clipping area. */
export function boxClip(width: number, height: number, to: Affine): Clip {
  const segments: PathSegment[] = [['M', 0, 0], ['L', width, 0], ['L', width, height], ['L', 0, height], ['Z']];
  return { drawn: [{ segments, to, fillRule: 'nonzero', clips: [] }] };
}
