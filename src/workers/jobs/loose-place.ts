import { mostChange } from '../../engine/stack/look/most-change.ts';
import { outOfRegister } from '../../engine/stack/look/out-of-register.ts';
import type { LoosePlaceRequest } from '../api/picture-api.ts';
import type { StudioPictures } from './pictures.ts';

/** A pixel a mm, on sheets that are no larger. */
const PX_PER_MM = 1;
const MOST_PX = 900;
const SHEETS = 4;

/** Where a print out of register shows it most: the middle of a square, mm; null where nothing shows. */
export function loosePlace(
  pictures: StudioPictures,
  { pulls, toleranceMm, acrossMm }: LoosePlaceRequest,
): { xMm: number; yMm: number } | null {
  const { widthMm, heightMm } = pictures.studio.paper;
  const pxPerMm = Math.min(PX_PER_MM, MOST_PX / Math.max(widthMm, heightMm));
  const [widthPx, heightPx] = [Math.max(1, Math.round(widthMm * pxPerMm)), Math.max(1, Math.round(heightMm * pxPerMm))];
  const drawn = (of: LoosePlaceRequest['pulls']): Uint8ClampedArray =>
    pictures.view({ pulls: of, xMm: 0, yMm: 0, widthMm, heightMm, widthPx, heightPx, relative: true }).pixels;
  const sheets = outOfRegister(pulls, { toleranceMm, sheets: SHEETS, seed: 'loose place' }).map(drawn);
  const found = mostChange({ widthPx, heightPx, meant: drawn(pulls), sheets, windowPx: acrossMm * pxPerMm });
  return found === null ? null : { xMm: found.xPx / pxPerMm, yMm: found.yPx / pxPerMm };
}
