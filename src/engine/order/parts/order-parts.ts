import { defined, num } from '../../base/at.ts';
import { orderLayers } from './order-layers.ts';

/** Layers of fewer pulls are gathered with their neighbours, and up to how many pulls. */
const LEAST_FREE = 4;
const MOST_GATHERED = 10;

/** Neighbouring layers of a part. Pulls of one layer may go down in any order; the layers go down one after the other. */
export interface OrderGroup {
  /** Places in the stack, layer by layer. */
  layers: number[][];
}

/** Pulls that hold each other, directly or through others, in groups from the first down to the last. */
export type OrderPart = OrderGroup[];

/**
 * A stack in groups: parts that do not hold each other and so may go down in any order among themselves, and in
 * each part its layers, a broad one by itself and narrow ones gathered. Pulls that nothing holds are one part, the last.
 * Going down part by part, group by group, layer by layer prints the same as the stack does.
 * @param pulls how many there are
 * @param edges pairs whose order shows, by places in the stack
 */
export function orderParts(pulls: number, edges: readonly { a: number; b: number }[]): OrderPart[] {
  const layers = orderLayers(pulls, edges);
  const parts: OrderPart[] = [];
  const loose: number[] = [];
  for (const members of connected(pulls, edges)) {
    if (members.length === 1) loose.push(...members);
    else parts.push(gathered(members, layers));
  }
  return loose.length === 0 ? parts : [...parts, [{ layers: [loose] }]];
}

/** Connected components by their first pulls, each with its pulls in the order of the stack. */
function connected(pulls: number, edges: readonly { a: number; b: number }[]): number[][] {
  const root = Array.from({ length: pulls }, (_, at) => at);
  const rootOf = (at: number): number => {
    let top = at;
    while (num(root, top) !== top) top = num(root, top);
    root[at] = top;
    return top;
  };
  for (const { a, b } of edges) {
    const [one, other] = [rootOf(a), rootOf(b)];
    root[Math.max(one, other)] = Math.min(one, other);
  }
  const found = new Map<number, number[]>();
  for (let at = 0; at < pulls; at++) {
    const top = rootOf(at);
    if (top === at) found.set(at, []);
    defined(found.get(top)).push(at);
  }
  return [...found.values()];
}

function gathered(members: readonly number[], layerOf: readonly number[]): OrderPart {
  const layers: number[][] = [];
  for (const at of members) (layers[num(layerOf, at)] ??= []).push(at);
  const groups: OrderPart = [];
  let open: OrderGroup | null = null;
  let count = 0;
  for (const layer of layers) {
    if (layer.length >= LEAST_FREE) {
      groups.push({ layers: [layer] });
      open = null;
      continue;
    }
    if (open === null || count + layer.length > MOST_GATHERED) {
      open = { layers: [] };
      count = 0;
      groups.push(open);
    }
    open.layers.push(layer);
    count += layer.length;
  }
  return groups;
}
