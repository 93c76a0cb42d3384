import type { Problem } from '../../engine/base/error.ts';
import type { DerivedRequest } from '../../engine/explore/derived/derived.ts';
import type { VariantMeasures } from '../../engine/explore/measure/variant-measures.ts';
import type { Clash } from '../../engine/explore/search/clash.ts';
import type { SeenPrint } from '../../engine/explore/search/explorer.ts';
import type { ExploreSettings, OrderCount, Variant } from '../../engine/explore/types.ts';
import type { VeilOptions, VeilResult } from '../../engine/explore/veil/veil-types.ts';
import type { Pin } from '../../engine/recipe/prints/pinned-prints.ts';
import type { PackedPrints } from '../../engine/stack/packed-pulls.ts';
import type { SmallPicture } from '../../engine/stack/small-picture.ts';
import type { Pull } from '../../engine/stack/types.ts';
import type { Picture, SheetRequest } from './picture-api.ts';
import type { Job, Keyed } from './request.ts';

/** Cell numbers of a sheet at thumbnail size; shared by all tiles whose screens lie alike. */
export interface WallMap {
  /** Says what it holds: maps of one name and one studio are alike, whichever worker drew them and in which run. */
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
  /** What it looks like, as text, by which a later run knows what was seen; '' after the first MOST_SEEN_PRINTS. */
  look: string;
}

/** What may change in a stack, and what must hold. */
export interface ExploreRequest {
  bench: readonly Pull[];
  explore: ExploreSettings;
}

/** How the prints of a wall are drawn. */
export interface WallLook {
  /** Height of their maps, rows. */
  rows: number;
  /** White is the paper. */
  relative: boolean;
}

/** A wall to be found. */
export interface WallRequest extends ExploreRequest, WallLook {
  /** Prints from prints, in the place of a search from the base stack. */
  derived?: DerivedRequest | undefined;
  /** Prints that shall not come again, nor others much like them. */
  seen?: readonly SeenPrint[] | undefined;
  /** Cores of the machine, for workers that help; 1 when left out. */
  cores?: number | undefined;
}

/** Pinned prints to be drawn for a wall. */
export interface PinRequest extends WallLook {
  pins: readonly Pin[];
  /** Number on the wall under which the first of them hangs. */
  at: number;
}

export interface WallBatch {
  maps: WallMap[];
  tiles: WallTile[];
  found: number;
  asked: number;
  /** Candidates that are drawn, of those from which the first print is taken: with no tiles yet. */
  candidates?: Readonly<{ drawn: number; of: number }>;
  /** Frees the lists of its maps and tiles at once, where they crossed: nobody may look at them from then on. */
  letGo?(): void;
}

/** A print as it crosses, with what is not packed with that of others. */
export interface SentTile extends Pick<WallTile, 'map' | 'look'> {
  variant: Omit<Variant, 'pulls'>;
  /** How many of the colours are its own. */
  cells: number;
}

/** A batch as it crosses: all that comes in lists lies print by print in few of them. */
export interface SentBatch extends Pick<WallBatch, 'found' | 'asked' | 'candidates'> {
  /** In the order of their cells; `long` says in which list these are. */
  maps: (Omit<WallMap, 'cells'> & { long: boolean })[];
  bytes: Uint8Array<ArrayBuffer>;
  words: Uint16Array<ArrayBuffer>;
  tiles: SentTile[];
  pulls: PackedPrints;
  colours: Uint32Array<ArrayBuffer>;
  /** Size of each print as it is seen from far. */
  small: { columns: number; rows: number };
  smalls: Uint32Array<ArrayBuffer>;
  /** Those of MEASURES, one after another. */
  measures: Float64Array<ArrayBuffer>;
}

export interface WallEnd {
  found: number;
  asked: number;
  cancelled: boolean;
  /** Why fewer were found than asked, in a sentence; '' when all were. */
  reason: string;
}

/** Veils to be found for a stack, and drawn. */
export interface VeilRequest extends SheetRequest {
  options: VeilOptions;
}

/** Veils for a stack, with what each makes of it. */
export interface VeilFind {
  result: VeilResult;
  before: Picture;
  /** One for each proposal. */
  after: Picture[];
}

/** How a search for veils stands. */
export interface VeilProgress {
  /** Share that is done, 0–1. */
  share: number;
  /** The best so far, when it is another than before. */
  find?: VeilFind;
}

/** The search for prints, and what is asked of its settings. */
export interface WallApi {
  wall(request: Keyed<Job<WallRequest>>, onBatch: (batch: SentBatch) => void | Promise<void>): Promise<WallEnd>;
  pinTiles(request: Keyed<PinRequest>): SentBatch;
  /** Checks of what may change and what must hold; empty when the wall can be made. */
  checkExplore(request: Keyed<ExploreRequest>): Problem[];
  /** What of a stack hardly prints as it is meant; a wall can be made all the same. */
  printNotes(request: Keyed<{ bench: readonly Pull[] }>): Problem[];
  /**
   * How many different pictures the orders of a stack make.
   * @returns null when the job was cancelled
   */
  countOrders(request: Keyed<Job<ExploreRequest>>): Promise<OrderCount | null>;
  /**
   * The fewest conditions that no print was found to keep together.
   * @returns null when there are none, or when the job was cancelled
   */
  findClash(request: Keyed<Job<ExploreRequest>>): Promise<Clash | null>;
  /**
   * Translucent pulls that bring a stack together.
   * @param onProgress gets the share that is done and the best so far
   * @returns null when the job was cancelled
   */
  veils(request: Keyed<Job<VeilRequest>>, onProgress: (progress: VeilProgress) => void): Promise<VeilFind | null>;
}
