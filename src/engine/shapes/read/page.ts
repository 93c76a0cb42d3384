import { defined } from '../../base/at.ts';
import { type Affine, compose } from '../../geometry/rings.ts';
import type { FaultList } from './faults.ts';
import { lengthOf, MM_PER_PX, viewBoxAffine, viewBoxOf } from './lengths.ts';
import type { Viewport } from './lengths.ts';
import type { SvgNode } from './xml-tree.ts';

/** Sizes that only the page around a drawing could settle. */
const RELATIVE = /(?:%|em|ex|ch|ic|lh|v[whib]|vmin|vmax)\s*$/iu;

function absurd(side: number | null | undefined): boolean {
  return side !== null && side !== undefined && !(side > 0);
}

/** The page that a drawing stands on. */
export interface Page {
  root: SvgNode;
  to: Affine;
  /** What percentages refer to, user units; null when the file gives no size. */
  viewport: Viewport | null;
  /** Size on paper, mm; null when the file gives none. */
  size: Viewport | null;
}

/**
 * The page: width and height where given, else the viewBox at 96 units to the inch, and a single
 * side from the viewBox's proportions, as CSS does for replaced elements.
 * @throws FileFault 'shape.size' for sides of nothing or less
 */
export function pageOf(root: SvgNode, faults: FaultList): Page {
  const viewBox = viewBoxOf(root, faults);
  const side = (name: string): number | null =>
    RELATIVE.test(root.attributes.get(name) ?? '') ? null : lengthOf(root, name, null, faults);
  let [width, height] = [side('width'), side('height')];
  if (absurd(width) || absurd(height) || absurd(viewBox?.width) || absurd(viewBox?.height)) {
    throw faults.refuse('shape.size', 'its page has no size; give <svg> a width, a height and a viewBox above zero.', `<svg> at line ${root.line}`);
  }
  const mm: Affine = [MM_PER_PX, 0, 0, MM_PER_PX, 0, 0];
  if (viewBox === null) {
    const viewport = width === null || height === null ? null : { width, height };
    return { root, to: mm, viewport, size: viewport };
  }
  if (width === null && height === null) [width, height] = [viewBox.width, viewBox.height];
  width ??= (defined(height) * viewBox.width) / viewBox.height;
  height ??= (width * viewBox.height) / viewBox.width;
  const size = { width, height };
  const to = compose(mm, viewBoxAffine(viewBox, size, root.attributes.get('preserveAspectRatio')));
  return { root, to, viewport: viewBox, size };
}
