import { css, html, LitElement, type PropertyValues, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { num } from '../../../engine/base/at.ts';
import { labD50 } from '../../../engine/colour/lab.ts';
import { srgbHexFromLab } from '../../../engine/colour/screen-colour.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { controls } from '../../ui/controls-style.ts';
import { inkHexes } from '../../ui/kit/ink-chip.ts';
import { pullWords } from '../../ui/words.ts';
import { say } from '../../words/en/bench/look.ts';
import { pullOutline } from '../bench-layout.ts';
import { lookStyle } from './look-style.ts';

/** A sheet that lies, seen from the front and above: one mm right, one mm down, as far on the drawing. */
const LYING = [0.94, 0.2, -0.5, 0.46] as const;
/** Between two films, as a share of the sheet's longer side, for a stack of one. */
const GAP = 0.7;

/**
 * The films of a stack lifted off each other, first down lowest; one is looked at by itself.
 * @fires pull-select CustomEvent<string>: the pull of the film that was chosen
 */
@customElement('bench-films-apart')
export class FilmsApart extends LitElement {
  static override styles = [
    controls,
    lookStyle,
    css`
      .surface {
        display: grid;
        grid-template-columns: minmax(0, 1fr) minmax(200px, 320px);
      }
      svg {
        width: 100%;
        height: 100%;
        min-height: 0;
      }
      .sheet {
        stroke: var(--line);
        stroke-width: 1px;
        vector-effect: non-scaling-stroke;
      }
      .film .sheet {
        fill: var(--sheet);
        fill-opacity: 0.22;
      }
      .film path {
        cursor: pointer;
      }
      .film {
        transition: opacity 0.2s;
      }
      .one .film:not(.chosen) {
        opacity: 0.18;
      }
      ol {
        margin: 0;
        padding: var(--space-4);
        overflow-y: auto;
        list-style: none;
        background: var(--table);
        border-left: 1px solid var(--line);
      }
      li button {
        display: flex;
        align-items: center;
        gap: var(--space-4);
        justify-content: flex-start;
        width: 100%;
        padding: var(--space-2) var(--space-4);
        border-color: transparent;
        background: none;
        font-size: var(--type-small);
        text-align: left;
      }
      li button[aria-pressed='true'] {
        border-color: var(--accent);
      }
      i {
        flex: none;
        width: 18px;
        height: 18px;
        box-shadow: var(--edge);
      }
      @media (max-width: 760px) {
        .surface {
          grid-template-columns: minmax(0, 1fr);
          grid-template-rows: minmax(0, 1fr) minmax(0, 38%);
        }
        ol {
          border-left: 0;
          border-top: 1px solid var(--line);
        }
      }
      @media (prefers-reduced-motion: reduce) {
        .film {
          transition: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) pulls: readonly Pull[] = [];
  @property({ attribute: false }) drawer!: Studio;
  @property({ type: Boolean }) relative = true;
  /** The pull that is looked at, by id; null for all. */
  @property() chosen: string | null = null;
  /** How far the films are lifted, 0 to 1. */
  @state() private lift = 0.5;
  /** What each pull prints, as path data: the same at every lift. */
  private paths: readonly string[] = [];

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('pulls') || changed.has('drawer')) this.paths = this.pulls.map((pull) => pullOutline(pull, this.drawer));
  }

  private choose(pull: string): void {
    this.dispatchEvent(new CustomEvent<string>('pull-select', { detail: pull }));
  }

  private film(pull: Pull, index: number, gapMm: number) {
    const { paper } = this.drawer;
    return svg`<g class="film ${pull.id === this.chosen ? 'chosen' : ''}" transform="translate(0 ${-(index + 1) * gapMm}) matrix(${LYING.join(' ')} 0 0)">
      <rect class="sheet" width=${paper.widthMm} height=${paper.heightMm} />
      <path d=${this.paths[index] ?? ''} fill=${this.hexOf(pull)} @click=${() => this.choose(pull.id)}><title>${pullWords(pull, index, this.drawer)}</title></path>
    </g>`;
  }

  private hexOf(pull: Pull): string {
    const ink = this.drawer.inks.find(({ id }) => id === pull.ink);
    return ink === undefined ? 'none' : inkHexes(ink).overWhite;
  }

  override render() {
    const { pulls, drawer: studio } = this;
    const { widthMm, heightMm, reflectance } = studio.paper;
    const [ax, ay, bx, by] = [num(LYING, 0), num(LYING, 1), num(LYING, 2), num(LYING, 3)];
    const gapMm = (this.lift * GAP * Math.max(widthMm, heightMm)) / Math.sqrt(Math.max(1, pulls.length));
    const left = bx * heightMm;
    const height = ay * widthMm + by * heightMm + pulls.length * gapMm;
    const room = 0.03 * Math.max(widthMm, heightMm);
    const box = [left - room, -pulls.length * gapMm - room, ax * widthMm - left + 2 * room, height + 2 * room];
    const white = this.relative ? 'var(--white)' : srgbHexFromLab(labD50(reflectance));
    return html`<div class="surface">
        <svg class=${this.chosen === null ? '' : 'one'} viewBox=${box.join(' ')} role="img" aria-label=${say.filmsLiftedOffEach(pulls.length)}>
          <rect class="sheet" width=${widthMm} height=${heightMm} fill=${white} transform="matrix(${LYING.join(' ')} 0 0)" />
          ${pulls.map((pull, index) => this.film(pull, index, gapMm))}
        </svg>
        <ol aria-label=${say.filmsLastDownFirst}>
          ${pulls
            .map((pull, index) => ({ pull, index }))
            .toReversed()
            .map(
              ({ pull, index }) => html`<li>
              <button aria-pressed=${pull.id === this.chosen} @click=${() => this.choose(pull.id)}><i style="background:${this.hexOf(pull)}"></i>${pullWords(pull, index, studio)}</button>
            </li>`,
            )}
        </ol>
      </div>
      <div class="line">
        <label>${say.lifted} <input type="range" min="0" max="100" .value=${String(this.lift * 100)} @input=${(event: Event) => (this.lift = Number((event.target as HTMLInputElement).value) / 100)} /></label>
        <button ?disabled=${this.chosen === null} @click=${() => this.dispatchEvent(new CustomEvent('pull-select', { detail: null }))}>${say.allFilms}</button>
        <span class="soft small">${say.eachFilmIsDrawn}</span>
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-films-apart': FilmsApart;
  }
}
