import { plural, speak } from '../../language.ts';

export const say = speak('engine/log/edition', {
  doesNotPrintThis: (title: string) => `${title} does not print this recipe; choose a visit that does.`,
  andMore: (short: string, short2: number) => `${short} and ${short2} more`,
  noSheetIsLeft: (named: string) => `No sheet is left for ${named}; pull more sheets, or make the edition smaller.`,
  numberedSheetsAreNot: (unfinished: number, number: number) =>
    `${unfinished} numbered ${plural(unfinished, { one: 'sheet is', other: 'sheets are' })} not finished by the log, such as sheet ${number}; log the pulls, or say that the sheet is spoiled.`,
  asMoreWere: (otherwise: number) => `, as ${otherwise} more were`,
  sheetWasPulledDifferently: (number: number, mark: string, otherwise: string) =>
    `Sheet ${number}, ${mark}, was pulled differently from the recipe${otherwise}; keep it out, or call the edition variable (EV).`,
  sheetWasToBe: (number: number, mark: string) =>
    `Sheet ${number} was to be ${mark}, but it is spoiled; the mark went to another sheet, so look at what is pencilled.`,
  impressions: 'impressions',
  artistsProofs: 'artist’s proofs',
  printersProofs: 'printer’s proofs',
  horsCommerce: 'hors commerce',
  numberOfIsGive: (name: string, count: number, least: number, mostSheets: number) =>
    `The number of ${name} is ${count}; give a whole number from ${least} to ${mostSheets}.`,
  numberOfIsMissing: (name: string, least: number, mostSheets: number) =>
    `Give the number of ${name}: a whole number from ${least} to ${mostSheets}.`,
  sheetsAreMoreThan: (sheets: number, mostSheets: number) =>
    `${sheets} sheets are more than the ${mostSheets} that one visit can hold; make the edition smaller.`,
  artistsProofsAreOf: (ap: number, round: number) =>
    `${ap} ${plural(ap, { one: 'artist’s proof is', other: 'artist’s proofs are' })} ${round} % of the edition; 5 to 20 % is usual, so say why if you are asked.`,
  threadsCmThreadM: (threadsPerCm: number, threadUm: number) => `${threadsPerCm} threads/cm, thread ${threadUm} µm`,
});
