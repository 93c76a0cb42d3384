import { defined, entryAt } from '../base/at.ts';
import { stackMinutesOf } from '../ink/film/drying.ts';
import { dryingPairs } from '../order/overlaps.ts';
import { DAY_MINUTES } from '../pullorder/timeline/day-clock.ts';
import type { TimelineStart } from '../pullorder/timeline/start-state.ts';
import { studioOfRecipe } from '../recipe/write.ts';
import type { Pull } from '../stack/types.ts';
import { registerRecipes } from '../visit/registry.ts';
import { wholeFigures } from '../visit/visit-figures.ts';
import { layText, OVERLAP_TOLERANCE_MM, type VisitProblem } from '../visit/visit-problem.ts';
import type { RestInput, RestSheet, VisitNow } from './rest-input.ts';

/** A pull that is on a sheet, and when its film is dry and the sheet out of the racks. */
interface Wet {
  pull: Pull;
  ink: string;
  atMinute: number;
  dryMinute: number;
  stackMinute: number;
}

/** What was pulled on a sheet and when, minutes from the first day's start; what has no time is taken as dry. */
function pulledOn(sheet: RestSheet, { rest, press }: RestInput, now: VisitNow): Wet[] {
  const recipe = entryAt(rest.recipes, sheet.recipe);
  const clockNow = clockMinute(now, wholeFigures(press).dayStartMinute);
  return sheet.done.flatMap((at, i): Wet[] => {
    const id = entryAt(recipe.pulls, at).id;
    const event = sheet.events?.find((each) => (each.kind === 'pulled' || each.kind === 'otherwise') && each.pulls.includes(id));
    const pull = sheet.pulls[i];
    const ink = recipe.inks.find((each) => each.id === pull?.ink);
    if (event === undefined || pull === undefined || ink === undefined) return [];
    // A clock that was set back must not make films wet that are yet to come.
    const atMinute = Math.min(clockNow, clockNow + (event.atMs - now.atMs) / 60_000);
    return [{ pull, ink: ink.name, atMinute, dryMinute: atMinute + ink.dryMinutes, stackMinute: atMinute + stackMinutesOf(ink) }];
  });
}

function clockMinute({ day, minuteOfDay }: VisitNow, dayStartMinute: number): number {
  return (day - 1) * DAY_MINUTES + minuteOfDay - dayStartMinute;
}

/**
 * How a visit stands when what is left of it is planned: films that are not dry yet, sheets in the
 * racks, inks that are mixed, and the frame that was pulled last on the same day, which is still on
 * the press.
 * @param visit of what is left: its sheets have the numbers of the whole visit
 * @param leftOf by sheet number the pulls that are left of its recipe, as the visit has them
 */
export function restStart(
  input: RestInput,
  now: VisitNow,
  visit: VisitProblem,
  leftOf: ReadonlyMap<number, readonly Pull[]>,
): TimelineStart {
  const { recipes, sheets } = input.rest;
  const { dayStartMinute } = wholeFigures(input.press);
  const dayBegins = (now.day - 1) * DAY_MINUTES;
  const minute = Math.max(dayBegins, clockMinute(now, dayStartMinute));
  const bySheet = new Map(sheets.map((sheet) => [sheet.number, pulledOn(sheet, input, now)]));
  const touches = new Map<string, boolean[][]>();

  const readyOf = (number: number, recipe: number): { minute: number; ink: string | null }[] => {
    const left = leftOf.get(number) ?? [];
    const wet = defined(bySheet.get(number)).filter(({ dryMinute }) => dryMinute > minute);
    if (wet.length === 0) return left.map(() => ({ minute: 0, ink: null }));
    const under = wet.map(({ pull }) => pull);
    const key = JSON.stringify([recipe, under.map(({ id }) => id), left.map(({ id }) => id)]);
    let touch = touches.get(key);
    if (touch === undefined) {
      touch = left.map(() => under.map(() => false));
      for (const { a, b } of dryingPairs({ pulls: [...under, ...left] }, studioOfRecipe(entryAt(recipes, recipe)), {
        toleranceMm: OVERLAP_TOLERANCE_MM,
      })) {
        if (a < under.length && b >= under.length) entryAt(touch, b - under.length)[a] = true;
      }
      touches.set(key, touch);
    }
    return left.map((_, p) => {
      const last = wet.filter((_film, w) => entryAt(touch, p)[w]).sort((one, other) => other.dryMinute - one.dryMinute)[0];
      return { minute: last?.dryMinute ?? 0, ink: last?.ink ?? null };
    });
  };
  const racked = (number: number): number => Math.max(0, ...defined(bySheet.get(number)).map(({ stackMinute }) => stackMinute));
  const recipeOf = new Map(sheets.map((sheet) => [sheet.number, sheet.recipe]));
  const here = new Set(visit.sheets.map((sheet) => sheet.number));
  const others = sheets.filter((sheet) => !here.has(sheet.number)).map((sheet) => racked(sheet.number));

  // Frames and buckets under the names that this visit has for them.
  const done = sheets.flatMap((sheet) => defined(bySheet.get(sheet.number)).map((film) => ({ ...film, recipe: sheet.recipe })));
  const kinds = [...new Set(done.map(({ recipe, pull }) => JSON.stringify([recipe, pull.screen, pull.ink])))];
  const named = kinds.map((kind) => {
    const { recipe, pull } = defined(done.find((film) => JSON.stringify([film.recipe, film.pull.screen, film.pull.ink]) === kind));
    return { ...entryAt(recipes, recipe), pulls: [pull] };
  });
  const registry = registerRecipes([...visit.recipes, ...named]);
  const keyOf = ({ recipe, pull }: (typeof done)[number]): { screen: string; ink: string; offset: string } => {
    const at = visit.recipes.length + kinds.indexOf(JSON.stringify([recipe, pull.screen, pull.ink]));
    return {
      screen: defined(entryAt(registry.screenKey, at).get(pull.screen)),
      ink: defined(entryAt(registry.inkKey, at).get(pull.ink)),
      offset: layText(pull),
    };
  };
  const last = done.filter(({ atMinute }) => atMinute >= dayBegins).sort((one, other) => other.atMinute - one.atMinute)[0];
  return {
    minute,
    readyAt: visit.sheets.map(({ number }) => readyOf(number, defined(recipeOf.get(number)))),
    stackAt: [...visit.sheets.map(({ number }) => racked(number)), ...others],
    mixed: [...new Set(done.map((film) => keyOf(film).ink))],
    ...(last === undefined ? {} : { onPress: keyOf(last) }),
  };
}
