import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { roundTo } from '../../../engine/base/units.ts';
import { type Gap, leastJointMm } from '../../../engine/order/gaps.ts';
import { engineFor } from '../../../workers/client/client.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/kit/progress.ts';
import { workFailure } from '../../ui/work-failure.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/bench/look.ts';
import type { OtherStack } from '../picture/compare-with.ts';
import { gapsCounted, GapWords } from './gap-words.ts';

/** So many are listed until all are asked for. */
const FIRST = 6;

/** A place of the sheet that is to be seen, mm. */
export type PlaceSeen = CustomEvent<{ xMm: number; yMm: number }>;

/**
 * Which pulls only just meet, how wide a gap may open between them, and what would close it.
 * @fires place-seen PlaceSeen: where one of them is
 */
@customElement('bench-gap-list')
export class GapList extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: flex;
        flex-direction: column;
        align-items: flex-start;
        gap: var(--space-4);
        min-width: 0;
      }
      ol {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(100%, 340px), 1fr));
        gap: var(--space-8);
        width: 100%;
        margin: 0;
        padding: 0;
        list-style: none;
      }
      li {
        display: flex;
        flex-direction: column;
        align-items: flex-start;
        gap: var(--space-3);
      }
    `,
  ];

  @property({ attribute: false }) own!: OtherStack;
  /** No pull lies farther than this from its place, mm. */
  @property({ type: Number }) toleranceMm = 0;
  @state() private all = false;
  private readonly run = new Work<Gap[]>(this);
  private asked: readonly unknown[] = [];

  protected override willUpdate(): void {
    const wanted = [this.own.pulls, this.own.drawer, this.toleranceMm];
    if (wanted.every((part, i) => part === this.asked[i])) return;
    this.asked = wanted;
    this.look();
  }

  private look(): void {
    const { own, toleranceMm } = this;
    this.all = false;
    void this.run.start((control) => engineFor('plan').gaps({ studio: own.drawer, pulls: own.pulls, toleranceMm }, control));
  }

  private gaps(found: readonly Gap[]) {
    const { toleranceMm } = this;
    if (toleranceMm === 0) return html`<p class="small">${say.whereEveryPullLies}</p>`;
    if (found.length === 0) {
      return html`<p class="small">${say.noTwoPullsOnly(roundTo(leastJointMm(toleranceMm), 2))}</p>`;
    }
    const shown = this.all ? found : found.slice(0, FIRST);
    const words = new GapWords(this.own);
    return html`<p class="small" role="status">${gapsCounted(found)} <span class="soft">${say.lighterInkIsSpread}</span></p>
      <ol aria-label=${say.pairsOfPullsThat}>
        ${shown.map(
          (gap) => html`<li>
            <span class="small">${words.sentences(gap)}</span>
            <button type="button" aria-label=${say.seeWhereMeets(words.nameOf(gap.a), words.nameOf(gap.b))} @click=${() => this.see(gap)}>${say.seeThisPlace}</button>
          </li>`,
        )}
      </ol>
      ${shown.length === found.length ? nothing : html`<button type="button" @click=${() => (this.all = true)}>${say.listAll(found.length)}</button>`}`;
  }

  private see({ xMm, yMm }: Gap): void {
    this.dispatchEvent(new CustomEvent('place-seen', { detail: { xMm, yMm } }) satisfies PlaceSeen);
  }

  override render() {
    const { run } = this;
    return html`<h3>${say.gapsThatCouldOpen}</h3>
      ${workFailure(run)}
      ${run.running ? html`<ps-progress label=${say.lookingForGaps} words=${say.lookingWherePullsOnly} stop=${say.stopLooking} .value=${run.progress} @stop=${() => run.stop()}></ps-progress>` : nothing}
      ${run.found !== null ? this.gaps(run.found) : run.running || run.failure !== '' ? nothing : html`<button type="button" @click=${() => this.look()}>${say.lookForGaps}</button>`}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-gap-list': GapList;
  }
}
