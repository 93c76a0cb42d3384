import { say } from '../../words/en/visit/advice.ts';
import { wholeFigures } from '../visit-figures.ts';
import type { PressPlan } from '../visit.ts';
import type { Edit, VisitHabits } from './edits.ts';

/** Changes that belong together, and the words that changed recipes carry behind their title. */
export interface Idea {
  edits: Edit[];
  name: string;
}

/** Single screens and recipes that are tried at most, those with most to win first. */
const MOST_SCREENS = 4;
const MOST_RUNS = 3;
const LEAST_SHEETS = 4;

/**
 * What is worth a try in a visit: one ink a screen, or two, one stroke, one offset, together too and on two
 * beds; fewer sheets; a second bed; a set-up begun the evening before; as many days as it takes.
 */
export function ideasOf(habits: VisitHabits, plan: PressPlan): Idea[] {
  const ideas: Idea[] = [];
  const add = (name: string, ...edits: Edit[]): void => void ideas.push({ edits, name });
  const { screens } = habits.registry;
  const habitOf = (key: string) => habits.commonest.get(key);
  const setUps = (key: string): number => plan.cards.filter((card) => card.screen.key === key).length;
  const byWork = [...screens].sort((a, b) => setUps(b.key) - setUps(a.key));
  const inksOf = (key: string): number => habitOf(key)?.inks.length ?? 0;
  const inks = byWork.filter(({ key }) => inksOf(key) > 1);
  const lays = byWork.filter(({ key }) => (habitOf(key)?.lays ?? 0) > 1);
  const strokes = habits.used.some(({ recipe }) => recipe.pulls.some((pull) => pull.strokes > 1));
  const all = [
    ...(inks.length > 0 ? [{ kind: 'ink' as const, screen: null }] : []),
    ...(lays.length > 0 ? [{ kind: 'offset' as const, screen: null }] : []),
    ...(strokes ? [{ kind: 'strokes' as const }] : []),
  ];
  if (habits.used.some(({ recipe }, r) => habits.recipeAfter(r, [{ kind: 'snap' }], '') !== recipe))
    add(say.offsetsAsOne, { kind: 'snap' });
  if (inks.length > 0) add(say.oneInkScreen, { kind: 'ink', screen: null });
  if (inks.some(({ key }) => inksOf(key) > 2)) {
    const two = { kind: 'ink' as const, screen: null, most: 2 as const };
    add(say.twoInksScreen, two);
    if (all.length > 1) add(say.twoInksScreenSimplified, two, ...all.slice(1));
  }
  if (lays.length > 0) add(say.oneOffsetScreen, { kind: 'offset', screen: null });
  if (strokes) add(say.oneStroke, { kind: 'strokes' });
  if (all.length === 3) {
    add(say.oneInkAndOne, ...all.slice(0, 2));
    add(say.oneOffsetAndOne, ...all.slice(1));
  }
  if (all.length > 1) add('simplified', ...all);
  const { beds, days } = wholeFigures(habits.input.press);
  if (all.length > 1 && beds === 1) add('simplified', ...all, { kind: 'beds', beds: 2 });
  if (inks.length > 1) for (const { key } of inks.slice(0, MOST_SCREENS)) add(say.screenInOneInk(key), { kind: 'ink', screen: key });
  if (lays.length > 1) for (const { key } of lays.slice(0, MOST_SCREENS)) add(say.screenAtOneOffset(key), { kind: 'offset', screen: key });
  for (const edit of fewerSheets(habits)) add('', edit);
  if (beds === 1) add('', { kind: 'beds', beds: 2 });
  add('', { kind: 'night' });
  if (plan.daysNeeded > days) add('', { kind: 'days', days: plan.daysNeeded });
  return ideas;
}

/** A quarter of the sheets of the recipes that have most. */
function fewerSheets({ input }: VisitHabits): Edit[] {
  return input.runs
    .map(({ sheets }, run) => ({ sheets, run }))
    .filter(({ sheets }) => sheets >= LEAST_SHEETS)
    .sort((a, b) => b.sheets - a.sheets)
    .slice(0, MOST_RUNS)
    .map(({ sheets, run }): Edit => ({ kind: 'sheets', run, fewer: Math.round(sheets / 4) }));
}
