import { i32 } from '../../base/at.ts';
import type { Automaton } from '../automaton.ts';
import { grown } from '../grown.ts';
import type { GroupTable } from './group-table.ts';

/** What a sheet's states lead to, worked out when first asked, a row a state. */
export class SheetRows {
  /** Where each letter leads; place in each table; bits of letters: ready, needed, needed after they come once. */
  #rows = new Int32Array(0);
  readonly #width: number;
  readonly #automaton: Automaton;
  readonly #letterCount: number;
  readonly #tables: readonly GroupTable[];
  readonly #sheet: number;
  #known = new Uint8Array(0);

  constructor(automaton: Automaton, letterCount: number, tables: readonly GroupTable[], sheet: number) {
    this.#automaton = automaton;
    this.#letterCount = letterCount;
    this.#tables = tables;
    this.#sheet = sheet;
    this.#width = letterCount + tables.length + 3;
  }

  /** One entry of a state's row. */
  get(state: number, column: number): number {
    if (this.#known[state] !== 1) this.#learn(state);
    return i32(this.#rows, state * this.#width + column);
  }

  #learn(state: number): void {
    const automaton = this.#automaton;
    const start = automaton.edgeStart(state);
    const end = automaton.edgeEnd(state);
    if (automaton.states > this.#known.length) {
      this.#known = grown(this.#known, 2 * automaton.states);
      this.#rows = grown(this.#rows, 2 * automaton.states * this.#width);
    }
    const at = state * this.#width;
    this.#rows.fill(state, at, at + this.#letterCount);
    let ready = 0;
    let last = 0;
    let need = 0;
    automaton.order.letters.forEach((l, p) => {
      if (!automaton.has(state, p)) need |= 1 << l;
    });
    for (let e = start; e < end; e++) {
      const letter = i32(automaton.edgeLetter, e);
      this.#rows[at + letter] = i32(automaton.edgeNext, e);
      ready |= 1 << letter;
      if (automaton.edgeLast[e]) last |= 1 << letter;
    }
    this.#tables.forEach((table, t) => (this.#rows[at + this.#letterCount + t] = table.placeOf(this.#sheet, state)));
    this.#rows.set([ready, need, need & ~last], at + this.#letterCount + this.#tables.length);
    this.#known[state] = 1;
  }
}
