import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { pxPerMmFromAfar } from '../../../engine/stack/look/from-afar.ts';
import { fixed } from '../../../engine/words/language.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/kit/choice.ts';
import '../../ui/kit/number-field.ts';
import '../../ui/kit/problem.ts';
import '../../ui/print/picture-view.ts';
import { say } from '../../words/en/bench/look.ts';
import type { OtherStack } from '../picture/compare-with.ts';
import { lookStyle } from './look-style.ts';
import { CARD_HEIGHT_MM, CARD_WIDTH_MM, keepScreenScale, type ScreenScale, screenScale } from './screen-scale.ts';
import { SheetPicture } from './sheet-pictures.ts';

/** Distances to look from, mm, as they are chosen; '' is the screen itself: true size. */
const DISTANCES = [
  { value: '', label: say.trueSize },
  { value: '500', label: `${fixed(0.5, 1)} m` },
  { value: '2000', label: '2 m' },
  { value: '8000', label: '8 m' },
];
const MOST_PX = 2400;
const LEAST_PX = 16;

/** A print on a wall, as large as it looks from a distance. */
@customElement('bench-from-afar')
export class FromAfar extends LitElement {
  static override styles = [
    controls,
    lookStyle,
    css`
      .surface {
        display: grid;
        place-items: safe center;
        padding: var(--space-7);
        overflow: auto;
        background: var(--wall-deep);
      }
      .print {
        flex: none;
        background: var(--sheet);
        box-shadow: var(--shadow-low);
      }
      figure {
        display: grid;
        gap: var(--space-5);
        margin: 0;
      }
      .ruler {
        height: 6px;
        border: 1px solid var(--ink);
        border-top: 0;
      }
      figcaption {
        font-size: var(--type-fine);
      }
      .card {
        display: grid;
        place-content: center;
        border: 2px solid var(--accent);
        border-radius: 3.18mm;
        background: var(--sheet);
        text-align: center;
        font-size: var(--type-small);
      }
    `,
  ];

  @property({ attribute: false }) own!: OtherStack;
  @property({ type: Boolean }) relative = true;
  @state() private distance = '2000';
  @state() private scale: ScreenScale = screenScale();
  @state() private measuring = false;
  private readonly sheet = new SheetPicture(this);

  private get pxPerMm(): number {
    const { distance, scale } = this;
    return distance === '' ? scale.pxPerMm : pxPerMmFromAfar(scale, Number(distance));
  }

  private setScale(change: Partial<ScreenScale>): void {
    this.scale = { ...this.scale, ...change };
    keepScreenScale(this.scale);
  }

  protected override willUpdate(): void {
    const { own, relative } = this;
    const wanted = own.drawer.paper.heightMm * this.pxPerMm * devicePixelRatio;
    const heightPx = Math.max(LEAST_PX, Math.min(MOST_PX, Math.round(wanted)));
    this.sheet.want({ pulls: own.pulls, drawer: own.drawer, heightPx, relative });
  }

  private print() {
    const { own, pxPerMm } = this;
    const { widthMm } = own.drawer.paper;
    // A rule that is easily pictured: as long as a tenth or so of the print, in round figures.
    const ruleMm = widthMm >= 200 ? 100 : 10;
    return html`<figure>
      <div class="print" style="width:${widthMm * pxPerMm}px"><ps-picture .picture=${this.sheet.picture} .label=${`${own.name}, ${this.seenWords}`}></ps-picture></div>
      <div class="ruler" style="width:${ruleMm * pxPerMm}px"></div>
      <figcaption>${say.mmOfPrint(ruleMm)}</figcaption>
    </figure>`;
  }

  private get seenWords(): string {
    const { distance } = this;
    return distance === '' ? say.atItsTrueSize : say.asItLooksFrom(DISTANCES.find(({ value }) => value === distance)?.label ?? '');
  }

  private card() {
    const { pxPerMm } = this.scale;
    return html`<div class="card" style="width:${CARD_WIDTH_MM * pxPerMm}px;height:${CARD_HEIGHT_MM * pxPerMm}px">
      <span>${say.holdBankCardHere}</span>
    </div>`;
  }

  override render() {
    const { measuring, scale, distance } = this;
    return html`<div class="surface" tabindex="0" role="region" aria-label=${measuring ? say.screenIsMeasured : say.thePrint(this.seenWords)}>${measuring ? this.card() : this.print()}</div>
      <div class="line">
        ${this.sheet.failure === '' ? nothing : html`<ps-problem>${this.sheet.failure}</ps-problem>`}
        ${
          measuring
            ? html`<label>${say.makeFrameAsWide}
                <input type="range" min="2" max="12" step="0.01" .value=${String(scale.pxPerMm)} @input=${(event: Event) => this.setScale({ pxPerMm: Number((event.target as HTMLInputElement).value) })} /></label>
              <button class="main" @click=${() => (this.measuring = false)}>${say.asWideAsCard}</button>`
            : html`<ps-choice label=${say.howFarAway} .value=${distance} .options=${DISTANCES} @pick=${(event: CustomEvent<string>) => (this.distance = event.detail)}></ps-choice>
              <ps-number label=${say.fromYourEyeTo} unit="mm" .value=${scale.eyeMm} .min=${100} .max=${5000} .step=${10} .decimals=${0} @pick=${(event: CustomEvent<number>) => this.setScale({ eyeMm: event.detail })}></ps-number>
              <button @click=${() => (this.measuring = true)}>${say.measureThisScreen}</button>`
        }
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-from-afar': FromAfar;
  }
}
