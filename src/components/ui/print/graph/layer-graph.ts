import { css, html, LitElement, nothing, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { entryAt } from '../../../../engine/base/at.ts';
import { freePlaces } from '../../../../engine/order/free-places.ts';
import { type OrderGroup, type OrderPart, orderParts } from '../../../../engine/order/parts/order-parts.ts';
import type { Pull } from '../../../../engine/stack/types.ts';
import type { Studio } from '../../../../engine/studio/studio.ts';
import { fixed, numberLocale } from '../../../../engine/words/language.ts';
import type { OverlapEdge } from '../../../../workers/api/picture-api.ts';
import { say } from '../../../words/en/ui/print.ts';
import { listed } from '../../../words/plan-words.ts';
import { controls } from '../../controls-style.ts';
import { inkHexes } from '../../kit/ink-chip.ts';
import { graphDotStyle } from './graph-dot-style.ts';
import { folds, type GroupTile, layerLayout, linesOf, TILE } from './layer-layout.ts';
import { type Dot, splitEdges } from './order-graph-layout.ts';
import { arrowStep, onDotKey, pullDot } from './pull-dot.ts';

const RADIUS = 11;
/** The inks of a group's pulls along the foot of its tile, px. */
const STRIPE = 6;
/** So many neighbours are named on either side. */
const NAMED = 5;

/**
 * The order of many pulls, first down at the left: parts that do not hold each other as panels, in each its layers
 * as columns, gathered in groups that unfold. Lines are drawn for the selected pull alone.
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
        grid-template-columns: minmax(0, 1fr);
        gap: var(--space-6);
      }
      svg {
        display: block;
      }
      .apart {
        opacity: 0.3;
      }
      .panel {
        fill: var(--ink);
        fill-opacity: 0.05;
      }
      .all {
        justify-self: start;
        margin-left: calc(-1 * var(--space-4));
      }
      .tile {
        cursor: pointer;
        outline: none;
      }
      .tile .face {
        fill: var(--sheet);
        stroke: var(--line);
      }
      .tile.selected .face,
      .tile:focus-visible .face {
        stroke: var(--accent);
        stroke-width: 2.5px;
      }
      .tile text {
        font-size: var(--type-fine);
        text-anchor: middle;
        dominant-baseline: central;
        pointer-events: none;
        fill: var(--ink);
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
  /** First pulls of the groups that are unfolded. */
  @state() private open: ReadonlySet<string> = new Set();
  /** Roving place of the keyboard among all that is shown. */
  @state() private roving = 0;
  /** How wide the graph may be, px. */
  @state() private room = 640;
  private parts: OrderPart[] = [];
  private readonly sized = new ResizeObserver(([entry]) => (this.room = Math.floor(entry?.contentRect.width ?? this.room)));

  override connectedCallback(): void {
    super.connectedCallback();
    this.sized.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.sized.disconnect();
  }

  private idOf({ layers }: OrderGroup): string {
    return this.pulls[entryAt(entryAt(layers, 0), 0)]?.id ?? '';
  }

  private unfold(groups: readonly OrderGroup[], open: boolean): void {
    const next = new Set(this.open);
    for (const group of groups) {
      if (open) next.add(this.idOf(group));
      else next.delete(this.idOf(group));
    }
    this.open = next;
  }

  private rove(event: KeyboardEvent, place: number): void {
    const all = [...this.renderRoot.querySelectorAll<SVGGElement>('.tile, .dot')];
    const step = arrowStep(event);
    if (step === 0 || all.length === 0) return;
    event.preventDefault();
    all[(place + step + all.length) % all.length]?.focus();
  }

  private dot(at: number, dot: Dot, { place, apart }: { place: number; apart: boolean }) {
    const pull = entryAt(this.pulls, at);
    return pullDot(dot, {
      pull,
      at,
      drawer: this.drawer,
      selected: pull.id === this.selected,
      first: place === this.roving,
      radius: RADIUS,
      halo: 2,
      apart,
      choose: () => this.dispatchEvent(new CustomEvent<string>('pull-select', { detail: pull.id })),
      focused: () => (this.roving = place),
      key: (event) => this.rove(event, place),
    });
  }

  private tile({ group, x, y, widthPx, open }: GroupTile, { place, apart }: { place: number; apart: boolean }) {
    const members = group.layers.flat();
    const free = group.layers.length === 1;
    const toggle = (): void => this.unfold([group], !open);
    const wide = widthPx / members.length;
    const named = listed(members.slice(0, NAMED).map((at) => String(at + 1)));
    return svg`<g
      class="tile ${apart ? 'apart' : ''} ${!open && members.some((at) => this.pulls[at]?.id === this.selected) ? 'selected' : ''}"
      role="button"
      aria-expanded=${open}
      aria-label=${say.pulls(members.length, free ? say.inAnyOrder : say.inLayers(group.layers.length), named, members.length > NAMED ? ' …' : '')}
      tabindex=${place === this.roving ? 0 : -1}
      transform="translate(${x} ${y})"
      @click=${toggle}
      @focus=${() => (this.roving = place)}
      @keydown=${(event: KeyboardEvent) => onDotKey(event, toggle, (other) => this.rove(other, place))}
    >
      <rect class="face" width=${widthPx} height=${TILE.height} rx="3" />
      ${members.map((at, i) => svg`<rect x=${wide * i} y=${TILE.height - STRIPE} width=${wide} height=${STRIPE} fill=${this.inkOf(at)} />`)}
      <text x=${widthPx / 2} y=${(TILE.height - STRIPE) / 2}>${say.free(members.length, free, open ? '−' : '+')}</text>
    </g>`;
  }

  private inkOf(at: number): string {
    const ink = this.drawer.inks.find(({ id }) => id === this.pulls[at]?.ink);
    return ink === undefined ? 'var(--no-ink)' : inkHexes(ink).overWhite;
  }

  private words(at: number, lines: readonly OverlapEdge[]): string {
    if (at < 0) return say.choosePullToSee;
    const { over, under, from, to } = freePlaces(at, this.pulls.length, lines);
    const named = (places: readonly number[]): string => {
      const some = places.slice(0, NAMED).map((place) => String(place + 1));
      const more = places.length - some.length;
      return listed(more > 0 ? [...some, say.more(more)] : some);
    };
    const sides = [over.length === 0 ? '' : say.liesOver(named(over)), under.length === 0 ? '' : say.under(named(under))].filter(
      (side) => side !== '',
    );
    const held = sides.length === 0 ? say.nothingHoldsPull(at + 1) : say.pullLiesSoThat(at + 1, over.length === 0, sides.join(say.and));
    const free = from === to ? say.itHasNoOther : say.atAnyPlaceFrom(from + 1, to + 1, this.minDeltaE);
    return `${held}; ${free}`;
  }

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('pulls') || changed.has('edges') || changed.has('minDeltaE'))
      this.parts = orderParts(this.pulls.length, splitEdges(this.edges, this.minDeltaE).lines);
    // What is chosen is to be seen, also when it was chosen elsewhere.
    const at = this.pulls.findIndex(({ id }) => id === this.selected);
    if (!changed.has('selected') && !changed.has('edges')) return;
    this.unfold(
      this.parts.flat().filter(({ layers }) => layers.some((layer) => layer.includes(at))),
      true,
    );
  }

  private head(free: number, overlapping: number) {
    const groups = this.parts.flat().filter(folds);
    const all = groups.every((group) => this.open.has(this.idOf(group)));
    return html`<p class="small">
        ${say.pullsOfOneColumn(this.parts.length === 1 ? say.firstDownAtLeft : say.panelsPullsOfOne(this.parts.length), free, overlapping)}
      </p>
      ${
        groups.length === 0
          ? nothing
          : html`<button type="button" class="quiet all" @click=${() => this.unfold(groups, !all)}>${all ? say.foldAll : say.unfoldAllGroups(groups.length)}</button>`
      }`;
  }

  override render() {
    const { pulls } = this;
    const { lines, free, overlapping } = splitEdges(this.edges, this.minDeltaE);
    const { panels, tiles, dots, ends, widthPx, heightPx } = layerLayout(this.parts, (group) => this.open.has(this.idOf(group)), this.room);
    const at = pulls.findIndex(({ id }) => id === this.selected);
    const own = lines.filter((edge) => edge.a === at || edge.b === at);
    const near = new Set([at, ...own.flatMap(({ a, b }) => [a, b])]);
    const apart = (members: readonly number[]): boolean => at >= 0 && !members.some((member) => near.has(member));
    const curves = linesOf(at, own, ends);
    const height = Math.max(heightPx, ...curves.map(({ bottomPx }) => bottomPx));
    return html`${this.head(free, overlapping)}
      <svg width=${widthPx} height=${height} viewBox="0 0 ${widthPx} ${height}" role="group" aria-label=${say.orderGraphInGroups(pulls.length)}>
        ${panels.map(({ x, y, widthPx: wide, heightPx: high }) => svg`<rect class="panel" x=${x} y=${y} width=${wide} height=${high} rx="4" />`)}
        <g>${curves.map(({ path, under, widthPx: wide }) => svg`<path class=${under ? 'under' : 'over'} d=${path} stroke-width=${wide.toFixed(1)} />`)}</g>
        <g>${tiles.map((tile, place) => this.tile(tile, { place, apart: !tile.open && apart(tile.group.layers.flat()) }))}</g>
        <g>${[...dots].map(([pull, dot], i) => this.dot(pull, dot, { place: tiles.length + i, apart: apart([pull]) }))}</g>
      </svg>
      <p role="status">${this.words(at, lines)}</p>
      ${
        own.length === 0
          ? nothing
          : html`<p class="soft small">${say.whereItShowsMost(
              own
                .slice(0, 3)
                .map(
                  (edge, i) =>
                    html`${say.withPullDeltaEOver(i === 0 ? '' : ', ', (edge.a === at ? edge.b : edge.a) + 1, fixed(edge.deltaE, 1), Math.round(edge.areaMm2).toLocaleString(numberLocale()))}`,
                ),
            )}</p>`
      }`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-layer-graph': LayerGraph;
  }
}
