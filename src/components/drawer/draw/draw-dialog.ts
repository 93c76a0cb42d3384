import { html, LitElement, nothing } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { roundTo } from '../../../engine/base/units.ts';
import { type DrawPoint, FLAT_MM } from '../../../engine/shapes/draw/curve.ts';
import { ofKind, type PointKind } from '../../../engine/shapes/draw/handles.ts';
import { penPoints } from '../../../engine/shapes/draw/pen.ts';
import { type Drawn, drawnShape } from '../../../engine/shapes/draw/shape-of.ts';
import type { PageSize } from '../../../engine/shapes/place/lay-out.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/kit/choice.ts';
import { dialogStyle } from '../../ui/kit/dialog-style.ts';
import { dialogBox } from '../../ui/kit/dialog.ts';
import '../../ui/kit/number-field.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import '../../ui/kit/problem.ts';
import '../../ui/kit/select.ts';
import { newId } from '../../ui/new-id.ts';
import { say } from '../../words/en/drawer/draw.ts';
import { outlinePath } from '../outline-path.ts';
import './draw-board.ts';
import { sizeText } from '../shape-tray.ts';
import type { BoardStep } from './draw-board.ts';
import { drawStyle } from './draw-style.ts';
import type { MadeShape } from './drawn-files.ts';
import { ownUndo } from './own-undo.ts';
import { pointFields } from './point-fields.ts';

/** What is undone as one. */
interface Step {
  points: readonly DrawPoint[];
  /** The line the points are of; null once they were changed by hand. */
  pen: number[] | null;
  chosen: number;
}

const NOTHING_YET: Step = { points: [], pen: null, chosen: -1 };

/** Widths of smaller boards, mm; for a phone and for small shapes. */
const WIDTHS_MM = [200, 100, 50];

/** How far an outline strays from the pen at first, as a share of the board's width: a hand's shake. */
const SHAKE_SHARE = 3 / 560;

const TOOLS = [
  { value: 'freehand', label: say.freehand },
  { value: 'points', label: say.points },
];

/**
 * Draws a closed shape on a sheet in mm.
 * @fires made CustomEvent<MadeShape>
 */
@customElement('drawer-draw')
export class DrawDialog extends LitElement {
  static override styles = [controls, dialogStyle, drawStyle];

  @state() private paper: PageSize = { widthMm: 560, heightMm: 760 };
  @state() private board: number | 'sheet' = 'sheet';
  @state() private tool: 'freehand' | 'points' = 'freehand';
  @state() private now: Step = NOTHING_YET;
  /** What an undo goes back to, the last one last. */
  @state() private past: readonly Step[] = [];
  /** Null until it is set by hand: then it goes by the board. */
  @state() private ownErrorMm: number | null = null;
  @state() private round = false;
  @state() private name = '';
  @state() private refusal = '';
  @query('dialog') private dialog!: HTMLDialogElement;
  private closed: { points: readonly DrawPoint[]; drawn: Drawn | string } | null = null;
  /** As the last whole step left it. */
  private kept: Step = NOTHING_YET;

  constructor() {
    super();
    this.addEventListener(
      'keydown',
      ownUndo(() => this.undo()),
    );
  }

  /** Opens an empty board. @param paper the sheet; @param name what the shape is called at first */
  open({ paper, name }: { paper: PageSize; name: string }): void {
    this.paper = paper;
    this.name = name;
    this.begin(NOTHING_YET);
    this.past = [];
    this.dialog.showModal();
  }

  private get size(): PageSize {
    const { widthMm, heightMm } = this.paper;
    return this.board === 'sheet' ? { widthMm, heightMm } : { widthMm: this.board, heightMm: this.board };
  }

  private get errorMm(): number {
    return this.ownErrorMm ?? roundTo(this.size.widthMm * SHAKE_SHARE, 1);
  }

  private begin(step: Step): void {
    [this.now, this.kept, this.refusal] = [step, step, ''];
  }

  private take(step: Step): void {
    if (step.points !== this.kept.points) this.past = [...this.past, this.kept];
    this.begin(step);
  }

  private undo(): void {
    const last = this.past.at(-1);
    if (last === undefined) return;
    this.past = this.past.slice(0, -1);
    this.begin(last);
  }

  private onPen(pen: number[], errorMm = this.errorMm): void {
    try {
      this.take({ points: penPoints(pen, errorMm), pen, chosen: -1 });
    } catch (error) {
      this.refusal = sentenceOf(error);
    }
  }

  private onStep({ points, chosen, done }: BoardStep): void {
    const pen = points === this.kept.points ? this.kept.pen : null;
    if (done) this.take({ points, pen, chosen });
    else this.now = { points, pen, chosen };
    const point = points[chosen];
    // A click after handles were pulled sets what it set before.
    if (point !== undefined && point.handles === undefined) this.round = point.round;
  }

  private setError(errorMm: number): void {
    this.ownErrorMm = errorMm;
    if (this.now.pen !== null) this.onPen(this.now.pen, errorMm);
  }

  private setPoint(point: DrawPoint): void {
    const { points, chosen } = this.now;
    this.take({ points: points.with(chosen, point), pen: null, chosen });
  }

