import { entryAt, f64, i32, u32 } from '../../base/at.ts';
import { BANDS } from '../../colour/weights.ts';
import type { FilmBands } from '../../ink/film/film.ts';
import { alikeEverywhere, filmOn, type LaidFilm } from '../../ink/film/laid-film.ts';
import type { Layer } from '../layers.ts';
import { CellGroups } from './cell-groups.ts';
import type { CoveredCells } from './cell-groups.ts';
import { CellPiles } from './cell-piles.ts';
import { CELLS_AT_ONCE, FilmLanes } from './film-lanes.ts';
import { FilmWalk, checkBands } from './film-walk.ts';

// The module's own name for it: unbundled, hot loops would look up another module's each time.
const bandCount = BANDS;
/** Inks below that upper piles can be told apart by: a bit each, and one for all others. */
const MOST_KINDS = 31;

/**
 * Three weighted sums over the bands of every cell's reflectance under a whole stack.
 *
 * The stack is cut in two. Of its lower half each different pile gives one reflectance; of its upper
 * half each different pile is one film of its own, (a + b R) / (1 − c R) per band (films compose as
 * their 2 × 2 matrices do). A cell is then one step from a lower to an upper pile, and there are far
 * fewer piles than cells. Where films are thinner on films, upper piles differ by what they lie on too. Holds its buffers, for many maps and stacks.
 */
export class FilmSums {
  /** cells × 3, longer than that. */
  sums = new Float64Array(0);
  /** Reflectances of the lower piles and films of the upper ones, group × (36 a, 36 b, 36 c). */
  private readonly lanes: FilmLanes;
  private readonly lowerPiles = new CellPiles();
  private readonly lower: FilmWalk;
  private readonly upperPiles = new CellPiles();
  private readonly upper = new CellGroups();
  /** The topmost film of each group of upper piles, or what it lies on; null for the paper. */
  private readonly tops: (LaidFilm | null)[] = [];
  /** By cell: the kind of its lower pile's topmost film, as a bit; 0 for the paper. */
  private kinds = new Uint32Array(0);
  private cellsByPile = new Uint32Array(0);
  private pileEnd = new Uint32Array(0);

  /** @param plain without lanes: see FilmLanes */
  constructor(plain = false) {
    this.lanes = new FilmLanes(plain);
    this.lower = new FilmWalk(this.lanes);
  }

