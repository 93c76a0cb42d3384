import type { FrameState } from '../../engine/explore/prepare/frames.ts';
import type { TestSheet } from '../../engine/log/test-sheet.ts';
import { type VisitFigures, wholeFigures } from '../../engine/visit/visit-figures.ts';
import type { InkNeed, PressPlan } from '../../engine/visit/visit.ts';
import { say } from './en/phrases/plan.ts';
import { frameWord } from './frame-words.ts';
import { gramsText, listed } from './plan-words.ts';

/** Where the grams come from, since most of it is from memory. */
export const GRAMS_NOTE = say.wetInkForSheets;

/** What the overs and proofs are. */
export const OVERS_NOTE = say.oversAndProofsAre;

/** What the one test sheet of a visit is for. */
export const TEST_SHEET_NOTE = say.printsOfWhichThere;

/** 'Test sheet 31 for all set-ups'; without a number in an order kept from before it had one. */
export function testSheetName(plan: Pick<PressPlan, 'testNumber'>): string {
  return say.testSheetForAll(plan.testNumber === undefined ? '' : `${plan.testNumber} `);
}

/** 'Test sheet 31'; 'Test sheet 31, the third' where two were torn before it. */
export function testName({ number, torn }: Pick<TestSheet, 'number' | 'torn'>): string {
  return torn.length === 0 ? say.testSheet(number) : say.testSheetFreshNo(number, torn.length + 1);
}

/** 'First on test sheet 31.'; '' where the set-up has none. */
export function testFirstWords(plan: Pick<PressPlan, 'testNumber' | 'cards'>, at: number): string {
  const test = plan.cards[at]?.test;
  return test === undefined || plan.testNumber === undefined ? '' : say.firstPullOfSheet(test.sheet, plan.testNumber);
}

/** 'sheets 24 g, proofs 1.2 g, left behind 115 g, safety 14 g'; '' for an order kept from before they were told apart. */
export function inkSplit(need: Partial<InkNeed>): string {
  const { printedG, proofsG = 0, lossG = 0, safetyG = 0 } = need;
  if (printedG === undefined) return '';
  const parts = [
    [say.sheets2, printedG],
    [say.proofs, proofsG],
    [say.leftBehind, lossG],
    [say.safety, safetyG],
  ] as const;
  return parts
    .filter(([, grams]) => grams > 0)
    .map(([word, grams]) => `${word} ${gramsText(grams)}\u00a0g`)
    .join(', ');
}

/** Why more is mixed than goes on paper, with the figures that cause it and the ink of which most stays behind. */
export function leftBehindWords(plan: Pick<PressPlan, 'inks' | 'cards'>, press: VisitFigures): string {
  const { lossMl, safety } = wholeFigures(press);
  const why = say.leftBehindMLStay(lossMl, Math.round(100 * safety));
  const [most] = [...plan.inks].sort((a, b) => (b.lossG ?? 0) - (a.lossG ?? 0));
  if (most === undefined || !(most.lossG > most.printedG + most.proofsG)) return why;
  const times = plan.cards.filter(({ ink, inkChange }) => inkChange && ink.key === most.key).length;
  const comes = times === 1 ? say.once : say.times(times);
  return say.comesOnSoG({ why, name: most.name, comes, grams: gramsText(most.lossG), grams2: gramsText(most.grams) });
}

/** More screens than this are counted, not named. */
const MOST_SCREENS_NAMED = 8;

/**
 * 'Screens 10 and 12 of this order are not made yet; the first is needed for set-up 10.'; '' where all are made, and
 * where nothing was said of any.
 */
export function unmadeWords({ cards }: Pick<PressPlan, 'cards'>, states: ReadonlyMap<string, FrameState> | undefined): string {
  if (states === undefined) return '';
  const missing = cards.filter(({ screen }) => states.get(screen.key) !== 'made');
  const keys = [...new Set(missing.map(({ screen }) => screen.key))];
  const [first] = missing;
  if (first === undefined) return '';
  return say.screensNotMade(keys.length > MOST_SCREENS_NAMED ? '' : listed(keys), keys.length, first.number);
}

/** What more is said of a screen that is not made yet: 'film made'; null where it is made, and where nothing is said of any. */
function unmadeHow(key: string, states: ReadonlyMap<string, FrameState> | undefined): string | null {
  const state = states?.get(key) ?? 'drawn';
  if (states === undefined || state === 'made') return null;
  return state === 'film made' || state === 'reclaimed' ? frameWord(state) : '';
}

/** Beside the box to tick when a screen is made: 'Not made yet, film made: tick when it is'. */
export function madeWords(key: string, states: ReadonlyMap<string, FrameState> | undefined): { words: string; unmade: boolean } {
  const how = unmadeHow(key, states);
  if (how !== null) return { words: say.tickWhenMade(how), unmade: true };
  return { words: states === undefined ? say.isScreenMade : say.theScreenIsMade, unmade: false };
}

/** 'Screen 10 is not made yet: film made.'; '' where it is made, and where nothing is said of any screen. */
export function unmadeLine(key: string, states: ReadonlyMap<string, FrameState> | undefined): string {
  const how = unmadeHow(key, states);
  return how === null ? '' : say.screenIsNotMade(key, how);
}

/** '3 screens to make', or how many of them are made already. */
export function screensWords(all: number, made: number): string {
  return made === 0 ? say.screensToMake(all) : say.screensOfThemMade(all, made, all - made);
}
