import { html, LitElement, nothing } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { OFFSET_MM } from '../../../engine/base/limits.ts';
import type { PullChange } from '../../../engine/project/commands/bench.ts';
import { pullsOf } from '../../../engine/stack/edit/choose-pulls.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import '../../ui/kit/number-field.ts';
import '../../ui/kit/select.ts';
import { controls } from '../../ui/controls-style.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import { pickStyle } from '../../ui/pick-style.ts';
import { screenGlyph } from '../../ui/print/screen-outline.ts';
import { say } from '../../words/en/bench/pull.ts';
import { inkPick, inksToPull } from './ink-pick.ts';
import { pullPanelStyle } from './pull-panel-style.ts';

const MAX_STROKES = 9;

/**
 * Everything of the selected pull that can be changed.
 * @fires pull-change CustomEvent<PullChange>
 * @fires pull-place CustomEvent<number>: the place it shall have, first down 0
 * @fires pull-remove Event
 * @fires pull-alike CustomEvent<'ink' | 'screen'>: all that share it are to be selected
 * @fires ink-replace CustomEvent<string>: the ink that takes the place of this one in the whole stack
 */
@customElement('bench-pull-panel')
export class PullPanel extends LitElement {
  static override styles = [controls, pickStyle, pullPanelStyle];

  @property({ attribute: false }) pull!: Pull;
  @property({ type: Number }) index = 0;
  /** The whole stack. */
  @property({ attribute: false }) pulls: readonly Pull[] = [];
  @property({ attribute: false }) drawer!: Studio;
  @query('h3') private heading!: HTMLElement;

  /** For when the control that had the focus went away. */
  focusHeading(): void {
    this.heading.focus();
  }

  private change(change: PullChange): void {
    this.dispatchEvent(new CustomEvent<PullChange>('pull-change', { detail: change }));
  }

  private place(to: number): void {
    if (to < 0 || to >= this.pulls.length || to === this.index) return;
    this.dispatchEvent(new CustomEvent<number>('pull-place', { detail: to }));
  }

  private turn(degrees: number) {
    return html`<button aria-pressed=${this.pull.turnDeg === degrees} aria-label=${say.turnDegrees(degrees)} @click=${() => this.change({ turnDeg: degrees })}>
      ${degrees}°
    </button>`;
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
    return html`<div class="pair" role="group" aria-label=${say.turn}>
      <ps-number live
        label=${say.turn}
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
      label=${say.strokes}
      .value=${strokes}
      .min=${1}
      .max=${Math.max(MAX_STROKES, strokes)}
      .step=${1}
      .bigStep=${1}
      .stepNames=${[say.fewerStrokes, say.moreStrokes] as const}
      @pick=${(event: NumberPick) => this.change({ strokes: event.detail })}
    ></ps-number>`;
  }

  /** What is done to all pulls that share an ink or a screen with this one. */
  private alike() {
    const { pull, pulls, drawer: studio } = this;
    const ink = studio.inks.find(({ id }) => id === pull.ink);
    const inInk = pullsOf(pulls, 'ink', pull.ink).length;
    const ofScreen = pullsOf(pulls, 'screen', pull.screen).length;
    if (inInk < 2 && ofScreen < 2) return nothing;
    const select = (what: 'ink' | 'screen', words: string) =>
      html`<button @click=${() => this.dispatchEvent(new CustomEvent('pull-alike', { detail: what }))}>${words}</button>`;
    const others = inksToPull(studio.inks, pull.ink).filter(({ id }) => id !== pull.ink);
    return html`<div class="alike">
      <div class="row">
        ${inInk < 2 ? nothing : select('ink', say.selectAllIn(inInk, ink?.name ?? say.thisInk))}
        ${ofScreen < 2 ? nothing : select('screen', say.selectAllOfThis(ofScreen))}
      </div>
      ${
        inInk < 2
          ? nothing
          : html`<ps-select
            label=${say.replaceInAllPulls(ink?.name ?? say.thisInk, inInk)}
            value=""
            .options=${[{ value: '', label: say.chooseInk }, ...others.map(({ id, name }) => ({ value: id, label: name }))]}
            @pick=${(event: CustomEvent<string>) => event.detail !== '' && this.dispatchEvent(new CustomEvent('ink-replace', { detail: event.detail }))}
          ></ps-select>`
      }
    </div>`;
  }

  override render() {
    const { pull, drawer: studio, index } = this;
    const count = this.pulls.length;
    const screen = studio.screens.find((entry) => entry.id === pull.screen);
    return html`
      <div class="head">
        <div>
          <p class="soft small">${say.pullOf(index + 1, count)}</p>
          <h3 tabindex="-1">${say.screen2(screen?.number ?? '?')} ${screen?.name ?? ''}</h3>
        </div>
        ${screenGlyph(screen, studio)}
      </div>
      ${inkPick(studio.inks, pull.ink, (ink) => this.change({ ink }))}
      <div class="pair" role="group" aria-label=${say.offset}>${this.offset('dxMm', say.offsetRight)} ${this.offset('dyMm', say.offsetDown)}</div>
      ${this.turns()} ${this.strokes()}
      <div class="order">
        <button aria-disabled=${index === 0} @click=${() => this.place(index - 1)}>${say.earlier}</button>
        <button aria-disabled=${index === count - 1} @click=${() => this.place(index + 1)}>${say.later}</button>
        <ps-number label=${say.toPlace} whole .value=${index + 1} .min=${1} .max=${count} @pick=${(event: NumberPick) => this.place(event.detail - 1)}></ps-number>
        <button class="remove" aria-label=${say.removePull(index + 1)} @click=${() => this.dispatchEvent(new Event('pull-remove'))}>${say.remove}</button>
      </div>
      ${this.alike()}
      ${screen === undefined ? html`<p class="small">${say.thisPullsScreenIs}</p>` : nothing}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-pull-panel': PullPanel;
  }
}
