import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { type Language, LANGUAGES, language } from '../engine/base/language.ts';
import { emptyProject } from '../engine/project/empty.ts';
import type { Project } from '../engine/project/types.ts';
import { type AppStore, StoreController } from './app-store.ts';
import './keep/kept-list.ts';
import { copyWords } from './keep/copies/copies-noted.ts';
import { roomUsed } from './keep/copies/room-used.ts';
import type { KeptList } from './keep/kept-list.ts';
import { missingHere } from './keep/missing-here.ts';
import './keep/project-list.ts';
import { openProjectFile } from './keep/open-file.ts';
import type { ProjectList } from './keep/project-list.ts';
import { openInstead } from './keep/projects.ts';
import { saveWarning } from './keep/save-strip.ts';
import { saveProjectFile } from './keep/visit-files.ts';
import { chooseLanguage } from './language.ts';
import type { Room } from './rooms.ts';
import type { AutoSaver, SaveState } from './saver.ts';
import { controls } from './ui/controls-style.ts';
import { chooseFiles } from './ui/download.ts';
import { FileReading } from './ui/files/file-reading.ts';
import { savedIn } from './ui/files/save-file.ts';
import { dialogStyle } from './ui/kit/dialog-style.ts';
import { dialogBox } from './ui/kit/dialog.ts';
import './ui/kit/fold.ts';

/** The project as a whole: its title, its file, the other projects, a fresh start. */
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
        --dialog-width: 520px;
      }
      .lines {
        display: grid;
        gap: var(--space-5);
      }
      h3 {
        margin: var(--space-4) 0 0;
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
  @query('project-list') private list!: ProjectList;
  @state() private room: string | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    new StoreController(this, this.store);
  }

  private async openFile(): Promise<void> {
    const [file] = await chooseFiles('.json,.zip,application/json,application/zip', false);
    if (file !== undefined && (await openProjectFile(this, file, this.file))) this.dialog.close();
  }

  private async startWith(make: () => Project | Promise<Project>, room: Room, news: string): Promise<void> {
    if (!(await openInstead(this, await make(), news))) return;
    this.dialog.close();
    this.store.go(room);
  }

  private async save(to: 'the same' | 'another'): Promise<void> {
    await saveProjectFile(this.store, to);
    this.requestUpdate();
  }

  /** Words are taken when the page is loaded; it is loaded anew when all is written, and where nothing is written it stays. */
  private async speak(chosen: Language): Promise<void> {
    chooseLanguage(chosen);
    if (await this.saver.settled()) location.reload();
    else this.store.tell(`${LANGUAGES[chosen].name} is spoken when this page is loaded anew. What was changed here is not saved yet.`);
  }

  private show(): void {
    this.dialog.showModal();
    void this.kept.read();
    void this.list.read();
    void roomUsed().then((words) => (this.room = words));
  }

  private get saveWords(): string {
    return saveWarning(this.saver) ?? (this.saveState === 'saving' ? 'Saving…' : 'Saved in this browser.');
  }

  override render() {
    const { store } = this;
    const place = savedIn(store.opened);
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
          <p class="soft small" role="status">${this.saveWords} ${copyWords()}</p>
          <div class="row">
            <button @click=${() => void this.save('the same')}>${place === null ? 'Save as a file' : `Save in ${place}`}</button>
            ${place === null ? nothing : html`<button @click=${() => void this.save('another')}>Save as another file…</button>`}
            <button @click=${() => void this.openFile()}>Open a file…</button>
          </div>
          ${this.file.line()}
          <p class="soft small">The file holds the project, its drawings, its pull order and its log. A file can also be dropped on any room.</p>
          <h3>Other projects</h3>
          <project-list .store=${store} .saver=${this.saver} @opened=${() => this.dialog.close()} @listed=${() => void this.kept.read()}></project-list>
          <div class="row">
            <button @click=${() => void this.startWith(() => emptyProject(store.project), 'drawer', 'An empty project is open')}>New, empty</button>
            <button @click=${() => void this.startWith(async () => (await import('./demo.ts')).demo(), 'wall', 'The demo project is open')}>
              New, from the demo
            </button>
            <button @click=${() => void this.list.duplicateOpen()}>Duplicate this one</button>
          </div>
          <ps-fold ruled label="Earlier copies, the bin, and what was put aside">
            <kept-list .store=${store} .saver=${this.saver} @opened=${() => this.dialog.close()} @listed=${() => void this.list.read()}></kept-list>
          </ps-fold>
          ${this.room === null ? nothing : html`<p class="soft small">${this.room}</p>`}
          ${missingHere().map((sentence) => html`<p class="soft small">${sentence}</p>`)}
          <label class="row">
            Language
            <select @change=${(event: Event) => void this.speak((event.target as HTMLSelectElement).value as Language)}>
              ${Object.entries(LANGUAGES).map(([tag, { name }]) => html`<option value=${tag} lang=${tag} ?selected=${tag === language()}>${name}</option>`)}
            </select>
          </label>
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
