import type { Draft } from 'immer';
import type { Project } from '../types.ts';

/** What the program knows of one kind of command. */
export interface CommandRule<C> {
  /** What undo and redo say they would take back or do again. */
  label: string;
  /** Commands in a row with the same key are undone as one; none or null: each on its own. */
  mergeKey?(command: C): string | null;
  /**
   * Changes the draft as the command says.
   * @throws EngineError 'command.…' when it cannot be carried out
   */
  change(draft: Draft<Project>, command: C): void;
}

/** One rule for each kind of a union of commands. */
export type RulesOf<C extends { kind: string }> = { [K in C['kind']]: CommandRule<Extract<C, { kind: K }>> };

/** Names of the fields that an object has, in one order. */
export function fieldsOf(change: object): string {
  return Object.keys(change).sort().join();
}
