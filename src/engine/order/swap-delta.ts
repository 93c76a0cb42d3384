import { entryAt, f64 } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { PairNumbers } from '../base/pair-numbers.ts';
import { deltaE2000 } from '../colour/delta-e.ts';
import { labD50 } from '../colour/lab.ts';
import { filmFactor } from '../ink/film/film-factor.ts';
import { type FilmBands, overFilm } from '../ink/film/film.ts';
import { filmOn, laidFilm, type LaidFilm } from '../ink/film/laid-film.ts';
import type { Ink } from '../ink/types.ts';
import type { Screen } from '../shapes/types.ts';
import type { Pull } from '../stack/types.ts';
import type { Studio } from '../studio/studio.ts';
import { say } from '../words/en/order/order.ts';

/** In the place of a film number: bare paper. */
export const PAPER = -1;

/** More films than this are taken for a mistake. */
const MAX_FILMS = 2 ** 16;

/** What of a studio exchanges depend on. */
type SwapStudio = Omit<Studio, 'shapes'>;

/**
 * How much it shows when two films change places, kept by film: an explorer asks the same few
 * hundred questions for thousands of stacks.
 */
export class SwapDeltas {
  private readonly studio: SwapStudio;
  private readonly inks: ReadonlyMap<string, Ink>;
  private readonly screens: ReadonlyMap<string, Screen>;
  private readonly ids = new Map<string, number>();
  private readonly films: LaidFilm[] = [];
  /** Pairs of films by number, then such a number with what lies under both. */
  private readonly pairs = new PairNumbers();
  private readonly asked = new PairNumbers();
  private known = new Float64Array(64);

  constructor(studio: SwapStudio) {
    this.studio = studio;
    this.inks = new Map(studio.inks.map((ink) => [ink.id, ink]));
    this.screens = new Map(studio.screens.map((screen) => [screen.id, screen]));
  }

  /**
   * A number for the film that a pull leaves: the same for all pulls of one ink that are as thick.
   * @throws EngineError 'stack.unknown-ink' | 'stack.unknown-screen' | 'ink.bad-strokes' |
   *   'ink.bad-stroke-gain' | 'ink.bad-mesh' | 'ink.bad-film'
   */
  filmOf(pull: Pick<Pull, 'ink' | 'screen' | 'strokes'>): number {
    const ink = this.inks.get(pull.ink);
    if (ink === undefined) throw unknown('ink', pull.ink);
    const screen = this.screens.get(pull.screen);
    if (screen === undefined) throw unknown('screen', pull.screen);
    const thickness = filmFactor(ink, screen.mesh, pull.strokes, this.studio.strokeGain);
    const key = `${thickness} ${pull.ink}`;
    let id = this.ids.get(key);
    if (id === undefined) {
      id = this.films.length;
      if (id === MAX_FILMS - 1) throw new RangeError(say.moreThanFilmsIn(MAX_FILMS - 1));
      this.films.push(laidFilm(ink, thickness, this.studio));
      this.ids.set(key, id);
    }
    return id;
  }

  /**
   * The film of a number that filmOf gave, as it lies.
   * @param under number of the film that it lies on, or PAPER
   */
  film(id: number, under: number): FilmBands {
    return filmOn(entryAt(this.films, id), under === PAPER ? null : entryAt(this.films, under));
  }

  /** The film of a number where it is thinnest, and so hides least. */
  thinnest(id: number): FilmBands {
    return entryAt(this.films, id).thinnest;
  }

  /** Whether some films differ by the ink that they lie on, not only between paper and film. */
  get byPairs(): boolean {
    return this.films.some(({ onInk }) => onInk !== null);
  }

  /**
   * ΔE00 between film a over film b and b over a.
   * @param under a film that lies on the paper below both, or PAPER
   */
  delta(a: number, b: number, under = PAPER): number {
    if (a === b) return 0;
    if (a > b) [a, b] = [b, a];
    let pair = this.pairs.of(a, b);
    if (pair < 0) pair = this.pairs.add(a, b);
    const known = this.asked.of(pair, under);
    if (known >= 0) return f64(this.known, known);
    const number = this.asked.add(pair, under);
    if (number === this.known.length) {
      const grown = new Float64Array(number * 2);
      grown.set(this.known);
      this.known = grown;
    }
    return (this.known[number] = this.worked(a, b, under));
  }

  private worked(a: number, b: number, under: number): number {
    const ground = Float64Array.from(this.studio.paper.reflectance);
    if (under !== PAPER) overFilm(this.film(under, PAPER), ground, ground);
    const ab = overFilm(this.film(a, under), ground, new Float64Array(ground.length));
    overFilm(this.film(b, a), ab, ab);
    const ba = overFilm(this.film(b, under), ground, new Float64Array(ground.length));
    overFilm(this.film(a, b), ba, ba);
    return deltaE2000(labD50(ab), labD50(ba));
  }

  /**
   * The largest ΔE00 between the two orders of films a and b, over bare paper and over paper that
   * carries one of the films that may lie under both.
   */
  largest(a: number, b: number, unders: Iterable<number>): number {
    let most = this.delta(a, b);
    for (const under of unders) most = Math.max(most, this.delta(a, b, under));
    return most;
  }
}

function unknown(what: 'ink' | 'screen', id: string): EngineError {
  return new EngineError(`stack.unknown-${what}`, say.pullUsesWhichIs(what, id), { details: { [what]: id } });
}
