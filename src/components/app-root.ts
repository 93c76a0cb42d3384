import { html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { appRootStyle } from './app-root-style.ts';
import { type AppStore, type Room, ROOMS, StoreController } from './app-store.ts';
import './bench/bench-room.ts';
import './chest/chest-room.ts';
import './drawer/drawer-room.ts';
import './inks/inks-room.ts';
import './lesson/lesson-room.ts';
import './press/press-room.ts';
import './project-menu.ts';
import type { AutoSaver } from './saver.ts';
import { controls } from './ui/controls-style.ts';
import './wall/wall-room.ts';

const ROOM_NAMES: Record<Room, string> = {
  drawer: 'Drawer',
  inks: 'Inks',
  wall: 'Wall',
  bench: 'Bench',
  chest: 'Chest',
  press: 'Press',
  lesson: 'Lesson',
};

function roomOfHash(): Room | null {
  const name = location.hash.slice(1);
  return (ROOMS as readonly string[]).includes(name) ? (name as Room) : null;
}

/** News is read by then; problems stay until they are put away. */
const NEWS_MS = 7000;

/** The studio: its doors, its notices, and the room one stands in. */
@customElement('app-root')
export class AppRoot extends LitElement {
  static override styles = [controls, appRootStyle];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) saver!: AutoSaver;
  /** Rooms stay as they were left, so each is made once, when first entered. */
  private readonly entered = new Set<Room>();
  /** Since when each piece of news is to be read, by id. */
  private readonly newsSince = new Map<number, number>();
  private newsClock: ReturnType<typeof setInterval> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    new StoreController(this, this.store);
    this.store.go(roomOfHash() ?? this.store.room);
    window.addEventListener('hashchange', this.onHash);
    window.addEventListener('keydown', this.onKey);
    window.addEventListener('dragover', this.onStrayDrop);
    window.addEventListener('drop', this.onStrayDrop);
    this.saver.addEventListener('change', this.onSave);
    this.newsClock = setInterval(this.clearNews, 500);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('hashchange', this.onHash);
    window.removeEventListener('keydown', this.onKey);
    window.removeEventListener('dragover', this.onStrayDrop);
    window.removeEventListener('drop', this.onStrayDrop);
    this.saver.removeEventListener('change', this.onSave);
    clearInterval(this.newsClock);
  }

  /** News goes by itself, but not from under a pointer or the focus. */
  private readonly clearNews = (): void => {
    const now = performance.now();
    const held = this.renderRoot.querySelector('.notices:hover, .notices:focus-within') !== null;
    for (const { id, kind } of this.store.notices) {
      if (kind !== 'news') continue;
      const since = this.newsSince.get(id) ?? now;
      this.newsSince.set(id, held ? now : since);
      if (!held && now - since >= NEWS_MS) this.store.putAway(id);
    }
  };

  private readonly onHash = (): void => {
    const room = roomOfHash();
    if (room !== null) this.store.go(room);
  };

  /** A file let go beside its target would otherwise open in place of the app. */
  private readonly onStrayDrop = (event: DragEvent): void => {
    if (!event.defaultPrevented && event.dataTransfer?.types.includes('Files') === true) event.preventDefault();
  };

  private readonly onSave = (): void => {
    if (this.saver.state === 'failed') {
      this.store.tell(`The last change could not be saved (${this.saver.reason}); export the project from its menu, then reload.`);
    }
    this.requestUpdate();
  };

  private readonly onKey = (event: KeyboardEvent): void => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
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
    this.entered.add(this.store.room);
    if (location.hash !== `#${this.store.room}`) history.replaceState(null, '', `#${this.store.room}`);
    document.title = `${this.store.project.title} · Pullstack`;
  }

  private room(room: Room) {
    if (!this.entered.has(room)) return nothing;
    const { store } = this;
    const hidden = store.room !== room;
    switch (room) {
      case 'drawer':
        return html`<drawer-room .store=${store} ?hidden=${hidden}></drawer-room>`;
      case 'inks':
        return html`<inks-room .store=${store} ?hidden=${hidden}></inks-room>`;
      case 'wall':
        return html`<wall-room .store=${store} ?hidden=${hidden}></wall-room>`;
      case 'bench':
        return html`<bench-room .store=${store} ?hidden=${hidden}></bench-room>`;
      case 'chest':
        return html`<chest-room .store=${store} ?hidden=${hidden}></chest-room>`;
      case 'press':
        return html`<press-room .store=${store} ?hidden=${hidden}></press-room>`;
      case 'lesson':
        return html`<lesson-room .store=${store} ?hidden=${hidden}></lesson-room>`;
    }
  }

  override render() {
    const { store } = this;
    return html`
      <header>
        <div class="name">
          <svg viewBox="0 0 22 22" aria-hidden="true">
            <rect x="2" y="2" width="12" height="12" fill="var(--accent)" />
            <rect x="8" y="8" width="12" height="12" fill="var(--ink)" fill-opacity="0.78" />
          </svg>
          Pullstack
        </div>
        <nav aria-label="Rooms">
          ${ROOMS.map((room) => html`<a href="#${room}" aria-current=${store.room === room ? 'page' : nothing}>${ROOM_NAMES[room]}</a>`)}
        </nav>
        <div class="tools">
          <button
            class="quiet"
            ?disabled=${store.undoLabel === null}
            aria-label=${store.undoLabel === null ? 'Undo' : `Undo: ${store.undoLabel}`}
            title=${store.undoLabel === null ? 'Nothing to undo' : `Undo: ${store.undoLabel}`}
            @click=${() => store.undo()}
          >
            <svg viewBox="0 0 20 20" fill="none" stroke="currentColor" stroke-width="1.6" aria-hidden="true">
              <path d="M7 4 3 8l4 4M3 8h9a5 5 0 0 1 0 10H8" />
            </svg>
          </button>
          <button
            class="quiet"
            ?disabled=${store.redoLabel === null}
            aria-label=${store.redoLabel === null ? 'Redo' : `Redo: ${store.redoLabel}`}
            title=${store.redoLabel === null ? 'Nothing to redo' : `Redo: ${store.redoLabel}`}
            @click=${() => store.redo()}
          >
            <svg viewBox="0 0 20 20" fill="none" stroke="currentColor" stroke-width="1.6" aria-hidden="true">
              <path d="m13 4 4 4-4 4m4-4H8a5 5 0 0 0 0 10h4" />
            </svg>
          </button>
          <project-menu .store=${store} .saveState=${this.saver.state}></project-menu>
        </div>
      </header>
      <main>${ROOMS.map((room) => this.room(room))}</main>
      <div class="notices" role="status" aria-live="polite">
        ${repeat(
          store.notices,
          (notice) => notice.id,
          (notice) => html`<div class="notice">
            <p>${notice.text}</p>
            <button class="quiet" aria-label="Put away" @click=${() => store.putAway(notice.id)}>✕</button>
          </div>`,
        )}
      </div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'app-root': AppRoot;
  }
}
