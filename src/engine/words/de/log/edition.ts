import type { say as english } from '../../en/log/edition.ts';
import { plural } from '../../language.ts';

export const say: typeof english = {
  doesNotPrintThis: (title) => `${title} druckt dieses Rezept nicht; einen Besuch wählen, der es druckt.`,
  andMore: (short, short2) => `${short} und ${short2} weitere`,
  noSheetIsLeft: (named) => `Für ${named} ist kein Bogen übrig; mehr Bögen drucken oder die Auflage verkleinern.`,
  numberedSheetsAreNot: (unfinished, number) =>
    `${unfinished} ${plural(unfinished, { one: 'nummerierter Bogen ist', other: 'nummerierte Bögen sind' })} laut Protokoll nicht fertig, so Bogen ${number}; die Druckgänge eintragen oder angeben, dass der Bogen verdruckt ist.`,
  asMoreWere: (otherwise) => `, wie ${otherwise} ${plural(otherwise, { one: 'weiterer', other: 'weitere' })}`,
  sheetWasPulledDifferently: (number, mark, otherwise) =>
    `Bogen ${number}, ${mark}, ist anders gedruckt als im Rezept${otherwise}; ihn nicht aufnehmen oder die Auflage als variabel (EV) bezeichnen.`,
  sheetWasToBe: (number, mark) =>
    `Bogen ${number} sollte ${mark} werden, ist aber verdruckt; die Bezeichnung ging an einen anderen Bogen, also ansehen, was mit Bleistift geschrieben ist.`,
  impressions: 'Abzüge',
  artistsProofs: 'Künstlerabzüge',
  printersProofs: 'Druckerabzüge',
  horsCommerce: 'Hors-commerce-Abzüge',
  numberOfIsGive: (name, count, least, mostSheets) =>
    `Diese Zahl geht nicht: ${name} ${count}. Eine ganze Zahl von ${least} bis ${mostSheets} angeben.`,
  numberOfIsMissing: (name, least, mostSheets) => `Hier fehlt eine Zahl: ${name}. Eine ganze Zahl von ${least} bis ${mostSheets} angeben.`,
  sheetsAreMoreThan: (sheets, mostSheets) =>
    `${sheets} Bögen sind mehr als die ${mostSheets}, die ein Besuch fasst; die Auflage verkleinern.`,
  artistsProofsAreOf: (ap, round) =>
    `${ap} ${plural(ap, { one: 'Künstlerabzug ist', other: 'Künstlerabzüge sind' })} ${round} % der Auflage; üblich sind 5 bis 20 %, also auf Nachfrage den Grund nennen.`,
  threadsCmThreadM: (threadsPerCm, threadUm) => `${threadsPerCm} Fäden/cm, Faden ${threadUm} µm`,
};
