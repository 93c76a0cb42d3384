import type { Draft } from 'immer';
import type { Project } from '../types.ts';

/** What the program knows of one kind of command. */
export interface CommandRule<C> {
  /** What undo and redo say they would take back or do again. */
  label: string;
  /**
   * Commands in a row with the same key are undone as one; none or null: each on its own. A key tells
   * what is changed, not only where, so that another kind of change begins another step.
   */
  mergeKey?(command: C, before: Project): string | null;
  /**
   * Changes the draft as the command says.
   * @throws EngineError 'command.…' when it cannot be carried out
   */
  change(draft: Draft<Project>, command: C): void;
}

/** One rule for each kind of a union of commands. */
export type RulesOf<C extends { kind: string }> = { [K in C['kind']]: CommandRule<Extract<C, { kind: K }>> };

/** Names of the fields in which one object differs from another, in one order. */
export function fieldsChanged(before: object | undefined, after: object): string {
  const old = new Map(Object.entries(before ?? {}));
  const differs = Object.entries(after).filter(([name, value]) => old.get(name) !== value);
  const gone = [...old.keys()].filter((name) => !(name in after));
  return [...differs.map(([name]) => name), ...gone].sort().join();
}

/** Names of the fields that an object has, in one order. */
export function fieldsOf(change: object): string {
  return Object.keys(change).sort().join();
}
