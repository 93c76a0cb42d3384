import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { CARD, type Grounds } from '../../../engine/ink/characterise/card.ts';
import type { InkDraft } from '../../../engine/ink/characterise/ink-draft.ts';
import { reread } from '../../../engine/ink/characterise/reread.ts';
import { type DriftLine, inkDrift } from '../../../engine/ink/drift/drift.ts';
import { labSwatch } from '../../../engine/ink/film/lab-swatch.ts';
import type { Ink } from '../../../engine/ink/types.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { fixed } from '../../../engine/words/language.ts';
import type { DriftFigures } from '../../../workers/api/ink-api.ts';
import type { Picture } from '../../../workers/api/picture-api.ts';
import { engineFor } from '../../../workers/client/client.ts';
import type { AppStore } from '../../app-store.ts';
import '../../ui/kit/choice.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/print/picture-view.ts';
import { closeStackHost } from '../../ui/layout-style.ts';
import { recipeStudio } from '../../ui/print/recipe-studio.ts';
import { Work } from '../../ui/work.ts';
import '../add/measured-way.ts';
import '../add/two-colours.ts';
import { say } from '../../words/en/inks/shelf.ts';
import type { Measurements } from '../add/cgats-file.ts';
import type { ColoursFound } from '../add/two-colours.ts';
import { markStyles, swatchTemplate } from '../overprint/marked-swatch.ts';

/** Prints are drawn so high, px. */
const PICTURE_PX = 260;
/** So many recipes are drawn before and after. */
const MOST_DRAWN = 12;

const SOURCES = [
  { value: 'typed', label: say.typeTwoColours },
  { value: 'file', label: say.readFile },
];

type Measured = Pick<Ink, 'overWhite' | 'overBlack' | 'kx' | 'sx'>;

/** A recipe that pulls the ink, as it was kept and with the ink of today. */
interface Predicted extends DriftFigures {
  before: Picture | null;
  after: Picture | null;
}

