import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { LONGEST_NAME } from '../../engine/base/limits.ts';
import { dayLocale } from '../../engine/words/language.ts';
import type { KeptHead } from '../../workers/api/storage-api.ts';
import { sentenceOf } from '../../workers/client/client.ts';
import type { AppStore } from '../app-store.ts';
import type { AutoSaver } from '../saver.ts';
import { controls } from '../ui/controls-style.ts';
import { rowItems } from '../ui/layout-style.ts';
import { say } from '../words/en/keep/room.ts';
import { keptRowsStyle } from './kept-rows-style.ts';
import { duplicate, move, openKept, retitle } from './projects.ts';

const day = new Intl.DateTimeFormat(dayLocale(), { dateStyle: 'medium', timeStyle: 'short' });

/** The other projects of this browser: to open, to duplicate, to rename, to put into the bin. */
@customElement('project-list')
export class ProjectList extends LitElement {
  static override styles = [controls, rowItems, keptRowsStyle];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) saver!: AutoSaver;
  @state() private heads: readonly KeptHead[] = [];
  @state() private renamed: string | null = null;
  @state() private failure = '';

  /** Looks anew at what there is. */
  async read(): Promise<void> {
    try {
      this.heads = (await this.saver.listKept()).filter(({ kind }) => kind === 'project');
      this.failure = '';
    } catch (error) {
      this.failure = say.listOfProjectsCould(sentenceOf(error));
    }
  }

  private async attempt(act: () => Promise<void>): Promise<void> {
    try {
      await act();
    } catch (error) {
      this.store.tell(say.thatCouldNotBe(sentenceOf(error)));
    }
    await this.read();
    this.dispatchEvent(new Event('listed'));
  }

  /** A copy of the open project in the list. */
  duplicateOpen(): Promise<void> {
    return this.attempt(() => duplicate(this, null));
  }

  private async open(head: KeptHead): Promise<void> {
    await this.attempt(async () => {
      if (await openKept(this, head.id, nameOf(head))) this.dispatchEvent(new Event('opened'));
    });
  }

  private rename(head: KeptHead, title: string): Promise<void> {
    this.renamed = null;
    if (title === '' || title === head.title) return Promise.resolve();
    return this.attempt(() => retitle(this, head, title));
  }

  private bin(head: KeptHead): Promise<void> {
    return this.attempt(async () => {
      await move(this, head, 'bin');
      this.store.tell(say.isInBinWhich(nameOf(head)), 'news', {
        label: say.undo,
        act: () => void this.attempt(() => move(this, head, 'project')),
      });
    });
  }

  private titleLine(head: KeptHead) {
    if (this.renamed !== head.id)
      return html`<p><strong>${nameOf(head)}</strong> <span class="soft small">${say.lastOpen(head.reason, day.format(head.atMs))}</span></p>`;
    return html`<label>
      <span class="visually-hidden">${say.newTitleOf(nameOf(head))}</span>
      <input
        type="text"
        maxlength=${LONGEST_NAME}
        .value=${head.title}
        @change=${(event: Event) => void this.rename(head, (event.target as HTMLInputElement).value.trim())}
      />
    </label>`;
  }

  private startRenaming(head: KeptHead): void {
    this.renamed = this.renamed === head.id ? null : head.id;
    void this.updateComplete.then(() => this.renderRoot.querySelector('input')?.select());
  }

  override render() {
    if (this.failure !== '') return html`<p class="small">${this.failure}</p>`;
    if (this.heads.length === 0) return html`<p class="soft small">${say.noOthersYetWhen}</p>`;
    return html`<ul>
      ${this.heads.map(
        (head) => html`<li>
          ${this.titleLine(head)}
          <button aria-label=${say.open(nameOf(head))} @click=${() => void this.open(head)}>${say.open2}</button>
          <button class="quiet" aria-label=${say.duplicate(nameOf(head))} @click=${() => void this.attempt(() => duplicate(this, head))}>${say.duplicate2}</button>
          <button class="quiet" aria-label=${say.rename(nameOf(head))} aria-pressed=${this.renamed === head.id ? 'true' : nothing} @click=${() => this.startRenaming(head)}>${say.rename2}</button>
          <button class="quiet" aria-label=${say.putIntoBin(nameOf(head))} @click=${() => void this.bin(head)}>${say.bin}</button>
        </li>`,
      )}
    </ul>`;
  }
}

function nameOf({ title }: KeptHead): string {
  return title === '' ? say.untitled : title;
}

declare global {
  interface HTMLElementTagNameMap {
    'project-list': ProjectList;
  }
}
