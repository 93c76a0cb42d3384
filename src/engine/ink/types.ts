import type { Lab } from '../colour/lab.ts';
import type { Mesh } from '../shapes/types.ts';

/** How an ink's curves can have been come by, the least trusted first. */
export const INK_BASES = ['invented', 'guess', 'drawdown', 'measured'] as const;

export type InkBasis = (typeof INK_BASES)[number];

export type { Lab };

/** One stock ink's share of a mixed ink. */
export interface MixPart {
  /** Id of a stock ink, which has no mix of its own. */
  ink: string;
  /** By weight, more than 0. */
  parts: number;
}

/** What an ink was on a day. */
export interface InkMeasurement {
  /** As in '2026-03-14'; '' for the curves that it had before it was first measured again. */
  date: string;
  /** One stroke over the card's white and black, D50/2°. */
  overWhite: Lab;
  overBlack: Lab;
  kx: number[];
  sx: number[];
}

/** An ink: absorption and scattering of one stroke's film, per band. */
export interface Ink {
  id: string;
  name: string;
  basis: InkBasis;
  /** One stroke over white and over black, D50/2°; what the user sees and edits. */
  overWhite: Lab;
  overBlack: Lab;
  /** K·X of one stroke, 36 bands from 380 to 730 nm, ≥ 0. */
  kx: number[];
  /** S·X of one stroke, 36 bands, ≥ 0. */
  sx: number[];
  /** Minutes until another film can go over it; common practice, no source: the user's to change. */
  dryMinutes: number;
  /** Minutes until sheets can be stacked on it; absent = twice dryMinutes. Common practice, no source. */
  stackMinutes?: number | undefined;
  /** Wet density, g/cm³; from memory 1.05–1.25, default 1.15. */
  densityGPerCm3: number;
  /** Share of its volume that does not dry away, over 0–1; absent = 0.35, from memory. */
  solids?: number | undefined;
  /** The mesh that its curves were found on; absent = not known, so they hold on every screen. */
  mesh?: Mesh | undefined;
  /** Set on stock inks: they are weighed into mixes and are no choice of colour by themselves. */
  stock?: true | undefined;
  /** 'base' for the transparent base that lets inks down. */
  role?: 'base' | undefined;
  /** Set where a pulled target told its curves: mean ΔE00 of overprints left out, and how many squares named it. */
  fit?: { looDeltaE: number; squares: number } | undefined;
  /** What it measured at earlier and at the last date, the last one last; its curves are those of the last. */
  measurements?: InkMeasurement[] | undefined;
  /** What it is weighed from; absent = it is used as it is bought. */
  mix?: MixPart[] | undefined;
}

/** A paper: its reflectance and its sheet. */
export interface Paper {
  name: string;
  widthMm: number;
  heightMm: number;
  /** The part that can be printed, mm from the sheet's top left. */
  printable: { xMm: number; yMm: number; widthMm: number; heightMm: number };
  /** 36 bands from 380 to 730 nm, 0–1. */
  reflectance: number[];
}
