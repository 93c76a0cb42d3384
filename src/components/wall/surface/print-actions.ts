import type { Variant } from '../../../engine/explore/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { type ComparePrints, MOST_COMPARED } from '../print/compare-prints.ts';
import type { PrintOut } from '../print/print-out.ts';
import { derivedAsk } from '../run/derived-ask.ts';

/** What is done with prints: where they are, which are marked, and what shows them. */
interface Prints {
  variants: readonly Variant[];
  /** What they were found from; null while nothing hangs. */
  studio: Studio | null;
  /** Indices, the first marked first. */
  marked: ReadonlySet<number>;
  /** Indices in the order in which they hang. */
  hung: readonly number[];
  compare: ComparePrints;
  out: PrintOut;
}

/** Compares the marked prints, goes on from two of them, and brings prints out as pictures. */
export class PrintActions {
  private readonly host: EventTarget;
  private readonly prints: () => Prints;

  /** @param host fires `wall-problem` with a sentence, and `print-derived` with what is asked for */
  constructor(host: EventTarget, prints: () => Prints) {
    this.host = host;
    this.prints = prints;
  }

  private fire(type: 'wall-problem' | 'print-derived', detail: unknown): void {
    this.host.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }

  private at(indices: Iterable<number>): Variant[] {
    const { variants } = this.prints();
    return [...indices].flatMap((index) => variants[index] ?? []);
  }

  private markedInOrder(): Variant[] {
    return this.at([...this.prints().marked].sort((a, b) => a - b));
  }

  /** Says what is in the way of something that was asked for. */
  problem(sentence: string): void {
    this.fire('wall-problem', sentence);
  }

  /** Shows the marked prints side by side. */
  compare(): void {
    const { studio, compare } = this.prints();
    const marked = this.markedInOrder();
    if (studio !== null && marked.length >= 2 && marked.length <= MOST_COMPARED) compare.show(marked, studio);
    else this.problem(`Mark two to ${MOST_COMPARED} prints with M to compare them.`);
  }

  /** Asks for a wall from the two marked prints, the first marked first. */
  fromTwo(kind: 'between' | 'cross'): void {
    const marked = this.at(this.prints().marked);
    if (marked.length === 2) this.fire('print-derived', derivedAsk(kind, marked));
  }

  /** Brings out a contact sheet of the marked prints, else of all that hang. */
  sheet(): void {
    const { studio, marked, hung, out } = this.prints();
    if (studio === null) return;
    if (marked.size === 0) return out.showSheet(this.at(hung), 'prints that hang', studio);
    const prints = this.markedInOrder();
    out.showSheet(prints, prints.length === 1 ? 'marked print' : 'marked prints', studio);
  }

  /** Brings out one print as a picture. */
  save(index: number): void {
    const { variants, studio, out } = this.prints();
    const variant = variants[index];
    if (variant !== undefined && studio !== null) out.showOne(variant, studio);
  }
}
