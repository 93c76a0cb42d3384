import { defined, entryAt } from '../../base/at.ts';
import { DAY_MINUTES } from '../../pullorder/timeline/day-clock.ts';
import type { TimelineStart } from '../../pullorder/timeline/start-state.ts';
import type { SetUp } from '../../pullorder/types.ts';
import type { Recipe } from '../../recipe/types.ts';
import { layText } from '../../visit/problem/lays.ts';
import { inkText } from '../../visit/registry.ts';
import type { SetUpCard } from '../../visit/set-up-cards.ts';
import { type VisitFigures, wholeFigures } from '../../visit/visit-figures.ts';
import { type CardTime, momentOf, visitTimes, type TimedVisit } from '../../visit/visit-times.ts';
import type { PressPlan } from '../../visit/visit.ts';
import type { SheetAsPulled } from '../as-pulled.ts';
import { filmsOn, type LoggedFilm } from '../films.ts';
import type { VisitNow } from '../rest-input.ts';
import type { TestSheet } from '../test-sheet.ts';
import { filmsOfTest } from '../test-sheet.ts';
import type { OrderPairs } from '../turns.ts';
import { lastOnBeds } from './on-beds.ts';
import { stillOnPress } from './still-on-press.ts';

/** An order that is under way, and how it stands. */
export interface UnderWay {
  plan: PressPlan;
  /** All sheets of the visit as they are. */
  sheets: readonly SheetAsPulled[];
  recipes: readonly Recipe[];
  test: TestSheet | null;
  /** Knows which pulls touch at all. */
  touching: OrderPairs;
  press: VisitFigures;
  now: VisitNow;
  /** Which day of the visit a logged moment was, and its time of day. */
  momentOf(ms: number): VisitNow;
}

/** An order on the clock of what was ticked. */
export interface RetimedPlan extends PressPlan {
  /** Indices of set-ups of which something was ticked outside opening hours. */
  outside: ReadonlySet<number>;
  /** Indices of set-ups with nothing left to pull. */
  pulled: ReadonlySet<number>;
  /** The moment for which it is worked out. */
  at: VisitNow;
}

/** A film that was logged, with the sheet that it is on. */
interface FilmOnSheet extends LoggedFilm {
  sheet: SheetAsPulled;
}

/**
 * The clock of an order that is under way, from what was really ticked: set-ups that are done stand
 * where they were, those that are left begin now, in their order and on their beds, wait for the films
 * that were really pulled, and go on with the frame that is on the press.
 * Only opening hours count: what was ticked before opening or after closing stands at the opening or
 * closing, so that nobody is late for a night.
 * @returns the order with other times; null before the first tick and while it is not known what touches
 */
export function retimed(way: UnderWay): RetimedPlan | null {
  const { plan, recipes, touching } = way;
  const films = way.sheets.flatMap((sheet) => filmsOn(sheet, entryAt(recipes, sheet.recipe)).map((film) => ({ ...film, sheet })));
  const pairs = recipes.map(touching);
  if (films.length === 0 || pairs.includes(null)) return null;
  const left = leftOf(way);
  const visit = timedVisit(
    way,
    pairs.map((each) => pairsIn(defined(each))),
  );
  const beds = left.map(({ at }) => entryAt(plan.times, at).bed);
  const { times, parts, ends, daysNeeded } = visitTimes(
    { setUps: left.map(({ setUp }) => setUp), beds },
    visit,
    way.press,
    startOf(way, films, pairs),
  );
  const begun = realTimes(way, films);
  const done = new Map([...begun.times].filter(([at]) => !left.some((each) => each.at === at)));
  const byCard = new Map(left.map(({ at }, i) => [at, sinceBegun(entryAt(times, i), begun.times.get(at))]));
  return {
    ...plan,
    times: plan.times.map((time, at) => byCard.get(at) ?? done.get(at) ?? time),
    parts: [
      ...[...done]
        .filter(([, { startMinute, endMinute }]) => endMinute > startMinute)
        .map(([setUp, { day, bed, startMinute, endMinute }]) => ({
          kind: 'print' as const,
          setUp,
          day,
          bed,
          fromMinute: startMinute,
          toMinute: endMinute,
        })),
      ...parts.map((part) => ({ ...part, setUp: entryAt(left, part.setUp).at })),
    ],
    daysNeeded: Math.max(daysNeeded, ...[...done.values()].map(({ day }) => day)),
    ends: left.length > 0 ? ends : lastOf([...done.values()]),
    outside: begun.outside,
    pulled: new Set(done.keys()),
    at: way.now,
  };
}

