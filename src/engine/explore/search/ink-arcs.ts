import type { Pull } from '../../stack/types.ts';
import type { ExploreSettings } from '../types.ts';

/**
 * What the conditions about inks and a veil ask of the order, as arcs [low, high] by index.
 * @param shared whether two pulls share area on the sheet, by index
 * @param veil index of the pull that goes down last, −1 without
 */
export function inkArcs(
  pulls: readonly Pick<Pull, 'ink'>[],
  settings: Pick<ExploreSettings, 'neverOver' | 'inkFirst' | 'inkLast'>,
  shared: (a: number, b: number) => boolean,
  veil = -1,
): [number, number][] {
  const { neverOver = [], inkFirst, inkLast } = settings;
  const arcs: [number, number][] = [];
  if (neverOver.length === 0 && inkFirst === undefined && inkLast === undefined && veil < 0) return arcs;
  pulls.forEach((low, a) => {
    pulls.forEach((high, b) => {
      if (a === b || a === veil) return;
      if (
        b === veil ||
        (low.ink === inkFirst && high.ink !== inkFirst) ||
        (high.ink === inkLast && low.ink !== inkLast) ||
        neverOver.some(([upper, lower]) => low.ink === upper && high.ink === lower && shared(a, b))
      ) {
        arcs.push([a, b]);
      }
    });
  });
  return arcs;
}
