import { entryAt, f64, i32, num, u32 } from '../../base/at.ts';
import { deltaE2000At } from '../../colour/delta-e.ts';
import { labFromXyzD50 } from '../../colour/lab.ts';
import { BANDS, WEIGHTS_D50 } from '../../colour/weights.ts';
import { filmFactor } from '../../ink/film/film-factor.ts';
import type { FilmBands } from '../../ink/film/film.ts';
import { filmOn, type LaidFilm, laidFilm } from '../../ink/film/laid-film.ts';
import type { Printing } from '../../ink/film/printing.ts';
import type { Ink } from '../../ink/types.ts';
import { cellLab } from '../../stack/appearance.ts';
import type { LaidPiles } from '../../stack/films/laid-piles.ts';
import type { Layer } from '../../stack/layers.ts';
import type { CellMap } from '../../stack/types.ts';
import { labAtPoints } from '../look/points.ts';
import { edgeMeasure } from '../measure/edges.ts';
import type { MapFigures } from '../measure/lines/figure-room.ts';
import type { VeilArea } from './veil-areas.ts';

/** Colours that differ by less in L have no lightness order to keep. */
const ORDERED_L = 2;
/** A lightness order is kept when so much of a difference in L is left, just visible. */
const KEPT_L = 1;

/** A map that holds a stack, with all that is worked out of it once. */
export interface StackMap {
  map: CellMap;
  figures: MapFigures;
  layers: readonly Layer[];
  paper: ArrayLike<number>;
  /** What each cell shows without a veil, and the films that lead there. */
  lab: Float64Array;
  piles: LaidPiles;
  /** The largest colours, and which of them each cell shows; −1 for none. */
  colours: readonly { lab: readonly number[] }[];
  colourOf: Int32Array;
  /** Cell at each of the points. */
  points: Uint32Array;
}

/** What all films of a studio share, and what a further stroke adds. */
export interface Printed extends Printing {
  strokeGain: number;
}

/**
 * An area that veils are tried on, with the map of the stack and it. What lies below a last veil is worked
 * out once for all inks, and edges that no veil reaches are summed once.
 */
export class Ground {
  readonly area: VeilArea;
  readonly parts: StackMap;
  private readonly bit: number;
  private readonly printed: Printed;
  /** For each cell under the veil, which of the different colours below it has; −1 outside. */
  private readonly below: Int32Array;
  /** Reflectances of these colours, 36 bands each. */
  private readonly reflectance: Float64Array;
  /** The film on top of each; null for bare paper. */
  private readonly tops: readonly (LaidFilm | null)[];
  private readonly colours: Float64Array;
  /** Edges that a veil may change, by their index, the longest first; the contrast of all others. */
  private readonly edges: Uint32Array;
  private readonly outside: number;

  /** @param bit of the map's cells that the veil covers */
  constructor(area: VeilArea, parts: StackMap, { bit, printed }: { bit: number; printed: Printed }) {
    this.area = area;
    this.parts = parts;
    this.bit = bit;
    this.printed = printed;
    const { map, piles } = parts;
    const covered = (cell: number): boolean => (u32(map.cover, cell * map.words + (bit >> 5)) & (1 << (bit & 31))) !== 0;
    const known = new Map<number, number>();
    this.below = Int32Array.from({ length: map.cells }, (_, cell) => {
      if (!covered(cell)) return -1;
      const pile = u32(piles.pileOf, cell);
      const at = known.get(pile) ?? known.size;
      known.set(pile, at);
      return at;
    });
    this.reflectance = new Float64Array(known.size * BANDS);
    this.colours = new Float64Array(known.size * 3);
    this.tops = Array.from(known.keys(), (pile) => entryAt(piles.tops, pile));
    for (const [pile, at] of known) this.reflectance.set(piles.reflectance.subarray(pile * BANDS, (pile + 1) * BANDS), at * BANDS);
    const { cells, lengthMm } = parts.figures.edges;
    const reached: number[] = [];
    const rest: number[] = [];
    for (let i = 0; i < lengthMm.length; i++) {
      (i32(this.below, u32(cells, i * 2)) >= 0 || i32(this.below, u32(cells, i * 2 + 1)) >= 0 ? reached : rest).push(i);
    }
    this.edges = Uint32Array.from(reached.sort((a, b) => f64(lengthMm, b) - f64(lengthMm, a) || a - b));
    const picked = {
      cells: Uint32Array.from(rest.flatMap((i) => [u32(cells, i * 2), u32(cells, i * 2 + 1)])),
      lengthMm: Float64Array.from(rest, (i) => f64(lengthMm, i)),
    };
    this.outside = edgeMeasure(map, parts.lab, picked).contrast;
  }

