import { f64, i32 } from '../../base/at.ts';
import type { Lab } from '../../colour/lab.ts';
import { WithinDeltaE } from '../../colour/within-delta-e.ts';
import type { CellMap } from '../../stack/types.ts';

/** One colour of a print and how much of the sheet it takes. */
export interface ColourArea {
  lab: Lab;
  areaMm2: number;
}

/** Colours closer than this count as one, ΔE00; just visible side by side (common practice, no source). */
export const SAME_COLOUR_DELTA_E = 2;

/** Shelves of lightness, one an L; what is darker or lighter lies on the first and the last. */
const SHELVES = 101;

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
  const colours = new Colours(sameDeltaE);
  const found: ColourArea[] = [];
  for (const cell of bySize) {
    const colour = colours.of(lab, cell * 3);
    const area = f64(areaMm2, cell);
    const known = found[colour];
    if (known === undefined) found.push({ lab: [f64(lab, cell * 3), f64(lab, cell * 3 + 1), f64(lab, cell * 3 + 2)], areaMm2: area });
    else known.areaMm2 += area;
  }
  return found.sort((a, b) => b.areaMm2 - a.areaMm2);
}

/** Colours that are told apart, on shelves by lightness, so that few are asked whether they are the one. */
class Colours {
  private count = 0;
  private lab = new Float64Array(3 * 64);
  /** The next colour of the same shelf, which came later; −1 for none. */
  private next = new Int32Array(64);
  private readonly first = new Int32Array(SHELVES).fill(-1);
  private readonly last = new Int32Array(SHELVES).fill(-1);
  private readonly within: WithinDeltaE;

  constructor(deltaE: number) {
    this.within = new WithinDeltaE(deltaE);
  }

  /** Number of the first colour within the difference; a new one where there is none. */
  of(lab: Float64Array, at: number): number {
    const l = f64(lab, at);
    const reach = this.within.reachL(l);
    const shelf = this.shelfOf(l);
    const least = this.shelfOf(l - reach);
    const most = this.shelfOf(l + reach);
    // From the own shelf outwards: what is found early lets most of the others be passed over.
    let best = this.firstOn(shelf, this.count, lab, at);
    for (let away = 1; shelf - away >= least || shelf + away <= most; away++) {
      if (shelf - away >= least) best = this.firstOn(shelf - away, best, lab, at);
      if (shelf + away <= most) best = this.firstOn(shelf + away, best, lab, at);
    }
    if (best === this.count) this.add(lab, at, shelf);
    return best;
  }

  /** Number of the first colour of a shelf within the difference; `before` when none comes before that. */
  private firstOn(shelf: number, before: number, lab: Float64Array, at: number): number {
    const { lab: known, next, within } = this;
    for (let colour = i32(this.first, shelf); colour >= 0 && colour < before; colour = i32(next, colour)) {
      if (within.holds(known, colour * 3, lab, at)) return colour;
    }
    return before;
  }

  private shelfOf(l: number): number {
    return Math.max(0, Math.min(SHELVES - 1, Math.floor(l)));
  }

  private add(lab: Float64Array, at: number, shelf: number): void {
    const colour = this.count++;
    if (this.next.length <= colour) this.grow();
    for (let i = 0; i < 3; i++) this.lab[colour * 3 + i] = f64(lab, at + i);
    this.next[colour] = -1;
    const last = i32(this.last, shelf);
    if (last < 0) this.first[shelf] = colour;
    else this.next[last] = colour;
    this.last[shelf] = colour;
  }

  private grow(): void {
    const lab = new Float64Array(this.lab.length * 2);
    const next = new Int32Array(this.next.length * 2);
    lab.set(this.lab);
    next.set(this.next);
    this.lab = lab;
    this.next = next;
  }
}
