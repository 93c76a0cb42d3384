import { html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { appRootStyle } from './app-root-style.ts';
import { type AppStore, type Notice, StoreController } from './app-store.ts';
import { openProjectFile } from './keep/open-file.ts';
import './help/first-steps.ts';
import './keep/save-strip.ts';
import './project-menu.ts';
import { fetchRoom } from './room-code.ts';
import { type Room, roomAt, type RoomEntry, roomEntry, ROOMS } from './rooms.ts';
import type { AutoSaver } from './saver.ts';
import { controls } from './ui/controls-style.ts';
import { FileReading } from './ui/files/file-reading.ts';
import { isProjectFile } from './ui/files/project-file.ts';
import { beginningOf } from './ui/kit/begin.ts';
import { notFetched } from './ui/kit/late.ts';
import { isTyped } from './ui/kit/typed-key.ts';
import { say } from './words/en/app/frame.ts';

/** News is read by then; problems stay until they are closed or settled. */
const NEWS_MS = 7000;
/** News that something can be done about stays longer, and so does what was refused. */
const ACTION_MS = 30_000;

/** The studio: its doors, its notices, and the room one stands in. */
@customElement('app-root')
export class AppRoot extends LitElement {
  static override styles = [controls, appRootStyle];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) saver!: AutoSaver;
  private readonly file = new FileReading(this);
  /** Rooms stay as they were left, so each is made once, when first entered. */
  private readonly entered = new Map<Room, HTMLElement>();
  /** The rooms whose code was asked for. */
  private readonly asked = new Set<Room>();
  /** Since when each piece of news is to be read, by id. */
  private readonly newsSince = new Map<number, number>();
  /** What the page's address was last made to end in. */
  private address = '';
  private shownRoom: Room | null = null;
  private newsClock: ReturnType<typeof setInterval> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    new StoreController(this, this.store);
    this.store.go(roomAt(location.hash) ?? this.store.room);
    window.addEventListener('hashchange', this.onHash);
    window.addEventListener('keydown', this.onKey);
    window.addEventListener('dragover', this.onStrayDrop);
    window.addEventListener('drop', this.onStrayDrop);
    this.saver.addEventListener('change', this.onSave);
    this.saver.addEventListener('tell', this.onTell);
    this.newsClock = setInterval(this.clearNews, 500);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('hashchange', this.onHash);
    window.removeEventListener('keydown', this.onKey);
    window.removeEventListener('dragover', this.onStrayDrop);
    window.removeEventListener('drop', this.onStrayDrop);
    this.saver.removeEventListener('change', this.onSave);
    this.saver.removeEventListener('tell', this.onTell);
    clearInterval(this.newsClock);
  }

  /** News and refusals go by themselves, but not from under a pointer or the focus. */
  private readonly clearNews = (): void => {
    const now = performance.now();
    for (const id of this.newsSince.keys()) if (!this.store.notices.some((notice) => notice.id === id)) this.newsSince.delete(id);
    const held = this.renderRoot.querySelector('.notices:hover, .notices:focus-within') !== null;
    for (const { id, kind, action, untilMs } of this.store.notices) {
      if (kind !== 'news' && untilMs === undefined) continue;
      const stayMs = kind === 'news' && action === undefined ? NEWS_MS : ACTION_MS;
      const since = this.newsSince.get(id) ?? now;
      this.newsSince.set(id, held ? now : since);
      if (!held && now - since >= stayMs) this.store.closeNotice(id);
    }
  };

  private readonly onHash = (event: HashChangeEvent): void => {
    const room = roomAt(new URL(event.newURL).hash);
    if (room !== null) this.store.go(room);
  };

  /** A file let go beside its target would otherwise open in place of the app; a project opens wherever it is let go. */
  private readonly onStrayDrop = (event: DragEvent): void => {
    if (event.defaultPrevented || event.dataTransfer?.types.includes('Files') !== true) return;
    event.preventDefault();
    if (event.type !== 'drop') return;
    const files = [...event.dataTransfer.files];
    const project = files.find(isProjectFile);
    if (project !== undefined) void openProjectFile(this, project, this.file);
    else if (files[0] !== undefined) this.store.refuse(say.thisRoomTakesNo(files[0].name));
  };

  private readonly onSave = (): void => this.requestUpdate();

  private readonly onTell = (event: Event): void => this.store.tell(String((event as CustomEvent<unknown>).detail));

  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.altKey || event.defaultPrevented) return;
    if (event.key === '?' && !event.ctrlKey && !event.metaKey && !isTyped(event)) {
      event.preventDefault();
      void this.help();
    }
    if (!(event.ctrlKey || event.metaKey)) return;
    const inField = event
      .composedPath()
      .some(
        (target) =>
          target instanceof HTMLElement && (target.matches('textarea') || (target instanceof HTMLInputElement && target.type === 'text')),
      );
    if (inField) return;
    const key = event.key.toLowerCase();
    if (key === 'z') {
      event.preventDefault();
      if (event.shiftKey) this.store.redo();
      else this.store.undo();
    } else if (key === 'y') {
      event.preventDefault();
      this.store.redo();
    }
  };

  protected override willUpdate(): void {
    const { address } = roomEntry(this.store.room);
    // Only when the room has changed: an address that differs otherwise is a link whose hashchange is on its way.
    if (this.address !== address) {
      this.address = address;
      if (location.hash !== address) history.replaceState(null, '', address);
    }
    document.title = `${roomEntry(this.store.room).label} · ${this.store.project.title} · Pullstack`;
  }

  /** Makes a room's element as soon as its code has come. */
  private async make({ id, element }: RoomEntry & { id: Room }): Promise<void> {
    this.asked.add(id);
    try {
      await fetchRoom(id);
      this.entered.set(id, Object.assign(document.createElement(element), { store: this.store }));
      this.requestUpdate();
    } catch {
      this.store.tell(notFetched(say.thisRoom));
    }
  }

  /** Fetched when it is first asked for. */
  private readonly help = async (): Promise<void> => {
    try {
      await import('./help/help-dialog.ts');
      await this.renderRoot.querySelector('ps-help')?.show();
    } catch {
      this.store.tell(notFetched(say.help));
    }
  };

  /** Past the doors and tools; the address names the room, so that no fragment can do it. */
  private readonly skip = (event: Event): void => {
    event.preventDefault();
    const room = this.entered.get(this.store.room);
    const begin = room?.shadowRoot === undefined || room.shadowRoot === null ? null : beginningOf(room.shadowRoot);
    (begin ?? this.renderRoot.querySelector('main'))?.focus();
  };

  /** Whoever leaves a room by something in it would stand nowhere, as that goes with the room. */
  private keepFocus(): void {
    const { room } = this.store;
    const before = this.shownRoom;
    this.shownRoom = room;
    if (before === null || before === room) return;
    const active = this.shadowRoot?.activeElement ?? null;
    if (active === null || (active instanceof HTMLElement && active.hidden))
      this.renderRoot.querySelector('main')?.focus({ preventScroll: true });
  }

  protected override updated(): void {
    this.keepFocus();
  }

  private rooms() {
    const { room } = this.store;
    if (!this.asked.has(room)) void this.make(roomEntry(room));
    return ROOMS.map(({ id }) => {
      const made = this.entered.get(id);
      made?.toggleAttribute('hidden', id !== room);
      return made;
    });
  }

  private renderNotices() {
    const { store } = this;
    return html`<div class="notices" role="status" aria-live="polite">
      ${repeat(
        store.notices,
        (notice) => notice.id,
        (notice) => html`<div class="notice">
          <p>${notice.text}</p>
          ${notice.action === undefined ? nothing : html`<button class="quiet" @click=${() => this.actOn(notice)}>${notice.action.label}</button>`}
          <button class="quiet" aria-label=${say.close} @click=${() => store.closeNotice(notice.id)}>✕</button>
        </div>`,
      )}
    </div>`;
  }

  private actOn({ id, action }: Notice): void {
    this.store.closeNotice(id);
    action?.act();
  }

  override render() {
    const { store } = this;
    const { address, label } = roomEntry(store.room);
    return html`
      <header>
        <a class="skip" tabindex="0" href=${address} @click=${this.skip}>${say.skipTo(label)}</a>
        <div class="name">
          <svg viewBox="0 0 22 22" aria-hidden="true">
            <rect x="2" y="2" width="12" height="12" fill="var(--accent)" />
            <rect x="8" y="8" width="12" height="12" fill="var(--ink)" fill-opacity="0.78" />
          </svg>
          Pullstack
        </div>
        <nav aria-label=${say.rooms}>
          ${ROOMS.map(({ id, address, label, help }) => html`<a tabindex="0" href=${address} title=${help} aria-current=${store.room === id ? 'page' : nothing}>${label}</a>`)}
        </nav>
        <div class="tools">
          <button
            class="quiet"
            ?disabled=${store.undoLabel === null}
            aria-label=${store.undoLabel === null ? say.undo : say.undoUndoLabel(store.undoLabel)}
            title=${store.undoLabel === null ? say.nothingToUndo : say.undoUndoLabel(store.undoLabel)}
            @click=${() => store.undo()}
          >
            <svg viewBox="0 0 20 20" fill="none" stroke="currentColor" stroke-width="1.6" aria-hidden="true">
              <path d="M7 4 3 8l4 4M3 8h9a5 5 0 0 1 0 10H8" />
            </svg>
          </button>
          <button
            class="quiet"
            ?disabled=${store.redoLabel === null}
            aria-label=${store.redoLabel === null ? say.redo : say.redoRedoLabel(store.redoLabel)}
            title=${store.redoLabel === null ? say.nothingToRedo : say.redoRedoLabel(store.redoLabel)}
            @click=${() => store.redo()}
          >
            <svg viewBox="0 0 20 20" fill="none" stroke="currentColor" stroke-width="1.6" aria-hidden="true">
              <path d="m13 4 4 4-4 4m4-4H8a5 5 0 0 0 0 10h4" />
            </svg>
          </button>
          <button class="quiet help" aria-label=${say.help} title=${say.whatOneDoesHere} @click=${this.help}>?</button>
          <project-menu .store=${store} .saver=${this.saver} .saveState=${this.saver.state}></project-menu>
        </div>
      </header>
      <div class="strips">
        <save-strip .store=${store} .saver=${this.saver}></save-strip>
        <first-steps .store=${store}></first-steps>
      </div>
      <main tabindex="-1">
        <h1 class="visually-hidden">${label}</h1>
        ${this.rooms()}
      </main>
      ${this.file.line()} ${this.renderNotices()}
      <ps-help .room=${store.room}></ps-help>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'app-root': AppRoot;
  }
}
