import type { Paths64 } from 'clipper2-ts';
import { f64, i32 } from '../base/at.ts';

/** Drawings of fewer paths are taken whole, so that their rings come in one order for ever. */
const LEAST_PATHS = 500;

/** More comparisons than this are not made: such paths lie in one heap. */
const MOST_SCANS = 5_000_000;

/**
 * Sorts the paths of a large drawing into parts whose boxes lie apart, so that ten thousand dots cost
 * what ten thousand drawings of one dot cost.
 * @returns one part, the paths as they came, for a small drawing
 */
export function apart(paths: Paths64): Paths64[] {
  if (paths.length < LEAST_PATHS) return [paths];
  const box = boxesOf(paths);
  const parent = Int32Array.from(paths, (_, i) => i);
  const rootOf = (i: number): number => {
    let root = i;
    while (i32(parent, root) !== root) root = i32(parent, root);
    for (let at = i; at !== root;) [at, parent[at]] = [i32(parent, at), root];
    return root;
  };
  const order = Int32Array.from(paths, (_, i) => i).sort((a, b) => f64(box, a * 4) - f64(box, b * 4));
  let there: number[] = [];
  let scans = 0;
  for (const path of order) {
    const [left, top, bottom] = [f64(box, path * 4), f64(box, path * 4 + 1), f64(box, path * 4 + 3)];
    scans += there.length;
    if (scans > MOST_SCANS) return [paths];
    there = there.filter((other) => f64(box, other * 4 + 2) >= left);
    for (const other of there) {
      if (f64(box, other * 4 + 1) <= bottom && f64(box, other * 4 + 3) >= top) parent[rootOf(other)] = rootOf(path);
    }
    there.push(path);
  }
  const parts = new Map<number, Paths64>();
  paths.forEach((path, i) => {
    const root = rootOf(i);
    const part = parts.get(root);
    if (part === undefined) parts.set(root, [path]);
    else part.push(path);
  });
  return [...parts.values()];
}

/** Left, top, right and bottom of each path. */
function boxesOf(paths: Paths64): Float64Array {
  const box = new Float64Array(paths.length * 4);
  paths.forEach((path, i) => {
    const [first] = path;
    let [left, top, right, bottom] = first === undefined ? [0, 0, 0, 0] : [first.x, first.y, first.x, first.y];
    for (const { x, y } of path) {
      left = Math.min(left, x);
      right = Math.max(right, x);
      top = Math.min(top, y);
      bottom = Math.max(bottom, y);
    }
    box.set([left, top, right, bottom], i * 4);
  });
  return box;
}
