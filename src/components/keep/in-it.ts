import type { Project } from '../../engine/project/types.ts';
import { counted } from '../ui/words.ts';

/** What is in a project, for a list of projects: '12 shapes, 40 recipes'. */
export function inIt({ drawer, recipes }: Pick<Project, 'drawer' | 'recipes'>): string {
  return `${counted(drawer.shapes.length, 'shape')}, ${counted(recipes.length, 'recipe')}`;
}
