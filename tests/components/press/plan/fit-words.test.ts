import { describe, expect, it } from 'vitest';
import type { MadePlan } from '../../../../src/components/output/made-plan.ts';
import { fitWords, fitWorth } from '../../../../src/components/press/plan/fit-words.ts';
import type { FitChoice, FitStep } from '../../../../src/engine/visit/fit-choice.ts';

const made = {
  input: {
    runs: [{ recipe: { title: 'Ebb', screens: [{ id: 's7', number: 7, name: 'Gull wing' }] }, sheets: 7 }],
    press: { days: 2, hoursPerDay: 7 },
  },
} as unknown as MadePlan;
const screen: FitStep = {
  change: { kind: 'screen', run: 0, screen: 's7' },
  sheets: [12, 13, 14],
  savedSetUps: 2,
  savedMinutes: 55,
  deltaE: 1.24,
};
const fewer: FitStep = { change: { kind: 'sheets', run: 0, fewer: 1 }, sheets: [18], savedSetUps: 0, savedMinutes: 9, deltaE: 20 };
const hours: FitStep = { change: { kind: 'hours', hoursPerDay: 8 }, sheets: [], savedSetUps: 0, savedMinutes: 0, deltaE: 0 };
const choice = (steps: FitStep[], fits = true): FitChoice => ({
  steps,
  runs: [],
  press: {},
  fits,
  daysNeeded: 3,
  plan: null,
  savedSetUps: steps.reduce((sum, step) => sum + step.savedSetUps, 0),
  savedMinutes: steps.reduce((sum, step) => sum + step.savedMinutes, 0),
});

describe('the words of what makes a visit fit', () => {
  it('should name one change with what it saves', () => {
    expect(fitWords(choice([screen]), made)).toBe('Leave out screen 7 Gull wing on sheets 12–14');
    expect(fitWorth(choice([screen]))).toBe('saves 2 set-ups and 55 min; changes these prints by ΔE 1.2 on average; then it fits');
    expect(fitWorth(choice([screen], false))).toContain('then it takes 3 days');
  });
  it('should put several into one sentence and add up what they save', () => {
    expect(fitWords(choice([hours, screen, fewer]), made)).toBe(
      'Work 8 h a day instead of 7, leave out screen 7 Gull wing on sheets 12–14 and print 1 sheet fewer of Ebb',
    );
    expect(fitWorth(choice([hours, screen, fewer]))).toBe('together they save 2 set-ups and 1 h 4 min; then it fits');
    expect(fitWorth(choice([hours, screen]))).toBe('then it fits');
  });
});
