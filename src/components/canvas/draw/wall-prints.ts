import type { Picture } from '../../../workers/api/picture-api.ts';
import type { WallBatch } from '../../../workers/api/wall-api.ts';
import { say } from '../../words/en/canvas/draw.ts';
import type { WallPace } from '../camera/wall-pace.ts';
import { PlainDrawing } from './plain-drawing.ts';
import type { PrintDrawing, WallFrame } from './print-drawing.ts';
import { type PagesAside, PrintPages } from './print-pages.ts';
import type { Screen } from './wall-cache.ts';
import type { Rgba } from './wall-shader.ts';
import { coresFree, nextTask } from './when-free.ts';

/** Hears how the prints are drawn. */
export interface DrawingListener {
  /** From now on on another canvas, which stands in the place of the one before: the wall is to be drawn at once. */
  changed(): void;
  /** The graphics card drops the wall, or takes it again. */
  lost(lost: boolean): void;
  /** The page goes on drawing by itself. @param error null where the browser has no WebGL 2 */
  plain(error: unknown): void;
}

/** The prints that hang: first drawn by the page itself, then, as its library is large, by the graphics card. */
export class WallPrints {
  private readonly pages = new PrintPages();
  private readonly pace: WallPace;
  private readonly listener: DrawingListener;
  private drawing: PrintDrawing;
  /** The one that takes its place soon, and hears all that it hears. */
  private coming: PrintDrawing | null = null;
  private frame: WallFrame | null = null;
  /** The finer pictures, until the graphics card has them. */
  private closeUps: Map<number, Picture> | null = new Map();
  /** What the drawing was last told of each kind, for the one that takes its place. */
  private readonly told = new Map<string, (drawing: PrintDrawing) => void>();
  private card: Promise<void> | null = null;
  private gone = false;
  private lostOnce = false;

  constructor(pace: WallPace, listener: DrawingListener) {
    this.pace = pace;
    this.listener = listener;
    this.drawing = new PlainDrawing(this.pages, pace);
    this.drawing.canvas.setAttribute('aria-hidden', 'true');
  }

  get canvas(): HTMLCanvasElement {
    return this.drawing.canvas;
  }

  /** Rows of the maps that the prints are drawn from, 0 before any came. */
  get mapRows(): number {
    return this.pages.mapRows;
  }

  has(index: number): boolean {
    return this.pages.has(index);
  }

  /** Hangs the prints of a batch at their numbers. */
  add(batch: WallBatch): void {
    this.pages.add(batch);
    this.changed();
  }

  /** Takes all prints down. */
  clear(): void {
    this.forgetDrawn();
    this.pages.clear();
  }

  private forgetDrawn(): void {
    for (const drawing of this.drawings) drawing.clear();
    this.closeUps?.clear();
  }

  private get drawings(): PrintDrawing[] {
    return this.coming === null ? [this.drawing] : [this.drawing, this.coming];
  }

  /** Takes all prints down, so that they can hang again. */
  putAside(): PagesAside {
    this.forgetDrawn();
    return this.pages.putAside();
  }

  /** Hangs prints that were put aside in the place of all others. */
  hangAgain(aside: PagesAside): void {
    this.forgetDrawn();
    this.pages.hangAgain(aside);
  }

  /** Says that prints are to be gathered and drawn anew with the next frame. */
  changed(): void {
    for (const drawing of this.drawings) drawing.changed();
  }

  private tell(what: string, tell: (drawing: PrintDrawing) => void): void {
    this.told.set(what, tell);
    this.drawings.forEach(tell);
  }

  /** @param size of the canvas, CSS px, with its device px to one of them */
  resize(size: Screen): void {
    this.tell('size', (drawing) => drawing.resize(size));
  }

  setPrintSize(width: number, height: number): void {
    this.tell('print size', (drawing) => drawing.setPrintSize(width, height));
  }

  setColours(accent: Rgba, shadow: Rgba): void {
    this.tell('colours', (drawing) => drawing.setColours(accent, shadow));
  }

  /** Marks the prints that are in the Chest. */
  setKept(kept: ReadonlySet<number>): void {
    this.tell('kept', (drawing) => drawing.setKept(kept));
  }

  /** Marks the prints that are chosen for something. */
  setSelected(selected: ReadonlySet<number>): void {
    this.tell('selected', (drawing) => drawing.setSelected(selected));
  }

  /** Rings one print, strongly or not; −1 for none. */
  setFocus(index: number, strong: boolean): void {
    this.tell('focus', (drawing) => drawing.setFocus(index, strong));
  }

  /** Lays a finer picture over a print; it stays until it is forgotten or `clear`. */
  addCloseUp(index: number, picture: Picture): void {
    for (const drawing of this.drawings) drawing.addCloseUp(index, picture);
    this.closeUps?.set(index, picture);
  }

  /** Height of the finer picture over a print, px; 0 when there is none. */
  closeUpPx(index: number): number {
    return this.drawing.closeUpPx(index);
  }

  forgetCloseUps(but?: ReadonlySet<number>): void {
    for (const drawing of this.drawings) drawing.forgetCloseUps(but);
    for (const index of this.closeUps?.keys() ?? []) if (but?.has(index) !== true) this.closeUps?.delete(index);
  }

  draw(frame: WallFrame): void {
    this.frame = frame;
    this.drawing.draw(frame);
    // The first prints hang: now the library does not hold them up.
    if (this.mapRows > 0) void this.toCard();
  }

  /** Fetches what draws by the graphics card, and lets it; resolves when it does, or cannot. */
  toCard(): Promise<void> {
    this.card ??= this.fetchCard().catch((error: unknown) => this.listener.plain(error));
    return this.card;
  }

  private async fetchCard(): Promise<void> {
    // Its library as well: to take it in has the page busy for a tenth of a second.
    await coresFree(this.pages);
    const { cardDrawing } = await import('./wall-drawing.ts');
    await nextTask();
    if (this.gone) return;
    const card = await cardDrawing(this.pages, this.pace);
    if (this.gone) return card?.destroy();
    if (card === null) return this.listener.plain(null);
    const { canvas } = card;
    const context = { lost: false };
    canvas.addEventListener('webglcontextlost', () => (context.lost = true), { once: true });
    for (const tell of this.told.values()) tell(card);
    // Drawn again they would come one by one, each with a drawing of the whole wall.
    for (const [index, picture] of this.closeUps ?? []) card.addCloseUp(index, picture);
    this.coming = card;
    if (this.frame !== null) await card.prepare(this.frame);
    this.coming = null;
    if (this.gone) return card.destroy();
    if (context.lost) return this.lostBefore(card);
    this.closeUps = null;
    const before = this.drawing;
    this.drawing = card;
    canvas.setAttribute('aria-hidden', 'true');
    canvas.addEventListener('webglcontextlost', () => this.listener.lost(true));
    canvas.addEventListener('webglcontextrestored', () => this.listener.lost(false));
    before.canvas.replaceWith(canvas);
    before.destroy();
    this.listener.changed();
  }

  /** The card was taken away before it drew: the page goes on, and asks for it once more with its next frame. */
  private lostBefore(card: PrintDrawing): void {
    card.destroy();
    if (this.lostOnce) return this.listener.plain(new Error(say.cardWasTakenAway));
    this.lostOnce = true;
    this.card = null;
    this.listener.changed();
  }

  destroy(): void {
    this.gone = true;
    this.clear();
    this.drawing.destroy();
  }
}
