import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { writeProject } from '../../engine/project/read.ts';
import type { AppStore } from '../app-store.ts';
import type { AutoSaver } from '../saver.ts';
import { controls } from '../ui/controls-style.ts';
import { download, fileNameOf } from '../ui/download.ts';
import { keepHere, takeSaved } from './handover.ts';

/** Hands out the open project as a file. */
export function saveAsFile(store: AppStore): void {
  download(fileNameOf(store.project.title, 'pullstack.json'), writeProject(store.project), 'application/json');
}

/** What the frame says for as long as what is changed here may be lost; null when it is saved as it happens. */
export function saveWarning({ state, reason, unsaved }: Pick<AutoSaver, 'state' | 'reason' | 'unsaved'>): string | null {
  switch (state) {
    case 'elsewhere':
      return unsaved
        ? 'This project is open in another tab, which saves. You changed something here, so this tab no longer follows it; what you change here is not saved until that tab is closed.'
        : 'This project is open in another tab, which saves; what is changed there shows here. What you change here is not saved until that tab is closed.';
    case 'asking':
      return 'The other tab was closed. This project was changed there and here: which one goes on? The other is put aside, not deleted.';
    case 'late':
      return 'Saving takes longer than it should. Keep this tab open.';
    case 'failed':
      return `Not saved (${reason}). It is tried again every 10 seconds; save the project as a file before you close this tab.`;
    case 'memory':
      return `Nothing is saved in this browser: ${reason}. Save the project as a file before you close this tab; earlier copies may be in the project menu.`;
    default:
      return null;
  }
}

/** A line in the frame while something is not saved; it cannot be closed. */
@customElement('save-strip')
export class SaveStrip extends LitElement {
  static override styles = [
    controls,
    css`
      div {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--space-4) var(--space-6);
        padding: var(--space-4) var(--space-8);
        background: var(--ink);
        color: var(--wall);
      }
      p {
        flex: 1 1 20em;
        overflow-wrap: anywhere;
      }
      @media print {
        div {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) saver!: AutoSaver;
  @state() private busy = false;
  private readonly onChange = (): void => this.requestUpdate();

  override connectedCallback(): void {
    super.connectedCallback();
    this.saver.addEventListener('change', this.onChange);
    window.addEventListener('beforeunload', this.onLeave);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.saver.removeEventListener('change', this.onChange);
    window.removeEventListener('beforeunload', this.onLeave);
  }

  private readonly onLeave = (event: BeforeUnloadEvent): void => {
    if (this.saver.unsaved) event.preventDefault();
  };

  private async choose(act: (store: AppStore, saver: AutoSaver) => Promise<void>): Promise<void> {
    this.busy = true;
    await act(this.store, this.saver);
    this.busy = false;
  }

  override render() {
    const words = saveWarning(this.saver);
    if (words === null) return nothing;
    const { state } = this.saver;
    return html`<div role="status" aria-label="Saving">
      <p>${words}</p>
      ${
        state === 'asking'
          ? html`<button ?disabled=${this.busy} @click=${() => void this.choose(keepHere)}>Keep what is here</button>
              <button ?disabled=${this.busy} @click=${() => void this.choose(takeSaved)}>Take what the other tab saved</button>`
          : nothing
      }
      ${state === 'late' ? nothing : html`<button @click=${() => saveAsFile(this.store)}>Save as a file</button>`}
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'save-strip': SaveStrip;
  }
}
