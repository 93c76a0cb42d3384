import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { dayLocale } from '../../engine/words/language.ts';
import type { KeptHead } from '../../workers/api/storage-api.ts';
import { sentenceOf } from '../../workers/client/client.ts';
import type { AppStore } from '../app-store.ts';
import type { AutoSaver } from '../saver.ts';
import { controls } from '../ui/controls-style.ts';
import { download, fileNameOf } from '../ui/download.ts';
import { rowItems } from '../ui/layout-style.ts';
import { say } from '../words/en/keep/room.ts';
import { keptRowsStyle } from './kept-rows-style.ts';
import { move, openKept } from './projects.ts';
import { ORDER_SECTION } from './replace-project.ts';

const KIND_WORDS: Record<KeptHead['kind'], string> = {
  project: say.project,
  bin: say.inBin,
  copy: say.copy,
  unreadable: say.partsOfItCould,
  replaced: say.putAside,
};

const moment = new Intl.DateTimeFormat(dayLocale(), { dateStyle: 'medium', timeStyle: 'short' });

/** Earlier copies of the project, and what was put aside: to open, to save as a file, to delete. */
@customElement('kept-list')
export class KeptList extends LitElement {
  static override styles = [controls, rowItems, keptRowsStyle];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) saver!: AutoSaver;
  @state() private heads: readonly KeptHead[] = [];
  @state() private failure = '';

  /** Looks anew at what is kept. */
  async read(): Promise<void> {
    try {
      this.heads = (await this.saver.listKept()).filter(({ kind }) => kind !== 'project');
      this.failure = '';
    } catch (error) {
      this.failure = say.earlierCopiesCouldNot(sentenceOf(error));
    }
  }

  private async sectionsOf(head: KeptHead): Promise<Record<string, unknown>> {
    const sections = await this.saver.readKept(head.id);
    if (sections === null) throw new Error(say.itIsNoLonger);
    return sections;
  }

  private async attempt(head: KeptHead, act: () => Promise<void>): Promise<void> {
    try {
      await act();
    } catch (error) {
      this.store.tell(say.couldNotBeRead(nameOf(head), sentenceOf(error)));
    }
    await this.read();
  }

  private open(head: KeptHead): Promise<void> {
    return this.attempt(head, async () => {
      // A copy stays what it was of that time.
      if (await openKept(this, head.id, nameOf(head), head.kind === 'bin')) this.dispatchEvent(new Event('opened'));
    });
  }

  private async putBack(head: KeptHead): Promise<void> {
    await this.attempt(head, () => move(this, head, 'project'));
    this.dispatchEvent(new Event('listed'));
  }

  private save(head: KeptHead): Promise<void> {
    return this.attempt(head, async () => {
      const { [ORDER_SECTION]: _order, ...sections } = await this.sectionsOf(head);
      const text = `${JSON.stringify(sections)}\n`;
      download(fileNameOf(`${head.title} ${head.kind}`, 'pullstack.json'), text, 'application/json');
    });
  }

  private drop(head: KeptHead): Promise<void> {
    if (!confirm(say.deleteForGood(nameOf(head)))) return Promise.resolve();
    return this.attempt(head, () => this.saver.dropKept(head.id));
  }

  override render() {
    if (this.failure !== '') return html`<p class="small">${this.failure}</p>`;
    if (this.heads.length === 0) return html`<p class="soft small">${say.noneYetFirstIs}</p>`;
    return html`<ul>
      ${this.heads.map(
        (head) => html`<li>
          <p>${nameOf(head)} <span class="soft">${KIND_WORDS[head.kind]}</span></p>
          ${head.reason === '' ? nothing : html`<p class="soft small">${head.reason}</p>`}
          ${head.kind === 'bin' ? html`<button aria-label=${say.putBackIntoList(nameOf(head))} @click=${() => void this.putBack(head)}>${say.putBack}</button>` : nothing}
          <button aria-label=${say.open(nameOf(head))} @click=${() => void this.open(head)}>${say.open2}</button>
          <button aria-label=${say.saveAsFile(nameOf(head))} @click=${() => void this.save(head)}>${say.saveAsFile2}</button>
          <button class="quiet" aria-label=${say.delete(nameOf(head))} @click=${() => void this.drop(head)}>${say.delete2}</button>
        </li>`,
      )}
    </ul>`;
  }
}

function nameOf({ title, atMs }: KeptHead): string {
  return `${title === '' ? say.untitled : title}, ${moment.format(atMs)}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'kept-list': KeptList;
  }
}
