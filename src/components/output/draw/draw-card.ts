import { defined, entryAt, num } from '../../../engine/base/at.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { pullRings } from '../../../engine/shapes/place/placed.ts';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import { say } from '../../words/en/output/draw.ts';
import { offsetArrow } from '../../words/offset-words.ts';
import type { Box, PageWriter, Spot } from '../page-writer.ts';
import type { CardPart, PaperCard } from '../papers/paper-blocks.ts';
import { PDF_COLOURS } from '../pdf-colours.ts';
import { beside, boxesPiece, type Drawing, HAND_SIZES, linesPiece, type Piece, type Sizes, stacked, TABLE_SIZES } from './pieces.ts';

/** What a card is drawn with: alone on a page, or several to a page. */
interface CardLook {
  sizes: Sizes;
  titlePt: number;
  diagramPt: number;
  picturePt: number;
}

const ALONE: CardLook = { sizes: TABLE_SIZES, titlePt: 24, diagramPt: 170, picturePt: 170 };
/** Heights of the pictures that are tried on a card alone. */
const ALONE_PICTURES_PT = [170, 130, 100, 76, 58] as const;
/** Least between the title of a card and what is changed for it. */
const TAGS_GAP_PT = 8;
/** Below a card alone stands who comes before it. */
const FOOT_PT = 50;
const SEVERAL: CardLook = { sizes: HAND_SIZES, titlePt: 14, diagramPt: 78, picturePt: 58 };

/**
 * A card of a set-up in pieces of which each stands on one page.
 * @param recipes by the index that its states use
 * @param most height of a page, points
 */
export function cardPieces(
  drawing: Drawing,
  card: PaperCard,
  recipes: readonly Recipe[],
  { width, most, alone }: { width: number; most: number; alone: boolean },
): Piece[] {
  if (!alone) return piecesOf(drawing, card, recipes, { ...SEVERAL, width, most });
  // With many states the pictures shrink, so that a card stays on its page as long as it can.
  const tried = ALONE_PICTURES_PT.map((picturePt) =>
    piecesOf(drawing, card, recipes, { ...ALONE, picturePt, width, most: most - FOOT_PT }),
  );
  return tried.find((pieces) => pieces.length === 1) ?? entryAt(tried, tried.length - 1);
}

function piecesOf(
  drawing: Drawing,
  card: PaperCard,
  recipes: readonly Recipe[],
  look: CardLook & { width: number; most: number },
): Piece[] {
  const { width, most } = look;
  const pieces: Piece[] = [];
  let now: Piece[] = [cardHead(drawing.out, card, recipes, look)];
  for (const part of card.parts) {
    const next = partPiece(drawing, part, width, look);
    if (now.length > 0 && stacked([...now, next], 6).height > most) {
      pieces.push(stacked(now, 6));
      now = [linesPiece(drawing.out, [{ text: say.continued(card.title), bold: true, size: 'large' }], width, look.sizes)];
    }
    now.push(next);
  }
  pieces.push(stacked(now, 6));
  return pieces;
}

function cardHead(
  out: PageWriter,
  card: PaperCard,
  recipes: readonly Recipe[],
  { titlePt, diagramPt, sizes, width }: CardLook & { width: number },
): Piece {
  const tagWidth = out.widthOf(card.tags, { size: sizes.text, bold: true });
  // What is changed stands beside the title where both have room.
  const below = out.widthOf(card.title, { size: titlePt, bold: true }) + titlePt + 4 + TAGS_GAP_PT + tagWidth > width;
  const tagsAt = below ? titlePt * 1.35 + 7 : 9;
  const title: Piece = {
    height: titlePt * 1.35 + 7 + (below ? sizes.text * 1.5 : 0),
    draw({ x, y }) {
      out.stroke({ x, y }, { x: x + width, y }, { thickness: 1.6, hex: PDF_COLOURS.black });
      out.box({ x, y: y + 9 }, titlePt * 0.8);
      out.line(card.title, { x: x + titlePt + 4, y: y + 7 }, { size: titlePt, bold: true });
      out.line(card.tags, { x: x + width - tagWidth, y: y + tagsAt }, { size: sizes.text, bold: true });
    },
  };
  const words = width - diagramPt - 12;
  const swatch = sizes.text + 3;
  const ink = linesPiece(out, [{ text: card.ink, bold: true, size: 'large' }], words - swatch - 6, sizes);
  const inkLine: Piece = {
    height: ink.height + 3,
    draw({ x, y }) {
      out.rectangle({ x, y: y + 1, width: swatch, height: swatch }, { hex: card.hex, edge: true });
      ink.draw({ x: x + swatch + 6, y });
    },
  };
  const how = stacked([
    linesPiece(out, [{ text: card.screen, bold: true, size: 'large' }], words, sizes),
    inkLine,
    linesPiece(out, card.lines, words, sizes),
  ]);
  const diagram: Piece = { height: diagramPt, draw: (at) => offsetDiagram(out, recipes, card.card, { ...at, side: diagramPt }) };
  return stacked([title, beside(diagram, how, diagramPt + 12)]);
}

