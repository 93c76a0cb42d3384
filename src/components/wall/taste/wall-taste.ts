import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { ChoiceWay, TasteChoice } from '../../../engine/explore/taste/choices.ts';
import type { Learnt } from '../../../engine/explore/taste/taste-of-wall.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import { controls } from '../../ui/controls-style.ts';
import { foldMark } from '../../ui/kit/fold-mark-style.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/wall/taste.ts';
import { BY_NUMBER, type HangChoice } from '../hang/hanging.ts';
import type { DerivedAsk } from '../run/derived-ask.ts';
import { furtherAsChosen } from './further-as-chosen.ts';
import './taught-list.ts';
import { learntSentence, UNSURE, wayWord } from './taste-words.ts';
import './this-or-that.ts';
import type { TaughtList } from './taught-list.ts';
import type { ThisOrThat } from './this-or-that.ts';
import { choicesOf, type KnownPrints } from './wall-choices.ts';
import { wallTasteStyle } from './wall-taste-style.ts';

/**
 * The line above a wall that hangs as one chooses: what was learnt, which end hangs first, and how it is taught.
 * Tells `hang` (other choices of arranging), `print-derived` (prints found by what was learnt), `teach`, `forget`, `answering` (true and false), and `arrange` when the wall is
 * to hang by what was taught since.
 */
@customElement('wall-taste')
export class WallTaste extends LitElement {
  static override styles = [controls, foldMark, wallTasteStyle];

  @property({ attribute: false }) choice: HangChoice = BY_NUMBER;
  @property({ attribute: false }) taught: readonly TasteChoice[] = [];
  /** What the wall hangs by; null while it is worked out. */
  @property({ attribute: false }) learnt: Learnt | null = null;
  /** Whether something was taught or forgotten since the wall was arranged. */
  @property({ type: Boolean }) stale = false;
  @property({ attribute: false }) known!: KnownPrints;
  @property({ attribute: false }) drawer: Studio | null = null;
  @property({ attribute: false }) relative = true;
  /** On a narrow page what is seldom wanted stays folded. */
  @state() private unfolded = false;
  private readonly finding = new Work<DerivedAsk>(this, {
    found: (ask) => {
      this.fire('wall-settled');
      this.fire('print-derived', ask);
    },
    failed: (sentence) => this.fire('wall-problem', sentence),
  });
  @query('wall-this-or-that') private asking!: ThisOrThat;
  @query('wall-taught-list') private list!: TaughtList;

  private fire(
    type: 'hang' | 'teach' | 'answering' | 'arrange' | 'wall-problem' | 'wall-settled' | 'print-derived',
    detail?: unknown,
  ): void {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }

  private change(change: Partial<HangChoice>): void {
    this.fire('hang', { ...this.choice, ...change });
  }

  private askAgain(): void {
    const { drawer: studio, known } = this;
    if (studio === null) return;
    this.fire('answering', true);
    this.fire('wall-settled');
    this.asking.show({ variants: known.variants, facts: known.facts, hung: known.sequence, studio }, this.taught);
  }

  private answered(): void {
    this.fire('answering', false);
    if (this.stale) this.fire('arrange');
  }

  /** What is chosen on this wall and was not taught yet. */
  private get untaught(): [ChoiceWay, number[]][] {
    const { known, taught } = this;
    const ways: [ChoiceWay, ReadonlySet<number>][] = [
      ['selected', known.selected],
      ['pinned', known.pinned],
      ['kept', known.kept],
    ];
    return ways.map(([way, places]) => {
      const said = new Set(taught.flatMap((choice) => (choice.way === way ? [choice.chosen.key] : [])));
      return [way, [...places].filter((place) => !said.has(known.facts.keys[place] ?? ''))];
    });
  }

  private learn({ detail }: MouseEvent): void {
    // The second of two quick clicks finds nothing left to learn from.
    if (detail > 1) return;
    try {
      const chosen = this.untaught.filter(([, places]) => places.length > 0);
      // Without any, says why in its one sentence.
      const ways: [ChoiceWay, number[]][] = chosen.length > 0 ? chosen : [['selected', []]];
      this.fire(
        'teach',
        ways.flatMap(([way, places]) => choicesOf(this.known, way, places)),
      );
      this.fire('wall-settled');
    } catch (error) {
      this.fire('wall-problem', sentenceOf(error));
    }
  }

  private learnButton() {
    const there = this.untaught.filter(([, places]) => places.length > 0);
    const words = there.map(([way, places]) => `${places.length} ${wayWord(way)}`).join(', ');
    return html`<button class=${words === '' ? 'more' : ''} @click=${(event: MouseEvent) => this.learn(event)}>${say.learnFrom(words === '' ? say.selected : words)}</button>`;
  }

  private further() {
    const { choice, known, taught: choices, relative } = this;
    const { towards, unsure } = choice;
    void this.finding.start(() => furtherAsChosen(known, { choices, towards, unsure, relative }));
  }

  private furtherButton() {
    const { towards } = this.choice;
    return html`<button ?disabled=${this.finding.running} @click=${() => this.further()}>
      ${towards > 0 ? say.moreAsIChoose : towards < 0 ? say.moreOfWhatI : say.moreWhateverIChoose}
    </button>`;
  }

  private controls() {
    const { choice } = this;
    return html`<div class="row more">
      <label class="towards">
        <span class="soft small">${say.whatIChoose}</span>
        <input
          type="range"
          min="-100"
          max="100"
          step="10"
          aria-label=${say.fromWhatIChoose}
          .value=${String(-choice.towards)}
          @change=${(event: Event) => this.change({ towards: -(event.target as HTMLInputElement).valueAsNumber })}
        />
        <span class="soft small">${say.whatINeverChose}</span>
      </label>
      <label>
        <span class="soft small">${say.printsItIsUnsure}</span>
        <select @change=${(event: Event) => this.change({ unsure: Number((event.target as HTMLSelectElement).value) })}>
          ${UNSURE.map(([share, words]) => html`<option value=${share} ?selected=${share === choice.unsure}>${words}</option>`)}
        </select>
      </label>
    </div>`;
  }

  override render() {
    const { taught, learnt, stale } = this;
    this.toggleAttribute('data-unfolded', this.unfolded);
    return html`
      <p role="status">${learnt === null ? say.learning : learntSentence(learnt, taught.length, stale)}</p>
      <button class="fold-mark" aria-expanded=${this.unfolded} aria-label=${say.allOfIt} @click=${() => (this.unfolded = !this.unfolded)}></button>
      <div class="row seldom">
        ${this.learnButton()}
        <button class="quiet more" @click=${() => this.list.show()}>${say.whatWasTaught}</button>
      </div>
      ${learnt === null || learnt.choices === 0 ? nothing : this.controls()}
      <div class="row teach">
        <button class="main" @click=${() => this.askAgain()}>${say.thisOneOrThat}</button>
        ${this.furtherButton()}
        ${stale ? html`<button class="quiet again" @click=${() => this.fire('arrange')}>${say.arrangeAgain}</button>` : nothing}
      </div>
      <wall-this-or-that .relative=${this.relative} @answered=${() => this.answered()}></wall-this-or-that>
      <wall-taught-list .choices=${taught}></wall-taught-list>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-taste': WallTaste;
  }
}
