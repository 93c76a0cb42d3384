import type { FitChoice } from '../../engine/output/what-to-drop.ts';
import { counted } from '../ui/words.ts';
import type { MadePlan } from './plan-run.ts';
import { listed, minutesText, rangesText } from './plan-words.ts';

/** 'Leave out 7 Gull wing on sheets 12–18', 'Stay 4 days instead of 3'. */
export function fitWords({ change, sheets }: FitChoice, { input }: Pick<MadePlan, 'input'>): string {
  const on = `${sheets.length === 1 ? 'sheet' : 'sheets'} ${rangesText(sheets)}`;
  switch (change.kind) {
    case 'screen': {
      const screen = input.runs[change.run]!.recipe.screens.find((each) => each.id === change.screen)!;
      return `Leave out screen ${screen.number} ${screen.name} on ${on}`;
    }
    case 'recipe':
      return `Leave out ${input.runs[change.run]!.recipe.title}, ${on}`;
    case 'sheets':
      return `Print ${counted(change.fewer, 'sheet')} fewer of ${input.runs[change.run]!.recipe.title}`;
    case 'days':
      return `Stay ${change.days} days instead of ${input.press.days}`;
    case 'hours':
      return `Work ${change.hoursPerDay} h a day instead of ${input.press.hoursPerDay}`;
  }
}

/** 'saves 2 set-ups and 55 min; then it fits' */
export function fitWorth({ change, savedSetUps, savedMinutes, fits, daysNeeded, deltaE }: FitChoice): string {
  const saved: string[] = [];
  if (savedSetUps > 0) saved.push(counted(savedSetUps, 'set-up'));
  if (savedMinutes > 0) saved.push(minutesText(savedMinutes));
  const parts: string[] = [];
  if ('run' in change && saved.length > 0) parts.push(`saves ${listed(saved)}`);
  if (change.kind === 'screen') parts.push(`changes these prints by ΔE ${deltaE.toFixed(1)} on average`);
  parts.push(fits ? 'then it fits' : `then it takes ${counted(daysNeeded, 'day')}`);
  return parts.join('; ');
}
