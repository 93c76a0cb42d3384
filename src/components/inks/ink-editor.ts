import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Problem } from '../../engine/base/error.ts';
import { roundTo } from '../../engine/base/units.ts';
import { guessInk, type Opacity } from '../../engine/ink/guess.ts';
import { nearestInkColours } from '../../engine/ink/nearest-colours.ts';
import type { Ink, Lab } from '../../engine/ink/types.ts';
import { desk, sentenceOf } from '../../workers/client.ts';
import { type AppStore, StoreController } from '../app-store.ts';
import '../ui/number-field.ts';
import type { NumberPick } from '../ui/number-field.ts';
import { controls } from '../ui/styles.ts';
import './colour-field.ts';
import { curveDrawing, curveStyles } from './curve-drawing.ts';
import { CARD_STYLE, drawdown, drawdownStyles, swatchTemplate } from './drawdown.ts';
import { editorStyles } from './editor-styles.ts';
import { BASIS_TRUST } from './ink-words.ts';

interface Colours {
  overWhite: Lab;
  overBlack: Lab;
}

const OPACITIES: readonly Opacity[] = ['transparent', 'translucent', 'opaque'];

/**
 * One ink: its name, its two colours and what follows from them. An ink that is not in the project
 * yet (`fresh`) is sent to the room by `draft`; others are saved as they change.
 */
