import { BANDS } from '../../colour/weights.ts';
import type { Surface } from '../film/saunderson.ts';

// An invented contrast card: flat curves near those of real coated cards, not a measurement.

/** Reflectance of the invented card's white half, 36 bands. */
export const CARD_WHITE: readonly number[] = Array.from({ length: BANDS }, () => 0.88);

/** Reflectance of the invented card's black half, 36 bands. */
export const CARD_BLACK: readonly number[] = Array.from({ length: BANDS }, () => 0.03);

/** What an ink was put down on to be looked at, and how that was measured. */
export interface Grounds {
  /** Reflectance of the light ground as read, 36 bands: a card's white, or the person's own paper. */
  white: ArrayLike<number>;
  /** The same of the dark one: a card's black, or the person's own black on that paper. */
  black: ArrayLike<number>;
  /** Left out, there is none. */
  surface?: Surface | undefined;
}

/** The invented card. */
export const CARD: Grounds = { white: CARD_WHITE, black: CARD_BLACK };
