import { enablePatches, type Patch, produceWithPatches } from 'immer';
import { type Command, ruleOf } from './commands/command.ts';
import type { Project } from './types.ts';

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
  const [next, patches, inverse] = produceWithPatches(project, (draft) => ruleOf(command).change(draft, command));
  return { project: next, patches, inverse };
}
