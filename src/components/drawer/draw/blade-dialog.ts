import { html, LitElement, nothing } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { num } from '../../../engine/base/at.ts';
import { roundTo } from '../../../engine/base/units.ts';
import { mapRings, shapeBounds } from '../../../engine/geometry/rings.ts';
import type { Box } from '../../../engine/geometry/types.ts';
import { type DrawPoint, lineThrough } from '../../../engine/shapes/draw/curve.ts';
import { steadyLine } from '../../../engine/shapes/draw/pen.ts';
import type { Shape } from '../../../engine/shapes/types.ts';
import { cutAlong } from '../../../workers/client/stencils.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/kit/choice.ts';
import { dialogStyle } from '../../ui/kit/dialog-style.ts';
import { dialogBox } from '../../ui/kit/dialog.ts';
import '../../ui/kit/problem.ts';
import { newId } from '../../ui/new-id.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/drawer/draw.ts';
import { outlinePath } from '../outline-path.ts';
import './draw-board.ts';
import { sizeText } from '../shape-tray.ts';
import type { BoardStep } from './draw-board.ts';
import { drawStyle } from './draw-style.ts';
import type { ShapePieces } from './drawn-files.ts';
import { ownUndo } from './own-undo.ts';

/** A line as it stands: drawn freehand, or from point to point, in the board's coordinates. */
interface Line {
  flat: readonly number[];
  /** Those that can be moved; none of a line drawn freehand. */
  points: readonly DrawPoint[];
  chosen: number;
}

const NO_LINE: Line = { flat: [], points: [], chosen: -1 };

/** Of the shape's longer side, left free about it, so that a line can begin and end outside. */
const MARGIN = 0.12;

/** How far a line drawn freehand may stray from the pen, as a share of the board's width: a hand's shake. */
const SHAKE_SHARE = 1 / 250;

const TOOLS = [
  { value: 'freehand', label: say.freehand },
  { value: 'points', label: say.points },
];

/**
 * Cuts a shape to pieces along a line that is drawn across it, as with a blade.
 * @fires pieces CustomEvent<ShapePieces>: as new shapes
 * @fires cut-to-pieces CustomEvent<ShapePieces>: in the place of the shape
 */
@customElement('drawer-blade')
export class BladeDialog extends LitElement {
  static override styles = [controls, dialogStyle, drawStyle];

  @state() private shape: Shape | null = null;
  @state() private on: readonly number[] = [];
  @state() private tool: 'freehand' | 'points' = 'freehand';
  @state() private line: Line = NO_LINE;
  /** What an undo goes back to, the last one last. */
  @state() private past: readonly Line[] = [];
  @query('dialog') private dialog!: HTMLDialogElement;
  /** As the last whole step left it. */
  private kept: Line = NO_LINE;
  private readonly cutting = new Work<Shape[]>(this);

  constructor() {
    super();
    this.addEventListener(
      'keydown',
      ownUndo(() => this.undo()),
    );
  }

  /** @param on numbers of the screens that carry the shape */
  async open({ shape, on }: { shape: Shape; on: readonly number[] }): Promise<void> {
    [this.shape, this.on, this.past] = [shape, on, []];
    this.take(NO_LINE);
    await this.updateComplete;
    this.dialog.showModal();
  }

  /** The part of the shape's plane that the board shows. */
  private get view(): Box {
    const { xMm, yMm, widthMm, heightMm } = shapeBounds(this.shape?.rings ?? []);
    const free = Math.max(widthMm, heightMm, 1) * MARGIN;
    return { xMm: xMm - free, yMm: yMm - free, widthMm: widthMm + 2 * free, heightMm: heightMm + 2 * free };
  }

  private take(line: Line): void {
    [this.line, this.kept] = [line, line];
    const { shape, view } = this;
    if (shape === null || line.flat.length < 4) return this.cutting.clear();
    const flat = line.flat.map((mm, i) => mm + (i % 2 === 0 ? view.xMm : view.yMm));
    this.cutting.follow((control) => cutAlong(shape, flat, control));
  }

  private step(line: Line): void {
    if (line.flat !== this.kept.flat) this.past = [...this.past, this.kept];
    this.take(line);
  }

  private undo(): void {
    const last = this.past.at(-1);
    if (last === undefined) return;
    this.past = this.past.slice(0, -1);
    this.take(last);
  }

  private onPen(pen: number[]): void {
    this.step({ flat: steadyLine(pen, this.view.widthMm * SHAKE_SHARE), points: [], chosen: -1 });
  }

