import { defined } from '../../base/at.ts';
import type { Affine } from '../../geometry/rings.ts';
import type { FaultList } from './faults.ts';
import { placeText, quote } from './faults.ts';
import { Scanner } from './scanner.ts';
import type { SvgNode } from './xml-tree.ts';
import { say } from '../../words/en/shapes/read.ts';

/** CSS px per unit; 96 px are one inch. Source: CSS Values and Units 3, §6.2. */
const PX: Readonly<Record<string, number>> = {
  '': 1,
  px: 1,
  in: 96,
  mm: 96 / 25.4,
  cm: 96 / 2.54,
  q: 96 / 101.6,
  pt: 96 / 72,
  pc: 16,
};

/** A CSS pixel is 1/96 of an inch. Source: CSS Values 3, 6.2. */
export const MM_PER_PX = 25.4 / 96;

/** Whether a length stands in a unit that a ruler has; px and bare numbers are as large as a screen shows them. */
export function isOnPaper(length: string | undefined): boolean {
  return /\d\s*(?:mm|cm|in|pt|pc|q)\s*$/iu.test(length ?? '');
}

/** Size of the box that percentages refer to, user units. */
export interface Viewport {
  width: number;
  height: number;
}

/**
 * A length attribute in user units.
 * @param percentOf what 100 % is; null when the file gives no such box
 * @returns null when the attribute is missing, empty or 'auto'
 * @throws FileFault 'shape.number' when it is not a finite number with a unit known on paper
 */
export function lengthOf(
  node: SvgNode,
  attribute: string,
  percentOf: number | null,
  faults: FaultList,
): number | null {
  const raw = node.attributes.get(attribute);
  if (raw === undefined || raw.trim() === '' || raw.trim() === 'auto') return null;
  const scanner = new Scanner(raw.trim());
  const value = scanner.number() ?? Number.NaN;
  scanner.skipBlanks();
  const unit = scanner.text.slice(scanner.at).toLowerCase();
  if (unit === '%' && Number.isFinite(value) && percentOf !== null) return (value / 100) * percentOf;
  const px = PX[unit];
  if (px === undefined || !Number.isFinite(value)) {
    throw faults.refuse(
      'shape.number',
      say.atLineHasWhich(node.name, node.line, attribute, quote(raw)),
      say.at(node.name, placeText(node)),
    );
  }
  return value * px;
}

/**
 * A length of a style in user units.
 * @param percentOf what 100 % is; null when the file gives no such box
 * @returns null for what is no length, and for units that only a font or a window could settle
 */
export function pxOf(text: string, percentOf: number | null): number | null {
  const scanner = new Scanner(text.trim());
  const value = scanner.number();
  const unit = scanner.text.slice(scanner.at).toLowerCase();
  const one = unit === '%' ? (percentOf ?? Number.NaN) / 100 : PX[unit];
  return value === null || one === undefined || !Number.isFinite(value * one) ? null : value * one;
}

/** What 100 % of a length that is neither across nor down is: SVG 1.1 §7.10. */
export function diagonalOf(viewport: Viewport): number {
  return Math.sqrt((viewport.width ** 2 + viewport.height ** 2) / 2);
}

/**
 * A list of numbers divided by spaces or commas, or by nothing where SVG allows that.
 * @returns null when anything else is in the text or a number is not finite
 */
export function numbersOf(text: string): number[] | null {
  const numbers: number[] = [];
  const scanner = new Scanner(text);
  for (;;) {
    skipGap(scanner);
    if (scanner.done) return numbers;
    const value = scanner.number();
    if (value === null || !Number.isFinite(value)) return null;
    numbers.push(value);
  }
}

/** Passes what may stand between two numbers: blanks and at most one comma. */
export function skipGap(scanner: Scanner): void {
  scanner.skipBlanks();
  if (scanner.take(',')) scanner.skipBlanks();
}

export interface ViewBox extends Viewport {
  x: number;
  y: number;
}

/**
 * The viewBox attribute.
 * @returns null when missing or when a side is 0 or less
 * @throws FileFault 'shape.number' when it is not four finite numbers
 */
export function viewBoxOf(node: SvgNode, faults: FaultList): ViewBox | null {
  const raw = node.attributes.get('viewBox');
  if (raw === undefined) return null;
  const numbers = numbersOf(raw);
  if (numbers === null || numbers.length !== 4) {
    throw faults.refuse(
      'shape.number',
      say.atLineHasViewBox(node.name, node.line, quote(raw)),
      say.at(node.name, placeText(node)),
    );
  }
  const [x, y, width, height] = numbers as [number, number, number, number];
  return { x, y, width, height };
}

const ALIGN = /^(?:defer\s+)?x(Min|Mid|Max)Y(Min|Mid|Max)(?:\s+(meet|slice))?$/u;
const SHARE: Readonly<Record<string, number>> = { Min: 0, Mid: 0.5, Max: 1 };

/**
 * From a viewBox to the viewport that shows it. Source: SVG 1.1 §7.8, preserveAspectRatio.
 */
export function viewBoxAffine(box: ViewBox, viewport: Viewport, aspect: string | undefined): Affine {
  const sx = viewport.width / box.width;
  const sy = viewport.height / box.height;
  const text = aspect?.trim() ?? '';
  if (/^(?:defer\s+)?none\b/u.test(text)) return [sx, 0, 0, sy, -box.x * sx, -box.y * sy];
  const [, alignX, alignY, fit] = ALIGN.exec(text) ?? ['', 'Mid', 'Mid', 'meet'];
  const scale = fit === 'slice' ? Math.max(sx, sy) : Math.min(sx, sy);
  const restX = viewport.width - box.width * scale;
  const restY = viewport.height - box.height * scale;
  return [
    scale,
    0,
    0,
    scale,
    restX * defined(SHARE[defined(alignX)]) - box.x * scale,
    restY * defined(SHARE[defined(alignY)]) - box.y * scale,
  ];
}
