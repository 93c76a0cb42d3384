import { entryAt, f64, i32, u32 } from '../../base/at.ts';
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
  /** For each cell the pulls over it as bits, by position. */
  private piled = new Uint32Array(0);

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

    const { areaMm2 } = map;
    new Look({ areaMm2, piled: this.piledOver(map, bits), laid, cells, pile: this.pile }, visible).down(pulls - 1, 0, count);
    return visible;
  }

  private piledOver({ cells, screens, words, cover }: CellMap, bits: readonly number[]): Uint32Array {
    const wide = (bits.length + 31) >> 5;
    if (this.piled.length < cells * wide) this.piled = new Uint32Array(cells * wide * 2);
    const { piled } = this;
    piled.fill(0, 0, cells * wide);
    const places = new Int32Array(screens).fill(-1);
    bits.forEach((bit, at) => {
      places[bit] = at;
    });
    for (let cell = 1; cell < cells; cell++) {
      for (let word = 0; word < words; word++) {
        let rest = u32(cover, cell * words + word);
        while (rest !== 0) {
          const low = rest & -rest;
          rest ^= low;
          const at = i32(places, (word << 5) + 31 - Math.clz32(low));
          if (at >= 0) piled[cell * wide + (at >> 5)] = u32(piled, cell * wide + (at >> 5)) | (1 << (at & 31));
        }
      }
    }
    return piled;
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
  areaMm2: Float64Array;
  /** For each cell the pulls over it as bits, by position. */
  piled: Uint32Array;
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
  private readonly words: number;
  private count = 0;
  private number: number;

  constructor(of: Sighted, visible: Visible) {
    this.of = of;
    this.visible = visible;
    this.above = new Uint32Array(of.laid.length);
    this.words = (of.laid.length + 31) >> 5;
    this.number = of.pile.begin();
  }

  /** Looks at the pulls from `top` down in a range of cells, which all lie under the same pulls. */
  down(top: number, first: number, end: number): void {
    const { piled, cells } = this.of;
    const { words } = this;
    if (end - first === 1) {
      this.downOne(top, u32(cells, first));
      return;
    }
    let from = first;
    for (let word = top >> 5; word >= 0 && from < end; word--) {
      let left = 0;
      for (let i = from; i < end; i++) left |= u32(piled, u32(cells, i) * words + word);
      if (word === top >> 5) left &= -1 >>> (31 - (top & 31));
      while (left !== 0 && from < end) {
        const bit = 31 - Math.clz32(left);
        left ^= 1 << bit;
        from = this.under((word << 5) + bit, from, end);
      }
    }
  }

  /** The same of a single cell, where nothing is parted. */
  private downOne(top: number, cell: number): void {
    const { areaMm2, piled } = this.of;
    const { words, count, number } = this;
    const area = f64(areaMm2, cell);
    let open = -1 >>> (31 - (top & 31));
    for (let word = top >> 5; word >= 0; word--, open = -1) {
      let left = u32(piled, cell * words + word) & open;
      while (left !== 0) {
        const bit = 31 - Math.clz32(left);
        left ^= 1 << bit;
        this.see((word << 5) + bit, area);
      }
    }
    this.count = count;
    this.number = number;
  }

  /** Parts a range of cells by a pull, looks below it where it lies, and says where the others begin. */
  private under(at: number, first: number, end: number): number {
    const { areaMm2, piled, cells } = this.of;
    const { words } = this;
    const word = at >> 5;
    const mask = 1 << (at & 31);
    let under = first;
    let area = 0;
    for (let i = first; i < end; i++) {
      const cell = u32(cells, i);
      if ((u32(piled, cell * words + word) & mask) === 0) continue;
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
    const { pile, laid } = this.of;
    const { areaMm2, pairMm2 } = this.visible;
    const { above, count, number } = this;
    for (let i = 0; i < count; i++) {
      const pair = u32(above, i) * laid.length + at;
      pairMm2[pair] = f64(pairMm2, pair) + area;
    }
    // Below zero: hidden.
    if (number < 0) return;
    areaMm2[at] = f64(areaMm2, at) + area;
    this.number = pile.lay(count, number, entryAt(laid, at));
    above[this.count++] = at;
  }
}
