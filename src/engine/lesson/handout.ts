import { entryAt } from '../base/at.ts';
import { randomFrom } from '../base/random.ts';
import type { GroupedOrders } from '../order/first-down.ts';

/** Pictures of a handout; more would be no lesson but a catalogue. */
const MOST_HANDOUT_PICTURES = 12;

/** One picture of a handout. */
export interface HandoutPicture {
  /** 'A', 'B', … */
  letter: string;
  /** The picture's number among all, counted from 0. */
  picture: number;
  /** Indexes of all orders that print it. */
  orders: readonly number[];
}

/**
 * Pictures of a lesson for a sheet of paper, mixed so that their order tells nothing.
 * @param name the same name gives the same handout
 * @returns all pictures, or so many of them, by their letters
 */
export function handoutPictures({ groups }: GroupedOrders, name: string): HandoutPicture[] {
  const mixed = randomFrom(`handout ${name}`).shuffle(groups.map((_, picture) => picture));
  return mixed.slice(0, MOST_HANDOUT_PICTURES).map((picture, at) => ({
    letter: String.fromCharCode(65 + at),
    picture,
    orders: entryAt(groups, picture),
  }));
}
