import { defined, entryAt, i32, num } from '../../base/at.ts';
import type { Automaton } from '../automaton.ts';
import { distinctOrders, type Compiled, type Kinds, type Model } from '../model.ts';

/** Whether a pull must come right after another of its own kind on some sheet. */
export function hasTwins(model: Model): boolean {
  return model.orders.some(({ letters, preds }) => preds.some((before, p) => before.some((q) => letters[q] === letters[p])));
}

/** The model whose letters are inks; an ink stays on the press while it finds work. */
export function inkModelOf(model: Model): Model {
  const { ink } = defined(model.kinds);
  return {
    letterCount: ink.reduce((most, i) => Math.max(most, i + 1), 0),
    cascade: true,
    orders: distinctOrders(model.orders.map((o) => ({ letters: o.letters.map((l) => i32(ink, l)), preds: o.preds }))),
    kinds: null,
  };
}

/** Whether each screen has one ink and each ink one screen, so that ink changes are mounts. */
export function hasInksOfTheirOwn(model: Model): boolean {
  const { ink, screen } = defined(model.kinds);
  const pairs = new Set(Array.from(screen, (s, kind) => `${s} ${ink[kind]}`)).size;
  return pairs === new Set(screen).size && pairs === new Set(ink).size;
}

/** The mounts of a word of kinds. */
export function screensOf(compiled: Compiled, word: readonly number[]): number[] {
  const screen = defined(compiled.kindModel.kinds).screen;
  const all = word.map((kind) => i32(screen, kind));
  return all.filter((s, i) => s !== all[i - 1]);
}

/**
 * Writes an order of screens out in kinds: each screen stays mounted while it finds work, going on
 * with the ink, then the offset, that is on the press when it can.
 * @param automata those of the model of kinds
 */
export function writeOut(compiled: Compiled, automata: readonly Automaton[], screens: readonly number[]): number[] {
  const kinds = defined(compiled.kindModel.kinds);
  const states = new Int32Array(automata.length);
  const word: number[] = [];
  for (const screen of screens) {
    for (;;) {
      const last = word.length > 0 ? num(word, word.length - 1) : -1;
      const kind = likeliestKind(kinds, servedBy(kinds, automata, states, screen), last);
      if (kind < 0) break;
      word.push(kind);
      for (let c = 0; c < states.length; c++) states[c] = entryAt(automata, c).step(i32(states, c), kind);
    }
  }
  return word;
}

/** Kinds of a screen that find work, and on how many orders. */
function servedBy(kinds: Kinds, automata: readonly Automaton[], states: Int32Array, screen: number): Map<number, number> {
  const served = new Map<number, number>();
  automata.forEach((automaton, c) => {
    const start = automaton.edgeStart(i32(states, c));
    for (let e = start; e < automaton.edgeEnd(i32(states, c)); e++) {
      const kind = i32(automaton.edgeLetter, e);
      if (kinds.screen[kind] === screen) served.set(kind, (served.get(kind) ?? 0) + 1);
    }
  });
  return served;
}

/** The kind that changes least after `last`, of those the one that serves most orders; −1 for none. */
function likeliestKind({ screen, ink, offset }: Kinds, served: ReadonlyMap<number, number>, last: number): number {
  let best = -1;
  let most = -1;
  for (const [kind, count] of served) {
    const sameInk = last >= 0 && ink[kind] === ink[last];
    const sameLay = last >= 0 && screen[last] === screen[kind] && offset[kind] === offset[last];
    const worth = (sameInk ? 1e6 : 0) + (sameLay ? 1e5 : 0) + count;
    if (worth > most || (worth === most && kind < best)) {
      most = worth;
      best = kind;
    }
  }
  return best;
}
