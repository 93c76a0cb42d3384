import { html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { orderRange } from '../../../engine/explore/search/order-range.ts';
import { say } from '../../words/en/wall/settings.ts';
import { WallMore } from './setting-fields.ts';

/** How far the order of the pulls may stray from the one on the Bench. */
@customElement('wall-order-range')
export class WallOrderRange extends WallMore {
  override render() {
    const range = orderRange(this.project.explore);
    const percent = (share: number): number => Math.round(share * 100);
    const set = range === null ? '' : say.to(percent(range.from), percent(range.to));
    return this.fold(
      { title: say.howFarItStrays, set, fields: ['orderFrom', 'orderTo'] },
      () => html`
      ${this.number('orderFrom')} ${this.number('orderTo')}
      <p class="soft small">
        ${say.n0IsOrderOn}
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
