import type { Draft } from 'immer';
import { EngineError } from '../../base/error.ts';
import { PLACE_MM, SHAPE_SCALE, TURN_DEG, within } from '../../base/limits.ts';
import type { PlacedShape, Screen } from '../../shapes/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { say } from '../../words/en/project/commands.ts';
import { find, requireFree } from './checks.ts';
import type { RulesOf } from './rule.ts';

/** What can be done to screens on the whole sheet. */
export type ComposeCommand =
  /** `run` names steps of one kind, such as nudges by keys, which are undone as one; without, each is by itself. */
  | { kind: 'place-shapes'; screen: string; placed: PlacedShape[]; run?: string }
  | { kind: 'place-screens'; screens: { screen: string; placed: PlacedShape[] }[] }
  | { kind: 'add-screens'; screens: Screen[] };

/** How it is done. */
export const COMPOSE_RULES: RulesOf<ComposeCommand> = {
  'place-shapes': {
    label: say.placeShapesOnSheet,
    mergeKey: ({ kind, screen, run }) => (run === undefined ? null : `${kind}:${screen}:${run}`),
    change: ({ drawer }, { screen, placed }) => place(drawer, screen, placed),
  },
  'place-screens': {
    label: say.alignScreens,
    change({ drawer }, { screens }) {
      for (const { screen, placed } of screens) place(drawer, screen, placed);
    },
  },
  'add-screens': {
    label: say.makeScreens,
    change({ drawer: studio }, { screens }) {
      for (const screen of screens) {
        requireFree(studio.screens, screen, 'screen');
        for (const { shape } of screen.placed) find(studio.shapes, shape, 'shape');
        studio.screens.push(screen);
      }
    },
  },
};

function place({ screens, shapes }: Draft<Studio>, id: string, placed: PlacedShape[]): void {
  const screen = find(screens, id, 'screen');
  for (const one of placed) {
    find(shapes, one.shape, 'shape');
    checkPlace(one);
  }
  screen.placed = placed;
}

function checkPlace({ xMm, yMm, scale, turnDeg }: PlacedShape): void {
  if (within(PLACE_MM, xMm) && within(PLACE_MM, yMm) && within(SHAPE_SCALE, scale) && within(TURN_DEG, turnDeg)) return;
  throw new EngineError('command.place', say.shapeCannotLieMore);
}
