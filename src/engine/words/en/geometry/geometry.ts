import { speak } from '../../language.ts';

export const say = speak('engine/geometry/geometry', {
  outlinesHaveMoreThan: (mostPoints: number) => `Outlines have more than ${mostPoints} corners; simplify them.`,
  pointOfOutlineLies: (farthestMm: number) => `A point of an outline lies more than ${farthestMm} m away; check its units.`,
  rowsNeedHeightAbove: (rowHeightMm: number, topMm: number) =>
    `Rows need a height above 0 mm and a finite top edge; got a height of ${rowHeightMm} and a top of ${topMm}.`,
  pointOfOutlineIs: (i: number, x: number, y: number) =>
    `Point ${i} of an outline is (${x}, ${y}); every coordinate must be a finite number of millimetres.`,
  outlineCrossesRowsMore: (maxCrossings: number) =>
    `An outline crosses the rows more than ${maxCrossings} times; use fewer rows or a simpler shape.`,
  outlinesHaveTooMany: 'Outlines have too many corners side by side, or cross or lie over each other too often; simplify them.',
});
