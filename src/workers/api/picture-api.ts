import type { GoalQuestion, GoalVerdict, MadeGoal } from '../../engine/lesson/check-goal.ts';
import type { Gap } from '../../engine/order/gaps.ts';
import type { PairOrder } from '../../engine/order/groups/pair-reasons.ts';
import type { DifferentPlace } from '../../engine/order/groups/where-different.ts';
import type { MeetingPair } from '../../engine/order/overlaps.ts';
import type { Scatter, Scattered } from '../../engine/shapes/compose/scatter.ts';
import type { PlaceReading } from '../../engine/stack/look/read-place.ts';
import type { PrintError } from '../../engine/stack/print-error.ts';
import type { Pull } from '../../engine/stack/types.ts';
import type { Job, Keyed } from './request.ts';

/** A picture as it goes to a canvas. */
export interface Picture {
  widthPx: number;
  heightPx: number;
  /** RGBA, 8 bits, sRGB, rows from the top. */
  pixels: Uint8ClampedArray<ArrayBuffer>;
}

/** A whole sheet to be drawn at a height. */
export interface SheetRequest {
  pulls: readonly Pull[];
  heightPx: number;
  /** White is the paper, not the perfect diffuser. */
  relative: boolean;
}

/** A part of the sheet to be drawn, mm from its top left. */
export interface ViewRequest {
  pulls: readonly Pull[];
  xMm: number;
  yMm: number;
  widthMm: number;
  heightMm: number;
  widthPx: number;
  heightPx: number;
  /** White is the paper, not the perfect diffuser. */
  relative: boolean;
  /** Hatches what the screen cannot show. */
  marked?: boolean | undefined;
}

/** A place of the sheet to be read, mm from its top left. */
export interface PlaceRequest {
  pulls: readonly Pull[];
  xMm: number;
  yMm: number;
}

/** A line of the order graph: positions in the stack, first down 0. */
export interface OverlapEdge {
  a: number;
  b: number;
  areaMm2: number;
  deltaE: number;
}

/** Pairs of pulls that overlap and whose order shows by at least a ΔE. */
export interface OverlapsRequest {
  pulls: readonly Pull[];
  minDeltaE: number;
}

/** Pulls of which each lies no farther from its place than a tolerance, mm. */
export interface GapsRequest {
  pulls: readonly Pull[];
  toleranceMm: number;
}

/** Of such pulls, a square of the sheet so wide, mm. */
export interface LoosePlaceRequest extends GapsRequest {
  acrossMm: number;
}

/** All orders of a few pulls, and from where on two of them are two pictures. */
export type LessonRequest = SheetRequest & OverlapsRequest & { minAreaMm2: number };

export interface LessonResult {
  /** Every order, as indexes into the pulls given, first down first. */
  orders: number[][];
  /** Groups of orders (indexes into `orders`) that print the same picture. */
  groups: number[][];
  /** All pairs of pulls, and why their order shows or not. */
  pairs: PairOrder[];
  /** Number of pictures that differ. */
  count: number;
  /** One for each group, that of its first order. */
  pictures: Picture[];
}

/** A goal of a lesson that is made, the sheet as it was and as it is. */
export type GoalRequest = Omit<GoalQuestion, 'studio'> & { kind: MadeGoal };

/** Two orders of the same pulls, and from which ΔE on they differ. */
export type DifferenceRequest = SheetRequest & OverlapsRequest & { other: readonly Pull[] };

/** Where two prints differ. */
export interface DifferenceResult {
  /** Largest area first. */
  places: DifferentPlace[];
  /** Lines round the places, on nothing. */
  outline: Picture;
}

/** Shapes to be put on screens: `shapes` are ids of the studio's. */
export type ScatterRequest = Omit<Scatter, 'shapes' | 'printable'> & { shapes: readonly string[] };

/** Pictures of stacks, and what shows in them. */
export interface PictureApi {
  view(request: Keyed<ViewRequest>): Picture;
  /** How far a whole print may be from its prediction. */
  printError(request: Keyed<{ pulls: readonly Pull[] }>): Promise<PrintError>;
  /** The colour at a place, and which pulls lie there. */
  readPlace(request: Keyed<PlaceRequest>): Promise<PlaceReading>;
  /** The sheet after each pull, bare paper first: pulls + 1 pictures. */
  states(request: Keyed<SheetRequest>): Picture[];
  thumbnail(request: Keyed<SheetRequest>): Picture;
  /** By exact clipping where pulls are few, the others from one map of the sheet. */
  overlaps(request: Keyed<OverlapsRequest>): Promise<OverlapEdge[]>;
  /** The pairs of them alone, exactly, in steps, as plans go by. */
  meeting(request: Keyed<OverlapsRequest>): Promise<MeetingPair[]>;
  /**
   * Which pulls only just meet, so that a gap may open between them.
   * @param onProgress gets the share that is done; null when it was cancelled
   */
  gaps(request: Job<Keyed<GapsRequest>>, onProgress: (share: number) => void): Promise<Gap[] | null>;
  /** Where a print out of register shows it most: the middle of a square, mm; null where nothing shows. */
  loosePlace(request: Keyed<LoosePlaceRequest>): Promise<{ xMm: number; yMm: number } | null>;
  /** Names for a print from what is seen of it. */
  offeredNames(request: Keyed<{ pulls: readonly Pull[] }>): Promise<string[]>;
  /** Many shapes put on screens at once, within the printable part. */
  scatter(request: Keyed<ScatterRequest>): Promise<Scattered>;
  /** Whether a goal of a lesson is reached. */
  goal(request: Keyed<GoalRequest>): Promise<GoalVerdict>;
  difference(request: Keyed<DifferenceRequest>): DifferenceResult;
  /** @param onProgress gets the share of orders compared; null when it was cancelled */
  lesson(request: Job<Keyed<LessonRequest>>, onProgress: (share: number) => void): Promise<LessonResult | null>;
}
