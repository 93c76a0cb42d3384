import { compose, IDENTITY } from '../../geometry/rings.ts';
import type { Affine } from '../../geometry/rings.ts';
import { skipGap } from './lengths.ts';
import { Scanner } from './scanner.ts';

const NAMES: ReadonlySet<string> = new Set([
  'matrix', 'translate', 'translateX', 'translateY', 'scale', 'scaleX', 'scaleY', 'rotate', 'skew', 'skewX', 'skewY',
]);
const DEGREES: Readonly<Record<string, number>> = { '': 1, px: 1, deg: 1, rad: 180 / Math.PI, grad: 0.9, turn: 360 };

/**
 * A transform list, from an attribute or a style. Source: SVG 1.1 §7.6; units as in CSS Transforms 1.
 * @returns null when it cannot be read
 */
export function transformOf(text: string): Affine | null {
  if (text.trim() === '' || text.trim() === 'none') return IDENTITY;
  let result: Affine = IDENTITY;
  const scanner = new Scanner(text.trim());
  while (!scanner.done) {
    const name = scanner.letters();
    scanner.skipBlanks();
    if (!NAMES.has(name) || !scanner.take('(')) return null;
    const numbers = numbersWithin(scanner);
    const one = numbers === null ? null : affineOf(name, numbers);
    if (one === null) return null;
    result = compose(result, one);
    skipGap(scanner);
  }
  return result.every(Number.isFinite) ? result : null;
}

/** Numbers up to the closing bracket, angles in degrees; null when anything else is there. */
function numbersWithin(scanner: Scanner): number[] | null {
  const numbers: number[] = [];
  for (;;) {
    skipGap(scanner);
    if (scanner.take(')')) return numbers;
    const value = scanner.number();
    const factor = DEGREES[scanner.letters().toLowerCase()];
    if (value === null || factor === undefined || !Number.isFinite(value * factor)) return null;
    numbers.push(value * factor);
  }
}

function affineOf(name: string, n: readonly number[]): Affine | null {
  const [p = 0, q = 0, r = 0] = n;
  const count = n.length;
  if (name === 'matrix') return count === 6 ? (n as unknown as Affine) : null;
  if (count < 1 || count > (name === 'rotate' ? 3 : 2)) return null;
  if (count === 2 && /rotate|[XY]$/u.test(name)) return null;
  switch (name) {
    case 'translate':
      return [1, 0, 0, 1, p, q];
    case 'translateX':
      return [1, 0, 0, 1, p, 0];
    case 'translateY':
      return [1, 0, 0, 1, 0, p];
    case 'scale':
      return [p, 0, 0, count === 2 ? q : p, 0, 0];
    case 'scaleX':
      return [p, 0, 0, 1, 0, 0];
    case 'scaleY':
      return [1, 0, 0, p, 0, 0];
    case 'skew':
      return [1, tan(q), tan(p), 1, 0, 0];
    case 'skewX':
      return [1, 0, tan(p), 1, 0, 0];
    case 'skewY':
      return [1, tan(p), 0, 1, 0, 0];
    default:
      return turn(p, q, r);
  }
}

function tan(deg: number): number {
  return Math.tan((deg * Math.PI) / 180);
}

function turn(deg: number, x: number, y: number): Affine {
  const rad = (deg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(rad), Math.sin(rad)];
  return [cos, sin, -sin, cos, x - cos * x + sin * y, y - sin * x - cos * y];
}