  private setKind(kind: PointKind): void {
    const { points, chosen } = this.now;
    this.round = kind === 'round' || kind === 'smooth';
    if (points[chosen] !== undefined) this.setPoint(ofKind(points, chosen, kind));
  }

  /** The shape as it stands, closed anew only when a point has changed; or why there is none. */
  private drawn(): Drawn | string {
    const { points } = this.now;
    if (this.closed?.points === points) return this.closed.drawn;
    let drawn: Drawn | string;
    try {
      drawn = drawnShape(points, { id: '', name: '' });
    } catch (error) {
      drawn = sentenceOf(error);
    }
    this.closed = { points, drawn };
    return drawn;
  }

  private make(drawn: Drawn): void {
    this.dialog.close();
    const page = this.board === 'sheet' ? this.paper : null;
    const shape = { ...drawn.shape, id: newId(), name: this.name.trim() === '' ? say.drawnShape : this.name.trim() };
    this.dispatchEvent(new CustomEvent<MadeShape>('made', { detail: { shape, page } }));
  }

  private told(drawn: Drawn | string): string {
    if (typeof drawn === 'string') {
      if (this.now.points.length > 0) return drawn;
      return this.tool === 'freehand' ? say.drawLineWithPen : say.clickOrTapTo;
    }
    const crosses = drawn.crosses ? say.outlineCrossesItselfAll : '';
    const isCurved = this.now.points.some(({ round, handles }) => round || handles !== undefined);
    const flat = isCurved ? say.curvesAreKeptWithin(FLAT_MM) : '';
    return say.pointsSize(sizeText(drawn.shape), this.now.points.length, flat, crosses);
  }

  private renderSettings() {
    const { now } = this;
    return html`<div class="settings">
      <ps-choice label=${say.tool} .value=${this.tool} .options=${TOOLS} @pick=${(event: CustomEvent<'freehand' | 'points'>) => (this.tool = event.detail)}></ps-choice>
      ${
        this.tool === 'freehand'
          ? html`<ps-number label=${say.outlineMayStrayFrom} unit="mm" .value=${this.errorMm} .min=${0.05} .max=${20} .step=${0.25} .decimals=${2} @pick=${(event: NumberPick) => this.setError(event.detail)}></ps-number>
            <p class="small soft">${say.newLineTakesPlace}</p>`
          : pointFields(
              { points: now.points, chosen: now.chosen, round: this.round },
              {
                choose: (chosen) => this.onStep({ points: now.points, chosen, done: false }),
                set: (point) => this.setPoint(point),
                kind: (kind) => this.setKind(kind),
                remove: () =>
                  this.take({
                    points: now.points.toSpliced(now.chosen, 1),
                    pen: null,
                    chosen: Math.min(now.chosen, now.points.length - 2),
                  }),
              },
            )
      }
      <ps-select
        label=${say.board}
        .value=${String(this.board)}
        .options=${[
          { value: 'sheet', label: say.wholeSheet },
          ...WIDTHS_MM.map((mm) => ({ value: String(mm), label: `${mm} × ${mm} mm` })),
        ]}
        @pick=${(event: CustomEvent<string>) => (this.board = event.detail === 'sheet' ? 'sheet' : Number(event.detail))}
      ></ps-select>
      <p class="small soft">${this.board === 'sheet' ? say.itsScreenPrintsShape : say.itsScreenPrintsShapeIn}</p>
      <label class="stacked">${say.name} <input type="text" maxlength="200" .value=${this.name} @input=${(event: Event) => (this.name = (event.target as HTMLInputElement).value)} /></label>
      <div class="row">
        <button type="button" ?disabled=${this.past.length === 0} @click=${() => this.undo()}>${say.undoStep}</button>
        <button type="button" class="quiet" ?disabled=${now.points.length === 0} @click=${() => this.take(NOTHING_YET)}>${say.clearBoard}</button>
      </div>
    </div>`;
  }

  override render() {
    const drawn = this.drawn();
    const { points, chosen } = this.now;
    const outline =
      typeof drawn === 'string'
        ? points.map(({ xMm, yMm }, i) => `${i === 0 ? 'M' : 'L'}${xMm} ${yMm}`).join('')
        : outlinePath(drawn.shape).d;
    return dialogBox(
      { heading: say.drawShape, closable: true },
      html`<div class="drawing steady">
          <div class="shown">
            <draw-board
              .size=${this.size}
              .tool=${this.tool}
              .points=${points}
              .chosen=${chosen}
              .round=${this.round}
              .outline=${outline}
              .closed=${typeof drawn !== 'string'}
              @step=${(event: CustomEvent<BoardStep>) => this.onStep(event.detail)}
              @pen=${(event: CustomEvent<number[]>) => this.onPen(event.detail)}
            ></draw-board>
            ${this.refusal === '' ? nothing : html`<ps-problem>${this.refusal}</ps-problem>`}
            <p class="small" role="status">${this.told(drawn)}</p>
          </div>
          ${this.renderSettings()}
        </div>
        <div class="buttons">
          <button @click=${() => this.dialog.close()}>${say.cancel}</button>
          <button class="main" ?disabled=${typeof drawn === 'string'} @click=${() => typeof drawn !== 'string' && this.make(drawn)}>${say.makeShapeOfIt}</button>
        </div>`,
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'drawer-draw': DrawDialog;
  }
}
