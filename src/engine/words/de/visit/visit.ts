import type { say as english } from '../../en/visit/visit.ts';

export const say: typeof english = {
  and: (left, left2) => `${left} und ${left2}`,
  without: (title, names) => `${title}, ohne ${names}`,
  nothingIsToBe: 'Noch ist nichts zu drucken; ein Rezept wählen und wie viele Bögen davon.',
  numberOfSheetsOvers: (title) => `Die Zahl der Bögen, Zuschussbögen oder Probedrucke von ${title} ist nicht ganz; ganze Bögen angeben.`,
  sheetsAreMoreThan: (count, mostSheets) =>
    `${count} Bögen sind mehr als die ${mostSheets}, die ein Besuch fasst; sie auf mehrere Besuche verteilen.`,
};
