import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import { rangesText } from '../../../engine/base/words.ts';
import type { Taken } from '../../../engine/explore/onward/takers.ts';
import type { WhatIf } from '../../../engine/log/now/what-if.ts';
import type { RestInput } from '../../../engine/log/rest.ts';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import { wallTools } from '../../../workers/client/client.ts';
import { controls } from '../../ui/controls-style.ts';
import { dialogStyle } from '../../ui/kit/dialog-style.ts';
import { dialogBox } from '../../ui/kit/dialog.ts';
import '../../ui/kit/progress.ts';
import type { LogKeeper } from '../../ui/log/log-keeper.ts';
import { onwardWords } from '../../ui/next/next-words.ts';
import '../../ui/print/picture-view.ts';
import { workFailure } from '../../ui/work-failure.ts';
import { Work } from '../../ui/work.ts';
import { say as log } from '../../words/en/press/log.ts';
import { say } from '../../words/en/press/next.ts';
import { momentText } from '../../words/log-words.ts';
import { type GoOn, goOnHappenings, whyNot } from './go-on.ts';
import { pullOfCard, ranked, type TakerOrder, type TakerRow, takerRows, wetUntil } from './taker-rows.ts';
import { takersStyle } from './takers-style.ts';
import { whatIf, whatIfWords } from './what-if.ts';

const HEIGHT_PX = 240;
const ORDERS: readonly (readonly [TakerOrder, string])[] = [
  ['change', say.thatItChangesMost],
  ['softer', say.thatItSoftensMost],
  ['sharper', say.thatItSharpensMost],
];

/**
 * What is on the press now, and which other sheets would take it: before and after side by side.
 * @fires go-on CustomEvent<GoOn>: these sheets take it
 */
@customElement('press-takers')
export class Takers extends LitElement {
  static override styles = [controls, dialogStyle, takersStyle];

  @property({ attribute: false }) card!: SetUpCard;
  @property({ attribute: false }) log!: LogKeeper;
  @property({ type: Boolean }) relative = true;
  /** What is left to be planned. */
  @property({ attribute: false }) restOf!: () => RestInput;
  @state() private open = false;
  @state() private by: TakerOrder = 'change';
  @state() private chosen: ReadonlySet<TakerRow> = new Set();
  @state() private complaint = '';
  @query('dialog') private dialog!: HTMLDialogElement;
  private rows: TakerRow[] = [];
  private readonly work = new Work<Taken[]>(this);
  private readonly trial = new Work<WhatIf>(this);

  private show(): void {
    this.rows = takerRows(this.card, this.log, Date.now());
    this.chosen = new Set();
    this.complaint = '';
    this.trial.clear();
    this.open = true;
    void this.updateComplete.then(() => this.dialog.showModal());
    const sheets = this.rows.map(({ taker }) => taker);
    const look = { heightPx: HEIGHT_PX, relative: this.relative };
    void this.work.start((control) => wallTools().takers({ sheets, ...look }, control));
  }

  private choose(row: TakerRow): void {
    const chosen = new Set(this.chosen);
    if (!chosen.delete(row)) chosen.add(row);
    this.chosen = chosen;
    this.complaint = '';
    this.trial.clear();
  }

  /** The choice as it goes into the log; what was planned for the sheets follows after it. */
  private get going(): GoOn | null {
    const from = pullOfCard(this.card, this.log.recipes);
    if (from === null || this.chosen.size === 0) return null;
    const numbers = [...this.chosen].flatMap((row) => row.numbers).sort((a, b) => a - b);
    return { numbers, more: [from.pull], studio: { ...from.recipe }, planned: true };
  }

  private tryOut(): void {
    const { going, log } = this;
    if (going === null) return;
    void this.trial.start((control) => whatIf(log, this.restOf(), goOnHappenings(log, going), control));
  }

  private submit(event: Event): void {
    event.preventDefault();
    const { going } = this;
    if (going === null) return;
    this.complaint = whyNot(this.log, going);
    if (this.complaint !== '') return;
    this.dialog.close();
    this.dispatchEvent(new CustomEvent<GoOn>('go-on', { detail: going }));
  }

