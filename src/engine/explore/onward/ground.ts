import { entryAt, f64, u32 } from '../../base/at.ts';
import { deltaE2000At } from '../../colour/delta-e.ts';
import { labFromXyzD50 } from '../../colour/lab.ts';
import { BANDS, WEIGHTS_D50 } from '../../colour/weights.ts';
import { filmOn, type LaidFilm } from '../../ink/film/laid-film.ts';
import { cellLab } from '../../stack/appearance.ts';
import { buildCellMap } from '../../stack/cell-map.ts';
import { laidPiles } from '../../stack/films/laid-piles.ts';
import { type Layer, stackLayers } from '../../stack/layers.ts';
import type { SpanCache } from '../../stack/screen-spans.ts';
import type { CellMap, PlacedSpans, Pull, RowGrid } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { labAtPoints, pointCells } from '../look/points.ts';
import { edgeMeasure } from '../measure/edges.ts';
import type { EdgeLengths } from '../measure/lines/edge-tally.ts';
import { edgeLengths } from '../measure/map-figures.ts';
import { overlay } from './overlay.ts';

/** As typed lists, which the loop over all cells reads. */
const WEIGHTS = {
  x: Float64Array.from(WEIGHTS_D50.x),
  y: Float64Array.from(WEIGHTS_D50.y),
  z: Float64Array.from(WEIGHTS_D50.z),
};

/** What a print is like beside the sheet that it begins with. */
export interface OnwardMeasures {
  /** Mean ΔE00 over the sheet from what is there now. */
  change: number;
  /** Contrast of edges, ΔE/mm. */
  edgeContrast: number;
  /** Mean ΔE00 over the sheet from the print that is aimed at; null without one. */
  distance: number | null;
}

/** What a painted sheet knows of its cells. */
interface Cells {
  map: CellMap;
  /** cells × 36. */
  reflectance: Float64Array;
  /** Topmost film; null for bare paper. */
  tops: readonly (LaidFilm | null)[];
  /** cells × 3: what shows, what showed before the first further pull, what is aimed at. */
  lab: Float64Array;
  before: Float64Array;
  aim: Float64Array | null;
}

/** A sheet as it stands, painted once: further pulls are painted over it. */
export class Ground {
  readonly cells: Cells;

  constructor(cells: Cells) {
    this.cells = cells;
  }

  get measures(): OnwardMeasures {
    const { map, lab, before, aim } = this.cells;
    const sheet = map.widthMm * map.heightMm;
    const sums = { change: 0, distance: 0 };
    for (let cell = 0; cell < map.cells; cell++) addDifference(sums, this.cells, { cell, area: f64(map.areaMm2, cell), lab, at: cell });
    return {
      change: before === lab ? 0 : sums.change / sheet,
      edgeContrast: edgeMeasure(map, lab).contrast / sheet,
      distance: aim === null ? null : sums.distance / sheet,
    };
  }
}

/** Adds what a cell of the ground differs by, showing a Lab, from what showed before and from the aim. */
function addDifference(
  sums: { change: number; distance: number },
  { before, aim }: Cells,
  { cell, area, lab, at }: { cell: number; area: number; lab: Float64Array; at: number },
): void {
  sums.change += area * deltaE2000At(lab, at * 3, before, cell * 3);
  if (aim !== null) sums.distance += area * deltaE2000At(lab, at * 3, aim, cell * 3);
}

/**
 * Paints a sheet with what is down on it.
 * @param pulls first down first; none for bare paper
 * @param towards the print that is aimed at
 * @throws what stackLayers and SpanCache throw
 */
export function groundOf(
  pulls: readonly Pull[],
  studio: Studio,
  { spans, grid, towards }: { spans: SpanCache; grid: RowGrid; towards?: readonly Pull[] | undefined },
): Ground {
  // Both stacks in one map; a pull of the aim may have the id of one that is down.
  const aimed = (towards ?? []).map((pull) => ({ ...pull, id: `aim ${pull.id}` }));
  const mapStack = { pulls: [...pulls, ...aimed] };
  const map = buildCellMap(spans.place(mapStack, grid), grid);
  const paper = studio.paper.reflectance;
  const layers: Layer[] = stackLayers({ pulls }, studio, mapStack);
  const piles = laidPiles(map, layers, paper);
  const reflectance = new Float64Array(map.cells * BANDS);
  const tops: (LaidFilm | null)[] = [];
  for (let cell = 0; cell < map.cells; cell++) {
    const pile = u32(piles.pileOf, cell);
    reflectance.set(piles.reflectance.subarray(pile * BANDS, (pile + 1) * BANDS), cell * BANDS);
    tops.push(entryAt(piles.tops, pile));
  }
  const lab = cellLab(map, layers, paper);
  const aim = towards === undefined ? null : cellLab(map, stackLayers({ pulls: aimed }, studio, mapStack), paper);
  return new Ground({ map, reflectance, tops, lab, before: lab, aim });
}

/** A sheet as it stands with one placed screen over it, in any ink: what its film does not reach is summed once. */
export class Under {
  private readonly ground: Ground;
  readonly map: CellMap;
  private readonly below: Uint32Array;
  /** Cells that the screen covers. */
  private readonly covered: Uint32Array;
  private readonly edges: EdgeLengths;
  private readonly outside: { change: number; distance: number; contrast: number };
  private readonly points: Uint32Array;
  private readonly lab: Float64Array;

