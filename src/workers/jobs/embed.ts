import { UMAP } from 'umap-js';
import { defined, entryAt, num } from '../../engine/base/at.ts';
import { randomFrom } from '../../engine/base/random.ts';

/** More points than this are placed among so many of them. */
const MOST_FITTED = 800;
/** Enough that likes lie together; more only settles them. */
const EPOCHS = 200;
const NEIGHBOURS = 14;
const NEAREST = 4;
const FAR = 2 ** 31;

/**
 * Lays points of many dimensions out in two, what is alike side by side: UMAP (McInnes, Healy and Melville
 * 2018) of all, or of 800 by lot with the others amid the four that they are nearest to. A step
 * takes a few milliseconds, so that it can be stopped.
 * @param points points × dimensions
 * @param seed the same seed and points give the same layout
 * @returns points × 2, 0 to 1 either way
 */
export function* embedSteps(points: Float32Array, dimensions: number, seed: string): Generator<number, Float32Array> {
  const count = Math.floor(points.length / dimensions);
  const row = (i: number): number[] => Array.from(points.subarray(i * dimensions, (i + 1) * dimensions));
  if (count < 5) return spreadEven(Float32Array.from({ length: count * 2 }, (_, i) => (i % 2 === 0 ? i / 2 : 0)));
  const random = randomFrom(`likeness ${seed}`);
  const all = Array.from({ length: count }, (_, i) => i);
  const fitted =
    count <= MOST_FITTED
      ? all
      : random
          .shuffle(all)
          .slice(0, MOST_FITTED)
          .sort((a, b) => a - b);
  const umap = new UMAP({
    nComponents: 2,
    nNeighbors: Math.min(NEIGHBOURS, fitted.length - 1),
    minDist: 0.25,
    nEpochs: EPOCHS,
    random: () => random.int(FAR) / FAR,
  });
  const epochs = umap.initializeFit(fitted.map(row));
  for (let epoch = 0; epoch < epochs; epoch++) {
    umap.step();
    if (epoch % 5 === 0) yield epoch / epochs;
  }
  const embedding = umap.getEmbedding();
  const places = new Float32Array(count * 2);
  const done = new Set(fitted);
  fitted.forEach((i, k) => places.set(entryAt(embedding, k), i * 2));
  for (let i = 0; i < count; i++) {
    if (!done.has(i)) places.set(amid(nearestOf(i, fitted, points, dimensions), places), i * 2);
    if (i % 100 === 99) yield 1;
  }
  return spreadEven(places);
}

interface Neighbour {
  /** Squared distance. */
  away: number;
  index: number;
}

/** The fitted points that a point is nearest to, nearest first. */
function nearestOf(i: number, fitted: readonly number[], points: Float32Array, dimensions: number): Neighbour[] {
  const best: Neighbour[] = [];
  for (const index of fitted) {
    let away = 0;
    const worst = best.length < NEAREST ? Infinity : defined(best.at(-1)).away;
    for (let d = 0; d < dimensions && away < worst; d++)
      away += (num(points, i * dimensions + d) - num(points, index * dimensions + d)) ** 2;
    if (away >= worst) continue;
    best.push({ away, index });
    best.sort((p, q) => p.away - q.away);
    if (best.length > NEAREST) best.pop();
  }
  return best;
}

/** The middle of points, the nearer the heavier. */
function amid(neighbours: readonly Neighbour[], places: Float32Array): [number, number] {
  let [x, y, weights] = [0, 0, 0];
  for (const { away, index } of neighbours) {
    const weight = 1 / (away + 1e-6);
    x += weight * num(places, index * 2);
    y += weight * num(places, index * 2 + 1);
    weights += weight;
  }
  return [x / weights, y / weights];
}

/** Half by place and half by rank: groups stay groups, and a stray does not squeeze all others. */
function spreadEven(places: Float32Array): Float32Array {
  const count = places.length / 2;
  const out = new Float32Array(places.length);
  for (const axis of [0, 1]) {
    const order = Array.from({ length: count }, (_, i) => i).sort((a, b) => num(places, a * 2 + axis) - num(places, b * 2 + axis) || a - b);
    const low = places[num(order, 0) * 2 + axis] ?? 0;
    const span = (places[(order.at(-1) ?? 0) * 2 + axis] ?? 0) - low;
    order.forEach((i, rank) => {
      const part = span > 0 ? (num(places, i * 2 + axis) - low) / span : 0.5;
      out[i * 2 + axis] = 0.5 * part + 0.5 * (count > 1 ? rank / (count - 1) : 0.5);
    });
  }
  return out;
}
