import { html, LitElement, nothing, svg } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { defined, entryAt, num } from '../../../engine/base/at.ts';
import { roundTo } from '../../../engine/base/units.ts';
import type { DrawPoint } from '../../../engine/shapes/draw/curve.ts';
import { MOST_PEN_POINTS } from '../../../engine/shapes/draw/pen.ts';
import type { PageSize } from '../../../engine/shapes/place/lay-out.ts';
import { holdPage } from '../../ui/hold-page.ts';
import { say } from '../../words/en/drawer/draw.ts';
import { ARROWS } from './arrows.ts';
import { boardStyle } from './board-style.ts';
import { type BoardPlace, draggedPoint, handleEnds, type Hold, nearestHandle, nearestPoint } from './point-drag.ts';

/** Points as they are after a step on the board; `done` is false while one is still being dragged. */
export interface BoardStep {
  points: readonly DrawPoint[];
  chosen: number;
  done: boolean;
}

/** How near to a point a press takes it, px: of a mouse or pen, and of a finger. */
const REACH_PX = { fine: 9, finger: 20 };

/** Pieces side by side are told apart by as many tones. */
const UNDER_TONES = 3;

/** A press that moves less pulls no handles out of a point, px. */
const PULL_PX = 6;

/** A cross at most so far from a point stands on it, mm. */
const ON_MM = 0.5;

/**
 * A sheet in mm on which closed outlines are drawn, or a line over what lies there.
 * @fires step CustomEvent<BoardStep>
 * @fires pen CustomEvent<number[]>: a line was drawn freehand, flat, mm
 */
@customElement('draw-board')
export class DrawBoard extends LitElement {
  static override styles = boardStyle;

  @property({ attribute: false }) size: PageSize = { widthMm: 100, heightMm: 100 };
  @property() tool: 'freehand' | 'points' = 'freehand';
  @property({ attribute: false }) points: readonly DrawPoint[] = [];
  /** Place of the chosen point; −1 for none. */
  @property({ type: Number }) chosen = -1;
  /** Whether new points are round. */
  @property({ type: Boolean }) round = false;
  /** Whether a line is drawn that stays open. */
  @property({ type: Boolean }) open = false;
  /** Whether the outline encloses something. */
  @property({ type: Boolean }) closed = false;
  /** What lies under it, each part as SVG path data. */
  @property({ attribute: false }) under: readonly string[] = [];
  /** Outline through the points, as SVG path data. */
  @property() outline = '';
  @state() private pen: number[] = [];
  @state() private cross: { xMm: number; yMm: number } | null = null;
  @query('svg') private sheet!: SVGSVGElement;
  private pointer: number | null = null;
  private untouched: readonly DrawPoint[] = [];
  private hold: Hold = { what: 'point' };

  private at(event: PointerEvent): BoardPlace {
    const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(defined(this.sheet.getScreenCTM()).inverse());
    const on = (value: number, most: number): number => roundTo(Math.min(most, Math.max(0, value)), 2);
    return { xMm: on(point.x, this.size.widthMm), yMm: on(point.y, this.size.heightMm) };
  }

  private step(points: readonly DrawPoint[], chosen: number, done: boolean): void {
    this.dispatchEvent(new CustomEvent<BoardStep>('step', { detail: { points, chosen, done } }));
  }

  private down(event: PointerEvent): void {
    if (event.button !== 0 || this.pointer !== null) return;
    this.pointer = event.pointerId;
    this.sheet.setPointerCapture(event.pointerId);
    const at = this.at(event);
    if (this.tool === 'freehand') return void (this.pen = [at.xMm, at.yMm]);
    this.untouched = this.points;
    this.cross = at;
    const mmPerPx = 1 / defined(this.sheet.getScreenCTM()).a;
    const within = (event.pointerType === 'touch' ? REACH_PX.finger : REACH_PX.fine) * mmPerPx;
    const side = nearestHandle(this.points[this.chosen], at, within);
    const near = nearestPoint(this.points, at, within);
    this.hold = { what: 'pull', fromMm: PULL_PX * mmPerPx };
    if (side !== null) this.hold = { what: 'handle', side };
    else if (near < 0) this.add(at, false);
    else {
      if (!event.altKey) this.hold = { what: 'point' };
      this.step(this.points, near, false);
    }
  }

  private add(at: BoardPlace, done: boolean): void {
    const next = this.chosen < 0 ? this.points.length : this.chosen + 1;
    this.step(this.points.toSpliced(next, 0, { ...at, round: this.round }), next, done);
  }

  private move(event: PointerEvent): void {
    if (this.pointer !== event.pointerId) return;
    if (this.tool === 'points') {
      this.cross = this.at(event);
      return this.step(this.dragged(event), this.chosen, false);
    }
    // Browsers give several places of a quick pen at once.
    const places = event.getCoalescedEvents?.() ?? [];
    const drawn = (places.length === 0 ? [event] : places).map((one) => this.at(one));
    // One more than may be is refused in a sentence; beyond, nothing is gained.
    if (this.pen.length / 2 <= MOST_PEN_POINTS) this.pen = [...this.pen, ...drawn.flatMap(({ xMm, yMm }) => [xMm, yMm])];
  }

  private dragged(event: PointerEvent): readonly DrawPoint[] {
    const held = this.points[this.chosen];
    return held === undefined ? this.points : this.points.with(this.chosen, draggedPoint(held, this.hold, this.at(event)));
  }

