import { entryAt } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import type { Lab } from '../../colour/lab.ts';
import { say } from '../../words/en/ink/fit.ts';
import { fitSquares } from './fit-squares.ts';
import type { FoundFilm } from './stack-model.ts';
import { type FilmSample, type Reading, readSamples } from './stack-samples.ts';

/** What films are fitted to. */
export interface FitFilmsInput {
  /** Squares of any stacks of films: at least two, of two inks or more. */
  samples: readonly FilmSample[];
  /** The bare paper. */
  paper: Reading;
  /** Kept with the fit; the same samples give the same films under every seed. */
  seed?: string | undefined;
}

/** Films that samples show. */
export interface FittedFilms {
  /**
   * The colour of a stack, D50/2°, as the instrument would read it; the paper for no films.
   * @param films names as in the samples, first down first
   * @throws EngineError 'fit.unknown-film'
   */
  predict(films: readonly string[]): Lab;
  /** How thick a film is on another film, as a share of what it is on the paper. */
  trapping: number;
  /** Saunderson's shares: reflected outside, and thrown back inside. */
  k1: number;
  k2: number;
  /**
   * Mean ΔE00 of the overprints, each predicted by a fit without it; NaN where none can be left out.
   * Squares of one film are never left out: a film's curve comes from them.
   */
  looMean: number;
  /** K·X and S·X of one film on the paper, 36 bands. */
  films: Record<string, FoundFilm>;
}

/**
 * Films, their trapping and their surface from any stacks that were read.
 * @returns see FittedFilms; deterministic
 * @throws EngineError 'fit.samples', 'fit.reading', 'fit.trapping', 'fit.surface' in one sentence
 * Films by Kubelka and Munk; the surface by Saunderson (1942); trapping as a factor on the thickness of
 * every film that lies on a film. The paper's and an ink's own curve are the smoothest of their colour
 * where no curve was read. Unknowns are held to what is expected beforehand, and leave it as far as the
 * squares tell (least squares with a ridge). Takes about 0.1 s a square.
 */
export function fitFilms({ samples, paper }: FitFilmsInput): FittedFilms {
  const read = readSamples(samples, paper);
  const { names } = read;
  const run = fitSquares(read);
  let next = run.next();
  while (!next.done) next = run.next();
  const { model, looMean } = next.value;
  const { films, trapping, k1, k2 } = model.result();
  return {
    // Films of one thickness are numbered as the inks are.
    predict: (stack) => model.lab(stack.map((name) => placeOf(name, names))),
    trapping,
    k1,
    k2,
    looMean,
    films: Object.fromEntries(names.map((name, i) => [name, entryAt(films, i)])),
  };
}

function placeOf(name: string, names: readonly string[]): number {
  const at = names.indexOf(name);
  if (at < 0) throw new EngineError('fit.unknown-film', say.isInNoSquare(name, names.join(', ')));
  return at;
}
