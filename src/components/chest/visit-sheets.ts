import { html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { VisitHead } from '../../engine/log/types.ts';
import { sentenceOf } from '../../workers/client/client.ts';
import type { AppStore } from '../app-store.ts';
import { LogKeeper } from '../ui/log/log-keeper.ts';
import '../ui/log/log-sheets.ts';
import { StatePictures } from '../ui/print/state-pictures.ts';
import { say } from '../words/en/chest/room.ts';

/** The sheets of one past visit, read when it is opened. */
@customElement('chest-visit-sheets')
export class VisitSheets extends LitElement {
  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) head!: VisitHead;
  /** Only sheets of these recipes; null shows all. */
  @property({ attribute: false }) only: ReadonlySet<string> | null = null;
  private drawn = 0;
  private readonly log = new LogKeeper(this, () => this.store);
  private readonly pictures = new StatePictures(
    this,
    () => this.store.room !== 'chest',
    () => this.store.relative,
    (sentence) => this.store.tell(sentence),
  );

  override connectedCallback(): void {
    super.connectedCallback();
    this.log.resume(this.head).catch((error: unknown) => this.store.tell(say.logOfCouldNot(this.head.title, sentenceOf(error))));
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.pictures.keepOnly(new Set());
  }

  protected override willUpdate(): void {
    this.drawn++;
  }

  override render() {
    if (this.log.head === null) return html`<p>${say.readingLog}</p>`;
    if (this.log.events.length === 0) return nothing;
    return html`<ps-log-sheets .store=${this.store} .log=${this.log} .pictures=${this.pictures} .drawn=${this.drawn} .only=${this.only}></ps-log-sheets>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'chest-visit-sheets': VisitSheets;
  }
}
