import { defined, entryAt } from '../../../engine/base/at.ts';
import { type FrameState, frameState } from '../../../engine/explore/prepare/frames.ts';
import type { FilmScreen } from '../../../engine/output/film/ways.ts';
import type { Project } from '../../../engine/project/types.ts';
import { framesOf } from '../../../engine/visit/stencils/frames.ts';
import { stencilsOf } from '../../../engine/visit/stencils/stencil-list.ts';
import type { MadePlan } from '../../output/made-plan.ts';

/** A screen that films can be made of. */
export interface FilmOffer extends FilmScreen {
  id: string;
  state: FrameState;
}

/** The screens of the drawer, by number. */
export function drawerOffers({ drawer, frames }: Pick<Project, 'drawer' | 'frames'>): FilmOffer[] {
  return drawer.screens
    .toSorted((a, b) => a.number - b.number)
    .map((screen) => ({
      id: screen.id,
      key: String(screen.number),
      screen,
      shapes: drawer.shapes,
      paper: drawer.paper,
      state: frameState(screen.id, frames),
      frame: frames?.inside?.[screen.id],
    }));
}

/** What an order needs and is not said to be made or filmed is to be made, where that is said of any. */
function stateIn(states: MadePlan['screenStates'], key: string): FrameState {
  if (states === undefined) return 'drawn';
  const state = states.get(key);
  return state === 'made' || state === 'film made' ? state : 'to make';
}

/** The stencils of a visit, each once, on the sheet of a recipe that it prints and for the frame that it is on. */
export function visitFilms({ plan, recipes, screenStates, frameSizes }: MadePlan): FilmOffer[] {
  const stencils = stencilsOf(plan, recipes);
  // A screen that is made has its own frame.
  const made = stencils.filter(({ screen }) => screenStates?.get(screen.key) === 'made');
  const frames = [...framesOf(stencils.filter((each) => !made.includes(each))), ...made.flatMap((each) => framesOf([each]))];
  const least = new Map(
    frames.flatMap(({ insideWidthMm: widthMm, insideHeightMm: heightMm, stencils: on }) =>
      on.map(({ screen }) => [screen.key, { widthMm, heightMm, least: true as const }] as const),
    ),
  );
  return stencils
    .map(({ screen: { key }, recipe: index, id }) => {
      const recipe = entryAt(recipes, index);
      const screen = defined(recipe.screens.find((each) => each.id === id));
      return {
        id: key,
        key,
        screen,
        shapes: recipe.shapes,
        paper: recipe.paper,
        joints: recipe.joints,
        state: stateIn(screenStates, key),
        frame: frameSizes?.get(key) ?? least.get(key),
      };
    })
    .sort((a, b) => a.screen.number - b.screen.number || (a.key < b.key ? -1 : 1));
}
