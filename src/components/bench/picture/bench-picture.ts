import { html, LitElement } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { defined, num } from '../../../engine/base/at.ts';
import { toOffsetGrid } from '../../../engine/base/units.ts';
import { labD50 } from '../../../engine/colour/lab.ts';
import { srgbHexFromLab } from '../../../engine/colour/screen-colour.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { Picture } from '../../../workers/api/picture-api.ts';
import { engineFor } from '../../../workers/client/client.ts';
import { Work } from '../../ui/work.ts';
import { benchPictureStyle } from './bench-picture-style.ts';
import { PanZoom } from './pan-zoom.ts';
import { pictureLines } from './picture-lines.ts';
import { type Region, visibleRegion, wholeRegion } from './region.ts';
import { paint, putCanvas } from './sheet-canvas.ts';
import type { SheetView } from './sheet-view.ts';
import { contentOf, same, type Wanted } from './wanted.ts';

/** A picture that would take longer is preceded by a coarser draft, ms. */
const DRAFT_ABOVE_MS = 70;
/** After the last change of the view the sharp picture is asked for, ms. */
const SETTLE_MS = 40;

/** How far what is selected is dragged, mm on the 0.1 mm grid; `done` when it is let go there. */
export interface PullDrag {
  dxMm: number;
  dyMm: number;
  done: boolean;
}

/**
 * One stack on its sheet, drawn for the device's pixels at any zoom. While one zooms or pans, the
 * picture at hand is moved and scaled; the exact one takes its place when it comes.
 * @fires trouble CustomEvent<string>: why the picture could not be drawn
 * @fires point CustomEvent<{ xMm: number; yMm: number } | null>: the place under the pointer
 * @fires read-place CustomEvent<{ xMm: number; yMm: number }>: a place that was tapped, or the middle of what is in sight on Enter
 * @fires drag-pulls CustomEvent<PullDrag>: what is selected is dragged
 * @fires drag-back Event: the drag was broken off, and it belongs where it was
 * @fires nudge CustomEvent<{ dxMm: number; dyMm: number }>: arrow keys
 */
@customElement('bench-picture')
export class BenchPicture extends LitElement {
  static override styles = benchPictureStyle;

  @property({ attribute: false }) drawer!: Studio;
  @property({ attribute: false }) pulls: readonly Pull[] = [];
  @property({ type: Boolean }) relative = true;
  /** Whether what the screen cannot show is hatched. */
  @property({ type: Boolean }) marked = false;
  @property({ attribute: false }) view!: SheetView;
  /** SVG path data of the selected pull, sheet mm; '' when there is none. */
  @property() outline = '';
  /** Whether what is selected is moved by dragging it. */
  @property({ type: Boolean }) holds = false;
  /** A place that is marked, mm; null for none. */
  @property({ attribute: false }) spot: { xMm: number; yMm: number } | null = null;
  @property() label = '';
  /** What arrow keys do, for screen readers. */
  @property() hint = '';
  /** When the edit that led to the present pulls happened, for measuring. */
  @property({ attribute: false }) editedAt: number | null = null;
  @state() private moving = false;
  @query('.frame') private frame!: HTMLElement;
  @query('.stage') private stage!: HTMLElement;
  @query('.sheet') private sheet!: HTMLElement;
  @query('canvas.sharp') private sharp!: HTMLCanvasElement;
  @query('canvas.whole') private whole!: HTMLCanvasElement;
  private hand: PanZoom | null = null;
  private sharpRegion: Region | null = null;
  private sharpOf: readonly unknown[] = [];
  private wholeRegion: Region | null = null;
  private wholeOf: readonly unknown[] = [];
  private settle: ReturnType<typeof setTimeout> | null = null;
  private msPerMegapixel = 30;
  private readonly resize = new ResizeObserver(() => this.measure());
  private readonly onView = (): void => {
    this.place();
    this.wantSoon();
  };

  private readonly pictures = new Work<{ picture: Picture; wanted: Wanted }>(null, {
    found: ({ picture, wanted }) => this.show(picture, wanted),
    failed: (sentence) => {
      // The picture of another stack would be untrue of this one.
      if (!same(this.sharpOf, this.content)) this.sharp.width = 1;
      this.dispatchEvent(new CustomEvent<string>('trouble', { detail: sentence }));
    },
  });

