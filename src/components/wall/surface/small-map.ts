import { css, html, LitElement, nothing } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { num } from '../../../engine/base/at.ts';
import type { WallPlan } from '../../canvas/plan/wall-plan.ts';
import type { WallScene } from '../../canvas/wall-scene.ts';
import { say } from '../../words/en/wall/surface.ts';
import type { PrintFacts } from '../print/print-facts.ts';

/** The room beside the rail, px; the lines there keep it free (wall-view-style.ts). */
const ROOM = { width: 150, height: 92 };
/** On a narrow page it lies over the wall, and only as long as the wall moves. */
const NARROW_PX = 760;
const MOST_PX = 110;
const STAYS_MS = 1200;
/** From the edge of the surface, and round a print in focus for its ring, px. */
const EDGE_PX = 12;
const RING_PX = 8;
const CORNERS = [say.topRight, say.bottomLeft, say.topLeft] as const;
type Corner = (typeof CORNERS)[number];
/** Shown when less than so much of the wall is in view. */
const CLOSE = 0.45;

/**
 * The whole wall in small, with what is in view. Beside the rail it has room of its own; on a narrow page it shows
 * while one walks along the wall, in a corner where it covers nothing of the print in focus.
 */
@customElement('wall-small-map')
export class SmallMap extends LitElement {
  static override styles = css`
    :host {
      position: absolute;
      left: 12px;
      top: calc(100% + 8px);
      z-index: 1;
    }
    :host([corner]) {
      left: auto;
      right: 12px;
      top: 12px;
    }
    :host([corner~='bottom']) {
      top: auto;
      bottom: 12px;
    }
    :host([corner~='left']) {
      right: auto;
      left: 12px;
    }
    div {
      position: relative;
      overflow: hidden;
      background: var(--wall-deep);
      outline: 1px solid var(--line);
      cursor: crosshair;
      touch-action: none;
    }
    canvas {
      display: block;
      width: 100%;
      height: 100%;
    }
    i {
      position: absolute;
      border: 2px solid var(--accent);
      outline: 1.5px solid var(--sheet);
      box-sizing: border-box;
      min-width: 5px;
      min-height: 5px;
      pointer-events: none;
    }
  `;

