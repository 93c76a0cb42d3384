import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { defined, entryAt } from '../../engine/base/at.ts';
import type { Pull } from '../../engine/stack/types.ts';
import { type AppStore, StoreController } from '../app-store.ts';
import '../ui/kit/number-field.ts';
import '../ui/print/order-graph.ts';
import { controls } from '../ui/controls-style.ts';
import { counted } from '../ui/words.ts';
import './contact-sheet.ts';
import './guess-game.ts';
import { LessonRun } from './lesson-run.ts';
import './lesson-sheet.ts';
import type { Shift } from './lesson-sheet.ts';
import { lessonStyles } from './lesson-style.ts';
import { countWords, orderWords, whyWords } from './lesson-words.ts';
import { chipStyles, pullChip } from './order-chips.ts';
import './pull-picker.ts';
import { MOST_PULLS } from './pull-picker.ts';
import { lookStyles, twoLooks } from './two-looks.ts';

/** Rows of the contact sheet's pictures by number of pulls: five have 120 pictures. */
const ROWS = [0, 0, 560, 560, 360, 240];
/** While a shape is dragged, many pictures are drafts. */
const DRAFT_ROWS = 150;
const DRAFT_FROM = 4;
const SHEET_ROWS = 800;

/** The teacher's room: all orders of a few pulls, and which of them print the same picture. */
@customElement('lesson-room')
export class LessonRoom extends LitElement {
  static override styles = [controls, chipStyles, lookStyles, lessonStyles];

  @property({ attribute: false }) store!: AppStore;
  @state() private selected: string | null = null;
  /** Index of the order shown on the sheet. */
  @state() private shown = 0;
  @state() private guessing = false;
  @state() private dragging = false;
  /** null until the slider is moved: then the Wall's threshold counts. */
  @state() private ownDeltaE: number | null = null;
  private readonly run = new LessonRun(this, (sentence) => this.store.tell(sentence));
  private readonly tell = (sentence: string): void => this.store.tell(sentence);

  override connectedCallback(): void {
    super.connectedCallback();
    new StoreController(this, this.store);
  }

  override shouldUpdate(changed: PropertyValues): boolean {
    return !this.hasUpdated || this.store.room === 'lesson' || changed.size > 0;
  }

  private get minDeltaE(): number {
    return this.ownDeltaE ?? this.store.project.explore.minDeltaE;
  }

  /** Bench pulls, then those of the lesson that the Bench no longer has. */
  private get choices(): Pull[] {
    const { bench, lesson } = this.store.project;
    return [...bench, ...lesson.filter((pull) => !bench.some((entry) => entry.id === pull.id))];
  }

  /** Whether a pull was recoloured or the like on the Bench since it was copied. */
  private get differs(): boolean {
    const { bench, lesson } = this.store.project;
    return lesson.some((pull) => {
      const there = bench.find((entry) => entry.id === pull.id);
      return there !== undefined && (['screen', 'ink', 'strokes', 'turnDeg'] as const).some((key) => there[key] !== pull[key]);
    });
  }

  private choose(ids: readonly string[]): void {
    const { lesson } = this.store.project;
    const pulls = ids.map((id) => lesson.find((pull) => pull.id === id) ?? defined(this.choices.find((pull) => pull.id === id)));
    this.store.dispatch({ kind: 'set-lesson', pulls });
  }

  private copyAnew(): void {
    const { bench, lesson } = this.store.project;
    this.store.dispatch({
      kind: 'set-lesson',
      pulls: lesson.map((pull) => {
        const there = bench.find((entry) => entry.id === pull.id);
        return there === undefined ? pull : { ...there, dxMm: pull.dxMm, dyMm: pull.dyMm };
      }),
    });
  }

  private shift({ pull: id, dxMm, dyMm }: Shift): void {
    const { lesson } = this.store.project;
    this.store.dispatch({ kind: 'set-lesson', pulls: lesson.map((pull) => (pull.id === id ? { ...pull, dxMm, dyMm } : pull)) });
  }

  private setGuessing(guessing: boolean): void {
    this.guessing = guessing;
    // The print to guess from needs the whole height.
    if (guessing) void this.updateComplete.then(() => this.renderRoot.querySelector('.result')?.scrollIntoView({ block: 'start' }));
  }