  override connectedCallback(): void {
    super.connectedCallback();
    this.view.addEventListener('change', this.onView);
    if (this.hasUpdated) this.resize.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.view.removeEventListener('change', this.onView);
    this.resize.disconnect();
    if (this.settle !== null) clearTimeout(this.settle);
  }

  override firstUpdated(): void {
    this.resize.observe(this);
    this.hand = new PanZoom(this.frame, this.view, {
      moving: (moving) => (this.moving = moving),
      point: (place) => this.dispatchEvent(new CustomEvent('point', { detail: place })),
      tap: (place) => this.dispatchEvent(new CustomEvent('read-place', { detail: place })),
      takes: (event) => !event.altKey && (event.target as Element).classList.contains('hold'),
      drag: ({ dxMm, dyMm }, done) =>
        this.dispatchEvent(
          new CustomEvent<PullDrag>('drag-pulls', { detail: { dxMm: toOffsetGrid(dxMm), dyMm: toOffsetGrid(dyMm), done } }),
        ),
      dragBack: () => this.dispatchEvent(new Event('drag-back')),
    });
  }

  override updated(changed: Map<PropertyKey, unknown>): void {
    if (['pulls', 'drawer', 'relative', 'marked'].some((name) => changed.has(name))) {
      this.place();
      this.want();
    }
  }

  private get content(): readonly unknown[] {
    return contentOf(this);
  }

  private measure(): void {
    const { clientWidth, clientHeight } = this;
    if (clientWidth === 0 || clientHeight === 0) return;
    // Where the frame itself lies between device pixels, the stage is moved onto them.
    const ratio = devicePixelRatio;
    const { left, top } = this.getBoundingClientRect();
    const off = (at: number): number => Math.round(at * ratio) / ratio - at;
    this.stage.style.transform = `translate(${off(left)}px, ${off(top)}px)`;
    this.view.setFrame(clientWidth, clientHeight);
    this.place();
    this.want();
  }

  private region(share = 1): Region | null {
    const { view } = this;
    const frame = { widthPx: this.clientWidth, heightPx: this.clientHeight };
    return visibleRegion({ frame, origin: view.origin, pxPerMm: view.pxPerMm, deviceRatio: devicePixelRatio }, this.drawer.paper, share);
  }

  private wantSoon(): void {
    if (this.settle !== null) clearTimeout(this.settle);
    // While the pointer moves, pictures follow as fast as they come; the pause only spares the first.
    this.settle = setTimeout(() => this.want(), this.pictures.running ? SETTLE_MS : 0);
  }

  private want(): void {
    // Out of sight there is no size; coming into sight is measured, and asks again.
    if (!this.view.ready || this.clientWidth === 0) return;
    const region = this.region();
    if (region === null) return;
    const expected = (this.msPerMegapixel * region.widthPx * region.heightPx) / 1e6;
    const share = expected > DRAFT_ABOVE_MS ? Math.max(0.25, Math.sqrt(DRAFT_ABOVE_MS / expected)) : 1;
    const draft = share < 1;
    this.ask({
      pulls: this.pulls,
      drawer: this.drawer,
      relative: this.relative,
      marked: this.marked,
      region: draft ? defined(this.region(share)) : region,
      draft,
      editedAt: this.editedAt,
    });
  }

  private ask(wanted: Wanted): void {
    this.pictures.follow(async () => ({ picture: await this.draw(wanted), wanted }));
  }

  private async draw({ pulls, drawer, relative, marked, region, draft }: Wanted): Promise<Picture> {
    const from = performance.now();
    const { xMm, yMm, widthMm, heightMm, widthPx, heightPx } = region;
    const view = { studio: drawer, pulls, relative, marked, xMm, yMm, widthMm, heightMm, widthPx, heightPx };
    const picture = await engineFor('picture').view(view);
    // Drafts are too small to tell what a pixel costs.
    if (!draft) {
      const took = (performance.now() - from) / ((widthPx * heightPx) / 1e6);
      this.msPerMegapixel += (took - this.msPerMegapixel) / 3;
    }
    return picture;
  }

