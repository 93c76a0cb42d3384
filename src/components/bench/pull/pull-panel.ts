import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { OFFSET_MM } from '../../../engine/base/limits.ts';
import { printInks } from '../../../engine/ink/mix/mix.ts';
import type { PullChange } from '../../../engine/project/commands/bench.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import '../../ui/print/ink-chip.ts';
import { controls } from '../../ui/controls-style.ts';
import { screenGlyph } from '../../ui/print/screen-outline.ts';
import './nudge-field.ts';

const MAX_STROKES = 9;

/**
 * Everything of the selected pull that can be changed.
 * @fires pull-change CustomEvent<PullChange>
 * @fires pull-step CustomEvent<-1 | 1>: earlier or later
 * @fires pull-remove Event
 */
@customElement('bench-pull-panel')
export class PullPanel extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: grid;
        gap: var(--space-7);
      }
      .head {
        display: flex;
        align-items: center;
        gap: var(--space-6);
      }
      .head > div {
        flex: 1;
        min-width: 0;
      }
      h3 {
        overflow-wrap: anywhere;
      }
      .glyph {
        width: 44px;
        height: 44px;
        flex: none;
      }
      fieldset {
        border: 0;
        margin: 0;
        padding: 0;
        min-width: 0;
      }
      legend {
        padding: 0;
        font-size: var(--type-small);
        color: var(--ink-soft);
        margin-bottom: var(--space-2);
      }
      .inks {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(128px, 1fr));
        gap: var(--space-1) var(--space-4);
        max-height: 240px;
        overflow-y: auto;
        padding: var(--space-1);
        margin: calc(-1 * var(--space-1));
      }
      .ink {
        min-height: 34px;
        padding: 0 var(--space-3);
        gap: var(--space-5);
        cursor: pointer;
        border-radius: var(--radius);
        min-width: 0;
      }
      .ink span {
        overflow: hidden;
        text-overflow: ellipsis;
        white-space: nowrap;
      }
      .ink input {
        position: absolute;
        opacity: 0;
        width: 1px;
        height: 1px;
      }
      .ink:hover {
        background: color-mix(in srgb, var(--ink) 7%, transparent);
      }
      .ink:has(:checked) {
        box-shadow: var(--edge-chosen);
        font-weight: 600;
      }
      .ink:has(:focus-visible) {
        outline: 2px solid var(--accent);
        outline-offset: 1px;
      }
      .pair {
        display: flex;
        flex-wrap: wrap;
        gap: var(--space-6) var(--space-7);
        align-items: end;
      }
      .quick {
        display: flex;
        gap: var(--space-3);
      }
      .quick button {
        padding: var(--space-2) var(--space-5);
      }
      .order {
        display: flex;
        gap: var(--space-4);
        padding-top: var(--space-7);
        border-top: 1px solid var(--line);
      }
      .order .remove {
        margin-left: auto;
      }
      [aria-disabled='true'] {
        opacity: 0.45;
        cursor: default;
      }
      @media (pointer: coarse) {
        .ink {
          min-height: var(--touch);
        }
      }
    `,
  ];

  @property({ attribute: false }) pull!: Pull;
  @property({ type: Number }) index = 0;
  @property({ type: Number }) count = 0;
  @property({ attribute: false }) drawer!: Studio;
  @query('h3') private heading!: HTMLElement;

  /** For when the control that had the focus went away. */
  focusHeading(): void {
    this.heading.focus();
  }

  private change(change: PullChange): void {
    this.dispatchEvent(new CustomEvent<PullChange>('pull-change', { detail: change }));
  }

  private step(by: -1 | 1): void {
    const to = this.index + by;
    if (to < 0 || to >= this.count) return;
    this.dispatchEvent(new CustomEvent<-1 | 1>('pull-step', { detail: by }));
  }

  private turn(degrees: number) {
    return html`<button aria-pressed=${this.pull.turnDeg === degrees} aria-label="Turn ${degrees} degrees" @click=${() => this.change({ turnDeg: degrees })}>
      ${degrees}°
    </button>`;
  }

  override render() {
    const { pull, drawer, index, count } = this;
    const screen = drawer.screens.find((entry) => entry.id === pull.screen);
    const printed = printInks(drawer.inks);
    // An ink may have become a stock ink since it was chosen.
    const inks = printed.some(({ id }) => id === pull.ink)
      ? printed
      : drawer.inks.filter((ink) => ink.stock !== true || ink.id === pull.ink);
    const offset = (field: 'dxMm' | 'dyMm', label: string) => html`<bench-nudge-field
      label=${label}
      unit="mm"
      .value=${pull[field]}
      .min=${OFFSET_MM.least}
      .max=${OFFSET_MM.most}
      .step=${0.1}
      .bigStep=${1}
      @value=${(event: CustomEvent<number>) => this.change({ [field]: event.detail })}
    ></bench-nudge-field>`;
    return html`
      <div class="head">
        <div>
          <p class="soft small">Pull ${index + 1} of ${count}</p>
          <h3 tabindex="-1">Screen ${screen?.number ?? '?'} ${screen?.name ?? ''}</h3>
        </div>
        ${screenGlyph(screen, drawer)}
      </div>
      <fieldset role="radiogroup">
        <legend>Ink, over white and over black</legend>
        <div class="inks">
          ${inks.map(
            (ink) => html`<label class="ink">
              <input
                type="radio"
                name="ink"
                .checked=${ink.id === pull.ink}
                aria-label=${ink.name}
                @change=${() => this.change({ ink: ink.id })}
              />
              <ps-ink-chip .ink=${ink}></ps-ink-chip><span>${ink.name}</span>
            </label>`,
          )}
        </div>
      </fieldset>
      <div class="pair" role="group" aria-label="Lay offset">${offset('dxMm', 'Offset right')} ${offset('dyMm', 'Offset down')}</div>
      <div class="pair" role="group" aria-label="Turn">
        <bench-nudge-field
          label="Turn"
          unit="°"
          .value=${pull.turnDeg}
          .min=${-360}
          .max=${360}
          .step=${0.1}
          .bigStep=${1}
          @value=${(event: CustomEvent<number>) => this.change({ turnDeg: event.detail })}
        ></bench-nudge-field>
        <div class="quick">${this.turn(0)}${this.turn(180)}</div>
      </div>
      <bench-nudge-field
        label="Strokes"
        .value=${pull.strokes}
        .min=${1}
        .max=${Math.max(MAX_STROKES, pull.strokes)}
        .step=${1}
        .bigStep=${1}
        .stepNames=${['Fewer strokes', 'More strokes'] as const}
        @value=${(event: CustomEvent<number>) => this.change({ strokes: event.detail })}
      ></bench-nudge-field>
      <div class="order">
        <button aria-disabled=${index === 0} @click=${() => this.step(-1)}>Earlier</button>
        <button aria-disabled=${index === count - 1} @click=${() => this.step(1)}>Later</button>
        <button class="remove" aria-label="Remove pull ${index + 1}" @click=${() => this.dispatchEvent(new Event('pull-remove'))}>Remove</button>
      </div>
      ${screen === undefined ? html`<p class="small">This pull's screen is no longer in the drawer; remove the pull.</p>` : nothing}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-pull-panel': PullPanel;
  }
}
