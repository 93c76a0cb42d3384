import { i32 } from '../../base/at.ts';
import type { Automaton } from '../automaton.ts';
import type { Compiled } from '../model.ts';
import type { PlanPull } from '../types.ts';

/** The letters of set-ups in sequence; kinds that the problem does not have are left out. */
export function lettersOf(setUps: readonly PlanPull[], names: Compiled['names']): number[] {
  const known = new Map(names.map((name, letter) => [JSON.stringify([name.screen, name.ink, name.offset]), letter]));
  return setUps.flatMap(({ screen, ink, offset = '' }) => known.get(JSON.stringify([screen, ink, offset])) ?? []);
}

/**
 * A word that finishes every order: the one given, and where that leaves something over, a whole
 * one behind it. After more is printed nothing is printed later, so the two in a row are whole.
 * @param whole finishes every order by itself
 * @returns without letters that find no work
 */
export function completed(word: readonly number[], whole: readonly number[], automata: readonly Automaton[]): number[] {
  const states = new Int32Array(automata.length);
  return [...word, ...whole].filter((letter) => {
    let works = false;
    for (const [c, automaton] of automata.entries()) {
      const to = automaton.step(i32(states, c), letter);
      if (to !== i32(states, c)) works = true;
      states[c] = to;
    }
    return works;
  });
}
