import { css, html, LitElement, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { u32 } from '../../../engine/base/at.ts';
import type { MeasureWords } from '../../../engine/explore/measure/variant-measures.ts';
import { numberLocale } from '../../../engine/words/language.ts';
import { controls } from '../../ui/controls-style.ts';
import { say } from '../../words/en/wall/hang.ts';
import type { MeasureKey, PrintFacts } from '../print/print-facts.ts';
import type { Ranges } from './hanging.ts';
import { measureText } from './measure-axis.ts';

const BINS = 28;
const STEPS = 200;

export type RangesEvent = CustomEvent<Ranges>;

/** Ranges of the measures by which prints differ; what lies outside is hidden. */
@customElement('wall-filter')
export class WallFilter extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: grid;
        grid-template-rows: auto minmax(0, 1fr);
        background: var(--table);
        border-left: 1px solid var(--line);
      }
      header {
        display: flex;
        align-items: center;
        justify-content: space-between;
        gap: var(--space-4);
        padding: var(--space-5) var(--space-7) var(--space-3);
        min-height: 48px;
      }
      .all {
        overflow-y: auto;
        padding: 0 var(--space-7) var(--space-8);
        scrollbar-width: thin;
      }
      fieldset {
        padding: var(--space-4) 0 var(--space-1);
      }
      legend {
        float: left;
        width: 100%;
        display: flex;
        justify-content: space-between;
        padding: 0;
        font-size: var(--type-label);
      }
      .range {
        clear: both;
        position: relative;
        height: 46px;
      }
      svg {
        position: absolute;
        inset: 0 9px 16px;
        width: calc(100% - 18px);
        height: 30px;
      }
      rect {
        fill: var(--ink-soft);
        opacity: 0.55;
      }
      rect[data-out] {
        opacity: 0.18;
      }
      input[type='range'] {
        position: absolute;
        left: 0;
        bottom: 0;
        width: 100%;
        height: 24px;
        margin: 0;
        appearance: none;
        background: none;
        pointer-events: none;
      }
      input::-webkit-slider-runnable-track {
        height: 1px;
        background: var(--line);
        forced-color-adjust: none;
      }
      input::-moz-range-track {
        height: 1px;
        background: var(--line);
        forced-color-adjust: none;
      }
      input::-webkit-slider-thumb {
        appearance: none;
        pointer-events: auto;
        width: 18px;
        height: 18px;
        margin-top: calc(-1 * var(--space-4));
        border-radius: 50%;
        border: 1px solid var(--ink-soft);
        background: var(--sheet);
        cursor: ew-resize;
      }
      input::-moz-range-thumb {
        pointer-events: auto;
        width: 16px;
        height: 16px;
        border-radius: 50%;
        border: 1px solid var(--ink-soft);
        background: var(--sheet);
      }
      @media (max-width: 760px) {
        :host {
          border-left: 0;
          border-top: 1px solid var(--line);
        }
      }
      @media (pointer: coarse) {
        .range {
          height: 62px;
        }
        input[type='range'] {
          height: 44px;
        }
        svg {
          inset: 0 14px 30px;
          width: calc(100% - 28px);
        }
        input::-webkit-slider-thumb {
          width: 28px;
          height: 28px;
          margin-top: calc(-1 * var(--space-6));
        }
      }
    `,
  ];

  @property({ attribute: false }) facts!: PrintFacts;
  @property({ attribute: false }) measures: readonly MeasureWords[] = [];
  @property({ attribute: false }) ranges: Ranges = new Map();
  @property({ type: Number }) count = 0;
  @property({ type: Number }) shown = 0;

  private set(key: MeasureKey, range: readonly [number, number] | null): void {
    const next = new Map(this.ranges);
    if (range === null) next.delete(key);
    else next.set(key, range);
    this.dispatchEvent(new CustomEvent('ranges', { detail: next }));
  }

  private one(words: MeasureWords) {
    const values = this.facts.column(words.key, this.count).filter(Number.isFinite);
    const low = values.reduce((least, value) => Math.min(least, value), Infinity);
    const high = values.reduce((most, value) => Math.max(most, value), -Infinity);
    if (!(high > low)) return nothing;
    const bins = new Uint32Array(BINS);
    for (const value of values) {
      const bin = Math.min(BINS - 1, Math.floor(((value - low) / (high - low)) * BINS));
      bins[bin] = u32(bins, bin) + 1;
    }
    const most = Math.max(...bins);
    const [from, to] = this.ranges.get(words.key) ?? [low, high];
    // Steps are of the measure's own digits, so that a count goes from number to number.
    const step = Number.isInteger(low) && Number.isInteger(high) ? 1 : (high - low) / STEPS;
    const bound = (event: Event): number => Number((event.target as HTMLInputElement).value);
    const change = (next: readonly [number, number]): void =>
      this.set(words.key, next[0] <= low + step * 0.01 && next[1] >= high - step * 0.01 ? null : next);
    // A press beside the ends brings the nearer one there, so that no drag is needed.
    const press = (event: MouseEvent): void => {
      const box = (event.currentTarget as HTMLElement).getBoundingClientRect();
      if (event.target instanceof HTMLInputElement || event.detail === 0) return;
      const share = Math.max(0, Math.min(1, (event.clientX - box.left - 9) / (box.width - 18)));
      const value = low + Math.round((share * (high - low)) / step) * step;
      change(Math.abs(value - from) < Math.abs(value - to) ? [value, to] : [from, value]);
    };
    return html`<fieldset>
      <legend>
        <span>${words.label}</span>
        <span class="soft">${say.to(measureText(from, { ...words, unit: '' }), measureText(to, words))}</span>
      </legend>
      ${words.help === undefined ? nothing : html`<p class="soft small">${words.help}</p>`}
      <div class="range" @click=${press}>
        <svg viewBox="0 0 ${BINS} 10" preserveAspectRatio="none" aria-hidden="true">
          ${Array.from(bins, (n, i) => {
            const middle = low + ((i + 0.5) / BINS) * (high - low);
            const half = (high - low) / BINS / 2;
            const height = n === 0 ? 0 : Math.max(0.5, (10 * n) / most);
            return svg`<rect x=${i + 0.08} y=${10 - height} width="0.84" height=${height} ?data-out=${middle + half < from || middle - half > to} />`;
          })}
        </svg>
        <input type="range" aria-label=${say.least(words.label)} min=${low} max=${high} step=${step} .value=${String(from)}
          @input=${(event: Event) => change([Math.min(bound(event), to), to])} />
        <input type="range" aria-label=${say.most(words.label)} min=${low} max=${high} step=${step} .value=${String(to)}
          @input=${(event: Event) => change([from, Math.max(bound(event), from)])} />
      </div>
    </fieldset>`;
  }

  override render() {
    const { shown, count } = this;
    return html`
      <header>
        <p role="status">${shown === count ? html`${say.allHang(html`<b>${count.toLocaleString(numberLocale())}</b>`)}` : html`${say.ofHang(html`<b>${shown.toLocaleString(numberLocale())}</b>`, count.toLocaleString(numberLocale()))}`}</p>
        ${
          this.ranges.size > 0
            ? html`<button class="quiet" @click=${() => this.dispatchEvent(new CustomEvent('ranges', { detail: new Map() }))}>${say.showAll}</button>`
            : nothing
        }
      </header>
      <div class="all">${this.measures.map((words) => this.one(words))}</div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-filter': WallFilter;
  }
}
