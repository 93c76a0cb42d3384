import { html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { changesBetween } from '../../../engine/explore/look/changes.ts';
import { MEASURES } from '../../../engine/explore/measure/variant-measures.ts';
import type { Variant } from '../../../engine/explore/types.ts';
import { lineageSentence } from '../../../engine/recipe/lineage.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { fixed } from '../../../engine/words/language.ts';
import './changed-strip.ts';
import { controls } from '../../ui/controls-style.ts';
import { say } from '../../words/en/wall/print.ts';
import { derivedAsk } from '../run/derived-ask.ts';
import { lineageOf, originOf, type Parent } from '../run/wall-origins.ts';
import { USUAL_PLACE } from '../surface/room-for-print.ts';
import { printPanelStyles } from './print-panel-style.ts';

/** What changed in a print, and what can be found from it. Tells `print-derived`, and by `covers` where it lies. */
@customElement('wall-print-panel')
export class PrintPanel extends LitElement {
  static override styles = [controls, printPanelStyles];

  @property({ attribute: false }) variant!: Variant;
  @property({ attribute: false }) drawer!: Studio;
  @property({ attribute: false }) relative = true;
  /** Where it leaves the print in view. */
  @property({ attribute: false }) place = USUAL_PLACE;

  /** Tells what lies over the wall, so that the print can be brought out from under it. */
  protected override updated(): void {
    const panel = this.renderRoot.querySelector('section');
    if (panel !== null) this.dispatchEvent(new CustomEvent<Element>('covers', { detail: panel, bubbles: true, composed: true }));
  }

  private changed(variant: Variant, parent: Parent, studio: Studio) {
    const { sentence, touched } = changesBetween(parent.pulls, variant.pulls, studio);
    return html`
      <p><span class="soft">${say.fromName(parent.name)}</span> ${sentence}</p>
      <wall-changed-strip .pulls=${variant.pulls} .drawer=${studio} .relative=${this.relative} .touched=${touched}></wall-changed-strip>
    `;
  }

  private find(kind: 'nearer' | 'away', variant: Variant): void {
    this.dispatchEvent(new CustomEvent('print-derived', { detail: derivedAsk(kind, [variant]), bubbles: true, composed: true }));
  }

  private actions(variant: Variant) {
    return html`<div class="actions" role="group" aria-label=${say.findPrintsFromThis}>
        <button @click=${() => this.find('nearer', variant)}>${say.nearerToThis}</button>
        <span class="soft small">${say.printsThatDifferFrom}</span>
        <button @click=${() => this.find('away', variant)}>${say.awayFromThis}</button>
        <span class="soft small">${say.printsAsUnlikeIt}</span>
      </div>
      <p class="soft small">
        ${say.selectTwoPrintsAnd}
      </p>`;
  }

  private figures(variant: Variant) {
    const measures = originOf(variant)?.measures;
    if (measures === undefined) return nothing;
    return html`<dl>
      ${MEASURES.map(({ key, label, unit, digits }) => html`<div><dt>${label}</dt><dd>${fixed(measures[key], digits)}${unit === '' ? '' : ` ${unit}`}</dd></div>`)}
    </dl>
      <p class="soft small">${MEASURES.map(({ label, help }) => (help === undefined ? '' : `${label}: ${help} `))}</p>`;
  }

  override render() {
    const { variant, drawer: studio } = this;
    const parents = originOf(variant)?.parents ?? [];
    return html`<section data-side=${this.place.side} style=${Number.isFinite(this.place.mostPx) ? `max-height: ${this.place.mostPx}px` : nothing} aria-label=${say.aboutPrint(variant.index + 1)}>
      <h3>${say.whatChanged}</h3>
      <p>${lineageSentence(lineageOf(variant))}</p>
      ${
        parents.length === 0
          ? html`<p class="soft">${say.thisPrintWasMade}</p><wall-changed-strip .pulls=${variant.pulls} .drawer=${studio} .relative=${this.relative}></wall-changed-strip>`
          : parents.map((parent) => this.changed(variant, parent, studio))
      }
      ${this.actions(variant)} ${this.figures(variant)}
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-print-panel': PrintPanel;
  }
}
