import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { roundTo } from '../../../engine/base/units.ts';
import { outOfRegister } from '../../../engine/stack/look/out-of-register.ts';
import type { Picture } from '../../../workers/api/picture-api.ts';
import { engineFor } from '../../../workers/client/client.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/kit/number-field.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import '../../ui/print/picture-view.ts';
import { workFailure } from '../../ui/work-failure.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/bench/look.ts';
import './gap-list.ts';
import type { OtherStack } from '../picture/compare-with.ts';
import type { PlaceSeen } from './gap-list.ts';
import { lookStyle } from './look-style.ts';
import { SheetPicture } from './sheet-pictures.ts';

const SHEETS = 6;
const OVERVIEW_PX = 420;
const CLOSE_UP_PX = 320;
/** A hand table holds 0.25 to 1 mm, from memory. */
const USUAL_MM = 0.5;
const TOLERANCE_MM = { least: 0, most: 5 };
const ACROSS_MM = { least: 5, most: 400 };
/** How far an arrow key moves the place, as a share of what is seen. */
const STEP = 0.25;

const ARROWS: Record<string, readonly [number, number]> = {
  ArrowLeft: [-STEP, 0],
  ArrowRight: [STEP, 0],
  ArrowUp: [0, -STEP],
  ArrowDown: [0, STEP],
};

/** One place of the print on several sheets of an edition, each pull of which lies a little elsewhere. */
@customElement('bench-out-of-register')
export class OutOfRegister extends LitElement {
  static override styles = [
    controls,
    lookStyle,
    css`
      .surface {
        display: grid;
        grid-template-columns: minmax(120px, 200px) minmax(0, 1fr) minmax(300px, 380px);
        grid-template-rows: minmax(0, 1fr);
        gap: var(--space-8);
        padding: var(--space-7);
      }
      .whole {
        position: relative;
        display: block;
        align-self: start;
        padding: 0;
        border: 0;
        cursor: crosshair;
        touch-action: manipulation;
      }
      .whole ps-picture {
        width: 100%;
      }
      .window {
        position: absolute;
        border: 2px solid var(--mark);
        pointer-events: none;
      }
      ul {
        display: grid;
        grid-template-columns: repeat(3, minmax(0, 1fr));
        gap: var(--space-6);
        align-content: start;
        margin: 0;
        padding: 0;
        list-style: none;
      }
      ul,
      bench-gap-list {
        min-height: 0;
        overflow: auto;
      }
      .note {
        flex: 1 1 24em;
      }
      @media (max-width: 1100px) {
        .surface {
          grid-template-columns: minmax(100px, 1fr) 3fr;
          grid-template-rows: auto;
          align-content: start;
          gap: var(--space-6);
          overflow: auto;
        }
        ul,
        bench-gap-list {
          overflow: visible;
        }
        ul {
          gap: var(--space-4);
        }
        bench-gap-list {
          grid-column: 1 / -1;
        }
      }
      @media (max-width: 760px) {
        .surface {
          padding: var(--space-6);
        }
      }
    `,
  ];

  @property({ attribute: false }) own!: OtherStack;
  @property({ type: Boolean }) relative = true;
  /** What the studio says that its table holds, mm; 0 where it says nothing. */
  @property({ type: Number }) holdsMm = 0;
  @state() private toleranceMm: number | null = null;
  @state() private acrossMm = 30;
  @state() private edition = 1;
  /** Middle of what is seen, mm; null where none was chosen. */
  @state() private place: { xMm: number; yMm: number } | null = null;
  private readonly whole = new SheetPicture(this);
  private readonly sheets = new Work<Picture[]>(this);
  /** Where being out of register shows most; seen first. */
  private readonly loose = new Work<{ xMm: number; yMm: number } | null>(this);
  private looseOf: readonly unknown[] = [];
  private asked = '';
  private drawnOf: readonly unknown[] = [];

  private get tolerance(): number {
    return this.toleranceMm ?? (this.holdsMm > 0 ? this.holdsMm : USUAL_MM);
  }

  private get middle(): { xMm: number; yMm: number } {
    const { widthMm, heightMm } = this.own.drawer.paper;
    return this.place ?? this.loose.found ?? { xMm: widthMm / 2, yMm: heightMm / 2 };
  }

