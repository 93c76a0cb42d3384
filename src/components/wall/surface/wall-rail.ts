import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Variant } from '../../../engine/explore/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { controls } from '../../ui/controls-style.ts';
import { say } from '../../words/en/wall/surface.ts';
import { USUAL_PLACE } from './room-for-print.ts';

/** What the rail's buttons do: with the print in focus, or where one stands. */
export type RailAction = 'build' | 'select' | 'pin' | 'keep' | 'open' | 'further' | 'closer' | 'start';

/** The rail under the wall: the print in focus, what is done with it, and where one stands. Tells `rail`. */
@customElement('wall-rail')
export class WallRail extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        position: relative;
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--space-2) var(--space-5);
        padding: var(--space-3) var(--space-7);
        /* Room for the longest words: the wall must not jump from print to print. */
        min-height: 78px;
        background: var(--table);
        border-top: 1px solid var(--line);
      }
      .which {
        flex: 1 1 0;
        min-width: 0;
        font-size: var(--type-small);
        line-height: 1.25;
      }
      .actions {
        display: flex;
        gap: var(--space-3);
      }
      .stand {
        display: flex;
        gap: var(--space-3);
        margin-left: var(--space-5);
        padding-left: var(--space-7);
        border-left: 1px solid var(--line);
      }
      .dot {
        display: inline-block;
        width: 9px;
        height: 9px;
        margin: 0 var(--space-2) 0 var(--space-3);
        border-radius: 50%;
        background: var(--accent);
        forced-color-adjust: none;
      }
      @media (max-width: 1640px) {
        .which {
          flex-basis: 100%;
          min-height: 1.25em;
        }
        .stand {
          margin-left: auto;
        }
        .actions button,
        .stand button {
          padding-inline: var(--space-4);
        }
      }
      /* A tablet's: the words first, then both groups of buttons in a line of their own. */
      @media (max-width: 1240px) {
        .actions button,
        .stand button {
          padding-inline: var(--space-5);
        }
        .stand {
          padding-left: 0;
          border: 0;
        }
      }
      @media (max-width: 760px) {
        :host {
          gap: var(--space-3);
          padding: var(--space-2) var(--space-5);
          min-height: 0;
        }
        .which {
          flex-basis: 100%;
          font-size: var(--type-label);
        }
        :host([data-none]) {
          padding: 0;
          min-height: 0;
          border: 0;
        }
        .actions {
          display: contents;
        }
        .actions button {
          flex: 1 0 auto;
          padding: var(--space-2) var(--space-3);
          white-space: nowrap;
        }
        :host([data-none]) :is(.which, .actions, wall-actions) {
          display: none;
        }
        .stand {
          position: absolute;
          bottom: calc(100% + 8px);
          right: 8px;
          margin: 0;
          padding: 0;
          border: 0;
        }
        /* Above the line that says what sets the print apart. */
        :host(:not([data-none])) .stand {
          bottom: calc(100% + var(--why, 70px) + 8px);
        }
        .stand button {
          background: color-mix(in srgb, var(--table) 90%, transparent);
        }
        .stand .step,
        .stand:not([data-moved]) {
          display: none;
        }
      }
    `,
  ];

  /** The print in focus; null when none is. */
  @property({ attribute: false }) variant: Variant | null = null;
  @property({ attribute: false }) drawer: Studio | null = null;
  @property({ attribute: false }) relative = true;
  /** What it is, in words. */
  @property() sentence = '';
  @property({ type: Boolean }) pinned = false;
  @property({ type: Boolean }) selected = false;
  /** Whether it is in the Chest. */
  @property({ type: Boolean }) kept = false;
  /** Whether the user has walked away from where one comes in. */
  @property({ type: Boolean }) moved = false;
  /** Where the panel about the print lies over the wall. */
  @property({ attribute: false }) place = USUAL_PLACE;
  /** Whether there are prints to choose from. */
  @property({ type: Boolean }) hung = false;

  private tell(action: RailAction): void {
    this.dispatchEvent(new CustomEvent('rail', { detail: action }));
  }

  override render() {
    const { variant, pinned, selected, kept } = this;
    const none = variant === null;
    return html`
      <p class="which" role="status" aria-live="polite">
        ${
          none
            ? html`<span class="soft">${this.hung ? say.choosePrint : ''}</span>`
            : html`${this.sentence}${pinned ? say.pinned : ''}${selected ? say.selected2 : ''}${kept ? html`${say.inChest(html`<span class="dot"></span>`)}` : nothing}`
        }
      </p>
      <div class="actions">
        <button ?disabled=${none} @click=${() => this.tell('build')}>${say.buildUp}</button>
        <button ?disabled=${none} aria-pressed=${selected} @click=${() => this.tell('select')}>${say.select}</button>
        <button ?disabled=${none} aria-pressed=${pinned} title=${say.hangsFirstOnThis} @click=${() => this.tell('pin')}>${say.pin}</button>
        <button ?disabled=${none || kept} @click=${() => this.tell('keep')}>${kept ? say.kept : say.keep}</button>
        <button ?disabled=${none} @click=${() => this.tell('open')}>${say.openOnBench}</button>
      </div>
      <wall-actions .variant=${variant} .drawer=${this.drawer} .relative=${this.relative} .place=${this.place}></wall-actions>
      <div class="stand" role="group" aria-label=${say.stand} ?data-moved=${this.moved}>
        <button class="step" @click=${() => this.tell('further')}>${say.further}</button>
        <button class="step" @click=${() => this.tell('closer')}>${say.closer}</button>
        <button @click=${() => this.tell('start')}>${say.wholeWall}</button>
      </div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-rail': WallRail;
  }
}