  /** Until when the sheets are too wet for it, or wet where it does not lie. */
  private wetLine(row: TakerRow, taken: Taken) {
    const { under, beside } = wetUntil(row, taken, this.log, Date.now());
    if (under > 0) return html`<br /><span class="warn">${say.tooWetToPrint(momentText(under))}</span>`;
    return beside > 0 ? html`<br /><span class="soft">${log.wetBeside(momentText(beside))}</span>` : nothing;
  }

  private row(row: TakerRow, taken: Taken) {
    const { numbers, sheet, recipe } = row;
    const { before, after, now, next, widthPx, heightPx } = taken;
    const name = say.sheets(numbers.length, rangesText(numbers));
    return html`<li>
      <label>
        <input type="checkbox" aria-label=${say.takeIt(name)} .checked=${this.chosen.has(row)} @change=${() => this.choose(row)} />
        <ps-picture .picture=${{ widthPx, heightPx, pixels: before }} label=${say.now(name)}></ps-picture>
        <ps-picture .picture=${{ widthPx, heightPx, pixels: after }} label=${say.withIt(name)}></ps-picture>
        <span class="words"><b>${name}</b> <span class="soft">${recipe.title}, ${sheet.pulls.length === 0 ? say.bare : say.pullsDown(sheet.pulls.length)}</span><br />${onwardWords(now, next)}${this.wetLine(row, taken)}</span>
      </label>
    </li>`;
  }

  private foot() {
    const { trial, going } = this;
    const told = trial.found === null ? say.whatWasPlannedFor : whatIfWords(trial.found);
    return html`<div class="buttons">
      ${
        trial.running
          ? html`<ps-progress label=${say.planning} words=${say.planningWhatIsLeft} stop=${say.stopPlanning} .value=${trial.progress} @stop=${() => trial.stop()}></ps-progress>`
          : html`<p class=${this.complaint === '' ? '' : 'warn'} role="status">${this.complaint === '' ? (trial.failure === '' ? told : trial.failure) : this.complaint}</p>`
      }
      <button type="button" ?disabled=${going === null || trial.running} @click=${this.tryOut}>${say.whatItDoesTo}</button>
      <button class="main" type="submit" ?disabled=${going === null}>${going === null ? say.letSheetsTakeIt : say.letSheetsTakeItNumbers(going.numbers.length, rangesText(going.numbers))}</button>
    </div>`;
  }

  private content() {
    const { work, rows } = this;
    const { found } = work;
    if (rows.length === 0) return html`<p>${say.everySheetThatIs}</p>`;
    return html`<div class="line">
        <label>${say.thoseFirst} <select @change=${(event: Event) => (this.by = (event.target as HTMLSelectElement).value as TakerOrder)}>
          ${ORDERS.map(([by, label]) => html`<option value=${by} ?selected=${by === this.by}>${label}</option>`)}
        </select></label>
        <span class="soft small">${say.nowAndWithIt}</span>
      </div>
      ${work.running ? html`<ps-progress label=${say.looking} words=${say.tryingItOnEach} stop=${say.stopLooking} .value=${work.progress} @stop=${() => work.stop()}></ps-progress>` : nothing}
      ${workFailure(work)}
      ${
        found === null
          ? nothing
          : html`<form @submit=${this.submit}>
            <ul aria-label=${say.sheetsThatCouldTake}>${ranked(found, this.by).map((at) => this.row(entryAt(rows, at), entryAt(found, at)))}</ul>
            ${this.foot()}
          </form>`
      }`;
  }

  private close(): void {
    this.work.stop();
    this.trial.stop();
    this.open = false;
  }

  override render() {
    const { card } = this;
    const heading = say.whichSheetsWouldTake(card.screen.key, card.ink.key);
    return html`<button @click=${this.show}>${say.whichOtherSheetsWould}</button>
      ${dialogBox({ heading, closable: true, onClose: () => this.close() }, this.open ? this.content() : nothing)}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-takers': Takers;
  }
}
