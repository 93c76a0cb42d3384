import { css, html, LitElement, nothing, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { entryAt } from '../../../../engine/base/at.ts';
import { edgeWeight } from '../../../../engine/order/overlaps.ts';
import type { Pull } from '../../../../engine/stack/types.ts';
import type { Studio } from '../../../../engine/studio/studio.ts';
import { fixed, numberLocale } from '../../../../engine/words/language.ts';
import type { OverlapEdge } from '../../../../workers/api/picture-api.ts';
import { say } from '../../../words/en/ui/print.ts';
import { controls } from '../../controls-style.ts';
import { graphDotStyle } from './graph-dot-style.ts';
import { type Dot, ringLayout, splitEdges } from './order-graph-layout.ts';
import { arrowStep, pullDot } from './pull-dot.ts';

/** Half the drawing, its units are px at full size. */
const HALF = 190;
const RADIUS = 156;
const THINNEST = 1;
const THICKEST = 11;
/** How many of the heaviest pairs are put in words. */
const SHOWN = 6;

/** What a line of the order graph says: 'Pulls 3 and 7: 4,210 mm² differ by ΔE 8.2'. */
function edgeWords(edge: OverlapEdge): string {
  const [first, then] = edge.a < edge.b ? [edge.a, edge.b] : [edge.b, edge.a];
  return say.pullsAndMmDiffer(first + 1, then + 1, Math.round(edge.areaMm2).toLocaleString(numberLocale()), fixed(edge.deltaE, 1));
}

/**
 * Pulls as dots in the order they go down, a line where order matters, as thick as it matters.
 * @fires pull-select CustomEvent<string>: the pull's id
 */
@customElement('ps-order-graph')
export class OrderGraph extends LitElement {
  static override styles = [
    controls,
    graphDotStyle,
    css`
      :host {
        display: grid;
        grid-template-columns: minmax(0, 380px) minmax(0, 1fr);
        gap: var(--space-7) var(--space-10);
        align-items: center;
        container-type: inline-size;
      }
      svg {
        display: block;
        width: 100%;
        max-width: 380px;
        overflow: visible;
      }
      .edge line.seen {
        stroke: var(--ink);
        stroke-opacity: var(--faint);
        stroke-linecap: round;
      }
      .edge line.hit {
        stroke: transparent;
        stroke-width: 14px;
      }
      .edge {
        outline: none;
        cursor: default;
      }
      .edge.lit line.seen {
        stroke: var(--accent);
        stroke-opacity: 1 !important;
      }
      .near line.seen {
        stroke-opacity: 0.75;
      }
      .dim line.seen {
        stroke-opacity: calc(var(--faint) * 0.35);
      }
      .words {
        display: grid;
        gap: var(--space-6);
        align-content: center;
      }
      .edge-words {
        min-height: 1.5em;
      }
      ol {
        list-style: none;
        margin: 0;
        padding: 0;
        display: grid;
        border-top: 1px solid var(--line);
      }
      li {
        padding: var(--space-2) 0;
        border-bottom: 1px solid var(--line);
        font-size: var(--type-small);
      }
      li.lit {
        color: var(--accent);
      }
      @container (max-width: 640px) {
        svg {
          margin: 0 auto;
        }
      }
      @media (max-width: 760px) {
        :host {
          grid-template-columns: minmax(0, 1fr);
        }
        svg {
          margin: 0 auto;
        }
      }
    `,
  ];

  @property({ attribute: false }) pulls: readonly Pull[] = [];
  @property({ attribute: false }) drawer!: Studio;
  /** All overlapping pairs, also those below the threshold. */
  @property({ attribute: false }) edges: readonly OverlapEdge[] = [];
  /** Pairs that differ by less are free swaps. */
  @property({ type: Number, attribute: 'min-delta-e' }) minDeltaE = 1;
  @property({ attribute: false }) selected: string | null = null;
  /** Position of the line in the list of lines that is pointed at or focused. */
  @state() private lit = -1;
  /** Roving places of the keyboard among dots and lines. */
  @state() private dotAt = 0;
  @state() private lineAt = 0;

  private rove(event: KeyboardEvent, { count, at, kind }: { count: number; at: number; kind: 'dot' | 'edge' }): void {
    const step = arrowStep(event);
    if (step === 0 || count === 0) return;
    event.preventDefault();
    const next = (at + step + count) % count;
    if (kind === 'dot') this.dotAt = next;
    else this.lineAt = next;
    void this.updateComplete.then(() => this.renderRoot.querySelector<SVGGElement>(`.${kind}[data-at="${next}"]`)?.focus());
  }

  private line(edges: readonly OverlapEdge[], at: number, dots: readonly Dot[], heaviest: number) {
    const edge = entryAt(edges, at);
    const one = dots[edge.a];
    const other = dots[edge.b];
    if (one === undefined || other === undefined) return nothing;
    const width = Math.max(THINNEST, (THICKEST * edgeWeight(edge)) / heaviest);
    const near = this.selected !== null && (this.pulls[edge.a]?.id === this.selected || this.pulls[edge.b]?.id === this.selected);
    const off = (): void => {
      if (this.lit === at) this.lit = -1;
    };
    return svg`<g
      class="edge ${this.lit === at ? 'lit' : ''} ${this.selected === null ? '' : near ? 'near' : 'dim'}"
      data-at=${at}
      role="img"
      aria-label=${edgeWords(edge)}
      tabindex=${at === this.lineAt ? 0 : -1}
      @pointerenter=${() => (this.lit = at)}
      @pointerleave=${off}
      @focus=${() => {
        this.lineAt = at;
        this.lit = at;
      }}
      @blur=${off}
      @keydown=${(event: KeyboardEvent) => this.rove(event, { count: edges.length, at, kind: 'edge' })}
    >
      <line class="seen" x1=${one.x} y1=${one.y} x2=${other.x} y2=${other.y} stroke-width=${width.toFixed(2)} />
      <line class="hit" x1=${one.x} y1=${one.y} x2=${other.x} y2=${other.y} />
    </g>`;
  }

  private dot(pull: Pull, at: number, dot: Dot, radius: number) {
    return pullDot(dot, {
      pull,
      at,
      drawer: this.drawer,
      selected: pull.id === this.selected,
      first: at === Math.min(this.dotAt, this.pulls.length - 1),
      radius,
      halo: 4,
      choose: () => this.dispatchEvent(new CustomEvent<string>('pull-select', { detail: pull.id })),
      focused: () => (this.dotAt = at),
      key: (event) => this.rove(event, { count: this.pulls.length, at, kind: 'dot' }),
    });
  }

  override render() {
    const { pulls } = this;
    const { lines, free, overlapping } = splitEdges(this.edges, this.minDeltaE);
    const heaviest = Math.max(...lines.map(edgeWeight), Number.MIN_VALUE);
    // Many lines lie over each other; they stay a tone, not a black disc.
    const faint = 0.36 * Math.min(1, Math.sqrt(60 / Math.max(1, lines.length)));
    const dots = ringLayout(pulls.length, RADIUS);
    const radius = Math.max(4, Math.min(14, (Math.PI * RADIUS) / Math.max(1, pulls.length) - 3));
    const summary = overlapping === 0 ? say.noTwoPullsOverlap : say.ofOverlappingPairsAre(free, overlapping, this.minDeltaE);
    return html`
      <svg viewBox="${-HALF} ${-HALF} ${2 * HALF} ${2 * HALF}" role="group" aria-label=${say.orderGraphPulls(pulls.length)}>
        <g style="--faint: ${faint.toFixed(3)}">${lines.map((_, at) => this.line(lines, at, dots, heaviest)).reverse()}</g>
        <g>${pulls.map((pull, at) => this.dot(pull, at, entryAt(dots, at), radius))}</g>
      </svg>
      <div class="words">
        <p class="summary">${summary}</p>
        ${
          lines.length === 0
            ? nothing
            : html`<div>
              <p class="soft small" style="padding-bottom: 6px">${say.whereOrderMattersMost}</p>
              <ol>
                ${lines.slice(0, SHOWN).map(
                  (edge, at) => html`<li
                    class=${this.lit === at ? 'lit' : ''}
                    @pointerenter=${() => (this.lit = at)}
                    @pointerleave=${() => (this.lit = -1)}
                  >
                    ${edgeWords(edge)}
                  </li>`,
                )}
              </ol>
            </div>`
        }
        <p class="edge-words small" aria-live="polite">${this.lit >= SHOWN && lines[this.lit] !== undefined ? edgeWords(entryAt(lines, this.lit)) : ''}</p>
      </div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-order-graph': OrderGraph;
  }
}
