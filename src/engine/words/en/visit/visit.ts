import { speak } from '../../language.ts';

export const say = speak('engine/visit/visit', {
  and: (left: string, left2: string | number) => `${left} and ${left2}`,
  without: (title: string, names: string) => `${title}, without ${names}`,
  nothingIsToBe: 'Nothing is to be printed yet; choose a recipe and how many sheets of it.',
  numberOfSheetsOvers: (title: string) => `A number of sheets, overs or proofs of ${title} is not whole; give whole sheets.`,
  sheetsAreMoreThan: (count: number, mostSheets: number) =>
    `${count} sheets are more than the ${mostSheets} that one visit can hold; split them over visits.`,
});
