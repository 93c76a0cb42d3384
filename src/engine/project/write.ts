import type { Project } from './types.ts';

/** The text of a project file. */
export function writeProject(project: Project): string {
  return `${JSON.stringify(project)}\n`;
}
