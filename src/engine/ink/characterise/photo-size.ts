import { u8 } from '../../base/at.ts';
import { say } from '../../words/en/ink/characterise.ts';

/** Pixels of a photo; as many fill 600 MB while it is read. The largest cameras of 2026 have 150 million (from memory). */
const MOST_PIXELS = 150_000_000;

/** Width and height as a picture's own bytes say, px. */
interface PhotoSize {
  width: number;
  height: number;
}

/**
 * What the first bytes of a picture say of its size, before anything is made of it: a few bytes can
 * promise a picture of many gigabytes.
 * @returns the rest of a sentence when it is too large, else null, also where the bytes do not say
 */
export function photoFault(bytes: Uint8Array): string | null {
  const size = photoSize(bytes);
  if (size === null || size.width * size.height <= MOST_PIXELS) return null;
  return say.pictureHasPixelsMore(size.width, size.height, MOST_PIXELS / 1e6);
}

/**
 * Width and height of a PNG, JPEG, GIF or WebP picture.
 * @returns null where the bytes are of another kind, or end before they say it
 * Source: PNG (ISO/IEC 15948 §11.2.2), JPEG (ITU-T T.81 §B.2.2), GIF89a §18, WebP (RFC 9649 §2.5–2.7).
 */
export function photoSize(bytes: Uint8Array): PhotoSize | null {
  const text = (at: number, length: number): string => String.fromCharCode(...bytes.subarray(at, at + length));
  if (text(0, 8) === '\u0089PNG\r\n\u001a\n') return sizeOf(big(bytes, 16, 4), big(bytes, 20, 4));
  if (text(0, 4) === 'GIF8') return sizeOf(little(bytes, 6, 2), little(bytes, 8, 2));
  if (text(0, 4) === 'RIFF' && text(8, 4) === 'WEBP') return webp(bytes, text(12, 4));
  return u8(bytes, 0) === 0xff && u8(bytes, 1) === 0xd8 ? jpeg(bytes) : null;
}

function webp(bytes: Uint8Array, kind: string): PhotoSize | null {
  if (kind === 'VP8X') return sizeOf(little(bytes, 24, 3) + 1, little(bytes, 27, 3) + 1);
  if (kind === 'VP8 ') return sizeOf(little(bytes, 26, 2) % 2 ** 14, little(bytes, 28, 2) % 2 ** 14);
  if (kind !== 'VP8L') return null;
  const bits = little(bytes, 21, 4);
  return sizeOf((bits % 2 ** 14) + 1, (Math.floor(bits / 2 ** 14) % 2 ** 14) + 1);
}

/** From segment to segment until the one that begins a frame. */
function jpeg(bytes: Uint8Array): PhotoSize | null {
  for (let at = 2; at + 9 <= bytes.length;) {
    if (u8(bytes, at) !== 0xff) return null;
    const marker = u8(bytes, at + 1);
    // Filling before a marker, and markers that stand alone.
    if (marker === 0xff) at++;
    else if (marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8)) at += 2;
    else if (marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker))
      return sizeOf(big(bytes, at + 7, 2), big(bytes, at + 5, 2));
    else at += 2 + Math.max(2, big(bytes, at + 2, 2));
  }
  return null;
}

function sizeOf(width: number, height: number): PhotoSize | null {
  return width > 0 && height > 0 ? { width, height } : null;
}

function big(bytes: Uint8Array, at: number, count: number): number {
  let value = 0;
  for (let i = 0; i < count; i++) value = value * 256 + u8(bytes, at + i);
  return value;
}

function little(bytes: Uint8Array, at: number, count: number): number {
  let value = 0;
  for (let i = count - 1; i >= 0; i--) value = value * 256 + u8(bytes, at + i);
  return value;
}
