import { meshKey } from '../../ink/film/mesh.ts';
import type { Mesh } from '../../shapes/types.ts';
import type { Stencil } from './stencil-list.ts';

/** Room round the image inside the frame, for ink and squeegee, mm on each side; common practice, no source. */
export const FRAME_MARGIN_MM = 120;
/** Emulsion beyond the image, mm on each side; common practice, no source. */
const COAT_MARGIN_MM = 40;
/** Wet emulsion of one coat on either side, mL/m²; from memory: weigh what your first screens take. */
export const EMULSION_ML_PER_M2 = 120;

/** A frame with its mesh, and what is made on it, one after the other. */
export interface Frame {
  mesh: Mesh;
  /** Least sides inside, mm: of its largest image with room for ink and squeegee. */
  insideWidthMm: number;
  insideHeightMm: number;
  /** In time; all but the last are reclaimed within the visit. */
  stencils: Stencil[];
}

/**
 * Frames that a visit needs when each is reclaimed, coated and exposed anew overnight: a frame takes
 * the next stencil of its mesh that is first needed on a later day than its own is last. Fewer frames
 * there cannot be for these days: the first that is free serves whoever comes first, which is the
 * least colouring of intervals (an interval graph needs as many colours as intervals meet at a point).
 * @param stencils as `stencilsOf` gives them
 */
export function framesOf(stencils: readonly Stencil[]): Frame[] {
  const frames: Frame[] = [];
  const inTime = stencils.toSorted((a, b) => a.firstDay - b.firstDay || a.first - b.first);
  for (const stencil of inTime) {
    const { mesh } = stencil.screen;
    const free = frames.filter(
      (frame) => meshKey(frame.mesh) === meshKey(mesh) && frame.stencils.every(({ lastDay }) => lastDay < stencil.firstDay),
    );
    // Of those that are free the one nearest in size, so that no small image asks for a large frame.
    const [best] = free.toSorted((a, b) => growth(a, stencil) - growth(b, stencil));
    const frame = best ?? { mesh, insideWidthMm: 0, insideHeightMm: 0, stencils: [] };
    if (best === undefined) frames.push(frame);
    frame.stencils.push(stencil);
    frame.insideWidthMm = Math.max(frame.insideWidthMm, insideOf(stencil.imageWidthMm));
    frame.insideHeightMm = Math.max(frame.insideHeightMm, insideOf(stencil.imageHeightMm));
  }
  return frames.sort((a, b) => a.mesh.threadsPerCm - b.mesh.threadsPerCm);
}

/** Frames are told in whole centimetres. */
function insideOf(imageMm: number): number {
  return 10 * Math.ceil((imageMm + 2 * FRAME_MARGIN_MM) / 10);
}

function growth({ insideWidthMm, insideHeightMm }: Frame, { imageWidthMm, imageHeightMm }: Stencil): number {
  return Math.abs(insideWidthMm - insideOf(imageWidthMm)) + Math.abs(insideHeightMm - insideOf(imageHeightMm));
}

/** Emulsion for one coat on either side of an image and a rim about it, mL. */
export function emulsionMl({ imageWidthMm, imageHeightMm }: Pick<Stencil, 'imageWidthMm' | 'imageHeightMm'>): number {
  return ((imageWidthMm + 2 * COAT_MARGIN_MM) * (imageHeightMm + 2 * COAT_MARGIN_MM) * EMULSION_ML_PER_M2) / 1e6;
}

/** Steps of an exposure test, as factors of a time that is surely too short: half a stop each (√2), rounded. */
export const EXPOSURE_STEPS: readonly number[] = [1, 1.4, 2, 2.8, 4, 5.7, 8];
