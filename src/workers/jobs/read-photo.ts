import { photoFault } from '../../engine/ink/characterise/photo-size.ts';
import type { PhotoRead } from '../api/reader-api.ts';
import { offscreenCanvas } from './offscreen-canvas.ts';

/** Photos are read at most so wide or high; patches are averages anyway. */
const PATCHES_PX = 1600;
/** Pictures that are traced: over 400 mm a pixel is a sixth of a millimetre. */
export const TRACED_PX = 2400;
/** Cameras write the size within the first of their bytes, after a preview at most. */
const HEAD_BYTES = 1_000_000;

/** The pixels of a photo, scaled down to a longer side, or why it cannot be read. */
export async function readPhoto(file: File, mostPx = PATCHES_PX): Promise<PhotoRead> {
  const refused = (code: string, rest: string): PhotoRead => ({
    pixels: null,
    problems: [{ code, message: `${file.name}: ${rest}`, where: 'the file' }],
  });
  const fault = photoFault(new Uint8Array(await file.slice(0, HEAD_BYTES).arrayBuffer()));
  if (fault !== null) return refused('photo.size', fault);
  let whole: ImageBitmap;
  try {
    whole = await createImageBitmap(file);
  } catch {
    return refused('photo.unreadable', 'the file cannot be read as a picture; choose a JPEG or PNG photo.');
  }
  const scale = Math.min(1, mostPx / Math.max(whole.width, whole.height));
  const width = Math.max(1, Math.round(whole.width * scale));
  const height = Math.max(1, Math.round(whole.height * scale));
  const context = offscreenCanvas(width, height)?.getContext('2d', { willReadFrequently: true }) ?? null;
  if (context === null) return refused('photo.no-canvas', 'this browser reads no photos; open Pullstack in another, or type the colours.');
  context.drawImage(whole, 0, 0, width, height);
  whole.close();
  return { pixels: { width, height, data: context.getImageData(0, 0, width, height).data }, problems: [] };
}
