import { css, html, LitElement } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { emptyProject } from '../engine/project/empty.ts';
import type { Project } from '../engine/project/types.ts';
import type { ReadResult } from '../engine/recipe/read.ts';
import { sentenceOf } from '../workers/client/client.ts';
import { type AppStore, StoreController } from './app-store.ts';
import './keep/kept-list.ts';
import type { KeptList } from './keep/kept-list.ts';
import { missingHere } from './keep/missing-here.ts';
import { replaceProject } from './keep/replace-project.ts';
import { saveAsFile, saveWarning } from './keep/save-strip.ts';
import { isVisitFile, openVisitFile, saveVisitFile } from './keep/visit-files.ts';
import type { Room } from './rooms.ts';
import type { AutoSaver, SaveState } from './saver.ts';
import { controls } from './ui/controls-style.ts';
import { chooseFiles } from './ui/download.ts';
import { FileReading } from './ui/files/file-reading.ts';
import { dialogStyle } from './ui/kit/dialog-style.ts';
import { dialogBox } from './ui/kit/dialog.ts';
import './ui/kit/fold.ts';

/** The project as a whole: its title, its file, the demo, a fresh start. */
@customElement('project-menu')
export class ProjectMenu extends LitElement {
  static override styles = [
    controls,
    dialogStyle,
    css`
      .open {
        max-width: 15em;
      }
      .open span {
        overflow: hidden;
        text-overflow: ellipsis;
        white-space: nowrap;
      }
      dialog {
        --dialog-width: 420px;
      }
      .lines {
        display: grid;
        gap: var(--space-5);
      }
      .lines button {
        justify-content: start;
      }
      .title {
        display: grid;
        gap: var(--space-2);
      }
      @media (max-width: 760px) {
        .open {
          max-width: 9.5em;
        }
      }
    `,
  ];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) saver!: AutoSaver;
  @property({ attribute: false }) saveState: SaveState = 'saved';
  private readonly file = new FileReading(this);
  @query('dialog') private dialog!: HTMLDialogElement;
  @query('kept-list') private kept!: KeptList;

  override connectedCallback(): void {
    super.connectedCallback();
    new StoreController(this, this.store);
  }

  private async openFile(): Promise<void> {
    const [file] = await chooseFiles('.json,.zip,application/json,application/zip', false);
    if (file === undefined) return;
    if (await isVisitFile(file)) {
      if (await openVisitFile(this.store, file, this.file)) this.dialog.close();
      return;
    }
    let read: ReadResult<Project>;
    try {
      read = await this.file.read('project', file);
    } catch (error) {
      this.store.tell(sentenceOf(error));
      return;
    }
    if (read.value === null) this.store.tellProblems(read.problems.slice(0, 1));
    else if (!(await replaceProject(this.store, read.value, `${file.name} is open`))) return;
    this.dialog.close();
  }

  private async startWith(make: () => Project | Promise<Project>, room: Room, news: string): Promise<void> {
    if (!(await replaceProject(this.store, await make(), news))) return;
    this.dialog.close();
    this.store.go(room);
  }

  private show(): void {
    this.dialog.showModal();
    void this.kept.read();
  }

  private get saveWords(): string {
    return saveWarning(this.saver) ?? (this.saveState === 'saving' ? 'Saving…' : 'Saved in this browser.');
  }

  override render() {
    const { store } = this;
    return html`
      <button class="quiet open" aria-haspopup="dialog" title="Project: ${store.project.title}" @click=${() => this.show()}>
        <span>${store.project.title}</span>
      </button>
      ${dialogBox(
        { heading: 'Project', closable: true },
        html`<div class="lines">
          <label class="title">
            Title
            <input
              type="text"
              .value=${store.project.title}
              @change=${(event: Event) => store.dispatch({ kind: 'rename', title: (event.target as HTMLInputElement).value })}
            />
          </label>
          <p class="soft small" role="status">${this.saveWords}</p>
          ${missingHere().map((sentence) => html`<p class="soft small">${sentence}</p>`)}
          <button @click=${() => saveAsFile(store)}>Save as a file</button>
          <button @click=${() => void saveVisitFile(store)}>Save the visit as a file, with pull order and log</button>
          <button @click=${() => void this.openFile()}>Open a project or visit file…</button>
          ${this.file.line()}
          <button @click=${() => void this.startWith(() => emptyProject(store.project), 'drawer', 'An empty drawer is open')}>
            Start with an empty drawer
          </button>
          <button @click=${() => void this.startWith(async () => (await import('./demo.ts')).demo(), 'wall', 'The demo project is open')}>
            Open the demo project
          </button>
          <ps-fold ruled label="Earlier copies, and what was put aside">
            <kept-list .store=${store} .saver=${this.saver} @opened=${() => this.dialog.close()}></kept-list>
          </ps-fold>
          <a class="small" href="licences.txt" target="_blank" rel="noopener">Licences</a>
        </div>`,
      )}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'project-menu': ProjectMenu;
  }
}
