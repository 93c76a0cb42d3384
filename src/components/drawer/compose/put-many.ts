import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Scattered } from '../../../engine/shapes/compose/scatter.ts';
import type { PlacedShape, Shape } from '../../../engine/shapes/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { ScatterRequest } from '../../../workers/api/picture-api.ts';
import { engineFor } from '../../../workers/client/client.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/kit/number-field.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import '../../ui/kit/problem.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/drawer/compose.ts';

/** Of more screens one would not look through what came of it; no source. */
const MOST_SCREENS = 60;

/**
 * Many shapes put on new screens at once, tried on the sheet before they are kept.
 * @fires tried CustomEvent<PlacedShape[][]>: what the sheet is to show
 * @fires keep CustomEvent<PlacedShape[][]>: screens are to be made of it
 * @fires close
 */
@customElement('drawer-put-many')
export class PutMany extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: grid;
        gap: var(--space-6);
      }
      h2 {
        font-size: var(--type-lead);
      }
      .fields {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(120px, 1fr));
        gap: var(--space-5) var(--space-6);
        align-items: end;
      }
      .shapes {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(140px, 1fr));
        gap: 0 var(--space-5);
        max-height: 132px;
        overflow-y: auto;
      }
      .shapes label {
        min-height: 32px;
        overflow: hidden;
        white-space: nowrap;
      }
      .seed input {
        width: 9em;
      }
    `,
  ];

  @property({ attribute: false }) drawer!: Studio;
  @state() private left: ReadonlySet<string> = new Set();
  @state() private screens = 4;
  @state() private leastMm = 40;
  @state() private mostMm = 140;
  @state() private cover = 15;
  @state() private overlap = 30;
  @state() private turned = true;
  @state() private seed = say.firstTry;
  private tries = 1;
  private readonly work = new Work<Scattered>(this, {
    found: ({ placed }) => this.tell('tried', placed),
    failed: () => this.tell('tried', []),
  });

  override connectedCallback(): void {
    super.connectedCallback();
    this.try();
  }

  private tell(name: string, placed?: PlacedShape[][]): void {
    this.dispatchEvent(new CustomEvent(name, { detail: placed }));
  }

  private get request(): ScatterRequest {
    const { screens, leastMm, mostMm, turned, seed } = this;
    const shapes = this.drawer.shapes.filter(({ id }) => !this.left.has(id)).map(({ id }) => id);
    return { shapes, screens, leastMm, mostMm, cover: this.cover / 100, overlap: this.overlap / 100, turned, seed };
  }

  /** Asks for what comes of the settings; of several asks the latest counts. */
  private try(): void {
    const { request, drawer: studio } = this;
    this.work.follow(() => engineFor('lesson').scatter({ studio, ...request }));
  }

  private set(change: () => void): void {
    change();
    this.try();
  }

  private again(): void {
    this.tries++;
    this.set(() => (this.seed = say.try(this.tries)));
  }

  private number(
    label: string,
    field: 'screens' | 'leastMm' | 'mostMm' | 'cover' | 'overlap',
    limits: { unit?: string; min: number; max: number },
  ) {
    const { unit = '', min, max } = limits;
    return html`<ps-number
      label=${label}
      unit=${unit}
      .whole=${unit !== 'mm'}
      .min=${min}
      .max=${max}
      .value=${this[field]}
      @pick=${(event: NumberPick) => this.set(() => (this[field] = event.detail))}
    ></ps-number>`;
  }

  private shape(shape: Shape) {
    const take = (on: boolean): void => {
      const left = new Set(this.left);
      if (on) left.delete(shape.id);
      else left.add(shape.id);
      this.set(() => (this.left = left));
    };
    return html`<label title=${shape.name}>
      <input type="checkbox" .checked=${!this.left.has(shape.id)} @change=${(event: Event) => take((event.target as HTMLInputElement).checked)} />
      ${shape.name}
    </label>`;
  }

  private said(): string {
    const { found, running } = this.work;
    if (found === null) return running ? say.lookingForPlaces : '';
    const pieces = found.placed.reduce((sum, placed) => sum + placed.length, 0);
    return say.piecesOnScreensEach(pieces, found.placed.length, Math.round(found.cover * 100), Math.round(found.overlap * 100));
  }

  override render() {
    const { found, failure } = this.work;
    const all = this.drawer.shapes.length;
    return html`<h2>${say.putManyShapesOnScreens}</h2>
      <div class="fields">
        ${this.number(say.newScreens, 'screens', { min: 1, max: MOST_SCREENS })}
        ${this.number(say.smallestPiece, 'leastMm', { unit: 'mm', min: 1, max: 2000 })} ${this.number(say.largestPiece, 'mostMm', { unit: 'mm', min: 1, max: 2000 })}
        ${this.number(say.eachScreenCovers, 'cover', { unit: '%', min: 1, max: 100 })} ${this.number(say.liesOverOthers, 'overlap', { unit: '%', min: 0, max: 100 })}
      </div>
      <div class="row">
        <label><input type="checkbox" .checked=${this.turned} @change=${(event: Event) => this.set(() => (this.turned = (event.target as HTMLInputElement).checked))} />${say.turnedAtRandom}</label>
        <label class="seed">${say.nameOfTry} <input type="text" maxlength="60" .value=${this.seed} @change=${(event: Event) => this.set(() => (this.seed = (event.target as HTMLInputElement).value))} /></label>
      </div>
      <details>
        <summary>${say.shapesOf(all - this.left.size, all)}</summary>
        <div class="shapes">${this.drawer.shapes.map((shape) => this.shape(shape))}</div>
      </details>
      ${failure === '' ? nothing : html`<ps-problem>${failure}</ps-problem>`}
      <p class="small" role="status">${this.said()}</p>
      <div class="row">
        <button class="main" ?disabled=${found === null} @click=${() => found !== null && this.tell('keep', found.placed)}>${say.makeTheseScreens}</button>
        <button @click=${() => this.again()}>${say.tryAgain}</button>
        <button class="quiet" @click=${() => this.tell('close')}>${say.cancel}</button>
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'drawer-put-many': PutMany;
  }
}
