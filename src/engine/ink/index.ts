export type { Ink, InkBasis, Lab, MixPart, Paper } from './types.ts';
export {
  filmBands,
  filmMatrix,
  infiniteReflectance,
  overFilm,
  stackReflectance,
  type FilmBands,
  type FilmCurves,
} from './film.ts';
export { filmThickness } from './thickness.ts';
export { filmFactor, INK_MESH, meshRatio } from './film-factor.ts';
export { mixesOf, remixed } from './remix.ts';
export { baseOf, letDown, mixInks, printInks, stockInks, type InkPart } from './mix.ts';
export {
  MATCH_DELTA_E,
  matchInk,
  matchInkSteps,
  type MatchAnswer,
  type MatchOptions,
  type MatchPart,
  type MatchResult,
} from './match.ts';
export { demoStocks } from './demo-stocks.ts';
export { letdownFor, type Letdown, type LetdownOptions } from './letdown.ts';
export { DEFAULT_SOLIDS, DEFAULT_TRANSFER, dryFilmUm, wetFilmUm } from './dry-film.ts';
export { meshOpenArea, meshOpeningUm, meshVolumeCm3PerM2 } from './mesh.ts';
export { MESH_TABLE, type MeshBasis, type MeshRow } from './mesh-table.ts';
export { CARD_BLACK, CARD_WHITE } from './card.ts';
export {
  PAIR_TOLERANCE_DELTA_E,
  curveFromColour,
  nearestPossible,
  pairCurves,
  type PairCurves,
} from './curves.ts';
export {
  coloursOn,
  inkCurvesFromColours,
  twoBackground,
  type FoundCurves,
  type InkCurves,
} from './characterise.ts';
export { GUESSED_SCATTERING, guessInk, type Opacity } from './guess.ts';
export {
  DEFAULT_DENSITY_G_PER_CM3,
  DEFAULT_DRY_MINUTES,
  makeInk,
  type InkEntry,
} from './make-ink.ts';
export { checkInk } from './check-ink.ts';
export { demoInks } from './demo-inks.ts';
export { DEMO_PAPER } from './demo-paper.ts';
export { MOST_CGATS_CHARACTERS, readCgats, type CgatsSample } from './read-cgats.ts';
export { bandWords } from './band-words.ts';
export {
  checkReadings,
  measuredInk,
  type InkNaming,
  type InkReadings,
  type MeasuredInk,
  type MovedBand,
} from './measured-ink.ts';
export { paperFromColour, paperFromCurve, type Sheet } from './paper-from.ts';
export { PAPER_PRESETS, type PaperPreset } from './paper-presets.ts';
export { coloursFromPhoto, drawdownFromPhoto, type DrawdownPhoto, type PatchColours, type PatchRgb, type PhotoColours } from './drawdown-photo.ts';
export {
  checkSquares,
  fitOverprints,
  fitOverprintSteps,
  fittedInk,
  type FitProgress,
  type OverprintFit,
  type PulledSquare,
  type SquareFit,
} from './fit-overprints.ts';
