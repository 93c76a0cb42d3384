import { speak } from '../../language.ts';

export const say = speak('engine/explore/measure', {
  covered: 'Covered',
  colours: 'Colours',
  largestColour: 'Largest colour',
  overprintColours: 'Overprint colours',
  coloursWhereInksOverlap: 'Colours where inks overlap that are no ink’s own, as a share of the sheet.',
  darkest: 'Darkest',
  lightest: 'Lightest',
  lightToDark: 'Light to dark',
  contrastOfEdges: 'Contrast of edges',
  lengthOfEdgesDeltaE00: 'Length of edges × ΔE00 across them ÷ area of the sheet.',
  offBalance: 'Off balance',
  pulls: 'Pulls',
  screens: 'Screens',
  inks: 'Inks',
  setUps: 'Set-ups',
  oneScreenOnPress: 'One screen on the press in one ink at one offset is a set-up.',
});