  private onStep({ points, chosen, done }: BoardStep): void {
    const same = points === this.line.points;
    const line = { flat: same ? this.line.flat : lineThrough(points), points, chosen };
    if (done) this.step(line);
    else this.line = line;
  }

  private onClose = (): void => {
    this.cutting.clear();
    this.shape = null;
  };

  private make(kind: 'pieces' | 'cut-to-pieces', shape: Shape, found: readonly Shape[]): void {
    const pieces = found.map((piece) => ({ ...piece, id: newId() }));
    this.dispatchEvent(new CustomEvent<ShapePieces>(kind, { detail: { shape, pieces } }));
    this.dialog.close();
  }

  /** What lies on the board: the shape, or the pieces of it. */
  private under(shape: Shape): string[] {
    const { xMm, yMm } = this.view;
    const { found, failure } = this.cutting;
    const parts = found === null || failure !== '' ? [shape] : found;
    return parts.map(
      (part) => outlinePath({ ...part, rings: mapRings(part.rings, [1, 0, 0, 1, -xMm, -yMm]).map((ring) => Array.from(ring)) }).d,
    );
  }

  private told(): string {
    const { found, running } = this.cutting;
    if (this.line.flat.length < 4) {
      return this.tool === 'freehand' ? say.drawLineRightAcross : say.clickOrTapFrom;
    }
    if (found === null) return running ? say.cutting : '';
    return say.pieces(found.length, found.slice(0, 4).map(sizeText).join('; '), found.length > 4 ? say.andMore(found.length - 4) : '');
  }

  private outline(): string {
    const { flat } = this.line;
    let d = '';
    for (let i = 0; i + 1 < flat.length; i += 2) d += `${i === 0 ? 'M' : 'L'}${roundTo(num(flat, i), 2)} ${roundTo(num(flat, i + 1), 2)}`;
    return d;
  }

  private renderSettings() {
    const { line, on } = this;
    return html`<div class="settings">
      <ps-choice label=${say.tool} .value=${this.tool} .options=${TOOLS} @pick=${(event: CustomEvent<'freehand' | 'points'>) => (this.tool = event.detail)}></ps-choice>
      <p class="small soft">${say.beginAndEndOutside}</p>
      ${on.length === 0 ? nothing : html`<p class="small soft">${say.wherePiecesTakeIts(on.toSorted((a, b) => a - b).join(', '))}</p>`}
      <div class="row">
        <button type="button" ?disabled=${this.past.length === 0} @click=${() => this.undo()}>${say.undoStep}</button>
        <button type="button" class="quiet" ?disabled=${line.flat.length === 0} @click=${() => this.step(NO_LINE)}>${say.clearLine}</button>
      </div>
    </div>`;
  }

  private renderShape(shape: Shape) {
    const { line } = this;
    const { found, failure, running } = this.cutting;
    const ready = found !== null && failure === '' && !running;
    return html`<div class="drawing steady">
        <div class="shown">
          <draw-board
            open
            .size=${{ widthMm: roundTo(this.view.widthMm, 2), heightMm: roundTo(this.view.heightMm, 2) }}
            .tool=${this.tool}
            .points=${line.points}
            .chosen=${line.chosen}
            .under=${this.under(shape)}
            .outline=${this.outline()}
            @step=${(event: CustomEvent<BoardStep>) => this.onStep(event.detail)}
            @pen=${(event: CustomEvent<number[]>) => this.onPen(event.detail)}
          ></draw-board>
          ${failure === '' ? html`<p class="small" role="status">${this.told()}</p>` : html`<ps-problem>${failure}</ps-problem>`}
        </div>
        ${this.renderSettings()}
      </div>
      <div class="buttons">
        <button @click=${() => this.dialog.close()}>${say.cancel}</button>
        <button ?disabled=${!ready} @click=${() => found !== null && this.make('cut-to-pieces', shape, found)}>${say.replaceShape}</button>
        <button class="main" ?disabled=${!ready} @click=${() => found !== null && this.make('pieces', shape, found)}>${say.makeNewShapes}</button>
      </div>`;
  }

  override render() {
    const { shape } = this;
    const beside = shape === null ? nothing : html`<small class="soft">${shape.name}</small>`;
    return dialogBox(
      { heading: say.cutAlongLine, beside, closable: true, onClose: this.onClose },
      shape === null ? nothing : this.renderShape(shape),
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'drawer-blade': BladeDialog;
  }
}
