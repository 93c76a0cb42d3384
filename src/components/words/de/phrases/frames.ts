import type { say as english } from '../../en/phrases/frames.ts';

export const say: typeof english = {
  drawn: 'gezeichnet',
  toMake: 'zu machen',
  filmMade: 'Film gemacht',
  made: 'gemacht',
  reclaimed: 'entschichtet',
};
