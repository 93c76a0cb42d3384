import { z } from 'zod';
import type { Problem } from '../base/error.ts';
import { explainIssues } from '../recipe/explain.ts';
import type { ReadResult } from '../recipe/read.ts';
import { say } from '../words/en/visitfile/visitfile.ts';
import { SET_UP_FRAGMENT } from './fragments.ts';
import { packFragment, unpackFragment } from './packed-fragment.ts';

/** Bytes of a link unpacked: a set-up with five hundred sheets has some three thousand. */
const MOST_BYTES = 20_000;
const text = z.string().max(2000);
const hex = z.string().regex(/^#[0-9a-f]{6}$/u, say.colourSuchAsA63c20);

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

/** The fragment of an address that holds a set-up: what stands behind the sign # never leaves the browser. */
export function setUpFragment(setUp: SetUpOnPhone): string {
  return packFragment(SET_UP_FRAGMENT, setUp);
}

/**
 * Reads a set-up out of an address.
 * @param fragment as `location.hash` gives it
 * @returns the set-up, or a problem; never throws on input
 */
export function readSetUpFragment(fragment: string): ReadResult<SetUpOnPhone> {
  const refuse = (sentence: string): { value: null; problems: Problem[] } => ({
    value: null,
    problems: [{ code: 'link.bad', message: say.thisAddressScanCode(sentence), where: 'the address' }],
  });
  const found = unpackFragment(SET_UP_FRAGMENT, fragment, MOST_BYTES);
  if ('fault' in found) return refuse(found.fault === 'none' ? say.holdsNoSetUp : say.isCutOffOr);
  const { raw } = found;
  const parsed = setUpSchema.safeParse(raw);
  return parsed.success
    ? { value: parsed.data, problems: [] }
    : { value: null, problems: explainIssues(parsed.error.issues, raw, say.theAddress, 'link') };
}
