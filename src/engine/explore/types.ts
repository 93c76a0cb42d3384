import type { Pull } from '../stack/types.ts';
import type { Studio } from '../studio/studio.ts';
import type { Hold } from './settings/hold.ts';
import type { LimitSettings } from './settings/limits.ts';

export type { Hold } from './settings/hold.ts';

/** How far from where they were drawn screens may lie where nothing else is said, mm. */
export const DEFAULT_PLACE_MM = 100;

/**
 * What the explorer may do with the base stack, and what is asked of every print; the words are those of
 * settings/setting-table.ts.
 */
export interface ExploreSettings extends LimitSettings {
  seed: string;
  /** How many variants to find. */
  count: number;
  /** Permute the order, over order classes. */
  order: boolean;
  /**
   * How far an order strays: the share of overlapping pairs that lie the other way round than in the base
   * stack, 0–1, spread evenly from one to the other. With neither, all orders are alike likely.
   */
  orderFrom?: number | undefined;
  orderTo?: number | undefined;
  /** Choose inks from the palette. */
  recolour: boolean;
  /** Ink ids that recolouring may use. */
  palette: string[];
  /** Greatest shift either way, mm; 0 keeps the offsets. */
  offsetRangeMm: number;
  /** At most so many pulls of the base stack left out. */
  leaveOut: number;
  /** At most so many screens brought in from the drawer. */
  bringIn: number;
  holds: Hold[];
  /** Orders whose pictures differ by less than this (ΔE00) count as the same picture. */
  minDeltaE: number;
  /** What that was before it was widened by what prints are expected to miss by; absent = it was not. */
  unwidenedDeltaE?: number | undefined;
  /** Pairs of inks that neither overlap nor meet along an edge. What is left out of all that follows asks for nothing. */
  apart?: [string, string][] | undefined;
  /** [upper, lower]: nowhere does the first ink lie over the second. */
  neverOver?: [string, string][] | undefined;
  /** This ink goes down before all others, that one after all others. */
  inkFirst?: string | undefined;
  inkLast?: string | undefined;
  /** Which way offsets shift, and the grid they snap to, mm. */
  offsetDirection?: 'any' | 'across' | 'down' | undefined;
  offsetSnapMm?: number | undefined;
  /** Turns about the sheet's centre: none, by 180°, by 90°, 180° or 270°, or by any whole degree. */
  turns?: 'none' | 'half' | 'quarter' | 'any' | undefined;
  /** Where whole screens lie: as they were drawn, within placeMm of it, or anywhere on the sheet. */
  places?: 'drawn' | 'near' | 'anywhere' | undefined;
  placeMm?: number | undefined;
  /** Share of what a screen prints that stays on the sheet when it is placed or turned, 0–1; absent = all that was on it. */
  onSheet?: number | undefined;
  /** Screens may give way to those that mirror them, where the drawer has such. */
  mirrored?: boolean | undefined;
  /** At most so many pulls once more elsewhere. */
  repeats?: number | undefined;
  /** At most so many pulls repeated off-register, and how far off at most, mm. */
  echoes?: number | undefined;
  echoMm?: number | undefined;
  /** A pull may have 1 to so many strokes. */
  maxStrokes?: number | undefined;
  /** A translucent last pull may come over all. */
  veil?: boolean | undefined;
  /** Whether only screens that are made, or are to be, may print; who asks for a wall applies it (`atHand`). */
  onlyAtHand?: boolean | undefined;
  /** Screens that every print has, and that none has. */
  mustScreens?: string[] | undefined;
  notScreens?: string[] | undefined;
}

/** How a print comes from others. */
export type DerivedKind = 'nearer' | 'away' | 'between' | 'cross' | 'taste';

/** The prints that a variant was made from. */
export interface Lineage {
  kind: DerivedKind;
  /** Ids of the prints. */
  parents: string[];
  seed: string;
}

/** A stack that the explorer found, with what finds it again. */
export interface Variant {
  /** `${seed}:${index}`. */
  id: string;
  seed: string;
  /** Its number on the wall, from 0. */
  index: number;
  pulls: Pull[];
  /** Names the picture: two variants with the same key look the same. */
  key: string;
  /** Share of its overlapping pairs that lie the other way round than in the base stack, 0–1; where a range of it is asked for. */
  strays?: number | undefined;
  /** Absent on prints that come from the base stack alone. */
  lineage?: Lineage | undefined;
}

/** What the explorer starts from; a project is one. */
export interface ExploreInput {
  drawer: Studio;
  /** The base stack, first down first. */
  bench: readonly Pull[];
  explore: ExploreSettings;
}

/** How many pictures the orders of a stack make. */
export interface OrderCount {
  pulls: number;
  /** Pairs of pulls whose order shows. */
  overlaps: number;
  /** A whole number, as text since it may be longer than a double holds; null when it cannot be counted. */
  count: string | null;
  /** Counted one by one, within the holds; else by order classes, whatever the holds. */
  oneByOne: boolean;
  /** Where it cannot be counted: proven bounds, whole numbers as text. */
  least?: string;
  most?: string;
}
