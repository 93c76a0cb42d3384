import { num } from '../../base/at.ts';
import { ringPath, xmlText } from '../../output/svg-text.ts';
import type { Shape } from '../../shapes/types.ts';

/** Characters of a shape's name that its file's name keeps. */
const LONGEST_STEM = 40;

function extent(rings: readonly (readonly number[])[]): { x: number; y: number } {
  let [x, y] = [Infinity, Infinity];
  for (const ring of rings)
    for (let i = 0; i + 1 < ring.length; i += 2) {
      x = Math.min(x, num(ring, i));
      y = Math.min(y, num(ring, i + 1));
    }
  return Number.isFinite(x) ? { x, y } : { x: 0, y: 0 };
}

/**
 * A shape as a drawing at its true size, black.
 * Source: Scalable Vector Graphics 2 (W3C), 'width', 'height' in mm and 'viewBox' in mm too.
 */
export function shapeSvg({ name, rings, fillRule, widthMm, heightMm }: Shape): string {
  const { x, y } = extent(rings);
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${widthMm}mm" height="${heightMm}mm" viewBox="${x} ${y} ${widthMm} ${heightMm}"><title>${xmlText(name)}</title><path fill-rule="${fillRule}" d="${rings.map((ring) => ringPath(ring)).join('')}"/></svg>\n`;
}

/** File names and texts of shapes as drawings; each name begins with the shape's place, so that none comes twice. */
export function drawings(shapes: readonly Shape[]): [name: string, svg: string][] {
  const digits = String(shapes.length).length;
  return shapes.map((shape, i) => {
    const stem = shape.name
      .normalize('NFKD')
      .split(/[^\p{L}\p{N}]+/u)
      .filter((part) => part !== '')
      .join('-')
      .slice(0, LONGEST_STEM);
    return [`${String(i + 1).padStart(digits, '0')}-${stem === '' ? 'shape' : stem}.svg`, shapeSvg(shape)];
  });
}
