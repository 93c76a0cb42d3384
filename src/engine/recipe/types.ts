import type { Printing } from '../ink/film/printing.ts';
import type { Ink, Paper } from '../ink/types.ts';
import type { Joints } from '../output/film/sections.ts';
import type { Screen, Shape } from '../shapes/types.ts';
import type { Pull } from '../stack/types.ts';
import type { PrintLineage } from './lineage.ts';

export const RECIPE_FORMAT = 'pullstack-recipe';
export const RECIPE_VERSION = 1;

/** Labels of one recipe, and signs of one label. */
export const MOST_LABELS = 20;
export const MOST_SIGNS_OF_LABEL = 60;

/** A kept variant, self-contained: all that is needed to build it. */
export interface Recipe extends Printing {
  format: typeof RECIPE_FORMAT;
  version: typeof RECIPE_VERSION;
  id: string;
  title: string;
  note: string;
  /** What it is labelled with, each once; absent without. */
  labels?: string[] | undefined;
  /** What finds the variant again: its wall seed and number; '' and −1 for a stack made by hand. */
  seed: string;
  index: number;
  /** Id of the recipe of which this is a sheet as it was really pulled, or a change; absent when it is of none. */
  parent?: string | undefined;
  /** Which prints it was found from on the wall; absent on stacks made by hand and in older recipes. */
  lineage?: PrintLineage | undefined;
  paper: Paper;
  /** Of a section that overlaps its neighbours: where its sheet is trimmed; absent otherwise. */
  joints?: Joints | undefined;
  strokeGain: number;
  /** Only those that the pulls use. */
  shapes: Shape[];
  screens: Screen[];
  inks: Ink[];
  /** First down first. */
  pulls: Pull[];
}
