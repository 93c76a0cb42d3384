import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { Picture } from '../../../workers/api/picture-api.ts';
import { engineFor } from '../../../workers/client/client.ts';
import type { Frame } from '../../canvas/draw/print-frame.ts';
import { putPicture } from '../../ui/print/picture-view.ts';
import { StatePlayer } from '../../ui/print/state-player.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/wall/print.ts';

const LEAST_PX = 320;
const PACE = { wholeMs: 3600, shortestMs: 45, longestMs: 220, barePaperMs: 220 };
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
@customElement('wall-lifted-print')
export class LiftedPrint extends LitElement {
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
  @query('canvas') private canvas!: HTMLCanvasElement | null;
  /** The print that is built up, with its pictures; null when none is. */
  private print: Lifted | null = null;
  private readonly player = new StatePlayer(this, PACE);
  private readonly drawing = new Work<Lifted>(this, {
    found: (lifted) => this.play(lifted),
    failed: (sentence) => this.dispatchEvent(new CustomEvent('wall-problem', { detail: sentence, bubbles: true, composed: true })),
  });

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

  /** The print that is built up, −1 when none is. */
  get index(): number {
    return this.print?.index ?? -1;
  }

  private play(print: Lifted): void {
    this.print = print;
    this.player.play(print.pulls.length);
  }

  hide(): void {
    this.drawing.clear();
    this.player.stop();
    this.print = null;
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

  private caption({ pulls, drawer }: Lifted, state: number) {
    const pull = pulls[state - 1];
    if (pull === undefined) return say.barePaper;
    const screen = drawer.screens.find((entry) => entry.id === pull.screen);
    const ink = drawer.inks.find((entry) => entry.id === pull.ink);
    return say.in(screen?.name ?? pull.screen, ink?.name ?? pull.ink);
  }

  override render() {
    const { print } = this;
    const state = this.player.shown;
    if (print === null || state === null) return nothing;
    const { left, top, width, height } = print.place;
    return html`<figure style="left:${left}px;top:${top}px;width:${width}px;height:${height}px">
      <canvas aria-hidden="true"></canvas>
      <figcaption><span>${this.caption(print, state)}</span><span class="soft">${say.of(state, print.pulls.length)}</span></figcaption>
    </figure>`;
  }

  override updated(): void {
    const picture = this.print?.pictures[this.player.shown ?? -1];
    if (picture !== undefined && this.canvas !== null) putPicture(this.canvas, picture);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-lifted-print': LiftedPrint;
  }
}
