import { css, html, LitElement } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { controls } from '../../ui/controls-style.ts';
import { stackHost } from '../../ui/layout-style.ts';
import { say } from '../../words/en/inks/add.ts';

/** A place to drop one file, or to choose it. Sends `file`; what is slotted stands above the button. */
@customElement('file-well')
export class FileWell extends LitElement {
  static override styles = [
    controls,
    stackHost,
    css`
      :host {
        gap: var(--space-4);
        justify-items: start;
        padding: var(--space-7);
        border: 1px dashed var(--line);
        border-radius: var(--radius);
      }
      :host([over]) {
        border-color: var(--accent);
      }
      .button {
        position: relative;
      }
      input {
        position: absolute;
        inset: 0;
        opacity: 0;
        cursor: pointer;
      }
      .button:focus-within {
        outline: 2px solid var(--accent);
        outline-offset: 2px;
      }
    `,
  ];

  @property() label = say.chooseFile;
  /** While it is read. */
  @property() busy = '';
  @property() accept = '';
  @state() private over = false;

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('dragover', this.onDrag);
    this.addEventListener('dragleave', this.onLeave);
    this.addEventListener('drop', this.onDrop);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener('dragover', this.onDrag);
    this.removeEventListener('dragleave', this.onLeave);
    this.removeEventListener('drop', this.onDrop);
  }

  protected override updated(): void {
    this.toggleAttribute('over', this.over);
  }

  private send(file: File | undefined): void {
    if (file !== undefined) this.dispatchEvent(new CustomEvent<File>('file', { detail: file }));
  }

  private readonly onDrag = (event: DragEvent): void => {
    if (event.dataTransfer?.types.includes('Files') !== true) return;
    event.preventDefault();
    event.dataTransfer.dropEffect = 'copy';
    this.over = true;
  };

  private readonly onLeave = (): void => {
    this.over = false;
  };

  private readonly onDrop = (event: DragEvent): void => {
    this.over = false;
    if (event.dataTransfer?.types.includes('Files') !== true) return;
    event.preventDefault();
    this.send(event.dataTransfer.files[0]);
  };

  private onChoose(event: Event): void {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    // So that the same file, mended, can be chosen again.
    input.value = '';
    this.send(file);
  }

  override render() {
    return html`<slot></slot>
      <label class="button">
        ${this.busy || this.label}
        <input type="file" accept=${this.accept} aria-label=${this.label} @change=${this.onChoose} />
      </label>
      <slot name="after"></slot>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'file-well': FileWell;
  }
}
