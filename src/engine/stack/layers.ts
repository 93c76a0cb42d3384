import { entryAt, num } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { filmFactor } from '../ink/film/film-factor.ts';
import type { FilmBands } from '../ink/film/film.ts';
import { laidFilm, type LaidFilm } from '../ink/film/laid-film.ts';
import type { Printing } from '../ink/film/printing.ts';
import type { Ink } from '../ink/types.ts';
import type { Screen } from '../shapes/types.ts';
import type { Studio } from '../studio/studio.ts';
import { unknownInk, unknownScreen } from '../studio/unknown-screen.ts';
import { say } from '../words/en/stack/stack.ts';
import { findBits } from './placement.ts';
import type { Pull, Stack } from './types.ts';

/** One pull as the colours see it. */
export interface Layer {
  /** The bit of a cell's cover that says where it lies. */
  bit: number;
  /** What it does to the paper. */
  film: FilmBands;
  /** What it does to paper and to other films. */
  laid: LaidFilm;
}

/** Films of an ink by thickness, under one surface and trapping. */
interface InkFilms extends Printing {
  byThickness: Map<number, LaidFilm>;
}

// Inks are values that are replaced and never written to, so that an ink object is its own key.
const filmsOfInk = new WeakMap<Ink, InkFilms>();
const inksOf = new WeakMap<readonly Ink[], Map<string, Ink>>();
const screensOf = new WeakMap<readonly Screen[], Map<string, Screen>>();
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
    const laid = pullFilm(pull, i, studio);
    const layer = out[i];
    if (layer === undefined) {
      out[i] = { bit: num(bits, i), film: laid.onPaper, laid };
    } else {
      layer.bit = num(bits, i);
      layer.film = laid.onPaper;
      layer.laid = laid;
    }
  }
  if (out.length !== stack.pulls.length) out.length = stack.pulls.length;
  return out;
}

function pullFilm(pull: Pull, index: number, studio: Studio): LaidFilm {
  const ink = byId(inksOf, studio.inks).get(pull.ink);
  if (ink === undefined) throw unknownInk(pull, index);
  const screen = byId(screensOf, studio.screens).get(pull.screen);
  if (screen === undefined) throw unknownScreen(pull, index);
  return inkFilm(ink, filmFactor(ink, screen.mesh, pull.strokes, studio.strokeGain), studio);
}

/** The items of a list by their ids, found once: lists are values as inks are. */
function byId<Item extends { id: string }>(known: WeakMap<readonly Item[], Map<string, Item>>, list: readonly Item[]): Map<string, Item> {
  let found = known.get(list);
  // Of two with one id the first counts.
  if (found === undefined) known.set(list, (found = new Map(list.toReversed().map((item) => [item.id, item]))));
  return found;
}

/** The film of an ink at a thickness in films of its own curves; made once for each. */
function inkFilm(ink: Ink, thickness: number, { surface, trapping }: Printing): LaidFilm {
  let films = filmsOfInk.get(ink);
  // A surface and a trapping are values as well.
  if (films === undefined || films.surface !== surface || films.trapping !== trapping) {
    films = { surface, trapping, byThickness: new Map() };
    filmsOfInk.set(ink, films);
  }
  let film = films.byThickness.get(thickness);
  if (film === undefined) {
    film = laidFilm(ink, thickness, films);
    films.byThickness.set(thickness, film);
  }
  return film;
}

function notInMap(pull: Pull, index: number): EngineError {
  return new EngineError('stack.not-in-map', say.pullDoesNotLie(index + 1, pull.id), { path: ['pulls', index] });
}
