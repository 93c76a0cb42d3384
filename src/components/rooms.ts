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
}

/** All rooms, as they stand in the navigation. */
export const ROOMS = [
  { id: 'drawer', label: 'Drawer', element: 'drawer-room', address: '#drawer', help: 'Shapes, and the screens made of them' },
  { id: 'inks', label: 'Inks', element: 'inks-room', address: '#inks', help: 'Inks, the paper, and how inks look over each other' },
  { id: 'wall', label: 'Wall', element: 'wall-room', address: '#wall', help: 'Many different prints from the same screens and inks' },
  { id: 'bench', label: 'Bench', element: 'bench-room', address: '#bench', help: 'One print, pull by pull' },
  { id: 'chest', label: 'Chest', element: 'chest-room', address: '#chest', help: 'Recipes kept, and visits to the press' },
  { id: 'press', label: 'Press', element: 'press-room', address: '#press', help: 'The order of pulls for a visit, and its log' },
  { id: 'lesson', label: 'Lesson', element: 'lesson-room', address: '#lesson', help: 'How the order of pulls changes a print' },
] as const satisfies readonly RoomEntry[];

/** A room's name in the store. */
export type Room = (typeof ROOMS)[number]['id'];

/** The room that an address ends in, as `location.hash` gives it; null where there is none. */
export function roomAt(address: string): Room | null {
  return ROOMS.find((room) => room.address === address)?.id ?? null;
}

/** What is known of a room. */
export function roomEntry(id: Room): (typeof ROOMS)[number] {
  // The type of `id` is made of the table, so that a row is always found.
  return ROOMS.find((room) => room.id === id) ?? ROOMS[0];
}
