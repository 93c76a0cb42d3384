import type { z } from 'zod';
import { cutText } from '../base/bounds.ts';
import type { Problem } from '../base/error.ts';
import { checkHolds } from '../explore/settings/check-holds.ts';
import { printingOf } from '../ink/film/printing.ts';
import { explainIssues } from '../recipe/explain.ts';
import { checkHolder, checkPulls, doubles } from '../recipe/references.ts';
import type { Pull } from '../stack/types.ts';
import type { Studio } from '../studio/studio.ts';
import { say } from '../words/en/project/project.ts';
import { checkEditions, checkProject, checkTarget } from './read.ts';
import { projectSchema } from './schema.ts';
import { PROJECT_FORMAT, PROJECT_VERSION, type Project } from './types.ts';

/** What could be read of a saved project, and a sentence for each part that could not. */
export interface SectionsRead {
  project: Project;
  aside: Problem[];
}

type Sections = Record<string, unknown>;

/** What a list loses at most round by round: each round may bring to light what leaned on the one before. */
const MOST_ROUNDS = 100;

/**
 * Reads a saved project part by part: a part that reads well is kept, of a list each entry by itself.
 * What names something that is gone is put aside as well.
 * @param raw the saved sections, or anything else
 * @param fallback gives what a project cannot be without, where that part is unreadable
 * @param name of what is read, for the sentences
 * @returns a project that `checkProject` takes, and a problem for each part or entry left out
 */
export function readSections(raw: unknown, fallback: Project, name: string): SectionsRead {
  const reader = new SectionReader(typeof raw === 'object' && raw !== null ? (raw as Sections) : {}, name);
  const project = reader.read(fallback);
  const check = checkProject(project, name);
  if (check.value !== null) return { project: check.value, aside: reader.aside };
  return { project: fallback, aside: [...reader.aside, ...check.problems] };
}

class SectionReader {
  readonly aside: Problem[] = [];
  private readonly raw: Sections;
  private readonly name: string;

  constructor(raw: Sections, name: string) {
    this.raw = raw;
    this.name = name;
  }

  read(fallback: Project): Project {
    const { shape } = projectSchema;
    this.part(['format'], shape.format, PROJECT_FORMAT);
    this.part(['version'], shape.version, PROJECT_VERSION);
    const drawer = this.drawer(fallback.drawer);
    const bench = this.pulls('bench', drawer);
    const explore = this.part(['explore'], shape.explore, { ...fallback.explore, holds: [] });
    const recipes = this.recipes();
    const project: Project = {
      format: PROJECT_FORMAT,
      version: PROJECT_VERSION,
      title: this.part(['title'], shape.title, say.untitled),
      drawer,
      bench,
      explore: {
        ...explore,
        palette: explore.palette.filter((ink) => drawer.inks.some(({ id }) => id === ink)),
        holds: this.holds(bench, explore.holds),
      },
      recipes,
      visit: this.list(['visit'], shape.visit).filter((run) => recipes.some(({ id }) => id === run.recipe)),
      press: this.part(['press'], shape.press, fallback.press),
      lesson: this.pulls('lesson', drawer),
    };
    return this.more(project);
  }

  /** What a project may be without. */
  private more(project: Project): Project {
    const { shape } = projectSchema;
    const origin = this.part(['origin'], shape.origin, undefined);
    if (origin !== undefined) project.origin = origin;
    if (this.raw['pins'] !== undefined) project.pins = this.pins(project.drawer);
    const lessonInks = this.part(['lessonInks'], shape.lessonInks, undefined);
    if (lessonInks !== undefined) project.lessonInks = lessonInks;
    const frames = this.part(['frames'], shape.frames, undefined);
    if (frames !== undefined) project.frames = frames;
    const films = this.part(['films'], shape.films, undefined);
    if (films !== undefined) project.films = films;
    const screenBudget = this.part(['screenBudget'], shape.screenBudget, undefined);
    if (screenBudget !== undefined) project.screenBudget = screenBudget;
    if (this.raw['seen'] !== undefined) project.seen = this.list(['seen'], shape.seen.unwrap());
    if (this.raw['taste'] !== undefined) project.taste = this.list(['taste'], shape.taste.unwrap());
    if (this.raw['editions'] !== undefined) {
      const read = this.list(['editions'], shape.editions.unwrap());
      project.editions = this.without(read, 'editions', (editions) => checkEditions({ ...project, editions }, this.name));
    }
    const target = this.part(['target'], shape.target, undefined);
    const problems = checkTarget({ ...project, target }, this.name);
    this.aside.push(...problems);
    if (target !== undefined && problems.length === 0) project.target = target;
    return project;
  }

  private valueAt(path: readonly string[]): unknown {
    return path.reduce<unknown>(
      (value, key) => (typeof value === 'object' && value !== null ? (value as Sections)[key] : undefined),
      this.raw,
    );
  }

