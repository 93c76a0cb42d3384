import { defined, entryAt } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { TRAPPING } from '../../base/limits.ts';
import { roundTo } from '../../base/units.ts';
import { deltaE2000 } from '../../colour/delta-e.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import { say } from '../../words/en/ink/fit.ts';
import { meshRatio } from '../film/film-factor.ts';
import { filmBands, overFilm } from '../film/film.ts';
import { type Mesh, meshKey } from '../film/mesh.ts';
import { type Printing, type Surface, type Trapping, type TrappingPair, trappingOn } from '../film/printing.ts';
import type { Ink, Paper } from '../types.ts';
import { fitSquares, type SquaresFit } from './fit-squares.ts';
import { type FilmSample, type ReadSamples, readSamples } from './stack-samples.ts';

/** A pair's trapping that is nearer to that of the press shows in no print. */
const TOLD_APART = 0.02;

/** A film of a square: its ink, and the mesh where it is not that of the ink's own curves. */
interface SquareFilm {
  ink: string;
  mesh?: Mesh | undefined;
}

/** A measured square of any films. */
export interface StackSquare {
  /** First down first; one or more. */
  films: readonly SquareFilm[];
  lab?: Lab | undefined;
  /** 36 bands, 0–1; counts before the Lab. */
  reflectance?: ArrayLike<number> | undefined;
}

/** What a target is fitted to. */
export interface TargetFitInput {
  squares: readonly StackSquare[];
  /** All that squares name. */
  inks: readonly Ink[];
  /** As it was measured with the squares. */
  paper: Pick<Paper, 'reflectance'>;
  /** As the inks are printed now, for nowDeltaE. */
  printing?: Printing | undefined;
}

/** How well a square is met. */
interface SquareMiss {
  /** Place in the squares given. */
  square: number;
  /** ΔE00 with the square among those fitted, and by a fit without it; null for squares of one film. */
  deltaE: number;
  leftOutDeltaE: number | null;
}

/** What a target tells. */
export interface TargetFit {
  /** Curves of one stroke through the ink's own mesh, 36 bands, of the inks that squares name. */
  inks: { id: string; kx: number[]; sx: number[]; squares: number }[];
  trapping: Trapping;
  surface: Surface;
  /** Film of a mesh over what its ink volume says. */
  meshes: { mesh: Mesh; factor: number }[];
  /** Mean ΔE00 over all squares of the inks as they are. */
  nowDeltaE: number;
  /** Mean ΔE00 over all squares, and over overprints left out one at a time; NaN where none can be. */
  meanDeltaE: number;
  looDeltaE: number;
  /** In the order given. */
  squares: SquareMiss[];
  /** Places of the squares that miss most, the worst first, by the fit without them where there is one. */
  worst: number[];
}

/**
 * Films of the inks, trapping and surface from a pulled target of any stacks.
 * @yields the share of the work that is done, 0–1
 * @throws EngineError 'fit.samples', 'fit.reading', 'fit.trapping', 'fit.surface', 'fit.unknown-ink' in one sentence
 * See fitFilms; a mesh that is not the ink's own has a film of its own, held to its ink volume.
 */
export function* fitTargetSteps({ squares, inks, paper, printing = {} }: TargetFitInput): Generator<number, TargetFit> {
  const byId = new Map(inks.map((ink) => [ink.id, ink]));
  const meshes = new Map<string, Mesh>();
  const samples = squares.map(({ films, lab, reflectance }): FilmSample => ({
    films: films.map(({ ink }) => ink),
    how: films.map(({ ink, mesh }) => howOf(byId.get(ink), ink, mesh, meshes)),
    ...(reflectance === undefined ? { lab } : { reflectance }),
  }));
  const read = readSamples(samples, paper);
  const run = fitSquares(read);
  let next = run.next();
  for (; !next.done; next = run.next()) yield next.value;
  const { model, looMean } = next.value;
  const { films, trapping, pairs, k1, k2, meshes: factors } = model.result();
  const own = ownPairs(read, pairs, trapping);
  const missed = missesOf(next.value);
  return {
    inks: read.names.map((id, i) => ({
      id,
      kx: Array.from(entryAt(films, i).kx),
      sx: Array.from(entryAt(films, i).sx),
      squares: squares.filter((square) => square.films.some(({ ink }) => ink === id)).length,
    })),
    trapping: { factor: trapping, ...(own.length === 0 ? {} : { pairs: own }) },
    surface: { k1, k2 },
    meshes: read.meshNames.map((name, i) => ({ mesh: defined(meshes.get(name)), factor: entryAt(factors, i) })),
    nowDeltaE: mean(read.squares.map(({ lab }, i) => deltaE2000(lab, labNow(entryAt(squares, i).films, byId, { ...printing, paper })))),
    meanDeltaE: mean(missed.map(({ deltaE }) => deltaE)),
    looDeltaE: looMean,
    squares: missed,
    worst: missed.toSorted((a, b) => told(b) - told(a)).map(({ square }) => square),
  };
}

/** Pairs of inks whose trapping squares tell from that of the press. */
function ownPairs(read: ReadSamples, factors: readonly number[], press: number): TrappingPair[] {
  const id = (ink: number): string => entryAt(read.names, ink);
  return read.pairs.flatMap(({ under, over }, i) => {
    const factor = roundTo(Math.min(TRAPPING.most, Math.max(TRAPPING.least, entryAt(factors, i))), 3);
    return Math.abs(Math.log(factor / press)) < TOLD_APART ? [] : [{ under: id(under), over: id(over), factor }];
  });
}

/** The colour of a square as the inks are. */
function labNow(
  films: readonly SquareFilm[],
  inks: ReadonlyMap<string, Ink>,
  { paper, surface, trapping }: Printing & Pick<TargetFitInput, 'paper'>,
): Lab {
  const shown = Float64Array.from(paper.reflectance);
  films.forEach(({ ink: id, mesh }, at) => {
    const ink = defined(inks.get(id));
    const thick = mesh === undefined || meshKey(mesh) === meshKey(ink.mesh) ? 1 : meshRatio(mesh, ink.mesh);
    const trapped = trappingOn(trapping, at === 0 ? null : entryAt(films, at - 1).ink, id);
    overFilm(filmBands(ink.kx, ink.sx, thick * trapped, surface), shown, shown);
  });
  return labD50(shown);
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function told({ deltaE, leftOutDeltaE }: SquareMiss): number {
  return leftOutDeltaE ?? deltaE;
}

function missesOf({ misses, left }: SquaresFit): SquareMiss[] {
  return misses.map((deltaE, square) => ({ square, deltaE, leftOutDeltaE: entryAt(left, square) }));
}

function howOf(ink: Ink | undefined, id: string, mesh: Mesh | undefined, meshes: Map<string, Mesh>): { thickness: number; mesh: string } {
  if (ink === undefined) {
    throw new EngineError('fit.unknown-ink', say.squareIsOfInk(id));
  }
  const key = meshKey(mesh);
  if (mesh === undefined || key === meshKey(ink.mesh)) return { thickness: 1, mesh: '' };
  meshes.set(key, mesh);
  return { thickness: meshRatio(mesh, ink.mesh), mesh: key };
}
