import { defined, entryAt } from '../base/at.ts';
import type { PullPlan, SetUp } from '../pullorder/types.ts';
import type { Pull } from '../stack/types.ts';
import type { VisitInk, VisitScreen } from './registry.ts';
import { offsetOfText, type VisitProblem } from './visit-problem.ts';

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

/** One set-up as the printer reads it. */
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
  /** One for each recipe that has sheets in it. */
  states: CardState[];
}

/**
 * Reads a plan back into the studio's words.
 * @param plan a plan of `visit.problem`
 * @param beds the bed of each set-up: what changes is counted from the set-up before on its bed
 * @param onPress what is on the first bed already
 */
export function setUpCards(
  plan: Pick<PullPlan, 'setUps'>,
  visit: VisitProblem,
  beds: readonly number[] = [],
  onPress?: Pick<SetUp, 'screen' | 'ink' | 'offset'>,
): SetUpCard[] {
  const screens = new Map(visit.registry.screens.map((screen) => [screen.key, screen]));
  const inks = new Map(visit.registry.inks.map((ink) => [ink.key, ink]));
  const printed: number[][] = visit.sheets.map(() => []);
  const last = new Map<number, Pick<SetUp, 'screen' | 'ink' | 'offset'>>(onPress === undefined ? [] : [[0, onPress]]);
  return plan.setUps.map((setUp, at) => {
    const bed = beds[at] ?? 0;
    const before = last.get(bed);
    for (const [other, setUpThere] of last) if (setUpThere.screen === setUp.screen) last.set(other, { ...setUpThere, screen: '' });
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
    return {
      number: at + 1,
      screen: defined(screens.get(setUp.screen)),
      ink: defined(inks.get(setUp.ink)),
      ...offsetOfText(setUp.offset),
      mount,
      inkChange: before?.ink !== setUp.ink,
      registerMove: !mount && before?.offset !== setUp.offset,
      sheets: states.flatMap((state) => state.sheets).sort((a, b) => a - b),
      states,
    };
  });
}
