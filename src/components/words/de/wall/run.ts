import { counted } from '../../../../engine/words/language.ts';
import type { say as english } from '../../en/wall/run.ts';

export const say: typeof english = {
  printsNearNearestFirst: (name) => `Drucke nahe an ${name}, der nächste zuerst.`,
  printsUnlike: (name) => `Drucke, anders als ${name}.`,
  to: 'zu',
  wayFrom: (pair) => `Der Weg von ${pair}.`,
  crossedWith: 'gekreuzt mit',
  foundByWhatYou: 'nach der eigenen Wahl gefunden',
  foundByWhatYouNever: 'nach dem gefunden, was nie gewählt wird',
  asUnlikeEachOther: 'einander so unähnlich wie möglich',
  isHereBecauseYour: (open) => `; ${open} hängt hier, weil die Wahlen wenig darüber sagen`,
  printsFromPrintsOf: (by, prints, open) => `Drucke, ${by}, aus ${counted(prints, { one: 'Druck', other: 'Drucken' })} der Wand${open}.`,
  of: (count) => `von ${count}`,
  foldSettings: 'Einstellungen einklappen',
  settings: 'Einstellungen',
  stop: 'Anhalten',
  findMore: (more) => `${more} weitere`,
  findMore2: 'Weitere',
  findPrints: 'Drucke suchen',
  backToAll: 'Zurück zu allen',
  printsFound: 'Gefundene Drucke',
  stackOnBench: 'dem Stapel auf der Werkbank',
  inStepsAtMost: 'In Schritten, höchstens',
  tryAgain: 'Noch einmal versuchen',
  theseSettingsCannotBe: 'Diese Einstellungen sind nicht zu erfüllen; die Wand bleibt, wie sie war.',
  showWhere: 'Zeigen, wo',
  thesePrintsCameFrom:
    'Diese Drucke kommen aus dem Stapel, der zuvor auf der Werkbank war. Drucke suchen geht von dem aus, der jetzt dort ist.',
  stopped: 'Angehalten.',
  firstPrintIsChosen: (drawn, of) => `Der erste Druck wird aus ${of} gewählt; bisher gezeichnet: ${drawn}.`,
  stackOnBenchLast:
    'Der Stapel auf der Werkbank, der letzte Druckgang oben. Von einem Druckgang sagen, was bleiben muss, und jeder Druck hält sich daran.',
  benchIsEmptySo: 'Die Werkbank ist leer, also muss nichts bleiben.',
  benchIsEmptySoNothing: (most, length) =>
    `Die Werkbank ist leer, also muss nichts bleiben. Jeder Druck besteht aus bis zu ${most} der ${length} Siebe in der Schublade.`,
  putScreenOnBench: 'Das Sieb auf die Werkbank legen',
  putAllOnBench: (length) => `Alle ${length} auf die Werkbank legen`,
  wallHangsPrintsMade: 'Die Wand hängt Drucke aus den eigenen Formen. Noch gibt es keine: zuerst welche in die Schublade legen.',
  noPrintCameOf: 'Aus diesen Einstellungen kam kein Druck. Mehr ändern lassen oder einen Druckgang bewegen lassen, der bleiben muss.',
  noPrintCameOfThese: 'Aus diesen Einstellungen kam kein Druck, da sich einige widersprechen.',
};
