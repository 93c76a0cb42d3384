import type { Ink } from '../types.ts';

/**
 * Minutes until sheets can be stacked on an ink: its own figure, else twice the time until it can
 * be printed on; never less than that time. Common practice, no source.
 */
export function stackMinutesOf(ink: Pick<Ink, 'dryMinutes' | 'stackMinutes'>): number {
  return Math.max(ink.dryMinutes, ink.stackMinutes ?? 2 * ink.dryMinutes);
}
