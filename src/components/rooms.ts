import type { KeyWords } from './ui/kit/key-list.ts';
import { say } from './words/en/app/rooms.ts';

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
    label: say.drawer,
    element: 'drawer-room',
    address: '#drawer',
    help: say.shapesAndScreensMade,
    keys: [
      [say.tabOnSheet, say.toNextShapeOf],
      [say.arrowsOnShape, say.moveItBy1],
      [say.escapeWhileOneDrags, say.letShapeBackTo],
      [say.shiftWhileOneDrags, say.alongOneAxisTurn],
    ],
  },
  {
    id: 'inks',
    label: say.inks,
    element: 'inks-room',
    address: '#inks',
    help: say.inksPaperAndHow,
    keys: [
      [say.arrowsOnOverprints, say.toNextSquarePage],
      [say.homeAndEndOn, say.firstAndLastOf],
      [say.enterOrSpaceBar, say.showItsCurveOn],
      [say.arrowsOnPhoto, say.movePatchWithShift],
      [say.enterInMeasuredSquare, say.toNextSquare],
    ],
  },
  {
    id: 'wall',
    label: say.wall,
    element: 'wall-room',
    address: '#wall',
    help: say.manyDifferentPrintsFrom,
    keys: [
      [say.arrows, say.toNextPrintThat],
      [say.homeEndPageUp, say.firstLastAndBy],
      [say.enter, say.openOnBench],
      ['B', say.buildUp],
      ['K', say.keepInChest],
      [say.spaceBar, say.selectOrTakeOut],
      ['D', say.differencesCompareSelectedPrints],
      ['H', say.pinHangFirstOn],
      ['F', 'filter'],
      ['S', say.saveThisPrintAs],
      [say.and, say.closerAndFurther],
      ['0', say.wholeWall],
      [say.shiftAndDrag, say.selectPrintsInBox],
      [say.ctrlA, say.selectAllPrints],
      [say.escape, say.closeWhatIsOpen],
    ],
  },
  {
    id: 'bench',
    label: say.bench,
    element: 'bench-room',
    address: '#bench',
    help: say.onePrintPullBy,
    keys: [
      [say.bHeld, say.buildPrintUp],
      [say.and, say.closerAndFurther],
      ['0', say.wholeSheet],
      [say.arrowsOnPicture, say.moveSelectedPullBy],
      [say.enterOnPicture, say.readColourInMiddle],
      [say.draggingOnPicture, say.selectedPullsMoveOn],
      [say.leftAndRightOn, say.selectPullBeforeOr],
      [say.shiftAndLeftOr, say.selectAllPullsUp],
      [say.altAndLeftOr, say.pullWhatIsSelected],
      [say.delete, say.removeWhatIsSelected],
      [say.escapeWhileOneDrags, say.letPullBackTo],
      [say.arrowsInGraph, say.toNextPullOr],
    ],
  },
  {
    id: 'chest',
    label: say.chest,
    element: 'chest-room',
    address: '#chest',
    help: say.recipesKeptAndVisits,
    keys: [],
  },
  {
    id: 'press',
    label: say.press,
    element: 'press-room',
    address: '#press',
    help: say.orderOfPullsFor,
    keys: [[say.upAndDownOn, say.toSetUpBefore]],
  },
  {
    id: 'lesson',
    label: say.lesson,
    element: 'lesson-room',
    address: '#lesson',
    help: say.howOrderOfPulls,
    keys: [
      [say.spaceBar, say.onePullMoreOn],
      [say.altAndUpOr, say.pullItLaterOr],
      [say.tabOnSheet, say.toNextShape],
      [say.arrowsOnShape, say.moveItBy5],
      [say.arrowsInGraph, say.toNextPullOrOverlap],
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
