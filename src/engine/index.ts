/**
 * The engine's door for scripts in Node: everything here is pure and deterministic.
 * DOOR.md says how to use it.
 */
export { EngineError, type Problem } from './base/error.ts';
export { BANDS, WAVELENGTHS_NM } from './colour/weights.ts';
export { deltaE2000 } from './colour/delta-e.ts';
export { checkedLabD50 as labD50 } from './colour/checked-lab.ts';
export { xyzD50 } from './colour/lab.ts';
export { srgbHexFromLab } from './colour/screen-colour.ts';
export type { Lab } from './colour/lab.ts';
export { type CellMap, type Pull, type RowGrid, type Stack } from './stack/types.ts';
export type { Studio, Studio as Drawer } from './studio/studio.ts';
export { buildCellMap } from './stack/cell-map.ts';
export { cellLab, colourCells, stateColours } from './stack/appearance.ts';
export { paintThumbnail } from './stack/paint.ts';
export { paintView } from './stack/view.ts';
export { placedSpans } from './stack/screen-spans.ts';
export { stackLayers } from './stack/layers.ts';
export { curveFromColour } from './ink/film/curves.ts';
export { demoStocks } from './ink/demo/demo-stocks.ts';
export { dryFilmUm } from './ink/film/dry-film.ts';
export { filmBands, filmMatrix, infiniteReflectance, stackReflectance } from './ink/film/film.ts';
export {
  GEOMETRIES,
  TRAPPING_SOURCE,
  trappingOn,
  USUAL_SURFACE,
  USUAL_TRAPPING,
  type Printing,
  type Surface,
  type Trapping,
} from './ink/film/printing.ts';
export { insideOf, readThrough } from './ink/film/saunderson.ts';
export { filmFactor } from './ink/film/film-factor.ts';
export { filmFromReadings, inkCurvesFromColours, inkCurvesOn, twoBackground } from './ink/characterise/characterise.ts';
export { letDown, mixInks } from './ink/mix/mix.ts';
export { letdownFor } from './ink/mix/letdown.ts';
export { type MatchAnswer, matchInk, matchInkSteps, type MatchOptions, type MatchResult } from './ink/mix/match.ts';
export { MESH_TABLE } from './ink/film/mesh-table.ts';
export { checkReadings, measuredInk } from './ink/characterise/measured-ink.ts';
export { expectedError, type ExpectedColour } from './ink/certainty/expected-error.ts';
export { type DriftLine, inkDrift, measuredAgain } from './ink/drift/drift.ts';
export { fitTargetSteps, type StackSquare, type TargetFit, type TargetFitInput } from './ink/fit/fit-target.ts';
export { stacksOf } from './ink/target/target.ts';
export { type DriftedRecipe, driftedRecipes } from './recipe/drifted.ts';
export { printError, type PrintError, pullsError } from './stack/print-error.ts';
export { fitFilms } from './ink/fit/fit-stacks.ts';
export { checkSquares, fitOverprints, fittedInk } from './ink/fit/fit-overprints.ts';
export { guessInk, OPACITIES, OPACITY } from './ink/characterise/guess.ts';
export { type Grounds } from './ink/characterise/card.ts';
export { coloursFromPhoto, drawdownFromPhoto } from './ink/characterise/drawdown-photo.ts';
export { PAPER_PRESETS } from './ink/paper/paper-presets.ts';
export { paperFromColour, paperFromCurve } from './ink/paper/paper-from.ts';
export { readCgats } from './ink/cgats/read-cgats.ts';
export type { FilmBands, FilmCurves } from './ink/film/film.ts';
export type { Ink, Paper } from './ink/types.ts';
export { readShapes, type ReadShape } from './shapes/read/read-shapes.ts';
export { drawerShape } from './shapes/place/drawer-shape.ts';
export type { Mesh, PlacedShape, Screen, Shape } from './shapes/types.ts';
export { canonicalOrder } from './order/canonical.ts';
export { countOrderClasses } from './order/count.ts';
export { dryingPairs, freeSwaps, overlapsOf } from './order/overlaps.ts';
export { groupOrders } from './order/groups/group-orders.ts';
export { orderClasses } from './order/enumerate.ts';
export { sampleOrder } from './order/sample.ts';
export type { Overlap, OverlapOptions, SharedPair } from './order/overlaps.ts';
export { checkExplore } from './explore/settings/check.ts';
export { checkHolds } from './explore/settings/check-holds.ts';
export { explore } from './explore/search/explorer.ts';
export type { ExploreSettings, Hold, Variant } from './explore/types.ts';
export type { VeilOptions, VeilProposal, VeilResult } from './explore/veil/veil-types.ts';
export { veils } from './explore/veil/veil.ts';
export { type ScreensToMake, screensToMake } from './explore/prepare/screens-to-make.ts';
export type { PrintScreens, ScreensAsked } from './explore/prepare/screen-sets.ts';
export { type RelatedRecipes as Family, relatedRecipes as recipeFamilies } from './recipe/related-recipes.ts';
export { readRecipe } from './recipe/read.ts';
export type { Recipe } from './recipe/types.ts';
export { studioOfRecipe as drawerOfRecipe, recipeOf, writeRecipe } from './recipe/write.ts';
export { checkPlan } from './pullorder/check-plan.ts';
export { planPulls } from './pullorder/planner.ts';
export type { PlanOptions } from './pullorder/planner.ts';
export type { PlanProblem, PlanPull, PlanSheet, PullPlan, SetUp } from './pullorder/types.ts';
export { recipeAsPulled, recipesAsPulled, type SheetAsPulled, sheetAsPulled, sheetsAsPulled } from './log/as-pulled.ts';
export { checkLog } from './log/check.ts';
export {
  checkEdition,
  type Edition,
  type EditionCounts,
  editionFacts,
  type EditionFacts,
  editionMarks,
  newEdition,
} from './log/edition/edition.ts';
export { type EditionRecord, editionRecord, type EditionSheet, numberSheets } from './log/edition/edition-sheets.ts';
export { inOrder, standing } from './log/events.ts';
export { readLog, writeLog } from './log/log-file.ts';
export { mergeLogs } from './log/merge.ts';
export { planRest, type RestInput } from './log/rest.ts';
export { measuredPairs, type OrderPairs, pairsOf } from './log/turns.ts';
export type { Deviation, LogEvent, LoggedSheet, VisitHead, VisitLog } from './log/types.ts';
export { planVisit, type PressPlan, type VisitInput } from './visit/visit.ts';
export { demoProject } from './project/demo.ts';
export { readProject, writeProject } from './project/read.ts';
export type { Project } from './project/types.ts';
