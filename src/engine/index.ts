/**
 * The engine's door for scripts in Node: everything here is pure and deterministic.
 * DOOR.md says how to use it; what a compiler would say of missing arguments, it says itself.
 * Names that end in 'Inside' are the engine's own, where what they give and throw is written.
 */
import { asked } from './base/asked.ts';
import { checkedLabD50 as checkedLabD50Inside } from './colour/checked-lab.ts';
import { deltaE2000 as deltaE2000Inside } from './colour/delta-e.ts';
import { xyzD50 as xyzD50Inside } from './colour/lab.ts';
import { srgbHexFromLab as srgbHexFromLabInside } from './colour/screen-colour.ts';
import { screensToMake as screensToMakeInside } from './explore/prepare/screens-to-make.ts';
import { explore as exploreInside } from './explore/search/explorer.ts';
import { checkHolds as checkHoldsInside } from './explore/settings/check-holds.ts';
import { checkExplore as checkExploreInside } from './explore/settings/check.ts';
import { veils as veilsInside } from './explore/veil/veil.ts';
import { expectedError as expectedErrorInside } from './ink/certainty/expected-error.ts';
import {
  filmFromReadings as filmFromReadingsInside,
  inkCurvesFromColours as inkCurvesFromColoursInside,
  inkCurvesOn as inkCurvesOnInside,
  twoBackground as twoBackgroundInside,
} from './ink/characterise/characterise.ts';
import {
  coloursFromPhoto as coloursFromPhotoInside,
  drawdownFromPhoto as drawdownFromPhotoInside,
} from './ink/characterise/drawdown-photo.ts';
import { guessInk as guessInkInside } from './ink/characterise/guess.ts';
import { checkReadings as checkReadingsInside, measuredInk as measuredInkInside } from './ink/characterise/measured-ink.ts';
import { inkDrift as inkDriftInside, measuredAgain as measuredAgainInside } from './ink/drift/drift.ts';
import { curveFromColour as curveFromColourInside } from './ink/film/curves.ts';
import { dryFilmUm as dryFilmUmInside } from './ink/film/dry-film.ts';
import { filmFactor as filmFactorInside } from './ink/film/film-factor.ts';
import {
  filmBands as filmBandsInside,
  filmMatrix as filmMatrixInside,
  infiniteReflectance as infiniteReflectanceInside,
  stackReflectance as stackReflectanceInside,
} from './ink/film/film.ts';
import { trappingOn as trappingOnInside } from './ink/film/printing.ts';
import { insideOf as insideOfInside, readThrough as readThroughInside } from './ink/film/saunderson.ts';
import {
  checkSquares as checkSquaresInside,
  fitOverprints as fitOverprintsInside,
  fittedInk as fittedInkInside,
} from './ink/fit/fit-overprints.ts';
import { fitFilms as fitFilmsInside } from './ink/fit/fit-stacks.ts';
import { fitTargetSteps as fitTargetStepsInside } from './ink/fit/fit-target.ts';
import { letdownFor as letdownForInside } from './ink/mix/letdown.ts';
import { matchInk as matchInkInside, matchInkSteps as matchInkStepsInside } from './ink/mix/match.ts';
import { letDown as letDownInside, mixInks as mixInksInside } from './ink/mix/mix.ts';
import { paperFromColour as paperFromColourInside, paperFromCurve as paperFromCurveInside } from './ink/paper/paper-from.ts';
import { stacksOf as stacksOfInside } from './ink/target/target.ts';
import {
  recipeAsPulled as recipeAsPulledInside,
  recipesAsPulled as recipesAsPulledInside,
  sheetAsPulled as sheetAsPulledInside,
  sheetsAsPulled as sheetsAsPulledInside,
} from './log/as-pulled.ts';
import { checkLog as checkLogInside } from './log/check.ts';
import { editionRecord as editionRecordInside, numberSheets as numberSheetsInside } from './log/edition/edition-sheets.ts';
import {
  checkEdition as checkEditionInside,
  editionFacts as editionFactsInside,
  editionMarks as editionMarksInside,
  newEdition as newEditionInside,
} from './log/edition/edition.ts';
import { inOrder as inOrderInside, standing as standingInside } from './log/events.ts';
import { writeLog as writeLogInside } from './log/log-file.ts';
import { mergeLogs as mergeLogsInside } from './log/merge.ts';
import { planRest as planRestInside } from './log/rest.ts';
import { pairsOf as pairsOfInside } from './log/turns.ts';
import { canonicalOrder as canonicalOrderInside } from './order/canonical.ts';
import { countOrderClasses as countOrderClassesInside } from './order/count/count.ts';
import { orderClasses as orderClassesInside } from './order/enumerate.ts';
import { groupOrders as groupOrdersInside } from './order/groups/group-orders.ts';
import { dryingPairs as dryingPairsInside, freeSwaps as freeSwapsInside, overlapsOf as overlapsOfInside } from './order/overlaps.ts';
import { sampleOrder as sampleOrderInside } from './order/sample.ts';
import { demoProject as demoProjectInside } from './project/demo.ts';
import { writeProject as writeProjectInside } from './project/write.ts';
import { checkPlan as checkPlanInside } from './pullorder/check-plan.ts';
import { planPulls as planPullsInside } from './pullorder/planner.ts';
import { driftedRecipes as driftedRecipesInside } from './recipe/drifted.ts';
import { relatedRecipes as relatedRecipesInside } from './recipe/related-recipes.ts';
import { studioOfRecipe as studioOfRecipeInside, recipeOf as recipeOfInside, writeRecipe as writeRecipeInside } from './recipe/write.ts';
import { drawerShape as drawerShapeInside } from './shapes/place/drawer-shape.ts';
import { cellLab as cellLabInside, colourCells as colourCellsInside, stateColours as stateColoursInside } from './stack/appearance.ts';
import { buildCellMap as buildCellMapInside } from './stack/cell-map.ts';
import { stackLayers as stackLayersInside } from './stack/layers.ts';
import { paintThumbnail as paintThumbnailInside } from './stack/paint.ts';
import { printError as printErrorInside, pullsError as pullsErrorInside } from './stack/print-error.ts';
import { placedSpans as placedSpansInside } from './stack/screen-spans.ts';
import { paintView as paintViewInside } from './stack/view.ts';
import { planVisit as planVisitInside } from './visit/visit.ts';

