import { defined, entryAt, num } from '../../base/at.ts';
import { outlineArea } from '../../geometry/booleans.ts';
import { shapeBounds } from '../../geometry/rings.ts';
import type { Recipe } from '../../recipe/types.ts';
import { screenRings } from '../../shapes/place/placed.ts';
import type { VisitScreen } from '../registry.ts';
import type { PressPlan } from '../visit.ts';

/** A stencil to make, and when the visit needs it. */
export interface Stencil {
  screen: VisitScreen;
  /** Index of a recipe that it is drawn in, and its id there. */
  recipe: number;
  id: string;
  /** Numbers of the first and last set-up that it is in, and their days. */
  first: number;
  last: number;
  firstDay: number;
  lastDay: number;
  mounts: number;
  /** Keys of the inks that go through it, as they come. */
  inks: string[];
  /** Sides of the rectangle that holds its image, mm: as it is drawn on the screen, whatever the sheet. */
  imageWidthMm: number;
  imageHeightMm: number;
  /** Open to ink, m². */
  imageM2: number;
}

/** What a screen's outlines take: the box that holds them, mm, and what is open of it, m². */
function drawnOn(recipe: Recipe, screenId: string): Pick<Stencil, 'imageWidthMm' | 'imageHeightMm' | 'imageM2'> {
  const outline = screenRings(defined(recipe.screens.find(({ id }) => id === screenId)), recipe.shapes);
  if (outline.rings.length === 0) return { imageWidthMm: 0, imageHeightMm: 0, imageM2: 0 };
  const { widthMm, heightMm } = shapeBounds(outline.rings);
  return { imageWidthMm: widthMm, imageHeightMm: heightMm, imageM2: outlineArea(outline) / 1e6 };
}

/**
 * The stencils of a visit with their true images, by mesh (finest last) and then by first use.
 * @param recipes by the index that the cards' states use
 * @throws EngineError 'screen.unknown-shape'
 */
export function stencilsOf(plan: Pick<PressPlan, 'cards' | 'times'>, recipes: readonly Recipe[]): Stencil[] {
  const found = new Map<string, Stencil>();
  for (const [at, { screen, number, mount, ink, states }] of plan.cards.entries()) {
    const { day } = entryAt(plan.times, at);
    let entry = found.get(screen.key);
    if (entry === undefined) {
      const { recipe: r, prints } = entryAt(states, 0);
      const recipe = entryAt(recipes, r);
      const { screen: id } = entryAt(recipe.pulls, num(prints, 0));
      entry = {
        ...drawnOn(recipe, id),
        screen,
        recipe: r,
        id,
        first: number,
        last: number,
        firstDay: day,
        lastDay: day,
        mounts: 0,
        inks: [],
      };
      found.set(screen.key, entry);
    }
    entry.last = number;
    // On two beds a later set-up may stand on an earlier day.
    entry.firstDay = Math.min(entry.firstDay, day);
    entry.lastDay = Math.max(entry.lastDay, day);
    if (mount) entry.mounts++;
    if (!entry.inks.includes(ink.key)) entry.inks.push(ink.key);
  }
  for (const entry of found.values()) entry.mounts = Math.max(1, entry.mounts);
  return [...found.values()].sort((a, b) => a.screen.mesh.threadsPerCm - b.screen.mesh.threadsPerCm || a.first - b.first);
}
