import type { Project } from '../../engine/project/types.ts';
import { say } from '../words/en/keep/room.ts';

/** What is in a project, for a list of projects: '12 shapes, 40 recipes'. */
export function inIt({ drawer, recipes }: Pick<Project, 'drawer' | 'recipes'>): string {
  return say.shapesRecipes(drawer.shapes.length, recipes.length);
}
