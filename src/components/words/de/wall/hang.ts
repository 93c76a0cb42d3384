import { counted, parts } from '../../../../engine/words/language.ts';
import type { say as english } from '../../en/wall/hang.ts';

export const say: typeof english = {
  pinned: 'angeheftet',
  otherWall: 'andere Wand',
  inOrderFound: 'wie gefunden',
  asIChoose: 'wie ich wähle',
  alikeSideBySide: 'Ähnliches beieinander',
  byTwoMeasures: 'nach zwei Maßen',
  byRelatedPrints: 'nach verwandten Drucken',
  byNumberOfPulls: 'nach Zahl der Druckgänge',
  byNumberOfInks: 'nach Zahl der Farben',
  across: 'Waagrecht',
  upwards: 'Aufwärts',
  arrange: 'Anordnen',
  arrangePrints: 'Die Drucke anordnen',
  spacing: 'Abstände',
  evenlyByRank: 'gleich, nach Rang',
  byValue: 'nach Wert',
  pulls: (value) => counted(value, { one: 'Druckgang', other: 'Druckgänge' }),
  inks: (value) => counted(value, { one: 'Farbe', other: 'Farben' }),
  to: (measure, measure2) => `${measure} bis ${measure2}`,
  least: (label) => `${label}, mindestens`,
  most: (label) => `${label}, höchstens`,
  allHang: (count) => parts`Alle ${count} hängen`,
  ofHang: (shown, count) => parts`${shown} von ${count} hängen`,
  showAll: 'Alle zeigen',
};
