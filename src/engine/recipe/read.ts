import { cutName, cutText, sizeFault } from '../base/bounds.ts';
import type { Problem } from '../base/error.ts';
import { say } from '../words/en/recipe/recipe.ts';
import { explainIssues } from './explain.ts';
import { checkHolder, checkPulls } from './references.ts';
import { recipeSchema } from './schema.ts';
import { RECIPE_FORMAT, RECIPE_VERSION, type Recipe } from './types.ts';

/** Larger texts are refused before they are parsed; a stack of 200 detailed screens is about 20 MB. */
const MAX_DOCUMENT_CHARS = 64_000_000;

/** Faults of a document that are told; who has mended so many reads it again. */
export const MOST_TOLD = 100;

/** What came of reading a document: it, or why not. */
export type ReadResult<T> = { value: T; problems: [] } | { value: null; problems: Problem[] };

/** A kind of document, as its field 'format' and the sentences name it. */
export interface DocumentKind {
  format: string;
  /** The newest version that this program reads. */
  latest: number;
  what: string;
}

/**
 * Parses JSON and checks what kind and version of document it is, before its fields are looked at.
 * @param fileName named in the sentences
 */
export function readEnvelope(
  text: string,
  fileName: string,
  { format, latest, what }: DocumentKind,
): ReadResult<{ version: number; raw: unknown }> {
  const refuse = (code: string, message: string, where: string): ReadResult<never> => ({
    value: null,
    problems: [{ code, message: `${cutName(fileName)}: ${message}`, where }],
  });
  if (typeof text !== 'string') return refuse(`${what}.json`, say.fileIsNotText(what), say.theFile);
  if (text.trim() === '') return refuse(`${what}.empty`, say.fileIsEmptyChoose(what), say.theFile);
  if (text.length > MAX_DOCUMENT_CHARS) {
    return refuse(`${what}.huge`, say.fileHasCharactersOver(text.length, MAX_DOCUMENT_CHARS, what), say.theFile);
  }
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch {
    return refuse(`${what}.json`, say.fileIsNotWhole(what), say.theFile);
  }
  const tooMuch = sizeFault(raw);
  if (tooMuch !== null) return refuse(`${what}.huge`, say.fileSoThisIs(tooMuch, what), say.theFile);
  if (typeof raw !== 'object' || raw === null || !('format' in raw) || raw.format !== format) {
    return refuse(`${what}.format`, say.fieldFormatIsNot(format, what), 'format');
  }
  const version = 'version' in raw ? raw.version : undefined;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1 || version > latest) {
    return refuse(`${what}.version`, say.fieldVersionIsBut(cutText(JSON.stringify(version) ?? 'missing'), latest), 'version');
  }
  return { value: { version, raw }, problems: [] };
}

/**
 * Reads a recipe and checks every field of it.
 * @param text JSON as `writeRecipe` gives it
 * @param fileName named in the sentences
 * @returns the recipe, or one or more problems and no recipe; never throws on input
 */
export function readRecipe(text: string, fileName: string): ReadResult<Recipe> {
  const envelope = readEnvelope(text, fileName, { format: RECIPE_FORMAT, latest: RECIPE_VERSION, what: 'recipe' });
  if (envelope.value === null) return envelope;
  const name = cutName(fileName);
  const parsed = recipeSchema.safeParse(envelope.value.raw);
  if (!parsed.success) {
    return { value: null, problems: explainIssues(parsed.error.issues, envelope.value.raw, name, 'recipe') };
  }
  const recipe: Recipe = parsed.data;
  const problems = [...checkHolder(recipe, name), ...checkPulls(recipe.pulls, recipe, 'pulls', name)];
  return problems.length > 0 ? { value: null, problems: problems.slice(0, MOST_TOLD) } : { value: recipe, problems: [] };
}
