import { defined, entryAt } from '../../../engine/base/at.ts';
import { minutesText, rangesText } from '../../../engine/base/words.ts';
import type { FitChoice, FitStep } from '../../../engine/visit/fit-choice.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { counted } from '../../ui/words.ts';
import { listed } from '../../words/plan-words.ts';

type Of = Pick<MadePlan, 'input'>;

/** 'Leave out screen 7 Gull wing on sheets 12–18', 'Stay 4 days instead of 3'. */
export function stepWords({ change, sheets }: FitStep, { input }: Of): string {
  const on = `${sheets.length === 1 ? 'sheet' : 'sheets'} ${rangesText(sheets)}`;
  switch (change.kind) {
    case 'screen': {
      const screen = defined(entryAt(input.runs, change.run).recipe.screens.find((each) => each.id === change.screen));
      return `Leave out screen ${screen.number} ${screen.name} on ${on}`;
    }
    case 'recipe':
      return `Leave out ${entryAt(input.runs, change.run).recipe.title}, ${on}`;
    case 'sheets':
      return `Print ${counted(change.fewer, 'sheet')} fewer of ${entryAt(input.runs, change.run).recipe.title}`;
    case 'days':
      return `Stay ${counted(change.days, 'day')} instead of ${input.press.days}`;
    case 'hours':
      return `Work ${change.hoursPerDay} h a day instead of ${input.press.hoursPerDay}`;
  }
}

/** All changes of a choice in one sentence. */
export function fitWords({ steps }: FitChoice, made: Of): string {
  return listed(steps.map((step, i) => (i === 0 ? stepWords(step, made) : lowered(stepWords(step, made)))));
}

function lowered(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** 'saves 2 set-ups and 55 min; changes these prints by ΔE 1.2 on average'; '' for more time. */
export function stepWorth({ change, savedSetUps, savedMinutes, deltaE }: FitStep): string {
  const parts: string[] = [];
  if ('run' in change) {
    const saved = savedWords(savedSetUps, savedMinutes);
    if (saved !== '') parts.push(saved);
  }
  if (change.kind === 'screen') parts.push(`changes these prints by ΔE ${deltaE.toFixed(1)} on average`);
  return parts.join('; ');
}

function savedWords(setUps: number, minutes: number): string {
  const saved: string[] = [];
  if (setUps > 0) saved.push(counted(setUps, 'set-up'));
  if (minutes > 0) saved.push(minutesText(minutes));
  return saved.length > 0 ? `saves ${listed(saved)}` : '';
}

/** 'then it fits', with what all changes save together when several take something away. */
export function fitWorth({ steps, savedSetUps, savedMinutes, fits, daysNeeded }: FitChoice): string {
  const parts: string[] = [];
  if (steps.length === 1) parts.push(stepWorth(entryAt(steps, 0)));
  else if (steps.filter(({ change }) => 'run' in change).length > 1) {
    const saved = savedWords(savedSetUps, savedMinutes);
    if (saved !== '') parts.push(`together they ${saved.replace('saves', 'save')}`);
  }
  parts.push(fits ? 'then it fits' : `then it takes ${counted(daysNeeded, 'day')}`);
  return parts.filter((part) => part !== '').join('; ');
}
