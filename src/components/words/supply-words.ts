import type { TestSheet } from '../../engine/log/test-sheet.ts';
import { type VisitFigures, wholeFigures } from '../../engine/visit/visit-figures.ts';
import type { InkNeed, PressPlan } from '../../engine/visit/visit.ts';
import { counted } from '../ui/words.ts';
import { gramsText } from './plan-words.ts';

/** Where the grams come from, since most of it is from memory. */
export const GRAMS_NOTE =
  'Wet ink for sheets, overs and proofs, what stays in screen and bucket, and a margin of safety. Density, transfer and loss start from memory, proofs and margin from common practice, not from a source: weigh what your first run takes and change the studio figures.';

/** What the overs and proofs are. */
export const OVERS_NOTE =
  'Overs and proofs are sheets like the others, numbered behind those that are wanted: proofs go first through every set-up of their recipe, overs last, and an over takes the place of a spoiled sheet.';

/** What the one test sheet of a visit is for. */
export const TEST_SHEET_NOTE =
  'Prints of which there is one have no over: each set-up is first pulled once on a test sheet, the same for the whole visit, with a number behind all others; where it is torn, a fresh one takes its place and number. It takes time, ink and a place in the racks, but nobody waits for it: where it is still wet, pull on a clear film laid over it.';

/** 'Test sheet 31 for all set-ups'; without a number in an order kept from before it had one. */
export function testSheetName(plan: Pick<PressPlan, 'testNumber'>): string {
  return `Test sheet ${plan.testNumber === undefined ? '' : `${plan.testNumber} `}for all set-ups`;
}

/** 'Test sheet 31'; 'Test sheet 31, the third' where two were torn before it. */
export function testName({ number, torn }: Pick<TestSheet, 'number' | 'torn'>): string {
  return torn.length === 0 ? `Test sheet ${number}` : `Test sheet ${number}, fresh (no. ${torn.length + 1})`;
}

/** 'First on test sheet 31.'; '' where the set-up has none. */
export function testFirstWords(plan: Pick<PressPlan, 'testNumber' | 'cards'>, at: number): string {
  const test = plan.cards[at]?.test;
  return test === undefined || plan.testNumber === undefined
    ? ''
    : `First the pull of sheet ${test.sheet} on test sheet ${plan.testNumber}.`;
}

/** 'sheets 24 g, proofs 1.2 g, left behind 115 g, safety 14 g'; '' for an order kept from before they were told apart. */
export function inkSplit(need: Partial<InkNeed>): string {
  const { printedG, proofsG = 0, lossG = 0, safetyG = 0 } = need;
  if (printedG === undefined) return '';
  const parts = [
    ['sheets', printedG],
    ['proofs', proofsG],
    ['left behind', lossG],
    ['safety', safetyG],
  ] as const;
  return parts
    .filter(([, grams]) => grams > 0)
    .map(([word, grams]) => `${word} ${gramsText(grams)}\u00a0g`)
    .join(', ');
}

/** Why more is mixed than goes on paper, with the figures that cause it and the ink of which most stays behind. */
export function leftBehindWords(plan: Pick<PressPlan, 'inks' | 'cards'>, press: VisitFigures): string {
  const { lossMl, safety } = wholeFigures(press);
  const why = `Left behind: ${lossMl} mL stay in screen and bucket at each change of ink, and ${Math.round(100 * safety)} % of all is added for safety ('Lost at each change of ink' and 'More ink, for safety' in the studio figures).`;
  const [most] = [...plan.inks].sort((a, b) => (b.lossG ?? 0) - (a.lossG ?? 0));
  if (most === undefined || !(most.lossG > most.printedG + most.proofsG)) return why;
  const times = plan.cards.filter(({ ink, inkChange }) => inkChange && ink.key === most.key).length;
  const comes = times === 1 ? 'once' : `${times} times`;
  return `${why} ${most.name} comes on ${comes}, so ${gramsText(most.lossG)} g of its ${gramsText(most.grams)} g stay behind: fewer changes of ink, or the loss that you really weigh, take less.`;
}

/** '3 screens to make', or how many of them are made already. */
export function screensWords(all: number, made: number): string {
  return made === 0 ? `${counted(all, 'screen')} to make` : `${counted(all, 'screen')}, ${made} of them made, ${all - made} to make`;
}
