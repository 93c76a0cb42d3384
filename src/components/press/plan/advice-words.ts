import { entryAt } from '../../../engine/base/at.ts';
import { minutesText } from '../../../engine/base/words.ts';
import type { AdviceFigures } from '../../../engine/visit/advice/advice-figures.ts';
import type { Advice } from '../../../engine/visit/advice/advice.ts';
import type { Edit } from '../../../engine/visit/advice/edits.ts';
import type { PressPlan, VisitInput } from '../../../engine/visit/visit.ts';
import { counted } from '../../ui/words.ts';
import { listed } from '../../words/plan-words.ts';

/** The visit that advice is given on. */
interface Of {
  plan: PressPlan;
  input: VisitInput;
}

/** What is to be changed: 'Each screen in its commonest ink alone and one stroke where there were more'. */
export function adviceWords({ edits, plan }: Pick<Advice, 'edits' | 'plan'>, of: Of): string {
  return listed(edits.map((edit, i) => (i === 0 ? editWords(edit, of, plan) : lowered(editWords(edit, of, plan)))));
}

function lowered(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

function editWords(edit: Edit, { plan, input }: Of, after: PressPlan): string {
  switch (edit.kind) {
    case 'ink': {
      if (edit.screen === null)
        return edit.most === 2
          ? 'Each screen in its two commonest inks at most, other inks as the nearer of the two'
          : 'Each screen in its commonest ink alone';
      const ink = after.cards.find((card) => card.screen.key === edit.screen)?.ink.key;
      return `${screenWords(plan, edit.screen)} in ${ink ?? 'one ink'} alone`;
    }
    case 'offset':
      return edit.screen === null ? 'Each screen at its commonest offset alone' : `${screenWords(plan, edit.screen)} at one offset`;
    case 'snap':
      return 'Offsets that the table cannot tell apart drawn as one';
    case 'strokes':
      return 'One stroke where there were more';
    case 'sheets':
      return `Print ${counted(edit.fewer, 'sheet')} fewer of ${entryAt(input.runs, edit.run).recipe.title}`;
    case 'beds':
      return `Work on ${counted(edit.beds, 'press bed')}`;
    case 'days':
      return `Stay ${counted(edit.days, 'day')} instead of ${input.press.days}`;
    case 'night':
      return 'Begin set-ups in the evening that would wait for the morning';
  }
}

function screenWords(plan: PressPlan, key: string): string {
  const name = plan.cards.find((card) => card.screen.key === key)?.screen.name ?? '';
  return `Screen ${key} ${name}`.trim();
}

/** What becomes less or more: '198 → 144 set-ups, 72 h → 54 h at the press'. */
export function savedWords(before: AdviceFigures, after: AdviceFigures): string {
  const parts: string[] = [];
  const count = (was: number, is: number, one: string, more?: string): void => {
    if (was !== is) parts.push(`${was} → ${counted(is, one, more)}`);
  };
  count(before.setUps, after.setUps, 'set-up');
  count(before.mounts, after.mounts, 'mount');
  if (minutesText(before.minutes) !== minutesText(after.minutes))
    parts.push(`${minutesText(before.minutes)} → ${minutesText(after.minutes)} at the press`);
  count(before.days, after.days, 'day');
  count(before.inksADay, after.inksADay, 'ink on one day', 'inks on one day');
  count(before.late, after.late, 'set-up after the last day', 'set-ups after the last day');
  return parts.join(', ');
}

/** How far the prints move for it: 'Changes 3 prints, Ebb most, by ΔE 2.4 on average; ΔE 1.1 over the visit'. */
export function changeWords(
  { edits, changes, deltaE }: Pick<Advice, 'edits' | 'changes' | 'deltaE'>,
  { input }: Pick<Of, 'input'>,
): string {
  const [most] = changes;
  const fewer = edits.some(({ kind }) => kind === 'sheets');
  if (most === undefined) return fewer ? 'The prints that are left stay as they are.' : 'The prints stay as they are.';
  const which = `${counted(changes.length, 'print')}${changes.length > 1 ? `, ${entryAt(input.runs, most.run).recipe.title} most` : ''}`;
  return `Changes ${which}, by ΔE ${most.deltaE.toFixed(1)} on average; ΔE ${deltaE.toFixed(1)} over the visit.`;
}
