import type { Draft } from 'immer';
import { defined } from '../base/at.ts';
import { reread, sameCurves } from '../ink/characterise/reread.ts';
import { printingOf } from '../ink/film/printing.ts';
import type { Ink } from '../ink/types.ts';
import type { Recipe } from '../recipe/types.ts';
import type { Pull } from '../stack/types.ts';
import type { Studio } from '../studio/studio.ts';

interface Named {
  id: string;
}

/** Same content, whatever the order of keys was when it was written. */
function same(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  return keys.every((key) => same((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]));
}

/**
 * Adds entries that are not there yet. An id taken by something else gets a suffix, so that
 * neither the studio's entry nor the recipe's picture changes.
 * @returns the id under which each entry now stands
 */
function adopt<T extends Named>(
  own: Draft<T>[],
  incoming: readonly T[],
  ready: (entry: T) => T = (entry) => entry,
  alike: (own: T, entry: T) => boolean = same,
): Map<string, string> {
  const ids = new Map<string, string>();
  for (const entry of incoming) {
    let candidate = ready(entry);
    for (let n = 2; ; n++) {
      const taken = own.find((other) => (other as Named).id === candidate.id);
      if (taken === undefined) {
        own.push(candidate as Draft<T>);
        break;
      }
      if (alike(taken as T, candidate)) break;
      candidate = { ...candidate, id: `${entry.id}-${n}` };
    }
    ids.set(entry.id, candidate.id);
  }
  return ids;
}

/**
 * Brings a recipe's shapes, screens, inks, paper, stroke gain, surface and trapping into a studio. The
 * studio's own inks go on showing over the card what they did.
 * @param studio a draft, changed in place
 * @returns the recipe's pulls, naming the entries of the studio; they print the recipe's picture
 */
export function adoptRecipe(studio: Draft<Studio>, recipe: Recipe): Pull[] {
  studio.paper = JSON.parse(JSON.stringify(recipe.paper)) as Draft<Studio>['paper'];
  studio.strokeGain = recipe.strokeGain;
  adoptPrinting(studio, recipe);
  const shapes = adopt(studio.shapes, recipe.shapes);
  const stocks = adopt(
    studio.inks,
    recipe.inks.filter((ink) => ink.mix === undefined),
    undefined,
    sameInk,
  );
  const mixes = adopt(
    studio.inks,
    recipe.inks.filter((ink) => ink.mix !== undefined),
    (ink) => ({ ...ink, mix: defined(ink.mix).map((part) => ({ ...part, ink: stocks.get(part.ink) ?? part.ink })) }),
    sameInk,
  );
  const numbers = new Set(studio.screens.map((screen) => screen.number));
  const screens = adopt(
    studio.screens,
    recipe.screens,
    (screen) => ({
      ...screen,
      placed: screen.placed.map((placed) => ({ ...placed, shape: shapes.get(placed.shape) ?? placed.shape })),
    }),
    // A screen that was given a free number when it came is still that screen.
    (own, screen) => same({ ...own, number: 0 }, { ...screen, number: 0 }),
  );
  renumber(studio, screens, numbers);
  return recipe.pulls.map((pull) => ({
    ...pull,
    screen: screens.get(pull.screen) ?? pull.screen,
    ink: stocks.get(pull.ink) ?? mixes.get(pull.ink) ?? pull.ink,
  }));
}

function adoptPrinting(studio: Draft<Studio>, recipe: Recipe): void {
  const inks = studio.inks.map((ink) => reread(ink as Ink, studio.surface, recipe.surface) as Draft<Ink>);
  if (inks.some((ink, i) => ink !== studio.inks[i])) studio.inks = inks;
  delete studio.surface;
  delete studio.trapping;
  Object.assign(studio, printingOf(JSON.parse(JSON.stringify(recipe)) as Recipe));
}

/** Whether two inks are one but for the rounding of curves that were found again. */
function sameInk(own: Ink, ink: Ink): boolean {
  return sameCurves(own, ink) && same({ ...own, kx: [], sx: [] }, { ...ink, kx: [], sx: [] });
}

/** Frames are told apart by their number, so a newcomer whose number is taken gets the next free one. */
function renumber(studio: Draft<Studio>, adopted: ReadonlyMap<string, string>, taken: Set<number>): void {
  const counts = new Map<number, number>();
  for (const screen of studio.screens) counts.set(screen.number, (counts.get(screen.number) ?? 0) + 1);
  for (const id of adopted.values()) {
    const screen = studio.screens.find((entry) => entry.id === id);
    if (screen === undefined || counts.get(screen.number) === 1) continue;
    const isNewcomer = studio.screens.findIndex((entry) => entry.number === screen.number) !== studio.screens.indexOf(screen);
    if (!isNewcomer) continue;
    counts.set(screen.number, defined(counts.get(screen.number)) - 1);
    screen.number = Math.max(0, ...taken, ...studio.screens.map((entry) => entry.number)) + 1;
  }
}
