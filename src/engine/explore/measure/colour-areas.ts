import { f64, i32, u32, u8 } from '../../base/at.ts';
import type { Lab } from '../../colour/lab.ts';
import { NearLanes } from '../../colour/near-lanes.ts';
import { WithinDeltaE } from '../../colour/within-delta-e.ts';
import type { CellMap } from '../../stack/types.ts';
import { ColourBins } from './colour-bins.ts';

/** One colour of a print and how much of the sheet it takes. */
export interface ColourArea {
  lab: Lab;
  areaMm2: number;
}

/** Colours closer than this count as one, ΔE00; just visible side by side (common practice, no source). */
export const SAME_COLOUR_DELTA_E = 2;

/** Cells that are asked about together: few while most are new colours, which each other must know of, then many. */
const FIRST_CELLS = 8;
const MOST_CELLS = 128;

/** No colour. */
const NONE = 0xffffffff;

const lanes = new NearLanes();
const bins = new ColourBins();

/**
 * Area by colour. Cells join, largest first, the first colour within `sameDeltaE`; a colour is
 * that of its largest cell.
 * @param lab cells × 3
 * @param bySize cells that take some of the sheet, largest first (see cellsBySize)
 * @returns largest area first
 */
export function colourAreas(
  { areaMm2 }: Pick<CellMap, 'areaMm2'>,
  lab: Float64Array,
  bySize: Uint32Array,
  sameDeltaE = SAME_COLOUR_DELTA_E,
): ColourArea[] {
  lanes.hold(lab, lab.length / 3);
  const colours = new Colours(lab, sameDeltaE);
  for (let from = 0, cells = FIRST_CELLS; from < bySize.length; from += cells, cells = Math.min(cells * 2, MOST_CELLS)) {
    colours.take(bySize, [from, Math.min(from + cells, bySize.length)], areaMm2);
  }
  return colours.found().sort((a, b) => b.areaMm2 - a.areaMm2);
}

/** Cells and the cells of colours that they may be within the difference of, two a pair, and the numbers of these colours. */
let pairs = new Uint32Array(1024);
let asked = new Uint32Array(512);
/** Of each cell that is asked about, where its pairs end. */
const ends = new Uint32Array(MOST_CELLS);

/** Colours that are told apart. */
class Colours {
  private areaMm2 = new Float64Array(256);
  /** The cell that each colour is of, by number. */
  private cellOf = new Uint32Array(256);
  private count = 0;
  private readonly lab: Float64Array;
  private readonly deltaE: number;
  private readonly within: WithinDeltaE;

  constructor(lab: Float64Array, deltaE: number) {
    this.lab = lab;
    this.deltaE = deltaE;
    this.within = new WithinDeltaE(deltaE);
    bins.start(this.within);
  }

  found(): ColourArea[] {
    const { lab, areaMm2, cellOf } = this;
    return Array.from({ length: this.count }, (_, i) => {
      const at = u32(cellOf, i) * 3;
      return { lab: [f64(lab, at), f64(lab, at + 1), f64(lab, at + 2)], areaMm2: f64(areaMm2, i) };
    });
  }

  /** The cells [from, to) of a list, at most MOST_CELLS. */
  take(list: Uint32Array, [from, to]: readonly [number, number], areaMm2: Float64Array): void {
    const known = this.count;
    let count = 0;
    for (let i = from; i < to; i++) {
      count = this.ask(u32(list, i), count);
      ends[i - from] = count;
    }
    const near = lanes.within(pairs, count, this.deltaE);
    for (let i = from, pair = 0; i < to; i++) {
      const cell = u32(list, i);
      let best = NONE;
      // Bins hold lower numbers first.
      for (; pair < u32(ends, i - from); pair++) if (best === NONE && u8(near, pair) === 1) best = u32(asked, pair);
      if (best === NONE && this.count > known) best = this.late(cell, known);
      if (best === NONE) best = this.add(cell);
      this.areaMm2[best] = f64(this.areaMm2, best) + f64(areaMm2, cell);
    }
  }

  /** Notes the colours that may be within the difference of a cell. */
  private ask(cell: number, from: number): number {
    const { lab, cellOf } = this;
    if (asked.length < from + this.count) growPairs(from + this.count);
    const { next, colour: colourOf, lab: known, shares } = bins;
    let count = from;
    const l = f64(lab, cell * 3);
    const a = f64(lab, cell * 3 + 1);
    const b = f64(lab, cell * 3 + 2);
    for (let entry = bins.entryOf(lab, cell * 3); entry >= 0; entry = i32(next, entry)) {
      const colour = u32(colourOf, entry);
      const dl = f64(known, colour * 3) - l;
      const da = f64(known, colour * 3 + 1) - a;
      const otherB = f64(known, colour * 3 + 2);
      const db = otherB - b;
      const shareAb = f64(shares, colour * 3 + (b >= 0 && otherB >= 0 ? 1 : 2));
      if (dl * dl * f64(shares, colour * 3) + (da * da + db * db) * shareAb > 1) continue;
      asked[count] = colour;
      pairs[count * 2] = u32(cellOf, colour);
      pairs[count++ * 2 + 1] = cell;
    }
    return count;
  }

  /** The first colour within the difference of those from a number on. */
  private late(cell: number, from: number): number {
    const { lab, within } = this;
    for (let entry = bins.entryOf(lab, cell * 3); entry >= 0; entry = i32(bins.next, entry)) {
      const colour = u32(bins.colour, entry);
      if (colour >= from && within.holds(bins.lab, colour * 3, lab, cell * 3)) return colour;
    }
    return NONE;
  }

  /** A new colour's number. */
  private add(cell: number): number {
    bins.add(this.lab, cell * 3);
    if (this.areaMm2.length < bins.count) {
      const [areas, cells] = [new Float64Array(bins.count * 2), new Uint32Array(bins.count * 2)];
      areas.set(this.areaMm2);
      cells.set(this.cellOf);
      this.areaMm2 = areas;
      this.cellOf = cells;
    }
    this.cellOf[this.count] = cell;
    return this.count++;
  }
}

function growPairs(wanted: number): void {
  const [before, askedBefore] = [pairs, asked];
  pairs = new Uint32Array(wanted * 4);
  pairs.set(before);
  asked = new Uint32Array(wanted * 2);
  asked.set(askedBefore);
}
