import { entryAt, num, u32 } from '../../base/at.ts';
import { BANDS } from '../../colour/weights.ts';
import type { FilmBands } from '../../ink/film/film.ts';
import { alikeEverywhere, filmOn, type LaidFilm } from '../../ink/film/laid-film.ts';
import type { Layer } from '../layers.ts';
import { checkBands, FilmLanes } from './film-lanes.ts';
import { type CoveredCells, FilmTree, STEP } from './film-tree.ts';

/** What a pile begins with: the topmost film below it; null for the paper. */
type Below = LaidFilm | null;

/**
 * Three weighted sums over the bands of every cell's reflectance under a whole stack.
 *
 * The stack is cut in two. Of its lower half each different pile gives one reflectance; of its upper
 * half each different pile is one film of its own, (a + b R) / (1 − c R) per band (films compose as
 * their 2 × 2 matrices do). A cell is then one step from a lower to an upper pile, and there are far
 * fewer piles than cells. Where films are thinner on films, upper piles differ by what they lie on too. Holds its buffers, for many maps and stacks.
 */
export class FilmSums {
  readonly lower: FilmTree;
  private readonly upper: FilmTree;
  private readonly lanes: FilmLanes;

  /** @param plain without lanes: see FilmLanes */
  constructor(plain = false) {
    this.lower = new FilmTree(plain);
    this.upper = new FilmTree(plain);
    this.lanes = new FilmLanes(plain);
  }

  /**
   * @param layers first down first
   * @param paper 36 bands
   * @param weights 36 × 3, [3 · band + sum]
   * @returns three sums a cell, in a buffer of this object's
   * @throws EngineError 'stack.bad-bands'
   */
  compute(map: CoveredCells, layers: readonly Layer[], paper: ArrayLike<number>, weights: Float64Array): Float64Array {
    const { lower, upper, lanes } = this;
    const half = (layers.length + 1) >> 1;
    lower.find(map, layers, [0, half]);
    const films = new Films(layers);
    const [onGrounds, tops] = films.steps(lower, [null]);
    const begins: Below[] = [];
    upper.find(films.alike ? map : films.withKinds(map, lower.leaf, tops, begins), layers, [half, layers.length], !films.alike);
    const [onPiles] = films.steps(upper, films.alike ? [] : upper.kinds.map((kind) => begins[kind] ?? null));
    lanes.start(films.list, [Math.max(map.cells, (onGrounds.length + onPiles.length) / STEP), map.cells, lower.count, upper.count]);
    this.layOnPaper(paper, onGrounds);
    // R′ = R; of piles that begin with something below there are several without a film.
    for (let pile = films.alike ? 0 : upper.count - 1; pile >= 0; pile--) {
      const at = pile * 3 * BANDS;
      lanes.piles.fill(0, at, at + 3 * BANDS).fill(1, at + BANDS, at + 2 * BANDS);
    }
    lanes.lay('piles', onPiles);
    lanes.sum(lower.leaf, upper.leaf, weights);
    return lanes.sums;
  }

  /** Puts CIELAB in the place of the sums of so many cells, where these are D50 tristimulus values. */
  toLab(cells: number): void {
    this.lanes.toLab(cells);
  }

  /**
   * Reflectances of the whole stack's piles, which are those of `lower` then.
   * @returns piles × 36, in a buffer of this object's
   * @throws EngineError 'stack.bad-bands'
   */
  reflectances(map: CoveredCells, layers: readonly Layer[], paper: ArrayLike<number>): Float64Array {
    const { lower, lanes } = this;
    lower.find(map, layers, [0, layers.length]);
    const films = new Films(layers);
    const [steps] = films.steps(lower, [null]);
    lanes.start(films.list, [steps.length / STEP, 0, lower.count, 0]);
    this.layOnPaper(paper, steps);
    return lanes.grounds;
  }

  private layOnPaper(paper: ArrayLike<number>, steps: Uint32Array): void {
    checkBands(paper.length);
    const { lanes } = this;
    for (let band = 0; band < BANDS; band++) lanes.grounds[band] = num(paper, band);
    lanes.lay('grounds', steps);
  }
}

/** The films that layers are, wherever they lie. */
class Films {
  /** All, each once where they are not alike everywhere. */
  readonly list: FilmBands[];
  private readonly layers: readonly Layer[];
  readonly alike: boolean;
  private readonly numbers = new Map<FilmBands, number>();

  constructor(layers: readonly Layer[]) {
    this.layers = layers;
    this.alike = layers.every(({ laid }) => alikeEverywhere(laid));
    this.list = this.alike ? layers.map(({ film }) => film) : [];
  }

  /**
   * A tree's steps with films in the place of layers.
   * @param tops what its piles begin with
   * @returns them, and the topmost film of each pile, only where films are not alike everywhere
   */
  steps({ steps: ofLayers }: FilmTree, tops: Below[]): [Uint32Array, Below[]] {
    if (this.alike) return [ofLayers, []];
    const steps = ofLayers.slice();
    for (let at = 0; at < steps.length; at += STEP) {
      const { laid } = entryAt(this.layers, u32(steps, at));
      steps[at] = this.numberOf(filmOn(laid, tops[u32(steps, at + 1)] ?? null));
      tops[u32(steps, at + 2)] = laid;
    }
    return [steps, tops];
  }

  /**
   * Cells with what their upper piles lie on, as films tell it apart: 0 for the paper, else an ink, 1 for any that none tells apart.
   * @param begins receives a film of each kind
   */
  withKinds({ cells, words, cover }: CoveredCells, leaf: Uint32Array, tops: readonly Below[], begins: Below[]): CoveredCells {
    const inks = [...new Set(this.layers.flatMap(({ laid }) => [...(laid.onInk?.keys() ?? [])]))];
    const told = new Uint32Array(cells * (words + 1));
    for (let cell = 0; cell < cells; cell++) {
      const top = tops[u32(leaf, cell)] ?? null;
      const kind = top === null ? 0 : inks.indexOf(top.ink) + 2;
      begins[kind] = top;
      told.set(cover.subarray(cell * words, (cell + 1) * words), cell * (words + 1));
      told[(cell + 1) * (words + 1) - 1] = kind;
    }
    return { cells, words: words + 1, cover: told };
  }

  private numberOf(film: FilmBands): number {
    const number = this.numbers.get(film) ?? this.list.length;
    if (number === this.list.length) {
      this.numbers.set(film, number);
      this.list.push(film);
    }
    return number;
  }
}
