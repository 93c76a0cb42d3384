import { defined } from '../base/at.ts';
import type { Pull } from './types.ts';

// Pulls that were copied from a stack to be moved about by themselves: a copy has the id of its pull.

/** Pulls that can be copied: those of the stack, then copies whose pull the stack no longer has. */
export function copyChoices(stack: readonly Pull[], copies: readonly Pull[]): Pull[] {
  return [...stack, ...copies.filter((copy) => !stack.some(({ id }) => id === copy.id))];
}

/**
 * Copies of the pulls that are named: those there are, else the stack's pulls.
 * @throws Error when neither has one of the ids
 */
export function chooseCopies(stack: readonly Pull[], copies: readonly Pull[], ids: readonly string[]): Pull[] {
  return ids.map((id) => defined(copies.find((copy) => copy.id === id) ?? stack.find((pull) => pull.id === id)));
}

/** Whether a pull was recoloured or the like in the stack since it was copied; where it lies does not count. */
export function isOutdated(stack: readonly Pull[], copies: readonly Pull[]): boolean {
  return copies.some((copy) => {
    const pull = stack.find(({ id }) => id === copy.id);
    return pull !== undefined && (['screen', 'ink', 'strokes', 'turnDeg'] as const).some((key) => pull[key] !== copy[key]);
  });
}

/** The copies as the stack has the pulls now, each where the copy lies. */
export function copyAnew(stack: readonly Pull[], copies: readonly Pull[]): Pull[] {
  return copies.map((copy) => {
    const pull = stack.find(({ id }) => id === copy.id);
    return pull === undefined ? copy : { ...pull, dxMm: copy.dxMm, dyMm: copy.dyMm };
  });
}

/** The copies with one of them moved to an offset, mm. */
export function moveCopy(copies: readonly Pull[], id: string, { dxMm, dyMm }: Pick<Pull, 'dxMm' | 'dyMm'>): Pull[] {
  return copies.map((copy) => (copy.id === id ? { ...copy, dxMm, dyMm } : copy));
}

/** The copies as they lay in the stack; without offset where it no longer has the pull. */
export function putBack(stack: readonly Pull[], copies: readonly Pull[]): Pull[] {
  return copies.map((copy) => {
    const { dxMm, dyMm } = stack.find(({ id }) => id === copy.id) ?? { dxMm: 0, dyMm: 0 };
    return { ...copy, dxMm, dyMm };
  });
}

/** Whether a copy lies elsewhere than in the stack. */
export function isMoved(stack: readonly Pull[], copies: readonly Pull[]): boolean {
  return putBack(stack, copies).some(({ dxMm, dyMm }, i) => dxMm !== copies[i]?.dxMm || dyMm !== copies[i]?.dyMm);
}
