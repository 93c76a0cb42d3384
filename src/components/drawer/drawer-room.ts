import { html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { type AppStore, StoreController } from '../app-store.ts';
import { controls } from '../ui/styles.ts';

@customElement('drawer-room')
export class DrawerRoom extends LitElement {
  static override styles = controls;

  @property({ attribute: false }) store!: AppStore;

  override connectedCallback(): void {
    super.connectedCallback();
    new StoreController(this, this.store);
  }

  override render() {
    return html`<h2>drawer</h2>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'drawer-room': DrawerRoom;
  }
}
