import { html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { entryAt } from '../../../engine/base/at.ts';
import { rangesText } from '../../../engine/base/words.ts';
import type { RetimedPlan } from '../../../engine/log/now/retimed.ts';
import { settingFor } from '../../../engine/log/settings.ts';
import { setUpsInAll, tickGroups, tickKey } from '../../../engine/log/ticks/ticks.ts';
import '../../ui/kit/ink-chip.ts';
import { type CardState, isSplit } from '../../../engine/visit/set-up-cards.ts';
import { extraUse } from '../../../engine/visit/sheet-columns.ts';
import { capital } from '../../../engine/words/language.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { controls } from '../../ui/controls-style.ts';
import { offsetDiagram } from '../../ui/print/offset-diagram.ts';
import { printImage } from '../../ui/print/print-image.ts';
import type { StatePictures } from '../../ui/print/state-pictures.ts';
import { stencilPath } from '../../ui/print/stencil-path.ts';
import { dryWords, waitWords } from '../../words/drying-words.ts';
import { edgeNotes } from '../../words/edge-notes.ts';
import { dayOf } from '../../words/edition-words.ts';
import { say } from '../../words/en/press/sheet.ts';
import { mixWords } from '../../words/mix-words.ts';
import { plannedAndNow } from '../../words/now-words.ts';
import { instructionWords, offsetNotes, offsetWords } from '../../words/offset-words.ts';
import '../log/tick-question.ts';
import { listed, recipeLetter, setUpTags, useWord } from '../../words/plan-words.ts';
import { lastTimeWords } from '../../words/setting-words.ts';
import type { TickAnswer, TickQuestion } from '../log/tick-asking.ts';
import { screenMade } from '../plan/screen-made.ts';
import { setUpCardStyle } from './set-up-card-style.ts';

/** Sheets that were ticked or unticked in a set-up, and what was touched for it. */
export interface Tick {
  setUp: number;
  sheets: number[];
  on: boolean;
  where: string;
}

/**
 * One set-up as the printer works it: what goes on the press, where it lies, which sheets to take.
 * @fires set-up-select CustomEvent<number>: index of the set-up to show
 * @fires tick CustomEvent<Tick>
 * @fires answer CustomEvent<TickAnswer>: to the question that is asked
 */
@customElement('press-set-up-card')
export class SetUpCardView extends LitElement {
  static override styles = [controls, setUpCardStyle];

  @property({ attribute: false }) made!: MadePlan;
  /** The order on the clock of what was ticked; null before the first tick. */
  @property({ attribute: false }) now: RetimedPlan | null = null;
  @property({ type: Number }) index = 0;
  @property({ attribute: false }) pictures!: StatePictures;
  @property({ attribute: false }) ticked: ReadonlySet<string> = new Set();
  /** Numbers of sheets that have left the visit. */
  @property({ attribute: false }) spoiled: ReadonlySet<number> = new Set();
  /** Keys of the ticks of sheets that were pulled differently. */
  @property({ attribute: false }) otherwise: ReadonlySet<string> = new Set();
  /** What is asked before a tick counts; null while nothing is. */
  @property({ attribute: false }) question: TickQuestion | null = null;
  /** Changes when a picture has arrived, so that the card is drawn again. */
  @property({ type: Number }) drawn = 0;

  private go(index: number): void {
    this.dispatchEvent(new CustomEvent<number>('set-up-select', { detail: index }));
  }

  private tick(sheets: number[], on: boolean, where: string): void {
    const setUp = entryAt(this.made.plan.cards, this.index).number;
    this.dispatchEvent(new CustomEvent<Tick>('tick', { detail: { setUp, sheets, on, where } }));
    // A box that is asked about is not ticked yet, whatever the browser shows.
    this.requestUpdate();
  }

  private answer(answer: TickAnswer, where: string): void {
    this.dispatchEvent(new CustomEvent<TickAnswer>('answer', { detail: answer }));
    this.renderRoot.querySelector<HTMLElement>(`[data-where="${where}"]`)?.focus({ preventScroll: true });
  }

  private asked(where: string, setUp: number) {
    const { question } = this;
    if (question === null || question.of.where !== where || question.of.card.number !== setUp) return nothing;
    return html`<press-tick-question .question=${question} @answer=${(event: CustomEvent<TickAnswer>) => this.answer(event.detail, where)}></press-tick-question>`;
  }

  private picture(state: CardState, when: 'before' | 'after') {
    const recipe = entryAt(this.made.recipes, state.recipe);
    const pulls = state[when];
    const url = this.pictures.of(recipe, pulls);
    const { widthMm, heightMm } = recipe.paper;
    const words = pulls.length === 0 ? say.barePaper : say.afterPullsPulls(pulls.length);
    return html`<figure>
      ${printImage(url, `${recipeLetter(state.recipe)} ${recipe.title}, ${words}`, widthMm / heightMm)}
      <figcaption>${say.now(when === 'before', words)}</figcaption>
    </figure>`;
  }

  /** What sets a sheet apart from those of the edition that went as planned. */
  private kindOf(group: readonly number[], setUp: number) {
    const [number] = group;
    const use = number === undefined || group.length > 1 ? null : extraUse(this.made.plan, number);
    const words = [
      ...(use === null ? [] : [useWord(use)]),
      ...(group.some((sheet) => this.spoiled.has(sheet)) ? ['spoiled'] : []),
      ...(group.some((sheet) => this.otherwise.has(tickKey(setUp, sheet))) ? [say.differently] : []),
    ];
    return words.length === 0 ? nothing : html` <span class="soft small">${words.join(', ')}</span>`;
  }

  private state(state: CardState, setUp: number) {
    const title = this.made.plan.recipes[state.recipe]?.title ?? '';
    const left = state.sheets.filter((sheet) => !this.ticked.has(tickKey(setUp, sheet)));
    const all = say.all(rangesText(state.sheets));
    const split = isSplit(entryAt(this.made.plan.cards, this.index), state);
    return html`<section class="state" aria-label="${recipeLetter(state.recipe)} ${title}">
      <div class="state-head">
        <h3>${recipeLetter(state.recipe)} ${title}</h3>
        <span class="soft"
          >${say.sheets(state.sheets.length, rangesText(state.sheets), state.prints.length > 1 ? say.pullsEach(state.prints.length) : '', split ? say.pullsSoFar(state.before.length) : '')}</span
        >
      </div>
      <div class="take"><div class="pictures">
        ${this.picture(state, 'before')}
        <span class="arrow" aria-hidden="true">→</span>
        ${this.picture(state, 'after')}
      </div>
      <ul class="sheets">
        ${tickGroups(state.sheets).map((group) => {
          const words = rangesText(group);
          const where = `sheets ${words}`;
          return html`<li>
            <label
              ><input
                type="checkbox"
                data-where=${where}
                aria-label=${say.sheetsPulled(group.length, words)}
                ?disabled=${group.every((sheet) => this.spoiled.has(sheet))}
                .checked=${live(group.every((sheet) => this.ticked.has(tickKey(setUp, sheet))))}
                @change=${(event: Event) => this.tick(group, (event.target as HTMLInputElement).checked, where)}
              />${words}${this.kindOf(group, setUp)}</label
            >${this.asked(where, setUp)}
          </li>`;
        })}
        ${
          state.sheets.length > 2
            ? html`<li>
              <button class="quiet" style="min-height: 48px" data-where=${all} @click=${() => this.tick(state.sheets, left.length > 0, all)}>
                ${left.length > 0 ? say.tickAll : say.untickAll}
              </button>${this.asked(all, setUp)}
            </li>`
            : nothing
        }
      </ul></div>
    </section>`;
  }

  override render() {
    const { plan, recipes } = this.made;
    const { now } = this;
    const clocked = now ?? plan;
    const card = plan.cards[this.index];
    if (card === undefined) return nothing;
    const time = plan.times[this.index];
    const noted = settingFor(this.made.settings ?? [], card);
    const tags = setUpTags(plan, this.index);
    const { threadsPerCm, threadUm } = card.screen.mesh;
    const paper = entryAt(recipes, card.states[0]?.recipe ?? 0).paper;
    return html`
      <div class="turn">
        <h3>${say.setUp(card.number)} <span class="soft">${say.of(setUpsInAll(plan))}</span></h3>
        <button ?disabled=${this.index === 0} @click=${() => this.go(this.index - 1)}>${say.back}</button>
        <button ?disabled=${this.index === plan.cards.length - 1} @click=${() => this.go(this.index + 1)}>${say.next}</button>
      </div>
      ${time !== undefined && time.waitMinutes >= 1 ? html`<p class="note">${capital(waitWords(plan, this.index))}.</p>` : nothing}
      <div class="frame">
        <div class="facts">
          <p class="screen">${card.screen.key} ${card.screen.name}</p>
          ${screenMade(this.made, card)}
          <p class="ink"><ps-ink-chip .ink=${card.ink.ink}></ps-ink-chip>${card.ink.key}</p>
          ${mixWords(card) === null ? nothing : html`<p>${mixWords(card)}</p>`}
          <p class="offset">${say.strokes(capital(offsetWords(card)), card.strokes)}</p>
          ${[...offsetNotes(card), ...edgeNotes(card, recipes)].map((words) => html`<p class="soft small">${words}</p>`)}
          ${instructionWords(card).map((words) => html`<p><b>${words}</b></p>`)}
          <p class="soft">${say.meshThreadsCmThread(threadsPerCm, threadUm)}</p>
          <p>
            ${tags.length === 0 ? say.staysAsItIs : html`<span class="do">${capital(listed(tags))}</span>`}
            ${time === undefined ? nothing : html`<span class="soft">${plannedAndNow(plan, now, this.index)}</span>`}
          </p>
        </div>
        ${offsetDiagram(card, paper, stencilPath(card, recipes))}
      </div>
      ${noted === null ? nothing : html`<p class="note">${lastTimeWords(noted, dayOf(noted.atMs))}</p>`}
      ${card.states.map((state) => this.state(state, card.number))}
      <p class="note">${dryWords(clocked, this.index)}</p>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-set-up-card': SetUpCardView;
  }
}
