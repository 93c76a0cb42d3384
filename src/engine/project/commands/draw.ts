import type { PlacedShape, Shape } from '../../shapes/types.ts';
import { find } from './checks.ts';
import type { RulesOf } from './rule.ts';

/** What can be done to outlines that are in the drawer. */
export type DrawCommand = { kind: 'replace-shape'; shape: Shape; places: { screen: string; placed: PlacedShape[] }[] };

/** How it is done. */
export const DRAW_RULES: RulesOf<DrawCommand> = {
  'replace-shape': {
    label: 'cut and join a shape',
    change({ drawer: studio }, { shape, places }) {
      Object.assign(find(studio.shapes, shape.id, 'shape'), shape);
      for (const { screen, placed } of places) find(studio.screens, screen, 'screen').placed = placed;
    },
  },
};
