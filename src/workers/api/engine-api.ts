import type { Problem } from '../../engine/base/error.ts';
import type { VariantMeasures } from '../../engine/explore/measure/variant-measures.ts';
import type { Clash } from '../../engine/explore/search/clash.ts';
import type { DerivedRequest } from '../../engine/explore/search/derived-explorer.ts';
import type { SeenPrint } from '../../engine/explore/search/explorer.ts';
import type { ExploreSettings, OrderCount, Variant } from '../../engine/explore/types.ts';
import type { VeilOptions, VeilResult } from '../../engine/explore/veil/veil-types.ts';
import type { CgatsSample } from '../../engine/ink/cgats/read-cgats.ts';
import type { OverprintFit, PulledSquare } from '../../engine/ink/fit/fit-overprints.ts';
import type { MatchOptions, MatchResult } from '../../engine/ink/mix/match.ts';
import type { Ink, Lab, Paper } from '../../engine/ink/types.ts';
import type { RestInput } from '../../engine/log/rest.ts';
import type { LogEvent, VisitHead } from '../../engine/log/types.ts';
import type { Pin } from '../../engine/recipe/prints/pinned-prints.ts';
import type { PageSize } from '../../engine/shapes/place/lay-out.ts';
import type { Shape } from '../../engine/shapes/types.ts';
import type { SmallPicture } from '../../engine/stack/small-picture.ts';
import type { Pull } from '../../engine/stack/types.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import type { FitChoice } from '../../engine/visit/fit-choice.ts';
import type { PressPlan, VisitInput } from '../../engine/visit/visit.ts';

/** A picture as it goes to a canvas. */
export interface Picture {
  widthPx: number;
  heightPx: number;
  /** RGBA, 8 bits, sRGB, rows from the top. */
  pixels: Uint8ClampedArray<ArrayBuffer>;
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
}

/** Cell numbers of a sheet at thumbnail size; shared by all tiles whose screens lie alike. */
export interface WallMap {
  /** Says what it holds: maps of one name are alike, whichever worker drew them and in which run. */
  name: string;
  columns: number;
  rows: number;
  /** Row by row; indexes into a tile's colours, in bytes where these can name them all. */
  cells: Uint8Array<ArrayBuffer> | Uint16Array<ArrayBuffer>;
}

/** A variant with what draws it: a map and a colour for each of its cells. */
export interface WallTile {
  variant: Variant;
  /** Name of its map. */
  map: string;
  /** RGBA packed as ImageData packs it (little endian: 0xAABBGGRR). */
  colours: Uint32Array<ArrayBuffer>;
  /** The print as it is seen from far. */
  small: SmallPicture;
  /** What the print is like; MEASURES of the engine's explore module names them. */
  measures: VariantMeasures;
  /** What it looks like, as text that a later run is told what was seen by. */
  look: string;
}

/** What a wall is found from beside the base stack. */
export interface WallFrom {
  /** Prints from prints, in the place of a search from the base stack. */
  derived?: DerivedRequest | undefined;
  /** Prints that shall not come again, nor others much like them. */
  seen?: readonly SeenPrint[] | undefined;
  /** White is the paper; true when left out. */
  relative?: boolean | undefined;
  /** Cores of the machine, for workers that help; 1 when left out. */
  cores?: number | undefined;
}

export interface WallBatch {
  maps: WallMap[];
  tiles: WallTile[];
  found: number;
  asked: number;
}

export interface WallEnd {
  found: number;
  asked: number;
  cancelled: boolean;
  /** Why fewer were found than asked, in a sentence; '' when all were. */
  reason: string;
}

/** A line of the order graph: positions in the stack, first down 0. */
export interface OverlapEdge {
  a: number;
  b: number;
  areaMm2: number;
  deltaE: number;
}

export interface LessonResult {
  /** Every order, as indexes into the pulls given, first down first. */
  orders: number[][];
  /** Groups of orders (indexes into `orders`) that print the same picture. */
  groups: number[][];
  edges: OverlapEdge[];
  /** Number of pictures that differ. */
  count: number;
  /** One for each order. */
  pictures: Picture[];
}

export interface ReadShapeResult {
  shape: Shape | null;
  /** The page that the shape was drawn on; null when the file gives none. */
  page: PageSize | null;
  problems: Problem[];
}

export interface InkCurvesResult {
  kx: number[];
  sx: number[];
  /** Bands that had to be moved to be physical. */
  adjusted: number[];
  problems: Problem[];
}

/** Veils for a stack, with what each makes of it. */
export interface VeilFind {
  result: VeilResult;
  before: Picture;
  /** One for each proposal. */
  after: Picture[];
}

/**
 * What an engine worker does. Drawers go over once and are then named by a key: they hold
 * thousands of points, a request holds a few pulls.
 */
