import type { Variant } from '../../../engine/explore/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { late } from '../../ui/kit/late.ts';
import type { PictureOut } from '../../ui/print/picture-out.ts';
import { say } from '../../words/en/wall/surface.ts';
import type { ComparePrints } from '../print/compare-prints.ts';
import { MOST_COMPARED } from '../print/held-pair.ts';
import type { PrintOut } from '../print/print-out.ts';
import { variantRecipe } from '../print/variant-recipe.ts';
import { derivedAsk } from '../run/derived-ask.ts';

/** What is done with prints: where they are, which are selected, and what shows them. */
interface Prints {
  variants: readonly Variant[];
  /** What they were found from; null while nothing hangs. */
  studio: Studio | null;
  /** Indices, the first selected first. */
  selected: ReadonlySet<number>;
  /** Indices in the order in which they hang. */
  hung: readonly number[];
  compare: ComparePrints;
  out: PrintOut;
  picture: PictureOut;
}

/** Compares the selected prints, goes on from two of them, and brings prints out as pictures. */
export class PrintActions {
  private readonly host: EventTarget;
  private readonly prints: () => Prints;

  /** @param host fires `wall-problem` with a sentence, `wall-settled` when it is of no account any more, and `print-derived` with what is asked for */
  constructor(host: EventTarget, prints: () => Prints) {
    this.host = host;
    this.prints = prints;
  }

  private fire(type: 'wall-problem' | 'wall-settled' | 'print-derived', detail?: unknown): void {
    this.host.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }

  private at(indices: Iterable<number>): Variant[] {
    const { variants } = this.prints();
    return [...indices].flatMap((index) => variants[index] ?? []);
  }

  private selectedInOrder(): Variant[] {
    return this.at([...this.prints().selected].sort((a, b) => a - b));
  }

  private readonly part = { failed: (sentence: string) => this.problem(sentence) };

  /** Says what is in the way of something that was asked for. */
  problem(sentence: string): void {
    this.fire('wall-problem', sentence);
  }

  /** What was in the way is not any more. */
  settled(): void {
    this.fire('wall-settled');
  }

  /** Shows the selected prints side by side. */
  compare(): void {
    const { studio, compare } = this.prints();
    const selected = this.selectedInOrder();
    if (studio !== null && selected.length >= 2 && selected.length <= MOST_COMPARED) {
      this.settled();
      void late({ ...this.part, load: () => import('../print/compare-prints.ts'), element: () => compare }, () =>
        compare.show(selected, studio),
      );
    } else this.problem(say.selectTwoToPrints(MOST_COMPARED));
  }

  /** Asks for a wall from the two selected prints, the first selected first. */
  fromTwo(kind: 'between' | 'cross'): void {
    const selected = this.at(this.prints().selected);
    if (selected.length === 2) this.fire('print-derived', derivedAsk(kind, selected));
  }

  /** Brings out a contact sheet of the selected prints, else of all that hang. */
  sheet(): void {
    const { studio, selected, out } = this.prints();
    if (studio === null) return;
    void late({ ...this.part, load: () => import('../print/print-out.ts'), element: () => out }, () => {
      if (selected.size === 0) return out.showSheet(() => this.at(this.prints().hung), say.printsThatHang, studio);
      const prints = this.selectedInOrder();
      out.showSheet(() => prints, say.selectedPrints(prints.length), studio);
    });
  }

  /** Brings out one print as a picture. */
  save(index: number): void {
    const { variants, studio, picture } = this.prints();
    const variant = variants[index];
    if (variant === undefined || studio === null) return;
    void late({ ...this.part, load: () => import('../../ui/print/picture-out.ts'), element: () => picture }, () =>
      picture.show(variantRecipe(variant, studio), say.printAsPicture(index + 1)),
    );
  }
}
