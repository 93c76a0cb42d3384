import { css, html, LitElement } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { emptyProject } from '../engine/project/empty.ts';
import { readProject, writeProject } from '../engine/project/read.ts';
import type { Project } from '../engine/project/types.ts';
import { type AppStore, StoreController } from './app-store.ts';
import type { Room } from './rooms.ts';
import type { SaveState } from './saver.ts';
import { controls } from './ui/controls-style.ts';
import { chooseFiles, download, fileNameOf } from './ui/download.ts';
import { dialogStyle } from './ui/kit/dialog-style.ts';
import { dialogBox } from './ui/kit/dialog.ts';

const SAVE_WORDS: Record<SaveState, string> = {
  saved: 'Saved in this browser.',
  saving: 'Saving…',
  elsewhere: 'Open in another tab: not saved here.',
  failed: 'Not saved: export the project now.',
};

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
  @property({ attribute: false }) saveState: SaveState = 'saved';
  @query('dialog') private dialog!: HTMLDialogElement;

  override connectedCallback(): void {
    super.connectedCallback();
    new StoreController(this, this.store);
  }

  private async openFile(): Promise<void> {
    const [file] = await chooseFiles('.json,application/json', false);
    if (file === undefined) return;
    const read = readProject(await file.text(), file.name);
    if (read.value === null) this.store.tellProblems(read.problems.slice(0, 1));
    else {
      this.store.open(read.value);
      this.store.tell(`${file.name} is open.`, 'news');
    }
    this.dialog.close();
  }

  private async startWith(make: () => Project | Promise<Project>, room: Room, question: string): Promise<void> {
    if (!confirm(question)) return;
    this.store.open(await make());
    this.dialog.close();
    this.store.go(room);
  }

  override render() {
    const { store } = this;
    return html`
      <button class="quiet open" aria-haspopup="dialog" title="Project: ${store.project.title}" @click=${() => this.dialog.showModal()}>
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
          <p class="soft small" role="status">${SAVE_WORDS[this.saveState]}</p>
          <button @click=${() => download(fileNameOf(store.project.title, 'pullstack.json'), writeProject(store.project), 'application/json')}>
            Save as a file
          </button>
          <button @click=${() => void this.openFile()}>Open a project file…</button>
          <button @click=${() => void this.startWith(() => emptyProject(store.project), 'drawer', 'Start with an empty drawer? The open project is replaced; save it as a file first if you want it back.')}>
            Start with an empty drawer
          </button>
          <button @click=${() => void this.startWith(async () => (await import('./demo.ts')).demo(), 'wall', 'Open the demo project? The open project is replaced; save it as a file first if you want it back.')}>
            Open the demo project
          </button>
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
