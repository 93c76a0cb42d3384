import { speak } from '../../../../engine/words/language.ts';

export const say = speak('inks/paper', {
  paperHasCurveOf: (sample: string) => `The paper has the curve of ${sample}.`,
  papersToStartFrom: 'Papers to start from',
  paper: (name: string) => `${name} paper`,
  inventedToStartFrom: 'Invented, to start from; measure your own to be sure.',
  itsOwnColour: 'Its own colour',
  colourOfPaper: 'Colour of the paper',
  takeNearest: 'Take the nearest',
  measuredCurve: 'A measured curve',
  sampleOfBarePaper: 'Sample of the bare paper',
  useIt: 'Use it',
  labAloneItsCurve: 'A Lab alone: its curve is guessed.',
  nameOfPaper: 'Name of the paper',
  sheet: 'Sheet',
  width: 'Width',
  height: 'Height',
  printablePart: 'Printable part',
  fromLeft: 'From left',
  fromTop: 'From top',
  notSavedYet: (message: string) => `${message} Not saved yet.`,
  paperStaysAsIt: (message: string) => `${message} The paper stays as it was.`,
});
