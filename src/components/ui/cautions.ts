import { css, html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { CAUTIONS_BY_TOPIC, type CautionTopic } from '../words/cautions.ts';
import { say } from '../words/en/ui/room.ts';
import './kit/fold.ts';
import { controls } from './controls-style.ts';

/** What can hurt in the work at hand, folded, and what comes before it. */
@customElement('ps-cautions')
export class Cautions extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
      }
      ul {
        margin: var(--space-2) 0;
        padding-left: 1.2em;
      }
      li {
        margin-bottom: var(--space-2);
      }
    `,
  ];

  @property() topic: CautionTopic = 'press';

  override render() {
    return html`<ps-fold label=${say.workSafely} note=${say.beforeYouStart} quiet>
      <ul class="small">
        ${CAUTIONS_BY_TOPIC[this.topic].map((caution) => html`<li>${caution}</li>`)}
      </ul>
      <p class="small">${say.followSafetyDataSheets}</p>
    </ps-fold>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-cautions': Cautions;
  }
}
