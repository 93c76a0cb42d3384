import { speak } from '../../../../engine/words/language.ts';

export const say = speak('inks/room', {
  paper: 'Paper',
  overEachOther: 'Over each other',
  thePaper: 'the paper',
  oneStrokeOfEach: (name: string) =>
    `One stroke of each on ${name}. Where a square and its mirror across the diagonal differ, the order of the two matters.`,
  allInks: '← All inks',
  inks: 'Inks',
  matchColour: 'Match a colour',
  addInk: 'Add an ink',
  noInksYetAdd: 'No inks yet: add one from its colour over white and over black.',
  strokes: 'Strokes',
  eachFurtherStrokeAdds: 'Each further stroke adds, of the first film',
  inTheorySecondStroke:
    'In theory a second stroke doubles the film; in practice it is about 1.2 to 1.6 times (from memory): it adds 40 % by default.',
  newInk: 'A new ink',
  ink: (name: string) => `Ink ${name}`,
  hereAndOnWall: 'Here and on the Wall and the Bench. Off: colours as an instrument measures them.',
  showPaperAsWhite: 'Show paper as white',
  stockInks: 'Stock inks',
  weighedIntoMixes: 'weighed into mixes',
  base: 'base',
  mix: (basisShort: string) => `mix, ${basisShort}`,
});
