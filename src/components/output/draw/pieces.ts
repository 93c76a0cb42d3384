import type { PageWriter, Spot, TextStyle } from '../page-writer.ts';
import type { PaperLine, PaperState } from '../papers/paper-blocks.ts';

/** Something whose height is known before it is drawn. Lengths in points. */
export interface Piece {
  height: number;
  draw(at: Spot): void;
}

/** Sizes of type, points. */
export interface Sizes {
  large: number;
  text: number;
  small: number;
}

/** Read at arm's length. */
export const TABLE_SIZES: Sizes = { large: 14, text: 11.5, small: 10 };
/** The same where it takes a day on to one page. */
export const TIGHT_SIZES: Sizes = { large: 12.5, text: 10, small: 9 };
/** Read in the hand: several to a page. */
export const HAND_SIZES: Sizes = { large: 12, text: 10, small: 9 };

/** What papers are drawn with. */
export interface Drawing {
  out: PageWriter;
  /** Width over height of a recipe's paper. */
  aspect(recipe: number): number;
  /** Draws a sheet as high as asked. */
  state(state: PaperState, at: Spot, height: number): void;
}

const LEADING = 1.25;

/** The style of a line in some sizes. */
function styleOf({ size, bold = false, soft = false }: PaperLine, sizes: Sizes): TextStyle & { size: number } {
  return { size: size === undefined ? sizes.text : sizes[size], bold, soft };
}

/** Lines below each other, each wrapped. */
export function linesPiece(out: PageWriter, lines: readonly PaperLine[], width: number, sizes: Sizes): Piece {
  const set = lines.flatMap((line) => {
    const style = styleOf(line, sizes);
    return out.lines(line.text, width, style).map((text) => ({ text, style }));
  });
  return {
    height: set.reduce((sum, { style }) => sum + style.size * LEADING, 0),
    draw({ x, y }) {
      let top = y;
      for (const { text, style } of set) {
        out.line(text, { x, y: top }, { ...style, most: width + 1 });
        top += style.size * LEADING;
      }
    },
  };
}

/** Pieces below each other. */
export function stacked(pieces: readonly Piece[], gap = 0): Piece {
  return {
    height: pieces.reduce((sum, { height }) => sum + height, 0) + gap * Math.max(0, pieces.length - 1),
    draw({ x, y }) {
      let top = y;
      for (const piece of pieces) {
        piece.draw({ x, y: top });
        top += piece.height + gap;
      }
    },
  };
}

/** Two pieces beside each other. @param from where the second begins */
export function beside(first: Piece, second: Piece, from: number): Piece {
  return {
    height: Math.max(first.height, second.height),
    draw({ x, y }) {
      first.draw({ x, y });
      second.draw({ x: x + from, y });
    },
  };
}

/** Boxes to tick with their words, as many to a line as fit. */
export function boxesPiece(out: PageWriter, labels: readonly string[], width: number, size: number): Piece {
  const step = size * 1.7;
  const places: { label: string; x: number; y: number }[] = [];
  let [x, y] = [0, 0];
  for (const label of labels) {
    const wide = size * 1.5 + out.widthOf(label, { size }) + size * 0.9;
    if (x > 0 && x + wide > width) {
      x = 0;
      y += step;
    }
    places.push({ label, x, y });
    x += wide;
  }
  return {
    height: y + step,
    draw(at) {
      for (const place of places) {
        out.box({ x: at.x + place.x, y: at.y + place.y + 1 }, size * 1.1);
        out.line(place.label, { x: at.x + place.x + size * 1.5, y: at.y + place.y }, { size });
      }
    },
  };
}
