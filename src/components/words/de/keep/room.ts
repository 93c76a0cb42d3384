import { counted, plural } from '../../../../engine/words/language.ts';
import type { say as english } from '../../en/keep/room.ts';

export const say: typeof english = {
  savedProject: 'das gespeicherte Projekt',
  twoTabsHadChanged: 'Zwei Tabs hatten dieses Projekt geändert; der andere ging weiter.',
  otherTabWasClosed: 'Der andere Tab wurde geschlossen: dieser zeigt, was dort gespeichert ist, und speichert von nun an.',
  whatOtherTabSaved: (error) =>
    `Was der andere Tab gespeichert hat, konnte nicht gelesen werden (${error}); noch einmal versuchen oder behalten, was hier ist.`,
  thisProjectCouldNot: (error) =>
    `Dieses Projekt konnte nicht gespeichert werden (${error}); noch einmal versuchen oder es als Datei speichern.`,
  shapesRecipes: (shapes, recipes) =>
    `${counted(shapes, { one: 'Form', other: 'Formen' })}, ${counted(recipes, { one: 'Rezept', other: 'Rezepte' })}`,
  project: 'Projekt',
  inBin: 'im Papierkorb',
  copy: 'Kopie',
  partsOfItCould: 'Teile davon konnten nicht gelesen werden',
  putAside: 'beiseitegelegt',
  earlierCopiesCouldNot: (error) => `Frühere Kopien konnten nicht gelesen werden (${error}).`,
  itIsNoLonger: 'es ist nicht mehr da',
  couldNotBeRead: (nameOf, error) => `${nameOf} konnte nicht gelesen werden (${error}).`,
  deleteForGood: (nameOf) => `${nameOf} endgültig löschen?`,
  noneYetFirstIs: 'Noch keine. Die erste entsteht nach einigen Minuten Arbeit.',
  putBackIntoList: (nameOf) => `${nameOf} in die Liste zurücklegen`,
  putBack: 'Zurücklegen',
  open: (nameOf) => `${nameOf} öffnen`,
  open2: 'Öffnen',
  saveAsFile: (nameOf) => `Als Datei speichern: ${nameOf}`,
  saveAsFile2: 'Als Datei speichern',
  delete: (nameOf) => `${nameOf} löschen`,
  delete2: 'Löschen…',
  untitled: 'Ohne Titel',
  twoTabsAreNot: 'Zwei Tabs sind nicht voreinander geschützt: dieses Projekt nur in einem Tab offen halten.',
  screenCannotBeKept: 'Der Bildschirm kann an der Presse nicht wach gehalten werden: das Gerät so einstellen, dass er an bleibt.',
  browserCannotBeAsked:
    'Der Browser kann nicht gebeten werden, das Projekt zu behalten, wenn der Platz knapp wird: es ab und zu als Datei speichern.',
  pageCameOverPlain:
    'Die Seite kam über einfaches http; über https oder auf diesem Gerät selbst bereitgestellt, hat sie das alles. Die README sagt, wie.',
  isOpen: (name) => `${name} ist geöffnet`,
  browserMayAskWhether:
    'Der Browser fragt vielleicht, ob Pullstack seine Daten behalten darf: mit einem Ja bleibt das Projekt auch, wenn der Platz auf diesem Gerät knapp wird.',
  listOfProjectsCould: (error) => `Die Liste der Projekte konnte nicht gelesen werden (${error}).`,
  thatCouldNotBe: (error) => `Das ging mit dem Projekt nicht (${error}).`,
  isInBinWhich: (nameOf) => `${nameOf} ist im Papierkorb, der die letzten 20 behält.`,
  undo: 'Rückgängig',
  lastOpen: (reason, day) => `${reason}, zuletzt offen ${day}`,
  newTitleOf: (nameOf) => `Neuer Titel von ${nameOf}`,
  noOthersYetWhen: 'Noch keine anderen. Wird ein anderes geöffnet oder begonnen, bleibt dieses hier.',
  duplicate: (nameOf) => `${nameOf} verdoppeln`,
  duplicate2: 'Verdoppeln',
  rename: (nameOf) => `${nameOf} umbenennen`,
  rename2: 'Umbenennen',
  putIntoBin: (nameOf) => `${nameOf} in den Papierkorb legen`,
  bin: 'Papierkorb',
  isOpenAgain: (title) => `${title} ist wieder geöffnet`,
  copyTitle: (title) => `${title}, Kopie`,
  onePart: 'Ein Teil',
  parts: (sentences) => `${sentences} Teile`,
  andMore: (more) => ` Und ${more} weitere.`,
  ofSavedProjectCould: (sentences, sentences2, told, more) =>
    `${sentences} des gespeicherten Projekts ${plural(sentences2, { one: 'konnte nicht gelesen werden und wurde', other: 'konnten nicht gelesen werden und wurden' })} beiseitegelegt, nicht gelöscht; der Rest ist geöffnet. ${told}${more} Beiseitegelegtes und frühere Kopien lassen sich aus dem Projektmenü öffnen oder speichern.`,
  projectSavedHereIs:
    'das hier gespeicherte Projekt ist von einer späteren Version dieses Programms und bleibt, wie es ist: mit jener Version öffnen',
  savedProjectBrowserCannot: (section) => `das gespeicherte Projekt: der Browser kann ${section} nicht von seiner Platte lesen.`,
  partsOfSavedProject: (error) =>
    `Teile des gespeicherten Projekts können nicht gelesen werden, und sie konnten nicht beiseitegelegt werden (${error})`,
  openProjectCouldNot: (error) => `Das offene Projekt konnte nicht in die Liste der Projekte gelegt werden (${error}). Trotzdem ersetzen?`,
  visitCouldNotBe: (error) =>
    `Der Besuch konnte in diesem Browser nicht behalten werden (${error}) und wurde deshalb nicht geöffnet; nichts ist geändert.`,
  isInListOf: (title) => `${title} ist in der Liste der Projekte.`,
  bringBack: 'Zurückholen',
  thisProjectIsOpen:
    'Dieses Projekt ist in einem anderen Tab offen, der speichert. Hier wurde etwas geändert, deshalb folgt dieser Tab ihm nicht mehr; was hier geändert wird, ist nicht gespeichert, bis jener Tab geschlossen ist.',
  thisProjectIsOpenIn:
    'Dieses Projekt ist in einem anderen Tab offen, der speichert; was dort geändert wird, ist hier zu sehen. Was hier geändert wird, ist nicht gespeichert, bis jener Tab geschlossen ist.',
  otherTabWasClosedThis:
    'Der andere Tab wurde geschlossen. Dieses Projekt wurde dort und hier geändert: welches geht weiter? Das andere wird beiseitegelegt, nicht gelöscht.',
  savingTakesLongerThan: 'Das Speichern dauert länger als üblich. Diesen Tab offen lassen.',
  notSavedItIs: (reason) =>
    `Nicht gespeichert (${reason}). Alle 10 Sekunden wird es noch einmal versucht; vor dem Schließen dieses Tabs das Projekt als Datei speichern.`,
  nothingIsSavedIn: (reason) =>
    `In diesem Browser wird nichts gespeichert: ${reason}. Vor dem Schließen dieses Tabs das Projekt als Datei speichern; frühere Kopien sind vielleicht im Projektmenü.`,
  saving: 'Speichern',
  keepWhatIsHere: 'Behalten, was hier ist',
  takeWhatOtherTab: 'Nehmen, was der andere Tab gespeichert hat',
  theProject: 'Das Projekt',
  fileCouldNotBe: (error) =>
    `Die Datei konnte nicht ganz gemacht werden (${error}): nur das Projekt ist gespeichert; das Protokoll an der Presse als eigene Datei speichern.`,
  setUps: (cards) => counted(cards, { one: 'Einrichtung', other: 'Einrichtungen' }),
  logEntries: (events) => counted(events, { one: 'Protokolleintrag', other: 'Protokolleinträgen' }),
  and: ' und ',
  with: (with_) => ` mit ${with_}`,
  openOpenProjectAnd: (name, title, what) =>
    `${name} öffnen: ${title}${what}? Das offene Projekt und seine Druckfolge kommen in die Liste der Projekte; Protokolle auf diesem Gerät bleiben.`,
};
