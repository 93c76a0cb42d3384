import { describe, expect, it } from 'vitest';
import { edgeNotes } from '../../../src/components/words/edge-notes.ts';
import type { Recipe } from '../../../src/engine/recipe/types.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import type { SetUpCard } from '../../../src/engine/visit/set-up-cards.ts';
import { pull, rectDrawer } from '../../engine/order/drawer.ts';

// A rectangle of 40 × 20 mm, 10 mm from the sheet's left and upper edges.
const STUDIO = rectDrawer([[10, 10, 40, 20]]);

function notes(dxMm: number, turnDeg = 0): string[] {
  const recipe: Recipe = recipeOf([{ ...pull(0, 'tar'), dxMm, turnDeg }], STUDIO, { id: 'r', title: 'R' });
  const card = { states: [{ recipe: 0, prints: [0] }] } as unknown as SetUpCard;
  return edgeNotes(card, [recipe]);
}

describe('edgeNotes', () => {
  it('should ask for waste under the sheet only where a set-up prints beside it', () => {
    expect(notes(0)).toEqual([]);
    expect(notes(-10)).toEqual([]);
    expect(notes(-10.1)).toEqual(['Part of the image lies beside the paper: lay waste under the sheet.']);
    expect(notes(STUDIO.paper.widthMm)).toHaveLength(1);
  });
});
