import { ringPath } from '../../../engine/output/svg-text.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { pullRings } from '../../../engine/shapes/place/placed.ts';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';

/** Outlines in sheet mm. */
export interface StencilPath {
  path: string;
  fillRule: 'nonzero' | 'evenodd';
}

const NONE: StencilPath = { path: '', fillRule: 'nonzero' };
const known = new WeakMap<SetUpCard, StencilPath>();

/**
 * What a set-up's stencil prints on its first sheets, as an SVG path in sheet mm; each card is traced once.
 * @param recipes by the index that the card's states use
 * @returns an empty path where the recipe no longer has the pull
 */
export function stencilPath(card: SetUpCard, recipes: readonly Recipe[]): StencilPath {
  let path = known.get(card);
  if (path === undefined) known.set(card, (path = traced(card, recipes)));
  return path;
}

function traced(card: SetUpCard, recipes: readonly Recipe[]): StencilPath {
  const [state] = card.states;
  const recipe = recipes[state?.recipe ?? -1];
  const pull = recipe?.pulls[state?.prints[0] ?? -1];
  const screen = recipe?.screens.find((each) => each.id === pull?.screen);
  if (recipe === undefined || pull === undefined || screen === undefined) return NONE;
  const { rings, fillRule } = pullRings(screen, recipe.shapes, pull, recipe.paper);
  // To a tenth of a mm: finer than it is drawn.
  return { path: rings.map((ring) => ringPath(ring, 1)).join(''), fillRule };
}
