import { entryAt } from '../../base/at.ts';
import { movedTo } from '../../stack/edit/rearrange.ts';
import { say } from '../../words/en/project/commands.ts';
import type { PullChange } from './bench.ts';
import { checkedPull, find, indexOf, removeById } from './checks.ts';
import { dropLooseHolds } from './open.ts';
import { fieldsOf, type RulesOf } from './rule.ts';

/** What can be done to several pulls on the Bench together. */
export type ManyPullsCommand =
  | { kind: 'change-pulls'; pulls: readonly string[]; change: PullChange }
  /** By so much further than each lies; `drag` for a whole move of the hand, which is undone by itself. */
  | { kind: 'offset-pulls'; pulls: readonly string[]; dxMm: number; dyMm: number; drag?: boolean }
  /** In the order that they have, the first of them at a place. */
  | { kind: 'move-pulls'; pulls: readonly string[]; to: number }
  | { kind: 'remove-pulls'; pulls: readonly string[] }
  /** Every pull on the Bench that is in one ink, in another. */
  | { kind: 'replace-ink'; ink: string; by: string };

/** How it is done. */
export const MANY_PULLS_RULES: RulesOf<ManyPullsCommand> = {
  'change-pulls': {
    label: say.changePulls,
    mergeKey: ({ kind, pulls, change }) => `${kind}:${pulls.join()}:${fieldsOf(change)}`,
    change(draft, { pulls, change }) {
      for (const id of pulls) {
        const at = indexOf(draft.bench, id, 'pull');
        draft.bench[at] = checkedPull(draft, { ...entryAt(draft.bench, at), ...change });
      }
    },
  },
  'offset-pulls': {
    label: say.movePullsOnSheet,
    mergeKey: ({ kind, pulls, dxMm, dyMm, drag }) => (drag === true ? null : `${kind}:${pulls.join()}:${dxMm === 0}:${dyMm === 0}`),
    change(draft, { pulls, dxMm, dyMm }) {
      for (const id of pulls) {
        const at = indexOf(draft.bench, id, 'pull');
        const pull = entryAt(draft.bench, at);
        draft.bench[at] = checkedPull(draft, { ...pull, dxMm: pull.dxMm + dxMm, dyMm: pull.dyMm + dyMm });
      }
    },
  },
  'move-pulls': {
    label: say.movePullsInOrder,
    change(draft, { pulls, to }) {
      for (const id of pulls) indexOf(draft.bench, id, 'pull');
      const moved = movedTo(draft.bench, new Set(pulls), to);
      if (moved.some((pull, at) => pull.id !== draft.bench[at]?.id)) draft.bench = moved;
    },
  },
  'remove-pulls': {
    label: say.removePulls,
    change(draft, { pulls }) {
      for (const id of pulls) removeById(draft.bench, id, 'pull');
      dropLooseHolds(draft);
    },
  },
  'replace-ink': {
    label: say.replaceInk,
    change(draft, { ink, by }) {
      find(draft.drawer.inks, by, 'ink');
      for (const pull of draft.bench) if (pull.ink === ink) pull.ink = by;
    },
  },
};
