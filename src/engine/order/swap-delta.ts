import { EngineError } from '../base/error.ts';
import { deltaE2000, labD50 } from '../colour/index.ts';
import { type FilmBands, filmBands, filmThickness, overFilm } from '../ink/index.ts';
import type { Drawer } from '../stack/types.ts';

/** Keeps three film numbers inside one exact number. */
const MAX_FILMS = 2 ** 16;

/**
 * How much it shows when two films change places, kept by film: an explorer asks the same few
 * hundred questions for thousands of stacks.
 */
export class SwapDeltas {
  private readonly drawer: Pick<Drawer, 'inks' | 'paper' | 'strokeGain'>;
  private readonly ids = new Map<string, number>();
  private readonly films: FilmBands[] = [];
  private readonly known = new Map<number, number>();

  constructor(drawer: Pick<Drawer, 'inks' | 'paper' | 'strokeGain'>) {
    this.drawer = drawer;
  }

  /**
   * A number for the film that an ink leaves in so many strokes.
   * @throws EngineError 'stack.unknown-ink' | 'ink.bad-strokes' | 'ink.bad-stroke-gain' | 'ink.bad-film'
   */
  filmOf(inkId: string, strokes: number): number {
    const key = `${strokes} ${inkId}`;
    let id = this.ids.get(key);
    if (id === undefined) {
      const ink = this.drawer.inks.find((each) => each.id === inkId);
      if (ink === undefined) {
        throw new EngineError(
          'stack.unknown-ink',
          `A pull uses the ink '${inkId}', which is not in the drawer; choose another ink or leave the pull out.`,
          { details: { ink: inkId } },
        );
      }
      id = this.films.length;
      if (id === MAX_FILMS - 1) throw new RangeError(`more than ${MAX_FILMS - 1} films in one drawer`);
      this.films.push(filmBands(ink.kx, ink.sx, filmThickness(strokes, this.drawer.strokeGain)));
      this.ids.set(key, id);
    }
    return id;
  }

  /**
   * ΔE00 between film a over film b and b over a.
   * @param under a film that lies on the paper below both; −1 for bare paper
   */
  delta(a: number, b: number, under = -1): number {
    if (a === b) return 0;
    if (a > b) [a, b] = [b, a];
    const key = (a * MAX_FILMS + b) * MAX_FILMS + under + 1;
    let value = this.known.get(key);
    if (value === undefined) {
      const ground = Float64Array.from(this.drawer.paper.reflectance);
      if (under >= 0) overFilm(this.films[under], ground, ground);
      const ab = overFilm(this.films[a], ground, new Float64Array(ground.length));
      overFilm(this.films[b], ab, ab);
      const ba = overFilm(this.films[b], ground, new Float64Array(ground.length));
      overFilm(this.films[a], ba, ba);
      value = deltaE2000(labD50(ab), labD50(ba));
      this.known.set(key, value);
    }
    return value;
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
