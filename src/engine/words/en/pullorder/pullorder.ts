import { speak } from '../../language.ts';

export const say = speak('engine/pullorder/pullorder', {
  printsNothingLeaveIt: 'prints nothing; leave it out.',
  sheetHasNoPull: (s: number, p: number) => `sheet ${s} has no pull ${p}.`,
  pullOfSheetIs: (p: number, s: number) => `pull ${p} of sheet ${s} is of another screen, ink or offset.`,
  pullOfSheetWas: (p: number, s: number) => `pull ${p} of sheet ${s} was printed before.`,
  pullOfSheetMust: (p: number, s: number, a: number) => `pull ${p} of sheet ${s} must wait for pull ${a}.`,
  isNeverPrinted: 'is never printed.',
  couldHaveBeenPrinted: (i: number, at: number) => `could have been printed in set-up ${i}, but waits until ${at}.`,
  isCounted: (key: string, plan: number, count: number) => `${key} is ${plan}, counted ${count}.`,
  boundOnSetUps: 'the bound on set-ups is above the plan.',
  boundOnMountsIs: 'the bound on mounts is above the plan.',
  problemMustHaveList: 'The problem must have a list of sheets.',
  visitHasSheetsMore: (sheets: number, maxSheets: number) => `The visit has ${sheets} sheets, more than ${maxSheets}: plan it in parts.`,
  mustHaveListOf: (where: string) => `${where} must have a list of pulls.`,
  mustHaveListOfOverlaps: (where: string) => `${where} must have a list of overlaps.`,
  hasPullsMoreThan: (where: string, pulls: number, maxPullsASheet: number) =>
    `${where} has ${pulls} pulls, more than ${maxPullsASheet}: split its stack.`,
  pullMustNameIts: (where: string, p: number) => `${where}, pull ${p} must name its screen, ink and (or not) offset as text.`,
  overlapIsGiveTwo: ({ where, i, a, b, pulls }: { where: string; i: number; a: string; b: string; pulls: number }) =>
    `${where}, overlap ${i} is [${a}, ${b}]: give two positions, the earlier first, from 0 to ${pulls}.`,
  moreThanDifferentSheets: (maxDistinctSheets: number) => `more than ${maxDistinctSheets} different sheets`,
  pullsOnDifferentSheets: (pulls: number, maxDistinctPulls: number) => `${pulls} pulls on different sheets, more than ${maxDistinctPulls}`,
  pullOrderHasPlan: (found: string) => `The pull order has ${found}: plan fewer recipes at a time, or print more sheets of each.`,
  timeToPlanIn: (budgetMs: string) => `The time to plan in is ${budgetMs} ms: give a number, 0 or more.`,
  seedIsGiveNumber: (seed: string) => `The seed is ${seed}: give a number or a text.`,
});
