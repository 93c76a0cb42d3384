import type { Draft } from 'immer';
import { EngineError } from '../../base/error.ts';
import { type Limits, MOST_COUNTED, PAPER_SIDE_MM } from '../../base/limits.ts';
import type { PrepareBudget } from '../../explore/prepare/budget.ts';
import { type Frames, withoutFrame } from '../../explore/prepare/frames.ts';
import { JOINT_MM, MOST_KEPT_CUTS, MOST_SECTIONS, MOST_SPREAD_MM, OVERLAP_MM } from '../../output/film/film-limits.ts';
import type { FilmSettings, KeptCuts } from '../../output/film/settings.ts';
import type { PlacedShape, Screen, Shape } from '../../shapes/types.ts';
import { say } from '../../words/en/project/commands.ts';
import { forgetScreen } from '../forget.ts';
import type { Project } from '../types.ts';
import { find, refuseInUse, removeById, requireFree, unpin } from './checks.ts';
import { fields, list, number as numberIn, oneOf, optional, requireFields } from './fields.ts';
import { fieldsChanged, fieldsOf, type RulesOf } from './rule.ts';

/** What can be done to shapes and screens. */
export type DrawerCommand =
  | { kind: 'add-shapes'; shapes: Shape[]; screens: Screen[] }
  | { kind: 'redraw-shape'; shape: Shape; places: { screen: string; placed: PlacedShape[] }[] }
  | { kind: 'exchange-shapes'; gone: { shapes: string[]; screens: string[] }; shapes: Shape[]; screens: Screen[] }
  | { kind: 'remove-shape'; shape: string }
  | { kind: 'add-screen'; screen: Screen }
  | { kind: 'change-screen'; screen: string; name?: string; number?: number; placed?: PlacedShape[]; mesh?: Screen['mesh'] }
  | { kind: 'set-frames'; frames: Frames }
  | { kind: 'set-films'; films: FilmSettings }
  | { kind: 'set-screen-budget'; budget: PrepareBudget }
  | { kind: 'lay-out'; places: { screen: string; placed: PlacedShape[] }[] }
  | { kind: 'remove-screen'; screen: string };

/** More is taken for a mistake, whatever the currency. */
const MOST_SPENT = 1e9;

/** Why an amount is no budget, in a sentence; '' where it is one. */
export function budgetProblem(amount: number): string {
  return amount >= 0 && amount <= MOST_SPENT ? '' : say.budgetOfCannotBe(amount, MOST_SPENT);
}

const onSheet: Limits = { least: 0, most: PAPER_SIDE_MM.most };
const cutPlaces = list(numberIn(onSheet), MOST_SECTIONS);

const FILMS = fields({
  side: oneOf(['paper', 'squeegee']),
  printed: oneOf(['against', 'away']),
  spreadMm: numberIn({ least: -MOST_SPREAD_MM, most: MOST_SPREAD_MM }),
  registerMarks: oneOf([true, false]),
  lays: oneOf([true, false]),
  as: oneOf(['pdf', 'pdfs', 'svgs']),
  paper: oneOf(['whole', 'A4', 'A3', 'Letter', 'Tabloid']),
  overlapMm: numberIn(OVERLAP_MM),
  cuts: optional(
    list(
      fields({
        widthMm: numberIn(PAPER_SIDE_MM),
        heightMm: numberIn(PAPER_SIDE_MM),
        acrossMm: cutPlaces,
        downMm: cutPlaces,
        overlapMm: numberIn(JOINT_MM),
      }),
      MOST_KEPT_CUTS,
    ),
  ),
});

/**
 * Puts shapes and the screens made of them into the drawer.
 * @throws EngineError 'command.double' when an id is taken
 */
export function addShapes({ drawer: studio }: Draft<Project>, shapes: readonly Shape[], screens: readonly Screen[]): void {
  for (const screen of screens) requireFree(studio.screens, screen, 'screen');
  for (const shape of shapes) requireFree(studio.shapes, shape, 'shape');
  studio.shapes.push(...(shapes as Draft<Shape>[]));
  studio.screens.push(...(screens as Draft<Screen>[]));
}

function removeScreen(draft: Draft<Project>, screen: string): void {
  refuseInUse(draft, (pull) => pull.screen === screen, 'screen');
  removeById(draft.drawer.screens, screen, 'screen');
  forgetScreen(draft.explore, screen);
  if (draft.frames !== undefined) draft.frames = withoutFrame(draft.frames as Frames, screen) as Draft<Frames>;
  unpin(draft, (pull) => pull.screen === screen);
}

function removeShape({ drawer: studio }: Draft<Project>, shape: string): void {
  const holder = studio.screens.find((screen) => screen.placed.some((placed) => placed.shape === shape));
  if (holder !== undefined) {
    throw new EngineError('command.in-use', say.shapeIsOnScreen(holder.number));
  }
  removeById(studio.shapes, shape, 'shape');
}

