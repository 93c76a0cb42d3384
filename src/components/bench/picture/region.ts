import type { ViewRequest } from '../../../workers/api/picture-api.ts';

/** A part of the sheet and the device pixels that show it, whole pixels throughout. */
export interface Region extends Omit<ViewRequest, 'pulls' | 'relative'> {
  /** Place of the part's top left in the frame, CSS px on the device's pixel grid. */
  left: number;
  top: number;
  pxPerMm: number;
}

/** A sheet as it lies in the frame that one looks through. */
export interface Look {
  frame: { widthPx: number; heightPx: number };
  /** Where the sheet's top left lies in the frame, CSS px. */
  origin: { x: number; y: number };
  pxPerMm: number;
  /** Device pixels a CSS pixel. */
  deviceRatio: number;
}

/**
 * The visible part of a sheet, cut at whole device pixels so that the picture is shown pixel for
 * pixel.
 * @param share pixels drawn for each device pixel and direction; below 1 for a quick draft
 * @returns null when nothing of the sheet is in the frame
 */
export function visibleRegion(
  { frame, origin, pxPerMm, deviceRatio }: Look,
  sheet: { widthMm: number; heightMm: number },
  share = 1,
): Region | null {
  const perMm = pxPerMm * deviceRatio;
  const originX = Math.round(origin.x * deviceRatio);
  const originY = Math.round(origin.y * deviceRatio);
  const left = Math.max(0, originX);
  const top = Math.max(0, originY);
  const right = Math.min(Math.ceil(frame.widthPx * deviceRatio), Math.ceil(originX + sheet.widthMm * perMm - 1e-6));
  const bottom = Math.min(Math.ceil(frame.heightPx * deviceRatio), Math.ceil(originY + sheet.heightMm * perMm - 1e-6));
  if (right <= left || bottom <= top) return null;
  return {
    xMm: (left - originX) / perMm,
    yMm: (top - originY) / perMm,
    widthMm: (right - left) / perMm,
    heightMm: (bottom - top) / perMm,
    widthPx: Math.max(1, Math.round((right - left) * share)),
    heightPx: Math.max(1, Math.round((bottom - top) * share)),
    left: left / deviceRatio,
    top: top / deviceRatio,
    pxPerMm,
  };
}

/** All of a sheet, at a scale that need not be the view's. */
export function wholeRegion({ widthMm, heightMm }: { widthMm: number; heightMm: number }, pxPerMm: number): Region {
  return {
    xMm: 0,
    yMm: 0,
    widthMm,
    heightMm,
    widthPx: Math.max(1, Math.round(widthMm * pxPerMm)),
    heightPx: Math.max(1, Math.round(heightMm * pxPerMm)),
    left: 0,
    top: 0,
    pxPerMm,
  };
}
