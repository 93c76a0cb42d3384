import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { entryAt, num } from '../../engine/base/at.ts';
import { possibleFirsts, tellingGroups } from '../../engine/order/first-down.ts';
import type { Picture } from '../../workers/api/picture-api.ts';
import { engineFor } from '../../workers/client/client.ts';
import { controls } from '../ui/controls-style.ts';
import '../ui/kit/ink-chip.ts';
import '../ui/print/picture-view.ts';
import { Work } from '../ui/work.ts';
import { say } from '../words/en/lesson/room.ts';
import type { LessonAnswer } from './board/lesson-run.ts';
import { chipStyles, orderChips, pullChip } from './board/order-chips.ts';
import { guessGameStyle } from './guess-game-style.ts';

const ROWS = 900;

/** Shows one print and asks which pull went down first. */
@customElement('ps-guess-game')
export class GuessGame extends LitElement {
  static override styles = [controls, chipStyles, guessGameStyle];

  @property({ attribute: false }) answer!: LessonAnswer;
  @property({ attribute: false }) tell: (sentence: string) => void = () => {};
  @state() private group = -1;
  @state() private guess: number | null = null;
  @state() private picture: Picture | null = null;
  @state() private right = 0;
  @state() private asked = 0;
  private readonly pictures = new Work<{ picture: Picture; group: number }>(null, {
    found: ({ picture, group }) => {
      if (group === this.group) this.picture = picture;
    },
    failed: (sentence) => this.tell(sentence),
  });

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('answer')) this.next();
  }

  private next(): void {
    const { result } = this.answer;
    this.guess = null;
    if (result.count < 2) {
      this.group = -1;
      return;
    }
    // A print with one possible first pull can be reasoned out; others only when there are no such.
    const open = tellingGroups(result);
    const fresh = open.length > 1 ? open.filter((group) => group !== this.group) : open;
    this.group = num(fresh, Math.floor(Math.random() * fresh.length));
    this.picture = result.pictures[this.group] ?? null;
    const { group } = this;
    this.pictures.follow(async () => ({ picture: await this.draw(group), group }));
  }

  private draw(group: number): Promise<Picture> {
    const { question, result } = this.answer;
    const order = entryAt(result.orders, num(entryAt(result.groups, group), 0));
    const pulls = order.map((at) => entryAt(question.pulls, at));
    return engineFor('picture').thumbnail({ studio: question.studio, pulls, heightPx: ROWS, relative: question.relative });
  }

  private choose(pull: number): void {
    if (this.guess !== null) return;
    this.guess = pull;
    this.asked++;
    if (possibleFirsts(this.answer.result, this.group).includes(pull)) this.right++;
  }

  private nameOf(at: number): string {
    const { question } = this.answer;
    const screen = question.studio.screens.find((entry) => entry.id === entryAt(question.pulls, at).screen);
    return `${at + 1} ${screen?.name ?? ''}`.trim();
  }

  private verdict(firsts: readonly number[]): string {
    if (this.guess === null) return '';
    const names = firsts.map((at) => this.nameOf(at)).join(say.or);
    const hit = firsts.includes(this.guess);
    if (firsts.length > 1) {
      return hit ? say.yesItCanHave(names) : say.noFirstDownWas(names);
    }
    return hit ? say.yesWentDownFirst(names) : say.noWentDownFirst(names);
  }

  override render() {
    const { question, result } = this.answer;
    if (this.group < 0) {
      return html`<p>${say.allOrdersGiveSame}</p>`;
    }
    const firsts = possibleFirsts(result, this.group);
    const { paper } = question.studio;
    return html`
      <div class="print" style="aspect-ratio: ${paper.widthMm} / ${paper.heightMm}">
        <ps-picture .picture=${this.picture} label=${say.printToGuessFrom}></ps-picture>
      </div>
      <div class="asks">
        <h3>${say.whichWentDownFirst}</h3>
        <div class="answers">
          ${question.pulls.map(
            (pull, at) => html`<button
              aria-pressed=${this.guess === at}
              class=${this.guess !== null && firsts.includes(at) ? 'right' : ''}
              ?disabled=${this.guess !== null && this.guess !== at}
              @click=${() => this.choose(at)}
            >
              ${pullChip(pull, at, question.studio)} <span>${this.nameOf(at).replace(/^\d+ /, '')}</span>
            </button>`,
          )}
        </div>
        <p class="verdict" role="status">${this.verdict(firsts)}</p>
        ${
          this.guess === null
            ? nothing
            : html`<div class="orders" aria-label=${say.ordersThatPrintThis}>
                ${entryAt(result.groups, this.group)
                  .slice(0, 6)
                  .map((order) => orderChips(entryAt(result.orders, order), question.pulls, question.studio))}
              </div>
              <div class="row">
                <button class="main" @click=${() => this.next()}>${say.nextPrint}</button>
                <span class="soft">${say.ofRight(this.right, this.asked)}</span>
              </div>`
        }
      </div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-guess-game': GuessGame;
  }
}
