import { css, html, LitElement, nothing, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { num } from '../../../engine/base/at.ts';
import { toOffsetGrid } from '../../../engine/base/units.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { Picture } from '../../../workers/api/picture-api.ts';
import '../../ui/print/picture-view.ts';
import { controls } from '../../ui/controls-style.ts';
import { holdPage } from '../../ui/hold-page.ts';
import { pathOf, restOutline } from '../../ui/print/screen-outline.ts';
import { mmText, screenWords } from '../../ui/words.ts';
import { say } from '../../words/en/lesson/board.ts';

/** Where a pull was moved to: how far it lies from where it was drawn. */
export interface PullOffset {
  pull: string;
  dxMm: number;
  dyMm: number;
}

/** Arrow keys move by this; with Shift ten times as far, mm. */
const STEP_MM = 5;
/** A finger that moves less than this taps, px. */
const FINGER_PX = 6;

function within(mm: number, most: number): number {
  return toOffsetGrid(Math.min(most, Math.max(-most, mm)));
}

const paths = new WeakMap<object, string>();

/**
 * The print with its shapes to be moved: by dragging, or by arrow keys once one is chosen.
 * @fires pull-select CustomEvent<string>
 * @fires pull-offset CustomEvent<PullOffset>
 * @fires drag-state CustomEvent<boolean>: true while a shape is dragged
 */
@customElement('ps-lesson-sheet')
export class LessonSheet extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
      }
      .sheet {
        position: relative;
        background: var(--white);
        box-shadow: var(--shadow);
        overflow: hidden;
      }
      svg {
        position: absolute;
        inset: 0;
        width: 100%;
        height: 100%;
        touch-action: pan-y;
      }
      path {
        fill: transparent;
        stroke: transparent;
        cursor: grab;
        outline: none;
      }
      path.line {
        pointer-events: none;
        fill: none;
        stroke-width: 2.5px;
        vector-effect: non-scaling-stroke;
      }
      /* The chosen shape's line is there while one is at it, and does not lie on the print else. */
      .sheet:not(:hover, :focus-within) path.line:not(.dragged) {
        visibility: hidden;
      }
      path.halo {
        stroke: var(--white);
        stroke-width: 4.5px;
        stroke-opacity: 0.8;
      }
      path.edge {
        stroke: var(--on-stock);
        stroke-dasharray: 6 4;
      }
      .outline {
        position: absolute;
        inset: 0;
        --picture-ground: transparent;
        pointer-events: none;
      }
      path.bare {
        pointer-events: none;
        fill: none;
        stroke: var(--on-stock);
        stroke-width: 1.5px;
        vector-effect: non-scaling-stroke;
      }
      path.hit.dragged {
        cursor: grabbing;
      }
    `,
  ];

  /** In the order of the lesson. */
  @property({ attribute: false }) pulls: readonly Pull[] = [];
  @property({ attribute: false }) studio!: Studio;
  @property({ attribute: false }) picture: Picture | null = null;
  @property({ attribute: false }) selected: string | null = null;
  @property() label = '';
  /** Lines round what differs from another print; null for none. */
  @property({ attribute: false }) outline: Picture | null = null;
  /** Whether the print is hidden and only its outlines show. */
  @property({ type: Boolean }) covered = false;
  /** Whether the shapes stay where they are. */
  @property({ type: Boolean }) fixed = false;
  @state() private drag: { pull: string; pointer: number; x: number; y: number; dxMm: number; dyMm: number; moved: boolean } | null = null;

  /** Whether the shape under the finger was chosen before: on another one a finger may want to scroll. */
  private holds = false;

  private tell<T>(name: string, detail: T): void {
    this.dispatchEvent(new CustomEvent<T>(name, { detail }));
  }

  private moveTo(pull: Pull, dxMm: number, dyMm: number): void {
    const { widthMm, heightMm } = this.studio.paper;
    const x = within(dxMm, widthMm);
    const y = within(dyMm, heightMm);
    if (x !== pull.dxMm || y !== pull.dyMm) this.tell<PullOffset>('pull-offset', { pull: pull.id, dxMm: x, dyMm: y });
  }

  private onDown(event: PointerEvent, pull: Pull): void {
    if (event.button !== 0) return;
    if (this.fixed) {
      this.tell('pull-select', pull.id);
      return;
    }
    this.holds = pull.id === this.selected;
    this.tell('pull-select', pull.id);
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    this.drag = {
      pull: pull.id,
      pointer: event.pointerId,
      x: event.clientX,
      y: event.clientY,
      dxMm: pull.dxMm,
      dyMm: pull.dyMm,
      moved: false,
    };
    this.tell('drag-state', true);
  }

  private onMove(event: PointerEvent, pull: Pull): void {
    const { drag } = this;
    if (drag?.pointer !== event.pointerId || drag.pull !== pull.id) return;
    const mmPerPx = this.studio.paper.widthMm / this.getBoundingClientRect().width;
    const [x, y] = [event.clientX - drag.x, event.clientY - drag.y];
    if (!drag.moved && event.pointerType === 'touch' && Math.hypot(x, y) < FINGER_PX) return;
    if (!drag.moved) this.drag = { ...drag, moved: true };
    this.moveTo(pull, drag.dxMm + x * mmPerPx, drag.dyMm + y * mmPerPx);
  }

  private onUp(event: PointerEvent): void {
    if (this.drag?.pointer !== event.pointerId) return;
    this.drag = null;
    this.tell('drag-state', false);
  }

  /** The page scrolls instead: the shape belongs where it was. */
  private onCancel(event: PointerEvent, pull: Pull): void {
    const { drag } = this;
    if (drag?.pointer !== event.pointerId) return;
    if (drag.moved) this.moveTo(pull, drag.dxMm, drag.dyMm);
    this.onUp(event);
  }

  private onKey(event: KeyboardEvent, pull: Pull): void {
    const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
    if (event.key === 'Enter') this.tell('pull-select', pull.id);
    else if (way !== undefined && !this.fixed && !event.ctrlKey && !event.metaKey && !event.altKey) {
      const step = event.shiftKey ? 10 * STEP_MM : STEP_MM;
      this.tell('pull-select', pull.id);
      this.moveTo(pull, pull.dxMm + num(way, 0) * step, pull.dyMm + num(way, 1) * step);
    } else return;
    event.preventDefault();
  }

  private outlineOf(pull: Pull): { path: string; rule: string; transform: string } | null {
    const screen = this.studio.screens.find((entry) => entry.id === pull.screen);
    if (screen === undefined) return null;
    const outline = restOutline(screen, this.studio.shapes);
    let path = paths.get(outline);
    if (path === undefined) {
      path = pathOf(outline.rings);
      paths.set(outline, path);
    }
    const { widthMm, heightMm } = this.studio.paper;
    return {
      path,
      rule: outline.fillRule,
      transform: `translate(${pull.dxMm} ${pull.dyMm}) rotate(${pull.turnDeg} ${widthMm / 2} ${heightMm / 2})`,
    };
  }

  private bareLine(pull: Pull) {
    const outline = this.outlineOf(pull);
    return outline === null ? nothing : svg`<path class="bare" d=${outline.path} transform=${outline.transform} />`;
  }

  override render() {
    const { widthMm, heightMm } = this.studio.paper;
    const chosen = this.pulls.find((pull) => pull.id === this.selected);
    const held = this.drag === null ? '' : 'dragged';
    const line = chosen === undefined ? null : this.outlineOf(chosen);
    return html`<div class="sheet" style="aspect-ratio: ${widthMm} / ${heightMm}">
      ${this.covered ? nothing : html`<ps-picture .picture=${this.picture} label=${this.label}></ps-picture>`}
      ${this.outline === null ? nothing : html`<ps-picture class="outline" aria-hidden="true" .picture=${this.outline}></ps-picture>`}
      <svg viewBox="0 0 ${widthMm} ${heightMm}" role="group" aria-label=${this.fixed ? say.shapes : say.shapesToMove}>
        ${this.covered ? this.pulls.map((pull) => this.bareLine(pull)) : nothing}
        ${this.pulls.map((pull, index) => {
          const outline = this.outlineOf(pull);
          if (outline === null) return nothing;
          return svg`<path
            class="hit ${pull.id === this.selected ? 'chosen' : ''} ${this.drag?.pull === pull.id ? 'dragged' : ''}"
            d=${outline.path}
            fill-rule=${outline.rule}
            transform=${outline.transform}
            pointer-events="all"
            role="button"
            tabindex="0"
            aria-pressed=${pull.id === this.selected}
            aria-label=${say.shapeMmRightMm(index + 1, screenWords(pull.screen, this.studio), mmText(pull.dxMm), mmText(pull.dyMm))}
            @pointerdown=${(event: PointerEvent) => this.onDown(event, pull)}
            @pointermove=${(event: PointerEvent) => this.onMove(event, pull)}
            @pointerup=${(event: PointerEvent) => this.onUp(event)}
            @pointercancel=${(event: PointerEvent) => this.onCancel(event, pull)}
            @touchstart=${holdPage(() => this.holds)}
            @focus=${() => this.tell('pull-select', pull.id)}
            @keydown=${(event: KeyboardEvent) => this.onKey(event, pull)}
          />`;
        })}
        ${
          line === null
            ? nothing
            : svg`<path class="line halo ${held}" d=${line.path} transform=${line.transform} />
              <path class="line edge ${held}" d=${line.path} transform=${line.transform} />`
        }
      </svg>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-lesson-sheet': LessonSheet;
  }
}
