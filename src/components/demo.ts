import { demoProject } from '../engine/project/demo.ts';
import { firstWall } from '../engine/project/first-wall.ts';
import type { Project } from '../engine/project/types.ts';

const SHAPE_FILES = import.meta.glob<string>('/shapes/*.svg', { query: '?raw', import: 'default', eager: true });

/** The demo project, from the shape files that ship with the app. */
export function demo(): Project {
  return firstWall(demoProject(Object.entries(SHAPE_FILES).map(([path, text]) => ({ name: path.slice(path.lastIndexOf('/') + 1), text }))));
}
