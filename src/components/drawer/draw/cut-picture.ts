import { css, html, LitElement, nothing, svg } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { defined } from '../../../engine/base/at.ts';
import { roundTo } from '../../../engine/base/units.ts';
import { shapeBounds } from '../../../engine/geometry/rings.ts';
import type { Box } from '../../../engine/geometry/types.ts';
import type { OverPlace } from '../../../engine/shapes/draw/change.ts';
import type { Shape } from '../../../engine/shapes/types.ts';
import { holdPage } from '../../ui/hold-page.ts';
import { say } from '../../words/en/drawer/draw.ts';
import { outlinePath, placedTransform } from '../outline-path.ts';
import { ARROWS } from './arrows.ts';

/** Of the longer side of what is shown, left free around it. */
const MARGIN = 0.08;

/**
 * A shape with another over it, and what comes of the two; the other one is dragged.
 * @fires over CustomEvent<{ rightMm: number; downMm: number }>
 */
@customElement('cut-picture')
export class CutPicture extends LitElement {
  static override styles = css`
    :host {
      display: block;
      min-width: 0;
    }
    svg {
      display: block;
      width: 100%;
      height: min(52dvh, 520px);
      background: var(--film);
      box-shadow: var(--shadow);
      forced-color-adjust: none;
      user-select: none;
      -webkit-user-select: none;
    }
    path {
      fill: none;
      vector-effect: non-scaling-stroke;
    }
    .result {
      fill: var(--film-ink);
    }
    .chosen {
      stroke: var(--film-rest);
      stroke-width: 1.5px;
    }
    .other {
      fill: var(--film-accent);
      fill-opacity: 0.14;
      stroke: var(--film-accent);
      stroke-width: 2px;
      stroke-dasharray: 6 4;
      cursor: grab;
      touch-action: none;
      outline: none;
    }
    .other:focus-visible {
      stroke-width: 4px;
    }
    @media (max-width: 720px) {
      svg {
        height: 34dvh;
      }
    }
  `;

  @property({ attribute: false }) shape!: Shape;
  @property({ attribute: false }) other: Shape | null = null;
  @property({ attribute: false }) over: OverPlace = { rightMm: 0, downMm: 0, turnDeg: 0 };
  @property({ attribute: false }) result: Shape | null = null;
  /** The part that is shown while the other shape is dragged: it must not move under the hand. */
  @state() private held: { pointer: number; view: Box; rightMm: number; downMm: number } | null = null;
  @query('svg') private sheet!: SVGSVGElement;

  private view(): Box {
    if (this.held !== null) return this.held.view;
    const own = outlinePath(this.shape);
    const rings: ArrayLike<number>[] = [...this.shape.rings, ...(this.result?.rings ?? [])];
    if (this.other !== null) {
      const [x, y] = [own.xMm + this.over.rightMm, own.yMm + this.over.downMm];
      const half = Math.hypot(this.other.widthMm, this.other.heightMm) / 2;
      rings.push([x - half, y - half, x + half, y + half]);
    }
    const box = shapeBounds(rings);
    const free = Math.max(box.widthMm, box.heightMm, 1) * MARGIN;
    return { xMm: box.xMm - free, yMm: box.yMm - free, widthMm: box.widthMm + 2 * free, heightMm: box.heightMm + 2 * free };
  }

  private at(event: PointerEvent): DOMPoint {
    return new DOMPoint(event.clientX, event.clientY).matrixTransform(defined(this.sheet.getScreenCTM()).inverse());
  }

  private send(rightMm: number, downMm: number): void {
    this.dispatchEvent(new CustomEvent('over', { detail: { rightMm: roundTo(rightMm, 2), downMm: roundTo(downMm, 2) } }));
  }

  private down(event: PointerEvent): void {
    if (event.button !== 0 || this.held !== null) return;
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    const { x, y } = this.at(event);
    this.held = { pointer: event.pointerId, view: this.view(), rightMm: this.over.rightMm - x, downMm: this.over.downMm - y };
  }

  private move(event: PointerEvent): void {
    if (this.held?.pointer !== event.pointerId) return;
    const { x, y } = this.at(event);
    this.send(this.held.rightMm + x, this.held.downMm + y);
  }

  private up(event: PointerEvent): void {
    if (this.held?.pointer === event.pointerId) this.held = null;
  }

  private key(event: KeyboardEvent): void {
    const arrow = ARROWS[event.key];
    if (arrow === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    const by = event.shiftKey ? 10 : 1;
    this.send(this.over.rightMm + by * arrow[0], this.over.downMm + by * arrow[1]);
  }

  private otherPath() {
    const { other, over } = this;
    if (other === null) return nothing;
    const own = outlinePath(this.shape);
    const path = outlinePath(other);
    const placed = { shape: other.id, xMm: own.xMm + over.rightMm, yMm: own.yMm + over.downMm, turnDeg: over.turnDeg, scale: 1 };
    return svg`<path
      class="other"
      d=${path.d}
      fill-rule=${other.fillRule}
      transform=${placedTransform(placed, path)}
      tabindex="0"
      role="button"
      aria-label=${say.rightByMmDown(other.name, over.rightMm, over.downMm)}
      @pointerdown=${(event: PointerEvent) => this.down(event)}
      @pointermove=${(event: PointerEvent) => this.move(event)}
      @pointerup=${(event: PointerEvent) => this.up(event)}
      @pointercancel=${(event: PointerEvent) => this.up(event)}
      @touchstart=${holdPage()}
      @keydown=${(event: KeyboardEvent) => this.key(event)}
    />`;
  }

  override render() {
    const { xMm, yMm, widthMm, heightMm } = this.view();
    const own = outlinePath(this.shape);
    return html`<svg viewBox="${xMm} ${yMm} ${widthMm} ${heightMm}" role="group" aria-label=${say.whatComesOfIt}>
      ${this.result === null ? nothing : svg`<path class="result" d=${outlinePath(this.result).d} fill-rule=${this.result.fillRule} />`}
      ${svg`<path class="chosen" d=${own.d} />`} ${this.otherPath()}
    </svg>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'cut-picture': CutPicture;
  }
}
