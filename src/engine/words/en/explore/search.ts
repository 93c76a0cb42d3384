import { plural, speak } from '../../language.ts';

export const say = speak('engine/explore/search', {
  two: 'two',
  three: 'three',
  four: 'four',
  five: 'five',
  six: 'six',
  seven: 'seven',
  eight: 'eight',
  nine: 'nine',
  ten: 'ten',
  noPrintWasFound: 'No print was found that keeps this',
  noPrintWasFoundThat: (numbers: string) => `No print was found that keeps these ${numbers} together`,
  dropItOrLet: 'Drop it, or let more change.',
  dropOneOfThem: 'Drop one of them, or let more change.',
  prints: (found: number) => plural(found, { one: 'print', other: 'prints' }),
  new: (pictures: string) => `new ${pictures}`,
  different: (pictures: string) => `different ${pictures}`,
  noPrintKeepsWhat: 'No print keeps what must stay and the limits; loosen one of them, or let more change.',
  letMoreChangeLoosen: 'let more change, loosen what must stay or a limit, or lower the ΔE below which prints count as the same',
  ordersOfThesePulls: (found: number, what: string, asked: number, mend: string) =>
    `The orders of these pulls make only ${found} ${what}, and ${asked} were asked for; ${mend}.`,
  onlyOfCameOut: (found: number, what: string, asked: number, mend: string) =>
    `Only ${found} ${what} of ${asked} came out of what may change; ${mend}.`,
  projectNeedsDrawerOf:
    'A project needs a drawer of shapes, screens, inks and paper, a bench of pulls and settings to explore with; read one with readProject.',
  nameOfWallIts: (seed: string) => `The name of the wall (its seed) is ${seed}; give a text or a number.`,
});
