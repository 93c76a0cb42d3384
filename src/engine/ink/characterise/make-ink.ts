import type { Lab } from '../../colour/lab.ts';
import type { Mesh } from '../film/mesh.ts';
import type { Ink, InkBasis } from '../types.ts';
import { CARD, type Grounds } from './card.ts';
import { inkCurvesOn } from './characterise.ts';

/** Minutes before the next film; common practice, no source. */
export const DEFAULT_DRY_MINUTES = 20;

/** Wet density of water-based ink, g/cm³; from memory, common practice. */
export const DEFAULT_DENSITY_G_PER_CM3 = 1.15;

/** What a user enters for an ink. */
export interface InkEntry {
  id: string;
  name: string;
  basis: InkBasis;
  /** One stroke over the card's white, D50/2°. */
  overWhite: Lab;
  /** One stroke over the card's black, D50/2°. */
  overBlack: Lab;
  dryMinutes?: number | undefined;
  densityGPerCm3?: number | undefined;
  /** The mesh of that stroke; left out when it is not known. */
  mesh?: Mesh | undefined;
  /** What it was put down on; the invented card when left out. */
  grounds?: Grounds | undefined;
}

/**
 * A whole ink from its two colours on the contrast card.
 * @returns an ink that keeps the colours as entered; its curves come as near as a film can
 * @throws EngineError 'colour.outside-solid' or 'ink.impossible-pair'; checkInk says so beforehand
 */
export function makeInk(entry: InkEntry): Ink {
  const { kx, sx } = inkCurvesOn(entry.overWhite, entry.overBlack, entry.grounds ?? CARD);
  return {
    id: entry.id,
    name: entry.name,
    basis: entry.basis,
    overWhite: [...entry.overWhite],
    overBlack: [...entry.overBlack],
    kx: Array.from(kx),
    sx: Array.from(sx),
    dryMinutes: entry.dryMinutes ?? DEFAULT_DRY_MINUTES,
    densityGPerCm3: entry.densityGPerCm3 ?? DEFAULT_DENSITY_G_PER_CM3,
    ...(entry.mesh === undefined ? {} : { mesh: { ...entry.mesh } }),
  };
}