  protected override willUpdate(): void {
    const { own, relative, tolerance, acrossMm, edition, middle } = this;
    this.whole.want({ pulls: own.pulls, drawer: own.drawer, heightPx: OVERVIEW_PX, relative });
    this.lookForLoose();
    // The first place is worth waiting for: another one would only flash.
    if (this.place === null && this.loose.running) return;
    const key = JSON.stringify([relative, tolerance, acrossMm, edition, middle]);
    if (key === this.asked && this.drawnOf[0] === own.pulls && this.drawnOf[1] === own.drawer) return;
    this.asked = key;
    this.drawnOf = [own.pulls, own.drawer];
    const sheets = outOfRegister(own.pulls, { toleranceMm: tolerance, sheets: SHEETS, seed: String(edition) });
    const seen = {
      xMm: middle.xMm - acrossMm / 2,
      yMm: middle.yMm - acrossMm / 2,
      widthMm: acrossMm,
      heightMm: acrossMm,
      widthPx: CLOSE_UP_PX,
      heightPx: CLOSE_UP_PX,
    };
    this.sheets.follow(() =>
      Promise.all(sheets.map((pulls) => engineFor('picture').view({ studio: own.drawer, pulls, relative, ...seen }))),
    );
  }

  private lookForLoose(): void {
    const { own, tolerance, acrossMm } = this;
    if (this.looseOf[0] === own.pulls && this.looseOf[1] === own.drawer) return;
    this.looseOf = [own.pulls, own.drawer];
    const toleranceMm = tolerance > 0 ? tolerance : USUAL_MM;
    this.loose.follow(() => engineFor('picture').loosePlace({ studio: own.drawer, pulls: own.pulls, toleranceMm, acrossMm }));
  }

  private onPoint(event: MouseEvent): void {
    // A key that presses the button points nowhere.
    if (event.detail === 0) return;
    const box = (event.currentTarget as Element).getBoundingClientRect();
    const { widthMm, heightMm } = this.own.drawer.paper;
    this.place = { xMm: ((event.clientX - box.left) / box.width) * widthMm, yMm: ((event.clientY - box.top) / box.height) * heightMm };
  }

  private see(place: { xMm: number; yMm: number }): void {
    this.place = place;
    this.renderRoot.querySelector('.surface')?.scrollTo({ top: 0, behavior: 'smooth' });
  }

  private onKey(event: KeyboardEvent): void {
    const arrow = ARROWS[event.key];
    if (arrow === undefined) return;
    event.preventDefault();
    const { widthMm, heightMm } = this.own.drawer.paper;
    const { xMm, yMm } = this.middle;
    this.place = {
      xMm: Math.min(widthMm, Math.max(0, xMm + arrow[0] * this.acrossMm)),
      yMm: Math.min(heightMm, Math.max(0, yMm + arrow[1] * this.acrossMm)),
    };
  }

  private overview() {
    const { widthMm, heightMm } = this.own.drawer.paper;
    const { xMm, yMm } = this.middle;
    const { acrossMm } = this;
    const style = `left:${((xMm - acrossMm / 2) / widthMm) * 100}%;top:${((yMm - acrossMm / 2) / heightMm) * 100}%;width:${(acrossMm / widthMm) * 100}%;height:${(acrossMm / heightMm) * 100}%`;
    return html`<button class="whole" type="button" style="aspect-ratio:${widthMm / heightMm}" aria-label=${say.placeThatIsSeen} @click=${this.onPoint} @keydown=${this.onKey}>
      <ps-picture .picture=${this.whole.picture}></ps-picture><span class="window" style=${style}></span>
    </button>`;
  }

  override render() {
    const { sheets, tolerance, acrossMm } = this;
    const pictures = sheets.found ?? [];
    return html`<div class="surface">
        ${this.overview()}
        <ul aria-label=${say.sheetsOfEdition}>
          ${pictures.map((picture, i) => html`<li><ps-picture .picture=${picture} .label=${say.sheetOfEditionMm(i + 1, acrossMm)}></ps-picture></li>`)}
        </ul>
        <bench-gap-list .own=${this.own} .toleranceMm=${tolerance} @place-seen=${({ detail }: PlaceSeen) => this.see(detail)}></bench-gap-list>
      </div>
      <div class="line">
        ${workFailure(sheets)}
        <ps-number label=${say.outOfRegisterBy} unit="mm" step="0.1" .min=${TOLERANCE_MM.least} .max=${TOLERANCE_MM.most} .value=${tolerance} @pick=${({ detail }: NumberPick) => (this.toleranceMm = detail)}></ps-number>
        <ps-number label=${say.seenAcross} unit="mm" step="5" .min=${ACROSS_MM.least} .max=${ACROSS_MM.most} .value=${acrossMm} @pick=${({ detail }: NumberPick) => (this.acrossMm = detail)}></ps-number>
        <button type="button" @click=${() => this.edition++}>${say.otherSheets}</button>
        <p class="soft small note">
          ${say.eachPullOfEach(tolerance, tolerance > 0 ? html`${say.soThatTwoCan(roundTo(2 * tolerance, 2))}` : nothing)}
        </p>
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-out-of-register': OutOfRegister;
  }
}
