import { css, html, LitElement, nothing, svg } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { defined, entryAt } from '../../engine/base/at.ts';
import { toOffsetGrid } from '../../engine/base/units.ts';
import type { Paper } from '../../engine/ink/types.ts';
import type { PlacedShape, Shape } from '../../engine/shapes/types.ts';
import { holdPage } from '../ui/hold-page.ts';
import { say } from '../words/en/drawer/room.ts';
import { outlinePath, placedTransform } from './outline-path.ts';
import type { ThinShown } from './screen-thin.ts';
import { thinMarks } from './thin-marks.ts';

/** A place that a shape is moved to; `done` is false while it is still being dragged. */
export interface Move {
  index: number;
  xMm: number;
  yMm: number;
  done: boolean;
}

const ARROWS: Record<string, [number, number]> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/**
 * The sheet with what one screen prints; shapes are moved by dragging or with the arrow keys.
 * @fires move CustomEvent<Move>
 * @fires move-back Event: the drag was broken off, and its shape belongs where it was
 * @fires choose CustomEvent<number>
 */
@customElement('sheet-preview')
export class SheetPreview extends LitElement {
  static override styles = [
    css`
      :host {
        display: block;
      }
      svg {
        display: block;
        width: 100%;
        height: auto;
        background: var(--film);
        forced-color-adjust: none;
        box-shadow: var(--shadow);
        user-select: none;
      }
      .printable {
        fill: none;
        stroke: var(--film-soft);
        stroke-width: 1;
        stroke-dasharray: 3 4;
        vector-effect: non-scaling-stroke;
        pointer-events: none;
      }
      g {
        cursor: grab;
        touch-action: none;
        outline: none;
      }
      g.moving {
        cursor: grabbing;
      }
      path {
        fill: var(--film-ink);
        stroke: transparent;
        stroke-width: 10;
        vector-effect: non-scaling-stroke;
      }
      g.rest path.face {
        fill: var(--film-rest);
      }
      path.face {
        pointer-events: none;
        stroke: none;
      }
      .thin {
        fill: var(--mark);
        stroke: var(--mark);
        stroke-width: 1.5;
        stroke-linejoin: round;
        pointer-events: none;
      }
      .pointed {
        fill: none;
        stroke: var(--mark);
        stroke-width: 2;
        vector-effect: non-scaling-stroke;
        pointer-events: none;
      }
      g:focus-visible path.face {
        stroke: var(--film-accent);
        stroke-width: 3;
        paint-order: stroke;
      }
    `,
  ];

  @property({ attribute: false }) paper!: Paper;
  @property({ attribute: false }) placed: readonly PlacedShape[] = [];
  @property({ attribute: false }) shapes: readonly Shape[] = [];
  @property({ type: Number }) chosen = 0;
  /** Thin places, and the one that is pointed out. */
  @property({ attribute: false }) thin: ThinShown | null = null;
  @state() private moving: { index: number; pointer: number; xMm: number; yMm: number } | null = null;
  @query('svg') private sheet!: SVGSVGElement;

  private at(event: PointerEvent): { xMm: number; yMm: number } {
    const inverse = defined(this.sheet.getScreenCTM()).inverse();
    const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(inverse);
    return { xMm: point.x, yMm: point.y };
  }

  private send(move: Move): void {
    this.dispatchEvent(new CustomEvent<Move>('move', { detail: move }));
  }

  private take(event: PointerEvent, index: number): void {
    if (event.button !== 0) return;
    const at = this.at(event);
    const placed = entryAt(this.placed, index);
    this.moving = { index, pointer: event.pointerId, xMm: placed.xMm - at.xMm, yMm: placed.yMm - at.yMm };
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    this.dispatchEvent(new CustomEvent<number>('choose', { detail: index }));
  }

  private drag(event: PointerEvent, done: boolean): void {
    const { moving } = this;
    if (moving === null || moving.pointer !== event.pointerId) return;
    if (done) this.moving = null;
    const at = this.at(event);
    const xMm = toOffsetGrid(at.xMm + moving.xMm);
    const yMm = toOffsetGrid(at.yMm + moving.yMm);
    this.send({ index: moving.index, xMm, yMm, done });
  }

  /** The browser took the pointer away: where it says that was is no place. */
  private breakOff(event: PointerEvent): void {
    if (this.moving?.pointer !== event.pointerId) return;
    this.moving = null;
    this.dispatchEvent(new Event('move-back'));
  }

  private nudge(event: KeyboardEvent, index: number): void {
    const arrow = ARROWS[event.key];
    if (arrow === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    const step = event.shiftKey ? 10 : 1;
    const { xMm, yMm } = entryAt(this.placed, index);
    this.send({ index, xMm: toOffsetGrid(xMm + arrow[0] * step), yMm: toOffsetGrid(yMm + arrow[1] * step), done: true });
  }

  private piece(placed: PlacedShape, index: number) {
    const shape = this.shapes.find((entry) => entry.id === placed.shape);
    if (shape === undefined) return nothing;
    const path = outlinePath(shape);
    const transform = placedTransform(placed, path);
    const state = `${this.moving?.index === index ? 'moving ' : ''}${this.chosen === index ? '' : 'rest'}`;
    return svg`<g
      class=${state}
      tabindex="0"
      role="button"
      aria-label=${say.atMmArrowKeys(shape.name, placed.xMm, placed.yMm)}
      @pointerdown=${(event: PointerEvent) => this.take(event, index)}
      @pointermove=${(event: PointerEvent) => this.drag(event, false)}
      @pointerup=${(event: PointerEvent) => this.drag(event, true)}
      @pointercancel=${(event: PointerEvent) => this.breakOff(event)}
      @touchstart=${holdPage()}
      @focus=${() => this.dispatchEvent(new CustomEvent<number>('choose', { detail: index }))}
      @keydown=${(event: KeyboardEvent) => this.nudge(event, index)}
    >
      <path d=${path.d} fill-rule=${shape.fillRule} transform=${transform} />
      <path class="face" d=${path.d} fill-rule=${shape.fillRule} transform=${transform} />
    </g>`;
  }

  override render() {
    const { widthMm, heightMm, printable } = this.paper;
    return html`<svg viewBox="0 0 ${widthMm} ${heightMm}" role="group" aria-label=${say.sheetMmWidthMm(widthMm, heightMm)}>
      ${this.placed.map((placed, index) => this.piece(placed, index))}
      ${thinMarks(this.thin)}
      ${svg`<rect class="printable" x=${printable.xMm} y=${printable.yMm} width=${printable.widthMm} height=${printable.heightMm} />`}
    </svg>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'sheet-preview': SheetPreview;
  }
}
