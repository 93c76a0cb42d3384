import { edgeWeight } from '../../../../engine/order/overlaps.ts';
import type { OrderGroup, OrderPart } from '../../../../engine/order/parts/order-parts.ts';
import type { OverlapEdge } from '../../../../workers/api/picture-api.ts';
import type { Dot } from './order-graph-layout.ts';

/** Between pulls, px. */
const STEP = 27;
/** A folded group, px. */
export const TILE = { width: 68, height: 24 };
const GAP = 8;
/** Between rows of one group, so that the columns of one are not taken for those of the next, px. */
const ROW_GAP = 6;
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
 * Lays parts out as panels, in each its groups from the left, first down first, row after row; an open group that is
 * wider than the room goes on in rows of its own.
 * @param isOpen whether a group's pulls are shown
 * @param roomPx nothing stands beyond it, but for a tile in less room than that takes
 */
export function layerLayout(parts: readonly OrderPart[], isOpen: (group: OrderGroup) => boolean, roomPx: number): LayerLayout {
  const out: LayerLayout = { panels: [], tiles: [], dots: new Map(), ends: new Map(), widthPx: 0, heightPx: 0 };
  let [x, y, rowHeight] = [0, 0, 0];
  for (const part of parts) {
    const { placed, ...size } = partLayout(part, isOpen, roomPx - 2 * PAD);
    if (x > 0 && x + size.widthPx > roomPx) {
      [x, y, rowHeight] = [0, y + rowHeight + GAP, 0];
    }
    const panel = { x, y, ...size };
    out.panels.push(panel);
    for (const block of placed) putBlock(out, block, panel);
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

/** A group with the rows that its layers take, as columns side by side. */
interface Block {
  group: OrderGroup;
  open: boolean;
  rows: number[][][];
  widthPx: number;
  /** Of its pulls, without its tile, px. */
  heightPx: number;
}

function blockOf(group: OrderGroup, open: boolean, roomPx: number): Block {
  const { layers } = group;
  if (!open) return { group, open, rows: [layers], widthPx: TILE.width, heightPx: 0 };
  const columns = Math.max(1, Math.floor(roomPx / STEP));
  const rows = Array.from({ length: Math.ceil(layers.length / columns) }, (_, row) => layers.slice(row * columns, (row + 1) * columns));
  const wide = STEP * Math.min(columns, layers.length);
  const heightPx = rows.reduce((sum, row) => sum + rowHeight(row), ROW_GAP * (rows.length - 1));
  return { group, open, rows, widthPx: folds(group) ? Math.max(TILE.width, wide) : wide, heightPx };
}

function rowHeight(row: readonly (readonly number[])[]): number {
  return STEP * Math.max(...row.map(({ length }) => length));
}

/** The blocks of a part, the top left of each in its panel, row after row. */
function partLayout(
  part: OrderPart,
  isOpen: (group: OrderGroup) => boolean,
  roomPx: number,
): { placed: (Block & Dot & { headPx: number })[]; widthPx: number; heightPx: number } {
  const blocks = part.map((group) => blockOf(group, !folds(group) || isOpen(group), roomPx));
  const lines: Block[][] = [];
  let used = 0;
  for (const block of blocks) {
    const line = lines.at(-1);
    if (line === undefined || used + GAP + block.widthPx > roomPx) {
      lines.push([block]);
      used = block.widthPx;
    } else {
      line.push(block);
      used += GAP + block.widthPx;
    }
  }
  let y = PAD;
  let widthPx = 0;
  const placed = lines.flatMap((line) => {
    const high = Math.max(...line.map((block) => block.heightPx));
    const head = line.some(({ group }) => folds(group)) ? TILE.height : 0;
    const headPx = head > 0 && high > 0 ? head + GAP / 2 : head;
    let x = PAD;
    const row = line.map((block) => {
      const at = { ...block, x, y, headPx };
      x += block.widthPx + GAP;
      return at;
    });
    widthPx = Math.max(widthPx, x - GAP + PAD);
    y += headPx + high + GAP;
    return row;
  });
  return { placed, widthPx, heightPx: y - GAP + PAD };
}

function putBlock(out: LayerLayout, { group, open, rows, widthPx, headPx, ...at }: Block & Dot & { headPx: number }, panel: Dot): void {
  const [left, top] = [panel.x + at.x, panel.y + at.y];
  if (folds(group)) out.tiles.push({ group, x: left, y: top, widthPx, open });
  const tile = { x: left + widthPx / 2, y: top + TILE.height / 2 };
  let y = top + headPx;
  for (const row of rows) {
    for (const [column, layer] of row.entries()) {
      for (const [place, pull] of layer.entries()) {
        const dot = { x: left + STEP * (column + 0.5), y: y + STEP * (place + 0.5) };
        if (open) out.dots.set(pull, dot);
        out.ends.set(pull, open ? dot : tile);
      }
    }
    y += rowHeight(row) + ROW_GAP;
  }
}
