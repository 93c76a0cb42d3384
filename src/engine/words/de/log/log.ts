import type { say as english } from '../../en/log/log.ts';

export const say: typeof english = {
  sheetHasNoPull: (number) => `Auf Bogen ${number} ist noch kein Druckgang; ein Rezept braucht mindestens einen.`,
  sheetIsInLog: (sheet) =>
    `Bogen ${sheet} steht im Protokoll, doch der Besuch hat keinen Bogen dieser Nummer; die Nummer auf der Rückseite ansehen und den Eintrag rückgängig machen.`,
  sheetEntryIsFrom: (sheet) =>
    `Bogen ${sheet}: ein Eintrag stammt aus der Zeit vor dem Besuch, also gehen die Uhren der Geräte verschieden; sie stellen und dem Bogen trauen, nicht den Zeiten.`,
  testSheetIsSaid: (sheet, cut, theOf) =>
    `Testbogen ${sheet} soll mit „${cut}“ von Bogen ${theOf} gedruckt sein, der keinen solchen Druckgang hat; den Eintrag rückgängig machen.`,
  sheetIsSaidTo: (sheet, by, cut) =>
    `Bogen ${sheet} soll durch Bogen ${by} ersetzt sein, der nicht dieselben Druckgänge trägt wie ${cut}; den Eintrag rückgängig machen und einen der Zuschussbögen wählen.`,
  sheetWasPulledAfter: (sheet) => `Bogen ${sheet} ist gedruckt, nachdem er verdruckt war; eines von beiden rückgängig machen.`,
  sheetIsSaidToBe: (sheet, cut) =>
    `Bogen ${sheet} soll in ${cut} gedruckt sein, doch kein Rezept dieses Besuchs hat diese Farbe; war es ein anderer Topf, den Eintrag rückgängig machen und die Farbe wählen, die im Sieb war.`,
  sheetIsSaidToBePulled: (sheet, cut, cut2) =>
    `Bogen ${sheet} soll mit „${cut}“ gedruckt sein, doch ${cut2} hat keinen solchen Druckgang, also war kein Sieb dafür da; den Eintrag rückgängig machen.`,
  sheetPullOfIs: (sheet, at, cut) =>
    `Bogen ${sheet}: Druckgang ${at} von ${cut} ist zweimal eingetragen; den Bogen ansehen und einen rückgängig machen oder ihn als zusätzlichen Druckgang eintragen.`,
  sheetIsLoggedAfter: (number, pull, pull2, cut) =>
    `Bogen ${number}: ${pull} ist nach ${pull2} eingetragen, liegt in ${cut} aber darunter, und an der Überlappung ist das zu sehen; sieht der Bogen so aus, ihn lassen, wie er ist, sonst den Eintrag rückgängig machen.`,
  sheetSomethingIsUndone: (sheet) =>
    `Bogen ${sheet}: etwas ist rückgängig gemacht, das nicht im Protokoll steht; das Protokoll des Geräts hereinholen, das es geschrieben hat.`,
  sheetWhatIsUndone: (sheet, sheet2) =>
    `Bogen ${sheet}: was rückgängig gemacht ist, geschah mit Bogen ${sheet2}; beide Bögen ansehen und bei jedem vermerken, was darauf ist.`,
  screenIn: (number, name) => `Sieb ${number} in ${name}`,
  event: (name, cut) => `${name}, Eintrag ${cut}`,
  visitWhoseSheetsName: 'ein Besuch, dessen Bögen seine Rezepte nennen',
  thisLogIsOf: (cut) => `Dieses Protokoll gehört zu einem anderen Besuch, ${cut}; jenen Besuch öffnen, um es hereinzuholen.`,
  sheetTwoEntriesHave: (sheet) =>
    `Bogen ${sheet}: zwei Einträge haben einen Namen, sagen aber Verschiedenes; beide sind behalten, also den falschen rückgängig machen.`,
  nothingIsLeftTo: 'Nichts ist mehr zu drucken: jeder Bogen ist fertig oder verdruckt.',
  testSheet: 'Testbogen',
};
