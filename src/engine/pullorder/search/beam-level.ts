/** The letters of a partial word, last first. */
export interface Trail {
  letter: number;
  up: Trail | null;
}

/** Partial words of one length, best first; entry b of each list belongs to word b. */
export class Level {
  /** Words × orders. */
  states: Int32Array;
  readonly lasts: number[] = [];
  readonly costs: number[] = [];
  readonly trails: (Trail | null)[] = [];
  /** Equal for words that have led to the same states. */
  readonly hashes: number[] = [];
  /** How many orders still need each letter (`LetterNeeds`), and what is dealt with so far. */
  readonly needs: Int32Array[] = [];
  readonly dealt: number[] = [];

  constructor(states: Int32Array) {
    this.states = states;
  }
}

/** Words of one letter more, each from word `from` of the level at hand. */
export class Offers {
  readonly scores: number[] = [];
  readonly froms: number[] = [];
  readonly letters: number[] = [];
  readonly costs: number[] = [];
  readonly hashes: number[] = [];

  /** Drops all. */
  clear(): void {
    for (const list of [this.scores, this.froms, this.letters, this.costs, this.hashes]) list.length = 0;
  }
}
