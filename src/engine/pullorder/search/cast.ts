import { num } from '../../base/at.ts';
import type { Random } from '../../base/random.ts';
import type { Automaton } from '../automaton.ts';
import type { Meter, Model } from '../model.ts';
import { beam } from './beam.ts';

/** How a beam is cast: its way of ranking changes with the round. */
interface Cast {
  width: number;
  /** Only words cheaper than this; absent = any. */
  below?: number;
  /** Absent = 0. */
  round?: number;
  random: Random;
  meter: Meter;
}

/** A word by beam search from an empty press; null when none is cheaper than `below`. */
export function findBeam(
  model: Model,
  automata: readonly Automaton[],
  { width, below = Infinity, round = 0, random, meter }: Cast,
): number[] | null {
  const found = beam(model, automata, {
    before: -1,
    after: -1,
    width,
    below,
    reachTenths: num([20, 14, 30, 50], round % 4),
    finish: num([6, 12, 3, 6], round % 4),
    thriftTenths: 1,
    noise: round < 2 ? 0 : 800,
    random,
    meter,
  });
  return found?.word ?? null;
}