  /**
   * @param layers first down first
   * @param paper 36 bands
   * @param weights 36 × 3, [3 · band + sum]
   * @returns `sums`
   * @throws EngineError 'stack.bad-bands'
   */
  compute(map: CoveredCells, layers: readonly Layer[], paper: ArrayLike<number>, weights: Float64Array): Float64Array {
    const { lowerPiles, lower, upperPiles, upper } = this;
    const inks = inksBelow(layers);
    const half = inks.length > MOST_KINDS ? layers.length : (layers.length + 1) >> 1;
    lowerPiles.gather(map, layers, [0, half]);
    lower.start(lowerPiles, paper);
    for (let i = 0; i < half; i++) lower.lay(entryAt(layers, i));
    const trapped = layers.some(({ laid }, i) => i >= half && !alikeEverywhere(laid));
    upperPiles.gather(map, layers, [half, layers.length], trapped ? this.kindsOf(map.cells, inks) : undefined);
    this.startUpper();
    if (trapped) this.tellApart(map.words * 32, inks);
    for (let i = half; i < layers.length; i++) this.layUpper(entryAt(layers, i));

    if (this.sums.length < map.cells * 3) this.sums = new Float64Array(map.cells * 6);
    this.sortCells(map.cells);
    const { cellsByPile, lanes } = this;
    for (let from = 0; from < map.cells; from += CELLS_AT_ONCE) {
      const to = Math.min(from + CELLS_AT_ONCE, map.cells);
      for (let i = from; i < to; i++) {
        const cell = u32(cellsByPile, i);
        const ground = u32(lower.groups.of, u32(lowerPiles.of, cell)) * bandCount;
        lanes.note(i - from, ground, u32(upper.of, u32(upperPiles.of, cell)) * 3 * bandCount);
      }
      lanes.sum(cellsByPile.subarray(from, to), weights, this.sums);
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

  /** Of each cell, what its upper pile lies on: bit 1 + k for the k-th ink, bit 0 for any other, none for the paper. */
  private kindsOf(cells: number, inks: readonly string[]): Uint32Array {
    const { lower, lowerPiles } = this;
    if (this.kinds.length < cells) this.kinds = new Uint32Array(cells * 2);
    const kindOf = lower.laid.map(({ ink }) => 1 << (1 + inks.indexOf(ink)));
    for (let cell = 0; cell < cells; cell++) {
      const top = i32(lower.top, u32(lower.groups.of, u32(lowerPiles.of, cell)));
      this.kinds[cell] = top < 0 ? 0 : (kindOf[top] ?? 0);
    }
    return this.kinds;
  }

  /** Parts the upper piles by what they lie on. */
  private tellApart(firstBit: number, inks: readonly string[]): void {
    const { lower, upper, tops } = this;
    for (let kind = 0; kind <= inks.length; kind++) {
      const below = lower.laid.find(({ ink }) => inks.indexOf(ink) + 1 === kind);
      if (below === undefined) continue;
      upper.split(firstBit + kind);
      for (let i = 0; i < upper.madeCount; i++) {
        this.noFilm(u32(upper.made, i) * 3 * bandCount);
        tops[u32(upper.made, i)] = below;
      }
    }
  }

  private noFilm(from: number): void {
    // R′ = R.
    const { films } = this.lanes;
    films.fill(0, from, from + 3 * bandCount);
    films.fill(1, from + bandCount, from + 2 * bandCount);
  }

  private startUpper(): void {
    this.upper.start(this.upperPiles);
    this.lanes.fitFilms(this.upper.capacity * 3 * bandCount);
    this.lower.reflectance = this.lanes.grounds;
    this.noFilm(0);
    this.tops[0] = null;
  }

  private layUpper(layer: Layer): void {
    checkBands(layer.film.r0.length);
    this.upper.split(layer.bit);
    const { made, from, madeCount } = this.upper;
    const stride = 3 * bandCount;
    const done = alikeEverywhere(layer.laid) && this.lanes.lay('films', layer.film, this.upper);
    for (let i = done ? madeCount : 0; i < madeCount; i++) {
      const film = filmOn(layer.laid, this.tops[u32(from, i)] ?? null);
      layOnPile(this.lanes.films, u32(from, i) * stride, u32(made, i) * stride, film);
    }
    for (let i = 0; i < madeCount; i++) this.tops[u32(made, i)] = layer.laid;
  }
}

/** Ids of the inks on which some film has a thickness of its own. */
function inksBelow(layers: readonly Layer[]): string[] {
  const inks = new Set<string>();
  for (const { laid } of layers) if (laid.onInk !== null) for (const ink of laid.onInk.keys()) inks.add(ink);
  return [...inks];
}

/** One film on a pile: [[q, r0], [back, 1]] · [[b, a], [−c, 1]], scaled so that the last entry is 1. */
function layOnPile(piles: Float64Array, from: number, to: number, { r0, q, back }: FilmBands): void {
  for (let band = 0; band < bandCount; band++, from++, to++) {
    const a = f64(piles, from);
    const b = f64(piles, from + bandCount);
    const c = f64(piles, from + 2 * bandCount);
    const over = f64(r0, band);
    const through = f64(q, band);
    const thrown = f64(back, band);
    const scale = 1 / (1 + thrown * a);
    piles[to] = (over + through * a) * scale;
    piles[to + bandCount] = (through * b - over * c) * scale;
    piles[to + 2 * bandCount] = (c - thrown * b) * scale;
  }
}
