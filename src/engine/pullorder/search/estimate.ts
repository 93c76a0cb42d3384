import { defined, entryAt, i32, num, u16 } from '../../base/at.ts';
import type { Automaton } from '../automaton.ts';
import { multiplicities } from '../bound/multiplicity.ts';
import { INK, MOUNT, type Meter, type Model } from '../model.ts';
import { Patterns } from './patterns.ts';

/** Underestimate of the cost still to come, part by part of the packed cost, hence of the whole. */
export function estimator(
  model: Model,
  automata: readonly Automaton[],
  groups: readonly (readonly number[])[] | undefined,
  meter: Meter,
): (states: Int32Array, at: number, last: number) => number {
  const patterns = groups?.length ? new Patterns(model, automata, groups, meter) : null;
  const kinds = model.kinds;
  const letterOf = (l: number): number => l;
  const layers: { groupOf: (l: number) => number; groups: number; runs: boolean; weight: number }[] = kinds
    ? [
        { groupOf: (l) => i32(kinds.screen, l), groups: 1 + Math.max(-1, ...kinds.screen), runs: true, weight: MOUNT },
        { groupOf: (l) => i32(kinds.ink, l), groups: 1 + Math.max(-1, ...kinds.ink), runs: true, weight: INK },
        { groupOf: letterOf, groups: model.letterCount, runs: false, weight: 1 },
      ]
    : [{ groupOf: letterOf, groups: model.letterCount, runs: model.cascade, weight: 1 }];
  // Groups that the model does not use are squeezed out: parts of a model keep the letters' numbers.
  const used = new Set<number>(model.orders.flatMap((o) => o.letters));
  const column = new Map<string, number>();
  const weights: number[] = [];
  layers.forEach((layer, i) => {
    for (const l of used) {
      const key = `${i}.${layer.groupOf(l)}`;
      if (!column.has(key)) {
        column.set(key, weights.length);
        weights.push(layer.weight);
      }
    }
  });
  const width = weights.length;
  meter.units += 10 * width * automata.length;
  const perPull = automata.map((automaton) => {
    const rows = new Uint16Array(automaton.order.letters.length * width);
    layers.forEach((layer, i) => {
      const own = [...new Set(automaton.order.letters.map(layer.groupOf))];
      const dense = new Map(own.map((g, j) => [g, j]));
      const most = multiplicities(automaton.order, (l) => defined(dense.get(layer.groupOf(l))), own.length, layer.runs);
      automaton.order.letters.forEach((_, p) =>
        own.forEach((g, j) => {
          rows[p * width + defined(column.get(`${i}.${g}`))] = u16(most, p * own.length + j);
        }),
      );
    });
    return rows;
  });
  const cache: (Uint16Array | undefined)[][] = automata.map(() => []);
  const rowOf = (c: number, state: number): Uint16Array => {
    const known = entryAt(cache, c)[state];
    if (known) return known;
    const row = new Uint16Array(width);
    meter.units += 2 * width;
    for (const p of entryAt(automata, c).ready(state)) {
      for (let g = 0; g < width; g++) row[g] = Math.max(u16(row, g), u16(entryAt(perPull, c), p * width + g));
    }
    entryAt(cache, c)[state] = row;
    return row;
  };
  const screenColumn = (last: number): number | undefined => (kinds && last >= 0 ? column.get(`0.${kinds.screen[last]}`) : undefined);
  const inkColumn = (last: number): number | undefined => (kinds && last >= 0 ? column.get(`1.${kinds.ink[last]}`) : undefined);
  const most = new Uint16Array(width);
  return (states, at, last) => {
    most.fill(0);
    for (let c = 0; c < automata.length; c++) {
      const row = rowOf(c, i32(states, at + c));
      for (let g = 0; g < width; g++) if (u16(row, g) > u16(most, g)) most[g] = u16(row, g);
    }
    let changes = 0;
    let other = 0;
    const unit = num(weights, 0);
    for (let g = 0; g < width; g++) {
      if (weights[g] === unit) changes += u16(most, g);
      else other += u16(most, g) * num(weights, g);
    }
    // What is on the press may go on: one entry of its screen and of its ink may be free.
    const screen = screenColumn(last);
    if (screen !== undefined && u16(most, screen) > 0) changes--;
    const ink = inkColumn(last);
    if (ink !== undefined && u16(most, ink) > 0) other -= INK;
    if (patterns) changes = Math.max(changes, patterns.estimate(states, at, last));
    return changes * unit + other;
  };
}
