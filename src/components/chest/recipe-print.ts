import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { defined } from '../../engine/base/at.ts';
import { pulledInks } from '../../engine/recipe/chest/sorted-recipes.ts';
import { lineageSentence } from '../../engine/recipe/lineage.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import { writeRecipe } from '../../engine/recipe/write.ts';
import type { Picture } from '../../workers/api/picture-api.ts';
import { sentenceOf } from '../../workers/client/client.ts';
import { type AppStore, StoreController } from '../app-store.ts';
import { controls } from '../ui/controls-style.ts';
import '../ui/kit/ink-chip.ts';
import '../ui/next/next-button.ts';
import { download, fileNameOf } from '../ui/download.ts';
import { keepNext, recipeSheet } from '../ui/next/next-sheets.ts';
import '../ui/next/offered-names.ts';
import type { Unnamed } from '../ui/next/offered-names.ts';
import '../ui/print/picture-out.ts';
import type { NextChoice } from '../ui/next/what-next.ts';
import '../ui/print/picture-view.ts';
import type { PictureOut } from '../ui/print/picture-out.ts';
import { say } from '../words/en/chest/room.ts';
import { printStyles } from './print-style.ts';
import './visit-edition.ts';
import { recipePicture, recipeStudio } from './recipe-pictures.ts';
import { ticketTable } from './ticket-table.ts';
import type { VisitEdition } from './visit-edition.ts';

const HEIGHT_PX = 760;
const FIRST_SHEETS = 5;

