import { shapeBounds } from '../../geometry/rings.ts';
import { screenRings } from '../../shapes/place/placed.ts';
import type { Screen } from '../../shapes/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { within } from './screen-sets.ts';

/** What a question of preparing is about. */
export type PrepareBy = 'screens' | 'inks' | 'both';

/** What may be spent on new screens and inks; what is left out asks for nothing. */
export interface PrepareBudget {
  /** New ones, of whatever is asked for. */
  screens?: number | undefined;
  filmM2?: number | undefined;
  money?: number | undefined;
  hours?: number | undefined;
  /** What one screen costs and takes by the studio's own reckoning. */
  moneyEach?: number | undefined;
  hoursEach?: number | undefined;
  /** Film beyond the image, mm on each side; FILM_MARGIN_MM when left out. */
  filmMarginMm?: number | undefined;
  /** What a square metre of film costs; it comes on top of what a screen costs. */
  filmMoneyM2?: number | undefined;
  /** What one ink costs to have there, and how long it is mixed. */
  inkMoneyEach?: number | undefined;
  inkHoursEach?: number | undefined;
}

/** Film beyond the image, mm on each side: to tape it to the frame and for marks; common practice, no source. */
export const FILM_MARGIN_MM = 30;

/** Something to be spent: how much there is, and what a new screen and a new ink take of it. */
export interface PrepareLimit {
  most: number;
  screen: number;
  ink: number;
  /** What some screens take beyond that, by id; absent = all take alike. */
  beyond?: ReadonlyMap<string, number> | undefined;
}

/** A film positive, mm. */
export interface FilmSize {
  widthMm: number;
  heightMm: number;
}

/**
 * The film positive of a screen: its image and a margin all round, though no larger than the sheet unless the
 * image is, as films end where the sheet does.
 * @throws EngineError 'screen.unknown-shape'
 */
export function filmOfScreen(screen: Screen, { shapes, paper }: Pick<Studio, 'shapes' | 'paper'>, marginMm = FILM_MARGIN_MM): FilmSize {
  const { rings } = screenRings(screen, shapes);
  if (rings.length === 0) return { widthMm: 0, heightMm: 0 };
  const image = shapeBounds(rings);
  const side = (imageMm: number, sheetMm: number): number => Math.min(imageMm + 2 * marginMm, Math.max(imageMm, sheetMm));
  return { widthMm: side(image.widthMm, paper.widthMm), heightMm: side(image.heightMm, paper.heightMm) };
}

/** Film positives of screens, m² by id. @throws EngineError 'screen.unknown-shape' */
export function filmAreas(studio: Studio, { filmMarginMm }: PrepareBudget): Map<string, number> {
  return new Map(
    studio.screens.map((screen) => {
      const { widthMm, heightMm } = filmOfScreen(screen, studio, filmMarginMm);
      return [screen.id, (widthMm * heightMm) / 1e6];
    }),
  );
}

/** What a budget asks of new screens and inks; inks take no film. @param films of the screens, m² by id */
export function limitsOf(budget: PrepareBudget, films: ReadonlyMap<string, number>): PrepareLimit[] {
  const { moneyEach = 0, hoursEach = 0, inkMoneyEach = 0, inkHoursEach = 0, filmMoneyM2 = 0 } = budget;
  const limit = (most: number | undefined, of: Omit<PrepareLimit, 'most'>): PrepareLimit[] => (most === undefined ? [] : [{ most, ...of }]);
  const priced = filmMoneyM2 > 0 ? { beyond: new Map([...films].map(([id, m2]) => [id, m2 * filmMoneyM2])) } : {};
  return [
    ...limit(budget.screens, { screen: 1, ink: 1 }),
    ...limit(budget.filmM2, { screen: 0, ink: 0, beyond: films }),
    ...limit(budget.money, { screen: moneyEach, ink: inkMoneyEach, ...priced }),
    ...limit(budget.hours, { screen: hoursEach, ink: inkHoursEach }),
  ];
}

/** What a new screen takes of something. */
export function screenTakes({ screen, beyond }: PrepareLimit, id: string): number {
  return screen + (beyond?.get(id) ?? 0);
}

/** What a choice takes of what there is to spend; money and hours are undefined where nothing is said of what it takes. */
export interface PrepareCost {
  filmM2: number;
  money: number | undefined;
  hours: number | undefined;
}

/** What new screens and inks take. @param step their ids @param films of the screens, m² by id */
export function costOf(
  budget: PrepareBudget,
  films: ReadonlyMap<string, number>,
  step: { screens: readonly string[]; inks: readonly string[] },
): PrepareCost {
  const [screens, inks] = [step.screens.length, step.inks.length];
  const filmM2 = step.screens.reduce((sum, id) => sum + (films.get(id) ?? 0), 0);
  const { moneyEach, filmMoneyM2, hoursEach, inkMoneyEach, inkHoursEach } = budget;
  const sum = (ofScreens: number | undefined, ofInk: number | undefined): number | undefined => {
    const open = (screens > 0 && ofScreens === undefined) || (inks > 0 && ofInk === undefined);
    return open ? undefined : (ofScreens ?? 0) + inks * (ofInk ?? 0);
  };
  const priced = moneyEach !== undefined || filmMoneyM2 !== undefined;
  return {
    filmM2,
    money: sum(priced ? screens * (moneyEach ?? 0) + filmM2 * (filmMoneyM2 ?? 0) : undefined, inkMoneyEach),
    hours: sum(hoursEach === undefined ? undefined : screens * hoursEach, inkHoursEach),
  };
}

/** How many that each take so much can be had of what there is; Infinity where they take nothing. */
function howMany(most: number, each: number): number {
  return each <= 0 ? Infinity : Math.floor(most / each + 1e-9);
}

/**
 * How many new screens, or new inks, the limits allow where all of them take alike; Infinity where they ask for
 * nothing. What differs from screen to screen is for the search, which chooses between them.
 */
export function newWithin(limits: readonly PrepareLimit[], by: Exclude<PrepareBy, 'both'>): number {
  const alike = limits.filter(({ beyond }) => by === 'inks' || beyond === undefined);
  return Math.min(Infinity, ...alike.map((limit) => howMany(limit.most, by === 'screens' ? limit.screen : limit.ink)));
}

/** Limits between which new ones have to be chosen: by themselves, what all take alike is a number of them. */
export function limitsToChooseBy(limits: readonly PrepareLimit[], by: PrepareBy): PrepareLimit[] {
  return by === 'both' ? [...limits] : limits.filter(({ beyond }) => by === 'screens' && beyond !== undefined);
}

/** Of some screens that are new, at most so many keep to a limit: those that take least of it. */
function fewest(screens: readonly string[], limit: PrepareLimit, left: number): number {
  const takes = screens.map((id) => screenTakes(limit, id)).sort((a, b) => a - b);
  let spent = 0;
  const beyond = takes.findIndex((take) => !within((spent += take), left));
  return beyond < 0 ? takes.length : beyond;
}

/** Of such screens and so many inks that are new, no more together keep to the limits. */
export function mostOfBoth(limits: readonly PrepareLimit[], { screens, inks }: { screens: readonly string[]; inks: number }): number {
  let most = 0;
  for (let count = 0; count <= inks; count++) {
    if (!limits.every((limit) => within(count * limit.ink, limit.most))) break;
    const fits = limits.map((limit) => fewest(screens, limit, limit.most - count * limit.ink));
    most = Math.max(most, count + Math.min(screens.length, ...fits));
  }
  return most;
}
