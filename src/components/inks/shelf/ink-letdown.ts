import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { roundedLab } from '../../../engine/colour/lab.ts';
import { freeName } from '../../../engine/ink/characterise/ink-draft.ts';
import { labSwatch } from '../../../engine/ink/film/lab-swatch.ts';
import { swatchOf, swatchReflectance } from '../../../engine/ink/film/swatch.ts';
import { letdownFor, type Letdown } from '../../../engine/ink/mix/letdown.ts';
import { baseOf, letDown } from '../../../engine/ink/mix/mix.ts';
import type { Ink, Lab } from '../../../engine/ink/types.ts';
import { fixed } from '../../../engine/words/language.ts';
import '../../ui/kit/number-field.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import type { AppStore } from '../../app-store.ts';
import { controls } from '../../ui/controls-style.ts';
import '../add/colour-field.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import { newId } from '../../ui/new-id.ts';
import { say } from '../../words/en/inks/shelf.ts';
import { swatchTemplate } from '../overprint/marked-swatch.ts';
import { letdownStyles } from './letdown-style.ts';

/** Parts of base to one of ink, the base ladder; common practice, no source. */
const LADDER = [0, 1, 2, 3, 4, 6, 8];

/** An ink let down with transparent base, and the way back from a paler colour. Sends `added` with a new ink's id, `stocks` when the demo stock inks are to be brought in. */
@customElement('ink-letdown')
export class InkLetdown extends LitElement {
  static override styles = [controls, letdownStyles];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) ink!: Ink;
  @state() private parts = 2;
  /** The paler colour that is looked for. */
  @state() private wanted: Lab | null = null;
  private found: Letdown[] = [];
  private refusal = '';

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('ink') && (changed.get('ink') as Ink | undefined)?.id !== this.ink.id) this.wanted = null;
    this.found = [];
    this.refusal = '';
    const { drawer: studio } = this.store.project;
    const base = baseOf(studio.inks);
    if (this.wanted === null || base === undefined) return;
    try {
      this.found = letdownFor(this.wanted, this.ink, base, {
        ground: studio.paper.reflectance,
        strokeGain: studio.strokeGain,
        surface: studio.surface,
      });
    } catch (error) {
      this.refusal = sentenceOf(error);
    }
  }

  private name(parts: number): string {
    return `${this.ink.name} 1:${parts}`;
  }

  private save(base: Ink, parts: number): void {
    const { inks } = this.store.project.drawer;
    const name = freeName(
      this.name(parts),
      inks.map((ink) => ink.name),
    );
    try {
      const ink = letDown(this.ink, base, parts, { id: newId(), name, surface: this.store.project.drawer.surface });
      if (this.store.dispatch({ kind: 'add-ink', ink })) {
        this.store.tell(say.isOnShelf(name), 'news');
        this.dispatchEvent(new CustomEvent<string>('added', { detail: ink.id }));
      }
    } catch (error) {
      this.store.tell(sentenceOf(error));
    }
  }

  /** What a letdown shows over the paper. */
  private swatch(base: Ink, parts: number, strokes: number) {
    const { paper, strokeGain, surface } = this.store.project.drawer;
    const ink = parts === 0 ? this.ink : letDown(this.ink, base, parts);
    return swatchOf(swatchReflectance(ink, paper.reflectance, { strokes, strokeGain, surface }), this.white());
  }

  private white(): readonly number[] | undefined {
    return this.store.relative ? this.store.project.drawer.paper.reflectance : undefined;
  }

  override render() {
    const { drawer: studio } = this.store.project;
    const base = baseOf(studio.inks);
    if (base === undefined) {
      return html`<p class="soft small">${say.lettingDownNeedsTransparent}</p>
        <div class="row"><button @click=${() => this.dispatchEvent(new CustomEvent('stocks', { bubbles: true, composed: true }))}>${say.bringInDemoStock}</button></div>`;
    }
    const paper = swatchOf(studio.paper.reflectance, this.white());
    return html`
      <div class="ladder" role="group" aria-label=${say.baseLadderPartsBy} style="--paper:${paper.hex}">
        ${LADDER.map(
          (
            parts,
          ) => html`<button aria-pressed=${this.parts === parts} aria-label=${say.n1PartToOf(this.ink.name, parts, base.name)} @click=${() => (this.parts = parts)}>
            <span class="sheet">${[1, 2].map((strokes) => swatchTemplate(this.swatch(base, parts, strokes)))}</span>
            <span class="small">1:${parts}</span>
          </button>`,
        )}
      </div>
      <p class="small soft">${say.partsOfToOne(base.name, studio.paper.name || say.thePaper)}</p>
      <div class="row">
        <ps-number label=${say.partsOfBase} min="0" max="100" step="0.5" .value=${this.parts} @pick=${(event: NumberPick) => (this.parts = event.detail)}></ps-number>
        <button class="save" ?disabled=${this.parts === 0} @click=${() => this.save(base, this.parts)}>${say.save1AsNew(this.parts)}</button>
      </div>
      ${
        this.wanted === null
          ? html`<div class="row"><button class="quiet back" @click=${() => (this.wanted = roundedLab(this.swatch(base, 4, 1).lab))}>${say.fromPalerColourTo}</button></div>`
          : this.renderBack(base, this.wanted)
      }
    `;
  }

  private renderBack(base: Ink, wanted: Lab) {
    const white = this.white();
    return html`<colour-field label=${say.palerColourOnPaper} .white=${white} .lab=${wanted} .problem=${this.refusal} @pick=${(event: CustomEvent<Lab>) => (this.wanted = event.detail)}></colour-field>
      <ol class="found" aria-label=${say.letdowns}>
        ${this.found.map(
          ({ parts, strokes, deltaE, lab }) => html`<li>
            <span class="pair">${swatchTemplate(labSwatch(wanted, white))}${swatchTemplate(labSwatch(lab, white))}</span>
            <span>${say.n1InStrokes(html`<strong>1:${parts}</strong>`, strokes)}<br /><span class="soft small">${say.deltaEAnotherHue(fixed(deltaE, 1), deltaE > 3)}</span></span>
            ${parts === 0 ? nothing : html`<button aria-label=${say.saveAsNewInk(this.name(parts))} @click=${() => this.save(base, parts)}>${say.save}</button>`}
          </li>`,
        )}
      </ol>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ink-letdown': InkLetdown;
  }
}
