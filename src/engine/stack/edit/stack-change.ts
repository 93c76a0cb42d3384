import { entryAt, num } from '../../base/at.ts';
import type { Pull } from '../types.ts';

/** A pull that went past others, and which of those that it shares ink with now lie on its other side. */
export interface Passed {
  pull: Pull;
  /** Place in the stack now, first down 0. */
  at: number;
  /** What it now lies over and lay under before. */
  over: Pull[];
  under: Pull[];
}

/** What became of a stack. */
export interface StackChange {
  added: Pull[];
  removed: Pull[];
  /** Each pull as it was and is. */
  recoloured: [Pull, Pull][];
  /** Offset or turn. */
  shifted: [Pull, Pull][];
  restroked: [Pull, Pull][];
  passed: Passed[];
}

/** Two places in a stack whose pulls share ink. */
export interface Touching {
  a: number;
  b: number;
}

/**
 * In what one stack differs from another that came of it; pulls are the same by their ids.
 * @param touching which pulls of `after` overlap, by places in it; null where that is not known, so that
 *   of the pulls that were gone past none is named
 */
export function stackChange(before: readonly Pull[], after: readonly Pull[], touching: readonly Touching[] | null): StackChange {
  const was = new Map(before.map((pull) => [pull.id, pull]));
  const is = new Set(after.map(({ id }) => id));
  const pairs = after.flatMap((pull): [Pull, Pull][] => {
    const old = was.get(pull.id);
    return old === undefined ? [] : [[old, pull]];
  });
  const differ = (fields: readonly (keyof Pull)[]) => pairs.filter(([old, now]) => fields.some((field) => old[field] !== now[field]));
  return {
    added: after.filter(({ id }) => !was.has(id)),
    removed: before.filter(({ id }) => !is.has(id)),
    recoloured: differ(['ink']),
    shifted: differ(['dxMm', 'dyMm', 'turnDeg']),
    restroked: differ(['strokes']),
    passed: passedPulls(before, after, touching),
  };
}

function passedPulls(before: readonly Pull[], after: readonly Pull[], touching: readonly Touching[] | null): Passed[] {
  const placeBefore = new Map(before.map(({ id }, at) => [id, at]));
  const placeOf = (pull: Pull): number => placeBefore.get(pull.id) ?? -1;
  const common = after.filter((pull) => placeOf(pull) >= 0);
  const stayed = longestRising(common.map(placeOf));
  const touches = new Set((touching ?? []).flatMap(({ a, b }) => [`${a} ${b}`, `${b} ${a}`]));
  const places = new Map(after.map((pull, at) => [pull, at]));
  const at = (pull: Pull): number => places.get(pull) ?? -1;
  return common.flatMap((pull, i) => {
    if (stayed.has(i)) return [];
    const others = common.filter((other) => touches.has(`${at(pull)} ${at(other)}`));
    const over = others.filter((other) => at(other) < at(pull) && placeOf(other) > placeOf(pull));
    const under = others.filter((other) => at(other) > at(pull) && placeOf(other) < placeOf(pull));
    return [{ pull, at: at(pull), over, under }];
  });
}

/** Places of a longest rising run of different numbers: what did not move when the rest did. */
function longestRising(numbers: readonly number[]): Set<number> {
  const length: number[] = [];
  const from: number[] = [];
  let best = -1;
  numbers.forEach((value, i) => {
    length[i] = 1;
    from[i] = -1;
    for (let k = 0; k < i; k++) {
      if (entryAt(numbers, k) < value && num(length, k) >= num(length, i)) {
        length[i] = num(length, k) + 1;
        from[i] = k;
      }
    }
    // Of two neighbours that changed places the upper one moved, as one says of it that it now lies over the other.
    if (best < 0 || num(length, i) > num(length, best)) best = i;
  });
  const run = new Set<number>();
  for (let i = best; i >= 0; i = num(from, i)) run.add(i);
  return run;
}
