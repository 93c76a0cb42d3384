import type { Box } from '../../geometry/types.ts';

/** Length of the bar that shows whether a page came out at its size, mm. */
export const BAR_MM = 100;

/** A line of black, open, mm on its page. */
export interface PageLine {
  /** Flat [x0, y0, …]. */
  points: readonly number[];
  widthMm: number;
}

/** Words on a page: `yMm` is where their letters stand. */
export interface PageText {
  text: string;
  xMm: number;
  yMm: number;
  sizeMm: number;
  bold: boolean;
  /** Whether they read from right to left. */
  mirrored: boolean;
}

/** What is black on a page, mm from its top left. */
export interface Drawn {
  /** Filled by the nonzero rule. */
  filled: readonly ArrayLike<number>[];
  lines: readonly PageLine[];
  texts: readonly PageText[];
}

/** A page that goes out at its size, whatever it is written as. */
export interface OutPage {
  /** For its file, without an ending. */
  name: string;
  widthMm: number;
  heightMm: number;
  /** Black, each part only within its clip where it has one. */
  parts: readonly { drawn: Drawn; clip?: Box }[];
}

/** Everything of a page moved. */
export function movedDrawn({ filled, lines, texts }: Drawn, dxMm: number, dyMm: number): Drawn {
  const moved = (points: ArrayLike<number>): number[] => Array.from(points, (value, i) => value + (i % 2 === 0 ? dxMm : dyMm));
  return {
    filled: filled.map(moved),
    lines: lines.map(({ points, widthMm }) => ({ points: moved(points), widthMm })),
    texts: texts.map((text) => ({ ...text, xMm: text.xMm + dxMm, yMm: text.yMm + dyMm })),
  };
}

/** A page turned over, left to right; twice gives it again. */
export function mirroredDrawn({ filled, lines, texts }: Drawn, widthMm: number): Drawn {
  const over = (points: ArrayLike<number>): number[] => Array.from(points, (value, i) => (i % 2 === 0 ? widthMm - value : value));
  return {
    filled: filled.map(over),
    lines: lines.map((line) => ({ ...line, points: over(line.points) })),
    texts: texts.map((text) => ({ ...text, xMm: widthMm - text.xMm, mirrored: !text.mirrored })),
  };
}

/** A rectangle as a ring. */
export function boxRing({ xMm, yMm, widthMm, heightMm }: Box): number[] {
  return [xMm, yMm, xMm + widthMm, yMm, xMm + widthMm, yMm + heightMm, xMm, yMm + heightMm];
}
