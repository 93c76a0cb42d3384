import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { num } from '../../../engine/base/at.ts';
import { type TasteChoice, withChoices, withoutChoices } from '../../../engine/explore/taste/choices.ts';
import type { Variant } from '../../../engine/explore/types.ts';
import { printName } from '../../../engine/recipe/lineage.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { Picture } from '../../../workers/api/picture-api.ts';
import { engineFor, wallTools } from '../../../workers/client/client.ts';
import { controls } from '../../ui/controls-style.ts';
import { fullDialog } from '../../ui/layout-style.ts';
import '../../ui/print/picture-view.ts';
import { workFailure } from '../../ui/work-failure.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/wall/taste.ts';
import type { PrintFacts } from '../print/print-facts.ts';
import { sideBySideStyle } from '../print/side-by-side-style.ts';
import { lineageOf } from '../run/wall-origins.ts';
import { thisOrThatStyle } from './this-or-that-style.ts';
import { askOf, knownOf, tastePrint } from './wall-choices.ts';

const HEIGHT_PX = 900;

/** Two prints between which one is to choose. */
interface Shown {
  pair: [number, number];
  /** Whether they are asked about because the answer is open. */
  open: boolean;
  pictures: [Picture, Picture];
}

/** `teach` and `forget`: choices to be kept, or not any more. */
export type TeachEvent = CustomEvent<readonly TasteChoice[]>;

/** Two prints, large, one of which is chosen; then the next two. Tells `teach`, `forget`, and `answered` when it is shut. */
@customElement('wall-this-or-that')
export class ThisOrThat extends LitElement {
  static override styles = [controls, fullDialog, sideBySideStyle, thisOrThatStyle];

  @property({ attribute: false }) relative = true;
  @state() private shown: Shown | null = null;
  /** Answers of this sitting, the last last. */
  @state() private answers: readonly TasteChoice[] = [];
  /** True when all pairs were asked. */
  @state() private over = false;
  @query('dialog') private dialog!: HTMLDialogElement;
  private asked: { variants: readonly Variant[]; facts: PrintFacts; hung: readonly number[]; studio: Studio } | null = null;
  private taught: readonly TasteChoice[] = [];
  /** Pairs that were passed by without an answer. */
  private passed = 0;
  private readonly work = new Work<Shown>(this, {
    found: (found) => (this.shown = found),
  });

  /** Asks about the prints that hang. */
  show(asked: NonNullable<ThisOrThat['asked']>, taught: readonly TasteChoice[]): void {
    this.asked = asked;
    this.taught = taught;
    this.answers = [];
    this.passed = 0;
    this.shown = null;
    this.dialog.showModal();
    this.ask();
  }

  private ask(): void {
    const { asked, taught, passed } = this;
    if (asked === null) return;
    const { facts, hung, variants, studio } = asked;
    this.over = false;
    void this.work.start(async ({ signal }) => {
      const known = knownOf(facts, hung);
      const { pair, open } = await wallTools().taste(askOf(facts, known, { choices: taught, towards: 100, unsure: 0, passed }));
      if (signal.aborted) return null;
      const [a, b] = pair === null ? [-1, -1] : [num(known, pair[0]), num(known, pair[1])];
      const [one, two] = [variants[a], variants[b]];
      this.over = one === undefined || two === undefined;
      if (one === undefined || two === undefined) return null;
      const draw = ({ pulls }: Variant) => engineFor('picture').thumbnail({ studio, pulls, heightPx: HEIGHT_PX, relative: this.relative });
      return { pair: [a, b], open, pictures: [await draw(one), await draw(two)] };
    });
  }

  private tell(type: 'teach' | 'forget', choice: TasteChoice): void {
    const detail: readonly TasteChoice[] = [choice];
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }

  private choose(side: 0 | 1): void {
    const { shown, asked } = this;
    if (shown === null || asked === null || this.work.running) return;
    const [chosen, other] = [tastePrint(asked, shown.pair[side]), tastePrint(asked, shown.pair[1 - side] ?? -1)];
    if (chosen === undefined || other === undefined) return;
    const choice: TasteChoice = { way: 'compared', chosen, over: [other], ...(shown.open ? { open: true } : {}) };
    this.taught = withChoices(this.taught, [choice]);
    this.answers = [...this.answers, choice];
    this.tell('teach', choice);
    this.ask();
  }

  private another(): void {
    if (this.work.running) return;
    this.passed++;
    this.ask();
  }

  private takeBack(): void {
    const last = this.answers.at(-1);
    if (last === undefined) return;
    this.answers = this.answers.slice(0, -1);
    this.taught = withoutChoices(this.taught, [last]);
    this.tell('forget', last);
    this.ask();
  }

  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const side = event.key === 'ArrowLeft' || event.key === '1' ? 0 : event.key === 'ArrowRight' || event.key === '2' ? 1 : null;
    if (side === null) return;
    event.preventDefault();
    this.choose(side);
  };

  private print(side: 0 | 1, { pair, pictures }: Shown) {
    const variant = this.asked?.variants[pair[side]];
    const paper = this.asked?.studio.paper;
    if (variant === undefined || paper === undefined) return nothing;
    return html`<li>
      <button aria-disabled=${this.work.running} @click=${() => this.choose(side)}>
        <span class="hung" style="--aspect:${paper.widthMm / paper.heightMm}"><ps-picture .picture=${pictures[side]}></ps-picture></span>
        <span><b>${side === 0 ? say.thisOne : say.thatOne}</b> <span class="soft small">${printName(lineageOf(variant))}</span></span>
      </button>
    </li>`;
  }

  override render() {
    const { shown, answers, work } = this;
    return html`<dialog
      aria-label=${say.thisOneOrThat}
      @keydown=${this.onKey}
      @close=${() => {
        work.stop();
        this.dispatchEvent(new CustomEvent('answered'));
      }}
    >
      <header>
        <h2>${say.thisOneOrThat}</h2>
        <p class="soft small told" role="status">${answers.length === 0 ? say.takeOneYouWould : say.answersSoFar(answers.length)}</p>
        <button class="quiet" aria-disabled=${answers.length === 0} @click=${() => this.takeBack()}>${say.takeBack}</button>
        <button class="quiet" ?disabled=${this.over} @click=${() => this.another()}>${say.cannotSay}</button>
        <button @click=${() => this.dialog.close()}>${say.close}</button>
      </header>
      ${workFailure(work)}
      ${
        this.over
          ? html`<p class="over">${say.allPairsThatHang}</p>`
          : html`<ul aria-busy=${work.running}>${shown === null ? nothing : html`${this.print(0, shown)}${this.print(1, shown)}`}</ul>`
      }
    </dialog>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-this-or-that': ThisOrThat;
  }
}
