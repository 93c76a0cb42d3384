import { BENCH_RULES, type BenchCommand } from './bench.ts';
import { CHEST_RULES, type ChestCommand } from './chest.ts';
import { COMPOSE_RULES, type ComposeCommand } from './compose.ts';
import { DRAW_RULES, type DrawCommand } from './draw.ts';
import { DRAWER_RULES, type DrawerCommand } from './drawer.ts';
import { INKS_RULES, type InksCommand } from './inks.ts';
import { LESSON_RULES, type LessonCommand } from './lesson.ts';
import { MANY_PULLS_RULES, type ManyPullsCommand } from './many-pulls.ts';
import { PRESS_RULES, type PressCommand } from './press.ts';
import { RECIPES_RULES, type RecipesCommand } from './recipes.ts';
import type { CommandRule, RulesOf } from './rule.ts';
import { TITLE_RULES, type TitleCommand } from './title.ts';
import { WALL_RULES, type WallCommand } from './wall.ts';

/** Everything a user can do to a project. Components send these; `apply` carries them out. */
export type Command =
  | TitleCommand
  | DrawerCommand
  | DrawCommand
  | ComposeCommand
  | InksCommand
  | BenchCommand
  | ManyPullsCommand
  | WallCommand
  | ChestCommand
  | RecipesCommand
  | PressCommand
  | LessonCommand;

const RULES: RulesOf<Command> = {
  ...TITLE_RULES,
  ...DRAWER_RULES,
  ...DRAW_RULES,
  ...COMPOSE_RULES,
  ...INKS_RULES,
  ...BENCH_RULES,
  ...MANY_PULLS_RULES,
  ...WALL_RULES,
  ...CHEST_RULES,
  ...RECIPES_RULES,
  ...PRESS_RULES,
  ...LESSON_RULES,
};

/** How a command of any kind is named, merged and carried out. */
export function ruleOf<C extends Command>(command: C): CommandRule<C> {
  // Each kind's rule takes that kind of command, which the type of the table says but a look-up cannot.
  return RULES[command.kind] as unknown as CommandRule<C>;
}
