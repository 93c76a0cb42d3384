import { html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { orderRange } from '../../../engine/explore/search/order-range.ts';
import { WallMore } from './setting-fields.ts';

/** How far the order of the pulls may stray from the one on the Bench. */
@customElement('wall-order-range')
export class WallOrderRange extends WallMore {
  override render() {
    const range = orderRange(this.project.explore);
    const percent = (share: number): number => Math.round(share * 100);
    const set = range === null ? '' : `${percent(range.from)} to ${percent(range.to)} %`;
    return this.fold(
      { title: 'How far it strays', set, fields: ['orderFrom', 'orderTo'] },
      () => html`
      ${this.number('orderFrom')} ${this.number('orderTo')}
      <p class="soft small">
        0 % is the order on the Bench, 100 % the same upside down: the share of overlapping pairs that change places. Prints are spread over
        what you give. With neither, all orders are alike likely, and nearly all of a deep stack turn over about half.
      </p>
    `,
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-order-range': WallOrderRange;
  }
}