  constructor(ground: Ground, placed: PlacedSpans) {
    this.ground = ground;
    const { map, below } = overlay(ground.cells.map, placed);
    this.map = map;
    this.below = below;
    const isCovered = (cell: number): boolean => map.cover[cell] === 1;
    const cells = Array.from({ length: map.cells }, (_, cell) => cell);
    this.covered = Uint32Array.from(cells.filter(isCovered));
    this.lab = new Float64Array(map.cells * 3);
    const sums = { change: 0, distance: 0 };
    for (const cell of cells) {
      const under = u32(below, cell);
      this.lab.set(ground.cells.lab.subarray(under * 3, under * 3 + 3), cell * 3);
      if (!isCovered(cell)) addDifference(sums, ground.cells, { cell: under, area: f64(map.areaMm2, cell), lab: this.lab, at: cell });
    }
    const all = edgeLengths(map);
    const [reached, rest] = parted(all, (a, b) => isCovered(a) || isCovered(b));
    this.edges = reached;
    this.outside = { ...sums, contrast: edgeMeasure(map, this.lab, rest).contrast };
    this.points = pointCells(map);
  }

  /** Whether the screen prints nothing on the sheet. */
  get nothing(): boolean {
    return this.covered.length === 0;
  }

  /**
   * Lays a film; what is shown and measured from now on is with it.
   * @param out receives what the covered cells reflect, cells × 36; left out where nothing follows
   */
  lay(film: LaidFilm, out?: Float64Array): void {
    const { reflectance, tops } = this.ground.cells;
    for (const cell of this.covered) {
      const under = u32(this.below, cell);
      const { r0, q, back } = filmOn(film, entryAt(tops, under));
      let [x, y, z] = [0, 0, 0];
      for (let band = 0; band < BANDS; band++) {
        const ground = f64(reflectance, under * BANDS + band);
        const light = (f64(r0, band) + f64(q, band) * ground) / (1 + f64(back, band) * ground);
        if (out !== undefined) out[cell * BANDS + band] = light;
        x += light * f64(WEIGHTS.x, band);
        y += light * f64(WEIGHTS.y, band);
        z += light * f64(WEIGHTS.z, band);
      }
      this.lab.set(labFromXyzD50(x, y, z), cell * 3);
    }
  }

  /** What the print with the film is like. */
  get measures(): OnwardMeasures {
    const { map, below, lab, outside } = this;
    const { cells } = this.ground;
    const sheet = map.widthMm * map.heightMm;
    const sums = { change: outside.change, distance: outside.distance };
    for (const cell of this.covered) addDifference(sums, cells, { cell: u32(below, cell), area: f64(map.areaMm2, cell), lab, at: cell });
    return {
      change: sums.change / sheet,
      edgeContrast: (outside.contrast + edgeMeasure(map, lab, this.edges).contrast) / sheet,
      distance: cells.aim === null ? null : sums.distance / sheet,
    };
  }

  /** What shows at the points at which pictures are compared. */
  get pointLab(): Float64Array {
    return labAtPoints(this.points, this.lab);
  }

  /** The sheet with the film on it, for further pulls. */
  with(film: LaidFilm): Ground {
    const { cells } = this.ground;
    // Of every print that is tried it would be twenty megabytes at two hundred pulls.
    const reflectance = new Float64Array(this.map.cells * BANDS);
    this.below.forEach((under, cell) => reflectance.set(cells.reflectance.subarray(under * BANDS, (under + 1) * BANDS), cell * BANDS));
    this.lay(film, reflectance);
    const tops = Array.from(this.below, (under, cell) => (this.map.cover[cell] === 1 ? film : entryAt(cells.tops, under)));
    return new Ground({
      map: this.map,
      reflectance,
      tops,
      lab: this.lab.slice(),
      before: this.spread(cells.before),
      aim: cells.aim === null ? null : this.spread(cells.aim),
    });
  }

  /** Colours of the cells below as those of the map's. */
  private spread(lab: Float64Array): Float64Array {
    const out = new Float64Array(this.map.cells * 3);
    this.below.forEach((under, cell) => out.set(lab.subarray(under * 3, under * 3 + 3), cell * 3));
    return out;
  }
}

/** Edges that a question is true of, and all others. */
function parted({ cells, lengthMm }: EdgeLengths, isOf: (a: number, b: number) => boolean): [EdgeLengths, EdgeLengths] {
  const all = lengthMm.length;
  const sides = new Uint8Array(all);
  let yes = 0;
  for (let i = 0; i < all; i++) {
    if (!isOf(u32(cells, i * 2), u32(cells, i * 2 + 1))) continue;
    sides[i] = 1;
    yes++;
  }
  const some = (side: number, count: number): EdgeLengths => {
    const out = { cells: new Uint32Array(count * 2), lengthMm: new Float64Array(count) };
    for (let i = 0, at = 0; i < all; i++) {
      if (sides[i] !== side) continue;
      out.cells[at * 2] = u32(cells, i * 2);
      out.cells[at * 2 + 1] = u32(cells, i * 2 + 1);
      out.lengthMm[at++] = f64(lengthMm, i);
    }
    return out;
  };
  return [some(1, yes), some(0, all - yes)];
}
