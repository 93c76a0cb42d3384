import type { ExploreSettings } from '../explore/types.ts';
import type { VisitFigures } from '../output/visit-figures.ts';
import type { Recipe } from '../recipe/types.ts';
import type { Drawer, Pull } from '../stack/types.ts';

export const PROJECT_FORMAT = 'pullstack-project';
export const PROJECT_VERSION = 1;

/** How many sheets of a recipe a visit prints. */
export interface VisitRun {
  recipe: string;
  sheets: number;
}

/** The studio's own figures. */
export interface PressSettings extends VisitFigures {
  /** Registration that the table holds, mm; 0.25–1 by hand, from memory. */
  registrationMm: number;
}

/** One project: plain, serialisable, versioned. */
export interface Project {
  format: typeof PROJECT_FORMAT;
  version: typeof PROJECT_VERSION;
  title: string;
  drawer: Drawer;
  /** The stack on the Bench, which the Wall also starts from; first down first. */
  bench: Pull[];
  explore: ExploreSettings;
  recipes: Recipe[];
  visit: VisitRun[];
  press: PressSettings;
  /** The pulls that the Lesson permutes, none or 2 to 5, with offsets of their own. */
  lesson: Pull[];
}
