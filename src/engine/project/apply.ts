import { current, type Draft, enablePatches, type Patch, produceWithPatches } from 'immer';
import { defined, entryAt } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { toOffsetGrid } from '../base/units.ts';
import { MAX_EXPLORE_PULLS } from '../explore/settings/check.ts';
import { printInks } from '../ink/mix/mix.ts';
import { remixed } from '../ink/mix/remix.ts';
import type { Ink } from '../ink/types.ts';
import { editionSchema } from '../log/edition/edition-schema.ts';
import type { Edition } from '../log/edition/edition.ts';
import { fieldName } from '../recipe/explain.ts';
import { cutLineage } from '../recipe/lineage.ts';
import { pullSchema } from '../recipe/schema.ts';
import type { Pull } from '../stack/types.ts';
import { adoptRecipe } from './adopt.ts';
import type { Command } from './commands.ts';
import { forgetInk, forgetScreen } from './forget.ts';
import { namedInks } from './target.ts';
import { MOST_PINS, type Project, type Target } from './types.ts';

enablePatches();

/** A new project and the diffs that lead to it and back. */
export interface Applied {
  project: Project;
  patches: Patch[];
  inverse: Patch[];
}

/**
 * Carries out one command.
 * @returns a new frozen project with its diffs; the one given is untouched
 * @throws EngineError 'command.…' with a sentence when the command cannot be carried out
 */
export function apply(project: Project, command: Command): Applied {
  const [next, patches, inverse] = produceWithPatches(project, (draft) => change(draft, command));
  return { project: next, patches, inverse };
}

