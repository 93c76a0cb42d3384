import type { Studio } from '../../studio/studio.ts';
import type { ExploreSettings } from '../types.ts';

/** Which screens are there as frames, by id; no screen is in both. */
export interface Frames {
  /** Exposed and ready to print. */
  made: readonly string[];
  /** On the list of those to have made. */
  toMake: readonly string[];
}

/** How a screen stands. */
export type FrameState = 'drawn' | 'to make' | 'made';

const NO_FRAMES: Frames = { made: [], toMake: [] };

/** How a screen stands; 'drawn' when nothing was said of it. */
export function frameState(screen: string, { made, toMake }: Frames = NO_FRAMES): FrameState {
  if (made.includes(screen)) return 'made';
  return toMake.includes(screen) ? 'to make' : 'drawn';
}

/** The frames with another word on one screen. */
export function withFrame(frames: Frames = NO_FRAMES, screen: string, state: FrameState): Frames {
  const others = (ids: readonly string[]): string[] => ids.filter((id) => id !== screen);
  return {
    made: state === 'made' ? [...others(frames.made), screen] : others(frames.made),
    toMake: state === 'to make' ? [...others(frames.toMake), screen] : others(frames.toMake),
  };
}

/**
 * The settings when only screens at hand may print, made or to make: all others are in no print. Where
 * none is at hand it asks for nothing, since nothing could be printed.
 */
export function atHand(settings: ExploreSettings, studio: Studio, frames: Frames = NO_FRAMES): ExploreSettings {
  if (settings.onlyAtHand !== true) return settings;
  const there = studio.screens.filter(({ id }) => frameState(id, frames) !== 'drawn');
  if (there.length === 0) return settings;
  const not = new Set(settings.notScreens);
  for (const { id } of studio.screens) if (frameState(id, frames) === 'drawn') not.add(id);
  return { ...settings, notScreens: [...not], mustScreens: settings.mustScreens?.filter((id) => !not.has(id)) };
}
