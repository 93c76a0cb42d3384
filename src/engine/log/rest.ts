import { defined, entryAt, num } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import type { Recipe } from '../recipe/types.ts';
import type { Pull } from '../stack/types.ts';
import type { PullFinder } from '../visit/problem/order-at-hand.ts';
import type { PairMemory } from '../visit/problem/pair-memory.ts';
import type { TestPull } from '../visit/set-up-cards.ts';
import { printedRuns, type VisitProblem, type VisitSheet } from '../visit/visit-problem.ts';
import { momentOf } from '../visit/visit-times.ts';
import { type Moment, type PressPlan, planVisit, type VisitInput } from '../visit/visit.ts';
import { say } from '../words/en/log/log.ts';
import type { PulledLast } from './now/on-beds.ts';
import type { RestInput } from './rest-input.ts';
import { type RestStart, restStart } from './rest-start.ts';

export type { RestInput } from './rest-input.ts';

/** Where the plan of a rest begins, and what it found there. */
interface RestBegins extends Moment {
  /** Sheets that are not dry enough yet for a pull that is left. */
  wetSheets: number;
  /** The frames that stay on the press, bed by bed, null where all are mounted anew; one in orders kept from before. */
  stays: readonly string[] | string | null;
  /** By bed what was pulled on it last, for the next plan of what is left. */
  lastOn?: readonly (PulledLast | null)[] | undefined;
}

/** The plan of what is left of a visit. */
export interface RestPlan extends PressPlan {
  begins?: RestBegins;
}

/** Sheets that have the same on them and the same before them. */
interface Group {
  recipe: number;
  /** What is on them, as it is. */
  pulls: readonly Pull[];
  /** Positions of the recipe's pulls that are left. */
  left: number[];
  sheets: Omit<VisitSheet, 'recipe'>[];
}

function groupsOf({ recipes, sheets }: RestInput['rest']): Group[] {
  const groups = new Map<string, Group>();
  for (const { number, use, recipe, pulls, done, spoiled } of sheets) {
    if (spoiled) continue;
    const all = entryAt(recipes, recipe).pulls;
    const left = all.flatMap((_, at) => (done.includes(at) ? [] : [at]));
    if (left.length === 0) continue;
    const key = JSON.stringify([recipe, left, pulls.map((pull) => pull.id)]);
    const sheet = { number, ...(use === undefined ? {} : { use }) };
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { recipe, pulls, left, sheets: [sheet] });
    else group.sheets.push(sheet);
  }
  // In the order of the recipes, so that frames and buckets keep their names.
  return [...groups.values()].sort((a, b) => a.recipe - b.recipe);
}

function inWordsOfVisit(plan: PressPlan, groups: readonly Group[], recipes: readonly Recipe[]): PressPlan {
  const sheets = plan.sheets
    .map((sheet) => ({ ...sheet, recipe: entryAt(groups, sheet.recipe).recipe }))
    .sort((a, b) => a.recipe - b.recipe || rank(a) - rank(b) || a.number - b.number);
  return {
    ...plan,
    sheets,
    recipes: recipes.map(({ id, title }, at) => ({
      id,
      title,
      sheets: sheets.filter((sheet) => sheet.recipe === at).map((sheet) => sheet.number),
    })),
    cards: plan.cards.map((card) => ({
      ...card,
      ...(card.test === undefined ? {} : { test: wholeTest(card.test, groups) }),
      states: card.states.map((state) => {
        const { recipe, pulls, left } = entryAt(groups, state.recipe);
        return {
          ...state,
          recipe,
          prints: state.prints.map((at) => num(left, at)),
          before: [...pulls, ...state.before],
          after: [...pulls, ...state.after],
        };
      }),
    })),
  };
}

function wholeTest({ recipe: g, at, sheet }: TestPull, groups: readonly Group[]): TestPull {
  const { recipe, left } = entryAt(groups, g);
  return { recipe, at: num(left, at), sheet };
}

/**
 * Plans what is left of a visit around what is done: each sheet's remaining pulls in an order that
 * keeps its overlaps, spoiled sheets left out. The times begin when it is planned: films that were
 * pulled just now must dry first, and the frame that is on the press needs no mount if it stays.
 * @param input with the order at hand, going on with which is never better than what is given
 * @param budgetMs as `planVisit` takes it
 * @param memory of pairs of pulls that were measured before; absent = none
 * @yields the best order so far, in the numbers of the whole visit: sheets, recipes and positions
 * @throws EngineError 'log.all-done' when nothing is left, and what `planVisit` throws
 */
