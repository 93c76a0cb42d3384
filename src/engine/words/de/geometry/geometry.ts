import type { say as english } from '../../en/geometry/geometry.ts';

export const say: typeof english = {
  outlinesHaveMoreThan: (mostPoints) => `Umrisse haben mehr als ${mostPoints} Ecken; sie vereinfachen.`,
  pointOfOutlineLies: (farthestMm) => `Ein Punkt eines Umrisses liegt mehr als ${farthestMm} m entfernt; die Einheiten prüfen.`,
  rowsNeedHeightAbove: (rowHeightMm, topMm) =>
    `Zeilen brauchen eine Höhe über 0 mm und eine endliche Oberkante; gegeben sind eine Höhe von ${rowHeightMm} und eine Oberkante von ${topMm}.`,
  pointOfOutlineIs: (i, x, y) =>
    `Punkt ${i} eines Umrisses ist (${x}, ${y}); jede Koordinate muss eine endliche Zahl von Millimetern sein.`,
  outlineCrossesRowsMore: (maxCrossings) =>
    `Ein Umriss kreuzt die Zeilen mehr als ${maxCrossings} Mal; weniger Zeilen oder eine einfachere Form nehmen.`,
  outlinesHaveTooMany: 'Umrisse haben zu viele Ecken nebeneinander oder kreuzen sich oder liegen zu oft übereinander; sie vereinfachen.',
};
