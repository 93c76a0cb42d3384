import type { CoverRows } from './cover-rows.ts';
import { setsOf } from './sets/sets-of.ts';
import type { SubsetSums } from './subset-sums.ts';

/** Sets that are looked at between two pauses. */
const A_PAUSE = 50;

/** Letters split into blocks, each with sums over all its sets; what blocks need adds up. */
export class SumBlocks {
  readonly #rows: CoverRows;
  readonly #blocks: SubsetSums[];
  /** Sizes of sets that are still to be looked at, all of a size in one go. */
  readonly #sizes = [[2, 3], [4]];

  /** @param split each letter in one block */
  constructor(split: readonly (readonly number[])[], rows: CoverRows) {
    this.#rows = rows;
    this.#blocks = split.map((letters) => rows.sums(letters));
  }

  /** The sums of each block. */
  get blocks(): readonly SubsetSums[] {
    return this.#blocks;
  }

  /** What all letters need. */
  get total(): number {
    return this.#blocks.reduce((sum, block) => sum + block.total, 0);
  }

  /**
   * Raises `total`: at first by all pairs and triples of each block, then by all fours, then by rows
   * that came since.
   */
  *raise(): Generator<void, void> {
    const sizes = this.#sizes.shift() ?? [];
    for (const block of this.#blocks) {
      for (const size of sizes) yield* this.#look(block, size);
      if (this.#rows.tell(block) || sizes.length > 0) yield* block.sum();
    }
  }

  /** Looks at all sets of a size. */
  *#look(block: SubsetSums, size: number): Generator<void, void> {
    let looked = 0;
    for (const set of setsOf(block.letters, size)) {
      block.note(set, this.#rows.few(set));
      if (++looked % A_PAUSE === 0) yield;
    }
  }
}
