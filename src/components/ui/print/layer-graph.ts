import { css, html, LitElement, nothing, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import { freePlaces } from '../../../engine/order/free-places.ts';
import { orderLayers } from '../../../engine/order/order-layers.ts';
import { edgeWeight } from '../../../engine/order/overlaps.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { OverlapEdge } from '../../../workers/api/picture-api.ts';
import { listed } from '../../words/plan-words.ts';
import { controls } from '../controls-style.ts';
import { inkHexes, writingOn } from '../kit/ink-chip.ts';
import { counted, pullWords } from '../words.ts';
import { graphDotStyle } from './graph-dot-style.ts';
import { type Dot, splitEdges } from './order-graph-layout.ts';

const STEP = 27;
const RADIUS = 11;
const THICKEST = 5;
const DEEPEST = 150;
/** So many neighbours are named on either side. */
const NAMED = 5;

/**
 * The order of many pulls as layers, first down at the left: pulls of one column do not hold each other.
 * Lines are drawn for the selected pull alone.
 * @fires pull-select CustomEvent<string>: the pull's id
 */
@customElement('ps-layer-graph')
export class LayerGraph extends LitElement {
  static override styles = [
    controls,
    graphDotStyle,
    css`
      :host {
        display: grid;
        gap: var(--space-6);
      }
      .scroll {
        overflow-x: auto;
      }
      svg {
        display: block;
      }
      .apart {
        opacity: 0.3;
      }
      path {
        fill: none;
        stroke: var(--ink);
        stroke-opacity: 0.5;
        stroke-linecap: round;
      }
      path.under {
        stroke: var(--accent);
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
  /** Roving place of the keyboard among the dots. */
  @state() private roving = 0;

  private dots(layers: readonly number[]): Dot[] {
    const filled: number[] = [];
    return layers.map((layer) => {
      const row = filled[layer] ?? 0;
      filled[layer] = row + 1;
      return { x: STEP * (layer + 0.5), y: STEP * (row + 0.5) };
    });
  }

  private choose(pull: Pull | undefined): void {
    if (pull !== undefined) this.dispatchEvent(new CustomEvent<string>('pull-select', { detail: pull.id }));
  }

  private onKey(event: KeyboardEvent, at: number): void {
    const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
    if (event.key === 'Enter' || event.key === ' ') this.choose(this.pulls[at]);
    else if (step !== undefined && !event.altKey) {
      this.roving = (at + step + this.pulls.length) % this.pulls.length;
      void this.updateComplete.then(() => this.renderRoot.querySelector<SVGGElement>(`.dot[data-at="${this.roving}"]`)?.focus());
    } else return;
    event.preventDefault();
  }

  private dot(at: number, { x, y }: Dot, apart: boolean) {
    const pull = entryAt(this.pulls, at);
    const ink = this.drawer.inks.find((entry) => entry.id === pull.ink);
    const selected = pull.id === this.selected;
    return svg`<g
      class="dot ${selected ? 'selected' : ''} ${apart ? 'apart' : ''}"
      data-at=${at}
      role="button"
      aria-pressed=${selected}
      aria-label=${pullWords(pull, at, this.drawer)}
      tabindex=${at === Math.min(this.roving, this.pulls.length - 1) ? 0 : -1}
      transform="translate(${x} ${y})"
      @click=${() => this.choose(pull)}
      @focus=${() => (this.roving = at)}
      @keydown=${(event: KeyboardEvent) => this.onKey(event, at)}
    >
      <circle class="halo" r=${RADIUS + 2} />
      <circle class="ink" r=${RADIUS} fill=${ink === undefined ? 'var(--no-ink)' : inkHexes(ink).overWhite} />
      <text fill=${writingOn(ink)}>${at + 1}</text>
    </g>`;
  }

  private line(edge: OverlapEdge, at: number, { dots, heaviest }: { dots: readonly Dot[]; heaviest: number }) {
    const from = entryAt(dots, at);
    const other = edge.a === at ? edge.b : edge.a;
    const to = entryAt(dots, other);
    // The further, the deeper, so that lines lie beside each other.
    const bend = Math.min(DEEPEST, Math.abs(to.x - from.x) / 5 + 12);
    const width = Math.max(1, (THICKEST * edgeWeight(edge)) / heaviest);
    return svg`<path
      class=${other < at ? 'under' : 'over'}
      d="M${from.x} ${from.y}Q${(from.x + to.x) / 2} ${(from.y + to.y) / 2 + bend} ${to.x} ${to.y}"
      stroke-width=${width.toFixed(1)}
    />`;
  }

  private words(at: number, lines: readonly OverlapEdge[]): string {
    if (at < 0) return 'Choose a pull to see what holds it in its place.';
    const { over, under, from, to } = freePlaces(at, this.pulls.length, lines);
    const named = (places: readonly number[]): string => {
      const some = places.slice(0, NAMED).map((place) => String(place + 1));
      const more = places.length - some.length;
      return listed(more > 0 ? [...some, `${more} more`] : some);
    };
    const sides = [over.length === 0 ? '' : `lies over ${named(over)}`, under.length === 0 ? '' : `under ${named(under)}`].filter(
      (side) => side !== '',
    );
    const held =
      sides.length === 0
        ? `Nothing holds pull ${at + 1}`
        : `Pull ${at + 1} ${over.length === 0 ? 'lies ' : ''}${sides.join(' and ')} so that it shows`;
    const free =
      from === to
        ? 'it has no other place that prints the same.'
        : `at any place from ${from + 1} to ${to + 1} the print stays the same within ΔE ${this.minDeltaE}.`;
    return `${held}; ${free}`;
  }

  protected override updated(changed: Map<PropertyKey, unknown>): void {
    if (!changed.has('selected') && !changed.has('edges')) return;
    const dot = this.renderRoot.querySelector('.dot.selected')?.getBoundingClientRect();
    const scroller = this.renderRoot.querySelector('.scroll');
    if (dot === undefined || scroller === null) return;
    const frame = scroller.getBoundingClientRect();
    if (dot.left < frame.left || dot.right > frame.right) scroller.scrollLeft += dot.left - frame.left - frame.width / 2;
  }

  override render() {
    const { pulls } = this;
    const { lines, free, overlapping } = splitEdges(this.edges, this.minDeltaE);
    const layers = orderLayers(pulls.length, lines);
    const dots = this.dots(layers);
    const at = pulls.findIndex(({ id }) => id === this.selected);
    const own = lines.filter((edge) => edge.a === at || edge.b === at);
    const near = new Set(own.flatMap(({ a, b }) => [a, b]));
    const heaviest = Math.max(...own.map(edgeWeight), Number.MIN_VALUE);
    const width = STEP * (1 + Math.max(0, ...layers));
    const height = Math.max(STEP, ...dots.map(({ y }) => y + STEP / 2)) + (own.length === 0 ? 0 : DEEPEST / 2);
    return html`<p class="small">
        ${counted(new Set(layers).size, 'layer')}, first down at the left: pulls of one column do not hold each other.
        ${free} of ${overlapping} overlapping pairs are free swaps.
      </p>
      <div class="scroll">
        <svg width=${width} height=${height} viewBox="0 0 ${width} ${height}" role="group" aria-label="Order graph in layers, ${counted(pulls.length, 'pull')}">
          <g>${own.map((edge) => this.line(edge, at, { dots, heaviest }))}</g>
          <g>${dots.map((dot, i) => this.dot(i, dot, at >= 0 && i !== at && !near.has(i)))}</g>
        </svg>
      </div>
      <p role="status">${this.words(at, lines)}</p>
      ${
        own.length === 0
          ? nothing
          : html`<p class="soft small">Where it shows most: ${own
              .slice(0, 3)
              .map(
                (edge, i) =>
                  html`${i === 0 ? '' : ', '}with pull ${(edge.a === at ? edge.b : edge.a) + 1} ΔE ${edge.deltaE.toFixed(1)} over ${Math.round(edge.areaMm2).toLocaleString('en')} mm²`,
              )}.</p>`
      }`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-layer-graph': LayerGraph;
  }
}