  /** Where a pull lies on the Bench; at rest when it is no longer there. */
  private home(pull: Pull): { dxMm: number; dyMm: number } {
    const { dxMm, dyMm } = this.store.project.bench.find((entry) => entry.id === pull.id) ?? { dxMm: 0, dyMm: 0 };
    return { dxMm, dyMm };
  }

  private get moved(): boolean {
    return this.store.project.lesson.some((pull) => {
      const { dxMm, dyMm } = this.home(pull);
      return pull.dxMm !== dxMm || pull.dyMm !== dyMm;
    });
  }

  private putBack(): void {
    const { lesson } = this.store.project;
    this.store.dispatch({ kind: 'set-lesson', pulls: lesson.map((pull) => ({ ...pull, ...this.home(pull) })) });
  }

  protected override willUpdate(): void {
    const { lesson, drawer } = this.store.project;
    if (!lesson.some((pull) => pull.id === this.selected)) this.selected = lesson[0]?.id ?? null;
    if (this.store.room !== 'lesson') return;
    if (lesson.length < 2) {
      this.run.clear();
      return;
    }
    const { relative } = this.store;
    const rows = ROWS[lesson.length] ?? DRAFT_ROWS;
    const heightPx = this.dragging && lesson.length >= DRAFT_FROM ? DRAFT_ROWS : rows;
    this.run.ask({ drawer, pulls: lesson, minDeltaE: this.minDeltaE, heightPx, relative });
    const { answer } = this.run;
    if (answer !== null && this.shown >= answer.result.orders.length) this.shown = 0;
    this.run.askSheet({ drawer, pulls: this.shownOrder.map((at) => entryAt(lesson, at)), heightPx: SHEET_ROWS, relative });
  }

  /** The order that the sheet shows, as places in the lesson. */
  private get shownOrder(): readonly number[] {
    const { lesson } = this.store.project;
    const order = this.run.answer?.result.orders[this.shown];
    return order?.length === lesson.length ? order : lesson.map((_, at) => at);
  }

  private renderEmpty() {
    return html`<div class="empty">
      <h2>Nothing to compare yet</h2>
      <p>A lesson compares the orders of a few pulls. Put at least two pulls on the Bench, then come back.</p>
      <div class="row"><button class="main" @click=${() => this.store.go('bench')}>Go to the Bench</button></div>
    </div>`;
  }

  private renderPicker() {
    const { lesson, drawer } = this.store.project;
    const room = MOST_PULLS - lesson.length;
    return html`<section aria-labelledby="pick">
      <h2 id="pick">Choose two to five pulls</h2>
      <p class="lead soft">
        They are copies: what you move here stays as it is on the Bench.
        ${room === 0 ? 'Five are chosen; take one out to add another.' : nothing}
      </p>
      <ps-pull-picker
        .pulls=${this.choices}
        .chosen=${lesson}
        .drawer=${drawer}
        @pulls=${(event: CustomEvent<string[]>) => this.choose(event.detail)}
      ></ps-pull-picker>
      ${
        this.differs
          ? html`<p class="stale row">
            Inks or strokes have changed on the Bench since. <button @click=${() => this.copyAnew()}>Take them over</button>
          </p>`
          : nothing
      }
    </section>`;
  }

