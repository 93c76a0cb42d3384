import type { say as english } from '../../en/bench/many.ts';

export const say: typeof english = {
  moveOnSheet: 'Auf dem Bogen bewegen',
  furtherRight: 'Weiter rechts',
  furtherDown: 'Weiter unten',
  moveThem: 'Bewegen',
  pullsOf: (places, pulls) => `Druckgänge ${places} von ${pulls}`,
  pullsSelected: (ids) => `${ids} Druckgänge ausgewählt`,
  onlyOne: 'Nur einer',
  strokesNowDifferent: 'Rakelzüge, jetzt verschieden',
  strokes: 'Rakelzüge',
  earlier: 'Früher',
  later: 'Später',
  firstOfThemTo: 'Der erste auf Platz',
  remove: (ids) => `${ids} entfernen`,
};
