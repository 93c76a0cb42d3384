import { num } from '../../base/at.ts';
import type { PathSegment } from '../../geometry/flatten.ts';
import type { FaultList } from './faults.ts';
import { NEGATIVE } from './left-out.ts';
import { placeText, quote } from './faults.ts';
import { diagonalOf, lengthOf, numbersOf } from './lengths.ts';
import type { Viewport } from './lengths.ts';
import { pathSegments } from './path-data.ts';
import type { SvgNode } from './xml-tree.ts';
import { say } from '../../words/en/shapes/read.ts';

/** Elements that draw an outline. Source: SVG 1.1 §§8–9. */
export const SHAPE_ELEMENTS: ReadonlySet<string> = new Set([
  'path', 'rect', 'circle', 'ellipse', 'polygon', 'polyline', 'line',
]);

/**
 * The outline of a shape element in its own coordinates. Source: SVG 1.1 §§8–9, radii 'auto' as in SVG 2.
 * @param viewport what percentages refer to; null when the file gives no size
 * @returns no segments when it draws nothing
 * @throws FileFault 'shape.number' or 'shape.path' when a coordinate cannot be read
 */
export function shapeSegments(node: SvgNode, viewport: Viewport | null, faults: FaultList): PathSegment[] {
  const across = (name: string): number | null => lengthOf(node, name, viewport?.width ?? null, faults);
  const down = (name: string): number | null => lengthOf(node, name, viewport?.height ?? null, faults);
  switch (node.name) {
    case 'path':
      return readPath(node, faults);
    case 'polygon':
    case 'polyline':
      return readPoints(node, faults);
    case 'line':
      return [
        ['M', across('x1') ?? 0, down('y1') ?? 0],
        ['L', across('x2') ?? 0, down('y2') ?? 0],
      ];
    case 'circle': {
      const size = viewport === null ? null : diagonalOf(viewport);
      const r = positive(node, lengthOf(node, 'r', size, faults), faults);
      return ellipse(across('cx') ?? 0, down('cy') ?? 0, r ?? 0, r ?? 0);
    }
    case 'ellipse': {
      const rx = positive(node, across('rx'), faults);
      const ry = positive(node, down('ry'), faults);
      return ellipse(across('cx') ?? 0, down('cy') ?? 0, rx ?? ry ?? 0, ry ?? rx ?? 0);
    }
    default: {
      const width = positive(node, across('width'), faults) ?? 0;
      const height = positive(node, down('height'), faults) ?? 0;
      const rx = positive(node, across('rx'), faults);
      const ry = positive(node, down('ry'), faults);
      return rect({ x: across('x') ?? 0, y: down('y') ?? 0, width, height }, rx ?? ry ?? 0, ry ?? rx ?? 0);
    }
  }
}

/** A negative size is an error in SVG; the shape draws nothing, and the user is told. */
function positive(node: SvgNode, value: number | null, faults: FaultList): number | null {
  if (value === null || value >= 0) return value;
  faults.leftOut(NEGATIVE, node.name, node);
  return null;
}

function ellipse(cx: number, cy: number, rx: number, ry: number): PathSegment[] {
  if (rx === 0 || ry === 0) return [];
  return [
    ['M', cx + rx, cy],
    ['A', rx, ry, 0, false, true, cx - rx, cy],
    ['A', rx, ry, 0, false, true, cx + rx, cy],
    ['Z'],
  ];
}

/** A <rect> in its own coordinates. */
interface Rect {
  x: number;
  y: number;
  width: number;
  height: number;
}

function rect({ x, y, width, height }: Rect, roundX: number, roundY: number): PathSegment[] {
  if (width === 0 || height === 0) return [];
  const rx = Math.min(roundX, width / 2);
  const ry = Math.min(roundY, height / 2);
  const [right, bottom] = [x + width, y + height];
  if (rx === 0 || ry === 0) {
    return [['M', x, y], ['L', right, y], ['L', right, bottom], ['L', x, bottom], ['Z']];
  }
  return [
    ['M', x + rx, y],
    ['L', right - rx, y],
    ['A', rx, ry, 0, false, true, right, y + ry],
    ['L', right, bottom - ry],
    ['A', rx, ry, 0, false, true, right - rx, bottom],
    ['L', x + rx, bottom],
    ['A', rx, ry, 0, false, true, x, bottom - ry],
    ['L', x, y + ry],
    ['A', rx, ry, 0, false, true, x + rx, y],
    ['Z'],
  ];
}

function readPath(node: SvgNode, faults: FaultList): PathSegment[] {
  const segments = pathSegments(node.attributes.get('d') ?? '');
  if (!('fault' in segments)) return segments;
  throw faults.refuse(
    'shape.path',
    `<path> at line ${node.line} has path data that cannot be read: ${quote(segments.fault, 90)}; save the file again or mend the path.`,
    `<path> at ${placeText(node)}`,
  );
}

function readPoints(node: SvgNode, faults: FaultList): PathSegment[] {
  const raw = node.attributes.get('points') ?? '';
  const numbers = numbersOf(raw);
  if (numbers === null) {
    throw faults.refuse(
      'shape.number',
      say.atLineHasPoints(node.name, node.line, quote(raw)),
      say.at(node.name, placeText(node)),
    );
  }
  const segments: PathSegment[] = [];
  for (let i = 0; i + 1 < numbers.length; i += 2) {
    segments.push([i === 0 ? 'M' : 'L', num(numbers, i), num(numbers, i + 1)]);
  }
  if (segments.length > 0) segments.push(['Z']);
  return segments;
}
