import type { Drawer, Pull } from '../stack/types.ts';

/** What may not change when the explorer moves; pulls are named by their id in the base stack. */
export type Hold =
  | { kind: 'first'; pull: string }
  | { kind: 'last'; pull: string }
  | { kind: 'place'; pull: string }
  | { kind: 'ink'; pull: string }
  | { kind: 'out'; pull: string }
  /** `pull` goes down before `other`. */
  | { kind: 'before'; pull: string; other: string };

/** What the explorer may do with the base stack. */
export interface ExploreSettings {
  seed: string;
  /** How many variants to find. */
  count: number;
  /** Permute the order, over order classes. */
  order: boolean;
  /** Choose inks from the palette. */
  recolour: boolean;
  /** Ink ids that recolouring may use. */
  palette: string[];
  /** Greatest shift either way, mm; 0 keeps the lays. */
  offsetRangeMm: number;
  /** At most so many pulls of the base stack left out. */
  leaveOut: number;
  /** At most so many screens brought in from the drawer. */
  bringIn: number;
  holds: Hold[];
  /** Orders whose pictures differ by less than this (ΔE00) count as the same picture. */
  minDeltaE: number;
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
}

/** What the explorer starts from; a project is one. */
export interface ExploreInput {
  drawer: Drawer;
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
}
