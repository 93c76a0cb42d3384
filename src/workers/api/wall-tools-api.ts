import type { OnwardAsked, OnwardResult } from '../../engine/explore/onward/onward.ts';
import type { Taken, Taker } from '../../engine/explore/onward/takers.ts';
import type { PrepareAsked, PrepareStep } from '../../engine/explore/prepare/prepare.ts';
import type { TasteAsked, TasteOfWall } from '../../engine/explore/taste/taste-of-wall.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import type { Pull } from '../../engine/stack/types.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import type { Picture } from './picture-api.ts';
import type { Job } from './request.ts';

export interface SheetOptions {
  paper: 'a4' | 'a3';
  /** 1 to 20. */
  columns: number;
  title: string;
  relative: boolean;
}

export interface SheetPrint {
  /** From 0; 1 more is written. */
  index: number;
  seed: string;
  pulls: readonly Pull[];
}

/** Two prints' difference: light where they are alike, dark where they are not. */
export interface DifferencePicture {
  picture: Picture;
  /** Mean ΔE00 over the sheet. */
  mean: number;
  /** Greatest ΔE00 of any area. */
  greatest: number;
  /** Share of the sheet over the ΔE asked for, 0–1. */
  share: number;
}

/** Two prints to be held against each other. */
export interface DifferenceRequest {
  studio: Studio;
  a: readonly Pull[];
  b: readonly Pull[];
  heightPx: number;
  /** Areas that differ by more are counted. */
  overDeltaE: number;
}

/** Points to be laid out, what is alike side by side. */
export interface EmbedRequest {
  /** Points × dimensions. */
  points: Float32Array;
  dimensions: number;
  /** The same seed and points give the same layout. */
  seed: string;
}

/** A contact sheet to be made. */
export interface ContactSheetRequest {
  studio: Studio;
  prints: readonly SheetPrint[];
  options: SheetOptions;
}

/** How large a print's picture is to be. */
interface PrintSize {
  widthMm: number;
  dpi: number;
  relative: boolean;
}

/** A picture of a print to be made. */
export interface PrintRequest {
  studio: Studio;
  pulls: readonly Pull[];
  size: PrintSize;
  /** What goes into the file with it. */
  recipe?: Recipe | undefined;
}

/** What to pull next on a sheet, with pictures. */
export interface OnwardRequest {
  studio: Studio;
  /** What is down, as it was really pulled. */
  pulls: readonly Pull[];
  asked: OnwardAsked;
  heightPx: number;
  relative: boolean;
}

/** What was found, with a picture for each print and of the sheet as it stands. */
export interface OnwardFind {
  result: OnwardResult;
  now: Picture;
  /** The print that is aimed at; null for none. */
  aim: Picture | null;
  pictures: Picture[][];
}

/** How such a search stands: the share that is done, and the best so far when all prints of one number of pulls were looked at. */
export interface OnwardProgress {
  share: number;
  find?: OnwardFind;
}

/** Sheets that could take a pull. */
export interface TakersRequest {
  sheets: readonly Taker[];
  heightPx: number;
  relative: boolean;
}

/** What is done with the prints of a wall, away from the page. Progress is a share from 0 to 1. */
export interface WallToolsApi {
  cancel(job: string): void;
  /** @returns points × 2, 0 to 1; null when cancelled */
  embed(request: Job<EmbedRequest>, onProgress: (share: number) => void): Promise<Float32Array | null>;
  difference(request: DifferenceRequest): DifferencePicture;
  /** The prints of a wall by what was chosen. */
  taste(request: TasteAsked): TasteOfWall;
  /** For every number of new screens the best set; null when cancelled. */
  prepare(request: Job<PrepareAsked>, onProgress: (share: number) => void): Promise<PrepareStep[] | null>;
  /** Prints that a sheet as it stands can become; null when cancelled. */
  onward(request: Job<OnwardRequest>, onProgress: (progress: OnwardProgress) => void): Promise<OnwardFind | null>;
  /** What a pull makes of each of several sheets; null when cancelled. */
  takers(request: Job<TakersRequest>, onProgress: (share: number) => void): Promise<Taken[] | null>;
  /**
   * @param request with a TrueType file for a PDF; null for a PNG
   * @returns null when cancelled
   */
  sheet(request: Job<ContactSheetRequest & { typeface: Uint8Array | null }>, onProgress: (share: number) => void): Promise<Blob | null>;
  /** @returns null when cancelled */
  print(request: Job<PrintRequest>, onProgress: (share: number) => void): Promise<Blob | null>;
}
