import { counted, plural } from '../../../../engine/words/language.ts';
import type { say as english } from '../../en/press/week.ts';

export const say: typeof english = {
  dateVisits: 'Besuche datieren',
  rename: (title) => `${title} umbenennen`,
  takeOutOfWeek: (title) => `${title} aus der Woche nehmen`,
  wasTakenOutOf: (title) => `${title} ist aus der Woche genommen.`,
  putBack: 'Zurücklegen',
  putBackTitle: (title) => `${title} zurücklegen`,
  noPullOrderIs: (name) => `${name}: es ist keine Druckfolge darin; dort eine suchen und die Datei noch einmal speichern.`,
  isVisitThatIs: (name) => `${name} ist der Besuch, der offen ist; er ist schon in der Woche.`,
  weekHasVisitsTake: (name, mostVisits) => `${name}: die Woche hat ${mostVisits} Besuche; zuerst einen herausnehmen.`,
  wasInWeekBefore: (title, name) => `${title} war schon in der Woche; seine Tage sind jetzt die von ${name}.`,
  addToWeek: (added) => `${added} zur Woche hinzufügen`,
  throwAwayWhatCould: 'wegwerfen, was nicht gelesen werden konnte',
  nameOfInWeek: (title) => `Name von ${title} in der Woche`,
  days: (daysOf) => counted(daysOf, { one: 'Tag', other: 'Tage' }),
  from: 'ab',
  firstDayOf: (title) => `Erster Tag von ${title}`,
  takeOutOfWeekTitle: (title) => `${title} aus der Woche nehmen`,
  takeOut: 'Herausnehmen',
  calendar: 'Kalender',
  partsOfKeptWeek: (aside) =>
    `${counted(aside, { one: 'Teil', other: 'Teile' })} einer behaltenen Woche ${plural(aside, { one: 'konnte', other: 'konnten' })} nicht gelesen werden und ${plural(aside, { one: 'liegt', other: 'liegen' })} beiseite.`,
  saveAsFile: 'Als Datei speichern…',
  throwAway: 'Wegwerfen',
  severalVisitsOnThis: 'Mehrere Besuche an dieser Presse',
  addFilesOfOthers:
    'Die Dateien anderer hinzufügen, die hier drucken, gespeichert mit ihren Druckfolgen: ihre Tage werden in diesem Browser behalten, sonst nichts von ihnen.',
  addFiles: 'Dateien hinzufügen…',
  oneAfterOther: 'Einer nach dem anderen',
  printWeek: 'Woche drucken',
};