function change(draft: Draft<Project>, command: Command): void {
  const { drawer } = draft;
  switch (command.kind) {
    case 'rename':
      draft.title = command.title;
      return;
    case 'add-shapes':
      for (const screen of command.screens) requireFree(drawer.screens, screen, 'screen');
      for (const shape of command.shapes) requireFree(drawer.shapes, shape, 'shape');
      drawer.shapes.push(...command.shapes);
      drawer.screens.push(...command.screens);
      return;
    case 'remove-shape': {
      const holder = drawer.screens.find((screen) => screen.placed.some((placed) => placed.shape === command.shape));
      if (holder !== undefined) {
        throw new EngineError(
          'command.in-use',
          `The shape is on screen ${holder.number}; take it off that screen, or remove the screen, first.`,
        );
      }
      removeById(drawer.shapes, command.shape, 'shape');
      return;
    }
    case 'add-screen':
      requireFree(drawer.screens, command.screen, 'screen');
      drawer.screens.push(command.screen);
      return;
    case 'change-screen': {
      const screen = find(drawer.screens, command.screen, 'screen');
      if (command.name !== undefined) screen.name = command.name;
      if (command.placed !== undefined) screen.placed = command.placed;
      if (command.mesh !== undefined) screen.mesh = command.mesh;
      return;
    }
    case 'lay-out':
      for (const { screen, placed } of command.places) find(drawer.screens, screen, 'screen').placed = placed;
      return;
    case 'remove-screen':
      refuseInUse(draft, (pull) => pull.screen === command.screen, 'screen');
      removeById(drawer.screens, command.screen, 'screen');
      forgetScreen(draft.explore, command.screen);
      unpin(draft, (pull) => pull.screen === command.screen);
      return;
    case 'add-ink':
      addInk(draft, command.ink);
      return;
    case 'add-inks':
      for (const ink of command.inks) addInk(draft, ink);
      return;
    case 'change-ink':
      changeInks(drawer, [command.ink]);
      return;
    case 'change-inks':
      changeInks(drawer, command.inks);
      return;
    case 'remove-ink': {
      refuseInUse(draft, (pull) => pull.ink === command.ink, 'ink');
      const mixed = mixOf(drawer.inks, command.ink);
      if (mixed !== undefined) {
        throw new EngineError('command.in-use', `The ink is weighed into the mix “${mixed.name}”; remove that mix first.`);
      }
      removeById(drawer.inks, command.ink, 'ink');
      forgetInk(draft.explore, command.ink);
      unpin(draft, (pull) => pull.ink === command.ink);
      if (draft.target !== undefined) draft.target = withoutInk(draft.target, command.ink);
      return;
    }
    case 'set-paper':
      drawer.paper = command.paper;
      return;
    case 'set-stroke-gain':
      if (!(command.strokeGain >= 0 && command.strokeGain <= 1)) {
        throw new EngineError(
          'command.stroke-gain',
          'A further stroke adds between none and all of the first film again; give a share from 0 to 1.',
        );
      }
      drawer.strokeGain = command.strokeGain;
      return;
    case 'open-stack':
      setBench(draft, command.pulls);
      return;
    case 'add-pull':
      requireFree(draft.bench, command.pull, 'pull');
      requireFew(draft.bench.length + 1);
      draft.bench.splice(clampIndex(command.at, draft.bench.length + 1), 0, checked(draft, command.pull));
      return;
    case 'lay-veil':
      for (const ink of command.inks) change(draft, { kind: 'add-ink', ink });
      change(draft, {
        kind: 'add-shapes',
        shapes: command.shape === null ? [] : [command.shape],
        screens: command.screen === null ? [] : [command.screen],
      });
      change(draft, { kind: 'add-pull', pull: command.pull, at: command.at });
      return;
    case 'move-pull': {
      const from = indexOf(draft.bench, command.pull, 'pull');
      const [pull] = draft.bench.splice(from, 1);
      draft.bench.splice(clampIndex(command.to, draft.bench.length + 1), 0, defined(pull));
      return;
    }
    case 'change-pull': {
      const at = indexOf(draft.bench, command.pull, 'pull');
      draft.bench[at] = checked(draft, { ...entryAt(draft.bench, at), ...command.change });
      return;
    }
    case 'remove-pull':
      removeById(draft.bench, command.pull, 'pull');
      dropLooseHolds(draft);
      return;
    case 'set-explore':
      Object.assign(draft.explore, command.change);
      return;
    case 'set-holds':
      draft.explore.holds = command.holds;
      return;
    case 'set-pins':
      if (command.pins.length > MOST_PINS) {
        throw new EngineError('command.pins', `At most ${MOST_PINS} prints stay pinned; take a pin off, or keep some in the Chest.`);
      }
      for (const { pulls } of command.pins) requireFew(pulls.length);
      draft.pins = command.pins.map((pin) => ({
        ...pin,
        pulls: pin.pulls.map((pull) => checked(draft, pull)),
        lineage: cutLineage(pin.lineage),
      }));
      return;
    case 'keep-recipe':
      requireFree(draft.recipes, command.recipe, 'recipe');
      requireFew(command.recipe.pulls.length);
      draft.recipes.push(command.recipe);
      return;
    case 'change-recipe': {
      const recipe = find(draft.recipes, command.recipe, 'recipe');
      if (command.title !== undefined) recipe.title = command.title;
      if (command.note !== undefined) recipe.note = command.note;
      return;
    }
    case 'remove-recipe':
      removeById(draft.recipes, command.recipe, 'recipe');
      draft.visit = draft.visit.filter((run) => run.recipe !== command.recipe);
      if (draft.editions !== undefined) draft.editions = draft.editions.filter((edition) => edition.recipe !== command.recipe);
      return;
    case 'open-recipe':
      setBench(draft, adoptRecipe(drawer, find(draft.recipes, command.recipe, 'recipe')));
      draft.explore.palette = printInks(drawer.inks).map((ink) => ink.id);
      return;
    case 'set-visit':
      for (const run of command.runs) {
        find(draft.recipes, run.recipe, 'recipe');
        if (!Number.isInteger(run.sheets) || run.sheets < 0 || run.sheets > 500) {
          throw new EngineError('command.sheets', `A visit prints 0 to 500 sheets of a recipe, not ${run.sheets}; give a whole number.`);
        }
      }
      draft.visit = command.runs.filter((run) => run.sheets > 0);
      return;
    case 'thin-visit':
      for (const recipe of command.recipes) change(draft, { kind: 'keep-recipe', recipe });
      change(draft, { kind: 'set-visit', runs: command.runs });
      change(draft, { kind: 'set-press', change: command.press });
      return;
    case 'set-press':
      Object.assign(draft.press, command.change);
      return;
    case 'set-lesson':
      if (command.pulls.length > 5) {
        throw new EngineError('command.lesson', 'A lesson compares two to five pulls; take one out before adding another.');
      }
      draft.lesson = command.pulls.map((pull) => checked(draft, pull));
      return;
    case 'set-target':
      for (const id of namedInks(command.target)) find(drawer.inks, id, 'ink');
      draft.target = command.target;
      return;
    case 'set-edition':
      setEdition(draft, command.edition);
      return;
  }
}

/** A pinned print cannot be drawn without its screens and inks. */
function unpin(draft: Draft<Project>, uses: (pull: Pull) => boolean): void {
  if (draft.pins?.some((pin) => pin.pulls.some(uses)) === true) draft.pins = draft.pins.filter((pin) => !pin.pulls.some(uses));
}

function setEdition(draft: Draft<Project>, edition: Edition): void {
  find(draft.recipes, edition.recipe, 'recipe');
  const parsed = editionSchema.safeParse(edition);
  if (!parsed.success) {
    const issue = entryAt(parsed.error.issues, 0);
    throw new EngineError('command.edition', `The edition's ${fieldName(issue.path)} cannot be so: ${issue.message}.`);
  }
  const editions = (draft.editions ??= []);
  const at = editions.findIndex((other) => other.recipe === edition.recipe);
  if (at < 0) editions.push(edition);
  else editions[at] = edition;
}

