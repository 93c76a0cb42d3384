import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Pull } from '../../engine/stack/types.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import type { OverlapEdge } from '../../workers/api/picture-api.ts';
import '../ui/print/graph/layer-graph.ts';
import '../ui/print/graph/order-graph.ts';
import { controls } from '../ui/controls-style.ts';
import '../ui/kit/fold.ts';
import type { Fold } from '../ui/kit/fold.ts';
import { splitEdges } from '../ui/print/graph/order-graph-layout.ts';
import { say } from '../words/en/bench/room.ts';
import { keepInPlace } from './keep-in-place.ts';

/** So many pulls are legible on a ring with all its lines; more stand in layers. */
const RING_TO = 24;

/**
 * The order graph, folded under a line that says what it holds.
 * @fires pull-select CustomEvent<string>: the id of a pull
 */
@customElement('bench-order-fold')
export class OrderFold extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
      }
      ps-fold {
        --fold-height: 44px;
        --fold-pad: 0 var(--space-8);
      }
      .graph {
        padding: var(--space-4) var(--space-9) var(--space-10);
      }
      ps-order-graph {
        max-width: 980px;
      }
      @media (max-width: 760px) {
        .graph {
          padding: var(--space-4) var(--space-8) var(--space-9);
        }
      }
    `,
  ];

  @property({ attribute: false }) pulls: readonly Pull[] = [];
  @property({ attribute: false }) drawer!: Studio;
  /** null while they are looked for. */
  @property({ attribute: false }) edges: readonly OverlapEdge[] | null = null;
  /** Whether looking for them was given up. */
  @property({ type: Boolean }) lost = false;
  @property({ type: Number }) minDeltaE = 0;
  @property({ attribute: false }) selected: string | null = null;
  @state() private open = false;

  /** The graph opens below what is in view: it must be seen that it did. */
  private async toggled(fold: Fold): Promise<void> {
    this.open = fold.open;
    if (!fold.open) return;
    await this.updateComplete;
    await fold.querySelector<LitElement>('.graph')?.updateComplete;
    fold.scrollIntoView({ block: 'nearest' });
  }

  private get words(): string {
    if (this.edges === null) return this.lost ? say.overlapsCouldNotBe : say.lookingForOverlaps;
    const { free, overlapping } = splitEdges(this.edges, this.minDeltaE);
    if (overlapping === 0) return say.noTwoPullsOverlap;
    return say.ofOverlappingPairsAre(free, overlapping);
  }

  private graph() {
    // On a narrow page the pull is laid out above: what was tapped stays under the finger.
    const select = ({ detail }: CustomEvent<string>): void =>
      void keepInPlace(this, () => this.dispatchEvent(new CustomEvent<string>('pull-select', { detail })));
    const edges = this.edges ?? [];
    return this.pulls.length > RING_TO
      ? html`<ps-layer-graph class="graph" .pulls=${this.pulls} .drawer=${this.drawer} .edges=${edges} .minDeltaE=${this.minDeltaE} .selected=${this.selected} @pull-select=${select}></ps-layer-graph>`
      : html`<ps-order-graph class="graph" .pulls=${this.pulls} .drawer=${this.drawer} .edges=${edges} .minDeltaE=${this.minDeltaE} .selected=${this.selected} @pull-select=${select}></ps-order-graph>`;
  }

  override render() {
    return html`<ps-fold
      label=${say.orderGraph}
      note=${this.open ? '' : this.words}
      @toggle=${(event: Event) => void this.toggled(event.currentTarget as Fold)}
    >
      ${this.open ? this.graph() : nothing}
    </ps-fold>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-order-fold': OrderFold;
  }
}