export function* planRest(input: RestInput, budgetMs: number, memory?: PairMemory): Generator<RestPlan, void> {
  const groups = groupsOf(input.rest);
  if (groups.length === 0) {
    throw new EngineError('log.all-done', say.nothingIsLeftTo);
  }
  const runs = groups.map(({ recipe, left, sheets }) => {
    const whole = entryAt(input.rest.recipes, recipe);
    const rest = { ...whole, pulls: left.map((at) => entryAt(whole.pulls, at)) };
    const all = input.rest.sheets.filter((sheet) => sheet.recipe === recipe).length;
    return { recipe: rest, sheets: sheets.length, numbered: sheets, whole: { recipe: whole, left, sheets: all } };
  });
  const { rest, ...visit } = input;
  const behind = 1 + Math.max(...rest.sheets.map(({ number }) => number));
  const testSheet = rest.test?.number ?? (input.testSheet === true ? behind : input.testSheet);
  const leftOf = new Map(runs.flatMap(({ recipe, numbered }) => numbered.map(({ number }) => [number, recipe.pulls] as const)));
  let start: RestStart | undefined;
  const startOf = (problem: VisitProblem): RestStart =>
    (start = {
      ...(rest.now === undefined ? {} : restStart(input, rest.now, problem, leftOf)),
      ...(rest.setUpsBefore === undefined ? {} : { setUpsBefore: rest.setUpsBefore }),
    });
  const find = (problem: VisitProblem): PullFinder => leftFinder(problem, groups, rest.recipes);
  for (const plan of planVisit({ ...visit, testSheet, runs }, budgetMs, { startOf, find, memory })) {
    const made = inWordsOfVisit(plan, groups, rest.recipes);
    yield rest.now === undefined ? made : { ...made, begins: beginsOf(made, defined(start)) };
  }
}

/** Recipes of a visit whose pairs of pulls its plan is measured by. */
export function measuredRecipes(input: VisitInput | RestInput): Recipe[] {
  if (!('rest' in input)) return printedRuns(input.runs).map(({ recipe }) => recipe);
  return groupsOf(input.rest).map(({ recipe }) => entryAt(input.rest.recipes, recipe));
}

/**
 * Finds the pulls of the whole visit among those that are left. A sheet that goes on in another way since the
 * order was made keeps of it what is still to follow: a pull keeps its id.
 */
function leftFinder({ sheets }: VisitProblem, groups: readonly Group[], recipes: readonly Recipe[]): PullFinder {
  const place = new Map(sheets.map((sheet, s) => [sheet.number, s]));
  return (number, recipe, at) => {
    const s = place.get(number);
    if (s === undefined) return null;
    const group = entryAt(groups, entryAt(sheets, s).recipe);
    const id = recipes[recipe]?.pulls[at]?.id;
    const now = group.recipe === recipe ? at : entryAt(recipes, group.recipe).pulls.findIndex((pull) => pull.id === id);
    const p = group.left.indexOf(now);
    return p < 0 ? null : [s, p];
  };
}

/** Proofs are pulled before the prints of their recipe, overs behind them. */
function rank({ use }: Pick<VisitSheet, 'use'>): number {
  return use === 'proof' ? 0 : use === 'over' ? 2 : 1;
}

function beginsOf(plan: PressPlan, { minute = 0, readyAt = [], onPress = [], lastOn }: RestStart): RestBegins {
  const { day } = momentOf(minute);
  const stays = onPress.flatMap((there, bed) => {
    const first = plan.times.findIndex((time) => time.bed === bed);
    const used = first >= 0 && !entryAt(plan.cards, first).mount && entryAt(plan.times, first).day === day;
    return there !== null && used ? [there.screen] : [];
  });
  return {
    day,
    minute: momentOf(minute).minute,
    wetSheets: readyAt.filter((pulls) => pulls.some((pull) => pull.minute > minute)).length,
    stays: stays.length === 0 ? null : stays,
    ...(lastOn === undefined ? {} : { lastOn }),
  };
}
