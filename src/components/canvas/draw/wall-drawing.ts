import { Container, type WebGLRenderer } from 'pixi.js';
import { defined } from '../../../engine/base/at.ts';
import type { Picture } from '../../../workers/api/picture-api.ts';
import type { WallPace } from '../camera/wall-pace.ts';
import { closeUpProgram, CloseUpPrints } from './close-up-prints.ts';
import { HungPrints } from './hung-prints.ts';
import { pageSource } from './page-source.ts';
import type { PrintDrawing, WallFrame } from './print-drawing.ts';
import { type Frame, frameOf } from './print-frame.ts';
import type { PrintPages } from './print-pages.ts';
import { buildAside, drawn, withoutTest } from './ready-programs.ts';
import { CACHE_PAD, type Screen, WallCache } from './wall-cache.ts';
import { wallRenderer } from './wall-renderer.ts';
import { FOCUSED, KEPT, SELECTED, type Rgba, wallPrograms, wallUniforms } from './wall-shader.ts';

/** So much larger than its texels a small picture may be drawn before its softness shows. */
const MOST_ENLARGED = 1.05;

/** Draws the prints: those in view anew when something changed, else a copy of what was drawn. */
class WallDrawing implements PrintDrawing {
  private readonly renderer: WebGLRenderer;
  private readonly pace: WallPace;
  private readonly stage = new Container();
  private readonly uniforms = wallUniforms();
  private readonly pages: PrintPages;
  private readonly prints: HungPrints;
  private readonly closeUps = new CloseUpPrints(this.uniforms);
  private cache: WallCache | null = null;
  private kept: ReadonlySet<number> = new Set();
  private selected: ReadonlySet<number> = new Set();
  private focus = -1;
  /** The prints in view, so that they are gathered again only when others come into view. */
  private inView = '';
  private stale = true;
  /** How large prints were when all were last drawn. */
  private drawnScale = 0;

  constructor(renderer: WebGLRenderer, pages: PrintPages, pace: WallPace) {
    this.renderer = renderer;
    this.pages = pages;
    this.prints = new HungPrints(pages, this.uniforms);
    this.pace = pace;
    this.stage.addChild(this.prints.container, this.closeUps.container);
    this.closeUps.warmUp(() => renderer.render({ container: this.stage }));
  }

  get canvas(): HTMLCanvasElement {
    return this.renderer.canvas as HTMLCanvasElement;
  }

  clear(): void {
    this.forgetCloseUps();
    this.prints.clear();
  }

  changed(): void {
    this.stale = true;
  }

  resize({ width, height, density }: Screen): void {
    this.renderer.resize(width, height, density);
  }

  setPrintSize(width: number, height: number): void {
    this.uniforms.uniforms.uPrint[0] = width;
    this.uniforms.uniforms.uPrint[1] = height;
    this.stale = true;
  }

  setColours(accent: Rgba, shadow: Rgba): void {
    this.uniforms.uniforms.uAccent.set(accent);
    this.uniforms.uniforms.uShadow.set(shadow);
    this.stale = true;
  }

  setKept(kept: ReadonlySet<number>): void {
    this.kept = kept;
    this.stale = true;
  }

  setSelected(selected: ReadonlySet<number>): void {
    this.selected = selected;
    this.stale = true;
  }

  setFocus(index: number, strong: boolean): void {
    this.focus = index;
    this.uniforms.uniforms.uRing[1] = strong ? 3 : 1.5;
    this.uniforms.uniforms.uRing[2] = 1;
    this.stale = true;
  }

  addCloseUp(index: number, picture: Picture): void {
    this.closeUps.add(index, picture);
    this.cache?.forget();
  }

  closeUpPx(index: number): number {
    return this.closeUps.heightPx(index);
  }

  forgetCloseUps(but: ReadonlySet<number> = new Set()): void {
    if (this.closeUps.keepOnly(but)) this.cache?.forget();
  }

  draw(frame: WallFrame): void {
    this.uniforms.uniforms.uTaps = frame.moves && this.pace.slow ? 2 : 4;
    if (!this.showCached(frame)) this.drawAnew(frame, 0);
  }

  /**
   * Shows the wall as it was drawn before, when only where one stands changed.
   * @returns false when it must be drawn anew
   */
  private showCached(frame: WallFrame): boolean {
    const { view, screen } = frame;
    if (this.stale) this.cache?.forget();
    if (this.stale) return false;
    if (!frame.moves) {
      // What was drawn just so need not be drawn again.
      if (this.cache?.serves(screen) !== true || !this.cache.exact(view) || !this.cache.reaches(view, false)) return false;
      this.cache.show(this.renderer, view);
      return true;
    }
    if (this.cache?.serves(screen) !== true) {
      this.cache?.destroy();
      this.cache = new WallCache(screen);
    }
    if (!this.cache.reaches(view, this.pace.slow)) {
      // A quick screen is as soon drawn anew as copied while prints change their size.
      if (!this.pace.slow && this.drawnScale !== view.scale) return false;
      this.drawAnew(frame, CACHE_PAD);
    }
    this.cache.show(this.renderer, view);
    if (!this.cache.exact(view)) this.pace.fineSoon();
    return true;
  }

