import type { KeyWords } from './ui/kit/key-list.ts';

/** A room of the studio: what navigation, the address, help and the tests know of it. */
export interface RoomEntry {
  /** Its name in the store and of its folder here. */
  readonly id: string;
  /** What its link is called. */
  readonly label: string;
  /** The element that shows it, in `<folder>/<element>.ts`. */
  readonly element: string;
  /** What the page's address ends in there. */
  readonly address: string;
  /** What one does there, in one line. */
  readonly help: string;
  /** The keys that do something there, beyond those that do it everywhere. */
  readonly keys: readonly KeyWords[];
}

/** All rooms, as they stand in the navigation. */
export const ROOMS = [
  {
    id: 'drawer',
    label: 'Drawer',
    element: 'drawer-room',
    address: '#drawer',
    help: 'Shapes, and the screens made of them',
    keys: [
      ['Tab, on the sheet', 'to the next shape of the screen'],
      ['Arrows, on a shape', 'move it by 1 mm; with Shift, by 10 mm; on the whole sheet with Alt, by 0.1 mm'],
      ['Escape, while one drags', 'let the shape back to where it was'],
      ['Shift, while one drags', 'along one axis; turn by whole 15°'],
    ],
  },
  {
    id: 'inks',
    label: 'Inks',
    element: 'inks-room',
    address: '#inks',
    help: 'Inks, the paper, and how inks look over each other',
    keys: [
      ['Arrows, on the overprints', 'to the next square; Page Up and Page Down, by eight rows'],
      ['Home and End, on the overprints', 'first and last of the row; with Ctrl, of all'],
      ['Enter or space bar, on a square', 'show its curve; on a photo, take the patch there'],
      ['Arrows, on a photo', 'move the patch; with Shift, ten times as far'],
      ['Enter, in a measured square', 'to the next square'],
    ],
  },
  {
    id: 'wall',
    label: 'Wall',
    element: 'wall-room',
    address: '#wall',
    help: 'Many different prints from the same screens and inks',
    keys: [
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
    ],
  },
  {
    id: 'bench',
    label: 'Bench',
    element: 'bench-room',
    address: '#bench',
    help: 'One print, pull by pull',
    keys: [
      ['B, held', 'build the print up'],
      ['+ and −', 'closer and further'],
      ['0', 'the whole sheet'],
      ['Arrows, on the picture', 'move the selected pull by 0.1 mm, with Shift by 1 mm; with none selected, the sheet'],
      ['Enter, on the picture', 'read the colour in the middle; a click or tap reads it anywhere'],
      ['Dragging, on the picture', 'the selected pulls move on the sheet; beside them, or with Alt, the sheet'],
      ['Left and right, on the strip', 'select the pull before or after; Home and End, the first or last'],
      ['Shift and left or right, or click', 'select all pulls up to there; Ctrl and click, one more or one less'],
      ['Alt and left or right', 'pull what is selected earlier or later'],
      ['Delete', 'remove what is selected'],
      ['Escape, while one drags', 'let the pull back to where it was'],
      ['Arrows, in the graph', 'to the next pull or overlap; Enter selects the pull'],
    ],
  },
  {
    id: 'chest',
    label: 'Chest',
    element: 'chest-room',
    address: '#chest',
    help: 'Recipes kept, and visits to the press',
    keys: [],
  },
  {
    id: 'press',
    label: 'Press',
    element: 'press-room',
    address: '#press',
    help: 'The order of pulls for a visit, and its log',
    keys: [['Up and down, on the set-ups', 'to the set-up before or after; Home and End, the first or last']],
  },
  {
    id: 'lesson',
    label: 'Lesson',
    element: 'lesson-room',
    address: '#lesson',
    help: 'How the order of pulls changes a print',
    keys: [
      ['Space bar', 'one pull more on the sheet; with Shift, one fewer'],
      ['Alt and up or down, on a pull', 'pull it later or earlier'],
      ['Tab, on the sheet', 'to the next shape'],
      ['Arrows, on a shape', 'move it by 5 mm; with Shift, by 50 mm'],
      ['Arrows, in the graph', 'to the next pull or overlap; Enter chooses the pull'],
    ],
  },
] as const satisfies readonly RoomEntry[];

/** A room's name in the store. */
export type Room = (typeof ROOMS)[number]['id'];

/** Where one comes in. */
export const FIRST_ROOM: Room = 'wall';

/** The room that an address ends in, as `location.hash` gives it; null where there is none. */
export function roomAt(address: string): Room | null {
  return ROOMS.find((room) => room.address === address)?.id ?? null;
}

/** What is known of a room. */
export function roomEntry(id: Room): (typeof ROOMS)[number] {
  // The type of `id` is made of the table, so that a row is always found.
  return ROOMS.find((room) => room.id === id) ?? ROOMS[0];
}
