import type { Graph } from './graph.ts';

/**
 * The parts of a graph that stay whole when any one pull is taken out, each at least one edge.
 * They share single pulls at most, so any acyclic orientations of them together are acyclic.
 * @returns pulls of each part, sorted; pulls without neighbours are in none
 * Source: Hopcroft and Tarjan (1973), biconnected components, without recursion.
 */
export function blocksOf(graph: Graph): number[][] {
  const n = graph.pulls;
  const depth = new Int32Array(n).fill(-1);
  const low = new Int32Array(n);
  const nextAt = new Int32Array(n);
  const blocks: number[][] = [];
  for (let root = 0; root < n; root++) {
    if (depth[root] >= 0) continue;
    depth[root] = 0;
    const path = [root];
    const open = [root];
    while (path.length > 0) {
      const v = path[path.length - 1];
      const list = graph.neighbours[v];
      if (nextAt[v] < list.length) {
        const w = list[nextAt[v]++];
        if (depth[w] < 0) {
          depth[w] = path.length;
          low[w] = depth[w];
          path.push(w);
          open.push(w);
        } else {
          low[v] = Math.min(low[v], depth[w]);
        }
        continue;
      }
      path.pop();
      const parent = path[path.length - 1];
      if (parent === undefined) break;
      low[parent] = Math.min(low[parent], low[v]);
      if (low[v] >= depth[parent]) {
        const block = [parent];
        let u: number;
        do {
          u = open.pop()!;
          block.push(u);
        } while (u !== v);
        blocks.push(block.sort((a, b) => a - b));
      }
    }
  }
  return blocks;
}
