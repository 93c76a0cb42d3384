/**
 * The engine's door for scripts in Node: everything here is pure and deterministic.
 * DEVELOPERS.md, 'Engine door', says how to use it.
 */
export { EngineError, type Problem } from './base/error.ts';
export { BANDS, deltaE2000, labD50, srgbHexFromLab, WAVELENGTHS_NM, xyzD50 } from './colour/index.ts';
export type { Lab } from './colour/lab.ts';
export {
  type CellMap,
  type Drawer,
  type Pull,
  type RowGrid,
  type Stack,
} from './stack/types.ts';
export {
  buildCellMap,
  cellLab,
  colourCells,
  paintThumbnail,
  paintView,
  placedSpans,
  stackLayers,
  stateColours,
} from './stack/index.ts';
export {
  curveFromColour,
  demoStocks,
  dryFilmUm,
  filmBands,
  filmFactor,
  filmMatrix,
  infiniteReflectance,
  inkCurvesFromColours,
  letDown,
  letdownFor,
  type MatchAnswer,
  matchInk,
  matchInkSteps,
  type MatchOptions,
  type MatchResult,
  MESH_TABLE,
  mixInks,
  checkReadings,
  checkSquares,
  coloursFromPhoto,
  drawdownFromPhoto,
  fitOverprints,
  fittedInk,
  measuredInk,
  PAPER_PRESETS,
  paperFromColour,
  paperFromCurve,
  readCgats,
  stackReflectance,
  twoBackground,
} from './ink/index.ts';
export type { FilmBands, FilmCurves } from './ink/film.ts';
export type { Ink, Paper } from './ink/types.ts';
export { readShapes, type ReadShape } from './shapes/read-shapes.ts';
export { drawerShape } from './shapes/drawer-shape.ts';
export type { Mesh, PlacedShape, Screen, Shape } from './shapes/types.ts';
export {
  canonicalOrder,
  countOrderClasses,
  dryingPairs,
  freeSwaps,
  groupOrders,
  orderClasses,
  overlapsOf,
  sampleOrder,
} from './order/index.ts';
export type { Overlap, OverlapOptions, SharedPair } from './order/overlaps.ts';
export {
  checkExplore,
  checkHolds,
  explore,
  type ExploreSettings,
  type Hold,
  type Variant,
  type VeilOptions,
  type VeilProposal,
  type VeilResult,
  veils,
} from './explore/index.ts';
export { type Family, recipeFamilies } from './recipe/family.ts';
export { readRecipe } from './recipe/read.ts';
export type { Recipe } from './recipe/types.ts';
export { drawerOfRecipe, recipeOf, writeRecipe } from './recipe/write.ts';
export { checkPlan, planPulls } from './pullorder/index.ts';
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
} from './log/edition.ts';
export { type EditionRecord, editionRecord, type EditionSheet, numberSheets } from './log/edition-sheets.ts';
export { inOrder, standing } from './log/events.ts';
export { readLog, writeLog } from './log/log-file.ts';
export { mergeLogs } from './log/merge.ts';
export { planRest, type RestInput } from './log/rest.ts';
export { measuredPairs, type OrderPairs, pairsOf } from './log/turns.ts';
export type { Deviation, LogEvent, LoggedSheet, VisitHead, VisitLog } from './log/types.ts';
export { planVisit, type PressPlan, type VisitInput } from './output/visit.ts';
export { demoProject } from './project/demo.ts';
export { readProject, writeProject } from './project/read.ts';
export type { Project } from './project/types.ts';
