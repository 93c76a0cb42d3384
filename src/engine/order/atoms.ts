import { entryAt, i32, num } from '../base/at.ts';
import type { Graph } from './graph.ts';

/** A part of a graph that no clique separates. */
export interface Atom {
  /** Its pulls, sorted. */
  pulls: number[];
  /** The clique that it shares with the atoms after it; empty for none. */
  clique: number[];
}

/**
 * Cuts a graph along its cliques: a(G) = Π a(atoms) / Π |clique|!, for components (empty cliques),
 * articulation points (one pull) and all larger cliques alike.
 * @param graph any graph; cost about n³, meant for up to some hundreds of pulls
 * Sources: Berry, Blair, Heggernes and Peyton (2004), MCS-M; Tarjan (1985), decomposition by
 * clique separators; P(G) = P(G₁)·P(G₂) / P(K_k) is textbook (Read 1968).
 */
export function atomsOf(graph: Graph): Atom[] {
  const { order, higher } = minimalElimination(graph);
  const adjacent = graph.neighbours.map((list) => new Set(list));
  const inside = new Uint8Array(graph.pulls).fill(1);
  let left = graph.pulls;
  const atoms: Atom[] = [];
  for (const pull of order) {
    if (!inside[pull]) continue;
    const cut = entryAt(higher, pull);
    const usable = cut.every((a) => inside[a]) && cut.every((a, i) => cut.every((b, j) => j <= i || entryAt(adjacent, a).has(b)));
    if (!usable) continue;
    const piece = reach(graph, pull, inside, cut);
    if (piece.length + cut.length === left) continue;
    atoms.push({ pulls: [...piece, ...cut].sort((a, b) => a - b), clique: cut });
    for (const gone of piece) inside[gone] = 0;
    left -= piece.length;
  }
  if (left > 0) {
    atoms.push({ pulls: Array.from(inside.keys()).filter((pull) => inside[pull]), clique: [] });
  }
  return atoms;
}

/** All that hangs together with `from` inside, without crossing the cut. */
function reach(graph: Graph, from: number, inside: Uint8Array, cut: readonly number[]): number[] {
  const seen = new Uint8Array(graph.pulls);
  for (let i = 0; i < cut.length; i++) seen[num(cut, i)] = 1;
  seen[from] = 1;
  const found = [from];
  for (let head = 0; head < found.length; head++) {
    const near = entryAt(graph.neighbours, num(found, head));
    for (let i = 0; i < near.length; i++) {
      const other = num(near, i);
      if (!inside[other] || seen[other]) continue;
      seen[other] = 1;
      found.push(other);
    }
  }
  return found;
}

/** Elimination order that fills in as little as can be, and each pull's later neighbours then. */
function minimalElimination(graph: Graph): { order: number[]; higher: number[][] } {
  const n = graph.pulls;
  const weight = new Int32Array(n);
  const numbered = new Uint8Array(n);
  const higher: number[][] = Array.from({ length: n }, () => []);
  const order: number[] = Array.from({ length: n }, () => 0);
  const ways = { numbered, weight, heaviest: new Int32Array(n), done: new Uint8Array(n), found: new Int32Array(n) };
  for (let place = n - 1; place >= 0; place--) {
    let pick = -1;
    for (let u = 0; u < n; u++) {
      if (!numbered[u] && (pick < 0 || i32(weight, u) > i32(weight, pick))) pick = u;
    }
    numbered[pick] = 1;
    order[place] = pick;
    const found = reachedThroughLighter(graph, pick, ways);
    for (let i = 0; i < found; i++) {
      const u = i32(ways.found, i);
      weight[u] = i32(weight, u) + 1;
      entryAt(higher, u).push(pick);
    }
  }
  return { order, higher };
}

/** What a search for ways over lighter pulls reads, and lists that it writes over. */
interface Ways {
  numbered: Uint8Array;
  weight: Int32Array;
  heaviest: Int32Array;
  done: Uint8Array;
  found: Int32Array;
}

/**
 * Lists in `found` the unnumbered pulls joined to `from` directly or over unnumbered pulls all lighter than they.
 * Every draw of an order comes through here, so nothing is made on the way.
 * @returns how many there are
 */
function reachedThroughLighter(graph: Graph, from: number, { numbered, weight, heaviest, done, found }: Ways): number {
  const n = graph.pulls;
  // Heaviest pull between, on the lightest way; −1 for a direct neighbour.
  heaviest.fill(n + 1);
  done.fill(0);
  const direct = entryAt(graph.neighbours, from);
  for (let i = 0; i < direct.length; i++) if (!numbered[num(direct, i)]) heaviest[num(direct, i)] = -1;
  for (;;) {
    let next = -1;
    for (let u = 0; u < n; u++) {
      if (!done[u] && i32(heaviest, u) <= n && (next < 0 || i32(heaviest, u) < i32(heaviest, next))) next = u;
    }
    if (next < 0) break;
    done[next] = 1;
    const through = Math.max(i32(heaviest, next), i32(weight, next));
    const near = entryAt(graph.neighbours, next);
    for (let i = 0; i < near.length; i++) {
      const w = num(near, i);
      if (!numbered[w] && through < i32(heaviest, w)) heaviest[w] = through;
    }
  }
  let count = 0;
  for (let u = 0; u < n; u++) if (!numbered[u] && i32(heaviest, u) < i32(weight, u)) found[count++] = u;
  return count;
}
