import type { KeyWords } from '../../ui/key-list.ts';

/** The keys of the wall, as they are listed. */
export const WALL_KEYS: readonly KeyWords[] = [
  ['Arrows', 'to the next print that way'],
  ['Home, End, Page Up, Page Down', 'first, last, and by three rows'],
  ['Enter', 'open on the Bench'],
  ['B', 'build up'],
  ['K', 'keep in the Chest'],
  ['Space bar', 'select, or take out of the selection'],
  ['D', 'differences: compare the selected prints'],
  ['H', 'pin: hang first on this wall and the next, never filtered away'],
  ['F', 'filter'],
  ['S', 'save this print as a picture'],
  ['+ and −', 'closer and further'],
  ['0', 'the whole wall'],
  ['Shift and drag', 'select the prints in a box'],
  ['Escape', 'close what is open, then select none'],
];
