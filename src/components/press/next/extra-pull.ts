import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { rangesText } from '../../../engine/base/words.ts';
import type { Ink } from '../../../engine/ink/types.ts';
import { inksAtHand } from '../../../engine/visit/lent/inks-at-hand.ts';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import { controls } from '../../ui/controls-style.ts';
import { dialogStyle } from '../../ui/kit/dialog-style.ts';
import { dialogBox } from '../../ui/kit/dialog.ts';
import type { LogKeeper } from '../../ui/log/log-keeper.ts';
import { logSheetStyle } from '../../ui/log/log-sheet-style.ts';
import { inkOptions } from '../../ui/log/log-sheet.ts';
import { sheetTicks } from '../../ui/log/sheet-ticks.ts';
import { say } from '../../words/en/press/next.ts';
import { say as sheetWords } from '../../words/en/ui/log.ts';
import { type GoOn, whyNot } from './go-on.ts';
import { extraPullOf } from './taker-rows.ts';

/**
 * Logs what was pulled though no plan has it: what is on the press on a sheet of another print, or once more.
 * @fires go-on CustomEvent<GoOn>: these sheets have it
 */
@customElement('press-extra')
export class ExtraPull extends LitElement {
  static override styles = [
    controls,
    dialogStyle,
    logSheetStyle,
    css`
      .many {
        display: flex;
      }
      .many label {
        min-width: 64px;
        min-height: 48px;
      }
      .soft,
      .warn {
        margin-bottom: var(--space-6);
      }
      .warn {
        color: var(--accent);
        font-weight: 600;
      }
    `,
  ];

  @property({ attribute: false }) card!: SetUpCard;
  @property({ attribute: false }) log!: LogKeeper;
  /** The inks of the project. */
  @property({ attribute: false }) drawer: readonly Ink[] = [];
  @state() private open = false;
  @state() private chosen: ReadonlySet<number> = new Set();
  @state() private complaint = '';
  @query('dialog') private dialog!: HTMLDialogElement;

  private show(): void {
    this.chosen = new Set();
    this.complaint = '';
    this.open = true;
    void this.updateComplete.then(() => this.dialog.showModal());
  }

  private choose(number: number, on: boolean): void {
    const chosen = new Set(this.chosen);
    if (on) chosen.add(number);
    else chosen.delete(number);
    this.chosen = chosen;
  }

  private value(name: string): string {
    return this.renderRoot.querySelector<HTMLInputElement>(`[name=${name}]`)?.value ?? '';
  }

  private submit(event: Event): void {
    event.preventDefault();
    const inks = inksAtHand(this.log.recipes, this.drawer, this.card.ink.ink);
    const other = inks.find((_, at) => String(at) === this.value('ink'));
    const how = { strokes: Number(this.value('strokes')), dxMm: Number(this.value('right')), dyMm: Number(this.value('down')) };
    const extra = extraPullOf(this.card, this.log.recipes, { ...how, ...other });
    if (extra === null || this.chosen.size === 0) return;
    const numbers = [...this.chosen].sort((a, b) => a - b);
    const going: GoOn = { ...extra, numbers, planned: true, pulled: true };
    this.complaint = whyNot(this.log, going);
    if (this.complaint !== '') return;
    this.dialog.close();
    this.dispatchEvent(new CustomEvent<GoOn>('go-on', { detail: going }));
  }

  /** Sheets to tick, those of the set-up by themselves. */
  private sheets(legend: string, numbers: readonly number[]) {
    if (numbers.length === 0) return nothing;
    return sheetTicks({ legend, numbers, chosen: this.chosen, choose: (number, chosen) => this.choose(number, chosen) });
  }

  private content() {
    const { card, log, chosen } = this;
    const there = log.sheets
      .filter(({ spoiled }) => !spoiled)
      .map(({ number }) => number)
      .sort((a, b) => a - b);
    const own = there.filter((each) => card.sheets.includes(each));
    const number = (name: string, label: string, value: string, [min, max, step]: [number, number, number]) =>
      html`<label class="stacked">${label} <input name=${name} type="number" inputmode="decimal" .min=${String(min)} .max=${String(max)} .step=${String(step)} required value=${value} /></label>`;
    return html`<form @submit=${(event: Event) => this.submit(event)}>
      <p class="soft">${say.extraIsFor}</p>
      ${this.sheets(
        say.otherSheets,
        there.filter((each) => !own.includes(each)),
      )}
      ${this.sheets(say.onceMoreOn, own)}
      <fieldset>
        <legend>${say.howItWasPulled}</legend>
        <label class="stacked"
          >${sheetWords.ink}
          <select name="ink">
            <option value="">${card.ink.key}</option>
            ${inkOptions(inksAtHand(log.recipes, this.drawer, card.ink.ink))}
          </select></label
        >
        ${number('strokes', sheetWords.strokes, String(card.strokes), [1, 20, 1])} ${number('right', sheetWords.offToRightMm, '0', [-100, 100, 0.1])}
        ${number('down', sheetWords.offDownwardsMm, '0', [-100, 100, 0.1])}
      </fieldset>
      <p class="soft">${say.extraThenAsPlanned}</p>
      ${this.complaint === '' ? nothing : html`<p class="warn" role="alert">${this.complaint}</p>`}
      <div class="buttons">
        <button class="main" type="submit" ?disabled=${chosen.size === 0}>
          ${chosen.size === 0 ? say.logExtra : say.logExtraOn(chosen.size, rangesText([...chosen].sort((a, b) => a - b)))}
        </button>
      </div>
    </form>`;
  }

  override render() {
    const { card } = this;
    const heading = say.extraPullOf(card.screen.key, card.screen.name, card.ink.key);
    return html`<button @click=${this.show}>${say.extraPull}</button>
      ${dialogBox({ heading, closable: true, onClose: () => (this.open = false) }, this.open ? this.content() : nothing)}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-extra': ExtraPull;
  }
}
