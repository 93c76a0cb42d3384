import { parts } from '../../../../engine/words/language.ts';
import type { say as english } from '../../en/bench/picture.ts';

export const say: typeof english = {
  asItWasOpened: 'Wie geöffnet',
  compareWith: 'Vergleichen mit',
  nothing: 'nichts',
  stackAsItWas: 'dem Stapel, wie geöffnet',
  changed: (from) => `${from}, geändert`,
  pullsAtThisPlace: 'Die Druckgänge an dieser Stelle, der letzte oben',
  paper: (i) => parts`${i}Papier`,
  over: 'über',
  under: 'unter',
  bringWhatIsSelected: (over, at) => `Ausgewähltes ${over ? 'über' : 'unter'} Druckgang ${at} bringen`,
  screen: (at, inkNameOf, number) => parts`${at} ${inkNameOf}, Sieb ${number}`,
  chooseOneOfThem: 'Einen davon wählen, um ihn über oder unter einen anderen zu bringen.',
  overUnderBringPull: (at) => `Über, unter: Druckgang ${at} dorthin bringen.`,
  overUnderBringSelected: (together) => `Über, unter: die ${together} ausgewählten Druckgänge dorthin bringen.`,
  moreColourfulInPrint: 'im Druck farbiger, als dieser Bildschirm zeigen kann',
  close: 'Schließen',
};
