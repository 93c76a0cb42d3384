import { html, LitElement, nothing } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { OFFSET_MM } from '../../../engine/base/limits.ts';
import { printInks } from '../../../engine/ink/mix/mix.ts';
import type { PullChange } from '../../../engine/project/commands/bench.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import '../../ui/kit/ink-chip.ts';
import '../../ui/kit/number-field.ts';
import { controls } from '../../ui/controls-style.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import { pickStyle } from '../../ui/pick-style.ts';
import { screenGlyph } from '../../ui/print/screen-outline.ts';
import { pullPanelStyle } from './pull-panel-style.ts';

const MAX_STROKES = 9;

/**
 * Everything of the selected pull that can be changed.
 * @fires pull-change CustomEvent<PullChange>
 * @fires pull-step CustomEvent<-1 | 1>: earlier or later
 * @fires pull-remove Event
 */
@customElement('bench-pull-panel')
export class PullPanel extends LitElement {
  static override styles = [controls, pickStyle, pullPanelStyle];

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

  private inks() {
    const { pull, drawer: studio } = this;
    const printed = printInks(studio.inks);
    // An ink may have become a stock ink since it was chosen.
    const inks = printed.some(({ id }) => id === pull.ink)
      ? printed
      : studio.inks.filter((ink) => ink.stock !== true || ink.id === pull.ink);
    return html`<fieldset role="radiogroup">
      <legend>Ink, over white and over black</legend>
      <div class="inks">
        ${inks.map(
          (ink) => html`<label class="ink pick">
            <input type="radio" name="ink" .checked=${ink.id === pull.ink} aria-label=${ink.name} @change=${() => this.change({ ink: ink.id })} />
            <ps-ink-chip .ink=${ink}></ps-ink-chip><span>${ink.name}</span>
          </label>`,
        )}
      </div>
    </fieldset>`;
  }

  private offset(field: 'dxMm' | 'dyMm', label: string) {
    return html`<ps-number live
      label=${label}
      unit="mm"
      .value=${this.pull[field]}
      .min=${OFFSET_MM.least}
      .max=${OFFSET_MM.most}
      .step=${0.1} .decimals=${3}
      .bigStep=${1}
      @pick=${(event: NumberPick) => this.change({ [field]: event.detail })}
    ></ps-number>`;
  }

  private turns() {
    return html`<div class="pair" role="group" aria-label="Turn">
      <ps-number live
        label="Turn"
        unit="°"
        .value=${this.pull.turnDeg}
        .min=${-360}
        .max=${360}
        .step=${0.1} .decimals=${3}
        .bigStep=${1}
        @pick=${(event: NumberPick) => this.change({ turnDeg: event.detail })}
      ></ps-number>
      <div class="quick">${this.turn(0)}${this.turn(180)}</div>
    </div>`;
  }

  private strokes() {
    const { strokes } = this.pull;
    return html`<ps-number live
      label="Strokes"
      .value=${strokes}
      .min=${1}
      .max=${Math.max(MAX_STROKES, strokes)}
      .step=${1}
      .bigStep=${1}
      .stepNames=${['Fewer strokes', 'More strokes'] as const}
      @pick=${(event: NumberPick) => this.change({ strokes: event.detail })}
    ></ps-number>`;
  }

  override render() {
    const { pull, drawer: studio, index, count } = this;
    const screen = studio.screens.find((entry) => entry.id === pull.screen);
    return html`
      <div class="head">
        <div>
          <p class="soft small">Pull ${index + 1} of ${count}</p>
          <h3 tabindex="-1">Screen ${screen?.number ?? '?'} ${screen?.name ?? ''}</h3>
        </div>
        ${screenGlyph(screen, studio)}
      </div>
      ${this.inks()}
      <div class="pair" role="group" aria-label="Offset">${this.offset('dxMm', 'Offset right')} ${this.offset('dyMm', 'Offset down')}</div>
      ${this.turns()} ${this.strokes()}
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
