import type { say as english } from '../../en/output/film.ts';

/** The edge that a cut is measured from, as the sections name it. */
const EDGES: Readonly<Record<string, string>> = { left: 'links', top: 'oben' };
const edge = (from: string): string => EDGES[from] ?? from;

export const say: typeof english = {
  screen: (key, name) => `Sieb ${key}, ${name}`,
  spreadOfMmCannot: (spreadMm, mostSpreadMm, mostSpreadMm2) =>
    `Überfüllen um ${spreadMm} mm ist nicht möglich; ${mostSpreadMm} bis ${mostSpreadMm2} mm angeben, unter 0 zum Unterfüllen.`,
  thereIsNothingOn: (who) => `Hier ist nichts zu drucken: ${who}; eine Form hinzufügen oder das Sieb weglassen.`,
  chokeOfMmLeaves: (spreadMm, who, roundTo) =>
    `Unterfüllen um ${spreadMm} mm lässt nichts übrig (${who}), nirgends breiter als ${roundTo} mm; weniger unterfüllen.`,
  outlinesOnHaveToo: (who) => `Die Umrisse haben zu viele Ecken, um ihre Kanten zu verschieben (${who}); die Zeichnung vereinfachen.`,
  filmOfScreenWould: (key, ceil, ceil2, mostPageMm) =>
    `Der Film von Sieb ${key} wäre ${ceil} × ${ceil2} mm groß, mehr als die ${mostPageMm} mm, die eine Seite haben kann; den Bogen in Abschnitte schneiden.`,
  theseCutsMakeSections: (count, mostSections) =>
    `Diese Schnitte teilen den Bogen in ${count} Abschnitte; höchstens ${mostSections} machen.`,
  sectionsCannotOverlapBy: (overlapMm, least, most) =>
    `Abschnitte können nicht um ${overlapMm} mm überlappen; ${least} bis ${most} mm angeben.`,
  sectionOfRowColumn: (number, count, row, column) => `Abschnitt ${number} von ${count}, Zeile ${row}, Spalte ${column}`,
  whichIsMmWide: (sideMm, fromIsLeft) => `der ${sideMm} mm ${fromIsLeft ? 'breit' : 'hoch'} ist; verschieben oder weglassen.`,
  cutAtMmFrom: (off, from, side) => `Ein Schnitt bei ${off} mm von ${edge(from)} liegt nicht auf dem Bogen, ${side}`,
  cutAtMmFromLeaves: (cut, from, leastSectionMm, side) =>
    `Ein Schnitt bei ${cut} mm von ${edge(from)} lässt weniger als ${leastSectionMm} mm vom Bogen, ${side}`,
};
