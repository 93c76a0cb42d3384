import type { Draft } from 'immer';
import { defined, entryAt } from '../../base/at.ts';
import type { Ink } from '../../ink/types.ts';
import type { PrintLineage } from '../../recipe/lineage.ts';
import type { Screen, Shape } from '../../shapes/types.ts';
import type { Pull } from '../../stack/types.ts';
import { say } from '../../words/en/project/commands.ts';
import type { Project } from '../types.ts';
import { checkedPull, indexOf, removeById, requireFew, requireFree } from './checks.ts';
import { addShapes } from './drawer.ts';
import { addInks } from './inks.ts';
import { dropLooseHolds, setBench } from './open.ts';
import { fieldsOf, type RulesOf } from './rule.ts';

/** What of a pull can be changed in place. */
export type PullChange = Partial<Omit<Pull, 'id' | 'screen'>>;

/** What can be done to the stack on the Bench. */
export type BenchCommand =
  | {
      kind: 'open-stack';
      pulls: Pull[];
      /** The wall print that the stack is; none when it was put together by hand. */ print?: PrintLineage;
    }
  | { kind: 'add-pull'; pull: Pull; at: number }
  | { kind: 'add-pulls'; pulls: Pull[] }
  | { kind: 'lay-veil'; inks: Ink[]; shape: Shape | null; screen: Screen | null; pull: Pull; at: number }
  | { kind: 'move-pull'; pull: string; to: number }
  | { kind: 'change-pull'; pull: string; change: PullChange }
  | { kind: 'remove-pull'; pull: string };

function addPull(draft: Draft<Project>, pull: Pull, at: number): void {
  requireFree(draft.bench, pull, 'pull');
  requireFew(draft.bench.length + 1);
  draft.bench.splice(clampIndex(at, draft.bench.length + 1), 0, checkedPull(draft, pull));
}

function clampIndex(at: number, below: number): number {
  return Math.max(0, Math.min(below - 1, Math.trunc(at)));
}

/** How it is done. */
export const BENCH_RULES: RulesOf<BenchCommand> = {
  'open-stack': {
    label: say.openStack,
    change: (draft, { pulls, print }) => setBench(draft, pulls, print === undefined ? { kind: 'hand' } : { kind: 'wall', print }),
  },
  'add-pull': {
    label: say.addPull,
    change: (draft, { pull, at }) => addPull(draft, pull, at),
  },
  'add-pulls': {
    label: say.addPulls,
    change(draft, { pulls }) {
      for (const pull of pulls) addPull(draft, pull, draft.bench.length);
    },
  },
  'lay-veil': {
    label: say.layVeil,
    change(draft, { inks, shape, screen, pull, at }) {
      addInks(draft, inks);
      addShapes(draft, shape === null ? [] : [shape], screen === null ? [] : [screen]);
      addPull(draft, pull, at);
    },
  },
  'move-pull': {
    label: say.movePull,
    change({ bench }, { pull: id, to }) {
      const from = indexOf(bench, id, 'pull');
      const [pull] = bench.splice(from, 1);
      bench.splice(clampIndex(to, bench.length + 1), 0, defined(pull));
    },
  },
  'change-pull': {
    label: say.changePull,
    mergeKey: ({ kind, pull, change }) => `${kind}:${pull}:${fieldsOf(change)}`,
    change(draft, { pull, change }) {
      const at = indexOf(draft.bench, pull, 'pull');
      draft.bench[at] = checkedPull(draft, { ...entryAt(draft.bench, at), ...change });
    },
  },
  'remove-pull': {
    label: say.removePull,
    change(draft, { pull }) {
      removeById(draft.bench, pull, 'pull');
      dropLooseHolds(draft);
    },
  },
};
