import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { emptyProject } from '../engine/project/empty.ts';
import type { Project } from '../engine/project/types.ts';
import { type Language, LANGUAGES, language } from '../engine/words/language.ts';
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
import { say } from './words/en/app/frame.ts';

/** The project as a whole: its title, its file, the other projects, a fresh start. */
@customElement('project-menu')
export class ProjectMenu extends LitElement {
  static override styles = [
    controls,
    dialogStyle,
    css`
      a {
        color: inherit;
      }
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
    else this.store.tell(say.isSpokenWhenThis(LANGUAGES[chosen].name));
  }

  private show(): void {
    this.dialog.showModal();
    void this.kept.read();
    void this.list.read();
    void roomUsed().then((words) => (this.room = words));
  }

  private get saveWords(): string {
    return saveWarning(this.saver) ?? (this.saveState === 'saving' ? say.saving : say.savedInThisBrowser);
  }

  override render() {
    const { store } = this;
    const place = savedIn(store.opened);
    return html`
      <button class="quiet open" aria-haspopup="dialog" title=${say.project(store.project.title)} @click=${() => this.show()}>
        <span>${store.project.title}</span>
      </button>
      ${dialogBox(
        { heading: say.project2, closable: true },
        html`<div class="lines">
          <label class="title">
            ${say.title}
            <input
              type="text"
              .value=${store.project.title}
              @change=${(event: Event) => store.dispatch({ kind: 'rename', title: (event.target as HTMLInputElement).value })}
            />
          </label>
          <p class="soft small" role="status">${this.saveWords} ${copyWords()}</p>
          <div class="row">
            <button @click=${() => void this.save('the same')}>${place === null ? say.saveAsFile : say.saveIn(place)}</button>
            ${place === null ? nothing : html`<button @click=${() => void this.save('another')}>${say.saveAsAnotherFile}</button>`}
            <button @click=${() => void this.openFile()}>${say.openFile}</button>
          </div>
          ${this.file.line()}
          <p class="soft small">${say.fileHoldsProjectIts}</p>
          <h3>${say.otherProjects}</h3>
          <project-list .store=${store} .saver=${this.saver} @opened=${() => this.dialog.close()} @listed=${() => void this.kept.read()}></project-list>
          <div class="row">
            <button @click=${() => void this.startWith(() => emptyProject(store.project), 'drawer', say.emptyProjectIsOpen)}>${say.newEmpty}</button>
            <button @click=${() => void this.startWith(async () => (await import('./demo.ts')).demo(), 'wall', say.demoProjectIsOpen)}>
              ${say.newFromDemo}
            </button>
            <button @click=${() => void this.list.duplicateOpen()}>${say.duplicateThisOne}</button>
          </div>
          <ps-fold ruled label=${say.earlierCopiesBinAnd}>
            <kept-list .store=${store} .saver=${this.saver} @opened=${() => this.dialog.close()} @listed=${() => void this.list.read()}></kept-list>
          </ps-fold>
          ${this.room === null ? nothing : html`<p class="soft small">${this.room}</p>`}
          ${missingHere().map((sentence) => html`<p class="soft small">${sentence}</p>`)}
          <label class="row">
            ${say.language}
            <select @change=${(event: Event) => void this.speak((event.target as HTMLSelectElement).value as Language)}>
              ${Object.entries(LANGUAGES).map(([tag, { name }]) => html`<option value=${tag} lang=${tag} ?selected=${tag === language()}>${name}</option>`)}
            </select>
          </label>
          <a class="small" href="licences.txt" target="_blank" rel="noopener">${say.licences}</a>
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
