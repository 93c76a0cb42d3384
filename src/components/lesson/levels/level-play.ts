import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import type { GoalVerdict, MadeGoal } from '../../../engine/lesson/check-goal.ts';
import { goalAnswer } from '../../../engine/lesson/goal-answers.ts';
import { asksForOrder, type GoalKind, rightsOf } from '../../../engine/lesson/goal-kinds.ts';
import { goalSheet } from '../../../engine/lesson/goal-sheets.ts';
import { alike, type HiddenOrder, hiddenOrder, type TopQuestion, topQuestion } from '../../../engine/lesson/hidden-order.ts';
import { type LessonSheet, lessonStudio } from '../../../engine/lesson/lesson-sheet.ts';
import type { Picture } from '../../../workers/api/picture-api.ts';
import { engineFor } from '../../../workers/client/client.ts';
import '../board/lesson-board.ts';
import { controls } from '../../ui/controls-style.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/lesson/levels.ts';
import type { BoardChange } from '../board/board-change.ts';
import type { LessonBoard } from '../board/lesson-board.ts';
import '../../ui/print/picture-view.ts';
import type { LessonAnswer } from '../board/lesson-run.ts';
import { orderChips, pullChip } from '../board/order-chips.ts';
import { levelPlayStyle } from './level-play-style.ts';
import { levelWords, nameOf, verdictWords } from './level-words.ts';

const ROWS = 900;

/** What was found when the student asked. */
interface Found {
  right: boolean;
  words: string;
}

/**
 * One level: what is asked, the sheet to do it on, and what was found once the student asks. Until then
 * prints and pictures are hidden.
 * @fires level-done CustomEvent<GoalKind>
 * @fires trouble CustomEvent<string>
 */
@customElement('ps-level-play')
export class LevelPlay extends LitElement {
  static override styles = [controls, levelPlayStyle];

  @property() kind: GoalKind = 'on-top';
  /** The sheet it is played on; null for its own. */
  @property({ attribute: false }) given: LessonSheet | null = null;
  @property({ type: Boolean }) active = true;
  @property({ type: Boolean }) relative = true;
  @state() private sheet: LessonSheet = goalSheet('on-top');
  @state() private found: Found | null = null;
  @state() private secret: HiddenOrder | TopQuestion | null = null;
  /** The first of two orders that shall look the same. */
  @state() private kept: readonly number[] | null = null;
  @state() private round = 1;
  @state() private target: Picture | null = null;
  @query('ps-lesson-board') private board!: LessonBoard;
  private readonly targets = new Work<Picture>(this, {
    found: (picture) => (this.target = picture),
    failed: (sentence) => this.trouble(sentence),
  });
  private readonly checks = new Work<GoalVerdict>(this, {
    found: (verdict) => this.tell({ right: verdict.done, words: verdictWords(this.kind, verdict, this.sheet) }),
    failed: (sentence) => this.trouble(sentence),
  });

  private trouble(sentence: string): void {
    this.dispatchEvent(new CustomEvent<string>('trouble', { detail: sentence }));
  }

