import { html, nothing, svg, type TemplateResult } from 'lit';
import { f64, num } from '../../../engine/base/at.ts';
import { unionOutlines } from '../../../engine/geometry/booleans.ts';
import { WorkBudget } from '../../../engine/geometry/work.ts';
import { placedOutlines, type SheetOutline } from '../../../engine/shapes/place/placed.ts';
import type { Screen } from '../../../engine/shapes/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';

interface Known {
  shapes: Studio['shapes'];
  outline: SheetOutline;
  path: string;
  box: { xMm: number; yMm: number; widthMm: number; heightMm: number };
}

const known = new WeakMap<Screen, Known>();

/** SVG path data of outlines, in their own mm. */
export function pathOf(rings: readonly ArrayLike<number>[]): string {
  const parts: string[] = [];
  for (const ring of rings) {
    for (let i = 0; i + 1 < ring.length; i += 2) {
      parts.push(i === 0 ? 'M' : 'L', num(ring, i).toFixed(2), ' ', num(ring, i + 1).toFixed(2));
    }
    if (ring.length > 1) parts.push('Z');
  }
  return parts.join('');
}

/** Work of joining shapes for a drawing, about a tenth of a second: they look nearly the same where they are not joined. */
const MOST_WORK = 1_000_000;

function drawnOutline(outlines: readonly SheetOutline[]): SheetOutline {
  const [first = { rings: [], fillRule: 'nonzero' }, ...others] = outlines;
  if (others.length === 0) return first;
  try {
    return { rings: unionOutlines(outlines, new WorkBudget(MOST_WORK)), fillRule: 'nonzero' };
  } catch {
    return { rings: outlines.flatMap(({ rings }) => rings), fillRule: 'nonzero' };
  }
}

function look(screen: Screen, shapes: Studio['shapes']): Known {
  const held = known.get(screen);
  if (held?.shapes === shapes) return held;
  const outline = drawnOutline(placedOutlines(screen, shapes));
  let left = Infinity;
  let top = Infinity;
  let right = -Infinity;
  let bottom = -Infinity;
  for (const ring of outline.rings) {
    for (let i = 0; i + 1 < ring.length; i += 2) {
      left = Math.min(left, f64(ring, i));
      right = Math.max(right, f64(ring, i));
      top = Math.min(top, f64(ring, i + 1));
      bottom = Math.max(bottom, f64(ring, i + 1));
    }
  }
  const box =
    left <= right ? { xMm: left, yMm: top, widthMm: right - left, heightMm: bottom - top } : { xMm: 0, yMm: 0, widthMm: 1, heightMm: 1 };
  const fresh = { shapes, outline, path: pathOf(outline.rings), box };
  known.set(screen, fresh);
  return fresh;
}

/** What a screen prints at rest, mm on the sheet; worked out once for a screen. */
export function restOutline(screen: Screen, shapes: Studio['shapes']): SheetOutline {
  return look(screen, shapes).outline;
}

/** A small drawing of what a screen prints, cropped to it; empty when a shape is missing. */
export function screenGlyph(screen: Screen | undefined, studio: Studio): TemplateResult | typeof nothing {
  if (screen === undefined) return nothing;
  let found: Known;
  try {
    found = look(screen, studio.shapes);
  } catch {
    // The picture itself tells what is missing; a ticket without its drawing is enough here.
    return nothing;
  }
  const { box } = found;
  // Thin bars would vanish when cropped to their own box.
  const room = Math.max(box.widthMm, box.heightMm) * 0.04;
  const viewBox = `${box.xMm - room} ${box.yMm - room} ${box.widthMm + 2 * room} ${box.heightMm + 2 * room}`;
  return html`<svg class="glyph" viewBox=${viewBox} aria-hidden="true">
    ${svg`<path d=${found.path} fill="currentColor" fill-rule=${found.outline.fillRule} />`}
  </svg>`;
}
