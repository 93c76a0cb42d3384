import { counted } from '../../../../engine/words/language.ts';
import type { say as english } from '../../en/press/room.ts';

export const say: typeof english = {
  sizeOfPaperCould: 'Die Größe des Papiers konnte in diesem Browser nicht behalten werden; sie ist nach dem Neuladen wieder zu wählen.',
  whatCouldNotBe: (sentence) =>
    `${sentence} Was nicht gelesen werden konnte, ist beiseitegelegt: unter „Mehrere Besuche an dieser Presse“ kann es als Datei gespeichert werden.`,
  visitsOnThisPress:
    'Die Besuche an dieser Presse konnten in diesem Browser nicht behalten werden; die Woche drucken oder ihre Dateien nach dem Neuladen wieder hinzufügen.',
  pullOrder: 'Druckfolge',
  lookingForOrder: 'Eine Reihenfolge wird gesucht…',
  byClock: 'Nach der Uhr',
  sheets: 'Bögen',
  whatNext: 'Was nun?',
  outOfDateRecipes: 'Veraltet: Rezepte, Bögen oder Werte haben sich geändert.',
  planAgain: 'Neu planen',
  atPress: 'An der Presse',
  bringInAnotherDevices: 'Protokoll eines anderen Geräts einlesen…',
  planRestAroundWhat: 'Den Rest um das Fertige herum planen',
  ofSetUpsDone: (setUpsBefore, setUpsInAll) =>
    `${setUpsBefore} von ${counted(setUpsInAll, { one: 'Einrichtung', other: 'Einrichtungen' })} fertig`,
  newOrderStartsNew: 'Eine neue Reihenfolge beginnt einen neuen Besuch ohne die Häkchen; was protokolliert ist, bleibt in der Truhe.',
  planRest: 'Den Rest planen',
  findAnew: 'Neu suchen',
  keepThisOrder: 'Diese Reihenfolge behalten',
  logOfVisitCould: (error) =>
    `Das Protokoll des Besuchs konnte nicht gelesen werden (${error}); vor dem ersten Häkchen die Seite neu laden.`,
  planAgain2: 'neu planen',
  beginSetUpsEvening: 'Einrichtungen am Abend davor beginnen',
  takeBetterOrder: 'die bessere Reihenfolge nehmen',
};
