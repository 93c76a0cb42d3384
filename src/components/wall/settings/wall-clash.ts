import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Clash } from '../../../engine/explore/search/clash.ts';
import { capital } from '../../../engine/words/language.ts';
import type { AppStore } from '../../app-store.ts';
import { controls } from '../../ui/controls-style.ts';
import { say } from '../../words/en/wall/settings.ts';

/** The conditions that no print keeps together, each with what drops it. */
@customElement('wall-clash')
export class WallClash extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
        margin-top: var(--space-5);
        border-left: 3px solid var(--accent);
        padding-left: var(--space-5);
        font-size: var(--type-label);
      }
      ul {
        list-style: none;
        margin: var(--space-3) 0 0;
        padding: 0;
        max-height: 34dvh;
        overflow-y: auto;
      }
      li {
        display: grid;
        grid-template-columns: minmax(0, 1fr) auto;
        align-items: center;
        gap: var(--space-2) var(--space-5);
        padding: var(--space-2) 0;
      }
      li button {
        min-height: 30px;
      }
      @media (pointer: coarse) {
        li button {
          min-height: var(--touch);
        }
      }
    `,
  ];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) clash: Clash | 'looking' | null = null;

  private drop({ change }: Clash['conditions'][number]): void {
    const { holds, ...rest } = change;
    this.store.dispatch(holds === undefined ? { kind: 'set-explore', change: rest } : { kind: 'set-holds', holds });
  }

  override render() {
    const { clash } = this;
    if (clash === null) return nothing;
    if (clash === 'looking') return html`<p role="status">${say.noPrintCameOf}</p>`;
    return html`<p role="alert">${clash.lead}</p>
      <ul aria-label=${say.conditionsThatClash}>
        ${clash.conditions.map((condition) => html`<li><span>${capital(condition.says)}</span><button aria-label=${say.drop(condition.says)} @click=${() => this.drop(condition)}>${say.drop2}</button></li>`)}
      </ul>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-clash': WallClash;
  }
}
