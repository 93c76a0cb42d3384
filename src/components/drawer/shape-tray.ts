import { css, html, LitElement, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Shape } from '../../engine/shapes/types.ts';
import { fixed } from '../../engine/words/language.ts';
import { controls } from '../ui/controls-style.ts';
import { say } from '../words/en/drawer/room.ts';
import { outlinePath } from './outline-path.ts';

const LARGEST_PX = 112;
/** However small beside others, a silhouette stays large enough to be seen and known. */
const SMALLEST_PX = 16;

/**
 * How large a silhouette is shown, px per mm.
 * @param longest the longest side of all shapes, mm; null when each is shown as large as fits
 */
export function trayScale({ widthMm, heightMm }: Pick<Shape, 'widthMm' | 'heightMm'>, longest: number | null): number {
  const side = Math.max(widthMm, heightMm);
  return Math.max(LARGEST_PX / (longest ?? side), SMALLEST_PX / side);
}

/** Millimetres as they are told: whole from 10 on. */
export function sizeText(shape: Pick<Shape, 'widthMm' | 'heightMm'>): string {
  return `${tell(shape.widthMm)} × ${tell(shape.heightMm)} mm`;
}

function tell(mm: number): string {
  return mm >= 10 ? fixed(mm, 0) : fixed(mm, 1);
}

/** The open drawer: all shapes as silhouettes on one sheet. Sends `choose` with a shape's id. */
@customElement('shape-tray')
export class ShapeTray extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
        max-height: min(64vh, 620px);
        overflow: auto;
        background: var(--film);
        forced-color-adjust: none;
        box-shadow: var(--shadow-tray);
        color: var(--film-ink);
        --unit: 1px;
      }
      ul {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(136px, 1fr));
        margin: 0;
        padding: var(--space-3) var(--space-5) var(--space-4);
        list-style: none;
      }
      li {
        content-visibility: auto;
        contain-intrinsic-size: auto 136px auto 150px;
      }
      button {
        display: grid;
        grid-template-rows: minmax(52px, 1fr) auto;
        grid-template-columns: minmax(0, 1fr);
        justify-content: stretch;
        justify-items: center;
        align-content: end;
        gap: var(--space-4);
        width: 100%;
        height: 100%;
        padding: var(--space-6) var(--space-3) var(--space-5);
        border: 0;
        border-radius: var(--radius);
        background: none;
      }
      .ground {
        display: grid;
        align-items: end;
        justify-items: center;
        align-self: stretch;
        width: 100%;
        border-bottom: 1px solid var(--film-line);
        padding-bottom: 1px;
      }
      .ground svg {
        display: block;
        fill: var(--film-ink);
      }
      button:hover .ground {
        border-color: var(--film-ink);
      }
      button[aria-pressed='true'] {
        box-shadow: none;
      }
      button[aria-pressed='true'] .ground {
        border-color: var(--film-accent);
        box-shadow: var(--edge-under);
      }
      button[aria-pressed='true'] .name {
        font-weight: 650;
      }
      .label {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        width: 100%;
        line-height: 1.3;
      }
      .name {
        overflow: hidden;
        text-overflow: ellipsis;
        white-space: nowrap;
      }
      .size {
        font-size: var(--type-fine);
        color: var(--film-soft);
      }
      @media (max-width: 760px) {
        :host {
          --unit: 0.8px;
        }
        ul {
          grid-template-columns: repeat(auto-fill, minmax(98px, 1fr));
          padding: var(--space-1) var(--space-2) var(--space-4);
        }
        button {
          padding: var(--space-4) var(--space-2) var(--space-3);
        }
        .name {
          font-size: var(--type-label);
        }
        .size {
          font-size: var(--type-fine);
          white-space: nowrap;
        }
      }
    `,
  ];

  @property({ attribute: false }) shapes: readonly Shape[] = [];
  @property() chosen: string | null = null;
  /** Whether the silhouettes keep their sizes to each other. */
  @property({ type: Boolean }) trueSize = true;

  private choose(id: string): void {
    this.dispatchEvent(new CustomEvent<string>('choose', { detail: id }));
  }

  override render() {
    const longest = this.shapes.reduce((most, shape) => Math.max(most, shape.widthMm, shape.heightMm), 1);
    return html`<ul aria-label=${say.shapes}>
      ${repeat(
        this.shapes,
        (shape) => shape.id,
        (shape) => {
          const path = outlinePath(shape);
          const scale = trayScale(shape, this.trueSize ? longest : null);
          return html`<li>
            <button aria-pressed=${this.chosen === shape.id} title=${shape.name} @click=${() => this.choose(shape.id)}>
              <span class="ground">
                <svg
                  style="width:calc(var(--unit) * ${Math.max(1, shape.widthMm * scale)});height:calc(var(--unit) * ${Math.max(1, shape.heightMm * scale)})"
                  viewBox=${path.viewBox}
                  preserveAspectRatio="none"
                  aria-hidden="true"
                >
                  ${svg`<path d=${path.d} fill-rule=${shape.fillRule} />`}
                </svg>
              </span>
              <span class="label">
                <span class="name">${shape.name === '' ? say.unnamed : shape.name}</span>
                <span class="size">${sizeText(shape)}</span>
              </span>
            </button>
          </li>`;
        },
      )}
    </ul>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'shape-tray': ShapeTray;
  }
}
