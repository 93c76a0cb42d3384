import { defined, entryAt, num } from '../../base/at.ts';
import { meshVolumeCm3PerM2 } from '../../ink/film/mesh.ts';
import { filmThickness } from '../../ink/film/thickness.ts';
import type { Recipe } from '../../recipe/types.ts';
import { pullAreas } from '../../visit/ink-needs.ts';
import type { SheetAsPulled } from '../as-pulled.ts';
import { standing } from '../events.ts';
import type { LogEvent } from '../types.ts';
import { type FoundFigure, foundFigure } from './found-figure.ts';

type Weighed = Extract<LogEvent, { kind: 'weighed' }>;

/** A visit as it was pulled. */
interface Visit {
  /** Of `recipesAsPulled`. */
  recipes: readonly Recipe[];
  sheets: readonly SheetAsPulled[];
}

/**
 * Share of what the mesh holds that reached the paper, by the ink that was weighed: what was taken, less
 * what stays in screen and bucket, against area × mesh volume × strokes of what was pulled with it. Several
 * weighings of one screen in one ink are one; pulls count once.
 * @param lossMl what stays each time that a bucket is changed
 * @returns null where nothing was weighed, or less than what stays
 */
export function transferFound({ recipes, sheets }: Visit, events: readonly LogEvent[], lossMl: number): FoundFigure | null {
  const buckets = new Map<string, Weighed[]>();
  for (const event of standing(events)) {
    if (event.kind !== 'weighed') continue;
    const key = JSON.stringify([event.screen, event.ink]);
    buckets.set(key, [...(buckets.get(key) ?? []), event]);
  }
  const shares = [...buckets.values()].map((weighings) => {
    const grams = weighings.reduce((sum, each) => sum + each.grams, 0);
    const on = new Map(weighings.flatMap((each) => each.on).map((pull) => [pull.join(' '), pull]));
    const pulls = [...on.values()].map(([number, id]) => fullFilm(number, id, { recipes, sheets }));
    const all = pulls.reduce((sum, { cm3 }) => sum + cm3, 0);
    const density = pulls.find((pull) => pull.cm3 > 0)?.density ?? 0;
    return all > 0 ? (grams / density - lossMl) / all : 0;
  });
  return foundFigure(shares.filter((share) => share > 0));
}

/** What a pull would take if all that the mesh holds reached the paper, cm³; nothing of a pull that is not there. */
function fullFilm(number: number, id: string, { recipes, sheets }: Visit): { cm3: number; density: number } {
  const sheet = sheets.find((each) => each.number === number);
  const recipe = sheet === undefined ? undefined : entryAt(recipes, sheet.recipe);
  const at = recipe?.pulls.findIndex((pull) => pull.id === id) ?? -1;
  const place = sheet?.done.indexOf(at) ?? -1;
  if (sheet === undefined || recipe === undefined || at < 0 || place < 0) return { cm3: 0, density: 0 };
  const { screen, ink, strokes } = entryAt(sheet.pulls, place);
  const { mesh } = defined(recipe.screens.find((each) => each.id === screen));
  const { densityGPerCm3 } = defined(recipe.inks.find((each) => each.id === ink));
  const areaM2 = num(pullAreas(recipe), at) / 1e6;
  return { cm3: areaM2 * meshVolumeCm3PerM2(mesh) * filmThickness(strokes, recipe.strokeGain), density: densityGPerCm3 };
}
