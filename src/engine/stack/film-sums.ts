import { entryAt, f64, u32 } from '../base/at.ts';
import { BANDS } from '../colour/weights.ts';
import type { FilmBands } from '../ink/film/film.ts';
import { CellGroups } from './cell-groups.ts';
import type { CoveredCells } from './cell-groups.ts';
import { CellPiles } from './cell-piles.ts';
import { FilmWalk, checkBands } from './film-walk.ts';
import type { Layer } from './layers.ts';

// The module's own name for it: unbundled, hot loops would look up another module's each time.
const bandCount = BANDS;

/**
 * Three weighted sums over the bands of every cell's reflectance under a whole stack.
 *
 * The stack is cut in two. Of its lower half each different pile gives one reflectance; of its upper
 * half each different pile is one film of its own, (a + b R) / (1 − c R) per band (films compose as
 * their 2 × 2 matrices do). A cell is then one step from a lower to an upper pile, and there are far
 * fewer piles than cells. Holds its buffers, for many maps and stacks.
 */
export class FilmSums {
  /** cells × 3, longer than that. */
  sums = new Float64Array(0);
  private readonly lowerPiles = new CellPiles();
  private readonly lower = new FilmWalk();
  private readonly upperPiles = new CellPiles();
  private readonly upper = new CellGroups();
  /** Films of the upper piles, group × 36 × (a, b, c). */
  private films = new Float64Array(0);
  private cellsByPile = new Uint32Array(0);
  private pileEnd = new Uint32Array(0);

  /**
   * @param layers first down first
   * @param paper 36 bands
   * @param weights 36 × 3, [3 · band + sum]
   * @returns `sums`
   * @throws EngineError 'stack.bad-bands'
   */
  compute(map: CoveredCells, layers: readonly Layer[], paper: ArrayLike<number>, weights: Float64Array): Float64Array {
    const half = (layers.length + 1) >> 1;
    const { lowerPiles, lower, upperPiles, upper } = this;
    lowerPiles.gather(map, layers, 0, half);
    lower.start(lowerPiles, paper);
    for (let i = 0; i < half; i++) lower.lay(lowerPiles, entryAt(layers, i));
    upperPiles.gather(map, layers, half, layers.length);
    this.startUpper();
    for (let i = half; i < layers.length; i++) this.layUpper(entryAt(layers, i));

    if (this.sums.length < map.cells * 3) this.sums = new Float64Array(map.cells * 6);
    this.sortCells(map.cells);
    const { cellsByPile } = this;
    for (let i = 0; i < map.cells; i++) {
      const cell = u32(cellsByPile, i);
      const ground = u32(lower.groups.of, u32(lowerPiles.of, cell)) * bandCount;
      const film = u32(upper.of, u32(upperPiles.of, cell)) * 3 * bandCount;
      this.sumCell(cell, ground, film, weights);
    }
    return this.sums;
  }

  /** Cells one upper pile after another, so that its film stays in the processor's nearest memory. */
  private sortCells(cells: number): void {
    const { of, cells: piles } = this.upperPiles;
    if (this.cellsByPile.length < cells) {
      this.cellsByPile = new Uint32Array(cells * 2);
      this.pileEnd = new Uint32Array(cells * 2 + 1);
    }
    const { cellsByPile, pileEnd } = this;
    pileEnd.fill(0, 0, piles + 1);
    for (let cell = 0; cell < cells; cell++) pileEnd[u32(of, cell) + 1] = u32(pileEnd, u32(of, cell) + 1) + 1;
    for (let pile = 1; pile < piles; pile++) pileEnd[pile] = u32(pileEnd, pile) + u32(pileEnd, pile - 1);
    for (let cell = 0; cell < cells; cell++) {
      const at = u32(pileEnd, u32(of, cell));
      cellsByPile[at] = cell;
      pileEnd[u32(of, cell)] = at + 1;
    }
  }

  private startUpper(): void {
    this.upper.start(this.upperPiles);
    const values = this.upper.capacity * 3 * bandCount;
    if (this.films.length < values) this.films = new Float64Array(values);
    // No film: R′ = R.
    for (let i = 0; i < 3 * bandCount; i += 3) {
      this.films[i] = 0;
      this.films[i + 1] = 1;
      this.films[i + 2] = 0;
    }
  }

  private layUpper(layer: Layer): void {
    checkBands(layer.film.r0.length);
    this.upper.split(this.upperPiles, layer.bit);
    const { made, from, madeCount } = this.upper;
    const stride = 3 * bandCount;
    for (let i = 0; i < madeCount; i++) layOnPile(this.films, u32(from, i) * stride, u32(made, i) * stride, layer.film);
  }

  /**
   * The three weighted sums of a cell.
   * @param ground where its reflectance under the upper pile begins
   * @param film where the film of its upper pile begins
   */
  private sumCell(cell: number, ground: number, film: number, weights: Float64Array): void {
    const { films, sums } = this;
    const { reflectance } = this.lower;
    let x = 0;
    let y = 0;
    let z = 0;
    for (let i = 0; i < 3 * bandCount; i += 3) {
      const under = f64(reflectance, ground++);
      const value = (f64(films, film + i) + f64(films, film + i + 1) * under) / (1 - f64(films, film + i + 2) * under);
      x += value * f64(weights, i);
      y += value * f64(weights, i + 1);
      z += value * f64(weights, i + 2);
    }
    sums[cell * 3] = x;
    sums[cell * 3 + 1] = y;
    sums[cell * 3 + 2] = z;
  }
}

/** One film on a pile: [[q, r0], [−r0, 1]] · [[b, a], [−c, 1]], scaled so that the last entry is 1. */
function layOnPile(piles: Float64Array, from: number, to: number, { r0, q }: FilmBands): void {
  for (let band = 0; band < bandCount; band++, from += 3, to += 3) {
    const a = f64(piles, from);
    const b = f64(piles, from + 1);
    const c = f64(piles, from + 2);
    const over = f64(r0, band);
    const through = f64(q, band);
    const scale = 1 / (1 - over * a);
    piles[to] = (over + through * a) * scale;
    piles[to + 1] = (through * b - over * c) * scale;
    piles[to + 2] = (c + over * b) * scale;
  }
}
