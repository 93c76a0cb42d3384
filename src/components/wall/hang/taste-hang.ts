import { num } from '../../../engine/base/at.ts';
import type { TasteOrder } from '../../../engine/explore/taste/arrange-by-taste.ts';
import type { TasteChoice } from '../../../engine/explore/taste/choices.ts';
import type { TasteOfWall } from '../../../engine/explore/taste/taste-of-wall.ts';
import { wallTools } from '../../../workers/client/client.ts';
import type { PrintFacts } from '../print/print-facts.ts';
import { askOf, knownOf } from '../taste/wall-choices.ts';

/** How the prints hang as one chooses: from which choices, and what was learnt of them. */
export class TasteHang {
  /** What the project knows now, and what the prints hang by. */
  taught: readonly TasteChoice[] = [];
  private used: readonly TasteChoice[] | null = null;
  found: TasteOfWall | null = null;
  private latest = 0;

  /** Whether more, or less, is known than what the prints hang by. */
  get stale(): boolean {
    return this.used !== null && this.used !== this.taught;
  }

  /**
   * Arranges prints.
   * @returns null when something else was asked for meanwhile
   */
  async arrange(facts: PrintFacts, shown: readonly number[], { towards, unsure }: TasteOrder): Promise<number[] | null> {
    const turn = ++this.latest;
    const choices = this.taught;
    const known = knownOf(facts, shown);
    const found = await wallTools().taste(askOf(facts, known, { choices, towards, unsure, passed: 0 }));
    if (turn !== this.latest) return null;
    this.found = found;
    this.used = choices;
    return found.order === null ? [...shown] : found.order.map((at) => num(known, at));
  }

  /** Drops what is on its way. */
  stop(): void {
    this.latest++;
  }
}
