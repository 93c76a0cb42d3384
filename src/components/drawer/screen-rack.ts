import { css, html, LitElement, nothing, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { type Frames, frameState } from '../../engine/explore/prepare/frames.ts';
import type { Paper } from '../../engine/ink/types.ts';
import type { PlacedShape, Screen, Shape } from '../../engine/shapes/types.ts';
import { controls } from '../ui/controls-style.ts';
import { cardList } from '../ui/layout-style.ts';
import { say } from '../words/en/drawer/room.ts';
import { frameWord } from '../words/frame-words.ts';
import { outlinePath, placedTransform } from './outline-path.ts';

const SEARCH_FROM = 21;

/** A placed shape as it lies on the sheet. */
function placedPath(placed: PlacedShape, shape: Shape, className = '') {
  const path = outlinePath(shape);
  const transform = placedTransform(placed, path);
  return svg`<path class=${className} d=${path.d} fill-rule=${shape.fillRule} transform=${transform} />`;
}

/** The screens as stencils in their frames. Sends `choose` with a screen's id. */
@customElement('screen-rack')
export class ScreenRack extends LitElement {
  static override styles = [
    controls,
    cardList,
    css`
      .search {
        margin-bottom: var(--space-6);
      }
      .search input {
        width: min(320px, 100%);
      }
      ul {
        --card: 112px;
        gap: var(--space-7) var(--space-7);
      }
      li {
        min-width: 0;
      }
      button {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        justify-content: stretch;
        align-content: start;
        gap: var(--space-3);
        width: 100%;
        padding: 0;
        border: 0;
        background: none;
        text-align: left;
        content-visibility: auto;
        contain-intrinsic-size: 112px 210px;
      }
      svg {
        display: block;
        width: 100%;
        height: auto;
        border: 5px solid var(--line);
        border-radius: var(--radius);
        background: var(--wall-deep);
        filter: saturate(0.9);
      }
      svg path {
        fill: var(--film);
      }
      .mesh {
        fill: none;
        stroke: var(--line);
        stroke-width: 0.6;
        vector-effect: non-scaling-stroke;
        stroke-dasharray: 2 2;
      }
      button:hover svg {
        border-color: var(--ink-soft);
      }
      button[aria-pressed='true'] {
        box-shadow: none;
      }
      button[aria-pressed='true'] svg {
        border-color: var(--accent);
      }
      .label {
        display: grid;
        grid-template-columns: auto minmax(0, 1fr);
        gap: 0 var(--space-4);
        align-items: baseline;
        line-height: 1.3;
      }
      .number {
        font-weight: 700;
      }
      .name {
        overflow: hidden;
        text-overflow: ellipsis;
        white-space: nowrap;
      }
      .sub {
        grid-column: 2;
        font-size: var(--type-fine);
        color: var(--ink-soft);
      }
      .sub b {
        color: var(--ink);
        white-space: nowrap;
      }
      .sub b[data-state='to make'] {
        color: var(--accent);
      }
      @media (max-width: 760px) {
        ul {
          grid-template-columns: repeat(auto-fill, minmax(94px, 1fr));
          gap: var(--space-7) var(--space-6);
        }
      }
    `,
  ];

  @property({ attribute: false }) screens: readonly Screen[] = [];
  @property({ attribute: false }) shapes: readonly Shape[] = [];
  @property({ attribute: false }) paper!: Paper;
  @property({ attribute: false }) frames: Frames | undefined;
  @property() chosen: string | null = null;
  @state() private sought = '';

  private found(): readonly Screen[] {
    const words = this.sought.trim().toLowerCase();
    const sorted = this.screens.toSorted((a, b) => a.number - b.number);
    if (words === '' || this.screens.length < SEARCH_FROM) return sorted;
    return sorted.filter((screen) => String(screen.number) === words || screen.name.toLowerCase().includes(words));
  }

  private stateOf({ id }: Screen) {
    const state = frameState(id, this.frames);
    return state === 'drawn' ? nothing : html`, <b data-state=${state}>${frameWord(state)}</b>`;
  }

  override render() {
    const shapes = new Map(this.shapes.map((shape) => [shape.id, shape]));
    const found = this.found();
    const { widthMm, heightMm, printable } = this.paper;
    return html`
      ${
        this.screens.length < SEARCH_FROM
          ? nothing
          : html`<p class="search row">
            <input
              type="search"
              aria-label=${say.findScreen}
              placeholder=${say.findByNameOr}
              .value=${this.sought}
              @input=${(event: Event) => (this.sought = (event.target as HTMLInputElement).value)}
            />
            <span class="soft" role="status">${say.of(found.length, this.screens.length)}</span>
          </p>`
      }
      <ul aria-label=${say.screens2}>
        ${repeat(
          found,
          (screen) => screen.id,
          (screen) => html`<li>
            <button
              aria-pressed=${this.chosen === screen.id}
              @click=${() => this.dispatchEvent(new CustomEvent<string>('choose', { detail: screen.id }))}
            >
              <svg viewBox="0 0 ${widthMm} ${heightMm}" aria-hidden="true">
                ${svg`<rect class="mesh" x=${printable.xMm} y=${printable.yMm} width=${printable.widthMm} height=${printable.heightMm} />`}
                ${screen.placed.map((placed) => {
                  const shape = shapes.get(placed.shape);
                  return shape === undefined ? nothing : placedPath(placed, shape);
                })}
              </svg>
              <span class="label">
                <span class="number"><span class="visually-hidden">${say.screen2}</span> ${screen.number}</span>
                <span class="name">${screen.name}</span>
                <span class="sub">${screen.mesh.threadsPerCm}/cm – ${screen.mesh.threadUm} µm${this.stateOf(screen)}</span>
              </span>
            </button>
          </li>`,
        )}
      </ul>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'screen-rack': ScreenRack;
  }
}
