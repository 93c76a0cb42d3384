import { deflateSync, strToU8, zipSync } from 'fflate';
import { roomAt } from '../../src/components/rooms.ts';
import { typedNumber } from '../../src/engine/base/typed-number.ts';
import { type Problem, readCgats, readLog, readProject, readRecipe, readShapes } from '../../src/engine/index.ts';
import { photoFault } from '../../src/engine/ink/characterise/photo-size.ts';
import { typedColour } from '../../src/engine/ink/target/typed-colour.ts';
import type { ReadResult } from '../../src/engine/recipe/read.ts';
import { at64 } from '../../src/engine/visitfile/base64url.ts';
import { LESSON_FRAGMENT, SET_UP_FRAGMENT } from '../../src/engine/visitfile/fragments.ts';
import { readLessonFragment } from '../../src/engine/visitfile/lesson-link.ts';
import { readSetUpFragment } from '../../src/engine/visitfile/set-up-link.ts';
import { readVisit, type VisitFile } from '../../src/engine/visitfile/visit-file.ts';
import { useLesson, useLog, useProject, useRecipe } from './use.ts';

/** The readers that are tried. */
export const READERS = ['svg', 'cgats', 'recipe', 'project', 'log', 'visit', 'link', 'lesson', 'photo', 'typed'] as const;

export type ReaderName = (typeof READERS)[number];

/** Of a sentence's signs at most 200 are the file's, its name and one thing in it, and some 200 ours. */
const LONGEST_SENTENCE = 400;

/** A name longer than any sentence should hold. */
const FILE = `tried.${'x'.repeat(2000)}`;

const TRIED: Readonly<Record<ReaderName, (text: string, used: boolean) => string | null>> = {
  svg: tryShapes,
  cgats: tryCgats,
  recipe: (text, used) => tryDocument(readRecipe(text, FILE), used ? useRecipe : null),
  project: (text, used) => tryDocument(readProject(text, FILE), used ? useProject : null),
  log: (text, used) => tryDocument(readLog(text, FILE), used ? useLog : null),
  visit: (text, used) => tryDocument(readVisit(zipOf(text), FILE), used ? useVisit : null),
  link: (text) => tryLink(text, SET_UP_FRAGMENT, readSetUpFragment, () => null),
  lesson: (text) => tryLink(text, LESSON_FRAGMENT, readLessonFragment, useLesson),
  photo: tryPhoto,
  typed: tryTyped,
};

/**
 * Reads a text, uses what was read, and looks at what came of it.
 * @param used whether a document that is read is painted and planned too, which takes a hundred times as long
 * @returns what is wrong with the reader, or null
 */
export function tryReader(reader: ReaderName, text: string, used: boolean): string | null {
  try {
    return TRIED[reader](text, used);
  } catch (error) {
    return `threw ${String(error).slice(0, 200)}`;
  }
}

function tryShapes(text: string): string | null {
  const { shapes, problems } = readShapes(text, FILE);
  if (shapes.length === 0 && problems.length === 0) return 'neither a shape nor a sentence';
  const finite = shapes.every(({ rings }) => rings.every((ring) => ring.every(Number.isFinite)));
  return finite ? sentences(problems) : 'a coordinate that is no number';
}

function tryCgats(text: string): string | null {
  const { samples, problems } = readCgats(text, FILE);
  if (samples.length === 0 && problems.length === 0) return 'neither a sample nor a sentence';
  for (const { reflectance, lab } of samples) {
    if (reflectance?.every((value) => value >= 0 && value <= 1.2) === false) return 'a reflectance out of range';
    if (lab?.every(Number.isFinite) === false) return 'a Lab that is no number';
  }
  return sentences(problems);
}

function tryDocument<Document>(
  { value, problems }: { value: Document | null; problems: readonly Problem[] },
  use: ((document: Document) => string | null) | null,
): string | null {
  if (value === null) return problems.length === 0 ? 'neither a document nor a sentence' : sentences(problems);
  return use?.(value) ?? null;
}

/** A zip's bytes, one a sign; or its parts by name, to be packed. */
function zipOf(text: string): Uint8Array {
  let parts: unknown = null;
  try {
    parts = JSON.parse(text);
  } catch {
    // Then it is a zip, or what became of one.
  }
  if (typeof parts !== 'object' || parts === null || Array.isArray(parts)) return Uint8Array.from(text, (sign) => sign.charCodeAt(0));
  return zipSync(Object.fromEntries(Object.entries(parts).map(([name, part]) => [name, strToU8(JSON.stringify(part))])), { level: 0 });
}

function useVisit({ project, log }: VisitFile): string | null {
  return useProject(project) ?? (log === null ? null : useLog(log));
}

/** What stands behind an address, or what is packed into one. */
function tryLink<Value>(
  text: string,
  begins: string,
  read: (fragment: string) => ReadResult<Value>,
  use: (value: Value) => string | null,
): string | null {
  const packed = text.startsWith('{') ? `${begins}${at64(deflateSync(strToU8(text)))}` : text;
  const { value, problems } = read(packed.startsWith(begins) ? packed : `${begins}${packed}`);
  if (value !== null) return use(value);
  const bad = problems.find(({ message }) => !/^Th(is|e) address.{5,300}\.$/su.test(message));
  return problems.length > 0 && bad === undefined ? null : `no sentence: ${bad?.message.slice(0, 300)}`;
}

/** A photo's first bytes, one a sign. */
function tryPhoto(text: string): string | null {
  const fault = photoFault(Uint8Array.from(text, (sign) => sign.charCodeAt(0)));
  return fault === null || /^the picture has \d+ × \d+ pixels, .*\.$/u.test(fault) ? null : `no sentence: ${fault.slice(0, 200)}`;
}

/** What is typed into a field, or stands behind the address. */
function tryTyped(text: string): string | null {
  roomAt(text);
  const { value, problem } = typedNumber(text, ',');
  if (value !== null ? !Number.isFinite(value) : !/^\S.{4,200}\.$/su.test(problem))
    return `no number and no sentence: ${problem.slice(0, 300)}`;
  const { lab, problem: said } = typedColour(text);
  if (lab !== null ? !lab.every(Number.isFinite) : said.length > LONGEST_SENTENCE)
    return `no colour and no sentence: ${said.slice(0, 300)}`;
  return null;
}

function sentences(problems: readonly Problem[]): string | null {
  const bad = problems.find(({ message }) => message.length > LONGEST_SENTENCE || !/^tried\..*\.$/su.test(message));
  return bad === undefined ? null : `no sentence: ${bad.message.slice(0, 200)} (${bad.message.length} signs)`;
}
