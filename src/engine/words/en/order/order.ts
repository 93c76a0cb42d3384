import { plural, speak } from '../../language.ts';

export const say = speak('engine/order/order', {
  outlinesOfThesePulls:
    'The outlines of these pulls have too many edges side by side to be compared; simplify the largest drawings, or leave pulls out.',
  numberOfPullsIs: (pulls: number, maxGraphPulls: number) =>
    `The number of pulls is ${pulls}; give a whole number from 0 to ${maxGraphPulls}.`,
  overlapsMustBeList: 'The overlaps must be a list of pairs of pulls; give [] when there are none.',
  overlapIs: (index: number, pair: string, what: string) => `Overlap ${index} is [${pair}]; ${what}`,
  giveTwoPullsBy: (pulls: number) => `give two pulls by their numbers, 0 to ${pulls}.`,
  pullCannotOverlapItself: 'a pull cannot overlap itself: leave this pair out.',
  overlapToleranceIsMm: (toleranceMm: number) => `The overlap tolerance is ${toleranceMm} mm; give a length of 0 mm or more.`,
  pullUsesScreenWhich: (index: number, screen: string) =>
    `Pull ${index} uses the screen '${screen}', which is not in the drawer; choose another screen or leave the pull out.`,
  drawerMustHaveLists: 'The drawer must have lists of shapes, screens and inks, and a paper.',
  paperMustHaveWidth: (most: number) => `The paper must have a width and a height in mm, and reflectances of 0 to ${most}.`,
  pullOfStackMust: (index: number) => `Pull ${index} of the stack must have finite numbers as offset, turn and strokes.`,
  deltaEUnderWhichSwap: (minDeltaE: number) => `The ΔE under which a swap is free is ${minDeltaE}; give a number of 0 or more.`,
  moreThanFilmsIn: (maxFilms: number) => `more than ${maxFilms} films in one drawer`,
  pullUsesWhichIs: (what: string, id: string) =>
    `A pull uses the ${what} '${id}', which is not in the drawer; choose another ${what} or leave the pull out.`,
  and: ' and ',
  outlinesOfHaveToo: (names: string, pulls: number) =>
    `The outlines of ${names} have too many corners side by side, or cross too often to be compared; simplify ${plural(pulls, { one: 'it', other: 'one of them' })}.`,
  onScreen: (cut: string, number: string | number) => `“${cut}” on screen ${number}`,
});
