import type { PlacedShape, Shape } from '../../shapes/types.ts';
import { say } from '../../words/en/project/commands.ts';
import { find, requireFree } from './checks.ts';
import type { RulesOf } from './rule.ts';

/** What can be done to outlines that are in the drawer. */
export type DrawCommand =
  | { kind: 'replace-shape'; shape: Shape; places: { screen: string; placed: PlacedShape[] }[] }
  /** Puts the pieces of a shape in its place, on its screens too. */
  | { kind: 'cut-to-pieces'; shape: string; pieces: Shape[]; places: { screen: string; placed: PlacedShape[] }[] };

/** How it is done. */
export const DRAW_RULES: RulesOf<DrawCommand> = {
  'replace-shape': {
    label: say.cutAndJoinShape,
    change({ drawer: studio }, { shape, places }) {
      Object.assign(find(studio.shapes, shape.id, 'shape'), shape);
      for (const { screen, placed } of places) find(studio.screens, screen, 'screen').placed = placed;
    },
  },
  'cut-to-pieces': {
    label: say.cutShapeToPieces,
    change({ drawer: studio }, { shape, pieces, places }) {
      for (const piece of pieces) requireFree(studio.shapes, piece, 'shape');
      studio.shapes.splice(studio.shapes.indexOf(find(studio.shapes, shape, 'shape')), 1, ...pieces);
      for (const { screen, placed } of places) find(studio.screens, screen, 'screen').placed = placed;
    },
  },
};