  private renderSheet() {
    const { lesson, drawer } = this.store.project;
    const pull = lesson.find((entry) => entry.id === this.selected);
    const at = pull === undefined ? -1 : lesson.indexOf(pull);
    const { widthMm, heightMm } = drawer.paper;
    const screen = drawer.screens.find((entry) => entry.id === pull?.screen);
    return html`<aside aria-label="The sheet">
      <div class="move">
      <p class="soft small">Drag a shape, or choose one and press the arrow keys. Move two apart and see which pictures become one.</p>
      <ps-lesson-sheet
        .pulls=${lesson}
        .drawer=${drawer}
        .picture=${this.run.sheet}
        .selected=${this.selected}
        label="Print of ${orderWords(this.shownOrder)}"
        @pull-select=${(event: CustomEvent<string>) => (this.selected = event.detail)}
        @pull-shift=${(event: CustomEvent<Shift>) => this.shift(event.detail)}
        @drag-state=${(event: CustomEvent<boolean>) => (this.dragging = event.detail)}
      ></ps-lesson-sheet>
      ${
        pull === undefined
          ? nothing
          : html`<p class="chosen">${pullChip(pull, at, drawer)} ${screen?.name}</p>
            <div class="where">
              <ps-number
                label="Right"
                unit="mm"
                .min=${-widthMm}
                .max=${widthMm}
                .step=${0.1}
                .value=${pull.dxMm}
                @pick=${(event: CustomEvent<number>) => this.shift({ pull: pull.id, dxMm: event.detail, dyMm: pull.dyMm })}
              ></ps-number>
              <ps-number
                label="Down"
                unit="mm"
                .min=${-heightMm}
                .max=${heightMm}
                .step=${0.1}
                .value=${pull.dyMm}
                @pick=${(event: CustomEvent<number>) => this.shift({ pull: pull.id, dxMm: pull.dxMm, dyMm: event.detail })}
              ></ps-number>
              <button ?disabled=${!this.moved} @click=${() => this.putBack()}>Put back</button>
            </div>`
      }
        ${this.run.answer === null ? nothing : html`<p class="count-here" aria-hidden="true">${countWords(this.run.answer.result)}</p>`}
      </div>
      ${
        this.run.answer === null
          ? nothing
          : html`<ps-order-graph
            .pulls=${lesson}
            .drawer=${drawer}
            .edges=${this.run.answer.edges}
            .minDeltaE=${this.minDeltaE}
            .selected=${this.selected}
            @pull-select=${(event: CustomEvent<string>) => (this.selected = event.detail)}
          ></ps-order-graph>`
      }
    </aside>`;
  }

  private renderResult() {
    const { answer, behind } = this.run;
    const { lesson } = this.store.project;
    if (lesson.length < 2) {
      return html`<section class="result"><p>${lesson.length === 1 ? 'One more pull, and there are two orders to compare.' : 'Tick two pulls to begin.'}</p></section>`;
    }
    if (answer === null) return html`<section class="result"><p class="soft" role="status">Printing all orders…</p></section>`;
    // Until a changed lesson is sorted, the sheet beside it and the old prints would not belong together.
    const current = answer.question.pulls.length === lesson.length;
    return html`<section class="result ${behind && !this.dragging ? 'behind' : ''}" aria-labelledby="count">
      <h2 id="count" class="headline" aria-live="polite">${current ? countWords(answer.result) : `Sorting ${counted(factorial(lesson.length), 'order')}…`}</h2>
      <p class="why">${current ? whyWords(lesson.length, answer.edges, answer.question.minDeltaE) : nothing}</p>
      <div class="tools">
        <div class="modes" role="group" aria-label="Show">
          <button aria-pressed=${!this.guessing} @click=${() => this.setGuessing(false)}>All pictures</button>
          <button aria-pressed=${this.guessing} @click=${() => this.setGuessing(true)}>Guess</button>
        </div>
        <label class="threshold"
          >Count as the same under ΔE
          <input
            type="range"
            min="0.1"
            max="12"
            step="0.1"
            .value=${String(this.minDeltaE)}
            @input=${(event: Event) => (this.ownDeltaE = (event.target as HTMLInputElement).valueAsNumber)}
          /><output>${this.minDeltaE.toFixed(1)}</output></label
        >
      </div>
      ${
        !current
          ? nothing
          : this.guessing
            ? html`<ps-guess-game .answer=${answer} .tell=${this.tell}></ps-guess-game>`
            : html`<div class="columns">
              <ps-contact-sheet
                .answer=${answer}
                .shown=${this.shown}
                @order-select=${(event: CustomEvent<number>) => (this.shown = event.detail)}
              ></ps-contact-sheet>
              ${this.renderSheet()}
            </div>`
      }
    </section>`;
  }

  override render() {
    if (this.choices.length < 2) return html`<div class="room">${this.renderEmpty()}</div>`;
    return html`<div class="room">
      ${this.renderPicker()} ${this.renderResult()}
      <section class="two" aria-labelledby="two">
        <h2 id="two">Two things not to take for one</h2>
        ${twoLooks()}
      </section>
    </div>`;
  }
}

function factorial(n: number): number {
  return n < 2 ? 1 : n * factorial(n - 1);
}

declare global {
  interface HTMLElementTagNameMap {
    'lesson-room': LessonRoom;
  }
}
