import { EngineError } from '../base/error.ts';
import { BANDS } from '../colour/weights.ts';
import type { Layer } from './layers.ts';
import type { CellMap } from './types.ts';

// The module's own name for it: unbundled, hot loops would look up another module's each time.
const bandCount = BANDS;

/**
 * Lays films over all cells of a map at once. Cells that are covered by the same layers so far are
 * one group with one reflectance, so that each different beginning of a stack is computed once.
 * Holds its buffers; use one walk for many maps and stacks.
 */
export class FilmWalk {
  /** Group of each cell. */
  groupOf = new Uint32Array(256);
  /** Reflectances, group × 36. */
  reflectance = new Float64Array(256 * bandCount);
  /** Groups changed by the last layer, `changed[0 … changedCount − 1]`. */
  changed = new Uint32Array(256);
  changedCount = 0;
  private parent = new Uint32Array(256);
  private size = new Uint32Array(256);
  private child = new Uint32Array(256);
  private stamp = new Int32Array(256);
  private free = new Uint32Array(256);
  private freeCount = 0;
  private groups = 0;
  private clock = 0;

  /** Bare paper everywhere: one group, 0. */
  start(map: CellMap, paper: ArrayLike<number>): void {
    checkBands(paper.length);
    if (this.groupOf.length < map.cells) this.groupOf = new Uint32Array(map.cells * 2);
    // A layer may at most double the groups before the emptied ones are free again.
    const groups = 2 * map.cells + 1;
    if (this.size.length < groups) {
      this.reflectance = new Float64Array(2 * groups * bandCount);
      for (const name of ['parent', 'size', 'child', 'free', 'changed'] as const) {
        this[name] = new Uint32Array(2 * groups);
      }
      this.stamp = new Int32Array(2 * groups);
    }
    this.groupOf.fill(0, 0, map.cells);
    for (let band = 0; band < bandCount; band++) this.reflectance[band] = paper[band]!;
    this.size[0] = map.cells;
    this.groups = 1;
    this.freeCount = 0;
    this.changed[0] = 0;
    this.changedCount = 1;
  }

  /** One film over the cells that its bit covers. */
  lay(map: CellMap, layer: Layer): void {
    const { groupOf, size, child, stamp, changed, parent } = this;
    const { cover, words, cells } = map;
    const clock = (this.clock = (this.clock + 1) | 0);
    const mask = 1 << (layer.bit & 31);
    let made = 0;
    for (let cell = 0, at = layer.bit >> 5; cell < cells; cell++, at += words) {
      if ((cover[at]! & mask) === 0) continue;
      const group = groupOf[cell]!;
      let to: number;
      if (stamp[group] === clock) {
        to = child[group]!;
      } else {
        to = this.freeCount > 0 ? this.free[--this.freeCount]! : this.groups++;
        stamp[group] = clock;
        stamp[to] = clock - 1;
        child[group] = to;
        size[to] = 0;
        changed[made] = to;
        parent[made++] = group;
      }
      size[group]!--;
      size[to]!++;
      groupOf[cell] = to;
    }
    this.changedCount = made;
    const { r0, q } = layer.film;
    checkBands(r0.length);
    for (let i = 0; i < made; i++) {
      const group = parent[i]!;
      layFilm(this.reflectance, group * bandCount, changed[i]! * bandCount, r0, q);
      if (size[group] === 0) this.free[this.freeCount++] = group;
    }
  }
}

/** One film over one reflectance, both in `bands`: R′ = (R0 + q R) / (1 − R0 R). Source: see ink/film.ts. */
function layFilm(bands: Float64Array, from: number, to: number, r0: Float64Array, q: Float64Array): void {
  for (let band = 0; band < bandCount; band++) {
    const ground = bands[from + band]!;
    const over = r0[band]!;
    bands[to + band] = (over + q[band]! * ground) / (1 - over * ground);
  }
}

function checkBands(bands: number): void {
  if (bands !== bandCount) {
    throw new EngineError('stack.bad-bands', `A reflectance has ${bands} bands; ${bandCount} are needed.`);
  }
}