  private explain(path: readonly PropertyKey[], error: z.ZodError): void {
    const issues = error.issues.map((issue) => ({ ...issue, path: [...path, ...issue.path] }));
    this.aside.push(...explainIssues(issues, this.raw, this.name, 'project'));
  }

  private part<T>(path: readonly string[], schema: z.ZodType<T>, otherwise: T): T {
    const parsed = schema.safeParse(this.valueAt(path));
    if (parsed.success) return parsed.data;
    this.explain(path, parsed.error);
    return otherwise;
  }

  private list<T>(path: readonly string[], schema: z.ZodArray<z.ZodType<T>>): T[] {
    const value = this.valueAt(path);
    if (!Array.isArray(value)) {
      this.aside.push({
        code: 'project.field',
        message: say.isNoListMend(this.name, path.join('.')),
        where: path.join('.'),
      });
      return [];
    }
    const read = value.flatMap((each: unknown, i): T[] => {
      const parsed = schema.element.safeParse(each);
      if (parsed.success) return [parsed.data];
      this.explain([...path, i], parsed.error);
      return [];
    });
    // Only what is asked of the list itself is left to fail, such as its length.
    const whole = schema.safeParse(read);
    if (whole.success) return whole.data;
    this.explain(path, whole.error);
    return [];
  }

  /** Leaves out the entries that problems name as `<list>[i]…`, until none is named. */
  private without<T>(entries: T[], list: string, check: (entries: T[]) => Problem[]): T[] {
    let left = entries;
    for (let round = 0; round < MOST_ROUNDS; round++) {
      const problems = check(left).filter(({ where }) => where?.startsWith(`${list}[`));
      if (problems.length === 0) return left;
      this.aside.push(...problems);
      const named = new Set(problems.map(({ where }) => Number.parseInt((where ?? '').slice(list.length + 1), 10)));
      left = left.filter((_, i) => !named.has(i));
    }
    return [];
  }

  private drawer(fallback: Studio): Studio {
    const { shape } = projectSchema.shape.drawer;
    const paper = this.part(['drawer', 'paper'], shape.paper, fallback.paper);
    const strokeGain = this.part(['drawer', 'strokeGain'], shape.strokeGain, fallback.strokeGain);
    const none = { shapes: [], screens: [], inks: [] };
    const file = say.drawer(this.name);
    const shapes = this.without(this.list(['drawer', 'shapes'], shape.shapes), 'shapes', (each) =>
      checkHolder({ ...none, shapes: each }, file),
    );
    const inks = this.without(this.list(['drawer', 'inks'], shape.inks), 'inks', (each) => checkHolder({ ...none, inks: each }, file));
    const screens = this.without(this.list(['drawer', 'screens'], shape.screens), 'screens', (each) =>
      checkHolder({ ...none, shapes, screens: each }, file),
    );
    // Not those of the fallback: a file without them was made without them.
    const surface = this.part(['drawer', 'surface'], shape.surface, undefined);
    const trapping = this.part(['drawer', 'trapping'], shape.trapping, undefined);
    return { shapes, screens, inks, paper, strokeGain, ...printingOf({ surface, trapping }) };
  }

  private pulls(list: 'bench' | 'lesson', drawer: Studio): Pull[] {
    const read = this.list([list], projectSchema.shape[list]);
    return this.without(read, list, (pulls) => checkPulls(pulls, drawer, list, this.name));
  }

  private holds(bench: readonly Pull[], holds: Project['explore']['holds']): Project['explore']['holds'] {
    const check = (each: Project['explore']['holds']): Problem[] =>
      checkHolds(bench, each).map((problem) => ({ ...problem, message: `${this.name}: ${problem.message}` }));
    const left = this.without(holds, 'holds', check);
    const circle = check(left);
    this.aside.push(...circle);
    return circle.length === 0 ? left : [];
  }

  private recipes(): Project['recipes'] {
    const read = this.list(['recipes'], projectSchema.shape.recipes);
    const sound = read.filter((recipe) => {
      const name = say.recipe(this.name, cutText(recipe.title));
      const [problem] = [...checkHolder(recipe, name), ...checkPulls(recipe.pulls, recipe, 'pulls', name)];
      if (problem !== undefined) this.aside.push(problem);
      return problem === undefined;
    });
    return this.without(sound, 'recipes', (each) =>
      doubles(
        this.name,
        'recipes',
        each.map(({ id }) => id),
      ),
    );
  }

  private pins(drawer: Studio): NonNullable<Project['pins']> {
    const read = this.list(['pins'], projectSchema.shape.pins.unwrap());
    return this.without(read, 'pins', (pins) =>
      pins.flatMap((pin, i) => checkPulls(pin.pulls, drawer, `pins[${i}].pulls`, this.name).slice(0, 1)),
    );
  }
}
