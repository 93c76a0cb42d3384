import { f64, i32, num, u32 } from '../../base/at.ts';
import { DeltaELanes } from '../../colour/delta-e-lanes.ts';
import type { Lab } from '../../colour/lab.ts';
import { INSIDE, UNSURE, WithinDeltaE } from '../../colour/within-delta-e.ts';
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

const lanes = new DeltaELanes();
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

/** Cells and colours' cells that bounds do not tell apart, two a pair, and the numbers of these colours. */
let pairs = new Uint32Array(1024);
let asked = new Uint32Array(512);
/** Of each cell that is asked about the first colour that is sure, and where its pairs end. */
const sure = new Uint32Array(MOST_CELLS);
const ends = new Uint32Array(MOST_CELLS);

/** Colours that are told apart. */
class Colours {
  private areaMm2 = new Float64Array(256);
  /** The cell that each colour is of, by number. */
  private readonly cells: number[] = [];
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
    const { lab, areaMm2 } = this;
    return this.cells.map((cell, i) => ({
      lab: [f64(lab, cell * 3), f64(lab, cell * 3 + 1), f64(lab, cell * 3 + 2)],
      areaMm2: f64(areaMm2, i),
    }));
  }

  /** The cells [from, to) of a list, at most MOST_CELLS. */
  take(list: Uint32Array, [from, to]: readonly [number, number], areaMm2: Float64Array): void {
    const known = this.cells.length;
    let count = 0;
    for (let i = from; i < to; i++) {
      count = this.ask(u32(list, i), i - from, count);
      ends[i - from] = count;
    }
    const deltaE = lanes.differences(pairs, count);
    for (let i = from, pair = 0; i < to; i++) {
      const cell = u32(list, i);
      let best = u32(sure, i - from);
      for (; pair < u32(ends, i - from); pair++) {
        if (u32(asked, pair) < best && f64(deltaE, pair) <= this.deltaE) best = u32(asked, pair);
      }
      if (best === NONE && this.cells.length > known) best = this.late(cell, known);
      if (best === NONE) best = this.add(cell);
      this.areaMm2[best] = f64(this.areaMm2, best) + f64(areaMm2, cell);
    }
  }

  /** Notes the first colour that is the cell's for sure, and those before it of which that is not known. */
  private ask(cell: number, i: number, from: number): number {
    const { lab, within } = this;
    if (asked.length < from + this.cells.length) growPairs(from + this.cells.length);
    const { next, colour: colourOf, lab: known, reach } = bins;
    let count = from;
    const a = f64(lab, cell * 3 + 1);
    const b = f64(lab, cell * 3 + 2);
    sure[i] = NONE;
    for (let entry = bins.entryOf(lab, cell * 3); entry >= 0; entry = i32(next, entry)) {
      const colour = u32(colourOf, entry);
      const da = f64(known, colour * 3 + 1) - a;
      const otherB = f64(known, colour * 3 + 2);
      const db = otherB - b;
      if (da * da + db * db > f64(reach, colour * 2 + (b >= 0 && otherB >= 0 ? 0 : 1))) continue;
      const judged = within.judge(bins.lab, colour * 3, lab, cell * 3);
      if (judged === INSIDE) {
        sure[i] = colour;
        break;
      }
      if (judged === UNSURE) {
        asked[count] = colour;
        pairs[count * 2] = num(this.cells, colour);
        pairs[count++ * 2 + 1] = cell;
      }
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
      const areas = new Float64Array(bins.count * 2);
      areas.set(this.areaMm2);
      this.areaMm2 = areas;
    }
    return this.cells.push(cell) - 1;
  }
}

function growPairs(wanted: number): void {
  const [before, askedBefore] = [pairs, asked];
  pairs = new Uint32Array(wanted * 4);
  pairs.set(before);
  asked = new Uint32Array(wanted * 2);
  asked.set(askedBefore);
}
