import type { Recipe } from '../../../engine/recipe/types.ts';
import { say } from '../../words/en/output/draw.ts';
import type { PaperCard, PaperPassport } from '../papers/paper-blocks.ts';
import { PDF_COLOURS } from '../pdf-colours.ts';
import { cardPieces } from './draw-card.ts';
import { beside, type Drawing, HAND_SIZES, linesPiece, type Piece, stacked } from './pieces.ts';

const GUTTER_PT = 22;
const PICTURE_PT = 62;
const BETWEEN_PT = 10;

/** Cards and passports in two columns, four to a page where they are no longer than half of it. */
export function drawColumns(drawing: Drawing, entries: readonly (PaperCard | PaperPassport)[], recipes: readonly Recipe[]): void {
  const { out } = drawing;
  const width = (out.right - out.left - GUTTER_PT) / 2;
  const most = out.pageRoom;
  let [top, column] = [out.y, 0];
  out.y = top;
  for (const entry of entries) {
    const pieces =
      entry.kind === 'passport'
        ? passportPieces(drawing, entry, width, most)
        : cardPieces(drawing, entry, recipes, { width, most, alone: false });
    for (const piece of pieces) {
      if (out.room < piece.height && out.y > top) {
        column++;
        out.y = top;
      }
      if (column > 1 || out.room < piece.height) {
        out.newPage();
        column = 0;
        top = out.y;
      }
      piece.draw({ x: out.left + column * (width + GUTTER_PT), y: out.y });
      out.y += piece.height + BETWEEN_PT;
    }
  }
}

function passportPieces({ out, aspect, state }: Drawing, passport: PaperPassport, width: number, most: number): Piece[] {
  const wide = PICTURE_PT * aspect(passport.state.recipe);
  const picture: Piece = { height: PICTURE_PT + 4, draw: (at) => state(passport.state, at, PICTURE_PT) };
  const words = linesPiece(
    out,
    [{ text: passport.title, bold: true, size: 'large' }, { text: passport.sheets }],
    width - wide - 12,
    HAND_SIZES,
  );
  const line: Piece = {
    height: 6,
    draw: ({ x, y }) => out.stroke({ x, y }, { x: x + width, y }, { thickness: 1.2, hex: PDF_COLOURS.black }),
  };
  const pieces: Piece[] = [];
  let now: Piece[] = [line, beside(picture, words, wide + 12)];
  for (const row of passport.rows) {
    const next = rowPiece(out, row, width);
    if (stacked([...now, next]).height > most) {
      pieces.push(stacked(now));
      now = [line, linesPiece(out, [{ text: say.continued(passport.title), bold: true }], width, HAND_SIZES)];
    }
    now.push(next);
  }
  pieces.push(stacked(now));
  return pieces;
}

function rowPiece(out: Drawing['out'], { number, screen, how }: PaperPassport['rows'][number], width: number): Piece {
  const [screenAt, howAt] = [40, 122];
  const name = linesPiece(out, [{ text: screen, bold: true }], howAt - screenAt - 4, HAND_SIZES);
  const way = linesPiece(out, [{ text: how }], width - howAt, HAND_SIZES);
  return {
    height: Math.max(name.height, way.height) + 1,
    draw({ x, y }) {
      out.box({ x, y: y + 1.5 }, 9);
      out.line(number, { x: x + 15, y }, { size: HAND_SIZES.text, bold: true });
      name.draw({ x: x + screenAt, y });
      way.draw({ x: x + howAt, y });
    },
  };
}
