import { entryAt, f64, num } from '../base/at.ts';
import { EdgeGrid } from './edge-grid.ts';
import { boxHolds, holds } from './parts.ts';
import { ringArea, shapeBounds } from './rings.ts';

/**
 * A line that runs exactly through corners or along edges would cut them by rounding: it is laid so far aside, mm, under
 * the grid that outlines are kept to.
 */
const ASIDE_MM = [0.0000137, 0.0000211] as const;

/** A line that ends on an edge reaches it: both ends are drawn longer by as much, mm. */
const BEYOND_MM = 0.02;

/** Parts of less area come of rounding, mm². */
const LEAST_MM2 = 0.001;

/** From a node to a node. */
type Way = readonly [from: number, to: number];

/** Where a line or an edge is crossed. */
interface Crossing {
  /** Share of the way along it. */
  along: number;
  node: number;
  /** Whether what crosses it is an edge of the area. */
  edge: boolean;
}

/**
 * The parts that an area comes apart into where a blade goes along an open line; what the blade enters without leaving
 * is not cut. Nothing is taken away.
 * @param rings as `normalise` gives them, mm
 * @param line flat, mm; it may cross itself
 * @returns rings of each part, its outer ring first; one part for each that hung together before where nothing is cut through
 */
export function splitRings(rings: readonly Float64Array[], line: readonly number[]): Float64Array[][] {
  return partsOf(new Cut(rings, line).faces().filter((ring) => Math.abs(ringArea(ring)) > LEAST_MM2));
}

/** The edges of an area and a line over them, as nodes and ways between these. */
class Cut {
  private readonly grid: EdgeGrid;
  private readonly xs: number[] = [];
  private readonly ys: number[] = [];
  private readonly ringEnds: number[] = [];
  /** Where the line crosses an edge. */
  private readonly onEdge = new Set<number>();
  /** To which nodes one may go on from a node, with the area on the right. */
  private readonly ways = new Map<number, number[]>();

  constructor(rings: readonly Float64Array[], line: readonly number[]) {
    this.grid = new EdgeGrid(rings);
    for (const ring of rings) {
      const first = this.xs.length;
      for (let i = 0; i + 1 < ring.length; i += 2) {
        this.node(f64(ring, i), f64(ring, i + 1));
        this.ringEnds.push(i + 3 < ring.length ? this.xs.length : first);
      }
    }
    const crossed = new Map<number, Crossing[]>();
    const kept = this.throughWays(this.crossedLine(longer(line), crossed));
    for (const [from, to] of this.ringEnds.entries()) this.chain(from, to, crossed.get(from) ?? []);
    for (const [a, b] of kept) {
      this.way(a, b);
      this.way(b, a);
    }
  }

  private node(x: number, y: number): number {
    this.xs.push(x);
    return this.ys.push(y) - 1;
  }

  private way(from: number, to: number): void {
    const there = this.ways.get(from);
    if (there === undefined) this.ways.set(from, [to]);
    else there.push(to);
  }

  private chain(from: number, to: number, crossings: Crossing[]): void {
    let last = from;
    for (const { node } of crossings.sort((a, b) => a.along - b.along)) {
      this.way(last, node);
      last = node;
    }
    this.way(last, to);
  }

  /** The line's pieces between crossings, those inside the area. @param crossed receives where each edge is crossed */
  private crossedLine(line: readonly number[], crossed: Map<number, Crossing[]>): Way[] {
    const first = this.xs.length;
    for (let i = 0; i + 1 < line.length; i += 2) this.node(num(line, i) + ASIDE_MM[0], num(line, i + 1) + ASIDE_MM[1]);
    const last = this.xs.length - 1;
    const own = new Map<number, Crossing[]>();
    const put = (into: Map<number, Crossing[]>, at: number, crossing: Crossing): void => {
      into.set(at, [...(into.get(at) ?? []), crossing]);
    };
    for (let at = first; at < last; at++) {
      const span = { x: num(this.xs, at), y: num(this.ys, at), toX: num(this.xs, at + 1), toY: num(this.ys, at + 1) };
      for (const from of this.grid.near(span, 0)) {
        const edge = from / 4;
        const found = this.crossing([at, at + 1], [edge, num(this.ringEnds, edge)]);
        if (found === null) continue;
        this.onEdge.add(found.node);
        put(own, at, { along: found.first, node: found.node, edge: true });
        put(crossed, edge, { along: found.second, node: found.node, edge: false });
      }
      for (let other = first; other < at - 1; other++) {
        const found = this.crossing([at, at + 1], [other, other + 1]);
        if (found === null) continue;
        put(own, at, { along: found.first, node: found.node, edge: false });
        put(own, other, { along: found.second, node: found.node, edge: false });
      }
    }
    const pieces: Way[] = [];
    let inside = this.isInside(first);
    for (let at = first; at < last; at++) {
      let from = at;
      for (const { node, edge } of (own.get(at) ?? []).sort((a, b) => a.along - b.along)) {
        if (inside) pieces.push([from, node]);
        if (edge) inside = !inside;
        from = node;
      }
      if (inside) pieces.push([from, at + 1]);
    }
    return pieces;
  }

