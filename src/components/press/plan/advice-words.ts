import { entryAt } from '../../../engine/base/at.ts';
import { minutesText } from '../../../engine/base/words.ts';
import type { AdviceFigures } from '../../../engine/visit/advice/advice-figures.ts';
import type { Advice } from '../../../engine/visit/advice/advice.ts';
import type { Edit } from '../../../engine/visit/advice/edits.ts';
import type { PressPlan, VisitInput } from '../../../engine/visit/visit.ts';
import { fixed, uncapital } from '../../../engine/words/language.ts';
import { say } from '../../words/en/press/plan.ts';
import { listed } from '../../words/plan-words.ts';

/** The visit that advice is given on. */
interface Of {
  plan: PressPlan;
  input: VisitInput;
}

/** What is to be changed: 'Each screen in its commonest ink alone and one stroke where there were more'. */
export function adviceWords({ edits, plan }: Pick<Advice, 'edits' | 'plan'>, of: Of): string {
  return listed(edits.map((edit, i) => (i === 0 ? editWords(edit, of, plan) : uncapital(editWords(edit, of, plan)))));
}

function editWords(edit: Edit, { plan, input }: Of, after: PressPlan): string {
  switch (edit.kind) {
    case 'ink': {
      if (edit.screen === null) return edit.most === 2 ? say.eachScreenInIts : say.eachScreenInItsCommonest;
      const ink = after.cards.find((card) => card.screen.key === edit.screen)?.ink.key;
      return say.inAlone(screenWords(plan, edit.screen), ink ?? say.oneInk);
    }
    case 'offset':
      return edit.screen === null ? say.eachScreenAtIts : say.atOneOffset(screenWords(plan, edit.screen));
    case 'snap':
      return say.offsetsThatTableCannot;
    case 'strokes':
      return say.oneStrokeWhereThere;
    case 'sheets':
      return say.printSheetsFewerOf(edit.fewer, entryAt(input.runs, edit.run).recipe.title);
    case 'beds':
      return say.workOnPressBeds(edit.beds);
    case 'days':
      return say.stayDaysInsteadOf(edit.days, input.press.days);
    case 'night':
      return say.beginSetUpsIn;
  }
}

function screenWords(plan: PressPlan, key: string): string {
  const name = plan.cards.find((card) => card.screen.key === key)?.screen.name ?? '';
  return say.screen(key, name).trim();
}

/** What becomes less or more: '198 → 144 set-ups, 72 h → 54 h at the press'. */
export function savedWords(before: AdviceFigures, after: AdviceFigures): string {
  const parts: string[] = [];
  const count = (was: number, is: number, now: string): void => {
    if (was !== is) parts.push(`${was} → ${now}`);
  };
  count(before.setUps, after.setUps, say.setUps(after.setUps));
  count(before.mounts, after.mounts, say.mounts(after.mounts));
  if (minutesText(before.minutes) !== minutesText(after.minutes))
    parts.push(say.atPress(minutesText(before.minutes), minutesText(after.minutes)));
  count(before.days, after.days, say.days(after.days));
  count(before.inksADay, after.inksADay, say.inksOnOneDay(after.inksADay));
  count(before.late, after.late, say.setUpsAfterLast(after.late));
  return parts.join(', ');
}

/** How far the prints move for it: 'Changes 3 prints, Ebb most, by ΔE 2.4 on average; ΔE 1.1 over the visit'. */
export function changeWords(
  { edits, changes, deltaE }: Pick<Advice, 'edits' | 'changes' | 'deltaE'>,
  { input }: Pick<Of, 'input'>,
): string {
  const [most] = changes;
  const fewer = edits.some(({ kind }) => kind === 'sheets');
  if (most === undefined) return fewer ? say.printsThatAreLeft : say.printsStayAsThey;
  const which = say.prints(changes.length, changes.length > 1 ? say.most(entryAt(input.runs, most.run).recipe.title) : '');
  return say.changesByDeltaEOn(which, fixed(most.deltaE, 1), fixed(deltaE, 1));
}