function lastOf(times: readonly CardTime[]): PressPlan['ends'] {
  const last = Math.max(0, ...times.map(({ day, endMinute }) => (day - 1) * DAY_MINUTES + endMinute));
  return momentOf(last);
}

/** Set-ups with something left to pull, by the index of their cards. */
function leftOf({ plan, sheets }: UnderWay): { at: number; setUp: SetUp }[] {
  const place = new Map(plan.sheets.map(({ number }, s) => [number, s]));
  const known = new Map(sheets.map((sheet) => [sheet.number, sheet]));
  return plan.cards.flatMap((card, at) => {
    const pulls = card.states.flatMap(({ recipe, sheets: numbers, prints }) =>
      numbers.flatMap((number): [number, number][] => {
        const sheet = known.get(number);
        if (sheet === undefined || sheet.spoiled || sheet.recipe !== recipe) return [];
        return prints.filter((p) => !sheet.done.includes(p)).map((p) => [defined(place.get(number)), p]);
      }),
    );
    return pulls.length === 0 ? [] : [{ at, setUp: { ...kindOf(card), pulls } }];
  });
}

function kindOf(card: SetUpCard): Pick<SetUp, 'screen' | 'ink' | 'offset'> {
  return { screen: card.screen.key, ink: card.ink.key, offset: layText(card) };
}

function pairsIn(touching: ReadonlySet<string>): [number, number][] {
  return [...touching].map((pair) => pair.split(' ').map(Number) as [number, number]);
}

/** The card that prints a pull of a recipe. */
function cardsByPull({ cards }: PressPlan): Map<string, SetUpCard> {
  return new Map(
    cards.flatMap((card) => card.states.flatMap(({ recipe, prints }) => prints.map((at) => [`${recipe} ${at}`, card] as const))),
  );
}

function timedVisit({ plan, recipes }: UnderWay, drying: TimedVisit['drying']): TimedVisit {
  const cards = cardsByPull(plan);
  const sheetsOf = recipes.map(({ pulls }, r) => ({
    pulls: pulls.map(({ strokes }, at) => {
      const card = cards.get(`${r} ${at}`);
      return { ...(card === undefined ? { screen: '', ink: '', offset: '' } : kindOf(card)), strokes };
    }),
    overlaps: [],
  }));
  return {
    problem: { sheets: plan.sheets.map(({ recipe }) => entryAt(sheetsOf, recipe)) },
    sheets: plan.sheets,
    drying,
    registry: { inks: [...new Map(plan.cards.map(({ ink }) => [ink.key, ink])).values()] },
    testSheet: plan.testSheet === true ? (plan.testNumber ?? 0) : null,
  };
}

function startOf(way: UnderWay, films: readonly FilmOnSheet[], pairs: readonly (ReadonlySet<string> | null)[]): TimelineStart {
  const { plan, recipes, sheets, now } = way;
  const dayBegins = (now.day - 1) * DAY_MINUTES;
  const clockNow = dayBegins + now.minuteOfDay - plan.clock.startMinute;
  const minuteOf = (ms: number): number => clockNow + (ms - now.atMs) / 60_000;
  const own = new Map<number, FilmOnSheet[]>(sheets.map(({ number }) => [number, []]));
  for (const film of films) own.get(film.sheet.number)?.push(film);
  const racked = (number: number): number => Math.max(0, ...(own.get(number) ?? []).map(({ stackMs }) => minuteOf(stackMs)));
  const here = new Set(plan.sheets.map(({ number }) => number));
  const tests = way.test === null ? [] : filmsOfTest(way.test, recipes);
  const pulled = new Set(films.map(({ sheet, at }) => inkText(inkOn(sheet, at, recipes))));
  const standing = films.filter(({ pulledMs }) => stillOnPress((now.atMs - pulledMs) / 60_000, clockNow - dayBegins));
  const frames = standing.map((film) => frameOf(film, way));
  const last = lastOnBeds(
    standing.map(({ sheet, at, pulledMs }, i) => {
      const pull = entryAt(entryAt(recipes, sheet.recipe).pulls, at).id;
      return { sheet: sheet.number, pull, at: pulledMs, screen: entryAt(frames, i).screen };
    }),
    { plan, recipes, beds: wholeFigures(way.press).beds },
  );
  return {
    minute: Math.max(dayBegins, clockNow),
    readyAt: plan.sheets.map(({ number, recipe }) => {
      const wet = (own.get(number) ?? []).filter(({ dryMs }) => dryMs > now.atMs).toSorted((a, b) => b.dryMs - a.dryMs);
      return entryAt(recipes, recipe).pulls.map((_, at) => {
        const under = wet.find((film) => pairs[recipe]?.has(`${Math.min(film.at, at)} ${Math.max(film.at, at)}`));
        return under === undefined ? { minute: 0, ink: null } : { minute: minuteOf(under.dryMs), ink: under.ink };
      });
    }),
    stackAt: [...plan.sheets, ...sheets.filter(({ number }) => !here.has(number))].map(({ number }) => racked(number)),
    testStackAt: Math.max(0, ...tests.map(({ stackMs }) => minuteOf(stackMs))),
    mixed: plan.cards.filter(({ ink }) => pulled.has(inkText(ink.ink))).map(({ ink }) => ink.key),
    ...(standing.length === 0 ? {} : { onPress: last.map((at) => (at === null ? null : entryAt(frames, at))) }),
  };
}