export interface EngineApi {
  /**
   * @param drawer whole, or without shapes and screens when `like` names a drawer that has the same
   */
  loadStudio(key: number, drawer: Studio | Omit<Studio, 'shapes' | 'screens'>, like: number | null): void;
  /** Forgets drawers that are no longer needed. */
  dropStudios(keys: readonly number[]): void;
  /** Stops a running job between two of its steps; unknown jobs are ignored. */
  cancel(job: string): void;
  view(key: number, request: ViewRequest): Picture;
  /** The sheet after each pull, bare paper first: pulls + 1 pictures. */
  states(key: number, pulls: readonly Pull[], heightPx: number, relative: boolean): Picture[];
  /** A whole sheet at a height. */
  thumbnail(key: number, pulls: readonly Pull[], heightPx: number, relative: boolean): Picture;
  overlaps(key: number, pulls: readonly Pull[], minDeltaE: number): OverlapEdge[];
  lesson(key: number, pulls: readonly Pull[], minDeltaE: number, heightPx: number, relative: boolean): LessonResult;
  wall(
    key: number,
    job: string,
    bench: readonly Pull[],
    explore: ExploreSettings,
    rows: number,
    onBatch: (batch: WallBatch) => void,
    from?: WallFrom,
  ): Promise<WallEnd>;
  /** Pinned prints, drawn for a wall whose prints are so many rows high; the first hangs under the number `at`. */
  pinTiles(key: number, pins: readonly Pin[], at: number, rows: number, relative: boolean): WallBatch;
  /** Checks of what may change and what must hold; empty when the wall can be made. */
  checkExplore(key: number, bench: readonly Pull[], explore: ExploreSettings): Problem[];
  /** What of a stack hardly prints as it is meant; a wall can be made all the same. */
  printNotes(key: number, bench: readonly Pull[]): Problem[];
  /**
   * How many different pictures the orders of a stack make.
   * @returns null when the job was cancelled
   */
  countOrders(key: number, job: string, bench: readonly Pull[], explore: ExploreSettings): Promise<OrderCount | null>;
  /**
   * The fewest conditions that no print was found to keep together.
   * @returns null when there are none, or when the job was cancelled
   */
  findClash(key: number, job: string, bench: readonly Pull[], explore: ExploreSettings): Promise<Clash | null>;
  readShapeFile(text: string, fileName: string, id: string): ReadShapeResult;
  inkCurves(overWhite: Lab, overBlack: Lab): InkCurvesResult;
  /** Samples of a CGATS text, with what is wrong or was assumed. */
  readMeasurements(text: string, fileName: string): { samples: CgatsSample[]; problems: Problem[] };
  /**
   * Mixes of stock inks nearest a colour.
   * @param onProgress gets the share that is done, 0–1
   * @returns null when the job was cancelled
   */
  matchInk(
    job: string,
    target: Lab,
    stocks: readonly Ink[],
    options: MatchOptions,
    onProgress: (share: number) => void,
  ): Promise<MatchResult | null>;
  /**
   * Inks that meet the squares of a pulled target.
   * @param onRound gets how many rounds are done; how many there will be is not known
   * @returns null when the job was cancelled
   */
  fitOverprints(
    job: string,
    squares: readonly PulledSquare[],
    inks: readonly Ink[],
    paper: Paper,
    onRound: (rounds: number) => void,
  ): Promise<OverprintFit | null>;
  /**
   * Translucent pulls that calm a stack.
   * @param onProgress gets the share that is done, 0–1
   * @returns null when the job was cancelled
   */
  veils(
    key: number,
    job: string,
    pulls: readonly Pull[],
    options: VeilOptions,
    heightPx: number,
    relative: boolean,
    onProgress: (share: number) => void,
  ): Promise<VeilFind | null>;
  /**
   * What to leave out of a visit, or how much longer to stay, so that it fits.
   * @param onProgress gets the share that is done, 0–1
   * @returns null when the job was cancelled
   */
  whatToDrop(job: string, input: VisitInput, plan: PressPlan, onProgress: (share: number) => void): Promise<FitChoice[] | null>;
  plan(job: string, input: VisitInput | RestInput, budgetMs: number, onBest: (plan: PressPlan) => void): Promise<PressPlan>;
}

export interface StoredProject {
  /** The saved sections, or null when nothing was saved yet. */
  project: unknown;
  /** False when another tab has the project open: then nothing is written. */
  writable: boolean;
}

/** What the storage worker does. */
export interface StorageApi {
  open(): Promise<StoredProject>;
  /** Writes the named sections in one transaction. */
  save(sections: Record<string, unknown>): Promise<void>;
  /** Puts unreadable data aside, so that nothing saved is lost. */
  setAside(reason: string): Promise<void>;
  /** The pull order that the press works from, in the parts in which it was saved. */
  openPress(): Promise<Record<string, unknown>>;
  /** Writes the named parts of it in one transaction. */
  savePress(parts: Record<string, unknown>): Promise<void>;
  /** Visits of which something was logged. */
  readVisits(): Promise<VisitHead[]>;
  /** What was logged of a visit, in no order. */
  readEvents(visit: string): Promise<LogEvent[]>;
  /** Adds events, in one transaction that ends when they are on the disk. */
  addEvents(head: VisitHead, events: readonly LogEvent[]): Promise<void>;
}
