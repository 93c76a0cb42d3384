import { html, nothing, type ReactiveController, type ReactiveControllerHost } from 'lit';
import type { FileFound, FileKind } from '../../../workers/api/reader-api.ts';
import { readFile } from '../../../workers/client/file-reader.ts';
import { say } from '../../words/en/ui/files.ts';

/** Small files are read before anybody could read that they are, ms. */
const UNSAID_MS = 250;

/** Reads files one after the other for an element, and shows which one, with a button that stops it. */
export class FileReading implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private stopping: AbortController | null = null;
  private name = '';

  constructor(host: ReactiveControllerHost) {
    this.host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.stop();
  }

  /** Ends the reading that goes on, in the midst of the file. */
  stop(): void {
    this.stopping?.abort();
  }

  /**
   * Reads a file; another one of this element that is being read is stopped.
   * @throws ReadingEnded with a sentence that names the file
   */
  async read<Kind extends FileKind>(kind: Kind, file: File): Promise<FileFound[Kind]> {
    this.stop();
    const stopping = new AbortController();
    this.stopping = stopping;
    const wait = setTimeout(() => {
      this.name = file.name;
      this.host.requestUpdate();
    }, UNSAID_MS);
    try {
      return await readFile(kind, file, stopping.signal);
    } finally {
      clearTimeout(wait);
      if (this.stopping === stopping) {
        this.stopping = null;
        this.name = '';
        this.host.requestUpdate();
      }
    }
  }

  /** Which file is being read, and the button; nothing while none is. */
  line() {
    if (this.name === '') return nothing;
    return html`<p class="row small reading">
      <button type="button" @click=${() => this.stop()}>${say.stop}</button>
      <span role="status">${say.reading(this.name)}</span>
    </p>`;
  }
}
