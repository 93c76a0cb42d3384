import { cutName, cutText } from '../base/bounds.ts';
import type { Problem } from '../base/error.ts';
import { checkHolds } from '../explore/settings/check-holds.ts';
import { namedInks } from '../ink/target/target.ts';
import { explainIssues } from '../recipe/explain.ts';
import { MOST_TOLD, readEnvelope, type ReadResult } from '../recipe/read.ts';
import { checkHolder, checkPulls, doubles } from '../recipe/references.ts';
import { say } from '../words/en/project/project.ts';
import { projectSchema } from './schema.ts';
import { PROJECT_FORMAT, PROJECT_VERSION, type Project } from './types.ts';

/**
 * Reads a project and checks every field and every name in it.
 * @param text JSON as `writeProject` gives it
 * @param fileName named in the sentences
 * @returns the project, or problems and no project; never throws on input
 */
export function readProject(text: string, fileName: string): ReadResult<Project> {
  const envelope = readEnvelope(text, fileName, { format: PROJECT_FORMAT, latest: PROJECT_VERSION, what: 'project' });
  if (envelope.value === null) return envelope;
  return checkProject(envelope.value.raw, fileName);
}

/**
 * Checks every field and every name of a project that was parsed already.
 * @param raw anything
 * @param file named in the sentences
 */
export function checkProject(raw: unknown, file: string): ReadResult<Project> {
  const fileName = cutName(file);
  const parsed = projectSchema.safeParse(raw);
  if (!parsed.success) {
    return { value: null, problems: explainIssues(parsed.error.issues, raw, fileName, 'project') };
  }
  const project: Project = parsed.data;
  const problems = [
    ...checkHolder(project.drawer, fileName),
    ...checkPulls(project.bench, project.drawer, 'bench', fileName),
    ...checkPulls(project.lesson, project.drawer, 'lesson', fileName),
    ...(project.pins ?? []).flatMap((pin, i) => checkPulls(pin.pulls, project.drawer, `pins[${i}].pulls`, fileName)),
    ...checkTarget(project, fileName),
    ...checkEditions(project, fileName),
    ...doubles(
      fileName,
      'recipes',
      project.recipes.map(({ id }) => id),
    ),
    ...project.recipes.flatMap((recipe, i) => [
      ...checkHolder(recipe, fileName),
      ...checkPulls(recipe.pulls, recipe, `recipes[${i}].pulls`, fileName),
    ]),
    ...checkHolds(project.bench, project.explore.holds).map((problem) => ({
      ...problem,
      message: `${fileName}: ${problem.message}`,
    })),
  ];
  return problems.length > 0 ? { value: null, problems: problems.slice(0, MOST_TOLD) } : { value: project, problems: [] };
}

/** Whether the target names inks that are there: a problem, or none. */
export function checkTarget({ target, drawer: studio }: Project, fileName: string): Problem[] {
  if (target === undefined) return [];
  const gone = namedInks(target).find((named) => !studio.inks.some((ink) => ink.id === named));
  if (gone === undefined) return [];
  return [
    {
      code: 'project.target',
      message: say.targetNamesInkWhich(fileName, cutText(gone)),
      where: 'target',
    },
  ];
}

/** Whether each edition is of a recipe that is there, and no two of one: a problem each. */
export function checkEditions({ editions = [], recipes }: Project, fileName: string): Problem[] {
  const known = new Set(recipes.map(({ id }) => id));
  const before = new Set<string>();
  return editions.flatMap(({ recipe }, i): Problem[] => {
    const where = `editions[${i}].recipe`;
    if (!known.has(recipe)) {
      return [
        {
          code: 'project.edition',
          message: say.namesWhichIsNot(fileName, where, cutText(recipe)),
          where,
        },
      ];
    }
    if (!before.has(recipe)) {
      before.add(recipe);
      return [];
    }
    return [
      {
        code: 'project.edition',
        message: say.isWhichEditionBefore(fileName, where, cutText(recipe)),
        where,
      },
    ];
  });
}
