import { PROJECT_FORMAT, PROJECT_VERSION, type Project } from './types.ts';

/**
 * A project with nothing in the drawer, with the inks, paper and studio figures of another.
 * @param like the project whose inks, paper and figures stay
 */
export function emptyProject(like: Project): Project {
  return {
    format: PROJECT_FORMAT,
    version: PROJECT_VERSION,
    title: 'Untitled',
    drawer: { ...like.drawer, shapes: [], screens: [] },
    bench: [],
    explore: { ...like.explore, holds: [] },
    recipes: [],
    visit: [],
    press: like.press,
    lesson: [],
  };
}