  /** Where two edges cross, as a new node. */
  private crossing(
    [a, b]: readonly [number, number],
    [c, d]: readonly [number, number],
  ): { first: number; second: number; node: number } | null {
    const [ax, ay, cx, cy] = [num(this.xs, a), num(this.ys, a), num(this.xs, c), num(this.ys, c)];
    const [px, py] = [num(this.xs, b) - ax, num(this.ys, b) - ay];
    const [qx, qy] = [num(this.xs, d) - cx, num(this.ys, d) - cy];
    const across = px * qy - py * qx;
    if (across === 0) return null;
    const first = ((cx - ax) * qy - (cy - ay) * qx) / across;
    const second = ((cx - ax) * py - (cy - ay) * px) / across;
    // Half open, so that a corner belongs to one of its two edges.
    if (!(first >= 0 && first < 1 && second >= 0 && second < 1)) return null;
    return { first, second, node: this.node(ax + first * px, ay + first * py) };
  }

  /** Source: crossings of a ray to the right (even-odd). */
  private isInside(node: number): boolean {
    const [x, y] = [num(this.xs, node), num(this.ys, node)];
    let within = false;
    for (const [from, to] of this.ringEnds.entries()) {
      const [px, py, qx, qy] = [num(this.xs, from), num(this.ys, from), num(this.xs, to), num(this.ys, to)];
      if (qy > y !== py > y && x < ((px - qx) * (y - qy)) / (py - qy) + qx) within = !within;
    }
    return within;
  }

  /** Without what leads to an end inside the area: there, nothing comes apart. */
  private throughWays(pieces: readonly Way[]): Way[] {
    const edges = new Set(pieces);
    const touching = new Map<number, Set<Way>>();
    for (const piece of edges) {
      for (const node of piece) {
        const there = touching.get(node);
        if (there === undefined) touching.set(node, new Set([piece]));
        else there.add(piece);
      }
    }
    const ends = [...touching.keys()];
    for (let node = ends.pop(); node !== undefined; node = ends.pop()) {
      const there = touching.get(node);
      if (there?.size !== 1 || this.onEdge.has(node)) continue;
      for (const piece of there) {
        edges.delete(piece);
        for (const end of piece) touching.get(end)?.delete(piece);
        ends.push(...piece);
      }
    }
    return [...edges];
  }

  /** Every way once round, as rings: outer rings of parts clockwise as seen, holes the other way. */
  faces(): Float64Array[] {
    const done = new Set<number>();
    const key = (from: number, to: number): number => from * this.xs.length + to;
    const faces: Float64Array[] = [];
    for (const [start, targets] of this.ways) {
      for (const target of targets) {
        if (done.has(key(start, target))) continue;
        const face: number[] = [];
        let [from, to] = [start, target];
        while (!done.has(key(from, to))) {
          done.add(key(from, to));
          face.push(num(this.xs, from), num(this.ys, from));
          [from, to] = [to, this.onward(from, to)];
        }
        faces.push(Float64Array.from(face));
      }
    }
    return faces;
  }

  /** The next node with the area on the right: the sharpest turn to the right. */
  private onward(from: number, at: number): number {
    const targets = this.ways.get(at) ?? [];
    if (targets.length === 1) return entryAt(targets, 0);
    const angleTo = (node: number): number => Math.atan2(num(this.ys, node) - num(this.ys, at), num(this.xs, node) - num(this.xs, at));
    const back = angleTo(from);
    let [best, least] = [from, Infinity];
    for (const target of targets) {
      // As seen, angles grow clockwise: y runs down.
      const turn = target === from ? 2 * Math.PI : (back - angleTo(target) + 4 * Math.PI) % (2 * Math.PI);
      if (turn < least) [best, least] = [target, turn];
    }
    return best;
  }
}

/** A line with both its ends drawn longer. */
function longer(line: readonly number[]): number[] {
  const out = [...line];
  const end = (at: number, before: number): void => {
    const [right, down] = [num(line, at) - num(line, before), num(line, at + 1) - num(line, before + 1)];
    const length = Math.hypot(right, down);
    if (length === 0) return;
    out[at] = num(line, at) + (BEYOND_MM * right) / length;
    out[at + 1] = num(line, at + 1) + (BEYOND_MM * down) / length;
  };
  end(0, 2);
  end(line.length - 2, line.length - 4);
  return out;
}

/** Rings as parts: each hole to the smallest outer ring about it that is larger than it is. */
function partsOf(rings: readonly Float64Array[]): Float64Array[][] {
  const parts = rings
    .map((ring) => ({ area: ringArea(ring), rings: [ring] }))
    .filter(({ area }) => area > 0)
    .sort((a, b) => a.area - b.area);
  for (const hole of rings) {
    const area = -ringArea(hole);
    // A part that was cut out of another's middle is as large as the hole that it leaves.
    if (area > 0)
      parts
        .find(
          (part) =>
            part.area > area + LEAST_MM2 && boxHolds(shapeBounds(part.rings), shapeBounds([hole])) && holds(entryAt(part.rings, 0), hole),
        )
        ?.rings.push(hole);
  }
  return parts.map((part) => part.rings).reverse();
}
