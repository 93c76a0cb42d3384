import type { Ink } from '../../ink/types.ts';
import type { Screen, Shape } from '../../shapes/types.ts';
import type { Pull } from '../../stack/types.ts';
import type { Measures } from '../measure/measures.ts';

/** What a veil may be made of and where it may go. */
export interface VeilOptions {
  /** Ids of the inks to let down; all print inks of the drawer by default. */
  inks?: readonly string[];
  /** Transparent base; that of the drawer by default. Without any, inks are only tried as they are. */
  base?: Ink;
  /** Parts of base to one of ink that are tried, by weight; 0, 2, 6 and 15 by default. */
  letdowns?: readonly number[];
  /** Ids of screens that may veil; by default all of the drawer. */
  screens?: readonly string[];
  /** Whether a new screen over the whole printable image is tried as well; true by default. */
  whole?: boolean;
  /** 'end' lays veils over all; 'any' tries every place in the stack. 'end' by default. */
  places?: 'end' | 'any';
  /** At most so many proposals; 6 by default. */
  count?: number;
  /** How many of the largest colours keep their lightness order; 6 by default. */
  largest?: number;
  /** Rows of the map that all is measured on; 256 by default. */
  rows?: number;
}

/** One translucent pull more, ready for the Bench. */
export interface VeilProposal {
  /** The whole stack with the veil in it. */
  pulls: Pull[];
  /** The veil, and its place among them. */
  veil: Pull;
  at: number;
  /** The ink it is printed in, and the ink and parts of base that it is let down from. */
  ink: Ink;
  from: string;
  parts: number;
  /** Inks, the shape and the screen that the drawer lacks, to be added before the pulls, in order. */
  newInks: Ink[];
  newShape: Shape | null;
  newScreen: Screen | null;
  /** What the print is like with it. */
  after: Measures;
  /** Share of the contrast of edges that it takes away, 0–1. */
  softens: number;
}

/** What was found for a stack. */
export interface VeilResult {
  /** What the print is like without. */
  before: Measures;
  /** The softest first, each different to the eye from those before it. */
  proposals: VeilProposal[];
  /** How many veils were tried, and how many of them soften the print and keep its lightness order. */
  tried: number;
  kept: number;
}
