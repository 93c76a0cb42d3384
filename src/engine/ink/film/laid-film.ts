import { EngineError } from '../../base/error.ts';
import { BANDS } from '../../colour/weights.ts';
import { say } from '../../words/en/ink/film.ts';
import type { Ink } from '../types.ts';
import { type FilmBands, filmBands } from './film.ts';
import { type Printing, traps } from './printing.ts';

/** One film as it lies on the paper, and as it lies on other films. */
export interface LaidFilm {
  /** Id of its ink. */
  ink: string;
  onPaper: FilmBands;
  /** The same object as onPaper where a film is as thick on a film. */
  onFilm: FilmBands;
  /** By the id of the ink below, for pairs of inks with a factor of their own; null for none. */
  onInk: ReadonlyMap<string, FilmBands> | null;
  /** Where it is thinnest. */
  thinnest: FilmBands;
}

/**
 * The film of an ink at a thickness, wherever it lies.
 * @param thickness in films of the ink's own curves; see filmFactor
 * @throws EngineError 'ink.bad-film'
 */
export function laidFilm(ink: Pick<Ink, 'id' | 'name' | 'kx' | 'sx'>, thickness: number, { surface, trapping }: Printing): LaidFilm {
  if (ink.kx.length !== BANDS) {
    throw new EngineError('ink.bad-film', say.inkHasBandsAre(ink.name, ink.kx.length, BANDS));
  }
  const at = (factor: number): FilmBands => filmBands(ink.kx, ink.sx, thickness * factor, surface);
  const onPaper = at(1);
  if (trapping === undefined || !traps(trapping)) return { ink: ink.id, onPaper, onFilm: onPaper, onInk: null, thinnest: onPaper };
  const own = (trapping.pairs ?? []).filter(({ over }) => over === ink.id);
  const least = Math.min(1, trapping.factor, ...own.map(({ factor }) => factor));
  return {
    ink: ink.id,
    onPaper,
    onFilm: trapping.factor === 1 ? onPaper : at(trapping.factor),
    onInk: own.length === 0 ? null : new Map(own.map(({ under, factor }) => [under, at(factor)])),
    thinnest: least === 1 ? onPaper : at(least),
  };
}

/** A film as it lies on another film, or on the paper. */
export function filmOn(film: LaidFilm, under: LaidFilm | null): FilmBands {
  if (under === null) return film.onPaper;
  return film.onInk?.get(under.ink) ?? film.onFilm;
}

/** Whether a film is as thick on every film as on the paper. */
export function alikeEverywhere({ onPaper, onFilm, onInk }: LaidFilm): boolean {
  return onFilm === onPaper && onInk === null;
}
