import { EngineError } from '../../base/error.ts';
import { cutRings } from '../../geometry/booleans.ts';
import type { Box } from '../../geometry/types.ts';
import { WorkBudget } from '../../geometry/work.ts';
import { OVERLAP_MM } from './film-limits.ts';
import { BAR_MM, boxRing, type Drawn, movedDrawn, type OutPage, type PageLine, type PageText } from './page.ts';

/** A page of a printer smaller than the film, and how much of the film two neighbours share, mm. */
export interface Tile {
  widthMm: number;
  heightMm: number;
  overlapMm: number;
}

/** Printers leave a rim of the page free; marks and words stand in it, mm. Common practice, no source. */
const RIM_MM = 12;
const TICK_MM = 5;
const TICK_LINE_MM = 0.2;
const MOST_TILES = 500;

/**
 * A film over several pages of a smaller printer: neighbours share a strip, and marks in the rims stand in the
 * middle of each strip: cut one page there and lay it over the other, mark on mark.
 * @returns the page itself, on the printer's page, where it fits on one
 * @throws EngineError 'film.tile' when the overlap leaves no page, or there would be too many of them
 */
export function tilesOf(page: OutPage, tile: Tile): OutPage[] {
  const ways = [tile, { ...tile, widthMm: tile.heightMm, heightMm: tile.widthMm }].map((paper) => ({ paper, grid: gridOf(page, paper) }));
  const fewest = ways.reduce((best, way) => (way.grid.columns * way.grid.rows < best.grid.columns * best.grid.rows ? way : best));
  const { columns, rows } = fewest.grid;
  if (columns * rows > MOST_TILES) {
    throw new EngineError(
      'film.tile',
      `The film of ${page.name} would be ${columns * rows} pages; choose larger pages, or cut the sheet into sections.`,
    );
  }
  return Array.from({ length: rows * columns }, (_, i) => tilePage(page, fewest, { row: Math.floor(i / columns), column: i % columns }));
}

interface Grid {
  columns: number;
  rows: number;
  /** From one window to the next, and the window itself, mm. */
  stepX: number;
  stepY: number;
  wide: number;
  high: number;
}

function gridOf(page: Pick<OutPage, 'widthMm' | 'heightMm'>, { widthMm, heightMm, overlapMm }: Tile): Grid {
  const [wide, high] = [widthMm - 2 * RIM_MM, heightMm - 2 * RIM_MM];
  const [stepX, stepY] = [wide - overlapMm, high - overlapMm];
  if (!(overlapMm >= OVERLAP_MM.least && overlapMm <= OVERLAP_MM.most && Math.min(stepX, stepY) >= overlapMm)) {
    throw new EngineError('film.tile', `An overlap of ${overlapMm} mm cannot be made; give ${OVERLAP_MM.least} to ${OVERLAP_MM.most} mm.`);
  }
  const count = (side: number, shown: number, step: number): number => Math.max(1, Math.ceil((side - shown) / step - 1e-9) + 1);
  return { columns: count(page.widthMm, wide, stepX), rows: count(page.heightMm, high, stepY), stepX, stepY, wide, high };
}

function tilePage(page: OutPage, { paper, grid }: { paper: Tile; grid: Grid }, at: { row: number; column: number }): OutPage {
  const clip: Box = { xMm: RIM_MM, yMm: RIM_MM, widthMm: grid.wide, heightMm: grid.high };
  const shown: Box = { xMm: at.column * grid.stepX, yMm: at.row * grid.stepY, widthMm: grid.wide, heightMm: grid.high };
  const [dxMm, dyMm] = [RIM_MM - shown.xMm, RIM_MM - shown.yMm];
  const parts = page.parts.map(({ drawn }) => ({
    drawn: movedDrawn({ ...drawn, filled: cutRings(drawn.filled, [boxRing(shown)], new WorkBudget()) }, dxMm, dyMm),
    clip,
  }));
  const place = grid.columns * grid.rows === 1 ? '' : ` row ${at.row + 1} column ${at.column + 1}`;
  return {
    name: `${page.name}${place}`,
    widthMm: paper.widthMm,
    heightMm: paper.heightMm,
    parts: [...parts, { drawn: rim(page.name, paper, grid, at) }],
  };
}

/** Marks for joining, which page it is, and a bar on every page. */
function rim(name: string, paper: Tile, grid: Grid, { row, column }: { row: number; column: number }): Drawn {
  const [right, bottom] = [RIM_MM + grid.wide, RIM_MM + grid.high];
  const lines: PageLine[] = [];
  const half = paper.overlapMm / 2;
  const tick = (points: number[]): void => void lines.push({ points, widthMm: TICK_LINE_MM });
  const upright = (x: number): void => {
    tick([x, RIM_MM - TICK_MM, x, RIM_MM]);
    tick([x, bottom, x, bottom + TICK_MM]);
  };
  const level = (y: number): void => {
    tick([RIM_MM - TICK_MM, y, RIM_MM, y]);
    tick([right, y, right + TICK_MM, y]);
  };
  if (column > 0) upright(RIM_MM + half);
  if (column < grid.columns - 1) upright(right - half);
  if (row > 0) level(RIM_MM + half);
  if (row < grid.rows - 1) level(bottom - half);
  const text = (words: string, xMm: number, yMm: number): PageText => ({
    text: words,
    xMm,
    yMm,
    sizeMm: 2.6,
    bold: false,
    mirrored: false,
  });
  const where = `row ${row + 1} of ${grid.rows}, column ${column + 1} of ${grid.columns}`;
  const barY = bottom + TICK_MM + 0.5;
  return {
    filled: [boxRing({ xMm: right - half - 2 - BAR_MM, yMm: barY, widthMm: BAR_MM, heightMm: 1 })],
    lines,
    texts: [text(`${where}; bar ${BAR_MM} mm`, RIM_MM + half + 2, barY + 1.2), text(name, RIM_MM + half + 2, RIM_MM - TICK_MM - 0.4)],
  };
}
