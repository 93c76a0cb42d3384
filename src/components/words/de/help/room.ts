import { parts } from '../../../../engine/words/language.ts';
import type { say as english } from '../../en/help/room.ts';

export const say: typeof english = {
  firstSteps: 'Erste Schritte',
  firstStepsOf: (step, firstSteps) => `Erste Schritte, ${step} von ${firstSteps}`,
  nextThe: (label) => parts`Als Nächstes: die ${label}.`,
  done: 'Fertig',
  nextStep: 'Nächster Schritt',
  closeFirstSteps: 'Die ersten Schritte schließen',
  thisRoom: 'Dieser Raum',
  keys: 'Tasten',
  words: 'Wörter',
  noWordHasThat: 'Kein Wort hat das in sich oder in seiner Bedeutung.',
  ofWordsThoseWith: (count, glossary) =>
    `${count} von ${glossary} Wörtern; die mit einem Punkt sind eigene, die anderen sind aus dem Handwerk oder einer Norm.`,
  lookForWord: 'Ein Wort suchen',
  wordOfOurs: 'ein eigenes Wort',
  help: (label) => `Hilfe: ${label}`,
  partOfHelp: 'Teil der Hilfe',
  walkAlongPrintsWith: 'Mit den Pfeiltasten oder durch Tippen an den Drucken entlanggehen und bei einem, der gefällt, *Behalten* drücken.',
  hereIsOnePrint:
    'Hier ist ein Druck, Druckgang um Druckgang: einen Stand des Streifens vor einen anderen ziehen und sehen, was sich ändert.',
  givePrintThatYou: 'Dem behaltenen Druck Bögen geben, dann *Druckfolge suchen* drücken.',
  putFourPullsInto: 'Vier Druckgänge in eine andere Reihenfolge bringen und sehen, welche Reihenfolgen dasselbe drucken.',
  bringInDrawingsOf: 'Eigene Zeichnungen einlesen mit *SVG wählen…*; der Knopf mit dem Namen des Projekts beginnt ein leeres Projekt.',
};
