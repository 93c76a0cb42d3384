import { type Room, roomEntry } from './rooms.ts';

/** The elements of all rooms in the table; they stand in folders of their own, and load when they are entered. */
const ELEMENTS = import.meta.glob('./*/*-room.ts');

/** Fetches the code of a room. */
export async function fetchRoom(room: Room): Promise<void> {
  const { id, element } = roomEntry(room);
  await ELEMENTS[`./${id}/${element}.ts`]?.();
}
