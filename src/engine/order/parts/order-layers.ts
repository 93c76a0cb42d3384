import { num } from '../../base/at.ts';

/**
 * The layers of a stack: pulls of one layer do not hold each other, so that they may go down in any order
 * among themselves; each of a higher layer lies over one of the layer below it.
 * @param pulls how many there are
 * @param edges pairs whose order shows, by places in the stack
 * @returns the layer of each pull, the lowest 0
 * Source: layers by the longest way, Sugiyama, Tagawa, Toda (1981), from memory.
 */
export function orderLayers(pulls: number, edges: readonly { a: number; b: number }[]): number[] {
  const under: number[][] = Array.from({ length: pulls }, () => []);
  for (const { a, b } of edges) under[Math.max(a, b)]?.push(Math.min(a, b));
  const layers: number[] = [];
  for (const below of under) layers.push(below.reduce((layer, other) => Math.max(layer, num(layers, other) + 1), 0));
  return layers;
}
