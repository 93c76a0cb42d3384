import { defined, entryAt } from '../base/at.ts';
import type { TimelineStart } from '../pullorder/timeline/start-state.ts';
import { testPullOf } from '../pullorder/timeline/test-pull.ts';
import type { SetUp } from '../pullorder/types.ts';
import type { Pull } from '../stack/types.ts';
import { layOfText } from './problem/lays.ts';
import type { VisitInk, VisitScreen } from './registry.ts';
import type { VisitProblem } from './visit-problem.ts';

/** How a recipe's sheets look after a set-up. */
export interface CardState {
  /** Index into the visit's recipes. */
  recipe: number;
  /** Numbers of the sheets, ascending. */
  sheets: number[];
  /** The recipe's pulls that this set-up prints, by position in the recipe. */
  prints: number[];
  /** What is on those sheets afterwards, in the order in which it was printed. */
  after: Pull[];
  /** What was on them before. */
  before: Pull[];
}

/** How some of a set-up's sheets are pulled: their offset, which the table cannot tell from the others', and their strokes. */
interface PullInstruction {
  dxMm: number;
  dyMm: number;
  turnDeg: number;
  strokes: number;
  /** Numbers of the sheets, ascending. */
  sheets: number[];
}

/** One set-up as the printer reads it: the offset that its lay stands for, and the strokes of most of its sheets. */
export interface SetUpCard {
  /** From 1. */
  number: number;
  screen: VisitScreen;
  ink: VisitInk;
  dxMm: number;
  dyMm: number;
  turnDeg: number;
  strokes: number;
  mount: boolean;
  inkChange: boolean;
  registerMove: boolean;
  /** Numbers of the sheets to take, ascending. */
  sheets: number[];
  /** One for each way of pulling, that of most sheets first; absent in orders kept from before there were several. */
  instructions?: PullInstruction[];
  /** One for each recipe that has sheets in it. */
  states: CardState[];
  /** The pull that is tried on the test sheet first; absent where the visit has none. */
  test?: TestPull;
}

/** A pull of a sheet, which a set-up tries on the test sheet before it prints it. */
export interface TestPull {
  /** Index into the visit's recipes. */
  recipe: number;
  /** Position of the pull in the recipe. */
  at: number;
  /** Number of the sheet. */
  sheet: number;
}

/** Whether sheets of a recipe stand in several groups of a set-up, as they have not the same on them. */
export function isSplit({ states }: Pick<SetUpCard, 'states'>, { recipe }: Pick<CardState, 'recipe'>): boolean {
  return states.filter((state) => state.recipe === recipe).length > 1;
}

/**
 * The sheets of a set-up by recipe and pulls, whatever is on them: what is ticked together.
 * @returns states whose `before` and `after` are those of their first sheets
 */
export function tickedTogether({ states }: Pick<SetUpCard, 'states'>): CardState[] {
  const groups = new Map<string, CardState>();
  for (const state of states) {
    const key = JSON.stringify([state.recipe, state.prints]);
    const known = groups.get(key);
    groups.set(key, known === undefined ? state : { ...known, sheets: [...known.sheets, ...state.sheets].sort((a, b) => a - b) });
  }
  return [...groups.values()];
}

/**
 * Reads a plan back into the studio's words.
 * @param plan a plan of `visit.problem`
 * @param beds the bed of each set-up: what changes is counted from the set-up before on its bed
 * @param start what is on the beds already, and how many set-ups are done
 */
export function setUpCards(
  plan: { setUps: readonly SetUp[] },
  visit: VisitProblem,
  beds: readonly number[] = [],
  { onPress = [], setUpsBefore = 0 }: Pick<TimelineStart, 'onPress' | 'setUpsBefore'> = {},
): SetUpCard[] {
  const screens = new Map(visit.registry.screens.map((screen) => [screen.key, screen]));
  const inks = new Map(visit.registry.inks.map((ink) => [ink.key, ink]));
  const printed: number[][] = visit.sheets.map(() => []);
  const last = new Map(onPress.entries());
  return plan.setUps.map((setUp, at) => {
    const bed = beds[at] ?? 0;
    const before = last.get(bed);
    for (const [other, setUpThere] of last) if (setUpThere?.screen === setUp.screen) last.set(other, { ...setUpThere, screen: '' });
    last.set(bed, setUp);
    const mount = before?.screen !== setUp.screen;
    const bySheet = new Map<number, number[]>();
    for (const [sheet, pull] of setUp.pulls) {
      const list = bySheet.get(sheet);
      if (list === undefined) bySheet.set(sheet, [pull]);
      else list.push(pull);
    }
    const byHistory = new Map<string, CardState>();
    for (const sheet of [...bySheet.keys()].sort((a, b) => a - b)) {
      const { recipe, number } = entryAt(visit.sheets, sheet);
      const { pulls } = entryAt(visit.recipes, recipe);
      const prints = defined(bySheet.get(sheet)).sort((a, b) => a - b);
      const history = entryAt(printed, sheet);
      const key = JSON.stringify([recipe, history, prints]);
      const state = byHistory.get(key);
      if (state === undefined) {
        byHistory.set(key, {
          recipe,
          sheets: [number],
          prints,
          before: history.map((pull) => entryAt(pulls, pull)),
          after: [...history, ...prints].map((pull) => entryAt(pulls, pull)),
        });
      } else state.sheets.push(number);
      history.push(...prints);
    }
    const states = [...byHistory.values()];
    for (const state of states) state.sheets.sort((a, b) => a - b);
    const instructions = instructionsOf(states, visit);
    return {
      number: setUpsBefore + at + 1,
      screen: defined(screens.get(setUp.screen)),
      ink: defined(inks.get(setUp.ink)),
      ...layOfText(setUp.offset),
      strokes: entryAt(instructions, 0).strokes,
      instructions,
      mount,
      inkChange: before?.ink !== setUp.ink,
      registerMove: !mount && before?.offset !== setUp.offset,
      sheets: states.flatMap((state) => state.sheets).sort((a, b) => a - b),
      states,
      ...(visit.testSheet === null ? {} : { test: testOf(setUp, visit) }),
    };
  });
}

function testOf({ pulls }: SetUp, { sheets }: VisitProblem): TestPull {
  const [sheet, at] = testPullOf(pulls);
  const { recipe, number } = entryAt(sheets, sheet);
  return { recipe, at, sheet: number };
}

/** The ways in which a set-up's sheets are pulled, that of most sheets first. */
function instructionsOf(states: readonly CardState[], { recipes }: VisitProblem): PullInstruction[] {
  const ways = new Map<string, PullInstruction>();
  for (const { recipe, prints, sheets } of states) {
    for (const at of prints) {
      const { dxMm, dyMm, turnDeg, strokes } = entryAt(entryAt(recipes, recipe).pulls, at);
      const key = JSON.stringify([dxMm, dyMm, turnDeg, strokes]);
      const way = ways.get(key);
      if (way === undefined) ways.set(key, { dxMm, dyMm, turnDeg, strokes, sheets: [...sheets] });
      else way.sheets = [...new Set([...way.sheets, ...sheets])];
    }
  }
  for (const way of ways.values()) way.sheets.sort((a, b) => a - b);
  return [...ways.values()].sort((a, b) => b.sheets.length - a.sheets.length);
}
