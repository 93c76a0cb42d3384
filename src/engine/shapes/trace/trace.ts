import { contours } from 'd3-contour';
import type { Problem } from '../../base/error.ts';
import { shapeBounds } from '../../geometry/rings.ts';
import { simplifyRing } from '../../geometry/simplify.ts';
import type { ReadShape } from '../read/read-shapes.ts';
import { evenLight } from './even-light.ts';
import { type Grey, histogram } from './grey.ts';
import { otsuThreshold } from './otsu.ts';
import { withoutSpecks } from './specks.ts';
import { say } from '../../words/en/shapes/trace.ts';
import { numberLocale } from '../../words/language.ts';

/** How a picture becomes outlines. */
export interface TraceSettings {
  /** How wide the whole picture is, mm, over 0. */
  widthMm: number;
  /** Greys below it are ink, 1 to 255; null for the one where dark and light part best. */
  threshold: number | null;
  /** Whether what is lighter is ink instead. */
  lightIsInk: boolean;
  /** Whether uneven light on the paper is taken out first. */
  evenLight: boolean;
  /** Pieces and holes of less are left out, mm². */
  speckMm2: number;
  /** How far an outline may lie from where the grey passes the threshold, mm, 0 or more. */
  errorMm: number;
}

/** What a picture came to. */
export interface Traced {
  /** Null where nothing of it is left. */
  shape: ReadShape | null;
  problems: Problem[];
  /** The threshold that was used; null where the picture has only one grey. */
  threshold: number | null;
  /** Pieces, holes and corners of the shape, and specks that were left out. */
  pieces: number;
  holes: number;
  corners: number;
  specks: number;
  /** How large a pixel is, mm. */
  pixelMm: number;
}

/** A shape of more corners slows down all that is made of it. */
const MOST_CORNERS = 100_000;

/**
 * Outlines of the dark (or light) parts of a picture. They run between pixels where the grey, taken as
 * linear from one pixel's middle to the next, passes the threshold, and keep to that line within `errorMm`.
 * @param name of the file, which names the shape and stands in sentences
 */
export function trace(picture: Grey, name: string, settings: TraceSettings): Traced {
  const lit = settings.evenLight ? evenLight(picture) : picture;
  const pixelMm = settings.widthMm / lit.width;
  const inked = settings.lightIsInk ? { ...lit, values: lit.values.map((grey) => 255 - grey) } : lit;
  const best = settings.threshold ?? otsuThreshold(histogram(lit));
  const none = { shape: null, threshold: best, pieces: 0, holes: 0, corners: 0, specks: 0, pixelMm };
  const refuse = (code: string, rest: string): Traced => ({ ...none, problems: [{ code, message: `${name}: ${rest}`, where: 'the picture' }] });
  if (best === null) return refuse('trace.one', say.pictureHasOnlyOne);

  // Of what was turned over, a grey of the threshold is ink still.
  const threshold = settings.lightIsInk ? 256 - best : best;
  const { grey, specks } = withoutSpecks(inked, threshold, settings.speckMm2 / pixelMm ** 2);
  const rings: Float64Array[] = [];
  const found = { pieces: 0, holes: 0, corners: 0 };
  for (const polygon of linesAt(grey, threshold)) {
    for (const [place, ring] of polygon.entries()) {
      // The last corner is the first once more.
      const kept = simplifyRing(Float64Array.from(ring.slice(0, -1).flat()), settings.errorMm / pixelMm);
      if (kept.length < 6) continue;
      if (place === 0) found.pieces++;
      else found.holes++;
      found.corners += kept.length / 2;
      rings.push(Float64Array.from(kept, (value) => value * pixelMm));
    }
  }
  if (rings.length === 0)
    return refuse('trace.empty', say.nothingIsLeftOf);
  if (found.corners > MOST_CORNERS)
    return refuse(
      'trace.corners',
      say.itsOutlinesHaveCorners(found.corners.toLocaleString(numberLocale()), MOST_CORNERS.toLocaleString(numberLocale())),
    );
  return { shape: shapeOf(rings, name), problems: [], threshold: best, ...found, specks, pixelMm };
}

/** Outlines of what is darker than a grey: for each piece its own and those of its holes, each closed, px. */
function linesAt({ width, height, values }: Grey, threshold: number): number[][][][] {
  const dark = Array.from(values, (grey) => -grey);
  // Half a grey below the threshold, which is paper itself.
  return contours()
    .size([width, height])
    .smooth(true)
    .contour(dark, 0.5 - threshold).coordinates;
}

function shapeOf(rings: Float64Array[], name: string): ReadShape {
  const { widthMm, heightMm } = shapeBounds(rings);
  return { name: name.replace(/\.\w+$/u, ''), rings, fillRule: 'evenodd', widthMm, heightMm, page: null, sized: true };
}
