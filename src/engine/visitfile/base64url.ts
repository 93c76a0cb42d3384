import { num } from '../base/at.ts';

const SIGNS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const VALUES = new Map([...SIGNS].map((sign, value) => [sign, value]));

/** Bytes as text that may stand in an address. Source: RFC 4648, 5, base64url without padding. */
export function at64(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const three = bytes.subarray(i, i + 3);
    const bits = (num(three, 0) << 16) | ((three[1] ?? 0) << 8) | (three[2] ?? 0);
    for (let s = 0; s <= three.length; s++) text += SIGNS.charAt((bits >> (18 - 6 * s)) & 63);
  }
  return text;
}

/** The bytes of such a text; null where it is none. */
export function from64(text: string): Uint8Array | null {
  if (text.length % 4 === 1) return null;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let [bits, held, at] = [0, 0, 0];
  for (const sign of text) {
    const value = VALUES.get(sign);
    if (value === undefined) return null;
    bits = ((bits << 6) | value) & 0xffff;
    held += 6;
    if (held < 8) continue;
    held -= 8;
    bytes[at++] = (bits >> held) & 255;
  }
  return bytes;
}
