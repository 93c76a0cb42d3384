import type { Hold } from '../../engine/explore/types.ts';

/** What a menu entry stands for: a kind of hold, `before:<pull>`, or `free`. */
export type HoldChoice = string;

const OF_PLACE = ['first', 'last', 'place'];

/** The menu entry of a hold. */
export function choiceOf(hold: Hold): HoldChoice {
  return hold.kind === 'before' ? `before:${hold.then}` : hold.kind;
}

function rank(hold: Hold): number {
  return hold.kind === 'out' || OF_PLACE.includes(hold.kind) ? 0 : 1;
}

/** The holds that a pull is under, the one on its place first: that one stands in the menu. */
export function holdsOf(holds: readonly Hold[], pull: string): Hold[] {
  return holds.filter((hold) => hold.pull === pull).sort((a, b) => rank(a) - rank(b));
}

/**
 * Puts a pull under a hold chosen from its menu. Holds on its place replace each other; a pull
 * left out is under no other hold; the rest add up.
 * @param choice a menu entry; `free` lifts every hold that the pull is under
 */
export function withHold(holds: readonly Hold[], pull: string, choice: HoldChoice): Hold[] {
  const kept = holds.filter((hold) => {
    if (hold.pull !== pull) return true;
    if (choice === 'free' || choice === 'out' || hold.kind === 'out') return false;
    if (OF_PLACE.includes(choice) && OF_PLACE.includes(hold.kind)) return false;
    return choiceOf(hold) !== choice;
  });
  if (choice === 'free') return kept;
  // oxlint-disable-next-line unicorn/no-thenable -- a hold's own field, never awaited
  if (choice.startsWith('before:')) return [...kept, { kind: 'before', pull, then: choice.slice('before:'.length) }];
  switch (choice) {
    case 'first':
    case 'last':
    case 'place':
    case 'ink':
    case 'out':
      return [...kept, { kind: choice, pull }];
    default:
      return kept;
  }
}

/** Lifts one hold. */
export function withoutHold(holds: readonly Hold[], gone: Hold): Hold[] {
  return holds.filter((hold) => hold.pull !== gone.pull || choiceOf(hold) !== choiceOf(gone));
}