/** Sheets that get the same: how they look now and then, and a box for each. */
function partPiece({ out, aspect, state }: Drawing, part: CardPart, width: number, { sizes, picturePt }: CardLook): Piece {
  const wide = picturePt * aspect(part.after.recipe);
  const pictures: Piece = {
    height: picturePt + 2,
    draw({ x, y }) {
      state(part.before, { x, y }, picturePt);
      state(part.after, { x: x + wide + 6, y }, picturePt);
    },
  };
  const from = 2 * wide + 18;
  const title = say.bareNowThen(part.title, part.before.pulls.length === 0);
  const words = stacked(
    [linesPiece(out, [{ text: title, bold: true }], width - from, sizes), boxesPiece(out, part.sheets, width - from, sizes.large)],
    3,
  );
  return beside(pictures, words, from);
}

/** Where the sheet lies against its stops, what the screen prints, and the way in which it is moved. */
function offsetDiagram(out: PageWriter, recipes: readonly Recipe[], card: SetUpCard, { x, y: top, side }: Spot & { side: number }): void {
  const state = entryAt(card.states, 0);
  const recipe = entryAt(recipes, state.recipe);
  const { widthMm, heightMm } = recipe.paper;
  const scale = (side - 18) / Math.max(widthMm, heightMm);
  const width = widthMm * scale;
  const height = heightMm * scale;
  const left = x + (side - width) / 2;
  out.rectangle({ x: left, y: top, width, height }, { hex: PDF_COLOURS.white, edge: true });
  const pull = entryAt(recipe.pulls, num(state.prints, 0));
  const screen = defined(recipe.screens.find((each) => each.id === pull.screen));
  out.shape(pullRings(screen, recipe.shapes, pull, recipe.paper).rings, { x: left, y: top, scale, hex: PDF_COLOURS.shape });
  stops(out, { x: left, y: top, width, height });
  moveArrow(out, card, { x: left + width / 2, y: top + height / 2 }, side);
  const { length, words } = offsetArrow(card);
  // Under the stops, where it covers nothing of the sheet.
  const wide = out.widthOf(words, { size: 8 });
  const under = Math.min(Math.max(x, left + (width - wide) / 2), x + side - wide);
  if (length > 0) out.line(words, { x: under, y: top + height + 9 }, { size: 8 });
}

/** Two stops on the long edge, one round the corner. */
function stops(out: PageWriter, { x, y, width, height }: Box): void {
  const bottom = y + height;
  const style = { hex: PDF_COLOURS.black };
  const beside = (share: number): void => out.rectangle({ x: x - 8, y: bottom - height * share - 9, width: 6, height: 18 }, style);
  const below = (share: number): void => out.rectangle({ x: x + width * share - 9, y: bottom + 2, width: 18, height: 6 }, style);
  if (height > width) {
    beside(0.78);
    beside(0.22);
    below(0.25);
  } else {
    below(0.22);
    below(0.78);
    beside(0.25);
  }
}

function moveArrow(out: PageWriter, card: SetUpCard, from: Spot, side: number): void {
  const length = Math.hypot(card.dxMm, card.dyMm);
  if (length === 0) return;
  const arrow = offsetArrow(card);
  const reach = (arrow.length * side) / 150;
  const [ux, uy] = [card.dxMm / length, card.dyMm / length];
  const tip = { x: from.x + ux * reach, y: from.y + uy * reach };
  const style = { thickness: 2.5, hex: PDF_COLOURS.accent };
  out.stroke(from, tip, style);
  for (const across of [5, -5]) out.stroke(tip, { x: tip.x - 7 * ux + across * uy, y: tip.y - 7 * uy - across * ux }, style);
}
