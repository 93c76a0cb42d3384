import { f64, u32, u8 } from '../../base/at.ts';
import type { Lab } from '../../colour/lab.ts';
import { NearLanes } from '../../colour/near-lanes.ts';
import { WithinDeltaE } from '../../colour/within-delta-e.ts';
import type { CellMap } from '../../stack/types.ts';
import { ColourBins, MOST_ASKED } from './colour-bins.ts';

/** One colour of a print and how much of the sheet it takes. */
export interface ColourArea {
  lab: Lab;
  areaMm2: number;
}

/** Colours closer than this count as one, ΔE00; just visible side by side (common practice, no source). */
export const SAME_COLOUR_DELTA_E = 2;

/** Cells that are asked about together at first: few while most are new colours, which each other must know of, then many. */
const FIRST_CELLS = 8;
/** Bins hold what is within this at least. */
const LEAST_BIN_DELTA_E = 0.1;

/** No colour. */
const NONE = 0xffffffff;

const lanes = new NearLanes();
const bins = new ColourBins();

/**
 * Area by colour. Cells join, largest first, the first colour within `sameDeltaE`; a colour is
 * that of its largest cell.
 * @param lab cells × 3
 * @param bySize cells that take some of the sheet, largest first (see MapFigures)
 * @returns largest area first
 */
export function colourAreas(
  map: Pick<CellMap, 'areaMm2'>,
  lab: Float64Array,
  bySize: Uint32Array,
  sameDeltaE = SAME_COLOUR_DELTA_E,
): ColourArea[] {
  tell(map, lab, bySize, sameDeltaE);
  return colours.found(lab).sort((a, b) => b.areaMm2 - a.areaMm2);
}

/** How many colours `colourAreas` tells apart, and how much of the sheet the largest takes, mm². */
export function colourCount(map: Pick<CellMap, 'areaMm2'>, lab: Float64Array, bySize: Uint32Array): { count: number; largestMm2: number } {
  tell(map, lab, bySize, SAME_COLOUR_DELTA_E);
  return { count: colours.count, largestMm2: colours.largestMm2 };
}

function tell({ areaMm2 }: Pick<CellMap, 'areaMm2'>, lab: Float64Array, bySize: Uint32Array, sameDeltaE: number): void {
  lanes.hold(lab, Math.min(lab.length / 3, areaMm2.length));
  colours.start(lab, sameDeltaE);
  for (let from = 0, cells = FIRST_CELLS; from < bySize.length; from += cells, cells = Math.min(cells * 2, MOST_ASKED)) {
    colours.take(bySize, [from, Math.min(from + cells, bySize.length)], areaMm2);
  }
}

/** Of each cell that a colour is of, the colour's number. */
let numberOf = new Uint32Array(1024);

/** Of the cells asked about together the colour that each joins, the places of those that are near none, and pairs of these. */
const joined = new Uint32Array(MOST_ASKED);
const unknown = new Uint32Array(MOST_ASKED);
const newPairs = new Uint32Array(MOST_ASKED * MOST_ASKED);

/** Lets cells join the first colour that they are near. @returns how many are near none */
function joinKnown(pairs: Uint32Array, ends: Uint32Array, near: Uint8Array): number {
  let count = 0;
  for (let i = 0, pair = 0; i < ends.length; i++) {
    const end = u32(ends, i);
    while (pair < end && u8(near, pair) === 0) pair++;
    if (pair < end) joined[i] = u32(numberOf, u32(pairs, pair * 2));
    else unknown[count++] = i;
    pair = end;
  }
  return count;
}

/** Colours that are told apart. Holds its buffers, for many prints. */
class Colours {
  count = 0;
  private areaMm2 = new Float64Array(256);
  /** The cell that each colour is of, by number. */
  private cellOf = new Uint32Array(256);
  private lab: Float64Array = new Float64Array(0);
  private deltaE = SAME_COLOUR_DELTA_E;
  private within = new WithinDeltaE(SAME_COLOUR_DELTA_E);

