import { defined } from '../base/at.ts';
import { meshKey } from '../ink/film/mesh.ts';
import type { Ink } from '../ink/types.ts';
import type { Recipe } from '../recipe/types.ts';
import { isMirrored } from '../shapes/place/mirrored.ts';
import type { Screen, Shape } from '../shapes/types.ts';

/** A frame as the visit knows it: the same stencil in two recipes is one frame. */
export interface VisitScreen {
  /** The planner's name for it: `7`, or `7 b` when another stencil has the number too. */
  key: string;
  number: number;
  name: string;
  mesh: Screen['mesh'];
  /** What is on it is mirrored; left out where it is not. */
  mirrored?: true;
}

/** An ink as the visit knows it: the same curves in two recipes are one bucket. */
export interface VisitInk {
  key: string;
  ink: Ink;
  /** The stock inks it is weighed from, with their parts; itself when it is no mix. */
  stocks: { ink: Ink; parts: number }[];
}

/** Which frame and which bucket each recipe means by its own ids. */
export interface Registry {
  screens: VisitScreen[];
  inks: VisitInk[];
  /** By recipe index, from the recipe's own id to the key. */
  screenKey: ReadonlyMap<string, string>[];
  inkKey: ReadonlyMap<string, string>[];
}

const SUFFIXES = 'abcdefghijklmnopqrstuvwxyz';

function freeKey(wanted: string, taken: ReadonlySet<string>): string {
  if (!taken.has(wanted)) return wanted;
  for (let n = 1; ; n++) {
    const suffix = n < SUFFIXES.length ? defined(SUFFIXES[n]) : String(n);
    const key = `${wanted} ${suffix}`;
    if (!taken.has(key)) return key;
  }
}

/** What makes a stencil what it is: its outlines, where they lie, and the mesh; not its name. */
export function stencilText(screen: Screen, recipe: { readonly shapes: readonly Shape[] }): string {
  const shapes = new Map(recipe.shapes.map((shape) => [shape.id, shape]));
  return JSON.stringify([
    screen.number,
    meshKey(screen.mesh),
    screen.placed.map((placed) => [
      shapes.get(placed.shape)?.rings,
      shapes.get(placed.shape)?.fillRule,
      placed.xMm,
      placed.yMm,
      placed.turnDeg,
      placed.scale,
      // Only where it is, so that names from before stay.
      ...(placed.mirrored === true ? ['mirrored'] : []),
    ]),
  ]);
}

/** What makes an ink the ink it is: its name, its curves and the mesh they hold for. */
export function inkText(ink: Ink): string {
  return JSON.stringify([ink.name, ink.kx, ink.sx, meshKey(ink.mesh)]);
}

function stocksOf(ink: Ink, recipe: Recipe): { ink: Ink; parts: number }[] {
  if (ink.mix === undefined) return [{ ink, parts: 1 }];
  return ink.mix.map(({ ink: id, parts }) => ({ ink: defined(recipe.inks.find((stock) => stock.id === id)), parts }));
}

/**
 * Finds which screens and inks of several recipes are the same thing in the studio.
 * @param recipes in the order of the visit
 */
export function registerRecipes(recipes: readonly Recipe[]): Registry {
  const screens: VisitScreen[] = [];
  const inks: VisitInk[] = [];
  const screenByText = new Map<string, string>();
  const inkByText = new Map<string, string>();
  const screenKey: Map<string, string>[] = [];
  const inkKey: Map<string, string>[] = [];
  for (const recipe of recipes) {
    const ofScreens = new Map<string, string>();
    for (const screen of recipe.screens) {
      const text = stencilText(screen, recipe);
      let key = screenByText.get(text);
      if (key === undefined) {
        key = freeKey(String(screen.number), new Set(screens.map((known) => known.key)));
        screenByText.set(text, key);
        screens.push({
          key,
          number: screen.number,
          name: screen.name,
          mesh: screen.mesh,
          ...(isMirrored(screen) ? { mirrored: true } : {}),
        });
      }
      ofScreens.set(screen.id, key);
    }
    screenKey.push(ofScreens);
    const ofInks = new Map<string, string>();
    const printed = new Set(recipe.pulls.map((pull) => pull.ink));
    for (const ink of recipe.inks) {
      // A stock ink that is only weighed into others is no bucket at the press.
      if (!printed.has(ink.id)) continue;
      const text = inkText(ink);
      let key = inkByText.get(text);
      if (key === undefined) {
        key = freeKey(ink.name, new Set(inks.map((known) => known.key)));
        inkByText.set(text, key);
        inks.push({ key, ink, stocks: stocksOf(ink, recipe) });
      }
      ofInks.set(ink.id, key);
    }
    inkKey.push(ofInks);
  }
  return { screens, inks, screenKey, inkKey };
}