  @state() private shown = false;
  @query('canvas') private canvas!: HTMLCanvasElement | null;
  @query('i') private frame!: HTMLElement | null;
  private plan: WallPlan | null = null;
  private drawn: WallPlan | null = null;
  private drawnOn: HTMLCanvasElement | null = null;
  /** Device px to a wall unit. */
  private drawnSize = 0;
  /** How many prints were known when it was drawn. */
  private drawnCount = 0;
  private facts: PrintFacts | null = null;
  private scene: WallScene | null = null;
  /** Where one stood when it was last looked at. */
  private stand = '';
  private leaves: ReturnType<typeof setTimeout> | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.leaves);
  }

  /** To be called after each drawing of the wall. */
  follow(scene: WallScene, facts: PrintFacts): void {
    const { hanging } = scene;
    const { seen } = scene.steering;
    this.scene = scene;
    this.facts = facts;
    this.plan = hanging;
    const part = Math.min(1, seen.width / hanging.width) * Math.min(1, seen.height / hanging.height);
    const close = !scene.steering.atWhole && part < CLOSE;
    const corner = this.narrow ? this.freeCorner(scene) : null;
    const moving = !this.narrow || (close && this.isMoving(seen));
    this.shown = hanging.sequence.length > 1 && moving && (!this.narrow || (close && corner !== null));
    if (corner !== null) this.setAttribute('corner', corner);
    else this.removeAttribute('corner');
    if (this.shown && (this.drawn !== hanging || this.drawnCount !== facts.count)) this.requestUpdate();
    this.place();
  }

  private get narrow(): boolean {
    return innerWidth <= NARROW_PX;
  }

  /** Whether one moved a moment ago; sees to it that it goes when one stands still. */
  private isMoving({ x, y, width }: WallScene['steering']['seen']): boolean {
    const stand = `${Math.round(x)} ${Math.round(y)} ${Math.round(width)}`;
    const first = this.stand === '';
    if (stand === this.stand) return this.shown;
    this.stand = stand;
    clearTimeout(this.leaves);
    this.leaves = setTimeout(() => (this.shown = false), STAYS_MS);
    // Where one comes in is no walk.
    return !first;
  }

  /** The first corner in which the map covers nothing of the print in focus; null when there is none. */
  private freeCorner(scene: WallScene): Corner | null {
    const { focus, planned, size } = scene;
    if (focus < 0 || !planned.hangs(focus)) return 'top right';
    const { left, top, width, height } = scene.frameOf(focus);
    const map = { width: scene.hanging.width * this.scale + EDGE_PX, height: scene.hanging.height * this.scale + EDGE_PX };
    // The button to the whole wall stands in the other.
    const free = CORNERS.find((corner) => {
      const across = corner.endsWith('right') ? left + width + RING_PX <= size.width - map.width : left - RING_PX >= map.width;
      const down = corner.startsWith('top') ? top - RING_PX >= map.height : top + height + RING_PX <= size.height - map.height;
      return across || down;
    });
    return free ?? null;
  }

  private get scale(): number {
    const { plan } = this;
    if (plan === null) return 1;
    return this.narrow ? MOST_PX / Math.max(plan.width, plan.height) : Math.min(ROOM.width / plan.width, ROOM.height / plan.height);
  }

  private place(): void {
    const { scene, frame, scale } = this;
    if (scene === null || frame === null) return;
    const { x, y, width, height } = scene.steering.seen;
    Object.assign(frame.style, {
      left: `${x * scale}px`,
      top: `${y * scale}px`,
      width: `${width * scale}px`,
      height: `${height * scale}px`,
    });
  }

  private readonly onPointer = (event: PointerEvent): void => {
    event.stopPropagation();
    if (event.type === 'pointermove' && event.buttons === 0) return;
    const box = (event.currentTarget as HTMLElement).getBoundingClientRect();
    this.scene?.steering.lookAt((event.clientX - box.left) / this.scale, (event.clientY - box.top) / this.scale);
  };

  protected override updated(): void {
    const { canvas, plan, facts, scale } = this;
    if (canvas === null || plan === null || facts === null) {
      this.drawn = null;
      return;
    }
    const size = devicePixelRatio * scale;
    const grown = this.drawn === plan && this.drawnOn === canvas && this.drawnSize === size && this.drawnCount <= facts.count;
    const context = canvas.getContext('2d');
    // Of a wall that grows, only what came since.
    const prints = grown ? Array.from({ length: facts.count - this.drawnCount }, (_, i) => this.drawnCount + i) : plan.sequence;
    if (!grown) {
      canvas.width = Math.ceil(plan.width * size);
      canvas.height = Math.ceil(plan.height * size);
    }
    Object.assign(this, { drawn: plan, drawnOn: canvas, drawnSize: size, drawnCount: facts.count });
    if (context !== null) drawTints(context, prints, { plan, facts, size });
    this.place();
  }

  override render() {
    if (!this.shown || this.plan === null) return nothing;
    const { width, height } = this.plan;
    return html`<div aria-hidden="true" style="width:${width * this.scale}px;height:${height * this.scale}px" @pointerdown=${this.onPointer} @pointermove=${this.onPointer}>
      <canvas></canvas><i></i>
    </div>`;
  }
}

/** Fills the places of prints with their colours. */
function drawTints(
  context: CanvasRenderingContext2D,
  prints: readonly number[],
  { plan, facts, size }: { plan: WallPlan; facts: PrintFacts; size: number },
): void {
  const width = Math.max(1, plan.printWidth * size);
  const height = Math.max(1, plan.printHeight * size);
  let last = '';
  for (const index of prints) {
    const colour = `rgb(${facts.tint(index).join(' ')})`;
    if (colour !== last) context.fillStyle = last = colour;
    context.fillRect(num(plan.at, index * 2) * size, num(plan.at, index * 2 + 1) * size, width, height);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-small-map': SmallMap;
  }
}