  private up(event: PointerEvent): void {
    if (this.pointer !== event.pointerId) return;
    this.pointer = null;
    if (this.tool === 'points') return this.step(this.points, this.chosen, true);
    const { pen } = this;
    this.pen = [];
    this.dispatchEvent(new CustomEvent<number[]>('pen', { detail: pen }));
  }

  /** The browser took the pointer away: what it was doing counts for nothing. */
  private breakOff(event: PointerEvent): void {
    if (this.pointer !== event.pointerId) return;
    this.pointer = null;
    this.pen = [];
    if (this.tool === 'points') this.step(this.untouched, Math.min(this.chosen, this.untouched.length - 1), false);
  }

  private key(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey || this.tool !== 'points') return;
    const arrow = ARROWS[event.key];
    const { widthMm, heightMm } = this.size;
    const cross = this.cross ?? this.points[this.chosen] ?? { xMm: Math.round(widthMm / 2), yMm: Math.round(heightMm / 2) };
    if (arrow !== undefined) {
      const by = event.shiftKey ? 10 : 1;
      const on = (value: number, most: number): number => Math.min(most, Math.max(0, value));
      this.cross = { xMm: on(cross.xMm + by * arrow[0], widthMm), yMm: on(cross.yMm + by * arrow[1], heightMm) };
    } else if (event.key === 'Enter') {
      this.cross = { xMm: cross.xMm, yMm: cross.yMm };
      const there = nearestPoint(this.points, cross, ON_MM);
      if (there >= 0) this.step(this.points, there, false);
      else this.add(this.cross, true);
    } else if (event.key === 'Delete' || event.key === 'Backspace') {
      if (this.chosen >= 0) this.step(this.points.toSpliced(this.chosen, 1), Math.min(this.chosen, this.points.length - 2), true);
    } else return;
    event.preventDefault();
  }

  private grid() {
    const { widthMm, heightMm } = this.size;
    const every = widthMm > 250 ? 50 : 10;
    let d = '';
    for (let x = every; x < widthMm; x += every) d += `M${x} 0V${heightMm}`;
    for (let y = every; y < heightMm; y += every) d += `M0 ${y}H${widthMm}`;
    return svg`<path class="grid" d=${d} />`;
  }

  private crossMark() {
    const { cross } = this;
    if (cross === null || this.tool === 'freehand') return nothing;
    const arm = this.size.widthMm / 40;
    return svg`<path class="cross" d=${`M${cross.xMm - arm} ${cross.yMm}h${2 * arm}M${cross.xMm} ${cross.yMm - arm}v${2 * arm}`} />`;
  }

  private penLine(): string {
    let d = '';
    for (let i = 0; i + 1 < this.pen.length; i += 2) d += `${i === 0 ? 'M' : 'L'}${num(this.pen, i)} ${num(this.pen, i + 1)}`;
    return d;
  }

  private arms() {
    const point = this.points[this.chosen];
    if (this.tool === 'freehand' || point === undefined) return nothing;
    return handleEnds(point).map(
      ({ xMm, yMm }) =>
        svg`<path class="arm" d=${`M${point.xMm} ${point.yMm}L${xMm} ${yMm}`} /><path class="knob" d=${`M${xMm} ${yMm}h0`} />`,
    );
  }

  private pointMarks() {
    if (this.tool === 'freehand') return nothing;
    return this.points.map(
      ({ xMm, yMm, round }, i) =>
        svg`<path class="point ${round ? 'round' : ''} ${i === this.chosen ? 'chosen' : ''}" d=${`M${xMm} ${yMm}h0`} />`,
    );
  }

  override render() {
    const { widthMm, heightMm } = this.size;
    const how = this.tool === 'points' ? say.arrowKeysMoveCross : say.drawLine(this.open);
    const cross = this.cross === null ? '' : say.crossAtMm(this.cross.xMm, this.cross.yMm);
    return html`<svg
      viewBox="0 0 ${widthMm} ${heightMm}"
      style="aspect-ratio:${widthMm} / ${heightMm};width:min(100%, calc(var(--board-height, 62dvh) * ${widthMm / heightMm}))"
      tabindex="0"
      role="application"
      aria-label=${say.drawingBoardMm(widthMm, heightMm, how, cross)}
      @pointerdown=${this.down}
      @pointermove=${this.move}
      @pointerup=${this.up}
      @pointercancel=${this.breakOff}
      @touchstart=${holdPage()}
      @keydown=${this.key}
    >
      ${this.grid()} ${this.under.map((d, i) => svg`<path class="under tone-${i % UNDER_TONES}" d=${d} />`)}
      ${svg`<path class=${this.open ? 'blade' : this.closed ? 'face' : 'open'} d=${this.outline} />`}
      ${svg`<path class="pen" d=${this.penLine()} />`} ${this.arms()} ${this.pointMarks()} ${this.crossMark()}
    </svg>`;
  }

  protected override updated(changed: Map<PropertyKey, unknown>): void {
    // Where a point is chosen elsewhere, keys go on from it.
    if (changed.has('chosen') && this.chosen >= 0 && this.chosen < this.points.length && this.pointer === null) {
      const { xMm, yMm } = entryAt(this.points, this.chosen);
      if (this.cross !== null && (this.cross.xMm !== xMm || this.cross.yMm !== yMm)) this.cross = { xMm, yMm };
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'draw-board': DrawBoard;
  }
}