export { EngineError } from './base/error.ts';
export type { Problem } from './base/error.ts';
export { BANDS, WAVELENGTHS_NM } from './colour/weights.ts';
export { demoStocks } from './ink/demo/demo-stocks.ts';
export { GEOMETRIES, TRAPPING_SOURCE, USUAL_SURFACE, USUAL_TRAPPING } from './ink/film/printing.ts';
export type { Printing, Surface, Trapping } from './ink/film/printing.ts';
export { MESH_TABLE } from './ink/film/mesh-table.ts';
export { OPACITIES, OPACITY } from './ink/characterise/guess.ts';
export { PAPER_PRESETS } from './ink/paper/paper-presets.ts';
export { readCgats } from './ink/cgats/read-cgats.ts';
export { readShapes } from './shapes/read/read-shapes.ts';
export type { ReadShape } from './shapes/read/read-shapes.ts';
export { readRecipe } from './recipe/read.ts';
export { readLog } from './log/log-file.ts';
export { measuredPairs } from './log/turns.ts';
export type { OrderPairs } from './log/turns.ts';
export { readProject } from './project/read.ts';
export type { Lab } from './colour/lab.ts';
export type { CellMap, Pull, RowGrid, Stack } from './stack/types.ts';
export type { Studio, Studio as Drawer } from './studio/studio.ts';
export type { MatchAnswer, MatchOptions, MatchResult } from './ink/mix/match.ts';
export type { ExpectedColour } from './ink/certainty/expected-error.ts';
export type { DriftLine } from './ink/drift/drift.ts';
export type { StackSquare, TargetFit, TargetFitInput } from './ink/fit/fit-target.ts';
export type { DriftedRecipe } from './recipe/drifted.ts';
export type { PrintError } from './stack/print-error.ts';
export type { Grounds } from './ink/characterise/card.ts';
export type { FilmBands, FilmCurves } from './ink/film/film.ts';
export type { Ink, Paper } from './ink/types.ts';
export type { Mesh, PlacedShape, Screen, Shape } from './shapes/types.ts';
export type { Overlap, OverlapOptions, SharedPair } from './order/overlaps.ts';
export type { ExploreSettings, Hold, Variant } from './explore/types.ts';
export type { VeilOptions, VeilProposal, VeilResult } from './explore/veil/veil-types.ts';
export type { ScreensToMake } from './explore/prepare/screens-to-make.ts';
export type { PrintScreens, ScreensAsked } from './explore/prepare/screen-sets.ts';
export type { RelatedRecipes as Family } from './recipe/related-recipes.ts';
export type { Recipe } from './recipe/types.ts';
export type { PlanOptions } from './pullorder/planner.ts';
export type { PlanProblem, PlanPull, PlanSheet, PullPlan, SetUp } from './pullorder/types.ts';
export type { SheetAsPulled } from './log/as-pulled.ts';
export type { Edition, EditionCounts, EditionFacts } from './log/edition/edition.ts';
export type { EditionRecord, EditionSheet } from './log/edition/edition-sheets.ts';
export type { RestInput } from './log/rest.ts';
export type { Deviation, LogEvent, LoggedSheet, VisitHead, VisitLog } from './log/types.ts';
export type { PressPlan, VisitInput } from './visit/visit.ts';
export type { Project } from './project/types.ts';

