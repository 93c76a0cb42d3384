import { entryAt, f64, i32, num, u32 } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { BANDS } from '../../colour/weights.ts';
import type { FilmBands } from '../../ink/film/film.ts';
import { alikeEverywhere, filmOn, type LaidFilm } from '../../ink/film/laid-film.ts';
import { say } from '../../words/en/stack/films.ts';
import type { Layer } from '../layers.ts';
import { CellGroups } from './cell-groups.ts';
import type { CoveredCells } from './cell-groups.ts';
import type { FilmLanes } from './film-lanes.ts';

// The module's own name for it: unbundled, hot loops would look up another module's each time.
const bandCount = BANDS;

/**
 * Lays films over all cells of a map at once, first down first. Cells that are covered by the same
 * layers so far are one group with one reflectance, so that each different beginning of a stack is
 * computed once. Holds its buffers; use one walk for many maps and stacks.
 */
export class FilmWalk {
  /** Which cells share a reflectance. */
  readonly groups = new CellGroups();
  /** Reflectances, group × 36. */
  reflectance: Float64Array = new Float64Array(0);
  /** By group: place in `laid` of its topmost film; −1 for bare paper. */
  top = new Int32Array(0);
  /** Films laid so far. */
  readonly laid: LaidFilm[] = [];
  private readonly lanes: FilmLanes | null;

  /** @param lanes that keep the reflectances and lay films over many at once; left out, there are none */
  constructor(lanes: FilmLanes | null = null) {
    this.lanes = lanes;
  }

  /**
   * Bare paper everywhere: one group, 0.
   * @throws EngineError 'stack.bad-bands'
   */
  start(map: CoveredCells, paper: ArrayLike<number>): void {
    checkBands(paper.length);
    this.groups.start(map);
    const values = this.groups.capacity * bandCount;
    if (this.reflectance.length < values) this.reflectance = this.lanes?.fitGrounds(values) ?? new Float64Array(values);
    if (this.top.length < this.groups.capacity) this.top = new Int32Array(this.groups.capacity);
    this.top[0] = -1;
    this.laid.length = 0;
    for (let band = 0; band < bandCount; band++) this.reflectance[band] = num(paper, band);
  }

  /**
   * One film over the cells that its bit covers.
   * @throws EngineError 'stack.bad-bands'
   */
  lay(layer: Layer): void {
    checkBands(layer.film.r0.length);
    this.groups.split(layer.bit);
    const { made, from, madeCount } = this.groups;
    const done = alikeEverywhere(layer.laid) && this.lanes?.lay('grounds', layer.film, this.groups) === true;
    for (let i = done ? madeCount : 0; i < madeCount; i++) {
      layFilm(this.reflectance, u32(from, i) * bandCount, u32(made, i) * bandCount, this.on(u32(from, i), layer.laid));
    }
    for (let i = 0; i < madeCount; i++) this.top[u32(made, i)] = this.laid.length;
    this.laid.push(layer.laid);
  }

  private on(group: number, film: LaidFilm): FilmBands {
    const top = i32(this.top, group);
    return filmOn(film, top < 0 ? null : entryAt(this.laid, top));
  }
}

/** @throws EngineError 'stack.bad-bands' */
export function checkBands(bands: number): void {
  if (bands !== bandCount) {
    throw new EngineError('stack.bad-bands', say.reflectanceHasBandsAre(bands, bandCount));
  }
}

/** One film over one reflectance: R′ = (R0 + q R) / (1 + back R). Source: see ink/film.ts. */
function layFilm(bands: Float64Array, from: number, to: number, { r0, q, back }: FilmBands): void {
  for (let band = 0; band < bandCount; band++) {
    const ground = f64(bands, from + band);
    bands[to + band] = (f64(r0, band) + f64(q, band) * ground) / (1 + f64(back, band) * ground);
  }
}
