import { speak } from '../../language.ts';

export const say = speak('engine/output/film', {
  screen: (key: string, name: string) => `screen ${key}, ${name}`,
  spreadOfMmCannot: (spreadMm: number, mostSpreadMm: number, mostSpreadMm2: number) =>
    `A spread of ${spreadMm} mm cannot be made; give ${mostSpreadMm} to ${mostSpreadMm2} mm, below 0 for a choke.`,
  thereIsNothingOn: (who: string) => `There is nothing on ${who}; add a shape to it, or leave it out.`,
  chokeOfMmLeaves: (spreadMm: number, who: string, roundTo: number) =>
    `A choke of ${spreadMm} mm leaves nothing of ${who}, which is nowhere wider than ${roundTo} mm; choke less.`,
  outlinesOnHaveToo: (who: string) => `The outlines on ${who} have too many corners to move their edges; simplify the drawing.`,
  filmOfScreenWould: (key: string, ceil: number, ceil2: number, mostPageMm: number) =>
    `The film of screen ${key} would be ${ceil} × ${ceil2} mm, over the ${mostPageMm} mm that a page can have; cut the sheet into sections.`,
  theseCutsMakeSections: (count: number, mostSections: number) =>
    `These cuts make ${count} sections of the sheet; make at most ${mostSections}.`,
  sectionsCannotOverlapBy: (overlapMm: number, least: number, most: number) =>
    `Sections cannot overlap by ${overlapMm} mm; give ${least} to ${most} mm.`,
  sectionOfRowColumn: (number: number, count: number, row: number, column: number) =>
    `section ${number} of ${count}, row ${row}, column ${column}`,
  whichIsMmWide: (sideMm: number, fromIsLeft: boolean) => `which is ${sideMm} mm ${fromIsLeft ? 'wide' : 'high'}; move or drop it.`,
  cutAtMmFrom: (off: number, from: string, side: string) => `A cut at ${off} mm from the ${from} does not lie on the sheet, ${side}`,
  cutAtMmFromLeaves: (cut: number, from: string, leastSectionMm: number, side: string) =>
    `A cut at ${cut} mm from the ${from} leaves less than ${leastSectionMm} mm of the sheet, ${side}`,
});
