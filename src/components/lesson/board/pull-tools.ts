import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/kit/number-field.ts';
import { say } from '../../words/en/lesson/board.ts';
import type { PullOffset } from './lesson-sheet.ts';
import { opacityWords } from './lesson-words.ts';
import { chipStyles, pullChip } from './order-chips.ts';

/** An ink made clearer or more opaque, −1 to 1, and whether the hand is still on it. */
export interface OpacityPick {
  ink: string;
  opacity: number;
}

/**
 * What can be done to one pull of a lesson: its ink made clearer or more opaque, its place in figures.
 * @fires opacity CustomEvent<OpacityPick>
 * @fires opacity-end Event: the hand let go of it
 * @fires pull-offset CustomEvent<PullOffset>
 * @fires put-back Event
 */
@customElement('ps-pull-tools')
export class PullTools extends LitElement {
  static override styles = [
    controls,
    chipStyles,
    css`
      :host {
        display: grid;
        gap: var(--space-6);
      }
      .chosen {
        display: flex;
        align-items: center;
        gap: var(--space-5);
        font-weight: 600;
      }
      .opacity {
        display: grid;
        grid-template-columns: minmax(0, 1fr) auto;
        column-gap: var(--space-5);
      }
      .opacity input {
        grid-column: 1 / -1;
        width: 100%;
        min-height: 24px;
        margin: 0;
      }
      .opacity output {
        font-weight: 600;
      }
      .where {
        display: flex;
        flex-wrap: wrap;
        align-items: end;
        gap: var(--space-5) var(--space-6);
      }
      .where ps-number {
        width: 7.6em;
      }
    `,
  ];

  @property({ attribute: false }) pulls: readonly Pull[] = [];
  @property({ attribute: false }) studio!: Studio;
  @property({ attribute: false }) selected: string | null = null;
  /** Of the selected pull's ink, −1 to 1. */
  @property({ type: Number }) opacity = 0;
  /** Whether something can be put back as it was. */
  @property({ type: Boolean }) changed = false;
  /** Whether the ink alone is to be set here, as on a projector. */
  @property({ type: Boolean }) short = false;
  /** What may be changed. */
  @property({ type: Boolean }) inks = true;
  @property({ type: Boolean }) places = true;

  private tell<T>(name: string, detail: T): void {
    this.dispatchEvent(new CustomEvent<T>(name, { detail }));
  }

  private renderOpacity(pull: Pull) {
    const name = this.studio.inks.find(({ id }) => id === pull.ink)?.name ?? say.theInk;
    return html`<label class="opacity"
      ><span>${name}</span><output>${opacityWords(this.opacity)}</output>
      <input
        type="range"
        min="-100"
        max="100"
        step="5"
        aria-label=${say.clearerToLeftMore(name)}
        .value=${String(Math.round(this.opacity * 100))}
        @input=${(event: Event) => this.tell<OpacityPick>('opacity', { ink: pull.ink, opacity: (event.target as HTMLInputElement).valueAsNumber / 100 })}
        @change=${() => this.dispatchEvent(new Event('opacity-end'))}
    /></label>`;
  }

  private renderPlace(pull: Pull) {
    const { widthMm, heightMm } = this.studio.paper;
    const field = (label: string, most: number, value: number, put: (mm: number) => Partial<PullOffset>) =>
      html`<ps-number label=${label} unit="mm" .min=${-most} .max=${most} .step=${0.1} .value=${value} @pick=${(
        event: CustomEvent<number>,
      ) => this.tell<PullOffset>('pull-offset', { pull: pull.id, dxMm: pull.dxMm, dyMm: pull.dyMm, ...put(event.detail) })}></ps-number>`;
    return html`<div class="where">
      ${field(say.right, widthMm, pull.dxMm, (dxMm) => ({ dxMm }))} ${field(say.down, heightMm, pull.dyMm, (dyMm) => ({ dyMm }))}
    </div>`;
  }

  override render() {
    const at = this.pulls.findIndex(({ id }) => id === this.selected);
    if (at < 0) return nothing;
    const pull = entryAt(this.pulls, at);
    const screen = this.studio.screens.find(({ id }) => id === pull.screen);
    if (this.short) return this.inks ? this.renderOpacity(pull) : nothing;
    return html`<p class="chosen">${pullChip(pull, at, this.studio)} ${screen?.name}</p>
      ${this.inks ? this.renderOpacity(pull) : nothing} ${this.places ? this.renderPlace(pull) : nothing}
      <div class="row"><button ?disabled=${!this.changed} @click=${() => this.dispatchEvent(new Event('put-back'))}>${say.putBack}</button></div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-pull-tools': PullTools;
  }
}
