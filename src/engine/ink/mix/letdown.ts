import { EngineError } from '../../base/error.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import { say } from '../../words/en/ink/mix.ts';
import { filmFactor } from '../film/film-factor.ts';
import { filmBands, overFilm } from '../film/film.ts';
import type { Mesh } from '../film/mesh.ts';
import type { Surface } from '../film/saunderson.ts';
import type { Ink } from '../types.ts';
import { isColour, MixColour } from './mix-colour.ts';

/** What a letdown is looked for by. */
export interface LetdownOptions {
  /** What it is printed over, 36 bands: the paper, or another ink on it. */
  ground: ArrayLike<number>;
  /** What each further stroke adds, as a share of the first. */
  strokeGain: number;
  /** That paper and print are seen through; left out, there is none. */
  surface?: Surface | undefined;
  /** How thick a film is on the ground, as a share of its thickness on the paper; 1 by default. */
  trapping?: number;
  /** Numbers of strokes to try; 1, 2 and 3 by default. */
  strokes?: readonly number[];
  /** Meshes to try; by default only that on which the ink's curves were found. */
  meshes?: readonly Mesh[];
  /** Most base to one part of ink that is tried; 40 by default. */
  mostBase?: number;
}

/** A letdown and strokes that give about the colour asked for. */
export interface Letdown {
  /** Parts of base to one part of ink, by weight, rounded to what is easy to weigh. */
  parts: number;
  strokes: number;
  /** Absent when none was given to choose from. */
  mesh?: Mesh;
  /** ΔE00 from the colour asked for. */
  deltaE: number;
  /** What it shows, D50/2°. */
  lab: Lab;
}

const SAME_DELTA_E = 0.1;
const SCAN = 64;
const NARROWINGS = 40;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Which letdown in how many strokes gives a depth of colour.
 * @param wanted the colour over the ground, D50/2°; or a depth: that of so many strokes of the ink
 *   as it is, so that 0.25 asks for a quarter of its film
 * @param base transparent base
 * @returns one for each number of strokes and mesh, nearest first by steps of ΔE 0.1, then fewest
 *   strokes, then least base
 * @throws EngineError 'letdown.wanted', 'letdown.option', 'ink.bad-strokes', 'ink.bad-mesh'
 * Parts are rounded to 0.1 below 5, 0.5 below 10, 1 above; ΔE is that of the rounded parts.
 */
export function letdownFor(wanted: Readonly<Lab> | { depth: number }, ink: Ink, base: Ink, options: LetdownOptions): Letdown[] {
  const { ground, strokeGain, strokes = [1, 2, 3], mostBase = 40, surface, trapping = 1 } = options;
  if (!(mostBase > 0 && mostBase <= 1000)) {
    throw new EngineError('letdown.option', say.mostBaseToTry(mostBase));
  }
  if (strokes.length === 0 || options.meshes?.length === 0) {
    throw new EngineError('letdown.option', say.letdownNeedsAtLeast);
  }
  const target = targetOf(wanted, ink, options);
  const found: Letdown[] = [];
  for (const mesh of options.meshes ?? [undefined]) {
    for (const count of strokes) {
      const colour = new MixColour(
        [ink, base].map((each) => {
          const factor = trapping * filmFactor(each, mesh ?? ink.mesh, count, strokeGain);
          return { k: Float64Array.from(each.kx, (k) => k * factor), s: Float64Array.from(each.sx, (s) => s * factor) };
        }),
        ground,
        target,
        surface,
      );
      const shares = (parts: number): [number, number] => {
        const inkVolume = 1 / ink.densityGPerCm3;
        const baseVolume = parts / base.densityGPerCm3;
        return [inkVolume / (inkVolume + baseVolume), baseVolume / (inkVolume + baseVolume)];
      };
      const deltaE = (parts: number): number => colour.deltaE(BOTH, shares(parts));
      const parts = nearestWeighable(bestParts(deltaE, mostBase), deltaE, mostBase);
      found.push({
        parts,
        strokes: count,
        ...(mesh === undefined ? {} : { mesh }),
        deltaE: deltaE(parts),
        lab: labD50(colour.reflectance(BOTH, shares(parts))),
      });
    }
  }
  return found.sort(
    (a, b) => Math.round(a.deltaE / SAME_DELTA_E) - Math.round(b.deltaE / SAME_DELTA_E) || a.strokes - b.strokes || a.parts - b.parts,
  );
}

const BOTH: readonly number[] = [0, 1];

function targetOf(wanted: Readonly<Lab> | { depth: number }, ink: Ink, { ground, surface, trapping = 1 }: LetdownOptions): Lab {
  if (!('depth' in wanted)) {
    if (!isColour(wanted)) {
      throw new EngineError('letdown.wanted', say.colourNeedsLFrom(wanted.join(', ')));
    }
    return [...wanted];
  }
  if (!(wanted.depth > 0 && wanted.depth <= 20)) {
    throw new EngineError('letdown.wanted', say.depthIsStrokesOf(wanted.depth));
  }
  return labD50(overFilm(filmBands(ink.kx, ink.sx, wanted.depth * trapping, surface), ground, new Float64Array(ground.length)));
}

/** Looks over the whole range, finely where there is little base, then narrows in on the best place. */
function bestParts(deltaE: (parts: number) => number, mostBase: number): number {
  const at = (t: number): number => Math.expm1(t * Math.log1p(mostBase));
  const f = (t: number): number => deltaE(at(t));
  let best = 0;
  let least = Infinity;
  for (let i = 0; i <= SCAN; i++) {
    const value = f(i / SCAN);
    if (value < least) {
      least = value;
      best = i;
    }
  }
  let low = Math.max(0, best - 1) / SCAN;
  let high = Math.min(SCAN, best + 1) / SCAN;
  for (let i = 0; i < NARROWINGS; i++) {
    const a = high - GOLDEN * (high - low);
    const b = low + GOLDEN * (high - low);
    if (f(a) <= f(b)) high = b;
    else low = a;
  }
  return at((low + high) / 2);
}

function nearestWeighable(parts: number, deltaE: (parts: number) => number, mostBase: number): number {
  const perPart = parts < 5 ? 10 : parts < 10 ? 2 : 1;
  const below = Math.floor(parts * perPart) / perPart;
  const above = Math.min(mostBase, Math.ceil(parts * perPart) / perPart);
  return deltaE(below) <= deltaE(above) ? below : above;
}
