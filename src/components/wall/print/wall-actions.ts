import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
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
import { wallActionsStyles } from './wall-actions-style.ts';

/** What the print in focus is, what changed in it, and what can be found from it. */
@customElement('wall-actions')
export class WallActions extends LitElement {
  static override styles = [controls, wallActionsStyles];

  @property({ attribute: false }) variant: Variant | null = null;
  @property({ attribute: false }) drawer: Studio | null = null;
  @property({ attribute: false }) relative = true;
  @state() private open = false;

  private toggle(): void {
    this.open = !this.open;
  }

  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || !this.open) return;
    event.stopPropagation();
    this.open = false;
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('.toggle')?.focus());
  };

  private changed(variant: Variant, parent: Parent, studio: Studio) {
    const { sentence, touched } = changesBetween(parent.pulls, variant.pulls, studio);
    return html`
      <p><span class="soft">${say.fromName(parent.name)}</span> ${sentence}</p>
      <wall-changed-strip .pulls=${variant.pulls} .drawer=${studio} .relative=${this.relative} .touched=${touched}></wall-changed-strip>
    `;
  }

  private find(kind: 'nearer' | 'away', variant: Variant): void {
    this.open = false;
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

  private panel(variant: Variant, studio: Studio) {
    const parents = originOf(variant)?.parents ?? [];
    return html`<section id="panel" aria-label=${say.aboutPrint(variant.index + 1)}>
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

  override render() {
    const { variant, drawer: studio, open } = this;
    const none = variant === null || studio === null;
    return html`<div @keydown=${this.onKey}>
      <button class="toggle" ?disabled=${none} aria-expanded=${open && !none} aria-controls="panel" @click=${() => this.toggle()}>${say.moreFromThisPrint}</button>
      ${open && !none ? this.panel(variant, studio) : nothing}
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-actions': WallActions;
  }
}
