import { entryAt } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { say } from '../words/en/stack/stack.ts';
import type { Pull, Stack } from './types.ts';

/** Whether two pulls print the same area: the same screen at the same offset. */
export function samePlacement(a: Pull, b: Pull): boolean {
  return a.screen === b.screen && a.dxMm === b.dxMm && a.dyMm === b.dyMm && a.turnDeg === b.turnDeg;
}

/**
 * Which cover bit each pull of a stack has in a map that was built from another.
 * @param stack the pulls to look for, by their ids
 * @param mapStack the stack that the map was built from; bit i is its pull i
 * @param out receives the bits, one a pull of `stack`
 * @returns the index of the first pull that the map does not hold at its placement; −1 when it holds all
 */
export function findBits(stack: Stack, mapStack: Stack, out: number[]): number {
  const { pulls } = stack;
  const held = mapStack.pulls;
  if (out.length !== pulls.length) out.length = pulls.length;
  for (let i = 0; i < pulls.length; i++) {
    const pull = entryAt(pulls, i);
    let bit = held[i] !== undefined && entryAt(held, i).id === pull.id ? i : -1;
    for (let k = 0; bit < 0 && k < held.length; k++) if (entryAt(held, k).id === pull.id) bit = k;
    if (bit < 0 || !samePlacement(pull, entryAt(held, bit))) return i;
    out[i] = bit;
  }
  return -1;
}

/**
 * Text that is equal for two stacks when one cell map serves both: the same placed screens under the
 * same pull ids, in any order and inks.
 */
export function placementKey(stack: Stack): string {
  return stack.pulls
    .map((pull) => JSON.stringify([pull.id, pull.screen, pull.dxMm, pull.dyMm, pull.turnDeg]))
    .sort()
    .join('\n');
}

/** @throws EngineError 'stack.bad-offset' when an offset is no finite number */
export function checkOffset(pull: Pull, index: number): void {
  // Asked of every pull of every print: a loop over names finds each field by its name anew.
  if (Number.isFinite(pull.dxMm) && Number.isFinite(pull.dyMm) && Number.isFinite(pull.turnDeg)) return;
  const field = (['dxMm', 'dyMm', 'turnDeg'] as const).find((name) => !Number.isFinite(pull[name])) ?? 'dxMm';
  throw new EngineError('stack.bad-offset', say.pullHasOffsetNeeds(index + 1, field, pull[field]), {
    path: ['pulls', index, field],
  });
}
