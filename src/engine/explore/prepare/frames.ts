import type { Studio } from '../../studio/studio.ts';
import type { ExploreSettings } from '../types.ts';

/** Which screens are there as frames, by id; none stands in two of the lists. */
export interface Frames {
  /** Exposed and ready to print. */
  made: readonly string[];
  /** On the list of those to have made. */
  toMake: readonly string[];
  /** Their film positives are there, to be exposed. */
  film?: readonly string[] | undefined;
  /** Printed, and their stencils washed out again. */
  reclaimed?: readonly string[] | undefined;
  /** Sides of frames inside, by the id of the screen. */
  inside?: Readonly<Record<string, FrameSize>> | undefined;
}

/** A frame inside, mm. */
export interface FrameSize {
  widthMm: number;
  heightMm: number;
}

/** How a screen stands. */
export type FrameState = 'drawn' | 'to make' | 'film made' | 'made' | 'reclaimed';

const NO_FRAMES: Frames = { made: [], toMake: [] };

/** How a screen stands; 'drawn' when nothing was said of it. */
export function frameState(screen: string, { made, toMake, film = [], reclaimed = [] }: Frames = NO_FRAMES): FrameState {
  if (made.includes(screen)) return 'made';
  if (film.includes(screen)) return 'film made';
  if (toMake.includes(screen)) return 'to make';
  return reclaimed.includes(screen) ? 'reclaimed' : 'drawn';
}

/** Whether a screen can be printed with: it is made, or on its way to be. */
export function isAtHand(screen: string, frames?: Frames): boolean {
  const state = frameState(screen, frames);
  return state !== 'drawn' && state !== 'reclaimed';
}

/** The frames with another word on one screen. */
export function withFrame(frames: Frames = NO_FRAMES, screen: string, state: FrameState): Frames {
  const listed = (ids: readonly string[] = [], word: FrameState): string[] => {
    const others = ids.filter((id) => id !== screen);
    return state === word ? [...others, screen] : others;
  };
  const { film: _film, reclaimed: _reclaimed, ...others } = frames;
  const [film, reclaimed] = [listed(frames.film, 'film made'), listed(frames.reclaimed, 'reclaimed')];
  return {
    ...others,
    made: listed(frames.made, 'made'),
    toMake: listed(frames.toMake, 'to make'),
    ...(film.length > 0 ? { film } : {}),
    ...(reclaimed.length > 0 ? { reclaimed } : {}),
  };
}

/** The frames once the films of some screens are made; a screen that is made already stays so. */
export function withFilms(frames: Frames | undefined, screens: readonly string[]): Frames {
  const wanting = screens.filter((screen) => frameState(screen, frames) !== 'made');
  return wanting.reduce((said, screen) => withFrame(said, screen, 'film made'), frames ?? NO_FRAMES);
}

/** The frames with the inside of one of them, or without it. */
export function withInside(frames: Frames = NO_FRAMES, screen: string, size: FrameSize | null): Frames {
  const { [screen]: _, ...others } = frames.inside ?? {};
  return { ...frames, inside: size === null ? others : { ...others, [screen]: size } };
}

/** The frames without a screen that is gone. */
export function withoutFrame(frames: Frames, screen: string): Frames {
  return withInside(withFrame(frames, screen, 'drawn'), screen, null);
}

/**
 * The settings when only screens at hand may print, made or to make: all others are in no print. Where
 * none is at hand it asks for nothing, since nothing could be printed.
 */
export function atHand(settings: ExploreSettings, studio: Studio, frames: Frames = NO_FRAMES): ExploreSettings {
  if (settings.onlyAtHand !== true) return settings;
  const there = studio.screens.filter(({ id }) => isAtHand(id, frames));
  if (there.length === 0) return settings;
  const not = new Set(settings.notScreens);
  for (const { id } of studio.screens) if (!isAtHand(id, frames)) not.add(id);
  return { ...settings, notScreens: [...not], mustScreens: settings.mustScreens?.filter((id) => !not.has(id)) };
}
