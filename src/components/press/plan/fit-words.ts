import { defined, entryAt } from '../../../engine/base/at.ts';
import { minutesText, rangesText } from '../../../engine/base/words.ts';
import type { FitChoice, FitStep } from '../../../engine/visit/fit-choice.ts';
import { fixed, uncapital } from '../../../engine/words/language.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { say } from '../../words/en/press/plan.ts';
import { listed } from '../../words/plan-words.ts';

type Of = Pick<MadePlan, 'input'>;

/** 'Leave out screen 7 Gull wing on sheets 12–18', 'Stay 4 days instead of 3'. */
export function stepWords({ change, sheets }: FitStep, { input }: Of): string {
  const on = say.sheetsSheets(sheets.length, rangesText(sheets));
  switch (change.kind) {
    case 'screen': {
      const screen = defined(entryAt(input.runs, change.run).recipe.screens.find((each) => each.id === change.screen));
      return say.leaveOutScreenOn(screen.number, screen.name, on);
    }
    case 'recipe':
      return say.leaveOut(entryAt(input.runs, change.run).recipe.title, on);
    case 'sheets':
      return say.printSheetsFewerOf(change.fewer, entryAt(input.runs, change.run).recipe.title);
    case 'days':
      return say.stayDaysInsteadOf(change.days, input.press.days);
    case 'hours':
      return say.workHDayInstead(change.hoursPerDay, input.press.hoursPerDay);
  }
}

/** All changes of a choice in one sentence. */
export function fitWords({ steps }: FitChoice, made: Of): string {
  return listed(steps.map((step, i) => (i === 0 ? stepWords(step, made) : uncapital(stepWords(step, made)))));
}

/** 'saves 2 set-ups and 55 min; changes these prints by ΔE 1.2 on average'; '' for more time. */
export function stepWorth({ change, savedSetUps, savedMinutes, deltaE }: FitStep): string {
  const parts: string[] = [];
  if ('run' in change) {
    const saved = savedWords(savedSetUps, savedMinutes);
    if (saved !== '') parts.push(say.saves(saved));
  }
  if (change.kind === 'screen') parts.push(say.changesThesePrintsBy(fixed(deltaE, 1)));
  return parts.join('; ');
}

function savedWords(setUps: number, minutes: number): string {
  const saved: string[] = [];
  if (setUps > 0) saved.push(say.setUps(setUps));
  if (minutes > 0) saved.push(minutesText(minutes));
  return listed(saved);
}

/** 'then it fits', with what all changes save together when several take something away. */
export function fitWorth({ steps, savedSetUps, savedMinutes, fits, daysNeeded }: FitChoice): string {
  const parts: string[] = [];
  if (steps.length === 1) parts.push(stepWorth(entryAt(steps, 0)));
  else if (steps.filter(({ change }) => 'run' in change).length > 1) {
    const saved = savedWords(savedSetUps, savedMinutes);
    if (saved !== '') parts.push(say.togetherTheySave(saved));
  }
  parts.push(fits ? say.thenItFits : say.thenItTakesDays(daysNeeded));
  return parts.filter((part) => part !== '').join('; ');
}
