import type { Problem } from '../../engine/base/error.ts';
import type { CgatsSample } from '../../engine/ink/cgats/read-cgats.ts';
import type { Grounds } from '../../engine/ink/characterise/card.ts';
import type { OverprintFit, PulledSquare } from '../../engine/ink/fit/fit-overprints.ts';
import type { TargetFit, TargetFitInput } from '../../engine/ink/fit/fit-target.ts';
import type { MatchOptions, MatchResult } from '../../engine/ink/mix/match.ts';
import type { Ink, Lab, Paper } from '../../engine/ink/types.ts';
import type { PageSize } from '../../engine/shapes/place/lay-out.ts';
import type { WhiteAs } from '../../engine/shapes/read/white.ts';
import type { Shape } from '../../engine/shapes/types.ts';
import type { Job } from './request.ts';

export interface ReadShapeResult {
  shape: Shape | null;
  /** The page that the shape was drawn on; null when the file gives none. */
  page: PageSize | null;
  /** Whether the file gives its size in a unit of length. */
  sized: boolean;
  problems: Problem[];
}

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

/** Squares of a pulled target that inks are to meet. */
export interface OverprintRequest {
  squares: readonly PulledSquare[];
  inks: readonly Ink[];
  paper: Paper;
}

/** Inks and shapes: what files hold, and what measured colours make of inks. */
export interface InkApi {
  readShapeFile(text: string, fileName: string, id: string, white?: WhiteAs): ReadShapeResult;
  /** @param grounds that the colours were seen on; the invented card by default */
  inkCurves(overWhite: Lab, overBlack: Lab, grounds?: Grounds): InkCurvesResult;
  /** Samples of a CGATS text, with what is wrong or was assumed. */
  readMeasurements(text: string, fileName: string): { samples: CgatsSample[]; problems: Problem[] };
  /**
   * Mixes of stock inks nearest a colour.
   * @param onProgress gets the share that is done, 0–1
   * @returns null when the job was cancelled
   */
  matchInk(request: Job<MatchRequest>, onProgress: (share: number) => void): Promise<MatchResult | null>;
  /**
   * Inks that meet the squares of a pulled target.
   * @param onRound gets how many rounds are done; how many there will be is not known
   * @returns null when the job was cancelled
   */
  fitOverprints(request: Job<OverprintRequest>, onRound: (rounds: number) => void): Promise<OverprintFit | null>;
  /**
   * Films, trapping and surface from squares of any stacks.
   * @param onProgress gets the share that is done, 0–1
   * @returns null when the job was cancelled
   */
  fitTarget(request: Job<TargetFitInput>, onProgress: (share: number) => void): Promise<TargetFit | null>;
}
