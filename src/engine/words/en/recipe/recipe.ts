import { speak } from '../../language.ts';

export const say = speak('engine/recipe/recipe', {
  theFile: 'the file',
  listOf: (count: number) => `a list of ${count}`,
  anObject: 'an object',
  atLeastEntries: (minimum: unknown) => `at least ${minimum} entries`,
  someText: 'some text',
  orMore: (minimum: unknown) => `${minimum} or more`,
  moreThan: (minimum: unknown) => `more than ${minimum}`,
  atMostEntries: (maximum: unknown) => `at most ${maximum} entries`,
  atMostSignsLong: (maximum: unknown) => `at most ${maximum} signs long`,
  orLess: (maximum: unknown) => `${maximum} or less`,
  wholeNumber: 'a whole number',
  an: (test: boolean, expected: unknown) => `${test ? 'an' : 'a'} ${expected}`,
  or: ' or ',
  isButMustBe: (fileName: string, cut: string, found: string, wanted: string) =>
    `${fileName}: ${cut} is ${found}, but must be ${wanted}; mend that field and read the file again.`,
  no: (index: number) => `no. ${index}`,
  ofWall: (number: string, seed: string) => `${number} of wall “${seed}”`,
  ofWallFoundFrom: (number: string) => `${number} of a wall found from earlier prints`,
  ofPrintsNear: (number: string, printName: string) => `${number} of the prints near ${printName}`,
  ofPrintsUnlike: (number: string, printName: string) => `${number} of the prints unlike ${printName}`,
  to: 'to',
  onWayFrom: (number: string, pairName: string) => `${number} on the way from ${pairName}`,
  and: 'and',
  ofCrossesOf: (number: string, pairName: string) => `${number} of the crosses of ${pairName}`,
  ofPrintsFoundBy: (number: string, pairName: string) => `${number} of the prints found by your choices from ${pairName}`,
  nearerTo: (printName: string) => `Nearer to ${printName}.`,
  awayFrom: (printName: string) => `Away from ${printName}.`,
  onWayFromPairName: (pairName: string) => `On the way from ${pairName}.`,
  crossOf: (pairName: string) => `A cross of ${pairName}.`,
  foundByYourChoices: (pairName: string) => `Found by your choices from ${pairName}.`,
  print: (index: number) => `Print ${index}`,
  of: (print: string, seed: string) => `${print} of “${seed}”`,
  near: (print: string, first: string) => `${print} near ${first}`,
  unlike: (print: string, first: string) => `${print} unlike ${first}`,
  betweenAnd: (print: string, first: string, second: string) => `${print} between ${first} and ${second}`,
  andFirst: (first: string, second: string) => `${first} and ${second}`,
  byChoiceOf: (print: string, first: string) => `${print} by choice, of ${first}`,
  noIndex: (index: number, word: string) => `no. ${index} ${word}`,
  noOfPrintsFound: (number: string, index: number) => `${number} no. ${index} of prints found by your choices`,
  fileIsNotText: (what: string) => `the file is not text; choose a ${what} file that was saved here.`,
  fileIsEmptyChoose: (what: string) => `the file is empty; choose a ${what} file that was saved here.`,
  fileHasCharactersOver: (text: number, maxDocumentChars: number, what: string) =>
    `the file has ${text} characters, over the ${maxDocumentChars} that a ${what} may have; simplify its shapes.`,
  fileIsNotWhole: (what: string) => `the file is not whole JSON; it may be cut off or of another kind, so export the ${what} again.`,
  fileSoThisIs: (tooMuch: string, what: string) => `the file ${tooMuch}, so this is no ${what}; choose another file.`,
  fieldFormatIsNot: (format: string, what: string) => `the field "format" is not "${format}", so this is no ${what}; choose another file.`,
  fieldVersionIsBut: (cut: string, latest: number) =>
    `the field "version" is ${cut}, but this program reads 1 to ${latest}; open it with a newer program or export it again.`,
  idIsWhichEntry: (fileName: string, list: string, i: number, cut: string) =>
    `${fileName}: ${list}[${i}].id is "${cut}", which an entry before it already has; give each its own id.`,
  namesWhichIsNot: (fileName: string, where: string, cut: string, list: string) =>
    `${fileName}: ${where} names "${cut}", which is not among the ${list} of the file; add it or name another.`,
  namesWhichIsItself: (fileName: string, where: string, cut: string) =>
    `${fileName}: ${where} names "${cut}", which is itself a mix; name the stock inks that it is mixed from.`,
  recipeHasNoId: 'A recipe has no id; give each one a text of its own.',
  xAndYFor: 'an x and a y for each corner',
  meshWhoseThreadsLeave: 'a mesh whose threads leave an opening: fewer or thinner threads',
  dateAs202603: 'a date as 2026-03-14',
  paperThatGivesBack: (least: number) => `a paper that gives back at least ${least} % of some light`,
  paperWhoseLongSide: (paperProportion: number) => `a paper whose long side is at most ${paperProportion} times the short one`,
  withoutCutPrintIs: 'Without a cut the print is one section; say where to cut it, in mm from its left or top.',
  sectionWouldBeMm: (number: number, roundTo: number, roundTo2: number, paperProportion: number) =>
    `Section ${number} would be ${roundTo} × ${roundTo2} mm, more than ${paperProportion} times as long as wide; cut it the other way too.`,
  sectionOf: (title: string, number: number, theOf: number) => `${title}, section ${number} of ${theOf}`,
  turned: (roundTo: number) => `turned ${roundTo}°`,
  moved: (right: number, down: number) =>
    `moved ${Math.abs(right)} mm ${right < 0 ? 'left' : 'right'} and ${Math.abs(down)} mm ${down < 0 ? 'up' : 'down'}`,
  sharesWithEachNeighbour: (mm: number) =>
    `It shares ${mm} mm with each neighbour: trim one of the two at the marks and lay it over the other.`,
  toMmFromIts: (x: number, roundTo: number, y: number, roundTo2: number) =>
    `${x} to ${roundTo} mm from its left and ${y} to ${roundTo2} mm from its top`,
  cutOf: (cut: string, words: string, place: string) => `Cut of “${cut}”, ${words}: ${place}.`,
  stackNamesWhichIs: (missing: string, list: string) =>
    `The stack names "${missing}", which is not among the ${list} of the drawer; add it first.`,
  recipeNeedsAtLeast: 'A recipe needs at least one pull; add a screen to the stack first.',
});
