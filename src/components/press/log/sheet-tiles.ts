import { html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import type { SheetAsPulled } from '../../../engine/log/as-pulled.ts';
import { wentOtherwise } from '../../../engine/log/ticks/ticking.ts';
import { tickKey } from '../../../engine/log/ticks/ticks.ts';
import { wetSheets } from '../../../engine/log/wet.ts';
import { type CardState, type SetUpCard, tickedTogether } from '../../../engine/visit/set-up-cards.ts';
import type { PressPlan } from '../../../engine/visit/visit.ts';
import { controls } from '../../ui/controls-style.ts';
import type { LogKeeper } from '../../ui/log/log-keeper.ts';
import { doubtShort } from '../../words/doubt-words.ts';
import { say } from '../../words/en/press/log.ts';
import { dryingWords, momentText, stillWetWords, wetBesideWords } from '../../words/log-words.ts';
import { recipeLetter, useWord } from '../../words/plan-words.ts';
import { sheetTilesStyle } from './sheet-tiles-style.ts';
import { testTile } from './test-tile.ts';
import './tick-question.ts';
import type { TickAnswer, TickAsking } from './tick-asking.ts';

/** More sheets of a recipe than this stand in a row that is wide enough for what is said of all. */
const MANY = 4;

/**
 * The sheets of a set-up as large tiles to tick. They keep their places whatever is ticked; what
 * speaks against a tick stands on the tile, and is asked at it.
 * @fires shown CustomEvent<number>: the sheet that was touched last
 * @fires speak CustomEvent<number[]>: sheets of which something else is to be said
 */
@customElement('press-sheet-tiles')
export class SheetTiles extends LitElement {
  static override styles = [controls, sheetTilesStyle];

  @property({ attribute: false }) card!: SetUpCard;
  @property({ attribute: false }) plan!: PressPlan;
  @property({ attribute: false }) log!: LogKeeper;
  @property({ attribute: false }) asking!: TickAsking;
  @property({ attribute: false }) ticks: ReadonlySet<string> = new Set();
  /** Changes with the clock and with what was logged. */
  @property({ type: Number }) drawn = 0;

  private ticked(number: number): boolean {
    return this.ticks.has(tickKey(this.card.number, number));
  }

  private tick(numbers: number[], on: boolean, where: string): void {
    const last = numbers.at(-1);
    if (last !== undefined) this.dispatchEvent(new CustomEvent<number>('shown', { detail: last }));
    this.asking.tick({ card: this.card, numbers, on, where });
    this.requestUpdate();
  }

  private answer(answer: TickAnswer, where: string): void {
    this.asking.answer(answer);
    this.requestUpdate();
    this.renderRoot.querySelector<HTMLElement>(`[data-where="${where}"]`)?.focus({ preventScroll: true });
  }

  private speak(numbers: number[]): void {
    this.dispatchEvent(new CustomEvent<number[]>('speak', { detail: numbers }));
  }

  private question(where: string) {
    const { question } = this.asking;
    if (question === null || question.of.where !== where || question.of.card.number !== this.card.number) return nothing;
    return html`<press-tick-question
      .question=${question}
      @answer=${(event: CustomEvent<TickAnswer>) => this.answer(event.detail, where)}
    ></press-tick-question>`;
  }

  /** On a tile: that it went otherwise, what the sheet waits for, or when its own film is dry. */
  private line(sheet: SheetAsPulled, on: boolean): { words: string; warns: boolean } {
    if (sheet.spoiled) return { words: '', warns: false };
    if (on && this.otherwise(sheet)) return { words: say.differently, warns: false };
    const doubt = on ? '' : doubtShort(this.asking.doubts(this.card, [sheet.number]), this.log.recipes);
    if (doubt !== '') return { words: doubt, warns: true };
    const now = Date.now();
    const [wet] = wetSheets([sheet], this.log.recipes, now);
    const when = wet === undefined || wet.dryMs <= now ? '' : momentText(wet.dryMs);
    return { words: when === '' ? '' : on ? say.dryAt(when) : say.wetBeside(when), warns: false };
  }

  private otherwise(sheet: SheetAsPulled): boolean {
    return wentOtherwise(this.card, sheet, entryAt(this.log.recipes, sheet.recipe));
  }

  private tile(number: number) {
    const sheet = this.log.sheets.find((entry) => entry.number === number);
    if (sheet === undefined) return nothing;
    const on = this.ticked(number);
    const where = `sheet ${number}`;
    const line = this.line(sheet, on);
    const differs = on && !sheet.spoiled && this.otherwise(sheet);
    const use = sheet.use === 'proof' || sheet.use === 'over' ? useWord(sheet.use) : '';
    return html`<li>
      <button
        class="tick ${use === '' ? '' : sheet.use}"
        role="checkbox"
        data-where=${where}
        aria-checked=${on && !sheet.spoiled ? 'true' : 'false'}
        aria-label=${say.sheetPulledDifferently(number, differs, use === '' ? '' : `, ${use}`)}
        ?disabled=${sheet.spoiled}
        @click=${() => this.tick([number], !on, where)}
      >
        ${use === '' ? nothing : html`<span class="use">${use}</span>`}
        <span>${number}${sheet.spoiled ? html` <small>${say.spoiled}</small>` : html`<span class="mark" aria-hidden="true">${differs ? '≠' : on ? '✓' : ''}</span>`}</span>
        <small class=${line.warns ? 'warn' : ''}>${line.words}</small>
      </button>
      <button class="more" aria-label=${say.pulledDifferentlySheet(number)} @click=${() => this.speak([number])}>${say.pulledDifferently}</button>
      ${this.question(where)}
    </li>`;
  }

  private section(state: CardState) {
    const words = `${recipeLetter(state.recipe)} ${this.plan.recipes[state.recipe]?.title ?? ''}`;
    const good = state.sheets.filter((number) => this.log.sheets.some((sheet) => sheet.number === number && !sheet.spoiled));
    const left = good.filter((number) => !this.ticked(number));
    const where = `all ${state.sheets.join()}`;
    return html`<section class=${state.sheets.length > MANY ? 'many' : ''} aria-label=${words} style=${`--tiles: ${state.sheets.length}`}>
      <h3>${words}${state.prints.length > 1 ? html` <span class="soft">${say.pullsEach(state.prints.length)}</span>` : nothing}</h3>
      <ul class="sheets">
        ${state.sheets.map((number) => this.tile(number))}
      </ul>
      ${
        good.length < 2
          ? nothing
          : html`<div class="all">
            <button data-where=${where} ?disabled=${left.length === 0} @click=${() => this.tick(left, true, where)}>
              ${left.length === 0 ? say.allArePulled(good.length) : left.length === good.length ? say.allPulled(left.length) : say.otherPulled(left.length)}
            </button>
            <button aria-label=${say.severalDifferentlySheetsOf(words)} @click=${() => this.speak(state.sheets)}>${say.severalDifferently}</button>
            ${this.question(where)}
          </div>`
      }
    </section>`;
  }

  /** Ticks what is left of the set-up at once, where its sheets are of several recipes. */
  private all() {
    const { sheets } = this.card;
    if (tickedTogether(this.card).length < 2) return nothing;
    const left = sheets.filter((number) => !this.ticked(number));
    const where = 'all of the set-up';
    return html`<div class="all">
      <button data-where=${where} ?disabled=${left.length === 0} @click=${() => this.tick(left, true, where)}>
        ${left.length === 0 ? say.allOfSetUp(sheets.length) : say.allOfSetUpPulled(left.length === sheets.length, left.length)}
      </button>
      ${this.question(where)}
    </div>`;
  }

  /** By the real clock, not the planned one: which sheets must wait, and until when the others dry. */
  private drying() {
    const own = this.log.sheets.filter((sheet) => !sheet.spoiled && this.card.sheets.includes(sheet.number));
    const now = Date.now();
    const wet = wetSheets(own, this.log.recipes, now);
    const waiting = wet.filter(({ number, dryMs }) => !this.ticked(number) && dryMs > now);
    const touches = new Set(this.asking.doubts(this.card, this.card.sheets).flatMap(({ kind, sheet }) => (kind === 'wet' ? [sheet] : [])));
    const words = [
      stillWetWords(waiting.filter(({ number }) => touches.has(number))),
      wetBesideWords(waiting.filter(({ number }) => !touches.has(number))),
      dryingWords(
        wet.filter(({ number }) => this.ticked(number)),
        now,
      ),
    ].filter((each) => each !== '');
    return words.map((each) => html`<p class="wet">${each}</p>`);
  }

  override render() {
    return html`${testTile(this.card, this.log)}
      <div class="sections">${tickedTogether(this.card).map((state) => this.section(state))}</div>
      ${this.all()} ${this.drying()}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-sheet-tiles': SheetTiles;
  }
}
