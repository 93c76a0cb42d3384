import { EngineError } from '../../base/error.ts';
import { K1, K2, TRAPPING, within } from '../../base/limits.ts';
import type { Surface } from './saunderson.ts';

export type { Surface };

/** How thick a film of one ink is on a film of another, as a share of what it is on the paper. */
export interface TrappingPair {
  /** Id of the ink that is there. */
  under: string;
  /** Id of the ink laid on it. */
  over: string;
  factor: number;
}

/** How thick a film is that lies on a film, as a share of the same film on the paper. */
export interface Trapping {
  factor: number;
  /** Pairs of inks that have a factor of their own. */
  pairs?: TrappingPair[] | undefined;
}

/** What all films of a studio share beside the paper. */
export interface Printing {
  /** How inks and paper were measured, and prints are seen; absent = no surface at all, k1 = k2 = 0. */
  surface?: Surface | undefined;
  /** Absent = a film is as thick on a film as on the paper. */
  trapping?: Trapping | undefined;
}

/** A way of measuring, and what it sees of a print's surface. */
interface Geometry {
  id: '45-0' | 'sphere' | 'sphere-gloss' | 'none';
  label: string;
  surface: Surface;
}

/**
 * k2 of a print: light that meets a smooth surface of index 1.5 from inside in all directions is thrown
 * back by 0.596 (Judd 1942, J. Res. NBS 29, 329); paints and prints are said to have 0.4 to 0.6, from memory.
 */
const USUAL_K2 = 0.5;
/** Light that meets such a surface head on: ((1.5 − 1) / (1.5 + 1))², Fresnel. */
const MIRROR_K1 = 0.04;

/** Ways of measuring; a look from the side and a sphere with a gloss trap see nothing of the mirror. */
export const GEOMETRIES: readonly Geometry[] = [
  { id: '45-0', label: '45°/0°, or by eye', surface: { k1: 0, k2: USUAL_K2 } },
  { id: 'sphere', label: 'sphere, gloss left out', surface: { k1: 0, k2: USUAL_K2 } },
  { id: 'sphere-gloss', label: 'sphere, gloss included', surface: { k1: MIRROR_K1, k2: USUAL_K2 } },
  { id: 'none', label: 'no surface, as projects from before', surface: { k1: 0, k2: 0 } },
];

/** Of new projects: measured at 45°/0°. */
export const USUAL_SURFACE: Readonly<Surface> = { k1: 0, k2: USUAL_K2 };
/** Of new projects: the middle of what screenprint is said to have. */
export const USUAL_TRAPPING = 0.85;
/** Where that comes from, to be shown beside the field. */
export const TRAPPING_SOURCE =
  'A film laid on another film is thinner. Offset prints show about 0.68 (found on published overprints); screenprint lies between 0.7 and 1, common practice, no source. Pull a target to find your own.';

/**
 * Checks a surface.
 * @throws EngineError 'ink.bad-surface' in one sentence
 */
export function checkSurface({ k1, k2 }: Surface): void {
  if (within(K1, k1) && within(K2, k2)) return;
  throw new EngineError(
    'ink.bad-surface',
    within(K2, k2)
      ? `The share that the surface reflects outside, k1, is ${k1}; give ${K1.least} to ${K1.most}.`
      : `The share that the surface throws back inside, k2, is ${k2}; give ${K2.least} to ${K2.most}.`,
  );
}

/**
 * Checks trapping.
 * @throws EngineError 'ink.bad-trapping' in one sentence
 */
export function checkTrapping({ factor, pairs = [] }: Trapping): void {
  const bad = [factor, ...pairs.map((pair) => pair.factor)].find((value) => !within(TRAPPING, value));
  if (bad === undefined) return;
  throw new EngineError(
    'ink.bad-trapping',
    `A film on a film cannot be ${bad} times as thick as on the paper; give ${TRAPPING.least * 100} to ${TRAPPING.most * 100} %.`,
  );
}

/**
 * How thick a film is on what lies below it, as a share of its thickness on the paper.
 * @param under id of the ink that it lies on; null for the paper
 * @param over id of its own ink
 */
export function trappingOn(trapping: Trapping | undefined, under: string | null, over: string): number {
  if (under === null || trapping === undefined) return 1;
  return trapping.pairs?.find((pair) => pair.under === under && pair.over === over)?.factor ?? trapping.factor;
}

/** Whether films are thinner or thicker on films anywhere. */
export function traps(trapping: Trapping | undefined): boolean {
  return trapping !== undefined && (trapping.factor !== 1 || (trapping.pairs ?? []).some(({ factor }) => factor !== 1));
}

/** A surface that is one: undefined for k1 = k2 = 0, which changes nothing. */
export function realSurface(surface: Surface | undefined): Surface | undefined {
  return surface === undefined || (surface.k1 === 0 && surface.k2 === 0) ? undefined : surface;
}

/** Surface and trapping of a studio or recipe, those that it has. */
export function printingOf({ surface, trapping }: Printing): Printing {
  return { ...(surface === undefined ? {} : { surface }), ...(trapping === undefined ? {} : { trapping }) };
}
