import { GOAL_KINDS, type GoalKind } from '../../../engine/lesson/goal-kinds.ts';

const KEY = 'pullstack-levels-done';

/** Levels that were done in this browser. */
export function levelsDone(): ReadonlySet<GoalKind> {
  try {
    const named = (localStorage.getItem(KEY) ?? '').split(' ');
    return new Set(GOAL_KINDS.filter((kind) => named.includes(kind)));
  } catch {
    // A browser that keeps nothing knows of none.
    return new Set();
  }
}

/** Remembers that a level is done. @returns all that are */
export function levelDone(kind: GoalKind): ReadonlySet<GoalKind> {
  const done = new Set([...levelsDone(), kind]);
  try {
    localStorage.setItem(KEY, [...done].join(' '));
  } catch {
    // It counts until the page is closed.
  }
  return done;
}
