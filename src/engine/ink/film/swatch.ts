import { f64 } from '../../base/at.ts';
import { SHOWN_SLACK } from '../../colour/gamut.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import { srgbHexFromLinear } from '../../colour/screen-colour.ts';
import { inSrgbGamut, linearSrgbFromReflectance } from '../../colour/srgb.ts';
import { filmBands, overFilm, type FilmCurves } from './film.ts';
import type { Surface } from './saunderson.ts';
import { filmThickness } from './thickness.ts';

/** A printed colour and how a screen shows it. */
export interface Swatch {
  /** D50/2°, relative to a perfect white. */
  lab: Lab;
  /** '#rrggbb', mapped into what the screen can show. */
  hex: string;
  /** False when the screen shows less chroma than the print has. */
  inGamut: boolean;
}

/** How a pull is made, and how it is looked at. */
export interface PullHow {
  /** Whole, 1 or more; 1 when left out. */
  strokes?: number | undefined;
  /** What each further stroke adds, as a share of the first. */
  strokeGain?: number | undefined;
  /** That paper and prints are seen through; left out, there is none. */
  surface?: Surface | undefined;
  /** How thick the film is on its ground, as a share of its thickness on the paper: see trappingOn. */
  trapping?: number | undefined;
}

/**
 * Reflectance of one pull over a ground.
 * @param ink K·X and S·X of one stroke, 36 bands
 * @param ground reflectance below, 36 bands
 * @returns a new array, 36 bands
 * @throws EngineError 'ink.bad-strokes', 'ink.bad-stroke-gain', 'ink.bad-film'
 */
export function swatchReflectance(ink: FilmCurves, ground: ArrayLike<number>, how: PullHow = {}): Float64Array {
  const { strokes = 1, strokeGain = 0, surface, trapping = 1 } = how;
  const film = filmBands(ink.kx, ink.sx, filmThickness(strokes, strokeGain) * trapping, surface);
  return overFilm(film, ground, new Float64Array(ground.length));
}

/** The colour of one pull over a ground, D50/2°; see swatchReflectance. */
export function swatchLab(ink: FilmCurves, ground: ArrayLike<number>, how: PullHow = {}): Lab {
  return labD50(swatchReflectance(ink, ground, how));
}

/**
 * A reflectance as a colour on the screen.
 * @param reflectance 36 bands
 * @param white the paper that the screen shows as its white, as the pictures do; left out, the
 *   perfect diffuser is
 */
export function swatchOf(reflectance: ArrayLike<number>, white?: ArrayLike<number>): Swatch {
  const light = linearSrgbFromReflectance(reflectance, new Float64Array(3));
  if (white !== undefined) {
    const full = linearSrgbFromReflectance(white, new Float64Array(3));
    for (let i = 0; i < 3; i++) if (f64(full, i) > 1e-9) light[i] = f64(light, i) / f64(full, i);
  }
  const [r, g, b] = light as unknown as [number, number, number];
  return { lab: labD50(reflectance), hex: srgbHexFromLinear(r, g, b), inGamut: inSrgbGamut(r, g, b, SHOWN_SLACK) };
}
