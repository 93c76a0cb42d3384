import { defined } from '../../../engine/base/at.ts';
import type { Picture } from '../../../workers/api/picture-api.ts';
import type { WallPace } from '../camera/wall-pace.ts';
import type { PixelBox, PixelSource } from './plain-pixels.ts';
import { drawPixels } from './plain-pixels.ts';
import type { PrintDrawing, WallFrame } from './print-drawing.ts';
import { type Frame, frameOf } from './print-frame.ts';
import type { PrintPages, PrintPlaces } from './print-pages.ts';
import type { Screen } from './wall-cache.ts';
import type { Rgba } from './wall-shader.ts';

/** A frame draws prints finely for so long, ms; the others follow with those after it. */
const FINE_MS = 16;

/** Draws the prints by the page itself, on a canvas for pictures: slower, without a library, and the same to the eye. */
export class PlainDrawing implements PrintDrawing {
  readonly canvas = document.createElement('canvas');
  private readonly context = this.canvas.getContext('2d');
  private readonly pages: PrintPages;
  private readonly closeUps = new Map<number, PixelSource>();
  private readonly pace: WallPace;
  private image: ImageData | null = null;
  private accent = '';
  private shadow = '';
  private kept: ReadonlySet<number> = new Set();
  private selected: ReadonlySet<number> = new Set();
  private focus = -1;
  private ringPx = 1.5;
  /** The frame whose pixels are known, so many rows of them, the prints among them, and those that are to be drawn more finely; null when all are to be worked out anew. */
  private shown: {
    frame: WallFrame;
    view: { x: number; y: number; scale: number };
    rows: number;
    prints: Set<number>;
    coarse: Set<number>;
  } | null = null;

  constructor(pages: PrintPages, pace: WallPace) {
    this.pages = pages;
    this.pace = pace;
  }

  clear(): void {
    this.closeUps.clear();
    this.shown = null;
  }

  changed(): void {
    // A frame says by itself what is other than before.
  }

  resize({ width, height, density }: Screen): void {
    const { canvas, image, shown } = this;
    canvas.width = Math.max(1, Math.round(width * density));
    canvas.height = Math.max(1, Math.round(height * density));
    this.image = null;
    if (shown?.frame.screen.density !== density || image?.width !== canvas.width) this.shown = null;
    else {
      // The rows that stay stay as they are.
      shown.rows = Math.min(shown.rows, canvas.height);
      this.image = new ImageData(canvas.width, canvas.height);
      this.image.data.set(image.data.subarray(0, 4 * canvas.width * shown.rows));
    }
  }

  setPrintSize(): void {
    // Each frame says how large prints are.
  }

  setColours(accent: Rgba, shadow: Rgba): void {
    this.accent = cssOf(accent);
    this.shadow = cssOf(shadow);
  }

  setKept(kept: ReadonlySet<number>): void {
    this.kept = kept;
  }

  setSelected(selected: ReadonlySet<number>): void {
    this.selected = selected;
  }

  setFocus(index: number, strong: boolean): void {
    this.focus = index;
    this.ringPx = strong ? 3 : 1.5;
  }

  addCloseUp(index: number, { widthPx, heightPx, pixels }: Picture): void {
    const colours = new Uint32Array(pixels.buffer, pixels.byteOffset, widthPx * heightPx);
    this.closeUps.set(index, { columns: widthPx, rows: heightPx, cells: null, first: 0, stride: widthPx, colours, offset: 0 });
    this.shown?.prints.delete(index);
  }

  closeUpPx(index: number): number {
    return this.closeUps.get(index)?.rows ?? 0;
  }

  forgetCloseUps(but: ReadonlySet<number> = new Set()): void {
    for (const index of this.closeUps.keys()) {
      if (but.has(index)) continue;
      this.closeUps.delete(index);
      this.shown?.prints.delete(index);
    }
  }

  draw(frame: WallFrame): void {
    const { context } = this;
    if (context === null) return;
    const { view, screen, planned, at, rehanging, moves } = frame;
    const { scale } = view;
    const range = planned.bins(-view.x / scale, -view.y / scale, screen.width / scale, screen.height / scale);
    const hung = (rehanging ? [...planned.plan.sequence] : planned.in(range)).filter((index) => this.pages.has(index));
    if (hung.length === 0) return this.wipe(context);
    const coarse = moves && this.pace.slow;
    this.pace.drewAll();
    const known = rehanging || this.shown === null || !this.shows(frame) ? null : this.shown;
    const { prints, coarse: unfine, rows } = known ?? { prints: new Set<number>(), coarse: new Set<number>(), rows: 0 };
    this.image ??= context.createImageData(this.canvas.width, this.canvas.height);
    const words = new Uint32Array(this.image.data.buffer);
    if (known === null) words.fill(0);
    const target = { width: this.image.width, height: this.image.height, words };
    const boxes = hung.map((index) => ({ index, box: boxOf(frameOf(index, at, planned.plan, view), screen.density) }));
    const until = performance.now() + FINE_MS;
    for (const { index, box } of boxes) {
      const fine = !coarse && performance.now() < until;
      const drawn = prints.has(index) && Math.min(box.top + box.height, this.canvas.height) <= rows;
      if (drawn && !(fine && unfine.has(index))) continue;
      drawPixels(target, this.sourceOf(index, box.height), box, !fine);
      prints.add(index);
      if (fine) unfine.delete(index);
      else unfine.add(index);
    }
    // Whole: what is put in parts is kept part by part, and the browser takes as long over it as over all.
    context.putImageData(this.image, 0, 0);
    this.drawShadows(context, boxes, screen.density);
    for (const each of boxes) this.drawMarks(context, each, scale, screen.density);
    this.shown = rehanging ? null : { frame, view: { x: view.x, y: view.y, scale }, rows: this.canvas.height, prints, coarse: unfine };
    if (unfine.size > 0) this.pace.fineSoon();
  }