  private show(picture: Picture, wanted: Wanted): void {
    paint(this.sharp, picture);
    this.sharpOf = contentOf(wanted);
    this.sharpRegion = wanted.region;
    if (this.view.whole && !wanted.draft) {
      paint(this.whole, picture);
      this.wholeRegion = wanted.region;
      this.wholeOf = contentOf(wanted);
    }
    this.place();
    if (wanted.editedAt !== null && wanted.pulls === this.pulls) this.mark(wanted);
    if (!same(contentOf(wanted), this.content)) return;
    if (wanted.draft) {
      const region = this.region();
      if (region !== null) this.ask({ ...wanted, region, draft: false, editedAt: null });
    } else if (!same(this.wholeOf, contentOf(wanted))) this.wantWhole(wanted);
  }

  /** Beneath a close look lies the whole sheet, so that panning never uncovers nothing. */
  private wantWhole(wanted: Wanted): void {
    const region = wholeRegion(wanted.drawer.paper, this.view.wholePxPerMm);
    const { drawer, pulls, relative } = wanted;
    engineFor('picture')
      .thumbnail({ studio: drawer, pulls, heightPx: region.heightPx, relative })
      .then((picture) => {
        if (!same(contentOf(wanted), this.content)) return;
        paint(this.whole, picture);
        this.wholeRegion = region;
        this.wholeOf = contentOf(wanted);
        this.place();
      })
      .catch(() => {
        // The close look tells of the same trouble.
      });
  }

  private mark(wanted: Wanted): void {
    const start = defined(wanted.editedAt);
    this.editedAt = null;
    requestAnimationFrame(() => {
      performance.measure('bench: edit to picture', {
        start,
        end: performance.now(),
        detail: { pulls: wanted.pulls.length, draft: wanted.draft },
      });
    });
  }

  /** Moves and scales what is at hand to where the view now has it. */
  private place(): void {
    if (!this.hasUpdated || !this.view.ready) return;
    const { origin, pxPerMm } = this.view;
    const ratio = devicePixelRatio;
    const x = Math.round(origin.x * ratio) / ratio;
    const y = Math.round(origin.y * ratio) / ratio;
    const { widthMm, heightMm } = this.drawer.paper;
    this.sheet.style.transform = `translate(${x}px, ${y}px)`;
    this.sheet.style.width = `${widthMm * pxPerMm}px`;
    this.sheet.style.height = `${heightMm * pxPerMm}px`;
    putCanvas(this.sharp, this.sharpRegion, { x, y }, pxPerMm);
    putCanvas(this.whole, this.wholeRegion, { x, y }, pxPerMm);
    this.whole.hidden = !same(this.wholeOf, this.content);
    this.renderRoot.querySelector('.lines')?.setAttribute('transform', `translate(${x} ${y}) scale(${pxPerMm})`);
  }

  override render() {
    const { reflectance } = this.drawer.paper;
    const paper = this.relative ? 'var(--white)' : srgbHexFromLab(labD50(reflectance));
    return html`<div
      class="frame ${this.view.whole ? '' : 'near'} ${this.moving ? 'moving' : ''}"
      tabindex="0"
      role="application"
      aria-label=${this.hint}
      @keydown=${this.onKey}
    >
      <div class="stage">
        <div class="sheet" style="background: ${paper}"></div>
        <canvas class="whole" aria-hidden="true" hidden></canvas>
        <canvas class="sharp" role="img" aria-label=${this.label}></canvas>
        <svg aria-hidden="true">
          ${pictureLines({ outline: this.outline, held: this.holds, spot: this.spot })}
        </svg>
      </div>
    </div>`;
  }

  private onKey(event: KeyboardEvent): void {
    if (event.key === 'Escape' && this.hand?.letGo() === true) event.preventDefault();
    if (event.key === 'Enter') this.dispatchEvent(new CustomEvent('read-place', { detail: this.view.middle }));
    const step = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
    if (step === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    const by = event.shiftKey ? 1 : 0.1;
    this.dispatchEvent(new CustomEvent('nudge', { detail: { dxMm: num(step, 0) * by, dyMm: num(step, 1) * by } }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-picture': BenchPicture;
  }
}