  /**
   * Draws all prints in view.
   * @param pad so much more on all sides, into the cache; 0: to the screen, CSS px
   */
  private drawAnew(frame: WallFrame, pad: number): void {
    this.gather(frame, pad);
    const { uniforms } = this.uniforms;
    const { view, screen } = frame;
    uniforms.uCamera.set([view.scale, view.x + pad, view.y + pad]);
    uniforms.uScreen.set([screen.width + 2 * pad, screen.height + 2 * pad]);
    uniforms.uDensity = screen.density;
    uniforms.uRing[0] = Math.min(5, 6.5 * view.scale);
    this.closeUps.place((index) => snappedFrameOf(index, frame, pad), this.lookOf);
    this.drawnScale = view.scale;
    this.pace.drewAll();
    if (pad > 0) defined(this.cache).draw(this.renderer, this.stage, view, uniforms.uTaps < 4);
    else this.renderer.render({ container: this.stage });
  }

  /**
   * Draws a frame aside, step by step, so that showing it is a copy: the page waits, whenever it is shown, for all that the
   * graphics card was asked for before.
   */
  async prepare(frame: WallFrame): Promise<void> {
    const { gl, texture } = this.renderer;
    const { hung, far } = this.seen(frame, CACHE_PAD);
    const places = hung.map((index) => this.pages.placesOf(index));
    for (const page of new Set(places.flatMap(({ small, map, colours }) => (far ? [small.page] : [map.page, colours.page])))) {
      texture.initSource(pageSource(page));
      await drawn(gl);
    }
    this.cache = new WallCache(frame.screen);
    this.uniforms.uniforms.uTaps = 4;
    this.drawAnew(frame, CACHE_PAD);
    await drawn(gl);
  }

  /** The prints that a frame shows, a key for which these are, and whether they are seen from far. */
  private seen({ view, screen, planned, rehanging }: WallFrame, pad: number): { hung: number[]; key: string; far: boolean } {
    const { scale } = view;
    const range = planned.bins(
      (-view.x - pad) / scale,
      (-view.y - pad) / scale,
      (screen.width + 2 * pad) / scale,
      (screen.height + 2 * pad) / scale,
    );
    const printPx = planned.plan.printHeight * scale * screen.density;
    const far = printPx <= this.pages.smallRows * MOST_ENLARGED;
    const key = `${range.firstColumn},${range.endColumn},${range.firstRow},${range.endRow},${far}`;
    const hung = (rehanging ? [...planned.plan.sequence] : planned.in(range)).filter((index) => this.pages.has(index));
    return { hung, key, far };
  }

  /** Puts the prints in view into their groups. */
  private gather(frame: WallFrame, pad: number): void {
    const { hung, key, far } = this.seen(frame, pad);
    if (!this.stale && key === this.inView) return;
    this.stale = false;
    this.inView = key;
    this.prints.show(hung, frame.at, this.lookOf, far);
  }

  private readonly lookOf = (index: number): number =>
    (this.kept.has(index) ? KEPT : 0) | (index === this.focus ? FOCUSED : 0) | (this.selected.has(index) ? SELECTED : 0);

  destroy(): void {
    this.clear();
    this.cache?.destroy();
    this.renderer.destroy({ removeView: true });
  }
}

/** Where a print is on the screen, on whole device pixels as the shader puts it. */
function snappedFrameOf(index: number, { at, planned, view, screen }: WallFrame, pad: number): Frame {
  const frame = frameOf(index, at, planned.plan, view);
  const snap = (px: number) => Math.round(px * screen.density) / screen.density;
  return { ...frame, left: snap(frame.left + pad), top: snap(frame.top + pad) };
}

/** A drawing by the graphics card; null when the browser gives no WebGL 2. */
export async function cardDrawing(pages: PrintPages, pace: WallPace): Promise<WallDrawing | null> {
  // Before the renderer, which makes a program of its own.
  const programs = withoutTest(() => [closeUpProgram(), ...wallPrograms()]);
  const renderer = await wallRenderer();
  if (renderer === null) return null;
  await buildAside(renderer.gl, programs);
  const drawing = new WallDrawing(renderer, pages, pace);
  await drawn(renderer.gl);
  return drawing;
}
