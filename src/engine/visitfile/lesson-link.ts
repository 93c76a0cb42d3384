import type { Problem } from '../base/error.ts';
import { type GivenLesson, packLesson } from '../lesson/packed-lesson.ts';
import { packedLessonSchema } from '../lesson/packed-schema.ts';
import { unpackLesson } from '../lesson/unpack-lesson.ts';
import { explainIssues } from '../recipe/explain.ts';
import type { ReadResult } from '../recipe/read.ts';
import { say } from '../words/en/visitfile/visitfile.ts';
import { LESSON_FRAGMENT } from './fragments.ts';
import { packFragment, unpackFragment } from './packed-fragment.ts';

/** Bytes of a lesson packed, and unpacked. */
const MOST_BYTES = 60_000;
/** How far outlines may stray, mm, the finest first: as far as a code needs them to. */
const TOLERANCES_MM = [0.1, 0.2, 0.4, 0.8, 1.2, 1.8, 2.6, 4] as const;

/** A lesson in an address, and how far its outlines stray from their own. */
export interface LessonLink {
  fragment: string;
  toleranceMm: number;
}

/**
 * The fragment of an address that holds a lesson, its outlines as fine as there is room for.
 * @param mostSigns of the fragment
 * @returns null where even the coarsest has more signs
 * @throws EngineError as packLesson
 */
export function lessonLink(given: GivenLesson, mostSigns: number): LessonLink | null {
  for (const toleranceMm of TOLERANCES_MM) {
    const fragment = packFragment(LESSON_FRAGMENT, packLesson(given, toleranceMm));
    // What cannot be opened is no link, whatever the reason.
    if (fragment.length <= mostSigns && readLessonFragment(fragment).value !== null) return { fragment, toleranceMm };
  }
  return null;
}

/**
 * Reads a lesson out of an address.
 * @param fragment as `location.hash` gives it
 * @returns the lesson, or a problem; never throws on input
 */
export function readLessonFragment(fragment: string): ReadResult<GivenLesson> {
  const found = unpackFragment(LESSON_FRAGMENT, fragment, MOST_BYTES);
  if ('fault' in found) return refused(found.fault === 'none' ? say.holdsNoLesson : say.isCutOffOr);
  const parsed = packedLessonSchema.safeParse(found.raw);
  if (!parsed.success) return { value: null, problems: explainIssues(parsed.error.issues, found.raw, say.theAddress, 'link') };
  const value = unpackLesson(parsed.data);
  return value === null ? refused(say.holdsLessonThatCannot) : { value, problems: [] };
}

function refused(sentence: string): { value: null; problems: Problem[] } {
  const message = say.thisAddressOpenLink(sentence);
  return { value: null, problems: [{ code: 'link.bad', message, where: 'the address' }] };
}