/** A drag, a turn and a size are kinds of their own; so is each shape that comes or goes. */
function screenKey(command: Extract<DrawerCommand, { kind: 'change-screen' }>, { drawer: studio }: Project): string | null {
  const { kind, screen: id, placed } = command;
  const key = `${kind}:${id}:${fieldsOf(command)}`;
  if (placed === undefined) return key;
  const before = studio.screens.find((screen) => screen.id === id)?.placed ?? [];
  if (before.length !== placed.length) return null;
  return `${key}:${placed.map((one, i) => fieldsChanged(before[i], one)).join(';')}`;
}

/** @throws EngineError 'command.number' for what is no whole number above 0, or is on another frame */
function giveNumber(screens: readonly Draft<Screen>[], screen: Draft<Screen>, number: number): void {
  if (!Number.isInteger(number) || number < 1 || number > MOST_COUNTED) {
    throw new EngineError('command.number', say.frameCannotHaveNumber(number, MOST_COUNTED));
  }
  const other = screens.find((each) => each.number === number && each.id !== screen.id);
  if (other !== undefined) {
    throw new EngineError('command.number', say.numberIsOnFrame(number, other.name));
  }
  screen.number = number;
}

/** How it is done. */
export const DRAWER_RULES: RulesOf<DrawerCommand> = {
  'add-shapes': {
    label: say.addShapes,
    change: (draft, { shapes, screens }) => addShapes(draft, shapes, screens),
  },
  'exchange-shapes': {
    label: say.divideDrawingOtherwise,
    change(draft, { gone, shapes, screens }) {
      for (const screen of gone.screens) removeScreen(draft, screen);
      for (const shape of gone.shapes) removeShape(draft, shape);
      addShapes(draft, shapes, screens);
    },
  },
  'remove-shape': {
    label: say.removeShape,
    change: (draft, { shape }) => removeShape(draft, shape),
  },
  'add-screen': {
    label: say.makeScreen,
    change({ drawer: studio }, { screen }) {
      requireFree(studio.screens, screen, 'screen');
      studio.screens.push(screen);
    },
  },
  'change-screen': {
    label: say.changeScreen,
    mergeKey: screenKey,
    change({ drawer: studio }, { screen: id, name, number, placed, mesh }) {
      const screen = find(studio.screens, id, 'screen');
      if (number !== undefined) giveNumber(studio.screens, screen, number);
      if (name !== undefined) screen.name = name;
      if (placed !== undefined) screen.placed = placed;
      if (mesh !== undefined) screen.mesh = mesh;
    },
  },
  'redraw-shape': {
    label: say.readShapeOtherwise,
    change({ drawer: studio }, { shape, places }) {
      Object.assign(find(studio.shapes, shape.id, 'shape'), shape);
      for (const { screen, placed } of places) find(studio.screens, screen, 'screen').placed = placed;
    },
  },
  'set-frames': {
    label: say.sayWhichScreensAre,
    change(draft, { frames: { made, toMake, film = [], reclaimed = [], inside = {} } }) {
      for (const id of [...made, ...toMake, ...film, ...reclaimed, ...Object.keys(inside)]) find(draft.drawer.screens, id, 'screen');
      const said = new Set(made);
      // The first list that a screen stands in counts; what says nothing is left out, as before there were more lists.
      const rest = [film, toMake, reclaimed].map((ids) => {
        const free = ids.filter((id) => !said.has(id));
        for (const id of free) said.add(id);
        return free;
      }) as [string[], string[], string[]];
      draft.frames = {
        made: [...made],
        toMake: rest[1],
        ...(rest[0].length > 0 ? { film: rest[0] } : {}),
        ...(rest[2].length > 0 ? { reclaimed: rest[2] } : {}),
        ...(Object.keys(inside).length > 0 ? { inside: { ...inside } } : {}),
      };
    },
  },
  'set-films': {
    label: say.changeHowFilmsAre,
    mergeKey: ({ kind, films }, { films: before }) => `${kind}:${fieldsChanged(before, films)}`,
    change(draft, { films }) {
      requireFields({ what: 'films', whose: say.theFilms }, films, FILMS);
      const { side, printed, spreadMm, registerMarks, lays, as, paper, overlapMm, cuts } = films;
      draft.films = { side, printed, spreadMm, registerMarks, lays, as, paper, overlapMm };
      if (cuts !== undefined) draft.films.cuts = cuts as Draft<KeptCuts[]>;
    },
  },
  'set-screen-budget': {
    label: say.changeWhatMayBe,
    mergeKey: ({ kind, budget }, { screenBudget }) => `${kind}:${fieldsChanged(screenBudget, budget)}`,
    change(draft, { budget }) {
      const amounts = Object.entries(budget).filter((entry): entry is [string, number] => entry[1] !== undefined);
      const problem = amounts.map(([, value]) => budgetProblem(value)).find((sentence) => sentence !== '');
      if (problem !== undefined) throw new EngineError('command.budget', problem);
      draft.screenBudget = Object.fromEntries(amounts);
    },
  },
  'lay-out': {
    label: say.layOutScreens,
    change({ drawer: studio }, { places }) {
      for (const { screen, placed } of places) find(studio.screens, screen, 'screen').placed = placed;
    },
  },
  'remove-screen': {
    label: say.removeScreen,
    change: (draft, { screen }) => removeScreen(draft, screen),
  },
};
