import { entryAt, num } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { BANDS } from '../colour/weights.ts';
import { filmFactor } from '../ink/film/film-factor.ts';
import { filmBands } from '../ink/film/film.ts';
import type { FilmBands } from '../ink/film/film.ts';
import type { Ink } from '../ink/types.ts';
import type { Mesh } from '../shapes/types.ts';
import type { Studio } from '../studio/studio.ts';
import { unknownScreen } from '../studio/unknown-screen.ts';
import { findBits } from './placement.ts';
import type { Pull, Stack } from './types.ts';

/** One pull as the colours see it. */
export interface Layer {
  /** The bit of a cell's cover that says where it lies. */
  bit: number;
  /** What it does to the colour below. */
  film: FilmBands;
}

// Inks are values that are replaced and never written to, so that an ink object is its own key.
const filmsOfInk = new WeakMap<Ink, Map<number, FilmBands>>();
const bits: number[] = [];

/**
 * The films of a stack, first down first.
 * @param mapStack the stack that the cell map was built from, when that is another one: the pulls are
 *   found in it by their ids, so that order, inks, strokes and leaving-out may differ
 * @param out receives the layers; its entries are used again
 * @returns out, one layer a pull
 * @throws EngineError 'stack.unknown-ink', 'stack.unknown-screen', 'stack.not-in-map' (a pull that the
 *   map's stack does not hold at the same offset), 'ink.bad-strokes', 'ink.bad-stroke-gain', 'ink.bad-mesh',
 *   'ink.bad-film'
 * A film is as thick as the strokes and the screen's mesh make it: see filmFactor.
 */
export function stackLayers(stack: Stack, studio: Studio, mapStack: Stack = stack, out: Layer[] = []): Layer[] {
  const missing = findBits(stack, mapStack, bits);
  if (missing >= 0) throw notInMap(entryAt(stack.pulls, missing), missing);
  for (let i = 0; i < stack.pulls.length; i++) {
    const pull = entryAt(stack.pulls, i);
    const film = pullFilm(pull, i, studio);
    const layer = out[i];
    if (layer === undefined) {
      out[i] = { bit: num(bits, i), film };
    } else {
      layer.bit = num(bits, i);
      layer.film = film;
    }
  }
  out.length = stack.pulls.length;
  return out;
}

function pullFilm(pull: Pull, index: number, studio: Studio): FilmBands {
  let ink: Ink | undefined;
  for (let k = 0; k < studio.inks.length; k++) {
    if (entryAt(studio.inks, k).id === pull.ink) {
      ink = entryAt(studio.inks, k);
      break;
    }
  }
  if (ink === undefined) {
    throw new EngineError(
      'stack.unknown-ink',
      `Pull ${index + 1} uses the ink '${pull.ink}', which is not in the drawer; choose another ink or leave the pull out.`,
      { path: ['pulls', index, 'ink'], details: { ink: pull.ink } },
    );
  }
  return inkFilm(ink, filmFactor(ink, meshOf(pull, index, studio), pull.strokes, studio.strokeGain));
}

function meshOf(pull: Pull, index: number, studio: Studio): Mesh {
  const { screens } = studio;
  for (let k = 0; k < screens.length; k++) if (entryAt(screens, k).id === pull.screen) return entryAt(screens, k).mesh;
  throw unknownScreen(pull, index);
}

/** The film of an ink at a thickness in films of its own curves; made once for each. */
function inkFilm(ink: Ink, thickness: number): FilmBands {
  let films = filmsOfInk.get(ink);
  if (films === undefined) filmsOfInk.set(ink, (films = new Map()));
  let film = films.get(thickness);
  if (film === undefined) {
    if (ink.kx.length !== BANDS) {
      throw new EngineError('ink.bad-film', `Ink '${ink.name}' has ${ink.kx.length} bands; ${BANDS} are needed.`);
    }
    film = filmBands(ink.kx, ink.sx, thickness);
    films.set(thickness, film);
  }
  return film;
}

function notInMap(pull: Pull, index: number): EngineError {
  return new EngineError(
    'stack.not-in-map',
    `Pull ${index + 1} ('${pull.id}') does not lie in the cell map as it lies in the stack; build the map again.`,
    { path: ['pulls', index] },
  );
}
