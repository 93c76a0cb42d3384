import { counted, parts, plural } from '../../../../engine/words/language.ts';
import type { say as english } from '../../en/inks/target.ts';

export const say: typeof english = {
  pdfCouldNotBe: (error) => `Das PDF konnte nicht gemacht werden (${error}); noch einmal versuchen.`,
  hasNoSampleThat: (fileName, few) =>
    `${fileName} hat keine Probe, die nach der Nummer eines Felds benannt ist, 1 bis ${few}; die Proben so benennen oder sie eintippen.`,
  notEverySquareTells:
    'Nicht jedes Feld sagt etwas Neues. Das ist jede Farbe allein, und dann die Überdrucke, die am meisten von dem klären, was noch offen ist: wie Farben decken, wie dick eine Schicht auf einer Schicht ist, was die Oberfläche tut.',
  squares: 'Felder',
  pullThese: (count) => `Diese ${count} drucken`,
  putAtLeastTwo: 'Mindestens zwei Farben auf die Testform nehmen.',
  makingPDF: 'PDF wird gemacht…',
  saveAsPDF: 'Als PDF speichern',
  chooseOtherSquares: 'Andere Felder wählen',
  ofSquaresRead: (read, few) => `${read} von ${counted(few, { one: 'Feld', other: 'Feldern' })} gelesen`,
  lAndBD50: 'L, a und b (D50), oder ein Hexwert; Eingabe geht weiter zum nächsten Feld.',
  orReadFileWhose: 'Oder eine Datei lesen, deren Proben nach den Nummern der Felder heißen:',
  square: (name) => `Feld ${name}`,
  asInksAreThought: 'Wie die Farben es voraussichtlich geben, und wie gemessen',
  inksTrappingAndSurface: (inks) =>
    `${counted(inks, { one: 'Farbe', other: 'Farben' })}, Farbannahme und Oberfläche sind, wie die Felder sie zeigten; Rückgängig nimmt es zurück.`,
  fitting: 'Wird angeglichen',
  fitInksTrappingAnd: 'Farben, Farbannahme und Oberfläche angleichen',
  toSquaresThatWere: (squares) =>
    `an ${counted(squares, { one: 'Feld', other: 'Felder' })}, ${plural(squares, { one: 'das gelesen ist', other: 'die gelesen sind' })}`,
  noInkWasChanged: 'Keine Farbe wurde geändert.',
  whatSquaresTell: 'Was die Felder sagen',
  eachOverprintLeftOut: (looDeltaE) => `Jeder der Reihe nach weggelassene Überdruck wird verfehlt um ΔE ${looDeltaE}`,
  eachOverprintLeftOutIn: (looDeltaE) => parts`${looDeltaE}: das ist von Drucken zu erwarten.`,
  noOverprintCouldBe:
    'Kein Überdruck konnte weggelassen werden, deshalb ist nicht bekannt, was von Drucken zu erwarten ist; mehr Felder lesen.',
  inksTrappingAndSurfaceAs: (nowDeltaE, meanDeltaE) =>
    `Farben, Farbannahme und Oberfläche, wie sie jetzt sind, verfehlen die Felder im Mittel um ΔE ${nowDeltaE}, die angeglichenen um ${meanDeltaE}.`,
  filmOnFilmIs: 'Eine Schicht auf einer Schicht ist',
  asThick: (factor) => `${factor} % so dick`,
  thrownBackInsideOutside: 'Zurückgeworfen innen, außen',
  missedMost: 'Am meisten verfehlt',
  everySquareWorstFirst: 'Jedes Feld, das schlechteste zuerst',
  useInksTrappingAnd: 'Farben, Farbannahme und Oberfläche übernehmen',
  inksPaperOrReadings: 'Farben, Papier oder Messwerte haben sich seither geändert; noch einmal angleichen.',
  changesTheyCountAs: (inks) => `Ändert ${inks}: sie gelten von da an als gemessen.`,
  square2: 'Feld',
  deltaEFitted: 'ΔE angeglichen',
  deltaELeftOut: 'ΔE weggelassen',
  alone: (name) => `${name} allein`,
  over: (name, name2) => `${name} über ${name2}`,
  hasNoSampleThatIs: (fileName, squares) =>
    `${fileName} hat keine Probe, die nach der Nummer eines Felds benannt ist, 1 bis ${squares}; die Proben so benennen oder sie eintippen.`,
  lAndBD50Or:
    'L, a und b (D50), oder ein Hexwert; Eingabe geht weiter zum nächsten Feld. Eine Liste von Zeilen kann in ein Eingabefeld eingefügt werden.',
  orFromPhotoWhen: 'Oder aus einem Foto, wenn kein Messgerät da ist:',
  pickSquaresFromPhoto: 'Felder aus einem Foto aufnehmen',
  everySquareIsTaken:
    'Jedes Feld gilt als je ein Rakelzug jeder Farbe durch das Gewebe, auf dem ihr Farbton gefunden wurde. Felder, die durch ein anderes Gewebe oder zweimal gedruckt sind, machen die Farben zu stark oder zu schwach.',
  ofSquaresMeasured: (measured, squares) => `${measured} von ${counted(squares, { one: 'Feld', other: 'Feldern' })} gemessen`,
  first: (name) => `${name} zuerst`,
  of: (done, list) => `${done} von ${list}`,
  alone2: 'allein',
  overIt: (name) => `${name} darüber`,
  targetOfInksWith: (inks, squares) => `Testform mit ${inks} Farben und ${squares} nummerierten Feldern`,
  overprintTarget: 'Testform der Überdrucke:',
  paperOfProject: 'Papier des Projekts',
  pullThisByHand: (name) =>
    `Von Hand drucken; jedes Feld messen oder aufnehmen. Je ein Rakelzug, auf: ${name}. Die Zeilen werden zuerst gedruckt, die Spalten darüber.`,
  squaresMmMmApart: (sideMm, pitchMm) =>
    `Felder von ${sideMm} mm, ${pitchMm} mm von Feld zu Feld, wenn mit 100 % ausgegeben. Die kleinen Farbmuster sind, was die Farben voraussichtlich geben, so wie dieser Drucker es zeigen kann.`,
  overIt2: 'darüber →',
  firstDown: 'zuerst ↓',
  barePaper: 'Blankes Papier',
  blackPatch: 'Schwarzes Messfeld',
  wholeTargetLitEvenly:
    'Die ganze Testform, gleichmäßig beleuchtet, ohne Glanz, mit blankem Papier und etwas Schwarzem im Bild: die schwarze Hälfte einer Kontrastkarte oder schwarzer Karton.',
  firstBarePaperAnd:
    'Zuerst das blanke Papier und das Schwarz, die den Maßstab setzen: das Papier wie in diesem Projekt, das Schwarz als 3 % des Lichts. Eine Kamera hat ihre eigene Vorstellung von Bunttönen, diesen also weniger trauen als einem Messgerät.',
  pullingIt: 'Das Drucken',
  makeTwoStencilsOne:
    'Zwei Schablonen machen: einen Balken so lang wie eine Zeile, einen so lang wie eine Spalte, so breit wie ein Feld; oder die Balken auf einem offenen Sieb abkleben.',
  rowsPullEachInk:
    'Zeilen: jede Farbe als einen Balken entlang ihrer Zeile drucken, vom Feld „allein“ bis zum Ende. Ein Rakelzug, auf dem Gewebe in der Liste.',
  letEveryRowDry: 'Jede Zeile trocknen lassen; die Zeiten stehen in der Liste.',
  columnsPullEachInk: 'Spalten: jede Farbe als einen Balken ihre Spalte hinab drucken, über alle Zeilen, auf dieselbe Weise.',
  whenAllIsDry:
    'Wenn alles trocken ist, jedes Feld in der Mitte messen: spektral, auf weißer Unterlage; oder L, a, b (D50, 2°). Die Proben nach den Nummern der Felder benennen.',
  paper: 'Papier:',
  date: 'Datum',
  printer: 'Gedruckt von',
  instrumentLight: 'Messgerät, Licht',
  whatYouMeasure: 'Was gemessen wird',
  ink: 'Farbe',
  mesh: 'Gewebe',
  strokes: 'Rakelzüge',
  dry: 'Trocken',
  batchLetdown: 'Charge, Verschnitt',
  squeegeeAngle: 'Rakel, Winkel',
  notes: 'Notizen',
  cmMOrYours: (threadsPerCm, threadUm, noMesh) => `${threadsPerCm}/cm, ${threadUm} µm${noMesh ? ', oder das eigene' : ''}`,
  min: (dryMinutes) => `${dryMinutes} min`,
  firstThen: (name) => `${name} zuerst, dann`,
  nothing: 'nichts',
};