  private wipe(context: CanvasRenderingContext2D): void {
    this.shown = null;
    // A canvas that nothing was drawn on costs nothing.
    if (this.image === null) return;
    context.clearRect(0, 0, this.canvas.width, this.canvas.height);
    this.image = null;
  }

  /** Whether the pixels of a frame are known but for prints that came since: while a wall hangs, most frames are such. */
  private shows({ view, planned, at }: WallFrame): boolean {
    if (this.shown === null) return false;
    const { frame, view: seen } = this.shown;
    const stands = seen.x === view.x && seen.y === view.y && seen.scale === view.scale;
    return stands && planned === frame.planned && at === frame.at;
  }

  /** What a print is drawn from when it is so many device px high. */
  private sourceOf(index: number, heightPx: number): PixelSource {
    const closeUp = this.closeUps.get(index);
    if (closeUp !== undefined) return closeUp;
    const places = this.pages.placesOf(index);
    return heightPx <= this.pages.smallRows ? this.small(places) : this.map(places);
  }

  private small({ small }: PrintPlaces): PixelSource {
    const [columns, rows] = defined(this.pages.sizes).small;
    const { page, x, y } = small;
    const colours = new Uint32Array(page.bytes.buffer);
    return { columns, rows, cells: null, first: y * page.width + x, stride: page.width, colours, offset: 0 };
  }

  private map({ map: { page, x, y }, colours }: PrintPlaces): PixelSource {
    const [columns, rows] = defined(this.pages.sizes).map;
    const { bytes } = page;
    return {
      columns,
      rows,
      cells: page.texel === 'byte' ? bytes : new Uint16Array(bytes.buffer),
      first: y * page.width + x,
      stride: page.width,
      colours: new Uint32Array(colours.page.bytes.buffer),
      offset: colours.offset,
    };
  }

  /** Paper hangs a little off the wall. */
  private drawShadows(context: CanvasRenderingContext2D, boxes: readonly { box: PixelBox }[], density: number): void {
    context.globalCompositeOperation = 'destination-over';
    context.fillStyle = this.shadow;
    for (const { box } of boxes) context.fillRect(box.left - density, box.top, box.width + 2 * density, box.height + 3 * density);
    context.globalCompositeOperation = 'source-over';
  }

  private drawMarks(
    context: CanvasRenderingContext2D,
    { index, box }: { index: number; box: PixelBox },
    scale: number,
    density: number,
  ): void {
    const { left, top, width, height } = box;
    context.fillStyle = context.strokeStyle = this.accent;
    if (this.kept.has(index)) {
      const radius = Math.min(5.5, Math.max(2.6, 1.8 * scale)) * density;
      const below = Math.min(12.5, Math.max(4.5, 10 * scale + 1.5)) * density;
      context.beginPath();
      context.arc(left + width - radius, top + height + below, radius, 0, 2 * Math.PI);
      context.fill();
    }
    if (this.selected.has(index)) {
      // Thin paper between the corner and the print, so that it shows on any print.
      const corner = Math.min(26, Math.max(9, 22 * scale)) * density;
      drawCorner(context, box, corner, 'white');
      drawCorner(context, box, corner - 1.5 * density, this.accent);
    }
    if (index === this.focus) {
      const away = Math.min(5, 6.5 * scale) * density;
      context.lineWidth = this.ringPx * density;
      context.strokeRect(left - away, top - away, width + 2 * away, height + 2 * away);
    }
  }

  destroy(): void {
    this.clear();
    this.canvas.remove();
  }
}

function drawCorner(context: CanvasRenderingContext2D, { left, top, width }: PixelBox, corner: number, colour: string): void {
  const right = left + width;
  context.fillStyle = colour;
  context.beginPath();
  context.moveTo(right - corner, top);
  context.lineTo(right, top);
  context.lineTo(right, top + corner);
  context.fill();
}

/** The device pixels of a print, whole, as the shader has them. */
function boxOf({ left, top, width, height }: Frame, density: number): PixelBox {
  return {
    left: Math.round(left * density),
    top: Math.round(top * density),
    width: Math.max(1, Math.round(width * density)),
    height: Math.max(1, Math.round(height * density)),
  };
}

function cssOf([red, green, blue, alpha]: Rgba): string {
  return `rgb(${Math.round(red * 255)} ${Math.round(green * 255)} ${Math.round(blue * 255)} / ${alpha})`;
}
