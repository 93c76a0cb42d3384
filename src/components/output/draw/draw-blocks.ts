import type { Recipe } from '../../../engine/recipe/types.ts';
import type { PageWriter } from '../page-writer.ts';
import type { PaperBlock } from '../papers/paper-blocks.ts';
import { cardPieces } from './draw-card.ts';
import { drawColumns } from './draw-columns.ts';
import { drawGrid, MOST_UPRIGHT } from './draw-grid.ts';
import { drawFill, drawTable } from './draw-table.ts';
import { type Drawing, linesPiece, type Piece, stacked, TABLE_SIZES } from './pieces.ts';

/** Puts the blocks on pages, one after the other. @param recipes by the index that states use */
export function drawBlocks(drawing: Drawing, blocks: readonly PaperBlock[], recipes: readonly Recipe[]): void {
  const { out } = drawing;
  for (const [at, block] of blocks.entries()) {
    if (block.kind === 'page') {
      const next = blocks[at + 1];
      const lies = next?.kind === 'grid' && next.columns.length > MOST_UPRIGHT;
      if (!out.atTop || lies) out.newPage(lies);
    } else drawBlock(drawing, block, recipes);
  }
}

function drawBlock(drawing: Drawing, block: Exclude<PaperBlock, { kind: 'page' }>, recipes: readonly Recipe[]): void {
  const { out } = drawing;
  switch (block.kind) {
    case 'cover':
      out.paragraph(block.over, { soft: true });
      out.paragraph(block.title, { size: 28, bold: true });
      put(out, linesPiece(out, block.lines, out.right - out.left, TABLE_SIZES));
      out.y += 12;
      drawFill(out, block.fill);
      break;
    case 'heading':
      out.heading(block.text, 15);
      break;
    case 'text':
      put(out, linesPiece(out, [block], out.right - out.left, TABLE_SIZES));
      out.y += 4;
      break;
    case 'fill':
      drawFill(out, block.fill);
      break;
    case 'list':
      drawList(out, block);
      break;
    case 'table':
      drawTable(out, block);
      break;
    case 'prints':
      drawPrints(drawing, block.prints);
      break;
    case 'grid':
      drawGrid(out, block);
      break;
    case 'card':
      for (const piece of cardPieces(drawing, block, recipes, { width: out.right - out.left, most: out.pageRoom, alone: true })) {
        put(out, piece);
        out.y += 14;
      }
      break;
    case 'columns':
      drawColumns(drawing, block.entries, recipes);
      break;
  }
}

function put(out: PageWriter, piece: Piece): void {
  out.need(piece.height);
  piece.draw({ x: out.left, y: out.y });
  out.y += piece.height;
}

/** What can hurt stands together on one page, a box to tick each. */
function drawList(out: PageWriter, { title, items }: PaperBlock & { kind: 'list' }): void {
  const head = linesPiece(out, [{ text: title, size: 'large', bold: true }], out.right - out.left, TABLE_SIZES);
  const pieces = items.map((text): Piece => {
    const words = linesPiece(out, [{ text, size: 'small' }], out.right - out.left - 18, TABLE_SIZES);
    return {
      height: words.height + 2,
      draw({ x, y }) {
        out.box({ x, y: y + 1 }, 9);
        words.draw({ x: x + 18, y });
      },
    };
  });
  out.y += 8;
  put(out, stacked([head, { height: 4, draw: () => undefined }, ...pieces]));
  out.y += 4;
}

/** Recipes in rows, smaller where there are many. */
function drawPrints({ out, aspect, state }: Drawing, prints: (PaperBlock & { kind: 'prints' })['prints']): void {
  const height = prints.length > 12 ? 62 : prints.length > 4 ? 88 : 130;
  const least = prints.length > 12 ? 74 : 112;
  let x = out.left;
  let row = 0;
  for (const print of prints) {
    const width = Math.max(height * aspect(print.state.recipe), least);
    const words = linesPiece(
      out,
      [
        { text: print.title, bold: true, size: 'small' },
        { text: print.below, size: 'small' },
      ],
      width,
      TABLE_SIZES,
    );
    const tall = height + 4 + words.height;
    if (x > out.left && x + width > out.right) {
      x = out.left;
      out.y += row + 10;
      row = 0;
    }
    if (x === out.left) out.need(tall);
    state(print.state, { x, y: out.y }, height);
    words.draw({ x, y: out.y + height + 4 });
    row = Math.max(row, tall);
    x += width + 14;
  }
  out.y += row + 10;
}
