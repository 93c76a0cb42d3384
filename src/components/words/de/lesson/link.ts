import { counted } from '../../../../engine/words/language.ts';
import type { say as english } from '../../en/lesson/link.ts';

export const say: typeof english = {
  copied: 'Kopiert.',
  thisBrowserDoesNot: 'Dieser Browser lässt es nicht kopieren: es ist markiert, von Hand kopieren.',
  thisLessonHasToo: 'Diese Lektion hat zu viele Umrisse für einen Code, den ein Telefon lesen kann: stattdessen den Link geben.',
  andItsOrdersPrint: (here) => `, und ihre Reihenfolgen drucken ${counted(here, { one: 'Bild', other: 'Bilder' })} wie hier`,
  itsOrdersPrintPictures: (there, here) =>
    `; ihre Reihenfolgen drucken ${counted(there, { one: 'Bild', other: 'Bilder' })}, und hier ${here}`,
  inCodeOutlinesAre: (toleranceMm, count) => `Im Code sind Umrisse auf ${toleranceMm} mm genau gezeichnet${count}.`,
  codeOfThisLesson: 'Code dieser Lektion',
  thisLessonHasTooMany: 'Diese Lektion hat zu viele Umrisse für einen Link: weniger Druckgänge oder einfachere Formen wählen.',
  nothingBoardIsTheirs: 'nichts; die Tafel ist frei',
  whatIsToBe: 'Was zu tun ist',
  link: 'Link',
  copyLink: 'Link kopieren',
  openItHere: 'Hier öffnen',
  allOfLessonStands:
    'Die ganze Lektion steht in der Adresse nach dem Zeichen #, das keinem Server gesagt wird. Sie öffnet sich neben dem eigenen Projekt der Lernenden und lässt es, wie es ist.',
  link2: 'Link…',
  thisLessonForOthers: 'Diese Lektion für andere',
  openYourOwnStudio: 'Das eigene Studio öffnen',
  noLesson: 'Keine Lektion',
  task: 'Aufgabe',
  board: 'Tafel',
  levels: 'Stufen',
  lesson: 'Lektion',
  lessonTitle: (title) => `Lektion: ${title}`,
  whatToDo: 'Was zu tun ist',
};
