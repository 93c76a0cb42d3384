import { css, html, type LitElement, nothing, type ReactiveController, type TemplateResult } from 'lit';
import { isProjectFile } from './project-file.ts';

/** The veil over a room while files are held above it. */
export const fileDropStyles = css`
  .over {
    position: fixed;
    inset: 0;
    z-index: 10;
    display: grid;
    place-items: center;
    background: color-mix(in srgb, var(--wall) 78%, transparent);
    pointer-events: none;
  }
  .over p {
    padding: var(--space-9) var(--space-10);
    font-size: var(--type-head);
    font-weight: 650;
    background: var(--sheet);
    outline: 2px dashed var(--accent);
    outline-offset: 8px;
  }
`;

/** Lets files be dropped anywhere in a room. */
export class FileDrop implements ReactiveController {
  private readonly host: LitElement;
  private readonly take: (dropped: DataTransfer) => void;
  private over = false;

  /** @param take gets what was dropped, while the event lasts */
  constructor(host: LitElement, take: (dropped: DataTransfer) => void) {
    this.host = host;
    this.take = take;
    host.addController(this);
  }

  hostConnected(): void {
    this.host.addEventListener('dragover', this.onDragOver);
    this.host.addEventListener('dragleave', this.onDragLeave);
    this.host.addEventListener('drop', this.onDrop);
  }

  hostDisconnected(): void {
    this.host.removeEventListener('dragover', this.onDragOver);
    this.host.removeEventListener('dragleave', this.onDragLeave);
    this.host.removeEventListener('drop', this.onDrop);
  }

  /** The veil with its words while files are held above the room. */
  veil(words: string): TemplateResult | typeof nothing {
    return this.over ? html`<div class="over"><p>${words}</p></div>` : nothing;
  }

  private set(over: boolean): void {
    if (this.over === over) return;
    this.over = over;
    this.host.requestUpdate();
  }

  private readonly onDragOver = (event: DragEvent): void => {
    if (event.dataTransfer?.types.includes('Files') !== true) return;
    event.preventDefault();
    event.dataTransfer.dropEffect = 'copy';
    this.set(true);
  };

  private readonly onDragLeave = (event: DragEvent): void => {
    // Leaving for a part of the room itself is no leaving.
    if (event.relatedTarget instanceof Node && this.host.contains(event.relatedTarget)) return;
    this.set(false);
  };

  private readonly onDrop = (event: DragEvent): void => {
    this.set(false);
    if (event.dataTransfer?.types.includes('Files') !== true) return;
    // A whole project is for the frame.
    if ([...event.dataTransfer.files].some(isProjectFile)) return;
    event.preventDefault();
    this.take(event.dataTransfer);
  };
}
