import type { Room } from '../rooms.ts';
import { say } from '../words/en/help/rooms.ts';

/** What one does in a room: a thing to do, and how. Labels of the app stand between asterisks. */
type HowTo = readonly [what: string, how: string];

/** The page of help of a room. */
export interface RoomHelp {
  /** What the room is for, in two or three sentences. */
  readonly about: string;
  /** What its picture shows, for those who do not see it. */
  readonly picture: string;
  readonly howTo: readonly HowTo[];
}

/** Help of every room. */
export const ROOM_HELP: Readonly<Record<Room, RoomHelp>> = {
  drawer: {
    about: say.shapesAreOutlinesIn,
    picture: say.drawerShapesOnLeft,
    howTo: [
      [say.bringInDrawings, say.dropSVGFilesAnywhere],
      [say.traceCutOutOr, say.dropPhotoOrScan],
      [say.drawCutAndJoin, say.drawShapeFreehandOr],
      [say.makeScreen, say.chooseShapeItBecomes],
      [say.setPaper, say.sizeAndMarginsOf],
      [say.sayWhatIsMade, say.screenIsDrawnTo],
      [say.goOn, say.putOnBenchLays],
    ],
  },
  inks: {
    about: say.inkIsHowMuch,
    picture: say.inksShelfOfInks,
    howTo: [
      [say.addInk, say.pressAddInkFrom],
      [say.mixAndLetDown, say.openLetItDown],
      [say.readColour, say.pointAtSquareOf],
      [say.checkItAgainstPull, say.printAsTargetGives],
    ],
  },
  wall: {
    about: say.wallHangsManyDifferent,
    picture: say.wallManyPrintsHanging,
    howTo: [
      [say.look, say.walkAlongPrintsWith],
      [say.sayWhatMayChange, say.orderInksHowPulls],
      [say.keep, say.keepPutsPrintInto],
      [say.findMoreLikeIt, say.moreFromThisPrint],
      [say.arrange, say.arrangeByMeasuresAlike],
      [say.beforeVisit, say.screensToMakeTells],
    ],
  },
  bench: {
    about: say.oneStackLargeStrip,
    picture: say.benchPrintInMiddle,
    howTo: [
      [say.changeOrder, say.dragStateAlongStrip],
      [say.changePull, say.chooseItsStateInk],
      [say.readPlace, say.clickPictureItsColour],
      [say.softenIt, say.findVeilLooksFor],
      [say.seeWhatNext, say.whatNextHangsWhat],
      [say.lookFromAfar, say.underFilmsApartTwo],
      [say.keepIt, say.keepAsRecipePuts],
    ],
  },
  chest: {
    about: say.chestHoldsRecipesThat,
    picture: say.chestKeptRecipesWith,
    howTo: [
      [say.seeHowItIs, say.howItIsBuilt],
      [say.takeItToPress, say.takeToPressGives],
      [say.printEdition, say.editionNumbersSheetsProofs],
      [say.giveItAway, say.saveAsFileOr],
    ],
  },
  press: {
    about: say.pressTurnsRecipesAnd,
    picture: say.pressRecipesWithNumbers,
    howTo: [
      [say.plan, say.giveRecipesTheirSheets],
      [say.shortenIt, say.readAdviceBelowOrder],
      [say.largerThanBed, say.cutIntoSectionsBelow],
      [say.printPapers, say.benchSheetDayCards],
      [say.logAtPress, say.tickSheetsAsThey],
      [say.whenDayGoesOtherwise, say.planRestFindsOrder],
      [say.takeItAlong, say.visitIsOneFile],
    ],
  },
  lesson: {
    about: say.allOrdersOfTwo,
    picture: say.lessonLargePrintIts,
    howTo: [
      [say.buildIt, say.pressSpaceBarOne],
      [say.changeOrder, say.dragPullInList],
      [say.makePrintsAlike, say.makeInkClearerOr],
      [say.compare, say.chooseTwoPrintsTo],
      [say.guessFirst, say.guessHidesAnswerUntil],
      [say.inClass, say.projectorFillsScreenHandout],
    ],
  },
};
