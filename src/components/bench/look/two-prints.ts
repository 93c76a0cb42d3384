import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import '../../ui/kit/choice.ts';
import '../../ui/kit/problem.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/print/picture-view.ts';
import { say } from '../../words/en/bench/look.ts';
import type { OtherStack } from '../picture/compare-with.ts';
import { lookStyle } from './look-style.ts';
import { SheetPicture } from './sheet-pictures.ts';

const HEIGHT_PX = 1100;
/** Each print shows so long while they blink, ms: far below three changes a second (WCAG 2.2, 2.3.1). */
const BLINK_MS = 800;

/** Two prints on one place: one wiped over the other, or one after the other. */
@customElement('bench-two-prints')
export class TwoPrints extends LitElement {
  static override styles = [
    controls,
    lookStyle,
    css`
      .surface {
        display: grid;
        place-items: center;
        padding: var(--space-7);
        container-type: size;
      }
      .print {
        position: relative;
        width: min(100cqw, 100cqh * var(--aspect));
        aspect-ratio: var(--aspect);
        background: var(--sheet);
        box-shadow: var(--shadow-low);
      }
      ps-picture {
        position: absolute;
        top: 0;
        left: 0;
      }
      .edge {
        position: absolute;
        top: 0;
        bottom: 0;
        width: 2px;
        margin-left: -1px;
        background: var(--accent);
        forced-color-adjust: none;
        pointer-events: none;
      }
      .names {
        flex: 1;
        min-width: 12em;
        font-size: var(--type-small);
      }
    `,
  ];

  @property({ attribute: false }) own!: OtherStack;
  @property({ attribute: false }) other: OtherStack | null = null;
  @property({ type: Boolean }) relative = true;
  @state() private way: 'wipe' | 'blink' = 'wipe';
  /** How much of the width shows the first print. */
  @state() private at = 0.5;
  @state() private second = false;
  private timer: ReturnType<typeof setInterval> | undefined;
  private readonly pictures = [new SheetPicture(this), new SheetPicture(this)] as const;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.blink(false);
  }

  private blink(on: boolean): void {
    clearInterval(this.timer);
    this.timer = on ? setInterval(() => (this.second = !this.second), BLINK_MS) : undefined;
    this.requestUpdate();
  }

  private wayTo(way: 'wipe' | 'blink'): void {
    this.way = way;
    this.second = false;
    this.blink(way === 'blink' && !matchMedia('(prefers-reduced-motion: reduce)').matches);
  }

  private get heightMm(): number {
    return Math.max(this.own.drawer.paper.heightMm, this.other?.drawer.paper.heightMm ?? 0);
  }

  protected override willUpdate(): void {
    const { own, other, relative, heightMm } = this;
    for (const [i, of] of [own, other].entries()) {
      const heightPx = of === null ? 0 : Math.round((HEIGHT_PX * of.drawer.paper.heightMm) / heightMm);
      this.pictures[i === 0 ? 0 : 1].want(of === null ? null : { pulls: of.pulls, drawer: of.drawer, heightPx, relative });
    }
  }

  private picture(i: 0 | 1, of: OtherStack, widthMm: number, clip: string) {
    return html`<ps-picture
      style="width:${(of.drawer.paper.widthMm / widthMm) * 100}%;clip-path:${clip}"
      .picture=${this.pictures[i].picture}
      .label=${of.name}
    ></ps-picture>`;
  }

  private controls() {
    const { way, at, second, other, own } = this;
    return html`<ps-choice
        label=${say.howTwoAreShown}
        .value=${way}
        .options=${[
          { value: 'wipe', label: say.wipe },
          { value: 'blink', label: say.blink },
        ]}
        @pick=${(event: CustomEvent<'wipe' | 'blink'>) => this.wayTo(event.detail)}
      ></ps-choice>
      ${
        way === 'wipe'
          ? html`<label>${say.edge} <input type="range" min="0" max="100" .value=${String(at * 100)} @input=${(event: Event) => (this.at = Number((event.target as HTMLInputElement).value) / 100)} /></label>
            <span class="names">${say.leftOfEdgeRight(own.name, other?.name ?? '')}</span>`
          : html`<button aria-pressed=${this.timer !== undefined} @click=${() => this.blink(this.timer === undefined)}>${say.byItself}</button>
            <button @click=${() => {
              this.blink(false);
              this.second = !this.second;
            }}>${say.theOther}</button>
            <span class="names">${say.shown} ${second ? (other?.name ?? '') : own.name}</span>`
      }`;
  }

  override render() {
    const { own, other, way, at, second } = this;
    const papers = [own.drawer.paper, ...(other === null ? [] : [other.drawer.paper])];
    const widthMm = Math.max(...papers.map((paper) => paper.widthMm));
    const share = way === 'wipe' ? at : second ? 0 : 1;
    const failure = this.pictures[0].failure || this.pictures[1].failure;
    // Of two papers the smaller lies at the top left, as on the Bench.
    return html`<div class="surface" style="--aspect:${widthMm / this.heightMm}">
        <div class="print">
          ${other === null ? nothing : this.picture(1, other, widthMm, 'none')}
          ${this.picture(0, own, widthMm, other === null ? 'none' : `inset(0 ${insetOf(own.drawer.paper.widthMm / widthMm, share)}% 0 0)`)}
          ${other !== null && way === 'wipe' ? html`<span class="edge" style="left:${at * 100}%"></span>` : nothing}
        </div>
      </div>
      <div class="line">
        ${failure === '' ? nothing : html`<ps-problem>${failure}</ps-problem>`}
        ${other === null ? html`<span class="soft">${say.chooseAboveWhatTo}</span>` : this.controls()}
      </div>`;
  }
}

/** How much of a picture is cut off on the right where it is shown up to a share of the place, %. */
function insetOf(widthShare: number, share: number): number {
  return Math.max(0, 1 - share / widthShare) * 100;
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-two-prints': TwoPrints;
  }
}
