import { speak } from '../../language.ts';

export const say = speak('engine/shapes/draw', {
  lineHasMoreThan: 'The line has more than 10,000 points; cut in two goes.',
  drawLineOfTwo: 'Draw a line of two points or more across the shape.',
  lineDoesNotCut: 'The line does not cut the shape apart: draw it right across, from outside one edge to outside another.',
  shapeWouldComeTo: (mostPieces: number) => `The shape would come to over ${mostPieces} pieces; draw a simpler line.`,
  piece: (name: string, i: number) => `${name}, piece ${i}`,
  nothingIsLeftAfter: 'Nothing is left after the cut: the other shape covers all of it; move it aside.',
  twoShapesHaveNothing: 'The two shapes have nothing in common where they lie; move one over the other.',
  nothingIsLeftShape: 'Nothing is left: the shape is narrower than twice what it shrinks by; shrink it by less.',
  nothingIsLeftOf: 'Nothing is left of the shape; choose other numbers.',
  lineHasMoreThan10: 'The line has more than 10,000 points; draw it in shorter pieces and join them.',
  shapeNeedsAtLeast: 'A shape needs at least three points that lie apart; set more, or draw a longer line.',
  shapeCanBeThere: (mostTimes: number) => `A shape can be there 1 to ${mostTimes} times; give a whole number between.`,
  outlineEnclosesNothingSet: 'The outline encloses nothing; set a point beside the line through the others.',
  outlineHasTooMany: 'The outline has too many small turns; let it stray farther from the pen, or draw it in pieces and join them.',
});