  start(lab: Float64Array, deltaE: number): void {
    if (deltaE !== this.deltaE) this.within = new WithinDeltaE(deltaE);
    this.lab = lab;
    this.deltaE = deltaE;
    this.count = 0;
    bins.start(deltaE < LEAST_BIN_DELTA_E ? new WithinDeltaE(LEAST_BIN_DELTA_E) : this.within);
    if (numberOf.length < lab.length / 3) numberOf = new Uint32Array(lab.length);
  }

  found(lab: Float64Array): ColourArea[] {
    const { areaMm2, cellOf } = this;
    return Array.from({ length: this.count }, (_, i) => {
      const at = u32(cellOf, i) * 3;
      return { lab: [f64(lab, at), f64(lab, at + 1), f64(lab, at + 2)], areaMm2: f64(areaMm2, i) };
    });
  }

  get largestMm2(): number {
    let largest = 0;
    for (let i = 0; i < this.count; i++) largest = Math.max(largest, f64(this.areaMm2, i));
    return largest;
  }

  /** The cells [from, to) of a list, at most MOST_ASKED. */
  take(list: Uint32Array, [from, to]: readonly [number, number], areaMm2: Float64Array): void {
    const cells = list.subarray(from, to);
    for (let i = 0; i < cells.length; i++) bins.ask(i, this.lab, u32(cells, i) * 3, u32(cells, i));
    const ends = bins.find(cells.length);
    const near = lanes.within(bins.pairs, u32(ends, cells.length - 1), this.deltaE);
    this.tellNew(cells, joinKnown(bins.pairs, ends, near));
    for (let i = 0; i < cells.length; i++) {
      const colour = u32(joined, i);
      this.areaMm2[colour] = f64(this.areaMm2, colour) + f64(areaMm2, u32(cells, i));
    }
  }

  /** Cells that are near no colour of before are new ones, or near one of those before them. */
  private tellNew(cells: Uint32Array, count: number): void {
    const pairCount = this.pairNew(cells, count);
    const near = lanes.within(newPairs, pairCount, this.deltaE);
    const known = this.count;
    for (let j = 0, pair = 0; j < count; j++) {
      const place = u32(unknown, j);
      const cell = u32(cells, place);
      let best = NONE;
      for (; pair < pairCount && newPairs[pair * 2 + 1] === cell; pair++) {
        if (best !== NONE || u8(near, pair) === 0) continue;
        const number = u32(numberOf, u32(newPairs, pair * 2));
        // Of what came before in this list, only what is a colour has a number.
        if (number >= known && number < this.count && this.cellOf[number] === newPairs[pair * 2]) best = number;
      }
      joined[place] = best === NONE ? this.add(cell) : best;
    }
  }

  /** Pairs of such cells that may be near by L, the earlier first. */
  private pairNew(cells: Uint32Array, count: number): number {
    const { lab } = this;
    let pairs = 0;
    for (let j = 1; j < count; j++) {
      const cell = u32(cells, u32(unknown, j));
      const l = f64(lab, cell * 3);
      const reach = this.within.reachL(l);
      for (let i = 0; i < j; i++) {
        const other = u32(cells, u32(unknown, i));
        if (Math.abs(f64(lab, other * 3) - l) > reach) continue;
        newPairs[pairs * 2] = other;
        newPairs[pairs++ * 2 + 1] = cell;
      }
    }
    return pairs;
  }

  /** A new colour's number. */
  private add(cell: number): number {
    bins.add(this.lab, cell * 3, cell);
    numberOf[cell] = this.count;
    if (this.count === this.areaMm2.length) {
      const [areas, cells] = [new Float64Array(this.count * 2), new Uint32Array(this.count * 2)];
      areas.set(this.areaMm2);
      cells.set(this.cellOf);
      this.areaMm2 = areas;
      this.cellOf = cells;
    }
    this.areaMm2[this.count] = 0;
    this.cellOf[this.count] = cell;
    return this.count++;
  }
}

const colours = new Colours();
