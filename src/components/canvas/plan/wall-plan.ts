import { num } from '../../../engine/base/at.ts';
import { FreePlaces } from './free-places.ts';
import { type Extent, layWall, leftOf, PRINT_HEIGHT, topOf, type WallLayout } from './wall-layout.ts';

/** A measure along an edge of the wall; places from 0 to 1. */
export interface PlanAxis {
  title: string;
  ticks: { at: number; label: string }[];
}

/** How prints are to hang. Print numbers are those of the wall's seed order. */
export type PlanSpec =
  /** In rows; all places in seed order when no sequence is given. */
  | { kind: 'rows'; sequence: readonly number[] | null }
  /** In rows under titles. */
  | { kind: 'groups'; groups: readonly { title: string; prints: readonly number[] }[] }
  /** By two coordinates, 0 to 1, `y` upwards; a print without a number hangs nowhere. */
  | {
      kind: 'map';
      x: Float32Array;
      y: Float32Array;
      xAxis: PlanAxis | null;
      yAxis: PlanAxis | null;
      /** The prints that hang; all have a place, so that none moves when others are hidden. */
      shown: ReadonlySet<number>;
    };

/** Where prints hang, wall units. */
export interface WallPlan extends Extent {
  printWidth: number;
  printHeight: number;
  /** Left and top of each print by its number; NaN for one that does not hang. */
  at: Float32Array;
  /** Print numbers as one reads them. */
  sequence: readonly number[];
  /** Rows are walked to their end and on; a map is walked to the nearest print. */
  inRows: boolean;
  columns: number;
  titles: { left: number; top: number; text: string }[];
  axes: { x: PlanAxis; y: PlanAxis; left: number; top: number; width: number; height: number } | null;
}

const TITLE_HEIGHT = 34;
const GROUP_GAP = 42;
/** Places a map has for each print: enough that most hang where they belong. */
const ROOM = 2.3;
/** What stays free at the left and at the foot of a map with axes, in prints. */
const AXIS_ROOM = 0.45;

/**
 * Hangs prints as asked.
 * @param places how many prints there are or are to come
 * @param sheetAspect width ÷ height of the paper
 * @param view what the wall is seen through, CSS px
 */
export function planWall(spec: PlanSpec, places: number, sheetAspect: number, view: Extent): WallPlan {
  if (spec.kind === 'map') return planMap(spec, places, sheetAspect, view);
  if (spec.kind === 'groups') return planGroups(spec.groups, places, sheetAspect, view);
  const sequence = spec.sequence ?? Array.from({ length: places }, (_, index) => index);
  const layout = layWall(spec.sequence === null ? places : sequence.length, sheetAspect, view);
  const at = nowhere(places);
  sequence.forEach((index, place) => put(at, index, leftOf(layout, place), topOf(layout, place)));
  return { ...plain(layout), at, sequence };
}

function planGroups(
  groups: readonly { title: string; prints: readonly number[] }[],
  places: number,
  sheetAspect: number,
  view: Extent,
): WallPlan {
  const sizes = groups.map(({ prints }) => prints.length);
  const total = sizes.reduce((sum, size) => sum + size, 0);
  const { columns, cellWidth, cellHeight, ...layout } = layWall(total, sheetAspect, view);
  const at = nowhere(places);
  const titles: WallPlan['titles'] = [];
  let top = 0;
  for (const { title, prints } of groups) {
    titles.push({ left: 0, top: top + TITLE_HEIGHT * 0.55, text: title });
    top += TITLE_HEIGHT;
    prints.forEach((index, place) => {
      put(at, index, (place % columns) * cellWidth, top + Math.floor(place / columns) * cellHeight);
    });
    top += Math.ceil(prints.length / columns) * cellHeight + GROUP_GAP;
  }
  const sequence = groups.flatMap(({ prints }) => prints);
  return { ...plain({ ...layout, columns, cellWidth, cellHeight }), height: Math.max(1, top - GROUP_GAP), at, sequence, titles };
}

/**
 * A map: each print takes the free place nearest to where it belongs, in seed order, so that none
 * hides another. Places are a lattice the size of a print and its number.
 */
function planMap(spec: PlanSpec & { kind: 'map' }, places: number, sheetAspect: number, view: Extent): WallPlan {
  const placed: number[] = [];
  for (let index = 0; index < places; index++) {
    if (Number.isFinite(spec.x[index]) && Number.isFinite(spec.y[index])) placed.push(index);
  }
  const one = layWall(1, sheetAspect, view);
  const { cellWidth, cellHeight } = one;
  const viewAspect = Math.min(3, Math.max(0.4, view.width / Math.max(1, view.height)));
  const room = Math.max(4, Math.ceil(placed.length * ROOM));
  const columns = Math.max(2, Math.round(Math.sqrt((room * viewAspect * cellHeight) / cellWidth)));
  const rows = Math.max(2, Math.ceil(room / columns));
  const margin = spec.xAxis === null ? 0 : PRINT_HEIGHT * AXIS_ROOM;
  const at = nowhere(places);
  const free = new FreePlaces(columns, rows);
  for (const index of placed) {
    const column = num(spec.x, index) * (columns - 1);
    const row = (1 - num(spec.y, index)) * (rows - 1);
    const place = free.takeNearest(column, row);
    if (spec.shown.has(index)) put(at, index, margin + (place % columns) * cellWidth, Math.floor(place / columns) * cellHeight);
  }
  const width = columns * cellWidth - (cellWidth - one.printWidth);
  const height = rows * cellHeight - (cellHeight - PRINT_HEIGHT);
  const { xAxis, yAxis } = spec;
  const axes =
    xAxis === null || yAxis === null
      ? null
      : {
          x: xAxis,
          y: yAxis,
          left: margin + one.printWidth / 2,
          top: PRINT_HEIGHT / 2,
          width: (columns - 1) * cellWidth,
          height: (rows - 1) * cellHeight,
        };
  const sequence = placed
    .filter((index) => spec.shown.has(index))
    .sort((a, b) => num(at, a * 2 + 1) - num(at, b * 2 + 1) || num(at, a * 2) - num(at, b * 2));
  return { ...plain(one), columns, width: width + margin, height: height + margin, at, sequence, inRows: false, axes };
}

function nowhere(places: number): Float32Array {
  return new Float32Array(places * 2).fill(Number.NaN);
}

function put(at: Float32Array, index: number, left: number, top: number): void {
  at[index * 2] = left;
  at[index * 2 + 1] = top;
}

function plain(
  layout: Pick<WallLayout, 'width' | 'height' | 'printWidth' | 'printHeight' | 'columns' | 'cellWidth' | 'cellHeight'>,
): Omit<WallPlan, 'at' | 'sequence'> {
  const { width, height, printWidth, printHeight, columns } = layout;
  return { width, height, printWidth, printHeight, columns, inRows: true, titles: [], axes: null };
}
