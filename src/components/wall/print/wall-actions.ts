import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Variant } from '../../../engine/explore/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { controls } from '../../ui/controls-style.ts';
import { notFetched } from '../../ui/kit/late.ts';
import { say } from '../../words/en/wall/print.ts';
import { say as surface } from '../../words/en/wall/surface.ts';
import { USUAL_PLACE } from '../surface/room-for-print.ts';

/** Opens what there is to say and to find of the print in focus, whose code comes when it is asked for. */
@customElement('wall-actions')
export class WallActions extends LitElement {
  static override styles = controls;

  @property({ attribute: false }) variant: Variant | null = null;
  @property({ attribute: false }) drawer: Studio | null = null;
  @property({ attribute: false }) relative = true;
  /** Where the panel leaves the print in view. */
  @property({ attribute: false }) place = USUAL_PLACE;
  @state() private open = false;

  private toggle(): void {
    this.open = !this.open;
    import('./print-panel.ts').catch(() => {
      const detail = notFetched(surface.thisPartOfApp);
      this.dispatchEvent(new CustomEvent('wall-problem', { detail, bubbles: true, composed: true }));
    });
  }

  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || !this.open) return;
    event.stopPropagation();
    this.open = false;
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('.toggle')?.focus());
  };

  override render() {
    const { variant, drawer: studio, open } = this;
    const none = variant === null || studio === null;
    return html`<div @keydown=${this.onKey}>
      <button class="toggle" ?disabled=${none} aria-expanded=${open && !none} aria-controls="panel" @click=${() => this.toggle()}>${say.moreFromThisPrint}</button>
      ${
        open && !none
          ? html`<wall-print-panel id="panel" .variant=${variant} .drawer=${studio} .relative=${this.relative} .place=${this.place} @print-derived=${() => (this.open = false)}></wall-print-panel>`
          : nothing
      }
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-actions': WallActions;
  }
}
