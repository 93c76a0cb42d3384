import { edgeWeight } from '../../../../engine/order/overlaps.ts';
import type { OrderGroup, OrderPart } from '../../../../engine/order/parts/order-parts.ts';
import type { OverlapEdge } from '../../../../workers/api/picture-api.ts';
import type { Dot } from './order-graph-layout.ts';

/** Between pulls, px. */
const STEP = 27;
/** A folded group, px. */
export const TILE = { width: 68, height: 24 };
const GAP = 8;
const PAD = 8;
const THICKEST = 5;
const DEEPEST = 150;
/** Fewer pulls are shown without a fold. */
const LEAST_FOLDED = 4;

/** A group as a tile: all of it when it is folded, its head when it is not. */
export interface GroupTile extends Dot {
  group: OrderGroup;
  widthPx: number;
  open: boolean;
}

/** A panel that holds one part. */
interface Panel extends Dot {
  widthPx: number;
  heightPx: number;
}

/** A line of the chosen pull. */
interface GraphLine {
  path: string;
  /** Whether the other pull lies under the chosen one. */
  under: boolean;
  widthPx: number;
  /** How low it comes, px. */
  bottomPx: number;
}

/** Where everything of the graph stands: the middle of pulls, the top left of tiles and panels, px. */
interface LayerLayout {
  panels: Panel[];
  tiles: GroupTile[];
  /** Pulls that are shown, by their places in the stack. */
  dots: Map<number, Dot>;
  /** Where lines to a pull end: at its dot, or at the tile that hides it. */
  ends: Map<number, Dot>;
  widthPx: number;
  heightPx: number;
}

/**
 * Lays parts out as panels, in each its groups from the left, first down first.
 * @param isOpen whether a group's pulls are shown
 * @param roomPx panels stand side by side up to here; a wider one has a row to itself
 */
export function layerLayout(parts: readonly OrderPart[], isOpen: (group: OrderGroup) => boolean, roomPx: number): LayerLayout {
  const out: LayerLayout = { panels: [], tiles: [], dots: new Map(), ends: new Map(), widthPx: 0, heightPx: 0 };
  let [x, y, rowHeight] = [0, 0, 0];
  for (const part of parts) {
    const size = partSize(part, isOpen);
    if (x > 0 && x + size.widthPx > roomPx) {
      [x, y, rowHeight] = [0, y + rowHeight + GAP, 0];
    }
    placePart(out, part, { x, y, ...size }, isOpen);
    x += size.widthPx + GAP;
    rowHeight = Math.max(rowHeight, size.heightPx);
    out.widthPx = Math.max(out.widthPx, x - GAP);
    out.heightPx = Math.max(out.heightPx, y + rowHeight);
  }
  return out;
}

/** Whether a group is of so many pulls that it can be folded. */
export function folds({ layers }: OrderGroup): boolean {
  return layers.reduce((sum, layer) => sum + layer.length, 0) >= LEAST_FOLDED;
}

/**
 * The lines of one pull, as thick as its order shows; those that end at one folded group are one.
 * @param at its place in the stack
 * @param own the pairs that it is one of
 * @param ends as `layerLayout` gives them
 */
export function linesOf(at: number, own: readonly OverlapEdge[], ends: ReadonlyMap<number, Dot>): GraphLine[] {
  const from = ends.get(at);
  if (from === undefined) return [];
  const merged = new Map<string, { to: Dot; under: boolean; weight: number }>();
  for (const edge of own) {
    const other = edge.a === at ? edge.b : edge.a;
    const to = ends.get(other);
    if (to === undefined || (to.x === from.x && to.y === from.y)) continue;
    const key = `${to.x} ${to.y} ${other < at}`;
    merged.set(key, { to, under: other < at, weight: (merged.get(key)?.weight ?? 0) + edgeWeight(edge) });
  }
  const heaviest = Math.max(...[...merged.values()].map(({ weight }) => weight), Number.MIN_VALUE);
  return [...merged.values()].map(({ to, under, weight }): GraphLine => {
    // The further, the deeper, so that lines lie beside each other.
    const bend = Math.min(DEEPEST, Math.abs(to.x - from.x) / 5 + 12);
    const widthPx = Math.max(1, (THICKEST * weight) / heaviest);
    return {
      path: `M${from.x} ${from.y}Q${(from.x + to.x) / 2} ${(from.y + to.y) / 2 + bend} ${to.x} ${to.y}`,
      under,
      widthPx,
      // The curve goes half as deep as its handle, from between its ends.
      bottomPx: Math.max(from.y, to.y) + bend / 2 + widthPx,
    };
  });
}

function groupWidth(group: OrderGroup, open: boolean): number {
  const columns = STEP * group.layers.length;
  if (!folds(group)) return columns;
  return open ? Math.max(TILE.width, columns) : TILE.width;
}

function partSize(part: OrderPart, isOpen: (group: OrderGroup) => boolean): { widthPx: number; heightPx: number } {
  const head = part.some(folds) ? TILE.height + GAP / 2 : 0;
  const rows = Math.max(
    0,
    ...part.filter((group) => !folds(group) || isOpen(group)).flatMap(({ layers }) => layers.map(({ length }) => length)),
  );
  const width = part.reduce((sum, group) => sum + groupWidth(group, isOpen(group)) + GAP, -GAP);
  return { widthPx: width + 2 * PAD, heightPx: (rows === 0 ? head - GAP / 2 : head + STEP * rows) + 2 * PAD };
}

function placePart(out: LayerLayout, part: OrderPart, panel: Panel, isOpen: (group: OrderGroup) => boolean): void {
  out.panels.push(panel);
  const top = panel.y + PAD + (part.some(folds) ? TILE.height + GAP / 2 : 0);
  let x = panel.x + PAD;
  for (const group of part) {
    const open = !folds(group) || isOpen(group);
    const widthPx = groupWidth(group, open);
    if (folds(group)) out.tiles.push({ group, x, y: panel.y + PAD, widthPx, open });
    for (const [column, layer] of group.layers.entries()) {
      for (const [row, at] of layer.entries()) {
        const dot = { x: x + STEP * (column + 0.5), y: top + STEP * (row + 0.5) };
        if (open) out.dots.set(at, dot);
        out.ends.set(at, open ? dot : { x: x + widthPx / 2, y: panel.y + PAD + TILE.height / 2 });
      }
    }
    x += widthPx + GAP;
  }
}
