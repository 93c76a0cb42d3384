import { defined, entryAt } from '../base/at.ts';
import { stackMinutesOf } from '../ink/film/drying.ts';
import { meetingPairs, OVERLAP_TOLERANCE_MM } from '../order/overlaps.ts';
import { DAY_MINUTES } from '../pullorder/timeline/day-clock.ts';
import type { OnPress, TimelineStart } from '../pullorder/timeline/start-state.ts';
import type { Recipe } from '../recipe/types.ts';
import { studioOfRecipe } from '../recipe/write.ts';
import type { Pull } from '../stack/types.ts';
import { registerRecipes } from '../visit/registry.ts';
import { wholeFigures } from '../visit/visit-figures.ts';
import type { VisitProblem } from '../visit/visit-problem.ts';
import { ANY_SHEET, lastOnBeds, type PulledLast } from './now/on-beds.ts';
import { stillOnPress } from './now/still-on-press.ts';
import type { RestInput, RestSheet, VisitNow } from './rest-input.ts';

/** A pull that is on a sheet, and when its film is dry and the sheet out of the racks. */
interface Film {
  /** The sheet's number, and the pull's id in its recipe. */
  sheet: number;
  id: string;
  pull: Pull;
  ink: string;
  atMinute: number;
  dryMinute: number;
  stackMinute: number;
}

/** How a visit stands, and the pulls that tell what is on its beds. */
export interface RestStart extends TimelineStart {
  lastOn?: readonly (PulledLast | null)[];
}

type FilmOfRecipe = Film & { recipe: number };
type PressState = NonNullable<OnPress[number]>;

/** What was pulled on a sheet and when, minutes from the first day's start; what has no time is taken as dry. */
function pulledOn(sheet: RestSheet, { rest, press }: RestInput, now: VisitNow): Film[] {
  const recipe = entryAt(rest.recipes, sheet.recipe);
  const clockNow = clockMinute(now, wholeFigures(press).dayStartMinute);
  return sheet.done.flatMap((at, i): Film[] => {
    const id = entryAt(recipe.pulls, at).id;
    const event = sheet.events?.find((each) => 'pulls' in each && each.pulls.includes(id));
    const pull = sheet.pulls[i];
    const ink = recipe.inks.find((each) => each.id === pull?.ink);
    if (event === undefined || pull === undefined || ink === undefined) return [];
    return [{ sheet: sheet.number, id, pull, ...driesOn(ink, { now, clockNow, atMs: event.atMs }) }];
  });
}

/** What was tried on the test sheet, as `pulledOn` gives it. */
function testFilms({ rest, press }: RestInput, now: VisitNow): FilmOfRecipe[] {
  const clockNow = clockMinute(now, wholeFigures(press).dayStartMinute);
  return (rest.test?.tried ?? []).flatMap(({ event, recipe, pull }): FilmOfRecipe[] => {
    const ink = entryAt(rest.recipes, recipe).inks.find((each) => each.id === pull.ink);
    if (ink === undefined) return [];
    return [{ sheet: ANY_SHEET, id: pull.id, recipe, pull, ...driesOn(ink, { now, clockNow, atMs: event.atMs }) }];
  });
}

/** When a film of an ink was pulled and is dry, minutes from the first day's start. */
function driesOn(ink: Recipe['inks'][number], { now, clockNow, atMs }: { now: VisitNow; clockNow: number; atMs: number }) {
  // A clock that was set back must not make films wet that are yet to come.
  const atMinute = Math.min(clockNow, clockNow + (atMs - now.atMs) / 60_000);
  return { ink: ink.name, atMinute, dryMinute: atMinute + ink.dryMinutes, stackMinute: atMinute + stackMinutesOf(ink) };
}

function clockMinute({ day, minuteOfDay }: VisitNow, dayStartMinute: number): number {
  return (day - 1) * DAY_MINUTES + minuteOfDay - dayStartMinute;
}

/** Looks up when each pull that is left on a sheet may go down, and the ink that it waits for. */
class DryingLookup {
  private readonly touches = new Map<string, boolean[][]>();
  private readonly recipes: readonly Recipe[];
  private readonly minute: number;

  constructor(recipes: readonly Recipe[], minute: number) {
    this.recipes = recipes;
    this.minute = minute;
  }

  /** @param films what is on the sheet; @param left what is still to be pulled on it */
  readyOf(recipe: number, films: readonly Film[], left: readonly Pull[]): { minute: number; ink: string | null }[] {
    const wet = films.filter(({ dryMinute }) => dryMinute > this.minute);
    if (wet.length === 0) return left.map(() => ({ minute: 0, ink: null }));
    const under = wet.map(({ pull }) => pull);
    const touch = this.touchOf(recipe, under, left);
    return left.map((_, p) => {
      const last = wet.filter((_film, w) => entryAt(touch, p)[w]).sort((one, other) => other.dryMinute - one.dryMinute)[0];
      return { minute: last?.dryMinute ?? 0, ink: last?.ink ?? null };
    });
  }

