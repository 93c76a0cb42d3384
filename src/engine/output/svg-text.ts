import { num } from '../base/at.ts';

/** A closed ring as SVG path data, to the digits it has or to so many. */
export function ringPath(ring: ArrayLike<number>, digits?: number): string {
  const path = linePath(ring, digits);
  return path === '' ? '' : `${path}Z`;
}

/** An open line as SVG path data, to the digits it has or to so many. */
export function linePath(points: ArrayLike<number>, digits?: number): string {
  const text = (value: number): string => (digits === undefined ? String(value) : String(Number(value.toFixed(digits))));
  const parts: string[] = [];
  for (let i = 0; i + 1 < points.length; i += 2) parts.push(`${text(num(points, i))} ${text(num(points, i + 1))}`);
  return parts.length === 0 ? '' : `M${parts.join('L')}`;
}

/** Signs that no XML text may hold, even escaped. Source: XML 1.0 (W3C), production 2. */
const NO_XML = /[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu;

/** Text for an element or an attribute of XML. */
export function xmlText(text: string): string {
  return text.replace(NO_XML, '').replace(/[&<>"]/g, (sign) => `&#${sign.codePointAt(0)};`);
}
