import type { say as english } from '../../en/explore/measure.ts';

export const say: typeof english = {
  covered: 'Bedeckt',
  colours: 'Farbtöne',
  largestColour: 'Größter Farbton',
  overprintColours: 'Überdruckfarben',
  coloursWhereInksOverlap: 'Farbtöne, wo sich Farben überlappen, die keine Farbe allein hat, als Anteil des Bogens.',
  darkest: 'Dunkelster',
  lightest: 'Hellster',
  lightToDark: 'Hell bis dunkel',
  contrastOfEdges: 'Kantenkontrast',
  lengthOfEdgesDeltaE00: 'Länge der Kanten × ΔE00 über sie hinweg ÷ Fläche des Bogens.',
  offBalance: 'Aus dem Gleichgewicht',
  pulls: 'Druckgänge',
  screens: 'Siebe',
  inks: 'Farben',
  setUps: 'Einrichtungen',
  oneScreenOnPress: 'Ein Sieb an der Presse in einer Farbe mit einem Versatz ist eine Einrichtung.',
};
