import { defined, entryAt, i32, num } from '../base/at.ts';
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
  const seen = new Set<number>(cut);
  seen.add(from);
  const found = [from];
  for (let head = 0; head < found.length; head++) {
    for (const other of entryAt(graph.neighbours, num(found, head))) {
      if (!inside[other] || seen.has(other)) continue;
      seen.add(other);
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
  for (let place = n - 1; place >= 0; place--) {
    let pick = -1;
    for (let u = 0; u < n; u++) {
      if (!numbered[u] && (pick < 0 || i32(weight, u) > i32(weight, pick))) pick = u;
    }
    numbered[pick] = 1;
    order[place] = pick;
    for (const u of reachedThroughLighter(graph, pick, numbered, weight)) {
      weight[u] = i32(weight, u) + 1;
      entryAt(higher, u).push(pick);
    }
  }
  return { order, higher };
}

/** Unnumbered pulls joined to `from` directly or over unnumbered pulls all lighter than they. */
function reachedThroughLighter(graph: Graph, from: number, numbered: Uint8Array, weight: Int32Array): number[] {
  const n = graph.pulls;
  // Heaviest pull between, on the lightest way; −1 for a direct neighbour.
  const heaviest = new Int32Array(n).fill(n + 1);
  const buckets: number[][] = Array.from({ length: n + 1 }, () => []);
  const done = new Uint8Array(n);
  for (const u of entryAt(graph.neighbours, from)) {
    if (numbered[u]) continue;
    heaviest[u] = -1;
    entryAt(buckets, 0).push(u);
  }
  for (let level = 0; level <= n; level++) {
    for (let head = 0; head < entryAt(buckets, level).length; head++) {
      const u = num(entryAt(buckets, level), head);
      if (done[u] || Math.max(i32(heaviest, u), 0) !== level) continue;
      done[u] = 1;
      const through = Math.max(i32(heaviest, u), i32(weight, u));
      for (const w of entryAt(graph.neighbours, u)) {
        if (numbered[w] || through >= defined(heaviest[w])) continue;
        heaviest[w] = through;
        entryAt(buckets, through).push(w);
      }
    }
  }
  const found: number[] = [];
  for (let u = 0; u < n; u++) if (!numbered[u] && i32(heaviest, u) < i32(weight, u)) found.push(u);
  return found;
}
