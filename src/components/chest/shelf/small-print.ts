import { css, html, LitElement } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { defined } from '../../../engine/base/at.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import type { Picture } from '../../../workers/api/picture-api.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/print/picture-view.ts';
import { say } from '../../words/en/chest/shelf.ts';
import { recipePicture } from '../recipe-pictures.ts';

/**
 * A recipe as a small print with its title.
 * @fires pick Event: it was pressed
 */
@customElement('chest-small-print')
export class SmallPrint extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
        min-width: 0;
      }
      button {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        justify-content: stretch;
        gap: var(--space-3);
        width: 100%;
        padding: var(--space-3);
        border-color: transparent;
        background: none;
        text-align: left;
      }
      .paper {
        display: grid;
        place-items: center;
        background: var(--stock);
        box-shadow: var(--shadow);
        font-size: var(--type-fine);
        color: var(--on-stock-soft);
      }
      ps-picture {
        width: 100%;
      }
      .title {
        overflow: hidden;
        text-overflow: ellipsis;
        white-space: nowrap;
        font-weight: 600;
      }
    `,
  ];

  @property({ attribute: false }) recipe!: Recipe;
  @property({ type: Boolean }) relative = true;
  /** How high its picture is drawn. */
  @property({ type: Number }) heightPx = 320;
  /** Whether it is selected; null where none are selected. */
  @property({ attribute: false }) selected: boolean | null = null;
  @state() private picture: Picture | null = null;
  @state() private fault = '';
  private drawn: readonly unknown[] = [];
  private inSight = false;
  private watcher: IntersectionObserver | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    this.watcher = new IntersectionObserver((entries) => {
      this.inSight = defined(entries.at(-1)).isIntersecting;
      this.draw();
    });
    this.watcher.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.watcher?.disconnect();
  }

  protected override updated(): void {
    this.draw();
  }

  private draw(): void {
    const { recipe, relative, heightPx } = this;
    const of = [recipe.pulls, relative];
    if (!this.inSight || of.every((part, i) => part === this.drawn[i])) return;
    this.drawn = of;
    recipePicture(recipe, heightPx, relative).then(
      (picture) => {
        if (this.drawn === of) this.picture = picture;
      },
      (error: unknown) => {
        if (this.drawn === of) this.fault = sentenceOf(error);
      },
    );
  }

  override render() {
    const { recipe, selected } = this;
    const { widthMm, heightMm } = recipe.paper;
    return html`<button aria-pressed=${selected ?? false} @click=${() => this.dispatchEvent(new Event('pick'))}>
      <span class="paper" style="aspect-ratio:${widthMm} / ${heightMm}">
        ${this.picture === null ? (this.fault === '' ? say.drawing : this.fault) : html`<ps-picture .picture=${this.picture} label=""></ps-picture>`}
      </span>
      <span class="title" title=${recipe.title}>${recipe.title}</span>
      <span class="soft small">${say.pulls(recipe.pulls.length, recipe.labels === undefined ? '' : ` · ${recipe.labels.join(', ')}`)}</span>
    </button>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'chest-small-print': SmallPrint;
  }
}