export const deltaE2000 = asked('deltaE2000', deltaE2000Inside, 'lab1', 'lab2');
export const labD50 = asked('labD50', checkedLabD50Inside, 'reflectance');
export const xyzD50 = asked('xyzD50', xyzD50Inside, 'reflectance');
export const srgbHexFromLab = asked('srgbHexFromLab', srgbHexFromLabInside, 'lab');
export const buildCellMap = asked('buildCellMap', buildCellMapInside, 'placed', 'grid');
export const cellLab = asked('cellLab', cellLabInside, 'map', 'layers', 'paperReflectance');
export const colourCells = asked('colourCells', colourCellsInside, 'map', 'layers', 'paperReflectance');
export const stateColours = asked('stateColours', stateColoursInside, 'map', 'layers', 'paperReflectance');
export const paintThumbnail = asked('paintThumbnail', paintThumbnailInside, 'map', 'colours', 'widthPx', 'out');
export const paintView = asked('paintView', paintViewInside, 'drawer', 'stack', 'view');
export const placedSpans = asked('placedSpans', placedSpansInside, 'stack', 'drawer', 'grid');
export const stackLayers = asked('stackLayers', stackLayersInside, 'stack', 'drawer');
export const curveFromColour = asked('curveFromColour', curveFromColourInside, 'lab');
export const dryFilmUm = asked('dryFilmUm', dryFilmUmInside, 'mesh');
export const filmBands = asked('filmBands', filmBandsInside, 'kx', 'sx');
export const filmMatrix = asked('filmMatrix', filmMatrixInside, 'kx', 'sx');
export const infiniteReflectance = asked('infiniteReflectance', infiniteReflectanceInside, 'ks');
export const stackReflectance = asked('stackReflectance', stackReflectanceInside, 'films', 'paper');
export const trappingOn = asked('trappingOn', trappingOnInside, 'trapping', 'under', 'over');
export const insideOf = asked('insideOf', insideOfInside, 'read', 'options');
export const readThrough = asked('readThrough', readThroughInside, 'r', 'options');
export const filmFactor = asked('filmFactor', filmFactorInside, 'ink');
export const filmFromReadings = asked('filmFromReadings', filmFromReadingsInside, 'rw', 'rb', 'options');
export const inkCurvesFromColours = asked('inkCurvesFromColours', inkCurvesFromColoursInside, 'overWhite', 'overBlack', 'white', 'black');
export const inkCurvesOn = asked('inkCurvesOn', inkCurvesOnInside, 'overWhite', 'overBlack', 'grounds');
export const twoBackground = asked('twoBackground', twoBackgroundInside, 'rw', 'rb', 'gw', 'gb');
export const letDown = asked('letDown', letDownInside, 'ink', 'base', 'parts');
export const mixInks = asked('mixInks', mixInksInside, 'stocks', 'head');
export const letdownFor = asked('letdownFor', letdownForInside, 'wanted', 'ink', 'base', 'options');
export const matchInk = asked('matchInk', matchInkInside, 'target', 'stocks');
export const matchInkSteps = asked('matchInkSteps', matchInkStepsInside, 'target', 'stocks');
export const checkReadings = asked('checkReadings', checkReadingsInside, 'readings');
export const measuredInk = asked('measuredInk', measuredInkInside, 'naming', 'readings');
export const expectedError = asked('expectedError', expectedErrorInside, 'films', 'printing');
export const inkDrift = asked('inkDrift', inkDriftInside, 'ink', 'paper');
export const measuredAgain = asked('measuredAgain', measuredAgainInside, 'ink', 'measurement');
export const fitTargetSteps = asked('fitTargetSteps', fitTargetStepsInside, 'options');
export const stacksOf = asked('stacksOf', stacksOfInside, 'options');
export const driftedRecipes = asked('driftedRecipes', driftedRecipesInside, 'recipes', 'ink');
export const printError = asked('printError', printErrorInside, 'stack', 'drawer');
export const pullsError = asked('pullsError', pullsErrorInside, 'pulls', 'drawer');
export const fitFilms = asked('fitFilms', fitFilmsInside, 'options');
export const checkSquares = asked('checkSquares', checkSquaresInside, 'squares', 'inks');
export const fitOverprints = asked('fitOverprints', fitOverprintsInside, 'squares', 'inks', 'paper');
export const fittedInk = asked('fittedInk', fittedInkInside, 'ink', 'fit');
export const guessInk = asked('guessInk', guessInkInside, 'colour', 'opacity');
export const coloursFromPhoto = asked('coloursFromPhoto', coloursFromPhotoInside, 'bare', 'patches', 'paper');
export const drawdownFromPhoto = asked('drawdownFromPhoto', drawdownFromPhotoInside, 'photo');
export const paperFromColour = asked('paperFromColour', paperFromColourInside, 'sheet', 'lab');
export const paperFromCurve = asked('paperFromCurve', paperFromCurveInside, 'sheet', 'curve');
export const drawerShape = asked('drawerShape', drawerShapeInside, 'read', 'id');
export const canonicalOrder = asked('canonicalOrder', canonicalOrderInside, 'order', 'neighbours');
export const countOrderClasses = asked('countOrderClasses', countOrderClassesInside, 'pulls', 'overlaps');
export const dryingPairs = asked('dryingPairs', dryingPairsInside, 'stack', 'drawer', 'options');
export const freeSwaps = asked('freeSwaps', freeSwapsInside, 'stack', 'drawer', 'options');
export const overlapsOf = asked('overlapsOf', overlapsOfInside, 'stack', 'drawer', 'options');
export const groupOrders = asked('groupOrders', groupOrdersInside, 'stack', 'drawer', 'options');
export const orderClasses = asked('orderClasses', orderClassesInside, 'pulls', 'overlaps');
export const sampleOrder = asked('sampleOrder', sampleOrderInside, 'pulls', 'overlaps', 'seed');
export const checkExplore = asked('checkExplore', checkExploreInside, 'settings', 'drawer', 'bench');
export const checkHolds = asked('checkHolds', checkHoldsInside, 'pulls', 'holds');
export const explore = asked('explore', exploreInside, 'project', 'options');
export const veils = asked('veils', veilsInside, 'stack', 'drawer');
export const screensToMake = asked('screensToMake', screensToMakeInside, 'asked');
export const recipeFamilies = asked('recipeFamilies', relatedRecipesInside, 'recipes');
export const drawerOfRecipe = asked('drawerOfRecipe', studioOfRecipeInside, 'recipe');
export const recipeOf = asked('recipeOf', recipeOfInside, 'pulls', 'drawer', 'head');
export const writeRecipe = asked('writeRecipe', writeRecipeInside, 'recipe');
export const checkPlan = asked('checkPlan', checkPlanInside, 'problem', 'plan');
export const planPulls = asked('planPulls', planPullsInside, 'problem', 'options');
export const recipeAsPulled = asked('recipeAsPulled', recipeAsPulledInside, 'recipe', 'sheet', 'head');
export const recipesAsPulled = asked('recipesAsPulled', recipesAsPulledInside, 'head', 'events');
export const sheetAsPulled = asked('sheetAsPulled', sheetAsPulledInside, 'recipe', 'sheet', 'events');
export const sheetsAsPulled = asked('sheetsAsPulled', sheetsAsPulledInside, 'head', 'events');
export const checkLog = asked('checkLog', checkLogInside, 'head', 'events');
export const checkEdition = asked('checkEdition', checkEditionInside, 'counts');
export const editionFacts = asked('editionFacts', editionFactsInside, 'recipe');
export const editionMarks = asked('editionMarks', editionMarksInside, 'counts');
export const newEdition = asked('newEdition', newEditionInside, 'recipe');
export const editionRecord = asked('editionRecord', editionRecordInside, 'edition', 'head', 'events');
export const numberSheets = asked('numberSheets', numberSheetsInside, 'edition', 'sheets', 'pulls');
export const inOrder = asked('inOrder', inOrderInside, 'events');
export const standing = asked('standing', standingInside, 'events');
export const writeLog = asked('writeLog', writeLogInside, 'head', 'events');
export const mergeLogs = asked('mergeLogs', mergeLogsInside, 'one', 'other');
export const planRest = asked('planRest', planRestInside, 'input', 'budgetMs');
export const pairsOf = asked('pairsOf', pairsOfInside, 'overlaps');
export const planVisit = asked('planVisit', planVisitInside, 'input', 'budgetMs');
export const demoProject = asked('demoProject', demoProjectInside, 'files');
export const writeProject = asked('writeProject', writeProjectInside, 'project');
