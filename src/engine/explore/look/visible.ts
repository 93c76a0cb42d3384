import { entryAt, f64, num, u32 } from '../../base/at.ts';
import type { FilmBands } from '../../ink/film/film.ts';
import type { CellMap } from '../../stack/types.ts';
import { type Laid, leastShares, Pile } from './pile.ts';

/** What of a stack can be seen: where films above would hide black from white, nothing below counts. */
export interface Visible {
  /** Area in which each pull can be seen, mm², by position. */
  areaMm2: Float64Array;
  /** [upper · pulls + lower]: area in which both lie and the upper one can be seen, mm², by position. */
  pairMm2: Float64Array;
}

/** Asks which films can be seen. */
export class Sight {
  private readonly film: (id: number) => FilmBands;
  private readonly laid = new Map<number, Laid>();
  private readonly pile: Pile;
  private cells = new Uint32Array(0);

  /**
   * @param film the film of a number, where it is thinnest: what lies below it makes it thinner too
   * @param leastDeltaE black and white below films that differ by less than this count as hidden, ΔE00
   */
  constructor(film: (id: number) => FilmBands, leastDeltaE: number) {
    this.film = film;
    this.pile = new Pile(leastDeltaE);
  }

  /**
   * What of a stack can be seen. Cells are parted by the topmost pull, then each part by the next, so
   * that films over many cells are looked at once.
   * @param films number of the film of each pull, first down first
   * @param bits placed screen of the map that each pull prints, first down first
   * Cost O(cells × pulls).
   */
  of(map: CellMap, films: readonly number[], bits: readonly number[]): Visible {
    const pulls = films.length;
    const visible = { areaMm2: new Float64Array(pulls), pairMm2: new Float64Array(pulls * pulls) };
    const laid = films.map((film) => this.laidFilm(film));
    if (this.cells.length < map.cells) this.cells = new Uint32Array(map.cells * 2);
    const { cells } = this;
    let count = 0;
    for (let cell = 1; cell < map.cells; cell++) if (f64(map.areaMm2, cell) > 0) cells[count++] = cell;

    new Look({ map, bits, laid, cells, pile: this.pile }, visible).down(pulls - 1, 0, count);
    return visible;
  }

  private laidFilm(id: number): Laid {
    let found = this.laid.get(id);
    if (found === undefined) {
      const film = this.film(id);
      this.laid.set(id, (found = { id, film, shares: leastShares(film) }));
    }
    return found;
  }
}

/** What a look at a stack needs. */
interface Sighted {
  map: CellMap;
  bits: readonly number[];
  laid: readonly Laid[];
  /** Cells of the map, sorted again by every step. */
  cells: Uint32Array;
  pile: Pile;
}

/** Looks at a stack from the top down. */
class Look {
  private readonly of: Sighted;
  private readonly visible: Visible;
  /** Pulls over what is looked at, and the number of their pile: below zero when it hides what is below. */
  private readonly above: Uint32Array;
  private count = 0;
  private number: number;

  constructor(of: Sighted, visible: Visible) {
    this.of = of;
    this.visible = visible;
    this.above = new Uint32Array(of.bits.length);
    this.number = of.pile.begin();
  }

  /** Looks at the pulls from `top` down in a range of cells, which all lie under the same pulls. */
  down(top: number, first: number, end: number): void {
    for (let at = top, from = first; at >= 0 && from < end; at--) from = this.under(at, from, end);
  }

  /** Parts a range of cells by a pull, looks below it where it lies, and says where the others begin. */
  private under(at: number, first: number, end: number): number {
    const { map, bits, cells } = this.of;
    const { words, cover, areaMm2 } = map;
    const word = num(bits, at) >> 5;
    const mask = 1 << (num(bits, at) & 31);
    let under = first;
    let area = 0;
    for (let i = first; i < end; i++) {
      const cell = u32(cells, i);
      if ((u32(cover, cell * words + word) & mask) === 0) continue;
      area += f64(areaMm2, cell);
      cells[i] = u32(cells, under);
      cells[under++] = cell;
    }
    if (under === first) return under;
    const { count, number } = this;
    this.see(at, area);
    this.down(at - 1, first, under);
    this.count = count;
    this.number = number;
    return under;
  }

  /** Counts an area of a pull as seen, as far as what lies above lets it be. */
  private see(at: number, area: number): void {
    const { bits, pile, laid } = this.of;
    const { areaMm2, pairMm2 } = this.visible;
    const { above, count, number } = this;
    for (let i = 0; i < count; i++) {
      const pair = u32(above, i) * bits.length + at;
      pairMm2[pair] = f64(pairMm2, pair) + area;
    }
    // Below zero: hidden.
    if (number < 0) return;
    areaMm2[at] = f64(areaMm2, at) + area;
    this.number = pile.lay(count, number, entryAt(laid, at));
    above[this.count++] = at;
  }
}
