import { type Problem, readCgats, readLog, readProject, readRecipe, readShapes } from '../../src/engine/index.ts';

/** The readers that are tried. */
export const READERS = ['svg', 'cgats', 'recipe', 'project', 'log'] as const;

export type ReaderName = (typeof READERS)[number];

/** A sentence longer than this is no sentence; the longest of ours have some 300 signs. */
const LONGEST_SENTENCE = 600;

/**
 * Reads a text and looks at what came of it.
 * @returns what is wrong with the reader, or null
 */
export function tryReader(reader: ReaderName, text: string): string | null {
  try {
    return reader === 'svg' ? tryShapes(text) : reader === 'cgats' ? tryCgats(text) : tryDocument(reader, text);
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

function tryDocument(reader: 'recipe' | 'project' | 'log', text: string): string | null {
  const read = { recipe: readRecipe, project: readProject, log: readLog }[reader];
  const { value, problems } = read(text, 'tried.json');
  if (value === null && problems.length === 0) return 'neither a document nor a sentence';
  return sentences(problems);
}

function sentences(problems: readonly Problem[]): string | null {
  const bad = problems.find(({ message }) => message.length > LONGEST_SENTENCE || !/^tried\..*\.$/su.test(message));
  return bad === undefined ? null : `no sentence: ${bad.message.slice(0, 200)} (${bad.message.length} signs)`;
}
