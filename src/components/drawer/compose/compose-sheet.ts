import { html, LitElement, nothing, svg } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { defined } from '../../../engine/base/at.ts';
import type { Paper } from '../../../engine/ink/types.ts';
import { boxOf, middleOf, movedBy, type Piece } from '../../../engine/shapes/compose/arrange.ts';
import type { PlacedShape, Screen, Shape } from '../../../engine/shapes/types.ts';
import { holdPage } from '../../ui/hold-page.ts';
import { say } from '../../words/en/drawer/compose.ts';
import { outlinePath, placedTransform } from '../outline-path.ts';
import { composeSheetStyle } from './compose-sheet-style.ts';
import { heldAt, type HoldKind, type SheetHold, type SheetPlace, withPieces } from './sheet-hold.ts';

/** What of which screen is chosen. */
export interface Chosen {
  screen: string;
  pieces: readonly number[];
}

/** What lies on the chosen screen now; `run` where it is a step of a row of like ones. */
export interface Placing {
  placed: PlacedShape[];
  run?: string;
}

const ARROWS: Record<string, [number, number]> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
/** Room round the sheet, as a share of its longer side; and how far it goes to show what lies off the sheet. */
const MARGIN = 0.06;
const FURTHEST = 0.8;
const HANDLE_PX = 9;
/** Screens that are tried are told apart by so many tones. */
const TONES = 4;

/**
 * The whole sheet with all screens on it, what is chosen with handles to drag, scale and turn it.
 * @fires choose CustomEvent<{ screen: string; piece: number }>
 * @fires place CustomEvent<Placing>
 */
@customElement('compose-sheet')
export class ComposeSheet extends LitElement {
  static override styles = composeSheetStyle;

  @property({ attribute: false }) paper!: Paper;
  @property({ attribute: false }) shapes: readonly Shape[] = [];
  @property({ attribute: false }) screens: readonly Screen[] = [];
  /** Screen colours of the screens' inks; a screen without is shown as a ghost. */
  @property({ attribute: false }) inks: ReadonlyMap<string, string> = new Map();
  @property({ attribute: false }) chosen: Chosen | null = null;
  /** Shapes that are not on screens yet, screen by screen. */
  @property({ attribute: false }) tried: readonly (readonly PlacedShape[])[] = [];
  @state() private draft: PlacedShape[] | null = null;
  @state() private pxPerMm = 1;
  @query('svg') private sheet!: SVGSVGElement;
  private hold: SheetHold | null = null;
  /** Whether what was pressed was chosen before. */
  private wasChosen = false;
  private readonly sizes = new ResizeObserver(() => this.measure());

