import { defined } from '../../base/at.ts';
import type { FillRule } from '../../geometry/types.ts';
import type { Specified } from './css.ts';
import { colourKey, isWhite } from './paint/colours.ts';
import { Scanner } from './scanner.ts';

const INHERITED = {
  fill: 'black',
  'fill-rule': 'nonzero',
  'fill-opacity': '1',
  stroke: 'none',
  'stroke-width': '1',
  'stroke-opacity': '1',
  'stroke-linecap': 'butt',
  'stroke-linejoin': 'miter',
  'stroke-miterlimit': '4',
  'stroke-dasharray': 'none',
  'stroke-dashoffset': '0',
  'paint-order': 'normal',
  color: 'black',
  visibility: 'visible',
  'clip-rule': 'nonzero',
  'marker-start': 'none',
  'marker-mid': 'none',
  'marker-end': 'none',
} as const;

type Inherited = keyof typeof INHERITED;

/** What an element hands down to those inside it. Source: SVG 1.1 appendix N (property index). */
export type Look = Readonly<Record<Inherited, string>>;

/** The look of an element in which nothing was set. */
export const PLAIN_LOOK: Look = INHERITED;

/** An element's look from its own values and its parent's look. */
export function inheritLook(parent: Look, own: Specified): Look {
  let look: Record<Inherited, string> | null = null;
  for (const [property, value] of own) {
    if (!(property in INHERITED)) continue;
    const key = property as Inherited;
    const keyword = value.toLowerCase();
    if (keyword === 'inherit' || keyword === 'unset') continue;
    look ??= { ...parent };
    // A paint of the current colour keeps that name: it is the colour of where it is used.
    if (key === 'color' && keyword === 'currentcolor') continue;
    look[key] = keyword === 'initial' ? INHERITED[key] : value;
  }
  return look ?? parent;
}

/** What a paint comes to for a stencil: anything that would be seen is filled; white may be paper. */
export type Paint = { kind: 'none' } | { kind: 'solid'; white: boolean; colour: string } | { kind: 'server'; href: string; fallback: string };

/**
 * @param paint a value of fill or stroke
 * @param color the value of color, for `currentColor`
 */
export function paintOf(paint: string, color: string): Paint {
  const server = serverOf(paint.trim());
  if (server !== null) return server;
  const keyword = paint.trim().toLowerCase();
  if (keyword === 'none') return { kind: 'none' };
  const seen = keyword === 'currentcolor' ? color.trim().toLowerCase() : keyword;
  return isClear(seen) ? { kind: 'none' } : { kind: 'solid', white: isWhite(seen), colour: colourKey(seen) };
}

/** 'url(…) fallback', with quotes or without; null when it is no whole one. */
function serverOf(paint: string): Paint | null {
  if (paint.slice(0, 4).toLowerCase() !== 'url(') return null;
  const scanner = new Scanner(paint);
  scanner.at = 4;
  scanner.skipBlanks();
  const { sign } = scanner;
  if (sign === '"' || sign === "'") {
    const from = scanner.at + 1;
    const end = paint.indexOf(sign, from);
    scanner.at = end + 1;
    scanner.skipBlanks();
    if (end >= 0 && scanner.take(')')) return { kind: 'server', href: paint.slice(from, end).trim(), fallback: paint.slice(scanner.at).trim() };
  }
  const close = paint.indexOf(')', 4);
  if (close < 0) return null;
  return { kind: 'server', href: paint.slice(4, close).trim(), fallback: paint.slice(close + 1).trim() };
}

function isClear(color: string): boolean {
  if (color === 'transparent') return true;
  if (/^#(?:[\da-f]{3}0|[\da-f]{6}00)$/u.test(color)) return true;
  if (!/^(?:rgb|hsl)a?\(/u.test(color) || color.indexOf(')') !== color.length - 1) return false;
  const inside = color.slice(color.indexOf('(') + 1, -1);
  const parts = inside.split(inside.includes('/') ? '/' : ',');
  // Alpha is the fourth of a list with commas, and what follows the slash in one with blanks.
  return parts.length === (inside.includes('/') ? 2 : 4) && isZero(defined(parts.at(-1)));
}

/** Whether an opacity or width is nothing: '0', '0.0', '0%', '0px', or less. */
export function isZero(value: string): boolean {
  return Number.parseFloat(value) <= 0;
}

/** What a fill-rule or clip-rule says; 'nonzero' for anything but 'evenodd'. */
export function ruleOf(value: string): FillRule {
  return value.trim().toLowerCase() === 'evenodd' ? 'evenodd' : 'nonzero';
}

/** Whether a property names something rather than nothing. */
export function isSet(value: string | undefined): boolean {
  return value !== undefined && !/^(?:none|inherit|initial|unset)$/iu.test(value);
}

/** Whether what has the look is drawn at all. */
export function isVisible(look: Look): boolean {
  return !/^(?:hidden|collapse)$/iu.test(look.visibility);
}

/** Whether the look puts markers on its lines. */
export function hasMarkers(look: Look): boolean {
  return isSet(look['marker-start']) || isSet(look['marker-mid']) || isSet(look['marker-end']);
}

/** Whether the look has a stroke that would be seen. */
export function hasStroke(look: Look): boolean {
  if (paintOf(look.stroke, look.color).kind === 'none') return false;
  return !isZero(look['stroke-width']) && !isZero(look['stroke-opacity']);
}
