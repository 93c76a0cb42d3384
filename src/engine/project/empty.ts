import { PROJECT_FORMAT, PROJECT_VERSION, type Project } from './types.ts';

/** With nothing on the Bench a print is made of screens brought in alone: enough for layers. */
const BRING_IN = 8;

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
    explore: { ...like.explore, holds: [], bringIn: BRING_IN },
    recipes: [],
    visit: [],
    press: like.press,
    lesson: [],
  };
}
