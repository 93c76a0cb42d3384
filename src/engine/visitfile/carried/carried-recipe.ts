import { strFromU8 } from 'fflate';
import { cutName } from '../../base/bounds.ts';
import type { Problem } from '../../base/error.ts';
import { readRecipe, type ReadResult } from '../../recipe/read.ts';
import type { Recipe } from '../../recipe/types.ts';
import { say } from '../../words/en/visitfile/carried.ts';
import { packFragment, unpackFragment } from '../packed-fragment.ts';

/** What the text of a recipe in a picture begins with. */
const BEGINS = 'pullstack-recipe=';
/** Where the text may begin: writers put it in front, bytes. */
const SEARCHED = 1 << 20;
/** Bytes of the text, and of the recipe it unpacks to. */
const MOST = 1 << 26;

/** A recipe as text that a picture can carry: letters, digits, '-', '_' and '=' alone. */
export function carriedText(recipe: Recipe): string {
  return packFragment(BEGINS, recipe);
}

/** Whether bytes begin as a picture does that may carry a recipe. Source: PNG (W3C 2025), 5.2; SVG is XML and begins with '<'. */
export function mayCarry(bytes: Uint8Array): boolean {
  const png = bytes[0] === 0x89 && bytes[1] === 0x50 && bytes[2] === 0x4e && bytes[3] === 0x47;
  const [first] = bytes.subarray(0, 64).filter((byte) => byte > 0x20 && byte < 0x80);
  return png || first === 0x3c;
}

/**
 * The recipe that a picture saved here carries.
 * @param fileName named in the sentences
 * @returns the recipe, or problems and none; never throws on input
 */
export function readCarried(bytes: Uint8Array, fileName: string): ReadResult<Recipe> {
  const text = textIn(bytes);
  const found = text === null ? { fault: 'none' as const } : unpackFragment(BEGINS, text, MOST);
  if ('raw' in found) return readRecipe(JSON.stringify(found.raw), fileName);
  const sentence = found.fault === 'none' ? say.thisPictureCarriesNo : say.recipeInThisPicture;
  const problem: Problem = { code: `carried.${found.fault}`, message: `${cutName(fileName)}: ${sentence}.`, where: 'the file' };
  return { value: null, problems: [problem] };
}

function textIn(bytes: Uint8Array): string | null {
  const from = indexOf(bytes.subarray(0, SEARCHED), BEGINS);
  if (from < 0) return null;
  let to = from + BEGINS.length;
  while (to < bytes.length && to - from < MOST && isCoded(bytes[to] ?? 0)) to++;
  return strFromU8(bytes.subarray(from, to), true);
}

function indexOf(bytes: Uint8Array, text: string): number {
  const codes = Array.from(text, (sign) => sign.charCodeAt(0));
  const [first = 0] = codes;
  for (let at = bytes.indexOf(first); at >= 0; at = bytes.indexOf(first, at + 1)) {
    if (codes.every((code, i) => bytes[at + i] === code)) return at;
  }
  return -1;
}

/** Whether a byte is one of base64url. Source: RFC 4648, 5. */
function isCoded(byte: number): boolean {
  return (
    (byte >= 0x30 && byte <= 0x39) || (byte >= 0x41 && byte <= 0x5a) || (byte >= 0x61 && byte <= 0x7a) || byte === 0x2d || byte === 0x5f
  );
}
