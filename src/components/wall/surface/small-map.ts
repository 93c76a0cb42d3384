import { css, html, LitElement, nothing } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { num } from '../../../engine/base/at.ts';
import type { WallPlan } from '../../canvas/plan/wall-plan.ts';
import type { WallScene } from '../../canvas/wall-scene.ts';
import type { PrintFacts } from '../print/print-facts.ts';

const MOST_PX = 150;
/** Shown when less than so much of the wall is in view. */
const CLOSE = 0.45;

/** The whole wall in small, with what is in view; shown to who stands close. */
@customElement('wall-small-map')
export class SmallMap extends LitElement {
  static override styles = css`
    :host {
      position: absolute;
      right: 12px;
      top: 12px;
      z-index: 1;
    }
    div {
      position: relative;
      overflow: hidden;
      background: color-mix(in srgb, var(--table) 88%, transparent);
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
      border: 1.5px solid var(--accent);
      box-sizing: border-box;
      min-width: 5px;
      min-height: 5px;
      pointer-events: none;
    }
    @media (max-width: 760px) {
      :host {
        top: 60px;
        right: 8px;
      }
    }
  `;

  @state() private shown = false;
  @query('canvas') private canvas!: HTMLCanvasElement | null;
  @query('i') private frame!: HTMLElement | null;
  private plan: WallPlan | null = null;
  private drawn: WallPlan | null = null;
  private facts: PrintFacts | null = null;
  private scene: WallScene | null = null;

  /** To be called after each drawing of the wall. */
  follow(scene: WallScene, facts: PrintFacts): void {
    const { hanging } = scene;
    const { seen } = scene.steering;
    this.scene = scene;
    this.facts = facts;
    this.plan = hanging;
    const part = Math.min(1, seen.width / hanging.width) * Math.min(1, seen.height / hanging.height);
    this.shown = !scene.steering.atStart && hanging.sequence.length > 1 && part < CLOSE;
    if (this.shown && this.drawn !== hanging) this.requestUpdate();
    this.place();
  }

  private get scale(): number {
    return this.plan === null ? 1 : MOST_PX / Math.max(this.plan.width, this.plan.height);
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
    this.drawn = plan;
    const density = devicePixelRatio;
    canvas.width = Math.ceil(plan.width * scale * density);
    canvas.height = Math.ceil(plan.height * scale * density);
    const context = canvas.getContext('2d');
    if (context === null) return;
    const width = Math.max(1, plan.printWidth * scale * density);
    const height = Math.max(1, plan.printHeight * scale * density);
    for (const index of plan.sequence) {
      context.fillStyle = `rgb(${facts.tint(index).join(' ')})`;
      context.fillRect(num(plan.at, index * 2) * scale * density, num(plan.at, index * 2 + 1) * scale * density, width, height);
    }
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

declare global {
  interface HTMLElementTagNameMap {
    'wall-small-map': SmallMap;
  }
}