  private get start(): LessonSheet {
    return this.given ?? goalSheet(this.kind);
  }

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('kind') || changed.has('given')) this.begin();
  }

  /** Everything as it was given. */
  private begin(): void {
    this.sheet = { ...this.start };
    this.found = null;
    this.kept = null;
    this.secret = null;
    this.target = null;
    this.checks.stop();
    if (!asksForOrder(this.kind))
      this.drawTarget(
        this.start,
        this.start.pulls.map((_, at) => at),
      );
    void this.updateComplete.then(() => {
      this.board?.setOrder(this.start.pulls.map((_, at) => at));
      this.onStand();
    });
  }

  private again(): void {
    this.round++;
    this.begin();
  }

  private drawTarget(sheet: LessonSheet, order: readonly number[]): void {
    const pulls = order.map((at) => entryAt(sheet.pulls, at));
    const { relative } = this;
    this.targets.follow(() =>
      engineFor('picture').thumbnail({ studio: lessonStudio(sheet.studio, sheet.inks), pulls, heightPx: ROWS, relative }),
    );
  }

  /** The sorted orders of this very sheet; null while those of another stand there. */
  private get answer(): LessonAnswer | null {
    const answer = this.board?.stand.answer ?? null;
    return answer?.question.pulls.every((pull, i) => pull === this.sheet.pulls[i]) === true ? answer : null;
  }

  /** As soon as all orders are sorted there can be one to guess. */
  private readonly onStand = (): void => {
    const { answer } = this;
    if (answer === null || this.secret !== null || !asksForOrder(this.kind)) return;
    const name = `${this.round}`;
    const hidden = this.kind === 'on-top' ? topQuestion(answer.result, name) : hiddenOrder(answer.result, name);
    if (hidden === null) {
      this.found ??= { right: false, words: say.allOrdersOfThese };
      return;
    }
    this.secret = hidden;
    this.drawTarget(this.sheet, entryAt(answer.result.orders, hidden.order));
    // So that the pile does not lie in the order that is asked for.
    if (this.kind === 'found-back')
      this.board.setOrder(entryAt(answer.result.orders, (hidden.order + answer.result.orders.length / 2) % answer.result.orders.length));
  };

  private change({ pulls, inks }: BoardChange): void {
    this.sheet = { ...this.sheet, pulls, inks };
    this.found = null;
  }

  private readonly onOrder = (): void => {
    this.found = null;
  };

  private tell(found: Found): void {
    this.found = found;
    if (found.right) this.dispatchEvent(new CustomEvent<GoalKind>('level-done', { detail: this.kind }));
  }

  private get order(): readonly number[] {
    return this.board.stand.order;
  }

  private look(): void {
    const { kind } = this;
    if (kind === 'found-back') this.lookFoundBack();
    else if (kind === 'alike') this.lookAlike();
    else if (kind !== 'on-top') this.check(kind);
  }

  private check(kind: MadeGoal): void {
    const { studio, limits, pulls, inks } = this.sheet;
    const start = { pulls: this.start.pulls, inks: this.start.inks };
    const now = { pulls: this.order.map((at) => entryAt(pulls, at)), inks };
    void this.checks.start(() => engineFor('lesson').goal({ studio, kind, limits, start, now }));
  }

  private lookFoundBack(): void {
    const { secret: hidden } = this;
    const { answer } = this;
    const { picture } = this.board.stand;
    if (hidden === null || answer === null) return;
    const right = picture === hidden.picture;
    const same = this.order.join() === entryAt(answer.result.orders, hidden.order).join();
    if (!right) this.board.compareWith(entryAt(answer.result.orders, hidden.order));
    this.tell({
      right,
      words: right ? say.yesYourOrderPrints(same) : say.notYetYourPrint,
    });
  }

  private lookAlike(): void {
    const { answer } = this;
    const { kept } = this;
    if (answer === null || kept === null) return;
    const differ = kept.join() !== this.order.join();
    const right = alike(answer.result, kept, this.order);
    if (differ) this.board.compareWith(kept);
    this.tell({
      right,
      words: right ? say.yesTwoOrdersOne : differ ? say.notYetTwoPrints : say.theseAreSameOrder,
    });
  }

  private guess(pull: number): void {
    const question = this.secret;
    const { answer } = this;
    if (question === null || answer === null || !('top' in question) || this.found !== null) return;
    const name = nameOf(entryAt(this.sheet.pulls, question.top).id, this.sheet);
    const right = question.top === pull;
    this.board.setOrder(entryAt(answer.result.orders, question.order));
    this.tell({ right, words: say.yesLiesOnTop(right, name) });
  }

  private showWay(kind: MadeGoal): void {
    const { pulls, inks } = goalAnswer(kind);
    const order = pulls.map(({ id }) => this.sheet.pulls.findIndex((pull) => pull.id === id));
    const sorted = this.sheet.pulls.map(({ id }) =>
      entryAt(
        pulls,
        pulls.findIndex((pull) => pull.id === id),
      ),
    );
    this.sheet = { ...this.sheet, pulls: sorted, inks };
    void this.updateComplete.then(() => {
      this.board.setOrder(order);
      this.check(kind);
    });
  }

  private renderGuess() {
    const question = this.secret;
    if (question === null || !('pair' in question)) return nothing;
    const { studio } = this.sheet;
    return html`<div class="answers">
      ${question.pair.map((pull) => {
        const it = entryAt(this.sheet.pulls, pull);
        const right = this.found !== null && pull === question.top;
        return html`<button class=${right ? 'right' : ''} ?disabled=${this.found !== null && !right} @click=${() => this.guess(pull)}>
          ${pullChip(it, pull, studio)} <span>${nameOf(it.id, this.sheet)}</span>
        </button>`;
      })}
    </div>`;
  }

  private renderActions() {
    const { kind, kept, found } = this;
    const made = kind !== 'on-top' && kind !== 'alike' && kind !== 'found-back';
    const first = kind === 'alike' && kept === null;
    return html`<div class="row">
      ${kind === 'on-top' ? nothing : first ? html`<button class="main" @click=${() => (this.kept = [...this.order])}>${say.keepThisOrder}</button>` : html`<button class="main" ?disabled=${found !== null} @click=${() => this.look()}>${say.look}</button>`}
      ${asksForOrder(kind) ? html`<button @click=${() => this.again()}>${say.anotherPrint}</button>` : html`<button @click=${() => this.begin()}>${say.startAgain}</button>`}
      ${made && this.given === null && found?.right === false ? html`<button @click=${() => this.showWay(kind)}>${say.showOneWay}</button>` : nothing}
    </div>`;
  }

  private renderTask() {
    const { title, task } = levelWords(this.kind, this.sheet.pulls.length);
    const { kept, found } = this;
    return html`<section class="task" aria-labelledby="task">
      <h2 id="task">${title}</h2>
      <p>${task}</p>
      ${kept === null ? nothing : html`<p class="row">${say.kept} ${orderChips(kept, this.sheet.pulls, this.sheet.studio)}</p>`}
      ${this.kind === 'on-top' ? this.renderGuess() : nothing} ${this.renderActions()}
      <p class="verdict ${found?.right === true ? 'right' : ''}" role="status">${found?.words ?? ''}</p>
    </section>`;
  }

  private renderTarget() {
    const { widthMm, heightMm } = this.sheet.studio.paper;
    const words = asksForOrder(this.kind) ? say.thePrint : say.printAsItWas;
    return html`<figure class="target">
      <ps-picture .picture=${this.target} label=${words} style="aspect-ratio: ${widthMm} / ${heightMm}"></ps-picture>
      <figcaption>${words}</figcaption>
    </figure>`;
  }

  override render() {
    const guessing = this.kind === 'on-top' && this.found === null;
    return html`${guessing ? html`<div class="guess">${this.renderTask()} ${this.renderTarget()}</div>` : nothing}
      <ps-lesson-board
        tasked
        ?hidden=${guessing}
        .sheet=${this.sheet}
        .rights=${rightsOf(this.kind)}
        ?covered=${this.found === null}
        .active=${this.active && !guessing}
        .relative=${this.relative}
        ?changed=${this.sheet.pulls !== this.start.pulls || this.sheet.inks !== this.start.inks}
        @change=${(event: CustomEvent<BoardChange>) => this.change(event.detail)}
        @order-change=${this.onOrder}
        @put-back=${() => this.change({ pulls: [...this.start.pulls], inks: [...this.start.inks] })}
        @stand=${this.onStand}
        @trouble=${(event: CustomEvent<string>) => this.trouble(event.detail)}
      >
 ${guessing ? nothing : html`<div slot="task">${this.renderTask()}</div>`}
        <p slot="covered" class="soft">${say.printIsHiddenUntil}</p>
        ${this.kind === 'on-top' ? nothing : html`<div slot="pictures">${this.renderTarget()}</div>`}
      </ps-lesson-board>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-level-play': LevelPlay;
  }
}
