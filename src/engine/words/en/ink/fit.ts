import { speak } from '../../language.ts';

export const say = speak('engine/ink/fit', {
  noSquareIsMeasured: 'No square is measured yet; enter at least one.',
  square: (i: number) => `Square ${i}`,
  isOfInkWhich: (unknown: string) => `is of ink “${unknown}”, which is not in the list.`,
  needsReflectancesFrom0: (bands: number, mostReflectance: number) =>
    `needs ${bands} reflectances from 0 to ${mostReflectance}; measure it again.`,
  hasNeitherCurveNor: 'has neither a curve nor a colour; enter one or leave it out.',
  needsLFrom0: 'needs L from 0 to 100, a and b.',
  squaresContradictEachOther: (nameOf: string) =>
    `The squares contradict each other, ${nameOf} the most; look whether films are listed first down first, and read them again.`,
  onAnotherFilmFilm: (trapping: string, least: number, most: number) =>
    `On another film a film would be ${trapping} times as thick, and only ${least} to ${most} happens on a press; look whether films are listed first down first.`,
  surfaceWouldThrowBack: (k2: string, least: number, most: number) =>
    `The surface would throw back ${k2} of the light inside, and only ${least} to ${most} happens on prints; look whether films are listed first down first, and read the darkest squares again.`,
  isInNoSquare: (name: string, names: string) => `“${name}” is in no square; the films are ${names}.`,
  squareIsOfInk: (id: string) => `A square is of ink “${id}”, which is not in the list; choose another or leave the square out.`,
  oneSquareCannotTell: 'One square cannot tell films apart; give at least two, of two inks or more.',
  allSquaresAreOf: (name: string) => `All squares are of one ink, ${name}; add squares of another ink.`,
  squaresAndAreBoth: (other: number, i: number, nameOf: string) =>
    `Squares ${other} and ${i} are both ${nameOf} but differ too much; read them again and leave one out.`,
  thePaper: 'The paper',
  needsBandsOfReflectance: (where: string, bands: number) =>
    `${where} needs ${bands} bands of reflectance from 380 to 730 nm, 0 to 1; read it again.`,
  needsColourOfThree: (where: string) => `${where} needs a colour of three numbers, L, a and b; read it again.`,
  hasNeitherColourNor: (where: string) => `${where} has neither a colour nor a curve; read it, or leave it out.`,
  squareNamesNoFilms: (index: number) =>
    `Square ${index} names no films; list them first down first, and give the bare paper as the paper.`,
});
