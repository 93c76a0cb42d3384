import { deltaE2000, labD50 } from '../colour/index.ts';
import { type FilmBands, overFilm } from '../ink/index.ts';
import type { CellMap } from '../stack/types.ts';

/** What of a stack can be seen: where films above would hide black from white, nothing below counts. */
export interface Visible {
  /** Area in which each pull can be seen, mm², by position. */
  areaMm2: Float64Array;
  /** [upper · pulls + lower]: area in which both lie and the upper one can be seen, mm², by position. */
  pairMm2: Float64Array;
}

interface Pile {
  /** Films from the top down to this one hide what is below. */
  hides: boolean;
  /** Films from the top down. */
  films: readonly FilmBands[];
  below: Map<number, Pile>;
}

/** Asks which films can be seen; keeps what it found of each pile of films, from the top down. */
export class Sight {
  private readonly film: (id: number) => FilmBands;
  private readonly leastDeltaE: number;
  private readonly top: Pile = { hides: false, films: [], below: new Map() };
  private piles = 0;

  /**
   * @param film the film of a number
   * @param leastDeltaE black and white below films that differ by less than this count as hidden, ΔE00
   */
  constructor(film: (id: number) => FilmBands, leastDeltaE: number) {
    this.film = film;
    this.leastDeltaE = leastDeltaE;
  }

  /**
   * What of a stack can be seen.
   * @param films number of the film of each pull, first down first
   * @param bits placed screen of the map that each pull prints, first down first
   * Cost O(cells × pulls) and, in each cell, the pairs of pulls over it.
   */
  of(map: CellMap, films: readonly number[], bits: readonly number[]): Visible {
    if (this.piles > MAX_PILES) {
      this.top.below.clear();
      this.piles = 0;
    }
    const pulls = films.length;
    const areaMm2 = new Float64Array(pulls);
    const pairMm2 = new Float64Array(pulls * pulls);
    const words = bits.map((bit) => bit >> 5);
    const masks = bits.map((bit) => 1 << (bit & 31));
    const over: number[] = [];
    for (let cell = 1; cell < map.cells; cell++) {
      const area = map.areaMm2[cell];
      if (!(area > 0)) continue;
      let pile = this.top;
      over.length = 0;
      for (let at = pulls - 1; at >= 0; at--) {
        if ((map.cover[cell * map.words + words[at]] & masks[at]) === 0) continue;
        for (const upper of over) pairMm2[upper * pulls + at] += area;
        if (pile.hides) continue;
        areaMm2[at] += area;
        over.push(at);
        pile = this.lower(pile, films[at]);
      }
    }
    return { areaMm2, pairMm2 };
  }

  private lower(pile: Pile, film: number): Pile {
    let found = pile.below.get(film);
    if (found === undefined) {
      const films = [...pile.films, this.film(film)];
      found = { hides: gap(films) < this.leastDeltaE, films, below: new Map() };
      pile.below.set(film, found);
      this.piles++;
    }
    return found;
  }
}

/** Keeps what is kept below some tens of megabytes. */
const MAX_PILES = 50_000;

/** ΔE00 between films, given from the top down, over perfect white and over perfect black. */
function gap(films: readonly FilmBands[]): number {
  const bands = films[0].r0.length;
  const white = new Float64Array(bands).fill(1);
  const black = new Float64Array(bands);
  for (let at = films.length - 1; at >= 0; at--) {
    overFilm(films[at], white, white);
    overFilm(films[at], black, black);
  }
  return deltaE2000(labD50(white), labD50(black));
}
