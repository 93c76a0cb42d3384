import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { Picture } from '../../../workers/api/picture-api.ts';
import { engineFor } from '../../../workers/client/client.ts';
import type { Frame } from '../../canvas/draw/print-frame.ts';
import { Work } from '../../ui/work.ts';

const LEAST_PX = 320;
const WHOLE_MS = 3600;
const SLOWEST_MS = 220;
const QUICKEST_MS = 45;
const CAPTION_PX = 40;
/** Pictures are drawn twice as fine as they show, for smooth edges, as far as memory is in reason. */
const FINER = 2;
const MOST_PX = 1000;
const MOST_BYTES = 96e6;

function within(start: number, length: number, room: number): number {
  return Math.max(12, Math.min(room - length - 12, start));
}

/** A print taken off the wall, and its states. */
interface Lifted {
  index: number;
  pulls: readonly Pull[];
  drawer: Studio;
  place: Frame;
  pictures: Picture[];
}

/** A print taken off the wall, that builds itself state by state from bare paper. */
@customElement('build-up')
export class BuildUp extends LitElement {
  static override styles = css`
    :host {
      position: absolute;
      inset: 0;
      pointer-events: none;
      overflow: hidden;
    }
    figure {
      position: absolute;
      margin: 0;
      box-shadow: var(--shadow-high);
    }
    canvas {
      display: block;
      width: 100%;
      height: 100%;
    }
    figcaption {
      position: absolute;
      box-sizing: border-box;
      inset: 100% 0 auto;
      display: flex;
      gap: var(--space-5);
      justify-content: space-between;
      padding: var(--space-4) var(--space-6);
      min-height: 40px;
      background: var(--table);
      color: var(--ink);
      font-size: var(--type-label);
      line-height: 1.35;
    }
    .soft {
      white-space: nowrap;
      color: var(--ink-soft);
    }
  `;

  @property({ attribute: false }) relative = true;
  @state() private pictures: Picture[] = [];
  @state() private step = 0;
  @query('canvas') private canvas!: HTMLCanvasElement | null;
  /** The print that is built, −1 when none is. */
  index = -1;
  private place: Frame | null = null;
  private pulls: readonly Pull[] = [];
  private drawer: Studio | null = null;
  private readonly drawing = new Work<Lifted>(this, {
    found: (lifted) => this.play(lifted),
    failed: (sentence) => this.dispatchEvent(new CustomEvent('wall-problem', { detail: sentence, bubbles: true, composed: true })),
  });
  private timer: ReturnType<typeof setTimeout> | undefined;

  /** Builds a print, from where it hangs now; tells `wall-problem` when it cannot. */
  show(index: number, print: { pulls: readonly Pull[]; drawer: Studio }, frame: Frame): Promise<void> {
    this.hide();
    const { pulls, drawer } = print;
    const place = this.lifted(frame);
    const whole = ((pulls.length + 1) * 4 * frame.width) / frame.height;
    const heightPx = Math.round(Math.min(MOST_PX, place.height * FINER, Math.sqrt(MOST_BYTES / whole)));
    return this.drawing.start(async () => {
      const pictures = await engineFor('picture').states({ studio: drawer, pulls, heightPx, relative: this.relative });
      return { index, pulls, drawer, place, pictures };
    });
  }

  private play({ index, pulls, drawer, place, pictures }: Lifted): void {
    this.index = index;
    this.pulls = pulls;
    this.drawer = drawer;
    this.place = place;
    this.pictures = pictures;
    this.step = 0;
    const pause = Math.max(QUICKEST_MS, Math.min(SLOWEST_MS, WHOLE_MS / pictures.length));
    const next = (): void => {
      if (this.step >= this.pictures.length - 1) return;
      this.step++;
      this.timer = setTimeout(next, pause);
    };
    this.timer = setTimeout(next, SLOWEST_MS);
  }

  hide(): void {
    this.drawing.stop();
    clearTimeout(this.timer);
    this.index = -1;
    this.pictures = [];
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.hide();
  }

  /** The print's own place, but large enough to see it build, and within the wall. */
  private lifted(frame: Frame): Frame {
    const { clientWidth, clientHeight } = this;
    const most = Math.min(clientHeight - CAPTION_PX - 24, ((clientWidth - 24) * frame.height) / frame.width);
    const height = Math.max(80, Math.min(most, Math.max(LEAST_PX, frame.height)));
    const width = (height * frame.width) / frame.height;
    return {
      left: Math.round(within(frame.left + (frame.width - width) / 2, width, clientWidth)),
      top: Math.round(within(frame.top + (frame.height - height) / 2, height, clientHeight - CAPTION_PX)),
      width: Math.round(width),
      height: Math.round(height),
    };
  }

  private caption() {
    const pull = this.pulls[this.step - 1];
    if (pull === undefined) return 'Bare paper';
    const screen = this.drawer?.screens.find((entry) => entry.id === pull.screen);
    const ink = this.drawer?.inks.find((entry) => entry.id === pull.ink);
    return `${screen?.name ?? pull.screen} in ${ink?.name ?? pull.ink}`;
  }

  override render() {
    const { place } = this;
    if (this.pictures.length === 0 || place === null) return nothing;
    return html`<figure style="left:${place.left}px;top:${place.top}px;width:${place.width}px;height:${place.height}px">
      <canvas aria-hidden="true"></canvas>
      <figcaption><span>${this.caption()}</span><span class="soft">${this.step} of ${this.pulls.length}</span></figcaption>
    </figure>`;
  }

  override updated(): void {
    const picture = this.pictures[this.step];
    const { canvas } = this;
    if (picture === undefined || canvas === null) return;
    if (canvas.width !== picture.widthPx) canvas.width = picture.widthPx;
    if (canvas.height !== picture.heightPx) canvas.height = picture.heightPx;
    canvas.getContext('2d')?.putImageData(new ImageData(picture.pixels, picture.widthPx, picture.heightPx), 0, 0);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'build-up': BuildUp;
  }
}