/** The frame of a film under the names of the order; where nothing is left for it, its ink is to be washed out all the same. */
function frameOf({ sheet, at }: FilmOnSheet, { plan, recipes }: UnderWay): Pick<SetUp, 'screen' | 'ink' | 'offset'> {
  const card = cardsByPull(plan).get(`${sheet.recipe} ${at}`);
  const ink = inkText(inkOn(sheet, at, recipes));
  const bucket = plan.cards.find((each) => inkText(each.ink.ink) === ink)?.ink.key ?? '';
  if (card !== undefined) return { ...kindOf(card), ink: bucket };
  const recipe = entryAt(recipes, sheet.recipe);
  const screen = recipe.screens.find(({ id }) => id === entryAt(recipe.pulls, at).screen);
  const same = plan.cards.find((each) => each.screen.number === screen?.number && each.screen.name === screen.name);
  return { screen: same?.screen.key ?? '', ink: bucket, offset: layText(entryAt(sheet.pulls, sheet.done.indexOf(at))) };
}

function inkOn(sheet: SheetAsPulled, at: number, recipes: readonly Recipe[]) {
  const { ink } = entryAt(sheet.pulls, sheet.done.indexOf(at));
  return defined(entryAt(recipes, sheet.recipe).inks.find(({ id }) => id === ink));
}

/** What is left of a set-up, from when it was begun where that was on the same day. */
function sinceBegun(left: CardTime, begun: CardTime | undefined): CardTime {
  return begun?.day === left.day ? { ...left, startMinute: Math.min(left.startMinute, begun.startMinute) } : left;
}

/**
 * When set-ups were really pulled, by their index: from a pull before the first tick to the last, of which
 * what lies within opening hours.
 */
function realTimes(way: UnderWay, films: readonly FilmOnSheet[]): { times: Map<number, CardTime>; outside: Set<number> } {
  const { plan, press } = way;
  const byPull = new Map(films.map((film) => [`${film.sheet.number} ${film.at}`, film.pulledMs]));
  const found = new Map<number, CardTime>();
  const outside = new Set<number>();
  const closes = plan.clock.workMinutes + (plan.clock.lunch?.minutes ?? 0);
  const open = (minute: number): number => Math.min(closes, Math.max(0, minute));
  for (const [at, { states }] of plan.cards.entries()) {
    const ticks = states.flatMap(({ sheets, prints }) =>
      sheets.flatMap((number) => prints.flatMap((p) => byPull.get(`${number} ${p}`) ?? [])),
    );
    if (ticks.length === 0) continue;
    const minuteOf = ({ minuteOfDay }: VisitNow): number => minuteOfDay - plan.clock.startMinute;
    const [first, last] = [way.momentOf(Math.min(...ticks)), way.momentOf(Math.max(...ticks))];
    const planned = entryAt(plan.times, at);
    const begin = first.day === last.day ? Math.round(minuteOf(first) - 60 / press.pullsPerHour) : 0;
    const end = Math.round(minuteOf(last));
    if ([first, last].some((moment) => minuteOf(moment) !== open(minuteOf(moment)))) outside.add(at);
    found.set(at, {
      ...planned,
      day: last.day,
      startMinute: open(begin),
      endMinute: open(end),
      waitMinutes: 0,
      waitFor: [],
      rackWaitMinutes: 0,
      dryMinute: end + planned.dryMinute - planned.endMinute,
      stackMinute: end + planned.stackMinute - planned.endMinute,
    });
  }
  return { times: found, outside };
}
