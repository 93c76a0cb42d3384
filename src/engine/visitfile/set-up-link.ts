import { deflateSync, inflateSync, strFromU8, strToU8 } from 'fflate';
import { z } from 'zod';
import type { Problem } from '../base/error.ts';
import { explainIssues } from '../recipe/explain.ts';
import type { ReadResult } from '../recipe/read.ts';
import { at64, from64 } from './base64url.ts';

/** Bytes of a link unpacked: a set-up with five hundred sheets has some three thousand. */
const MOST_BYTES = 20_000;
const text = z.string().max(2000);
const hex = z.string().regex(/^#[0-9a-f]{6}$/u, 'a colour such as #a63c20');

/** A set-up as it stands in an address. */
export const setUpSchema = z.object({
  version: z.literal(1),
  /** The project's title. */
  project: text,
  title: text,
  tags: text,
  screen: text,
  ink: text,
  hex,
  lines: z.array(text).max(40),
  /** What is printed, the sheet's sides in mm, and where it is moved. */
  paper: z.object({ widthMm: z.number().positive().max(5000), heightMm: z.number().positive().max(5000) }),
  offset: z.object({
    dxMm: z.number().min(-5000).max(5000),
    dyMm: z.number().min(-5000).max(5000),
    turnDeg: z.number().min(-360).max(360),
  }),
  parts: z.array(z.object({ title: text, sheets: z.array(z.string().max(40)).max(500) })).max(500),
});

/** One set-up as a phone at the press shows it. */
export type SetUpOnPhone = z.infer<typeof setUpSchema>;

/** How the fragment of an address begins that holds a set-up. */
export const SET_UP_FRAGMENT = '#set-up=';

/** The fragment of an address that holds a set-up: what stands behind the sign # never leaves the browser. */
export function setUpFragment(setUp: SetUpOnPhone): string {
  return `${SET_UP_FRAGMENT}${at64(deflateSync(strToU8(JSON.stringify(setUp)), { level: 9 }))}`;
}

/**
 * Reads a set-up out of an address.
 * @param fragment as `location.hash` gives it
 * @returns the set-up, or a problem; never throws on input
 */
export function readSetUpFragment(fragment: string): ReadResult<SetUpOnPhone> {
  const refuse = (sentence: string): { value: null; problems: Problem[] } => ({
    value: null,
    problems: [
      { code: 'link.bad', message: `This address ${sentence}; scan the code again, or have a new one made.`, where: 'the address' },
    ],
  });
  if (!fragment.startsWith(SET_UP_FRAGMENT) || fragment.length > MOST_BYTES) return refuse('holds no set-up');
  const packed = from64(fragment.slice(SET_UP_FRAGMENT.length));
  if (packed === null) return refuse('is cut off or was changed');
  let raw: unknown;
  try {
    // Into so many bytes and no more: a few packed ones may stand for millions.
    const bytes = inflateSync(packed, { out: new Uint8Array(MOST_BYTES) });
    raw = JSON.parse(strFromU8(bytes));
  } catch {
    return refuse('is cut off or was changed');
  }
  const parsed = setUpSchema.safeParse(raw);
  return parsed.success
    ? { value: parsed.data, problems: [] }
    : { value: null, problems: explainIssues(parsed.error.issues, raw, 'The address', 'link') };
}
