import project from 'virtual:demo-project';
import type { Project } from '../engine/project/types.ts';

/** The demo project, of the shape files that ship with the app. */
export function demo(): Project {
  return structuredClone(project);
}
