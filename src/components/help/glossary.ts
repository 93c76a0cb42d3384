import { numberLocale } from '../../engine/words/language.ts';
import { say } from '../words/en/help/glossary.ts';

/** A word, what it means, and whether it is ours: other words are the trade's or of a standard. */
export interface GlossaryWord {
  readonly word: string;
  readonly means: string;
  readonly ours?: true;
}

const WORDS: readonly GlossaryWord[] = [
  { word: 'AP', means: say.artistsProofPrintBeside },
  { word: 'BAT', means: say.bonTirerProofThat },
  { word: say.bed, means: say.tableWithFrameTo },
  { word: say.benchSheet, means: say.paperOfOneDay, ours: true },
  { word: say.buildUp, means: say.sheetShownPullBy, ours: true },
  { word: say.cell, means: say.partOfSheetThat, ours: true },
  { word: say.clash, means: say.twoOrMoreConditions, ours: true },
  { word: say.condition, means: say.whatEveryPrintOf, ours: true },
  { word: say.contrastOfEdges, means: say.lengthOfAllEdges, ours: true },
  { word: say.crossed, means: say.ofTwoPrintsWith, ours: true },
  { word: say.drawdown, means: say.inkSpreadByBlade },
  { word: say.edition, means: say.oneRecipePrintedNumber },
  { word: say.emulsion, means: say.lightSensitiveCoatOf },
  { word: 'EV', means: say.editionVarieeNumberedEdition },
  { word: say.exposure, means: say.hardeningOfEmulsionBy },
  { word: say.filmPositive, means: say.opaqueDrawingThroughWhich },
  { word: say.freeSwap, means: say.twoNeighbouringPullsThat, ours: true },
  { word: say.ghost, means: say.faintTraceOfEarlier },
  { word: 'HC', means: say.horsCommercePrintOf },
  { word: say.inkFilm, means: say.coatOfInkThat },
  { word: say.keptAsItCame, means: say.sheetThatWasPulled, ours: true },
  { word: say.lays, means: say.threeStopsAgainstWhich },
  { word: say.letDown, means: say.madeClearerWithTransparent },
  { word: say.mesh, means: say.fabricOfScreenThreads },
  { word: say.mount, means: say.toPutScreenInto },
  { word: say.offset, means: say.howFarPullLies, ours: true },
  { word: say.orderClass, means: say.allOrdersOfSame, ours: true },
  {
    word: say.orderGraph,
    means: say.pullsAsDotsWith,
    ours: true,
  },
  { word: say.over, means: say.sheetPrintedBeyondWhat },
  { word: say.overprintColour, means: say.colourThatAppearsWhere },
  { word: say.passport, means: say.paperThatGoesWith, ours: true },
  { word: 'PP', means: say.printersProofPrintFor },
  { word: say.print, means: say.whatHangsOnWall },
  { word: say.pull, means: say.oneImpressionOneScreen },
  { word: say.pullOrder, means: say.setUpsOneAfter, ours: true },
  { word: say.rack, means: say.shelvesOnWhichSheets },
  { word: say.recipe, means: say.keptPrintWithAll, ours: true },
  {
    word: say.reclaim,
    means: say.toWashStencilOut,
  },
  { word: say.registerMarks, means: say.crossesOnFilmsBy },
  { word: say.screen, means: say.stencilOnMeshIn },
  { word: say.setUp, means: say.oneScreenOnPress, ours: true },
  { word: say.shape, means: say.closedOutlinesInMm },
  { word: say.snapOff, means: say.gapBetweenMeshAnd },
  { word: say.squeegee, means: say.bladeThatPullsInk },
  { word: say.stack, means: say.pullsOfOneSheet },
  { word: say.state, means: say.sheetAfterSoMany },
  { word: say.stepTest, means: say.oneScreenExposedIn },
  { word: say.stroke, means: say.onePassOfSqueegee },
  { word: say.testSheet, means: say.sheetOfVisitOn },
  { word: say.threshold, means: say.ofPictureThatIs },
  { word: say.transparentBase, means: say.inkWithoutPigment },
  { word: say.trapping, means: say.howThickFilmIs },
  { word: say.veil, means: say.oneMoreTranslucentPull, ours: true },
  { word: say.visit, means: say.daysAndHoursAt, ours: true },
  { word: say.washUp, means: say.cleaningScreenAndSqueegee },
  { word: 'ΔE00', means: say.howFarTwoColours },
];

/** Every word that is ours or the trade's and stands in the app, by the alphabet. */
export const GLOSSARY: readonly GlossaryWord[] = WORDS.toSorted((a, b) => a.word.localeCompare(b.word, numberLocale()));

/** Words that have all of what is looked for in them or their meaning. */
export function wordsWith(text: string): readonly GlossaryWord[] {
  const sought = text.toLowerCase().split(/\s+/u).filter(Boolean);
  return GLOSSARY.filter(({ word, means }) => sought.every((part) => `${word} ${means}`.toLowerCase().includes(part)));
}