  protected override firstUpdated(): void {
    this.sizes.observe(this.sheet);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.sizes.disconnect();
    this.breakOff();
  }

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('screens') && this.hold === null) this.draft = null;
  }

  private measure(): void {
    this.pxPerMm = this.sheet.getScreenCTM()?.a ?? 1;
  }

  private shapeOf(id: string): Shape | undefined {
    return this.shapes.find((shape) => shape.id === id);
  }

  private placedOf(screen: Screen): readonly PlacedShape[] {
    return (screen.id === this.chosen?.screen ? this.draft : null) ?? screen.placed;
  }

  private piecesOf(placed: readonly PlacedShape[]): Piece[] {
    return placed.flatMap((one) => {
      const shape = this.shapeOf(one.shape);
      return shape === undefined ? [] : [{ shape, placed: one }];
    });
  }

  private at(event: PointerEvent): SheetPlace {
    const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(defined(this.sheet.getScreenCTM()).inverse());
    return { xMm: point.x, yMm: point.y };
  }

  private get chosenScreen(): Screen | undefined {
    return this.screens.find(({ id }) => id === this.chosen?.screen);
  }

  private take(event: PointerEvent, screen: Screen, piece: number): void {
    if (event.button !== 0 || this.hold !== null) return;
    const known = this.chosen?.screen === screen.id && this.chosen.pieces.includes(piece);
    const pieces = known ? defined(this.chosen).pieces : [piece];
    this.wasChosen = known;
    if (!known) this.dispatchEvent(new CustomEvent('choose', { detail: { screen: screen.id, piece } }));
    this.start(event, 'move', { screen, pieces });
  }

  private start(event: PointerEvent, kind: HoldKind, { screen, pieces }: { screen: Screen; pieces: readonly number[] }): void {
    if (event.button !== 0) return;
    event.stopPropagation();
    const about = middleOf(this.piecesOf(screen.placed.filter((_, i) => pieces.includes(i))));
    window.addEventListener('keydown', this.onEscape);
    this.hold = { pointer: event.pointerId, kind, from: this.at(event), about, before: screen.placed, pieces };
    // On the drawing itself: what is pressed may be drawn anew meanwhile.
    this.sheet.setPointerCapture(event.pointerId);
  }

  private readonly onMove = (event: PointerEvent): void => {
    if (this.hold?.pointer === event.pointerId) this.draft = heldAt(this.hold, this.at(event), event.shiftKey);
  };

  private readonly onUp = (event: PointerEvent): void => {
    if (this.hold?.pointer !== event.pointerId) return;
    const placed = heldAt(this.hold, this.at(event), event.shiftKey);
    const { before, kind } = this.hold;
    this.breakOff();
    const moved = placed.some((one, i) => Object.entries(one).some(([name, value]) => before[i]?.[name as keyof PlacedShape] !== value));
    if (moved) this.dispatchEvent(new CustomEvent<Placing>('place', { detail: { placed } }));
    else if (kind === 'move' && this.wasChosen) this.chooseBelow(event);
  };

  /** A press that moved nothing goes on to the next piece that lies there. */
  private chooseBelow({ clientX, clientY }: PointerEvent): void {
    const there = (this.renderRoot as ShadowRoot).elementsFromPoint(clientX, clientY).flatMap((element) => {
      const { screen, piece } = (element as SVGElement).dataset;
      return screen === undefined ? [] : [{ screen, piece: Number(piece) }];
    });
    const at = there.findIndex(({ screen, piece }) => screen === this.chosen?.screen && this.chosen.pieces.includes(piece));
    const next = there[(at + 1) % Math.max(1, there.length)];
    if (next !== undefined) this.dispatchEvent(new CustomEvent('choose', { detail: next }));
  }

  /** The pointer was taken away, or Escape pressed: all lies where it was. */
  private readonly breakOff = (): void => {
    window.removeEventListener('keydown', this.onEscape);
    this.hold = null;
    this.draft = null;
  };

  private readonly onEscape = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') return;
    event.preventDefault();
    this.breakOff();
  };

  private onKey(event: KeyboardEvent, screen: Screen): void {
    const arrow = ARROWS[event.key];
    if (arrow === undefined || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const step = event.shiftKey ? 10 : event.altKey ? 0.1 : 1;
    const pieces = this.chosen?.screen === screen.id ? this.chosen.pieces : [];
    const placed = withPieces(screen.placed, pieces, (held) => movedBy(held, arrow[0] * step, arrow[1] * step));
    this.dispatchEvent(new CustomEvent<Placing>('place', { detail: { placed, run: `nudge ${pieces.join()}` } }));
  }

  private screen(screen: Screen) {
    const chosen = this.chosen?.screen === screen.id;
    const ink = this.inks.get(screen.id);
    const name = say.screenArrowKeysMove(screen.number, screen.name);
    return svg`<g
      class="screen ${ink === undefined ? 'ghost' : 'inked'} ${chosen ? 'chosen' : ''}"
      style=${ink === undefined ? '' : `--ink-colour: ${ink}`}
      tabindex="0"
      role="button"
      aria-pressed=${chosen}
      aria-label=${name}
      @focus=${() => chosen || this.hold !== null || this.dispatchEvent(new CustomEvent('choose', { detail: { screen: screen.id, piece: -1 } }))}
      @keydown=${(event: KeyboardEvent) => this.onKey(event, screen)}
    >
      ${this.placedOf(screen).map((placed, i) => this.piece(placed, { screen, i, held: chosen && this.chosen?.pieces.includes(i) === true }))}
    </g>`;
  }

  private piece(placed: PlacedShape, of: { screen: Screen; i: number; held: boolean; over?: boolean } | null) {
    const shape = this.shapeOf(placed.shape);
    if (shape === undefined) return nothing;
    const path = outlinePath(shape);
    return svg`<path
      class=${of === null ? '' : `${of.held ? 'held' : ''} ${of.over === true ? 'over' : ''}`}
      data-screen=${of === null || of.over === true ? nothing : of.screen.id}
      data-piece=${of?.i ?? nothing}
      d=${path.d}
      fill-rule=${shape.fillRule}
      transform=${placedTransform(placed, path)}
      @pointerdown=${(event: PointerEvent) => of !== null && this.take(event, of.screen, of.i)}
      @touchstart=${holdPage(() => of !== null)}
    />`;
  }

  /** What is chosen, over everything, so that it can be held where others cover it. */
  private over(screen: Screen) {
    const pieces = this.chosen?.pieces ?? [];
    return svg`<g aria-hidden="true">${this.placedOf(screen).map((placed, i) => (pieces.includes(i) ? this.piece(placed, { screen, i, held: true, over: true }) : nothing))}</g>`;
  }

  /** The box round what is chosen, turned as it is where it is one piece, with its handles. */
  private handles() {
    const screen = this.chosenScreen;
    const pieces = this.chosen?.pieces ?? [];
    if (screen === undefined || pieces.length === 0) return nothing;
    const held = this.piecesOf(this.placedOf(screen).filter((_, i) => pieces.includes(i)));
    const [one] = held;
    if (one === undefined) return nothing;
    const box = held.length === 1 ? boxOf([{ ...one, placed: { ...one.placed, turnDeg: 0 } }]) : boxOf(held);
    const [x, y] = [box.xMm + box.widthMm / 2, box.yMm + box.heightMm / 2];
    const turn = held.length === 1 ? one.placed.turnDeg : 0;
    const [w, h, r] = [box.widthMm / 2, box.heightMm / 2, HANDLE_PX / this.pxPerMm];
    const handle = (
      kind: HoldKind,
      cx: number,
      cy: number,
    ) => svg`<g class="handle ${kind}" @pointerdown=${(event: PointerEvent) => this.start(event, kind, { screen, pieces })} @touchstart=${holdPage()}>
      <circle class="reach" cx=${cx} cy=${cy} r=${r * 2.2} /><circle cx=${cx} cy=${cy} r=${r} />
    </g>`;
    return svg`<g class="box" transform="translate(${x} ${y}) rotate(${turn})">
      <rect x=${-w} y=${-h} width=${2 * w} height=${2 * h} />
      <line x1="0" y1=${-h} x2="0" y2=${-h - 4 * r} />
      ${handle('turn', 0, -h - 4 * r)}
      ${[-1, 1].flatMap((sx) => [-1, 1].map((sy) => handle('scale', sx * w, sy * h)))}
    </g>`;
  }

  /** The sheet with room round it for what lies off it. */
  private viewBox(): string {
    const { widthMm, heightMm } = this.paper;
    const side = Math.max(widthMm, heightMm);
    const boxes = this.screens.map(({ placed }) => boxOf(this.piecesOf(placed))).filter((box) => box.widthMm > 0);
    const room = (beyond: number): number => side * MARGIN + Math.min(side * FURTHEST, Math.max(0, beyond));
    const left = room(-Math.min(0, ...boxes.map(({ xMm }) => xMm)));
    const top = room(-Math.min(0, ...boxes.map(({ yMm }) => yMm)));
    const right = room(Math.max(0, ...boxes.map((box) => box.xMm + box.widthMm - widthMm)));
    const bottom = room(Math.max(0, ...boxes.map((box) => box.yMm + box.heightMm - heightMm)));
    return `${-left} ${-top} ${widthMm + left + right} ${heightMm + top + bottom}`;
  }

  override render() {
    const { widthMm, heightMm, printable } = this.paper;
    const chosen = this.chosenScreen;
    return html`<svg
      viewBox=${this.viewBox()}
      role="group"
      aria-label=${say.sheetWithAllScreens(widthMm, heightMm)}
      @pointermove=${this.onMove}
      @pointerup=${this.onUp}
      @pointercancel=${this.breakOff}
    >
      <rect class="paper" width=${widthMm} height=${heightMm} />
      <rect class="printable" x=${printable.xMm} y=${printable.yMm} width=${printable.widthMm} height=${printable.heightMm} />
      ${this.screens.map((screen) => this.screen(screen))}
      ${this.tried.map((placed, i) => svg`<g class="tried tone${i % TONES}">${placed.map((one) => this.piece(one, null))}</g>`)}
      ${chosen === undefined ? nothing : this.over(chosen)} ${this.handles()}
    </svg>`;
  }

  protected override updated(): void {
    this.measure();
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'compose-sheet': ComposeSheet;
  }
}
