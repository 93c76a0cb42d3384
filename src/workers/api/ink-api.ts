import type { Problem } from '../../engine/base/error.ts';
import type { Grounds } from '../../engine/ink/characterise/card.ts';
import type { Surface } from '../../engine/ink/film/printing.ts';
import type { TargetFit, TargetFitInput } from '../../engine/ink/fit/fit-target.ts';
import type { MatchOptions, MatchResult } from '../../engine/ink/mix/match.ts';
import type { Ink, Lab } from '../../engine/ink/types.ts';
import type { DriftedRecipe } from '../../engine/recipe/drifted.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import type { Job } from './request.ts';

export interface InkCurvesResult {
  kx: number[];
  sx: number[];
  /** Bands that had to be moved to be physical. */
  adjusted: number[];
  problems: Problem[];
}

/** A colour to be mixed from stock inks. */
export interface MatchRequest {
  target: Lab;
  stocks: readonly Ink[];
  options: MatchOptions;
}

/** How far a recipe's prints differ with an ink as it is today. */
export interface DriftFigures extends Omit<DriftedRecipe, 'recipe'> {
  /** Id of the recipe. */
  recipe: string;
}

/** Inks: what measured colours make of them. */
export interface InkApi {
  /** @param grounds that the colours were seen on; the invented card by default */
  inkCurves(overWhite: Lab, overBlack: Lab, grounds?: Grounds): InkCurvesResult;
  /**
   * Mixes of stock inks nearest a colour.
   * @param onProgress gets the share that is done, 0–1
   * @returns null when the job was cancelled
   */
  matchInk(request: Job<MatchRequest>, onProgress: (share: number) => void): Promise<MatchResult | null>;
  /** Recipes predicted again with an ink as it is today; those that do not pull it are left out. */
  driftedRecipes(recipes: readonly Recipe[], ink: Ink, surface?: Surface): Promise<DriftFigures[]>;
  /**
   * Films, trapping and surface from squares of any stacks.
   * @param onProgress gets the share that is done, 0–1
   * @returns null when the job was cancelled
   */
  fitTarget(request: Job<TargetFitInput>, onProgress: (share: number) => void): Promise<TargetFit | null>;
}
