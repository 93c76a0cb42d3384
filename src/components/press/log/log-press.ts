import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { defined, entryAt } from '../../../engine/base/at.ts';
import type { SheetAsPulled } from '../../../engine/log/as-pulled.ts';
import { type Ticking, tickedAgain, tickedOff, ticksOf } from '../../../engine/log/ticks/ticking.ts';
import { nextSetUp, setUpsDone, tickKey } from '../../../engine/log/ticks/ticks.ts';
import type { Deviation } from '../../../engine/log/types.ts';
import type { Happening } from '../../../engine/log/types.ts';
import '../../ui/kit/ink-chip.ts';
import { wetSheets } from '../../../engine/log/wet.ts';
import type { CardState, SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import '../../ui/cautions.ts';
import { controls } from '../../ui/controls-style.ts';
import { fullDialog } from '../../ui/layout-style.ts';
import '../../ui/log/log-sheet.ts';
import type { LogKeeper } from '../../ui/log/log-keeper.ts';
import type { LogSheet, SheetTalk } from '../../ui/log/log-sheet.ts';
import { printImage } from '../../ui/print/print-image.ts';
import type { StatePictures } from '../../ui/print/state-pictures.ts';
import { dryingWords, stillWetWords, stateWords } from '../../words/log-words.ts';
import { recipeLetter } from '../../words/plan-words.ts';
import { KeepAwake } from './keep-awake.ts';
import { logPressStyle } from './log-press-style.ts';
import { pressFrame } from './press-frame.ts';
import { otherInks, pulledOtherwise, sheetTalk } from './sheet-talk.ts';

/** How often the times until sheets are dry are looked at anew. */
const LOOK_MS = 20_000;

/** The next set-up, as large as the screen: nothing is needed at the press but it and its sheets. */
@customElement('press-log')
export class LogPress extends LitElement {
  static override styles = [controls, fullDialog, logPressStyle];

  @property({ attribute: false }) made!: MadePlan;
  @property({ attribute: false }) log!: LogKeeper;
  @property({ attribute: false }) pictures!: StatePictures;
  /** Changes when a picture has arrived or something was logged. */
  @property({ type: Number }) drawn = 0;
  @state() private open = false;
  @state() private index = 0;
  /** The sheet whose picture is shown, by number. */
  @state() private shown: number | null = null;
  @state() private talkOf: number | null = null;
  @query('dialog') private dialog!: HTMLDialogElement;
  @query('ps-log-sheet') private sheetDialog!: LogSheet;
  private readonly awake = new KeepAwake(this);
  private clock: ReturnType<typeof setInterval> | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearInterval(this.clock);
  }

  /** Opens at the first set-up with something left to pull. */
  show(): void {
    this.index = nextSetUp(this.made.plan, this.ticks);
    this.shown = null;
    this.open = true;
    if (this.awake.possible) void this.awake.set(true);
    clearInterval(this.clock);
    this.clock = setInterval(() => this.requestUpdate(), LOOK_MS);
    void this.updateComplete.then(() => this.dialog.showModal());
  }

  private close(): void {
    this.open = false;
    clearInterval(this.clock);
    void this.awake.set(false);
  }

  private get ticks(): Set<string> {
    return ticksOf(this.made.plan, this.log.sheets);
  }

  private get card(): SetUpCard {
    const { cards } = this.made.plan;
    return entryAt(cards, Math.min(this.index, cards.length - 1));
  }

  private go(index: number): void {
    this.index = index;
    this.shown = null;
    this.dialog.scrollTo({ top: 0 });
  }

  private async add(happenings: Happening[]): Promise<void> {
    await this.log.add(happenings);
    this.requestUpdate();
  }

  private tick(numbers: number[], on: boolean): void {
    this.shown = numbers.at(-1) ?? this.shown;
    const ticking = this.tickingOf(numbers);
    void this.add(on ? tickedAgain(ticking, this.log.events, Date.now()) : tickedOff(ticking));
  }

  private tickingOf(numbers: readonly number[]): Ticking {
    const { sheets, recipes } = this.log;
    return { card: this.card, numbers, sheets, recipes };
  }

  private speak(sheet: number): void {
    this.shown = sheet;
    this.talkOf = sheet;
    void this.updateComplete.then(() => this.sheetDialog.show());
  }

  private get talkSheet(): SheetAsPulled | undefined {
    return this.log.sheets.find((entry) => entry.number === this.talkOf);
  }

  /** What there is to say of the sheet that was asked for. */
  private get talk(): SheetTalk | null {
    const sheet = this.talkSheet;
    if (sheet === undefined) return null;
    return sheetTalk(this.card, sheet, this.log.recipes, otherInks(this.log.head?.recipes ?? [], this.card.ink.ink));
  }

  private otherwise(how: Deviation, note: string): void {
    const sheet = defined(this.talkSheet);
    void this.add(pulledOtherwise(this.tickingOf([sheet.number]), sheet, how, note));
  }

  private renderSheet(number: number, ticks: ReadonlySet<string>) {
    const sheet = this.log.sheets.find((entry) => entry.number === number);
    if (sheet === undefined) return nothing;
    const on = ticks.has(tickKey(this.card.number, number));
    return html`<li>
      <button
        class="tick"
        role="checkbox"
        aria-checked=${on && !sheet.spoiled ? 'true' : 'false'}
        aria-label="Sheet ${number} pulled"
        ?disabled=${sheet.spoiled}
        @click=${() => this.tick([number], !on)}
      >
        ${number}${sheet.spoiled ? ' spoiled' : html`<span class="mark" aria-hidden="true">${on ? '✓' : ''}</span>`}
      </button>
      <button class="more" aria-label="Pulled differently, sheet ${number}" @click=${() => this.speak(number)}>Pulled differently…</button>
    </li>`;
  }

  private renderState(state: CardState, ticks: ReadonlySet<string>) {
    const left = state.sheets.filter((sheet) => !ticks.has(tickKey(this.card.number, sheet)));
    const words = `${recipeLetter(state.recipe)} ${this.made.plan.recipes[state.recipe]?.title ?? ''}`;
    return html`<section aria-label=${words}>
      <h3>${words}${state.prints.length > 1 ? html` <span class="soft">${state.prints.length} pulls each</span>` : nothing}</h3>
      <ul class="sheets">
        ${state.sheets.map((sheet) => this.renderSheet(sheet, ticks))}
      </ul>
      ${left.length > 1 ? html`<button class="all" @click=${() => this.tick(left, true)}>All ${left.length} pulled</button>` : nothing}
    </section>`;
  }

  private renderPicture() {
    const number = this.shown ?? this.card.sheets[0];
    const sheet = this.log.sheets.find((entry) => entry.number === number);
    const recipe = this.log.recipes[sheet?.recipe ?? -1];
    if (sheet === undefined || recipe === undefined) return nothing;
    const url = this.pictures.of(recipe, sheet.pulls);
    return html`<figure>
      ${printImage(url, `Sheet ${sheet.number} as it must look now`, recipe.paper.widthMm / recipe.paper.heightMm)}
      <figcaption aria-live="polite">${stateWords(sheet, recipe)}</figcaption>
    </figure>`;
  }

  /** By the real clock, not the planned one: which sheets must wait, and until when the others dry. */
  private renderDrying(ticks: ReadonlySet<string>) {
    const own = this.log.sheets.filter((sheet) => !sheet.spoiled && this.card.sheets.includes(sheet.number));
    const now = Date.now();
    const wet = wetSheets(own, this.log.recipes, now);
    const ticked = (number: number): boolean => ticks.has(tickKey(this.card.number, number));
    const words = [
      stillWetWords(wet.filter(({ number, dryMs }) => !ticked(number) && dryMs > now)),
      dryingWords(
        wet.filter(({ number }) => ticked(number)),
        now,
      ),
    ].filter((each) => each !== '');
    return words.map((each) => html`<p class="wet">${each}</p>`);
  }

  private renderFace() {
    const { plan } = this.made;
    const { card } = this;
    const index = card.number - 1;
    const ticks = this.ticks;
    const done = setUpsDone(plan, ticks);
    const all = done.size === plan.cards.length;
    const next = nextSetUp(plan, ticks);
    return html`<div class="face">
      <header>
        <h2>Set-up ${card.number} <span class="soft">of ${plan.cards.length}</span></h2>
        <button ?disabled=${index === 0} @click=${() => this.go(index - 1)}>Back</button>
        <button ?disabled=${index === plan.cards.length - 1} @click=${() => this.go(index + 1)}>Next</button>
        <button @click=${() => this.dialog.close()}>Leave the press</button>
      </header>
      ${pressFrame(this.made, card)}
      ${this.renderPicture()}
      <div class="take">
        ${
          all
            ? html`<p class="done" role="status">All set-ups are done.</p>`
            : done.has(index)
              ? html`<p class="done" role="status">Set-up ${card.number} is done. <button class="main" @click=${() => this.go(next)}>To set-up ${next + 1}</button></p>`
              : nothing
        }
        ${this.renderDrying(ticks)} ${card.states.map((state) => this.renderState(state, ticks))}
        <ps-cautions topic="press"></ps-cautions>
      </div>
    </div>`;
  }

  override render() {
    return html`<dialog aria-label="At the press" @close=${this.close}>
        ${this.open ? this.renderFace() : nothing}
      </dialog>
      <ps-log-sheet
        .talk=${this.open ? this.talk : null}
        @happened=${(event: CustomEvent<Happening[]>) => void this.add(event.detail)}
        @otherwise=${(event: CustomEvent<{ how: Deviation; note: string }>) => this.otherwise(event.detail.how, event.detail.note)}
      ></ps-log-sheet>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-log': LogPress;
  }
}
