import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { orderRange } from '../../../engine/explore/search/order-range.ts';
import type { OrderCount } from '../../../engine/explore/types.ts';
import type { Project } from '../../../engine/project/types.ts';
import { engineFor } from '../../../workers/client/client.ts';
import { controls } from '../../ui/controls-style.ts';
import { workFailure } from '../../ui/work-failure.ts';
import { Work } from '../../ui/work.ts';
import { sameValue } from '../run/wall-search.ts';
import { countSentence, drawnSentence } from './order-count-words.ts';

/** How many orders of the Bench's stack may differ. */
@customElement('wall-order-count')
export class OrderCountNote extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
        margin: 0 0 var(--space-2) var(--space-9);
        font-size: var(--type-small);
        color: var(--ink-soft);
        font-variant-numeric: tabular-nums;
      }
      b {
        color: var(--ink);
        font-weight: 600;
      }
    `,
  ];

  @property({ attribute: false }) project!: Project;
  /** Counts only while true: a wall that cannot be made has nothing to count. */
  @property({ attribute: false }) sound = true;
  /** The last count; stays while another is made. */
  @state() private counted: OrderCount | null = null;
  private asked: unknown = null;
  private readonly counting = new Work<OrderCount>(this, { found: (count) => (this.counted = count) });

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.asked = null;
  }

  protected override willUpdate(_: PropertyValues): void {
    const { drawer: studio, bench, explore } = this.project;
    const { holds, minDeltaE } = explore;
    const wanted = this.sound && bench.length > 0 ? { drawer: studio, rest: { bench, holds, minDeltaE } } : null;
    const before = this.asked as typeof wanted;
    if (wanted?.drawer === before?.drawer && sameValue(wanted?.rest, before?.rest)) return;
    this.asked = wanted;
    this.count();
  }

  private count(): void {
    if (this.asked === null) {
      this.counting.clear();
      this.counted = null;
      return;
    }
    const { drawer: studio, bench, explore } = this.project;
    void this.counting.start((control) => engineFor('picture').countOrders({ studio, bench, explore }, control));
  }

  override render() {
    if (this.counting.failure !== '') return workFailure(this.counting);
    const { counted, project } = this;
    // That of another project's stack is no count of this one's.
    if (counted?.pulls !== project.bench.length) return nothing;
    return html`<p role="status"><b>${countSentence(counted)}</b> ${drawnSentence(counted, orderRange(project.explore) !== null)}</p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-order-count': OrderCountNote;
  }
}
