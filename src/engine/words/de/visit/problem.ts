import type { say as english } from '../../en/visit/problem.ts';
import { plural } from '../../language.ts';

export const say: typeof english = {
  setUpsPrintSheets: (mixed, mixed2, value) =>
    `${plural(mixed, { one: 'Einrichtung', other: 'Einrichtungen' })} ${mixed2} ${plural(mixed, { one: 'druckt', other: 'drucken' })} Bögen mehrerer Größen (${value}) mit einem Versatz: die Anlagen so setzen, dass die Mitte jeder Größe liegt, wo sie gezeichnet ist, oder das Papier gleich zuschneiden.`,
  screenLiesOffSheet: (number, name, title) =>
    `Sieb ${number} ${name} liegt in ${title} neben dem Bogen und druckt dort nichts: es auf der Werkbank verschieben oder den Druckgang weglassen.`,
};
