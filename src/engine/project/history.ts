import { applyPatches, type Patch } from 'immer';
import { apply } from './apply.ts';
import { type Command, ruleOf } from './commands/command.ts';
import type { Project } from './types.ts';

interface Step {
  label: string;
  key: string | null;
  patches: Patch[];
  inverse: Patch[];
}

/** A project with what leads back and forth; a plain value. */
export interface History {
  project: Project;
  past: readonly Step[];
  future: readonly Step[];
}

/** Older steps are forgotten: diffs are small, but a long day at the Bench has thousands. */
const MAX_STEPS = 500;

/** A history that starts here, with nothing to undo. */
export function startHistory(project: Project): History {
  return { project, past: [], future: [] };
}

/** Ends the last step: what comes next is undone apart from it, even if it is the same small change. */
export function endStep(history: History): History {
  const last = history.past.at(-1);
  if (last === undefined || last.key === null) return history;
  return { ...history, past: [...history.past.slice(0, -1), { ...last, key: null }] };
}

/**
 * Carries out a command and remembers how to undo it; runs of one small change become one step.
 * @throws EngineError as `apply` does; the history given is untouched
 */
export function perform(history: History, command: Command): History {
  const applied = apply(history.project, command);
  if (applied.patches.length === 0) return history;
  const { label, mergeKey } = ruleOf(command);
  const key = mergeKey?.(command, history.project) ?? null;
  const last = history.past.at(-1);
  const step: Step = { label, key, patches: applied.patches, inverse: applied.inverse };
  const merges = key !== null && last?.key === key && history.future.length === 0;
  const past = merges
    ? [...history.past.slice(0, -1), { ...step, patches: [...last.patches, ...step.patches], inverse: [...step.inverse, ...last.inverse] }]
    : [...history.past, step].slice(-MAX_STEPS);
  return { project: applied.project, past, future: [] };
}

/** Takes the last step back; the same history when there is none. */
export function undo(history: History): History {
  const step = history.past.at(-1);
  if (step === undefined) return history;
  return {
    project: applyPatches(history.project, step.inverse),
    past: history.past.slice(0, -1),
    future: [step, ...history.future],
  };
}

/** Does the last undone step again; the same history when there is none. */
export function redo(history: History): History {
  const [step, ...future] = history.future;
  if (step === undefined) return history;
  return {
    project: applyPatches(history.project, step.patches),
    past: [...history.past, { ...step, key: null }],
    future,
  };
}
