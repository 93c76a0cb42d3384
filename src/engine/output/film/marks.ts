import type { Box } from '../../geometry/types.ts';
import type { Drawn, PageLine, PageText } from './page.ts';
import { boxRing } from './page.ts';
import type { Joints } from './sections.ts';

/** How far the middle of a register mark lies beyond the sheet, and how far its arms reach, mm. */
const MARK_AWAY_MM = 12;
const MARK_ARM_MM = 5;
const MARK_RING_MM = 2.5;
/** Fine enough to lay one on the other, broad enough for a printer of films, mm. */
const MARK_LINE_MM = 0.2;
const RING_CORNERS = 64;
/** Marks at the corners of the sheet, mm. */
const CORNER_AWAY_MM = 2;
const CORNER_MM = 6;
/** A stop, along the edge of the sheet and away from it, mm. */
const LAY_LONG_MM = 18;
const LAY_DEEP_MM = 6;
const LAY_LINE_MM = 0.3;

/** Longer than the marks of the corners, near which they can stand, mm. */
const TRIM_MM = 10;
const TRIM_WORD = { text: 'trim', sizeMm: 2.6, widthMm: 5 };

/** Room that marks and lays take beyond the sheet, mm. */
export const MARKS_ROOM_MM = 20;

/**
 * Register marks of a sheet: a cross in a ring off the middle of each side, and its corners.
 * @param reachMm how far beyond the sheet something is printed: the marks stand farther out
 * At least three marks outside the trim: common practice, no source.
 */
export function registerMarks({ xMm, yMm, widthMm, heightMm }: Box, reachMm: number): PageLine[] {
  const away = reachMm + MARK_AWAY_MM;
  const [middleX, middleY] = [xMm + widthMm / 2, yMm + heightMm / 2];
  const places: [number, number][] = [
    [middleX, yMm - away],
    [xMm + widthMm + away, middleY],
    [middleX, yMm + heightMm + away],
    [xMm - away, middleY],
  ];
  const corners = [-1, 1].flatMap((across) =>
    [-1, 1].flatMap((down) => {
      const x = across < 0 ? xMm : xMm + widthMm;
      const y = down < 0 ? yMm : yMm + heightMm;
      const near = reachMm + CORNER_AWAY_MM;
      return [
        line([x + across * near, y, x + across * (near + CORNER_MM), y]),
        line([x, y + down * near, x, y + down * (near + CORNER_MM)]),
      ];
    }),
  );
  return [...places.flatMap(([x, y]) => cross(x, y)), ...corners];
}

/**
 * Marks beyond a section's edges that stand at its joints, where it is trimmed to meet its neighbours.
 * @param reachMm as for `registerMarks`
 * Trimming marks off the image: common practice, no source.
 */
export function trimMarks({ xMm, yMm, widthMm, heightMm }: Box, joints: Joints, reachMm: number): Pick<Drawn, 'lines' | 'texts'> {
  const near = reachMm + CORNER_AWAY_MM;
  const [right, bottom] = [xMm + widthMm, yMm + heightMm];
  const word = (x: number, y: number): PageText => {
    const { text, sizeMm } = TRIM_WORD;
    return { text, xMm: x, yMm: y, sizeMm, bold: false, mirrored: false };
  };
  const lines: PageLine[] = [];
  const texts: PageText[] = [];
  for (const joint of joints.acrossMm) {
    const x = xMm + joint;
    lines.push(line([x, yMm - near - TRIM_MM, x, yMm - near]), line([x, bottom + near, x, bottom + near + TRIM_MM]));
    // On the side of what stays, away from the mark of the corner.
    texts.push(word(joint < widthMm / 2 ? x + 1 : x - 1 - TRIM_WORD.widthMm, yMm - near - TRIM_MM + TRIM_WORD.sizeMm));
  }
  for (const joint of joints.downMm) {
    const y = yMm + joint;
    lines.push(line([xMm - near - TRIM_MM, y, xMm - near, y]), line([right + near, y, right + near + TRIM_MM, y]));
    texts.push(word(xMm - near - TRIM_MM, joint < heightMm / 2 ? y + TRIM_WORD.sizeMm + 0.4 : y - 1));
  }
  return { lines, texts };
}

/** A cross in a ring. */
function cross(x: number, y: number): PageLine[] {
  const ring = Array.from({ length: RING_CORNERS + 1 }, (_, i) => {
    const angle = (2 * Math.PI * i) / RING_CORNERS;
    return [x + MARK_RING_MM * Math.cos(angle), y + MARK_RING_MM * Math.sin(angle)];
  });
  return [line([x - MARK_ARM_MM, y, x + MARK_ARM_MM, y]), line([x, y - MARK_ARM_MM, x, y + MARK_ARM_MM]), line(ring.flat())];
}

function line(points: number[]): PageLine {
  return { points, widthMm: MARK_LINE_MM };
}

/**
 * The three stops that the sheet is laid against: two on its long edge, one round the corner, as lines.
 * Two on the long edge and one round the corner: 'Registration for multicolor prints'; where on the edge: common practice, no source.
 */
export function layLines({ xMm, yMm, widthMm, heightMm }: Box, reachMm: number): { lines: PageLine[]; texts: PageText[] } {
  const upright = heightMm > widthMm;
  // All of the line stands off the sheet.
  const bottom = yMm + heightMm + reachMm + LAY_LINE_MM / 2;
  const left = xMm - reachMm - LAY_LINE_MM / 2;
  const side = (y: number): Box => ({ xMm: left - LAY_DEEP_MM, yMm: y - LAY_LONG_MM / 2, widthMm: LAY_DEEP_MM, heightMm: LAY_LONG_MM });
  const front = (x: number): Box => ({ xMm: x - LAY_LONG_MM / 2, yMm: bottom, widthMm: LAY_LONG_MM, heightMm: LAY_DEEP_MM });
  const lays = upright
    ? [side(yMm + heightMm * 0.22), side(yMm + heightMm * 0.78), front(xMm + widthMm * 0.25)]
    : [front(xMm + widthMm * 0.22), front(xMm + widthMm * 0.78), side(yMm + heightMm * 0.75)];
  return {
    lines: lays.map((lay) => {
      const ring = boxRing(lay);
      return { points: [...ring, ...ring.slice(0, 2)], widthMm: LAY_LINE_MM };
    }),
    texts: lays.map((lay) => ({
      text: 'lay',
      xMm: lay.xMm + lay.widthMm / 2 - 2,
      yMm: lay.yMm + lay.heightMm / 2 + 0.9,
      sizeMm: 2.6,
      bold: false,
      mirrored: false,
    })),
  };
}
