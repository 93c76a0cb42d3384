import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { writeProject } from '../../engine/project/write.ts';
import type { AppStore } from '../app-store.ts';
import type { AutoSaver } from '../saver.ts';
import { controls } from '../ui/controls-style.ts';
import { download, fileNameOf } from '../ui/download.ts';
import { say } from '../words/en/keep/room.ts';
import { keepHere, takeSaved } from './handover.ts';

/** Hands out the open project as a file. */
export function saveAsFile(store: AppStore): void {
  download(fileNameOf(store.project.title, 'pullstack.json'), writeProject(store.project), 'application/json');
}

/** What the frame says for as long as what is changed here may be lost; null when it is saved as it happens. */
export function saveWarning({ state, reason, unsaved }: Pick<AutoSaver, 'state' | 'reason' | 'unsaved'>): string | null {
  switch (state) {
    case 'elsewhere':
      return unsaved ? say.thisProjectIsOpen : say.thisProjectIsOpenIn;
    case 'asking':
      return say.otherTabWasClosedThis;
    case 'late':
      return say.savingTakesLongerThan;
    case 'failed':
      return say.notSavedItIs(reason);
    case 'memory':
      return say.nothingIsSavedIn(reason);
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
      /* On their own ground again. */
      button {
        color: var(--ink);
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
    return html`<div role="status" aria-label=${say.saving}>
      <p>${words}</p>
      ${
        state === 'asking'
          ? html`<button ?disabled=${this.busy} @click=${() => void this.choose(keepHere)}>${say.keepWhatIsHere}</button>
              <button ?disabled=${this.busy} @click=${() => void this.choose(takeSaved)}>${say.takeWhatOtherTab}</button>`
          : nothing
      }
      ${state === 'late' ? nothing : html`<button @click=${() => saveAsFile(this.store)}>${say.saveAsFile2}</button>`}
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'save-strip': SaveStrip;
  }
}
