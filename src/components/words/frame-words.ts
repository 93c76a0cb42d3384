import type { FrameState } from '../../engine/explore/prepare/frames.ts';
import { say } from './en/phrases/frames.ts';

const WORDS: Readonly<Record<FrameState, string>> = {
  drawn: say.drawn,
  'to make': say.toMake,
  'film made': say.filmMade,
  made: say.made,
  reclaimed: say.reclaimed,
};

/** How a screen stands, in a word or two. */
export function frameWord(state: FrameState): string {
  return WORDS[state];
}
