import { BANDS } from '../../colour/weights.ts';

// An invented contrast card: flat curves near those of real coated cards, not a measurement.

/** Reflectance of the invented card's white half, 36 bands. */
export const CARD_WHITE: readonly number[] = Array.from({ length: BANDS }, () => 0.88);

/** Reflectance of the invented card's black half, 36 bands. */
export const CARD_BLACK: readonly number[] = Array.from({ length: BANDS }, () => 0.03);
