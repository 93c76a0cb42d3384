import type { say as english } from '../../en/recipe/recipe.ts';
import { counted } from '../../language.ts';

/** What a file is of, as the reader names it. */
const KINDS: Readonly<Record<string, string>> = { recipe: 'Rezept', project: 'Projekt', log: 'Protokoll', plan: 'Plan' };
const kind = (what: string): string => KINDS[what] ?? what;

/** What a field holds, as the schema names it. */
const TYPES: Readonly<Record<string, string>> = {
  string: 'ein Text',
  number: 'eine Zahl',
  boolean: 'true oder false',
  array: 'eine Liste',
  object: 'ein Objekt',
};

// Fractions come with their comma, as text.
const below0 = (mm: number): boolean => String(mm).startsWith('-');
const length = (mm: number): string => String(mm).replace('-', '');

export const say: typeof english = {
  nothing: 'nichts',
  theFile: 'die Datei',
  listOf: (count) => `eine Liste von ${count}`,
  anObject: 'ein Objekt',
  atLeastEntries: (minimum) => `mindestens ${counted(Number(minimum), { one: 'Eintrag', other: 'Einträge' })}`,
  someText: 'ein Text',
  orMore: (minimum) => `${minimum} oder mehr`,
  moreThan: (minimum) => `mehr als ${minimum}`,
  atMostEntries: (maximum) => `höchstens ${counted(Number(maximum), { one: 'Eintrag', other: 'Einträge' })}`,
  atMostSignsLong: (maximum) => `höchstens ${maximum} Zeichen lang`,
  orLess: (maximum) => `${maximum} oder weniger`,
  wholeNumber: 'eine ganze Zahl',
  an: (_vowel, expected) => TYPES[String(expected)] ?? String(expected),
  or: ' oder ',
  isButMustBe: (fileName, cut, found, wanted) =>
    `${fileName}: ${cut} – gefunden: ${found}, nötig: ${wanted}; das Feld berichtigen und die Datei noch einmal lesen.`,
  no: (index) => `Nr. ${index}`,
  ofWall: (number, seed) => `${number} der Wand „${seed}“`,
  ofWallFoundFrom: (number) => `${number} einer Wand, die aus früheren Drucken gefunden wurde`,
  ofPrintsNear: (number, printName) => `${number} der Drucke nahe ${printName}`,
  ofPrintsUnlike: (number, printName) => `${number} der Drucke weg von ${printName}`,
  to: 'zu',
  onWayFrom: (number, pairName) => `${number} auf dem Weg von ${pairName}`,
  and: 'und',
  ofCrossesOf: (number, pairName) => `${number} der Kreuzungen von ${pairName}`,
  ofPrintsFoundBy: (number, pairName) => `${number} der Drucke, nach der Wahl gefunden aus ${pairName}`,
  nearerTo: (printName) => `Näher an ${printName}.`,
  awayFrom: (printName) => `Weg von ${printName}.`,
  onWayFromPairName: (pairName) => `Auf dem Weg von ${pairName}.`,
  crossOf: (pairName) => `Eine Kreuzung von ${pairName}.`,
  foundByYourChoices: (pairName) => `Nach der Wahl gefunden aus ${pairName}.`,
  print: (index) => `Druck ${index}`,
  of: (print, seed) => `${print} von „${seed}“`,
  near: (print, first) => `${print} nahe ${first}`,
  unlike: (print, first) => `${print} weg von ${first}`,
  betweenAnd: (print, first, second) => `${print} zwischen ${first} und ${second}`,
  andFirst: (first, second) => `${first} und ${second}`,
  byChoiceOf: (print, first) => `${print} nach Wahl, aus ${first}`,
  noIndex: (index, word) => `Nr. ${index} ${word}`,
  noOfPrintsFound: (number, index) => `${number} Nr. ${index} der nach der Wahl gefundenen Drucke`,
  fileIsNotText: (what) => `die Datei ist kein Text; eine hier gespeicherte Datei wählen (${kind(what)}).`,
  fileIsEmptyChoose: (what) => `die Datei ist leer; eine hier gespeicherte Datei wählen (${kind(what)}).`,
  fileHasCharactersOver: (text, maxDocumentChars, what) =>
    `die Datei hat ${text} Zeichen, mehr als die ${maxDocumentChars}, die erlaubt sind (${kind(what)}); die Formen vereinfachen.`,
  fileIsNotWhole: (what) =>
    `die Datei ist kein ganzes JSON; vielleicht ist sie abgeschnitten oder von anderer Art: noch einmal ausgeben (${kind(what)}).`,
  fileSoThisIs: (tooMuch, what) => `die Datei ${tooMuch}, ist also kein ${kind(what)}; eine andere Datei wählen.`,
  fieldFormatIsNot: (format, what) =>
    `das Feld "format" ist nicht "${format}", dies ist also kein ${kind(what)}; eine andere Datei wählen.`,
  fieldVersionIsBut: (cut, latest) =>
    `das Feld "version" ist ${cut}, aber dieses Programm liest 1 bis ${latest}; mit einem neueren Programm öffnen oder noch einmal ausgeben.`,
  idIsWhichEntry: (fileName, list, i, cut) =>
    `${fileName}: ${list}[${i}].id ist "${cut}", was ein Eintrag davor schon hat; jedem eine eigene id geben.`,
  namesWhichIsNot: (fileName, where, cut, list) =>
    `${fileName}: ${where} nennt "${cut}", was in der Datei nicht unter ${list} steht; hinzufügen oder etwas anderes nennen.`,
  namesWhichIsItself: (fileName, where, cut) =>
    `${fileName}: ${where} nennt "${cut}", was selbst eine Mischung ist; die Grundfarben nennen, aus denen sie gemischt ist.`,
  recipeHasNoId: 'Ein Rezept hat keine id; jedem einen eigenen Text geben.',
  xAndYFor: 'ein x und ein y für jede Ecke',
  meshWhoseThreadsLeave: 'ein Gewebe, dessen Fäden eine Öffnung lassen: weniger oder dünnere Fäden',
  dateAs202603: 'ein Datum wie 2026-03-14',
  paperThatGivesBack: (least) => `ein Papier, das von etwas Licht mindestens ${least} % zurückgibt`,
  paperWhoseLongSide: (paperProportion) => `ein Papier, dessen lange Seite höchstens das ${paperProportion}-Fache der kurzen misst`,
  withoutCutPrintIs: 'Ohne Schnitt ist der Druck ein einziger Abschnitt; angeben, wo geschnitten wird, in mm von links oder oben.',
  sectionWouldBeMm: (number, roundTo, roundTo2, paperProportion) =>
    `Abschnitt ${number} wäre ${roundTo} × ${roundTo2} mm groß, mehr als ${paperProportion}-mal so lang wie breit; auch in der anderen Richtung schneiden.`,
  sectionOf: (title, number, theOf) => `${title}, Abschnitt ${number} von ${theOf}`,
  turned: (roundTo) => `${roundTo}° gedreht`,
  moved: (right, down) =>
    `${length(right)} mm nach ${below0(right) ? 'links' : 'rechts'} und ${length(down)} mm nach ${below0(down) ? 'oben' : 'unten'} verschoben`,
  sharesWithEachNeighbour: (mm) =>
    `Er teilt ${mm} mm mit jedem Nachbarn: einen der beiden an den Marken beschneiden und über den anderen legen.`,
  toMmFromIts: (x, roundTo, y, roundTo2) => `${x} bis ${roundTo} mm von links und ${y} bis ${roundTo2} mm von oben`,
  cutOf: (cut, words, place) => `Schnitt aus „${cut}“, ${words}: ${place}.`,
  stackNamesWhichIs: (missing, list) => `Der Stapel nennt "${missing}", was in der Schublade nicht unter ${list} steht; zuerst hinzufügen.`,
  recipeNeedsAtLeast: 'Ein Rezept braucht mindestens einen Druckgang; zuerst ein Sieb auf den Stapel legen.',
};