@customElement('ink-editor')
export class InkEditor extends LitElement {
  static override styles = [controls, drawdownStyles, curveStyles, editorStyles];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) ink!: Ink;
  @property({ type: Boolean }) fresh = false;
  /** Colours that were asked for and could not be had. */
  @state() private wanted: Colours | null = null;
  @state() private problems: Problem[] = [];
  @state() private moved: number | null = null;
  private call = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    new StoreController(this, this.store);
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has('ink')) return;
    const before = changed.get('ink') as Ink | undefined;
    this.call++;
    this.wanted = null;
    this.problems = [];
    if (before?.id !== this.ink.id) this.moved = null;
  }

  private save(change: Partial<Ink>): void {
    const ink = { ...this.ink, ...change };
    if (this.fresh) this.dispatchEvent(new CustomEvent<Ink>('draft', { detail: ink }));
    else this.store.dispatch({ kind: 'change-ink', ink });
  }

  private async ask(colours: Colours): Promise<void> {
    const call = ++this.call;
    this.wanted = colours;
    try {
      const found = await desk('picture').engine.inkCurves(colours.overWhite, colours.overBlack);
      if (call !== this.call) return;
      this.problems = found.problems.map((problem) => ({ ...problem, message: problem.message.replace('Ink “this ink”', 'This ink') }));
      if (found.problems.length > 0) return;
      this.moved = found.adjusted.length;
      this.save({ ...colours, kx: found.kx, sx: found.sx, basis: 'drawdown' });
    } catch (error) {
      if (call === this.call) this.store.tell(sentenceOf(error));
    }
  }

  /** Takes what can be printed in place of what cannot. */
  private takeNearest(): void {
    if (this.wanted === null) return;
    const near = nearestInkColours(this.wanted.overWhite, this.wanted.overBlack);
    void this.ask({ overWhite: shown(near.overWhite), overBlack: shown(near.overBlack) });
  }

  private guess(opacity: Opacity): void {
    try {
      const { kx, sx, overWhite, overBlack } = guessInk((this.wanted ?? this.ink).overWhite, opacity);
      this.moved = null;
      this.save({ overWhite, overBlack, kx: Array.from(kx), sx: Array.from(sx), basis: 'guess' });
    } catch (error) {
      this.problems = [{ code: 'ink.guess', message: sentenceOf(error), where: 'overWhite' }];
    }
  }

  private add(): void {
    if (this.store.dispatch({ kind: 'add-ink', ink: this.ink })) this.dispatchEvent(new CustomEvent<string>('added', { detail: this.ink.id }));
  }

  private removeInk(): void {
    if (this.store.dispatch({ kind: 'remove-ink', ink: this.ink.id })) {
      this.store.tell(`${this.ink.name} is out of the inks; undo brings it back.`, 'news');
    }
  }

  override render() {
    const { ink } = this;
    const { overWhite, overBlack } = this.wanted ?? ink;
    const told = (where: string): string => this.problems.find((problem) => problem.where === where)?.message ?? '';
    const elsewhere = this.problems.filter((problem) => problem.where !== 'overWhite' && problem.where !== 'overBlack');
    return html`
      <header>
        <label class="name">
          <span class="visually-hidden">Name of the ink</span>
          <input
            type="text"
            .value=${ink.name}
            @change=${(event: Event) => this.save({ name: (event.target as HTMLInputElement).value.trim() || ink.name })}
          />
        </label>
      </header>
      <p class="soft small">${BASIS_TRUST[ink.basis]}</p>
      ${this.renderStrokes()}
      <section aria-label="Colours">
        <colour-field label="One stroke over white" .lab=${overWhite} .problem=${told('overWhite')} @pick=${(event: CustomEvent<Lab>) => void this.ask({ overBlack, overWhite: event.detail })}></colour-field>
        <colour-field label="One stroke over black" .lab=${overBlack} .problem=${told('overBlack')} @pick=${(event: CustomEvent<Lab>) => void this.ask({ overWhite, overBlack: event.detail })}></colour-field>
        ${elsewhere.map((problem) => html`<p class="problem small" role="alert">${problem.message}</p>`)}
        ${this.problems.length === 0
          ? nothing
          : html`<div class="row unsaved">
              <span class="small">Not saved.</span>
              <button @click=${this.takeNearest}>Take the nearest</button>
              <button class="quiet" @click=${() => this.forget()}>Leave it as it was</button>
            </div>`}
        <div class="row guess" role="group" aria-label="Guess the colour over black">
          <span class="small soft">Only one colour known? Guess the other:</span>
          ${OPACITIES.map((opacity) => html`<button @click=${() => this.guess(opacity)}>${opacity}</button>`)}
        </div>
      </section>
      <section aria-label="Curves">
        ${curveDrawing(ink)}
        <p class="soft small">
          Reflectance of one stroke, worked out from the two colours.
          ${this.moved === null || this.moved === 0 ? nothing : html`<span class="moved">${this.moved === 1 ? 'One band' : `${this.moved} bands`} had to be moved to be physical.</span>`}
        </p>
      </section>
      <section aria-label="At the press">
        <div class="fields">
          <ps-number label="Dry to print on" unit="min" min="0" max="10080" .value=${ink.dryMinutes} @pick=${(event: NumberPick) => this.save({ dryMinutes: event.detail })}></ps-number>
          <ps-number label="Density" unit="g/cm³" min="0.5" max="3" step="0.01" decimals="2" .value=${ink.densityGPerCm3} @pick=${(event: NumberPick) => this.save({ densityGPerCm3: event.detail })}></ps-number>
        </div>
        <p class="soft small">Both depend on the ink, the film and the air; these are only starting points.</p>
      </section>
      <div class="row actions">
        ${this.fresh
          ? html`<button class="main" ?disabled=${this.problems.length > 0} @click=${this.add}>Add the ink</button>
              <button class="quiet" @click=${() => this.dispatchEvent(new CustomEvent('dropped'))}>Do not add</button>`
          : html`<button class="quiet" @click=${this.removeInk}>Remove ink</button>`}
      </div>
    `;
  }

  private forget(): void {
    this.call++;
    this.wanted = null;
    this.problems = [];
  }

  /** The film grows with the strokes: what one, two and three give over both halves of the card. */
  private renderStrokes() {
    const gain = this.store.project.drawer.strokeGain;
    const columns = [1, 2, 3].map((strokes) => ({ strokes, on: drawdown(this.ink, strokes, gain) }));
    return html`<figure class="strokes" style=${CARD_STYLE}>
      <div class="strip">
        ${columns.map(
          ({ strokes, on }) => html`<span
            class="column"
            role="img"
            aria-label="${strokes === 1 ? 'One stroke' : `${strokes} strokes`}: lightness ${roundTo(on.white.lab[0], 0)} over white, ${roundTo(on.black.lab[0], 0)} over black"
            >${swatchTemplate(on.white)}${swatchTemplate(on.black)}</span
          >`,
        )}
      </div>
      <figcaption>${columns.map(({ strokes }) => html`<span>${strokes === 1 ? '1 stroke' : `${strokes} strokes`}</span>`)}</figcaption>
    </figure>`;
  }
}

/** A colour as the fields can show it. */
function shown([l, a, b]: Lab): Lab {
  return [roundTo(l, 2), roundTo(a, 2), roundTo(b, 2)];
}

declare global {
  interface HTMLElementTagNameMap {
    'ink-editor': InkEditor;
  }
}
