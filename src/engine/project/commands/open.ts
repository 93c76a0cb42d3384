import type { Draft } from 'immer';
import { cutLineage } from '../../recipe/lineage.ts';
import type { Pull } from '../../stack/types.ts';
import type { Project, StackSource } from '../types.ts';
import { checkedPull, requireFew } from './checks.ts';

/**
 * Opens a stack on the Bench and remembers it with where it came from.
 * @throws EngineError 'command.pulls', 'command.pull' or 'command.unknown' as its checks do
 */
export function setBench(draft: Draft<Project>, pulls: readonly Pull[], source: StackSource): void {
  requireFew(pulls.length);
  const opened = pulls.map((pull) => checkedPull(draft, pull));
  draft.bench = opened;
  draft.origin = {
    source: source.kind === 'wall' ? { kind: 'wall', print: cutLineage(source.print) } : source,
    pulls: opened.map((pull) => ({ ...pull })),
  };
  dropLooseHolds(draft);
}

/** A hold on a pull that is gone would hold nothing, yet be reported as a contradiction. */
export function dropLooseHolds(draft: Draft<Project>): void {
  const there = new Set(draft.bench.map((pull) => pull.id));
  draft.explore.holds = draft.explore.holds.filter((hold) => there.has(hold.pull) && (hold.kind !== 'before' || there.has(hold.other)));
}
