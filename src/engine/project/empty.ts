import { reread } from '../ink/characterise/reread.ts';
import { USUAL_SURFACE, USUAL_TRAPPING } from '../ink/film/printing.ts';
import { say } from '../words/en/project/project.ts';
import { PROJECT_FORMAT, PROJECT_VERSION, type Project } from './types.ts';

/** With nothing on the Bench a print is made of screens brought in alone: enough for layers. */
const BRING_IN = 8;

/**
 * A project with nothing in the drawer and a wall of its own name, with the inks, paper and studio figures of another. Where that one
 * knows of no surface and no trapping, as those from before, it begins with the usual ones: its inks go on
 * showing over the card what they did, and overprints come nearer to real ones.
 * @param like the project whose inks, paper and figures stay
 */
export function emptyProject(like: Project): Project {
  const { surface = USUAL_SURFACE, trapping = { factor: USUAL_TRAPPING } } = like.drawer;
  const { mustScreens: _must, notScreens: _not, onlyAtHand: _hand, ...explore } = like.explore;
  const inks = like.drawer.inks.map((ink) => reread(ink, like.drawer.surface, surface));
  return {
    format: PROJECT_FORMAT,
    version: PROJECT_VERSION,
    title: say.untitled,
    drawer: { ...like.drawer, inks, surface: { ...surface }, trapping: { ...trapping }, shapes: [], screens: [] },
    bench: [],
    explore: { ...explore, seed: say.untitled, holds: [], bringIn: BRING_IN },
    recipes: [],
    visit: [],
    press: like.press,
    lesson: [],
  };
}
