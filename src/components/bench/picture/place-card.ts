import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import { labSwatch } from '../../../engine/ink/film/lab-swatch.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import { controls } from '../../ui/controls-style.ts';
import { labWords } from '../../ui/words.ts';
import { say } from '../../words/en/bench/picture.ts';
import { withinWords } from '../../words/error-words.ts';
import { inkNameOf, placePullsWords } from '../bench-words.ts';
import type { PlaceRead } from './place-reader.ts';

/** Right over or right under a pull, by its id. */
export interface PullBeside {
  pull: string;
  side: 'over' | 'under';
}

/**
 * What was read at a place of the picture.
 * @fires close: it is not wanted any more
 * @fires pull-select CustomEvent<string>: the id of a pull that lies there
 * @fires pull-beside CustomEvent<PullBeside>: where what is selected shall come to lie
 */
@customElement('bench-place-card')
export class PlaceCard extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: grid;
        grid-template-columns: 44px minmax(0, 1fr) auto;
        gap: var(--space-5);
        align-items: start;
        padding: var(--space-4) var(--space-4) var(--space-4) var(--space-5);
        background: var(--sheet);
        box-shadow: var(--shadow-low);
        font-size: var(--type-small);
      }
      .swatch {
        height: 44px;
        box-shadow: var(--edge);
      }
      ol {
        display: grid;
        grid-column: 1 / -1;
        max-height: min(40cqh, 340px);
        margin: 0;
        padding: 0;
        overflow-y: auto;
        list-style: none;
      }
      li {
        display: flex;
        align-items: center;
        gap: var(--space-3);
        min-height: 28px;
      }
      li button {
        min-height: 28px;
        font-size: var(--type-small);
      }
      .which {
        flex: 1;
        min-width: 0;
        justify-content: start;
        overflow: hidden;
        text-align: left;
        white-space: nowrap;
        text-overflow: ellipsis;
      }
      li .side {
        padding: 0 var(--space-3);
        color: var(--accent);
      }
      .hint {
        grid-column: 1 / -1;
      }
      @media (pointer: coarse) {
        li button {
          min-height: 40px;
        }
      }
      i {
        width: 18px;
        height: 18px;
        box-shadow: var(--edge);
      }
      .words {
        display: grid;
        gap: var(--space-1);
        overflow-wrap: anywhere;
      }
    `,
  ];

  @property({ attribute: false }) read!: PlaceRead;
  @property({ type: Boolean }) relative = true;
  /** Ids of the pulls that are selected. */
  @property({ attribute: false }) together: ReadonlySet<string> = new Set();

  private tell<T>(name: string, detail: T): void {
    this.dispatchEvent(new CustomEvent<T>(name, { detail }));
  }

  /** The pulls at the place, last down on top, each with the colour of the place after it. */
  private peeled() {
    const { reading, of } = this.read;
    const [pulls, studio] = of;
    const hex = (i: number): string => labSwatch(entryAt(reading.after, i), this.relative ? studio.paper.reflectance : undefined).hex;
    const rows = reading.pulls.map((at, i) => this.row(entryAt(pulls, at), { at, hex: hex(i + 1) }));
    return html`<ol aria-label=${say.pullsAtThisPlace}>
      ${rows.toReversed()}
      <li>${say.paper(html`<i style="background:${hex(0)}"></i>`)}</li>
    </ol>`;
  }

  private row(pull: Pull, { at, hex }: { at: number; hex: string }) {
    const studio = this.read.of[1];
    const selected = this.together.has(pull.id);
    const screen = studio.screens.find(({ id }) => id === pull.screen);
    const beside = (side: 'over' | 'under') => html`<button
      class="quiet side"
      aria-label=${say.bringWhatIsSelected(side === 'over', at + 1)}
      @click=${() => this.tell<PullBeside>('pull-beside', { pull: pull.id, side })}
    >${side === 'over' ? say.over : say.under}</button>`;
    return html`<li class=${selected ? 'selected' : ''}>
      <i style="background:${hex}"></i>
      <button class="quiet which" aria-pressed=${selected} @click=${() => this.tell('pull-select', pull.id)}>
        ${say.screen(html`<b>${at + 1}</b>`, inkNameOf(pull, studio), screen?.number ?? '?')}
      </button>
      ${selected || this.together.size === 0 ? nothing : html`${beside('over')}${beside('under')}`}
    </li>`;
  }

  private hint(): string {
    if (this.together.size === 0) return say.chooseOneOfThem;
    const pulls = this.read.of[0];
    const at = pulls.findIndex(({ id }) => this.together.has(id));
    return this.together.size === 1 ? say.overUnderBringPull(at + 1) : say.overUnderBringSelected(this.together.size);
  }

  override render() {
    const { reading, of } = this.read;
    const [pulls, studio] = of;
    const swatch = labSwatch(reading.lab, this.relative ? studio.paper.reflectance : undefined);
    const [l, a, b] = labWords(reading.lab);
    return html`<span class="swatch" style="background:${swatch.hex}"></span>
      <div class="words" role="status">
        <strong>${placePullsWords(reading.pulls, pulls, studio)}</strong>
        <span>L ${l}, a ${a}, b ${b}${reading.pulls.length === 0 ? '' : `, ${withinWords(reading.expectedDeltaE)}`}</span>
        ${swatch.inGamut ? nothing : html`<span class="soft">${say.moreColourfulInPrint}</span>`}
      </div>
      <button class="quiet" @click=${() => this.dispatchEvent(new CustomEvent('close'))}>${say.close}</button>
      ${reading.pulls.length === 0 ? nothing : this.peeled()}
      ${reading.pulls.length < 2 ? nothing : html`<p class="soft hint">${this.hint()}</p>`}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-place-card': PlaceCard;
  }
}
