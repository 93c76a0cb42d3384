import type { PrepareBudget } from '../explore/prepare/budget.ts';
import type { Frames } from '../explore/prepare/frames.ts';
import type { SeenRun } from '../explore/search/seen.ts';
import type { TasteChoice } from '../explore/taste/choices.ts';
import type { ExploreSettings } from '../explore/types.ts';
import type { Target } from '../ink/target/target.ts';
import type { InkChange } from '../lesson/lesson-sheet.ts';
import type { Edition } from '../log/edition/edition.ts';
import type { FilmSettings } from '../output/film/settings.ts';
import type { PrintLineage } from '../recipe/lineage.ts';
import type { Pin } from '../recipe/prints/pinned-prints.ts';
import type { Recipe } from '../recipe/types.ts';
import type { Pull } from '../stack/types.ts';
import type { Studio } from '../studio/studio.ts';
import type { VisitFigures } from '../visit/visit-figures.ts';

export type { Target };

export const PROJECT_FORMAT = 'pullstack-project';
export const PROJECT_VERSION = 1;

/** How many sheets of a recipe a visit prints. */
export interface VisitRun {
  recipe: string;
  /** Prints that are wanted. */
  sheets: number;
  /** Sheets beside them; absent = as many as the studio's figures say. */
  overs?: number | undefined;
  proofs?: number | undefined;
}

/** The studio's own figures. */
export interface PressSettings extends VisitFigures {
  /** Registration that the table holds, mm; 0.25–1 by hand, from memory. */
  registrationMm: number;
}

/** More pins than this would be a wall of their own. */
export const MOST_PINS = 100;

/** Where a stack on the Bench came from; a recipe by the title it had then, as it may be gone. */
export type StackSource =
  | { kind: 'wall'; print: PrintLineage }
  | { kind: 'recipe'; title: string; /** Its id; absent in older projects. */ recipe?: string | undefined }
  | { kind: 'hand' };

/** The stack on the Bench as it was when it was opened. */
export interface StackOrigin {
  source: StackSource;
  /** First down first; what they name may be gone from the drawer by now. */
  pulls: Pull[];
}

/** One project: plain, serialisable, versioned. */
export interface Project {
  format: typeof PROJECT_FORMAT;
  version: typeof PROJECT_VERSION;
  title: string;
  drawer: Studio;
  /** The stack on the Bench, which the Wall also starts from; first down first. */
  bench: Pull[];
  /** Where that stack came from; absent until one is opened, and in older projects. */
  origin?: StackOrigin | undefined;
  explore: ExploreSettings;
  recipes: Recipe[];
  visit: VisitRun[];
  press: PressSettings;
  /** The pulls that the Lesson permutes, none or 2 to 6, with offsets of their own. */
  lesson: Pull[];
  /** Inks that the Lesson prints clearer or more opaque; absent until one is. An ink that is gone does not count. */
  lessonInks?: InkChange[] | undefined;
  /** Absent until a target is printed or measured. */
  target?: Target | undefined;
  /** What was said of the editions of its recipes, at most one each; absent until there is one. */
  editions?: Edition[] | undefined;
  /** Prints pinned to the wall, in their order; absent until one is. */
  pins?: Pin[] | undefined;
  /** Which screens are made, and which are to be; absent until it is said of one. */
  frames?: Frames | undefined;
  /** How its films are made; absent until it is said. */
  films?: FilmSettings | undefined;
  /** What may be spent on screens, and what one costs; absent until it is said. */
  screenBudget?: PrepareBudget | undefined;
  /** What its walls have shown, seed by seed; absent until one hung. */
  seen?: readonly SeenRun[] | undefined;
  /** Prints that were chosen over others, the oldest first; absent until one was. */
  taste?: TasteChoice[] | undefined;
}
