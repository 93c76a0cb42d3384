import type { Hold } from '../types.ts';

/** What a menu entry stands for: a kind of hold, `before:<pull>`, or `free`. */
export type HoldChoice = string;

/** The menu entry of a hold. */
export function choiceOf(hold: Hold): HoldChoice {
  return hold.kind === 'before' ? `before:${hold.other}` : hold.kind;
}

/** Kinds of holds that say nothing of the order, so that they stand beside one that does; the last in the menu comes last. */
const BESIDE: readonly string[] = ['lies', 'ink'];

/** The holds that a pull is under, those on its place in the order first: the first of them stands in the menu. */
export function holdsOf(holds: readonly Hold[], pull: string): Hold[] {
  const own = holds.filter((hold) => hold.pull === pull);
  return own.toSorted((a, b) => BESIDE.indexOf(a.kind) - BESIDE.indexOf(b.kind));
}

/**
 * Puts a pull under a hold chosen from its menu. It takes the place of the one before, but a pull
 * can go down before several others, and what keeps its ink or lies as it does goes on so beside a hold on the place.
 * @param choice a menu entry; `free` lifts every hold that the pull is under
 */
export function withHold(holds: readonly Hold[], pull: string, choice: HoldChoice): Hold[] {
  const isBefore = choice.startsWith('before:');
  const kept = holds.filter((hold) => {
    if (hold.pull !== pull) return true;
    if (choice === 'free' || choice === 'out' || choice === 'ink') return false;
    if (choice === 'lies') return hold.kind !== 'lies' && hold.kind !== 'out';
    if (BESIDE.includes(hold.kind)) return true;
    return isBefore && hold.kind === 'before' && choiceOf(hold) !== choice;
  });
  // oxlint-disable-next-line unicorn/no-thenable -- a hold's own field, never awaited
  if (isBefore) return [...kept, { kind: 'before', pull, other: choice.slice('before:'.length) }];
  switch (choice) {
    case 'first':
    case 'last':
    case 'place':
    case 'ink':
    case 'out':
    case 'lies':
      return [...kept, { kind: choice, pull }];
    default:
      return kept;
  }
}

/** Keeps a pull's ink or lets it go, whatever holds its place. */
export function withInkKept(holds: readonly Hold[], pull: string, keep: boolean): Hold[] {
  const others = holds.filter((hold) => hold.pull !== pull || (hold.kind !== 'ink' && !(keep && hold.kind === 'out')));
  return keep ? [...others, { kind: 'ink', pull }] : others;
}

/** Lifts one hold. */
export function withoutHold(holds: readonly Hold[], gone: Hold): Hold[] {
  return holds.filter((hold) => hold.pull !== gone.pull || choiceOf(hold) !== choiceOf(gone));
}