/** What an ink measured on other days, how far it has drifted, and what that does to the recipes that pull it. */
@customElement('ink-drift')
export class InkDriftElement extends LitElement {
  static override styles = [
    controls,
    closeStackHost,
    markStyles,
    css`
      table {
        width: 100%;
        border-collapse: collapse;
        font-size: var(--type-small);
      }
      th,
      td {
        padding: var(--space-2) var(--space-4) var(--space-2) 0;
        text-align: left;
        font-weight: 400;
      }
      td .swatch {
        display: block;
        width: 34px;
        height: 20px;
        box-shadow: var(--edge);
      }
      .recipes {
        display: grid;
        gap: var(--space-6);
        margin: 0;
        padding: 0;
        list-style: none;
      }
      .pair {
        display: grid;
        grid-template-columns: 1fr 1fr;
        gap: var(--space-3);
        margin-top: var(--space-2);
      }
      .pair figure {
        margin: 0;
      }
      .pair figcaption {
        font-size: var(--type-fine);
        color: var(--ink-soft);
      }
      .problem {
        color: var(--accent);
      }
    `,
  ];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) ink!: Ink;
  @state() private adding = false;
  @state() private fromFile = false;
  @state() private date = today();
  @state() private found: Measured | null = null;
  @state() private measurements: Measurements | null = null;
  private readonly recipes = new Work<{ of: readonly unknown[]; list: Predicted[] }>(this);
  private asked: readonly unknown[] = [];

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('ink') && (changed.get('ink') as Ink | undefined)?.id !== this.ink.id) this.adding = false;
    const { recipes, drawer: studio } = this.store.project;
    const asked = [this.ink, recipes, studio.surface, this.store.relative];
    if (this.ink.measurements === undefined || asked.every((one, i) => one === this.asked[i])) return;
    this.asked = asked;
    void this.recipes.start(() => this.predict(asked));
  }

  /** Recipes that pull the ink, each as it was kept and as it would print today. */
  private async predict(of: readonly unknown[]): Promise<{ of: readonly unknown[]; list: Predicted[] }> {
    const { ink } = this;
    const { recipes, drawer: studio } = this.store.project;
    const using = recipes.filter(({ pulls }) => pulls.some((pull) => pull.ink === ink.id));
    const figures = await engineFor('plan').driftedRecipes(using, ink, studio.surface);
    const list: Predicted[] = [];
    for (const [i, one] of figures.entries()) {
      const recipe = using.find(({ id }) => id === one.recipe);
      const drawn = recipe !== undefined && i < MOST_DRAWN;
      list.push({
        ...one,
        before: drawn ? await this.draw(recipe, recipeStudio(recipe)) : null,
        after: drawn ? await this.draw(recipe, todaysStudio(recipe, ink, studio.surface)) : null,
      });
    }
    return { of, list };
  }

  private draw(recipe: Recipe, studio: Studio): Promise<Picture> {
    return engineFor('plan').thumbnail({ studio, pulls: recipe.pulls, heightPx: PICTURE_PX, relative: this.store.relative });
  }

  private save(): void {
    const { found, date } = this;
    if (found === null) return;
    const { overWhite, overBlack, kx, sx } = found;
    const measurement = { date, overWhite, overBlack, kx, sx };
    if (!this.store.dispatch({ kind: 'measure-ink', ink: this.ink.id, measurement })) return;
    this.adding = false;
    this.found = null;
  }

  private grounds(): Grounds {
    return { ...CARD, surface: this.store.project.drawer.surface };
  }

  override render() {
    const { paper, surface } = this.store.project.drawer;
    const lines = inkDrift(this.ink, paper, surface);
    return html`
      ${lines.length < 2 ? html`<p class="soft small">${say.measurePotAgainOn}</p>` : this.renderLines(lines)}
      ${this.adding ? this.renderAdd() : html`<div class="row"><button @click=${() => (this.adding = true)}>${say.measuredAgain}</button></div>`}
      ${lines.length < 2 ? nothing : this.renderRecipes()}
    `;
  }

  private renderLines(lines: readonly DriftLine[]) {
    const white = this.store.relative ? this.store.project.drawer.paper.reflectance : undefined;
    const [first, last] = [lines[0], lines.at(-1)];
    return html`<p role="status">
        ${say.potOfDiffersFromBy(html`<strong>${say.potOfDiffersFrom(last?.date ?? '', first === undefined ? '' : dateWords(first.date), first?.onPaper.toFixed(1) ?? '')}</strong>`, first?.overBlack.toFixed(1) ?? '')}
      </p>
      <table>
        <thead><tr><th scope="col">${say.date}</th><th scope="col">${say.onYourPaper}</th><th scope="col">${say.deltaEToLast}</th></tr></thead>
        <tbody>
          ${lines.map((line) => html`<tr><th scope="row">${line.date === '' ? say.before : line.date}</th><td>${swatchTemplate(labSwatch(line.lab, white))}</td><td>${line === last ? say.theLast : fixed(line.onPaper, 1)}</td></tr>`)}
        </tbody>
      </table>`;
  }

  private renderAdd() {
    return html`<label>${say.date} <input type="date" .value=${this.date} @change=${(event: Event) => (this.date = (event.target as HTMLInputElement).value)} /></label>
      <ps-choice
        label=${say.whereNewMeasurementComes}
        .options=${SOURCES}
        .value=${this.fromFile ? 'file' : 'typed'}
        @pick=${(event: CustomEvent<string>) => {
          this.fromFile = event.detail === 'file';
          this.found = null;
        }}
      ></ps-choice>
      ${
        this.fromFile
          ? html`<measured-way
              .surface=${this.store.project.drawer.surface}
              .measurements=${this.measurements}
              @read=${(event: CustomEvent<Measurements>) => (this.measurements = event.detail)}
              @draft=${(event: CustomEvent<InkDraft | null>) => (this.found = event.detail)}
            ></measured-way>`
          : html`<p class="soft small">${say.oneStrokeOnStandard}</p>
              <two-colours
                .colours=${this.found ?? this.ink}
                .grounds=${this.grounds()}
                unsaved=${say.noInkCanBe}
                @found=${(event: CustomEvent<ColoursFound>) => (this.found = event.detail)}
                @refused=${() => (this.found = null)}
              ></two-colours>`
      }
      <div class="row">
        <button class="main" ?disabled=${this.found === null || this.date === ''} @click=${this.save}>${say.keepThisMeasurement}</button>
        <button class="quiet" @click=${() => (this.adding = false)}>${say.cancel}</button>
      </div>`;
  }

  private renderRecipes() {
    const { recipes } = this;
    if (recipes.failure !== '') return html`<p class="problem small" role="alert">${recipes.failure}</p>`;
    if (recipes.found === null) return recipes.running ? html`<p class="soft small">${say.lookingAtRecipesThat}</p>` : nothing;
    const { list } = recipes.found;
    if (list.length === 0) return html`<p class="soft small">${say.noKeptRecipePulls}</p>`;
    const { recipes: kept } = this.store.project;
    return html`<h4>${say.recipesThatPullIt}</h4>
      <ul class="recipes" aria-label=${say.recipesThatPullIt2}>
        ${list.map(({ recipe: id, mean, most, before, after }) => {
          const title = kept.find((recipe) => recipe.id === id)?.title ?? '';
          return html`<li>
            <strong>${title}</strong> <span class="small">${say.deltaEWhereItLies(fixed(mean, 1), fixed(most, 1))}</span>
            ${
              before === null || after === null
                ? nothing
                : html`<div class="pair">
                    <figure><ps-picture .picture=${before} label=${say.asItWasKept(title)}></ps-picture><figcaption>${say.asItWasKept2}</figcaption></figure>
                    <figure><ps-picture .picture=${after} label=${say.withPotOfToday(title)}></ps-picture><figcaption>${say.withPotOfToday2}</figcaption></figure>
                  </div>`
            }
          </li>`;
        })}
      </ul>`;
  }
}

function dateWords(date: string): string {
  return date === '' ? say.whatItWasBefore : say.cardOf(date);
}

function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
}

/** A recipe's studio with one of its inks as it is today. */
function todaysStudio(recipe: Recipe, ink: Ink, surface: Studio['surface']): Studio {
  const then = recipeStudio(recipe);
  return { ...then, inks: then.inks.map((own) => (own.id === ink.id ? reread(ink, surface, recipe.surface) : own)) };
}

declare global {
  interface HTMLElementTagNameMap {
    'ink-drift': InkDriftElement;
  }
}