/** A longer stack could be kept, but its project not be read again. */
function requireFew(pulls: number): void {
  if (pulls > MAX_EXPLORE_PULLS) {
    throw new EngineError(
      'command.pulls',
      `A stack has at most ${MAX_EXPLORE_PULLS} pulls, and this one would have ${pulls.toLocaleString('en')}; leave some out.`,
    );
  }
}

function setBench(draft: Draft<Project>, pulls: readonly Pull[]): void {
  requireFew(pulls.length);
  draft.bench = pulls.map((pull) => checked(draft, pull));
  dropLooseHolds(draft);
}

/** A hold on a pull that is gone would hold nothing, yet be told as a contradiction. */
function dropLooseHolds(draft: Draft<Project>): void {
  const there = new Set(draft.bench.map((pull) => pull.id));
  draft.explore.holds = draft.explore.holds.filter((hold) => there.has(hold.pull) && (hold.kind !== 'before' || there.has(hold.other)));
}

function checked(draft: Draft<Project>, pull: Pull): Pull {
  find(draft.drawer.screens, pull.screen, 'screen');
  find(draft.drawer.inks, pull.ink, 'ink');
  const parsed = pullSchema.safeParse(pull);
  if (!parsed.success) {
    const issue = entryAt(parsed.error.issues, 0);
    throw new EngineError('command.pull', `The pull's ${fieldName(issue.path)} cannot be so: ${issue.message}.`, {
      path: issue.path.map((key) => (typeof key === 'symbol' ? String(key) : key)),
    });
  }
  return { ...parsed.data, dxMm: toOffsetGrid(pull.dxMm), dyMm: toOffsetGrid(pull.dyMm) };
}

/** Mixes of the inks that change are mixed again, unless the command changes them itself. */
function changeInks(drawer: Draft<Project>['drawer'], inks: readonly Ink[]): void {
  const before = current(drawer.inks);
  for (const ink of inks) {
    requireMix(drawer.inks, ink);
    // The whole ink, so that fields which the new one leaves out are gone.
    drawer.inks[indexOf(drawer.inks, ink.id, 'ink')] = ink;
  }
  const own = new Set(inks.map(({ id }) => id));
  for (const mixed of remixed(before, current(drawer.inks))) {
    if (!own.has(mixed.id)) drawer.inks[indexOf(drawer.inks, mixed.id, 'ink')] = mixed;
  }
}

function withoutInk({ inks, squares }: Target, ink: string): Target {
  return { inks: inks.filter((id) => id !== ink), squares: squares.filter(({ first, over }) => first !== ink && over !== ink) };
}

function refuseInUse(draft: Draft<Project>, uses: (pull: Pull) => boolean, what: string): void {
  if ([...draft.bench, ...draft.lesson].some(uses)) {
    throw new EngineError('command.in-use', `The ${what} is used by a pull on the Bench or in the Lesson; take that pull away first.`);
  }
}

function addInk(draft: Draft<Project>, ink: Ink): void {
  const { inks } = draft.drawer;
  requireFree(inks, ink, 'ink');
  requireMix(inks, ink);
  inks.push(ink);
  if (ink.stock !== true) draft.explore.palette.push(ink.id);
}

/** Mixes are weighed from stock inks only: each must be there, and be no mix and in none if it becomes one. */
function requireMix(inks: readonly Ink[], ink: Ink): void {
  if (ink.mix === undefined) return;
  for (const part of ink.mix) {
    const stock = find([...inks], part.ink, 'ink');
    if (stock.mix !== undefined || stock.id === ink.id) {
      throw new EngineError(
        'command.mix',
        `The mix “${ink.name}” names “${stock.name}”, which is a mix; name the stock inks that it is mixed from.`,
      );
    }
  }
  const mixed = mixOf(inks, ink.id);
  if (mixed !== undefined) {
    throw new EngineError(
      'command.mix',
      `“${ink.name}” is weighed into the mix “${mixed.name}”, so it cannot become a mix; make a new ink of it.`,
    );
  }
}

/** A mix that an ink is weighed into. */
function mixOf(inks: readonly Ink[], id: string): Ink | undefined {
  return inks.find((ink) => ink.mix?.some((part) => part.ink === id));
}

function indexOf(list: readonly { id: string }[], id: string, what: string): number {
  const at = list.findIndex((entry) => entry.id === id);
  if (at < 0) throw new EngineError('command.unknown', `There is no ${what} "${id}" in this project; choose one that is.`);
  return at;
}

function find<T extends { id: string }>(list: T[], id: string, what: string): T {
  return entryAt(list, indexOf(list, id, what));
}

function removeById(list: { id: string }[], id: string, what: string): void {
  list.splice(indexOf(list, id, what), 1);
}

function requireFree(list: readonly { id: string }[], entry: { id: string }, what: string): void {
  if (list.some((other) => other.id === entry.id)) {
    throw new EngineError('command.double', `There already is a ${what} "${entry.id}"; give the new one another id.`);
  }
}

function clampIndex(at: number, below: number): number {
  return Math.max(0, Math.min(below - 1, Math.trunc(at)));
}