  /** Contrast of the edges that a veil here may change, as they are without one, ΔE·mm. */
  get reach(): number {
    return edgeMeasure(this.parts.map, this.parts.lab, this.parts.figures.edges).contrast - this.outside;
  }

  /** Lab of every cell with a veil in an ink at a place in the stack. */
  with(ink: Ink, at: number): Float64Array {
    const { map, layers, paper, lab } = this.parts;
    const laid = laidFilm(ink, filmFactor(ink, this.area.screen.mesh, 1, this.printed.strokeGain), this.printed);
    if (at < layers.length) {
      const veil: Layer = { bit: this.bit, film: laid.onPaper, laid };
      return cellLab(map, [...layers.slice(0, at), veil, ...layers.slice(at)], paper);
    }
    this.lay(laid);
    const shown = lab.slice();
    for (let cell = 0; cell < map.cells; cell++) {
      const from = i32(this.below, cell) * 3;
      if (from >= 0) for (let i = 0; i < 3; i++) shown[cell * 3 + i] = f64(this.colours, from + i);
    }
    return shown;
  }

  /** The colours below under a film. */
  private lay(laid: LaidFilm): void {
    const { reflectance, colours } = this;
    for (let at = 0; at * BANDS < reflectance.length; at++) {
      const { r0, q, back }: FilmBands = filmOn(laid, entryAt(this.tops, at));
      let [x, y, z] = [0, 0, 0];
      for (let band = 0; band < BANDS; band++) {
        const ground = f64(reflectance, at * BANDS + band);
        const light = (f64(r0, band) + f64(q, band) * ground) / (1 + f64(back, band) * ground);
        x += light * num(WEIGHTS_D50.x, band);
        y += light * num(WEIGHTS_D50.y, band);
        z += light * num(WEIGHTS_D50.z, band);
      }
      colours.set(labFromXyzD50(x, y, z), at * 3);
    }
  }

  /**
   * Contrast of the edges of what is shown.
   * @param last whether the veil lies over all, so that nothing changes outside it
   * @param most ΔE/mm
   * @returns ΔE/mm; null when it is more than `most`
   */
  contrast(shown: Float64Array, last: boolean, most: number): number | null {
    const { map, figures } = this.parts;
    const { edges } = figures;
    const sheet = map.widthMm * map.heightMm;
    if (!last) {
      const found = edgeMeasure(map, shown, edges).contrast / sheet;
      return found > most ? null : found;
    }
    let sum = this.outside;
    for (const i of this.edges) {
      const contrast = deltaE2000At(shown, u32(edges.cells, i * 2) * 3, shown, u32(edges.cells, i * 2 + 1) * 3);
      if (contrast >= 0.01) sum += f64(edges.lengthMm, i) * contrast;
      if (sum > most * sheet) return null;
    }
    return sum / sheet;
  }

  /** Whether the large colours, each in the mean over all that it took before the veil, keep their order of L. */
  keepsOrder(lab: Float64Array): boolean {
    const { map, colourOf, colours } = this.parts;
    const area = new Float64Array(colours.length);
    const sum = new Float64Array(colours.length);
    for (let cell = 0; cell < map.cells; cell++) {
      const colour = i32(colourOf, cell);
      if (colour < 0) continue;
      area[colour] = f64(area, colour) + f64(map.areaMm2, cell);
      sum[colour] = f64(sum, colour) + f64(map.areaMm2, cell) * f64(lab, cell * 3);
    }
    for (let a = 0; a < colours.length; a++) {
      for (let b = 0; b < colours.length; b++) {
        if (!(num(entryAt(colours, a).lab, 0) - num(entryAt(colours, b).lab, 0) >= ORDERED_L)) continue;
        if (f64(area, a) > 0 && f64(area, b) > 0 && f64(sum, a) / f64(area, a) - f64(sum, b) / f64(area, b) < KEPT_L) return false;
      }
    }
    return true;
  }

  /** What is shown at the points at which pictures are compared. */
  pointLab(lab: Float64Array): Float64Array {
    return labAtPoints(this.parts.points, lab);
  }

  /** Share of the printable part that the veil covers, 0–1. */
  share(printableMm2: number): number {
    const { map } = this.parts;
    let covered = 0;
    for (let cell = 0; cell < map.cells; cell++) if (i32(this.below, cell) >= 0) covered += f64(map.areaMm2, cell);
    return covered / Math.max(1e-9, printableMm2);
  }
}
