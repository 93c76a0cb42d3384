import type { Draft } from 'immer';
import { entryAt } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { MOST_PULLS, OFFSET_MM, STROKES } from '../../base/limits.ts';
import { toOffsetGrid } from '../../base/units.ts';
import type { Pull } from '../../stack/types.ts';
import { say } from '../../words/en/project/commands.ts';
import { numberLocale } from '../../words/language.ts';
import type { Project } from '../types.ts';
import { fields, number, requireFields, text, whole } from './fields.ts';

/** An id. */
export const ID = text({ least: 1, most: 200 });
const PULL = fields({
  id: ID,
  screen: ID,
  ink: ID,
  dxMm: number(OFFSET_MM),
  dyMm: number(OFFSET_MM),
  turnDeg: number({ least: -360, most: 360 }),
  strokes: whole(STROKES),
});

/**
 * Where an entry stands in a list.
 * @param what the kind of entry, for the sentence: 'ink'
 * @throws EngineError 'command.unknown' when it is not in the list
 */
export function indexOf(list: readonly { id: string }[], id: string, what: string): number {
  const at = list.findIndex((entry) => entry.id === id);
  if (at < 0) throw new EngineError('command.unknown', say.thereIsNoIn(what, id));
  return at;
}

/**
 * The entry of a list that has an id.
 * @throws EngineError 'command.unknown' when there is none
 */
export function find<T extends { id: string }>(list: T[], id: string, what: string): T {
  return entryAt(list, indexOf(list, id, what));
}

/**
 * Takes an entry out of a list, in place.
 * @throws EngineError 'command.unknown' when it is not in the list
 */
export function removeById(list: { id: string }[], id: string, what: string): void {
  list.splice(indexOf(list, id, what), 1);
}

/**
 * Checks that a new entry's id is free.
 * @throws EngineError 'command.double' when another entry has it
 */
export function requireFree(list: readonly { id: string }[], entry: { id: string }, what: string): void {
  if (list.some((other) => other.id === entry.id)) {
    throw new EngineError('command.double', say.thereAlreadyIsGive(what, entry.id));
  }
}

/**
 * Checks the length of a stack: a longer one could be kept, but its project not be read again.
 * @throws EngineError 'command.pulls' when it is too long
 */
export function requireFew(pulls: number): void {
  if (pulls > MOST_PULLS) {
    throw new EngineError('command.pulls', say.stackHasAtMost(MOST_PULLS, pulls.toLocaleString(numberLocale())));
  }
}

/**
 * Checks a pull and sets its offset on the grid.
 * @throws EngineError 'command.unknown' for a screen or ink that is not there, 'command.pull' for a field out of range
 */
export function checkedPull(draft: Draft<Project>, pull: Pull): Pull {
  find(draft.drawer.screens, pull.screen, 'screen');
  find(draft.drawer.inks, pull.ink, 'ink');
  requireFields({ what: 'pull', whose: say.thePulls }, pull, PULL);
  const { id, screen, ink, turnDeg, strokes } = pull;
  return { id, screen, ink, dxMm: toOffsetGrid(pull.dxMm), dyMm: toOffsetGrid(pull.dyMm), turnDeg, strokes };
}

/**
 * Checks that no pull on the Bench or in the Lesson uses what is to go.
 * @throws EngineError 'command.in-use' when one does
 */
export function refuseInUse(draft: Draft<Project>, uses: (pull: Pull) => boolean, what: string): void {
  if ([...draft.bench, ...draft.lesson].some(uses)) {
    throw new EngineError('command.in-use', say.isUsedByPull(what));
  }
}

/** Takes off the pins that use what goes: a pinned print cannot be drawn without its screens and inks. */
export function unpin(draft: Draft<Project>, uses: (pull: Pull) => boolean): void {
  if (draft.pins?.some((pin) => pin.pulls.some(uses)) === true) draft.pins = draft.pins.filter((pin) => !pin.pulls.some(uses));
}
