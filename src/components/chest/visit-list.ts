import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { VisitHead } from '../../engine/log/types.ts';
import { type RelatedRecipes, relatedRecipes } from '../../engine/recipe/related-recipes.ts';
import { sentenceOf } from '../../workers/client/client.ts';
import { type AppStore, StoreController } from '../app-store.ts';
import { controls } from '../ui/controls-style.ts';
import { FileReading } from '../ui/files/file-reading.ts';
import { restoreLogs } from '../ui/log/log-files.ts';
import { beganWords } from '../words/edition-words.ts';
import './visit-sheets.ts';
import { say } from '../words/en/chest/room.ts';

/** The visits in which something was pulled, first to last, also those of other projects. */
@customElement('chest-visits')
export class VisitList extends LitElement {
  static override styles = [
    controls,
    css`
      section {
        margin-top: 72px;
      }
      header {
        margin-bottom: var(--space-7);
        justify-content: space-between;
      }
      header label {
        min-width: 0;
        max-width: 100%;
        white-space: nowrap;
      }
      header select {
        min-width: 0;
        text-overflow: ellipsis;
      }
      details {
        border-top: 1px solid var(--line);
      }
      summary {
        min-height: var(--touch);
        padding: var(--space-5) 0;
        cursor: pointer;
      }
      chest-visit-sheets {
        display: block;
        padding: var(--space-4) 0 var(--space-10);
      }
    `,
  ];

  @property({ attribute: false }) store!: AppStore;
  @state() private visits: readonly VisitHead[] = [];
  @state() private opened: ReadonlySet<string> = new Set();
  /** The print whose sheets are followed through the visits, by the id of its related recipes. */
  @state() private only = '';
  private inside = false;
  private readonly file = new FileReading(this);

  override connectedCallback(): void {
    super.connectedCallback();
    new StoreController(this, this.store);
  }

  protected override willUpdate(): void {
    const inside = this.store.room === 'chest';
    if (inside && !this.inside) void this.read();
    this.inside = inside;
  }

  private async read(): Promise<void> {
    try {
      const visits = (await this.store.saver.readVisits?.()) ?? [];
      this.visits = visits.sort((a, b) => a.begunMs - b.begunMs || (a.id < b.id ? -1 : 1));
    } catch (error) {
      this.store.tell(say.pastVisitsCouldNot(sentenceOf(error)));
    }
  }

  private toggle(id: string, open: boolean): void {
    if (open === this.opened.has(id)) return;
    const opened = new Set(this.opened);
    if (open) opened.add(id);
    else opened.delete(id);
    this.opened = opened;
  }

  private get groups(): RelatedRecipes[] {
    const printed = new Set(this.visits.flatMap((visit) => visit.recipes.map((recipe) => recipe.id)));
    // What a visit printed can come from a recipe that only the Chest knows, and the other way round.
    return relatedRecipes([...this.visits.flatMap((visit) => visit.recipes), ...this.store.project.recipes]).filter((group) =>
      [...group.members].some((id) => printed.has(id)),
    );
  }

  private follow(id: string): void {
    this.only = id;
    const group = this.groups.find((entry) => entry.id === id);
    // Related recipes are looked at side by side.
    if (group !== undefined) this.opened = new Set(this.visits.filter((visit) => prints(visit, group)).map((visit) => visit.id));
  }

  override render() {
    const restore = html`<button @click=${() => void restoreLogs(this.store, this.file).then(() => this.read())}>${say.bringInLogFrom}</button>`;
    if (this.visits.length === 0) return html`<section>${restore}</section>`;
    const { groups } = this;
    const group = groups.find((entry) => entry.id === this.only);
    const visits = this.visits.filter((visit) => group === undefined || prints(visit, group));
    return html`<section aria-labelledby="visits">
      <header class="row">
        <h2 id="visits">${say.visits}</h2>
        <label
          >${say.sheetsOf}
          <select @change=${(event: Event) => this.follow((event.target as HTMLSelectElement).value)}>
            <option value="">${say.everyPrint}</option>
            ${groups.map(({ id, title, members }) => html`<option value=${id} ?selected=${id === this.only}>${say.andRelatedRecipes(title, members.size > 1)}</option>`)}
          </select></label
        >
        ${restore}
      </header>
      ${repeat(
        visits,
        (visit) => visit.id,
        (
          visit,
        ) => html`<details .open=${this.opened.has(visit.id)} @toggle=${(event: Event) => this.toggle(visit.id, (event.target as HTMLDetailsElement).open)}>
          <summary>
            <strong>${visit.title}</strong>, ${beganWords(visit)}
            <span class="soft">${say.sheetsSheets(visit.sheets.length)}</span>
          </summary>
          ${this.opened.has(visit.id) ? html`<chest-visit-sheets .store=${this.store} .head=${visit} .only=${group?.members ?? null}></chest-visit-sheets>` : nothing}
        </details>`,
      )}
    </section>`;
  }
}

function prints(visit: VisitHead, group: RelatedRecipes): boolean {
  return visit.recipes.some((recipe) => group.members.has(recipe.id));
}

declare global {
  interface HTMLElementTagNameMap {
    'chest-visits': VisitList;
  }
}
