import type { ExploreSettings, Hold } from '../explore/types.ts';
import type { Ink, Paper } from '../ink/types.ts';
import type { Edition } from '../log/edition/edition.ts';
import type { Recipe } from '../recipe/types.ts';
import type { PlacedShape, Screen, Shape } from '../shapes/types.ts';
import type { Pull } from '../stack/types.ts';
import type { Pin, PressSettings, Target, VisitRun } from './types.ts';

/** What of a pull can be changed in place. */
export type PullChange = Partial<Omit<Pull, 'id' | 'screen'>>;

/** Everything a user can do to a project. Components send these; `apply` carries them out. */
export type Command =
  | { kind: 'rename'; title: string }
  | { kind: 'add-shapes'; shapes: Shape[]; screens: Screen[] }
  | { kind: 'remove-shape'; shape: string }
  | { kind: 'add-screen'; screen: Screen }
  | { kind: 'change-screen'; screen: string; name?: string; placed?: PlacedShape[]; mesh?: Screen['mesh'] }
  | { kind: 'lay-out'; places: { screen: string; placed: PlacedShape[] }[] }
  | { kind: 'remove-screen'; screen: string }
  | { kind: 'add-ink'; ink: Ink }
  | { kind: 'add-inks'; inks: Ink[] }
  | { kind: 'change-ink'; ink: Ink }
  | { kind: 'change-inks'; inks: Ink[] }
  | { kind: 'remove-ink'; ink: string }
  | { kind: 'set-paper'; paper: Paper }
  | { kind: 'set-stroke-gain'; strokeGain: number }
  | { kind: 'open-stack'; pulls: Pull[] }
  | { kind: 'add-pull'; pull: Pull; at: number }
  | { kind: 'lay-veil'; inks: Ink[]; shape: Shape | null; screen: Screen | null; pull: Pull; at: number }
  | { kind: 'move-pull'; pull: string; to: number }
  | { kind: 'change-pull'; pull: string; change: PullChange }
  | { kind: 'remove-pull'; pull: string }
  | { kind: 'set-explore'; change: Partial<Omit<ExploreSettings, 'holds'>> }
  | { kind: 'set-holds'; holds: Hold[] }
  | { kind: 'set-pins'; pins: Pin[] }
  | { kind: 'keep-recipe'; recipe: Recipe }
  | { kind: 'change-recipe'; recipe: string; title?: string; note?: string }
  | { kind: 'remove-recipe'; recipe: string }
  | { kind: 'open-recipe'; recipe: string }
  | { kind: 'set-visit'; runs: VisitRun[] }
  | { kind: 'thin-visit'; recipes: Recipe[]; runs: VisitRun[]; press: Partial<PressSettings> }
  | { kind: 'set-press'; change: Partial<PressSettings> }
  | { kind: 'set-lesson'; pulls: Pull[] }
  | { kind: 'set-target'; target: Target }
  | { kind: 'set-edition'; edition: Edition; /** What is typed digit by digit, to be undone as one. */ part?: 'counts' };

/** What undo and redo say they would take back or do again. */
export function commandLabel(command: Command): string {
  return LABELS[command.kind];
}

/** Runs of the same small change, such as nudging one pull, are undone as one. */
export function coalesceKey(command: Command): string | null {
  switch (command.kind) {
    case 'change-pull':
      return `${command.kind}:${command.pull}:${Object.keys(command.change).sort().join()}`;
    case 'set-explore':
    case 'set-press':
      return `${command.kind}:${Object.keys(command.change).sort().join()}`;
    case 'change-screen':
      return `${command.kind}:${command.screen}:${Object.keys(command).sort().join()}`;
    case 'change-recipe':
      return `${command.kind}:${command.recipe}`;
    case 'change-ink':
      return `${command.kind}:${command.ink.id}`;
    case 'set-lesson':
      return `${command.kind}:${command.pulls.map((pull) => pull.id).join()}`;
    case 'set-visit':
      return `${command.kind}:${command.runs.map((run) => run.recipe).join()}`;
    case 'set-edition':
      return command.part === undefined ? null : `${command.kind}:${command.edition.recipe}:${command.part}`;
    case 'rename':
    case 'set-target':
    case 'set-stroke-gain':
      return command.kind;
    default:
      return null;
  }
}

const LABELS: Record<Command['kind'], string> = {
  rename: 'rename the project',
  'add-shapes': 'add shapes',
  'remove-shape': 'remove a shape',
  'add-screen': 'make a screen',
  'change-screen': 'change a screen',
  'lay-out': 'lay out screens',
  'remove-screen': 'remove a screen',
  'add-ink': 'add an ink',
  'add-inks': 'add inks',
  'change-ink': 'change an ink',
  'change-inks': 'change inks',
  'remove-ink': 'remove an ink',
  'set-paper': 'change the paper',
  'set-stroke-gain': 'change the stroke gain',
  'open-stack': 'open a stack',
  'add-pull': 'add a pull',
  'lay-veil': 'lay a veil',
  'move-pull': 'move a pull',
  'change-pull': 'change a pull',
  'remove-pull': 'remove a pull',
  'set-explore': 'change what may vary',
  'set-holds': 'change the holds',
  'set-pins': 'change what is pinned',
  'keep-recipe': 'keep a recipe',
  'change-recipe': 'describe a recipe',
  'remove-recipe': 'remove a recipe',
  'open-recipe': 'open a recipe',
  'set-visit': 'change the visit',
  'thin-visit': 'make the visit fit',
  'set-press': 'change the studio figures',
  'set-lesson': 'change the lesson',
  'set-target': 'change the target',
  'set-edition': 'change an edition',
};
