import { entryAt } from '../base/at.ts';
import type { Recipe } from '../recipe/types.ts';
import type { Pull } from '../stack/types.ts';
import type { SetUpCard } from '../visit/set-up-cards.ts';
import { say } from '../words/en/log/log.ts';
import { standing } from './events.ts';
import { filmOf, type LoggedFilm } from './films.ts';
import { recipesNow } from './now/goes-on.ts';
import type { Happening, LogEvent, VisitHead } from './types.ts';

type Tested = Extract<LogEvent, { kind: 'tested' }>;

/** A pull that was tried. */
interface TriedPull {
  event: Tested;
  /** Index into the visit's recipes. */
  recipe: number;
  pull: Pull;
}

type Torn = Extract<LogEvent, { kind: 'spoiled' }>;

/** The sheet on which set-ups are tried, as it is: one that was torn is exchanged for a fresh one of its number. */
export interface TestSheet {
  number: number;
  /** On the sheet that is used now, first down first. */
  tried: TriedPull[];
  /** On those that were torn before it: such set-ups were tried all the same. */
  triedBefore: TriedPull[];
  /** When a sheet was torn and a fresh one taken. */
  torn: Torn[];
  /** Where it lies; '' when nobody said. */
  box: string;
  notes: string[];
  /** What counts of its events, in order. */
  events: LogEvent[];
}

/**
 * What is on the test sheet. What names a sheet or pull that is not there counts not at all:
 * `checkLog` names it.
 * @returns null where the visit has none
 */
export function testSheetOf(head: VisitHead, events: readonly LogEvent[]): TestSheet | null {
  if (head.test === undefined) return null;
  const { recipes, recipeOf } = recipesNow(head, events);
  const own = standing(events.filter((event) => event.sheet === head.test));
  const sheet: TestSheet = { number: head.test, tried: [], triedBefore: [], torn: [], box: '', notes: [], events: own };
  for (const event of own) {
    if ('note' in event && event.note !== '') sheet.notes.push(event.note);
    if (event.kind === 'placed') sheet.box = event.box;
    if (event.kind === 'spoiled') {
      sheet.torn.push(event);
      sheet.triedBefore.push(...sheet.tried.splice(0));
    }
    if (event.kind !== 'tested') continue;
    const recipe = recipeOf.get(event.of);
    const pull = recipe === undefined ? undefined : entryAt(recipes, recipe).pulls.find(({ id }) => id === event.pull);
    if (recipe !== undefined && pull !== undefined) sheet.tried.push({ event, recipe, pull });
  }
  return sheet;
}

/** When the films on the test sheet dry, by the times at which they were logged. */
export function filmsOfTest({ tried }: TestSheet, recipes: readonly Recipe[]): LoggedFilm[] {
  return tried.flatMap(({ event, recipe, pull }, at): LoggedFilm[] => {
    const ink = entryAt(recipes, recipe).inks.find(({ id }) => id === pull.ink);
    return ink === undefined ? [] : [filmOf(ink, at, event.atMs)];
  });
}

/** The try of a set-up on the test sheet, if it was made; what is tried of which sheet tells set-ups apart in every order. */
export function triedIn(card: Pick<SetUpCard, 'test'>, sheet: TestSheet | null, recipes: readonly Recipe[]): Tested | null {
  const { test } = card;
  if (test === undefined || sheet === null) return null;
  const { id } = entryAt(entryAt(recipes, test.recipe).pulls, test.at);
  return [...sheet.triedBefore, ...sheet.tried].find(({ event }) => event.of === test.sheet && event.pull === id)?.event ?? null;
}

/** What to log when a set-up was tried on the test sheet, or the tick is taken back; nothing where it has no test. */
export function tickedTest(card: Pick<SetUpCard, 'test'>, sheet: TestSheet | null, recipes: readonly Recipe[], on: boolean): Happening[] {
  const { test } = card;
  if (test === undefined || sheet === null) return [];
  const there = triedIn(card, sheet, recipes);
  if (!on) return there === null ? [] : [{ kind: 'undone', sheet: sheet.number, event: there.id }];
  if (there !== null) return [];
  return [{ kind: 'tested', sheet: sheet.number, of: test.sheet, pull: entryAt(entryAt(recipes, test.recipe).pulls, test.at).id }];
}

/** What to log when the test sheet is torn, so that a fresh one takes its place, or when that was not so. */
export function exchangedTest({ number, torn }: TestSheet, on: boolean): Happening[] {
  const last = torn.at(-1);
  if (on) return [{ kind: 'spoiled', sheet: number, note: '' }];
  return last === undefined ? [] : [{ kind: 'undone', sheet: number, event: last.id }];
}

/**
 * A recipe of all that may be tried, so that the test sheet can be drawn and spoken of as any other:
 * every pull of the visit under an id of its own.
 * @param recipes of one visit
 */
export function testRecipe(recipes: readonly Recipe[]): Recipe {
  const first = entryAt(recipes, 0);
  const of = (r: number, id: string): string => `${r} ${id}`;
  return {
    ...first,
    id: `test of ${recipes.map(({ id }) => id).join(' ')}`,
    title: say.testSheet,
    note: '',
    inks: recipes.flatMap(({ inks }, r) => inks.map((ink) => ({ ...ink, id: of(r, ink.id), mix: undefined }))),
    shapes: recipes.flatMap(({ shapes }, r) => shapes.map((shape) => ({ ...shape, id: of(r, shape.id) }))),
    screens: recipes.flatMap(({ screens }, r) =>
      screens.map((screen) => ({
        ...screen,
        id: of(r, screen.id),
        placed: screen.placed.map((each) => ({ ...each, shape: of(r, each.shape) })),
      })),
    ),
    pulls: recipes.flatMap(({ pulls }, r) => pulls.map((pull) => asTried(r, pull, pull.id))),
  };
}

/** A pull of a visit's recipe as `testRecipe` has it. @param id its own: one that is tried twice lies there twice */
export function asTried(recipe: number, pull: Pull, id: string): Pull {
  return { ...pull, id: `${recipe} ${id}`, screen: `${recipe} ${pull.screen}`, ink: `${recipe} ${pull.ink}` };
}
