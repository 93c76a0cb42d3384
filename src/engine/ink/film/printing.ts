import { EngineError } from '../../base/error.ts';
import { K1, K2, TRAPPING, within } from '../../base/limits.ts';
import { say } from '../../words/en/ink/film.ts';
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
  { id: '45-0', label: say.n450OrBy, surface: { k1: 0, k2: USUAL_K2 } },
  { id: 'sphere', label: say.sphereGlossLeftOut, surface: { k1: 0, k2: USUAL_K2 } },
  { id: 'sphere-gloss', label: say.sphereGlossIncluded, surface: { k1: MIRROR_K1, k2: USUAL_K2 } },
  { id: 'none', label: say.noSurfaceAsProjects, surface: { k1: 0, k2: 0 } },
];

/** Of new projects: measured at 45°/0°. */
export const USUAL_SURFACE: Readonly<Surface> = { k1: 0, k2: USUAL_K2 };
/** Of new projects: the middle of what screenprint is said to have. */
export const USUAL_TRAPPING = 0.85;
/** Where that comes from, to be shown beside the field. */
export const TRAPPING_SOURCE = say.filmLaidOnAnother;

/**
 * Checks a surface.
 * @throws EngineError 'ink.bad-surface' in one sentence
 */
export function checkSurface({ k1, k2 }: Surface): void {
  if (within(K1, k1) && within(K2, k2)) return;
  throw new EngineError(
    'ink.bad-surface',
    within(K2, k2) ? say.shareThatSurfaceReflects(k1, K1.least, K1.most) : say.shareThatSurfaceThrows(k2, K2.least, K2.most),
  );
}

/**
 * Checks trapping.
 * @throws EngineError 'ink.bad-trapping' in one sentence
 */
export function checkTrapping({ factor, pairs = [] }: Trapping): void {
  const bad = [factor, ...pairs.map((pair) => pair.factor)].find((value) => !within(TRAPPING, value));
  if (bad === undefined) return;
  throw new EngineError('ink.bad-trapping', say.filmOnFilmCannot(bad, TRAPPING.least * 100, TRAPPING.most * 100));
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
