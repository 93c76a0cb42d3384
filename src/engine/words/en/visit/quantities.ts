import { speak } from '../../language.ts';

export const say = speak('engine/visit/quantities', {
  moreThan0At: 'more than 0, at most 1',
  safetyMargin: 'safety margin',
  n0OrMore: '0 or more',
  ofInk: (ink: string) => ` of ink ${ink}`,
  printedArea: (theOf: string) => `printed area${theOf}`,
  n0MmOrMore: '0 mm² or more',
  numberOfSheets: (theOf: string) => `number of sheets${theOf}`,
  wholeNumber: 'a whole number',
  numberOfProofs: (theOf: string) => `number of proofs${theOf}`,
  meshVolume: (theOf: string) => `mesh volume${theOf}`,
  moreThan0Cm: 'more than 0 cm³/m²',
  moreThan0G: 'more than 0 g/cm³',
  sumOfPartsIn: (ink: string) => `sum of parts in the mix of ink ${ink}`,
  moreThan0No: 'more than 0, no part below 0',
  isGive: (name: string, found: number, allowed: string) => `The ${name} is ${found}: give ${allowed}.`,
  goodSheets: 'good sheets',
  setUpSheets: 'set-up sheets',
  numberOfIsGive: (name: string, value: number) => `The number of ${name} is ${value}: give a whole number, 0 or more.`,
  shareOfRejectsIs: (rejectPerRun: number) => `The share of rejects is ${rejectPerRun} %: give 0 to less than 100 %.`,
  atRejectsOverRuns: (rejectPerRun: number, runs: number) =>
    `At ${rejectPerRun} % rejects over ${runs} runs no pile of paper is large enough: lower one of them.`,
});