  /** For each pull that is left, which of the wet ones it would touch. */
  private touchOf(recipe: number, under: readonly Pull[], left: readonly Pull[]): boolean[][] {
    const key = JSON.stringify([recipe, under.map(({ id }) => id), left.map(({ id }) => id)]);
    let touch = this.touches.get(key);
    if (touch === undefined) {
      touch = left.map(() => under.map(() => false));
      const studio = studioOfRecipe(entryAt(this.recipes, recipe));
      const options = { toleranceMm: OVERLAP_TOLERANCE_MM, across: under.length };
      for (const { a, b } of meetingPairs({ pulls: [...under, ...left] }, studio, options)) entryAt(touch, b - under.length)[a] = true;
      this.touches.set(key, touch);
    }
    return touch;
  }
}

/** Frames and buckets of films under the names that the visit of what is left has for them. */
function namesOf(films: readonly FilmOfRecipe[], visit: VisitProblem, recipes: readonly Recipe[]): (film: FilmOfRecipe) => PressState {
  const kindOf = ({ recipe, pull }: FilmOfRecipe): string => JSON.stringify([recipe, pull.screen, pull.ink]);
  const kinds = new Map<string, FilmOfRecipe>();
  for (const film of films) if (!kinds.has(kindOf(film))) kinds.set(kindOf(film), film);
  const named = [...kinds.values()].map(({ recipe, pull }) => ({ ...entryAt(recipes, recipe), pulls: [pull] }));
  const registry = registerRecipes([...visit.recipes, ...named]);
  const at = new Map([...kinds.keys()].map((kind, i) => [kind, visit.recipes.length + i]));
  return (film) => {
    const own = defined(at.get(kindOf(film)));
    const screen = defined(entryAt(registry.screenKey, own).get(film.pull.screen));
    return { screen, ink: defined(entryAt(registry.inkKey, own).get(film.pull.ink)), offset: visit.lays.textOf(screen, film.pull) };
  };
}

/**
 * How a visit stands when what is left of it is planned: films that are not dry yet, sheets in the
 * racks, inks that are mixed, and on each bed the frame that was pulled last, where it still stands there.
 * Before opening and after closing nothing is planned, but what was pulled then counts.
 * @param visit of what is left: its sheets have the numbers of the whole visit
 * @param leftOf by sheet number the pulls that are left of its recipe, as the visit has them
 */
export function restStart(input: RestInput, now: VisitNow, visit: VisitProblem, leftOf: ReadonlyMap<number, readonly Pull[]>): RestStart {
  const { recipes, sheets } = input.rest;
  const { dayStartMinute } = wholeFigures(input.press);
  const dayBegins = (now.day - 1) * DAY_MINUTES;
  const clockNow = clockMinute(now, dayStartMinute);
  const minute = Math.max(dayBegins, clockNow);
  const tests = testFilms(input, now);
  const bySheet = new Map(sheets.map((sheet) => [sheet.number, pulledOn(sheet, input, now)]));
  const drying = new DryingLookup(recipes, minute);
  const racked = (number: number): number => Math.max(0, ...defined(bySheet.get(number)).map(({ stackMinute }) => stackMinute));
  const recipeOf = new Map(sheets.map((sheet) => [sheet.number, sheet.recipe]));
  const here = new Set(visit.sheets.map((sheet) => sheet.number));
  const others = sheets.filter((sheet) => !here.has(sheet.number)).map((sheet) => racked(sheet.number));

  const printed = sheets.flatMap(({ number, recipe }) => defined(bySheet.get(number)).map((film) => ({ ...film, recipe })));
  const done = [...printed, ...tests];
  const nameOf = namesOf(done, visit, recipes);
  const standing = done.filter(({ atMinute }) => stillOnPress(clockNow - atMinute, clockNow - dayBegins));
  const films = standing.map((film) => ({ sheet: film.sheet, pull: film.id, at: film.atMinute, screen: nameOf(film).screen }));
  const last = lastOnBeds(films, { plan: input.atHand, recipes, beds: wholeFigures(input.press).beds });
  return {
    minute,
    readyAt: visit.sheets.map(({ number }) =>
      drying.readyOf(defined(recipeOf.get(number)), defined(bySheet.get(number)), leftOf.get(number) ?? []),
    ),
    stackAt: [...visit.sheets.map(({ number }) => racked(number)), ...others],
    testStackAt: Math.max(0, ...tests.map(({ stackMinute }) => stackMinute)),
    mixed: [...new Set(done.map((film) => nameOf(film).ink))],
    ...(last.every((at) => at === null)
      ? {}
      : {
          onPress: last.map((at) => (at === null ? null : nameOf(entryAt(standing, at)))),
          lastOn: last.map((at) => (at === null ? null : ([entryAt(standing, at).sheet, entryAt(standing, at).id] as const))),
        }),
  };
}