/** A kept recipe, pinned up, with what can be done with it. */
@customElement('chest-print')
export class RecipePrint extends LitElement {
  static override styles = [controls, printStyles];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) recipe!: Recipe;
  @property({ type: Boolean, reflect: true }) opened = false;
  @state() private picture: Picture | null = null;
  @state() private fault = '';
  /** What names are offered for; null while none are asked for. */
  @state() private unnamed: Unnamed | null = null;
  /** What the picture shown was drawn from. */
  private shown: { pulls: Recipe['pulls']; relative: boolean } | null = null;
  private inSight = false;
  private watcher: IntersectionObserver | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    new StoreController(this, this.store);
    this.watcher = new IntersectionObserver(
      (entries) => {
        this.inSight = defined(entries.at(-1)).isIntersecting;
        this.draw();
      },
      { rootMargin: '400px' },
    );
    this.watcher.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.watcher?.disconnect();
  }

  protected override shouldUpdate(): boolean {
    return this.store.room === 'chest';
  }

  protected override updated(): void {
    this.draw();
  }

  private draw(): void {
    if (!this.inSight) return;
    const { recipe } = this;
    const { relative } = this.store;
    if (this.shown?.pulls === recipe.pulls && this.shown.relative === relative) return;
    this.shown = { pulls: recipe.pulls, relative };
    recipePicture(recipe, HEIGHT_PX, relative).then(
      (picture) => {
        if (this.shown?.pulls !== recipe.pulls || this.shown.relative !== relative) return;
        this.picture = picture;
        this.fault = '';
      },
      (error: unknown) => {
        if (this.shown?.pulls === recipe.pulls) this.fault = sentenceOf(error);
      },
    );
  }

  private open(): void {
    if (this.store.dispatch({ kind: 'open-recipe', recipe: this.recipe.id })) this.store.go('bench');
  }

  private take(): void {
    const { visit } = this.store.project;
    const { id, title } = this.recipe;
    if (this.store.dispatch({ kind: 'set-visit', runs: [...visit, { recipe: id, sheets: FIRST_SHEETS }] })) {
      this.store.tell(say.isAtPressWith(title, FIRST_SHEETS), 'news');
    }
  }

  private removeRecipe(): void {
    const { id, title } = this.recipe;
    if (this.store.dispatch({ kind: 'remove-recipe', recipe: id })) this.store.tell(say.isOutOfChest(title), 'news');
  }

  private describe(change: { title?: string; note?: string }): void {
    this.store.dispatch({ kind: 'change-recipe', recipe: this.recipe.id, ...change });
  }

  private takeName(title: string): void {
    this.unnamed = null;
    this.describe({ title });
    this.renderRoot.querySelector<HTMLInputElement>('.title')?.focus();
  }

  private madeWords(): string {
    const { parent } = this.recipe;
    if (parent === undefined) return say.madeByHandOn;
    const from = this.store.project.recipes.find((entry) => entry.id === parent);
    return from === undefined ? say.cameFromAnotherRecipe : say.cameFrom(from.title);
  }

  override render() {
    const { recipe } = this;
    const { paper } = recipe;
    const inks = pulledInks(recipe);
    const run = this.store.project.visit.find((entry) => entry.recipe === recipe.id);
    return html`
      <div class="hung">
        <span class="pin" aria-hidden="true"></span>
        <div class="paper" style="aspect-ratio:${paper.widthMm} / ${paper.heightMm}">
          ${this.picture === null ? html`<p class="soft small">${this.fault === '' ? say.drawing : this.fault}</p>` : html`<ps-picture .picture=${this.picture} label=${recipe.title}></ps-picture>`}
        </div>
      </div>
      <div class="words">
        <label>
          <span class="visually-hidden">${say.title}</span>
          <input class="title" type="text" title=${recipe.title} .value=${recipe.title} @change=${(event: Event) => this.describe({ title: (event.target as HTMLInputElement).value.trim() || recipe.title })} />
        </label>
        ${
          this.unnamed === null
            ? nothing
            : html`<ps-offered-names .of=${this.unnamed} @take=${({ detail }: CustomEvent<string>) => this.takeName(detail)}></ps-offered-names>`
        }
        <p class="facts soft small">
          ${say.pullsScreensInksMm({ pulls: recipe.pulls.length, screens: recipe.screens.length, inks: inks.length, widthMm: paper.widthMm, heightMm: paper.heightMm })}
        </p>
        ${recipe.labels === undefined ? nothing : html`<p class="small">${recipe.labels.join(' · ')}</p>`}
        <p class="chips">${inks.map((ink) => html`<ps-ink-chip .ink=${ink} title=${ink.name}></ps-ink-chip>`)}</p>
        <label>
          <span class="visually-hidden">${say.note}</span>
          <textarea class="note small" rows="1" placeholder=${say.addNote} .value=${recipe.note} @change=${(event: Event) => this.describe({ note: (event.target as HTMLTextAreaElement).value.trim() })}></textarea>
        </label>
        <p class="soft small">${recipe.index < 0 ? this.madeWords() : lineageSentence(recipe.lineage ?? { seed: recipe.seed, index: recipe.index })}</p>
        <div class="row actions">
          <button class="first" @click=${this.open}>${say.openOnBench}</button>
          <button @click=${run === undefined ? this.take : () => this.store.go('press')}>${run === undefined ? say.takeToPress : say.atPressSheets(run.sheets)}</button>
        </div>
        <div class="row quiet-actions small">
          <ps-next quiet .sheetOf=${() => recipeSheet(this.store, recipe)} @take=${({ detail }: CustomEvent<NextChoice>) => keepNext(this.store, recipe, detail)}></ps-next>
          <button class="quiet" aria-expanded=${this.unnamed !== null} @click=${() => (this.unnamed = this.unnamed === null ? { studio: recipeStudio(recipe), pulls: recipe.pulls } : null)}>${say.offerNames}</button>
          <button class="quiet" aria-expanded=${this.opened} @click=${() => this.dispatchEvent(new CustomEvent('unfold'))}>${say.howItIsBuilt}</button>
          <button class="quiet" @click=${() => defined(this.renderRoot.querySelector<VisitEdition>('chest-edition')).show()}>${say.edition}</button>
          <button class="quiet" @click=${() => download(fileNameOf(recipe.title, 'recipe.json'), writeRecipe(recipe), 'application/json')}>${say.saveAsFile}</button>
          <button class="quiet" @click=${() => defined(this.renderRoot.querySelector<PictureOut>('ps-picture-out')).show(recipe, say.asPicture(recipe.title))}>${say.saveAsPicture}</button>
          <button class="quiet" @click=${this.removeRecipe}>${say.remove}</button>
        </div>
      </div>
      <ps-picture-out .relative=${this.store.relative}></ps-picture-out>
      <chest-edition .store=${this.store} .recipe=${recipe}></chest-edition>
      ${this.opened ? html`<div class="built">${ticketTable(recipe)}</div>` : nothing}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'chest-print': RecipePrint;
  }
}
