import { roomAt } from '../../src/components/rooms.ts';
import { typedNumber } from '../../src/engine/base/typed-number.ts';
import { type Problem, readCgats, readLog, readProject, readRecipe, readShapes } from '../../src/engine/index.ts';
import { photoFault } from '../../src/engine/ink/characterise/photo-size.ts';
import { typedColour } from '../../src/engine/ink/target/typed-colour.ts';

/** The readers that are tried. */
export const READERS = ['svg', 'cgats', 'recipe', 'project', 'log', 'photo', 'typed'] as const;

export type ReaderName = (typeof READERS)[number];

/** A sentence longer than this is no sentence; the longest of ours have some 300 signs. */
const LONGEST_SENTENCE = 600;

const TRIED: Readonly<Record<ReaderName, (text: string) => string | null>> = {
  svg: tryShapes,
  cgats: tryCgats,
  recipe: (text) => tryDocument(readRecipe(text, 'tried.json')),
  project: (text) => tryDocument(readProject(text, 'tried.json')),
  log: (text) => tryDocument(readLog(text, 'tried.json')),
  photo: tryPhoto,
  typed: tryTyped,
};

/**
 * Reads a text and looks at what came of it.
 * @returns what is wrong with the reader, or null
 */
export function tryReader(reader: ReaderName, text: string): string | null {
  try {
    return TRIED[reader](text);
  } catch (error) {
    return `threw ${String(error).slice(0, 200)}`;
  }
}

function tryShapes(text: string): string | null {
  const { shapes, problems } = readShapes(text, 'tried.svg');
  if (shapes.length === 0 && problems.length === 0) return 'neither a shape nor a sentence';
  const finite = shapes.every(({ rings }) => rings.every((ring) => ring.every(Number.isFinite)));
  return finite ? sentences(problems) : 'a coordinate that is no number';
}

function tryCgats(text: string): string | null {
  const { samples, problems } = readCgats(text, 'tried.txt');
  if (samples.length === 0 && problems.length === 0) return 'neither a sample nor a sentence';
  for (const { reflectance, lab } of samples) {
    if (reflectance?.every((value) => value >= 0 && value <= 1.2) === false) return 'a reflectance out of range';
    if (lab?.every(Number.isFinite) === false) return 'a Lab that is no number';
  }
  return sentences(problems);
}

function tryDocument({ value, problems }: { value: unknown; problems: readonly Problem[] }): string | null {
  if (value === null && problems.length === 0) return 'neither a document nor a sentence';
  return sentences(problems);
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
