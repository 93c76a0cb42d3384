// The page forbids code made from text; this makes Pixi do without.
import 'pixi.js/unsafe-eval';
import 'pixi.js/mesh';
import { Container, Ticker, WebGLRenderer } from 'pixi.js';
import type { Picture, WallBatch } from '../../workers/wire.ts';
import { between, Camera, type View } from './camera.ts';
import { CloseUpPrints } from './close-up-prints.ts';
import { HungPrints } from './hung-prints.ts';
import { NumberLabels } from './number-labels.ts';
import { drawAxes } from './plan-axes.ts';
import { PlanIndex } from './plan-index.ts';
import { CACHE_PAD, WallCache } from './wall-cache.ts';
import { planWall, type PlanSpec, type WallPlan } from './wall-plan.ts';
import { FOCUSED, KEPT, MARKED, type Rgba, wallUniforms } from './wall-shader.ts';

const NO_WEBGL =
  'This browser gives the page no WebGL 2, so the wall cannot be drawn. Switch hardware acceleration on, or open Pullstack in another browser.';
const MOVE_MS = 170;
/** How long prints take to hang elsewhere. */
const REHANG_MS = 420;
/** Room under a print for its number, wall units. */
const NUMBER_ROOM = 24;
const SEED_ORDER: PlanSpec = { kind: 'rows', sequence: null };
const MOST_DENSITY = 2;
/** So much larger than its texels a small picture may be drawn before its softness shows. */
const MOST_ENLARGED = 1.05;
/** Slower frames than this are drawn with fewer look-ups as long as the wall moves. */
const SLOW_MS = 36;
const REST_MS = 160;
/** Prints that arrive are drawn together, so often at most; a slow screen takes longer. */
const ARRIVAL_MS = 90;
const MOST_ARRIVAL_MS = 700;

/** A rectangle on the screen, CSS px from the top left of the wall's element. */
export interface Frame {
  left: number;
  top: number;
  width: number;
  height: number;
}

/** Colours that come from the page's theme; channels 0–1. */
export interface WallTheme {
  accent: Rgba;
  shadow: Rgba;
  label: string;
  strong: string;
  wall: string;
  font: string;
}

/** The wall itself: prints, their numbers, and where one stands. Draws only when something changed. */
export class WallScene {
  private readonly renderer: WebGLRenderer;
  private readonly stage = new Container();
  private readonly uniforms = wallUniforms();
  private readonly prints = new HungPrints(this.uniforms);
  private readonly closeUps = new CloseUpPrints(this.uniforms);
  private readonly labels = new NumberLabels();
  private readonly camera = new Camera();
  private cache: WallCache | null = null;
  private plan: WallPlan;
  private planned: PlanIndex;
  private spec: PlanSpec = SEED_ORDER;
  private places = 1;
  /** Where prints hung before, while they go where they hang now. */
  private rehang: { from: Float32Array; start: number } | null = null;
  /** Where prints are drawn: `plan.at`, or on the way there. */
  private now: Float32Array;
  private aspect = 1;
  private size = { width: 1, height: 1 };
  private density = 1;
  private kept: ReadonlySet<number> = new Set();
  private marked: ReadonlySet<number> = new Set();
  private focus = -1;
  private frame = 0;
  private move: { from: View; to: View; start: number } | null = null;
  /** The prints in view, so that they are gathered again only when others come into view. */
  private inView = '';
  private stale = true;
  private drawnAt = 0;
  /** Whether the last frame drew all prints, and how large they were then. */
  private drew = false;
  private drawnScale = 0;
  private frameMs = 16;
  private fine: ReturnType<typeof setTimeout> | undefined;
  private arrival: ReturnType<typeof setTimeout> | undefined;
  private askedAt = 0;
  /** Called after each drawing, for what is laid over the wall. */
  onDrawn: () => void = () => {};

  /**
   * Makes the wall's canvas.
   * @throws when the browser gives no WebGL 2
   */
  static async create(): Promise<WallScene> {
    const renderer = new WebGLRenderer();
    // Nothing here moves by itself, so nothing of Pixi's may wake the page sixty times a second.
    Ticker.system.autoStart = false;
    Ticker.shared.autoStart = false;
    const ready = renderer.init({
      width: 1,
      height: 1,
      antialias: false,
      backgroundAlpha: 0,
      preferWebGLVersion: 2,
      autoDensity: true,
      gcActive: false,
      // Of what Pixi would load besides, only meshes are needed.
      skipExtensionImports: true,
    });
    try {
      await ready;
    } catch (error) {
      if (document.createElement('canvas').getContext('webgl2') !== null) throw error;
      throw new Error(NO_WEBGL, { cause: error });
    }
    Ticker.system.stop();
    return new WallScene(renderer);
  }

  private constructor(renderer: WebGLRenderer) {
    this.renderer = renderer;
    this.stage.addChild(this.prints.container, this.closeUps.container);
    this.plan = planWall(SEED_ORDER, 1, 1, this.size);
    this.planned = new PlanIndex(this.plan);
    this.now = this.plan.at;
    renderer.canvas.setAttribute('aria-hidden', 'true');
    this.closeUps.warmUp(() => renderer.render({ container: this.stage }));
    // Textures come back by themselves after a lost context, the picture does not.
    renderer.canvas.addEventListener('webglcontextrestored', () => this.refresh());
  }

  /** What to put on the page: the prints, and above them their numbers. */
  get canvases(): HTMLCanvasElement[] {
    return [this.renderer.canvas as HTMLCanvasElement, this.labels.canvas];
  }

  get columns(): number {
    return this.plan.columns;
  }

  /** Height of a print on the screen, device px. */
  get printPx(): number {
    return this.plan.printHeight * this.camera.scale * this.density;
  }

  /** Rows of the maps that the prints are drawn from, 0 before any came. */
  get mapRows(): number {
    return this.prints.mapRows;
  }

  /**
   * Takes everything down and makes room.
   * @param places how many prints are to come
   * @param aspect width ÷ height of the paper
   */
  begin(places: number, aspect: number): void {
    this.forgetCloseUps();
    this.prints.clear();
    this.aspect = aspect;
    // Where one stood before another number of prints is nowhere in particular.
    if (places !== this.places || this.spec !== SEED_ORDER) this.camera.keeps = 'start';
    this.spec = SEED_ORDER;
    this.lay(places);
  }

  /** Makes room for another number of prints. */
  lay(places: number): void {
    this.places = places;
    this.rehang = null;
    this.plan = planWall(this.spec, places, this.aspect, this.size);
    this.planned = new PlanIndex(this.plan);
    this.now = this.plan.at;
    this.uniforms.uniforms.uPrint[0] = this.plan.printWidth;
    this.uniforms.uniforms.uPrint[1] = this.plan.printHeight;
    this.camera.fit(this.size, this.plan, this.plan.printHeight);
    this.refresh();
  }

  /** Makes room for more prints, in seed order; those that hang stay. */
  extend(places: number): void {
    this.spec = SEED_ORDER;
    this.forgetCloseUps();
    this.lay(places);
  }

  /** Hangs the prints in another way; they are seen to go there, unless nothing is to move. */
  arrange(spec: PlanSpec): void {
    const from = this.now.slice();
    this.spec = spec;
    const before = { scale: this.camera.scale, x: this.camera.x, y: this.camera.y };
    this.camera.keeps = 'start';
    this.forgetCloseUps();
    this.lay(this.places);
    if (matchMedia('(prefers-reduced-motion: reduce)').matches || from.length === 0) return;
    // The wall changes its size with its order: prints start from where they are seen.
    const { scale, x, y } = this.camera;
    for (let i = 0; i < from.length; i += 2) {
      from[i] = (from[i]! * before.scale + before.x - x) / scale;
      from[i + 1] = (from[i + 1]! * before.scale + before.y - y) / scale;
    }
    this.rehang = { from, start: performance.now() };
    this.requestDraw();
  }

  /** Axes, extent and places of the wall as it hangs, for what is drawn beside it. */
  get hanging(): WallPlan {
    return this.plan;
  }

  /** What part of the wall is in view, wall units. */
  get seen(): { x: number; y: number; width: number; height: number } {
    const { scale, x, y } = this.camera;
    return { x: -x / scale, y: -y / scale, width: this.size.width / scale, height: this.size.height / scale };
  }

  /** Stands so that a point of the wall is in the middle. */
  lookAt(x: number, y: number): void {
    this.move = null;
    const { scale } = this.camera;
    this.camera.panBy(this.size.width / 2 - x * scale - this.camera.x, this.size.height / 2 - y * scale - this.camera.y);
    this.requestDraw();
  }

  /** Hangs the prints of a batch at their numbers. */
  add(batch: WallBatch): void {
    this.prints.add(batch);
    this.stale = true;
    this.arrival ??= setTimeout(
      () => {
        this.arrival = undefined;
        this.requestDraw();
      },
      Math.min(MOST_ARRIVAL_MS, Math.max(ARRIVAL_MS, this.frameMs * 3) - (performance.now() - this.drawnAt)),
    );
  }

  setTheme(theme: WallTheme): void {
    this.uniforms.uniforms.uAccent.set(theme.accent);
    this.uniforms.uniforms.uShadow.set(theme.shadow);
    this.labels.colour = theme.label;
    this.labels.strong = theme.strong;
    this.labels.font = theme.font;
    this.labels.wall = theme.wall;
    this.refresh();
  }

  /** Calls prints by a word in the place of their number. */
  setNames(names: ReadonlyMap<number, string>): void {
    this.labels.names = names;
    this.refresh();
  }

  /** Marks the prints that are in the Chest. */
  setKept(kept: ReadonlySet<number>): void {
    this.kept = kept;
    this.refresh();
  }

  /** Marks the prints that are chosen for something. */
  setMarked(marked: ReadonlySet<number>): void {
    this.marked = marked;
    this.refresh();
  }

  /** Marks one print, strongly while the keyboard is at the wall; −1 for none. */
  setFocus(index: number, strong: boolean): void {
    this.focus = index;
    this.uniforms.uniforms.uRing[1] = strong ? 3 : 1.5;
    this.uniforms.uniforms.uRing[2] = 1;
    this.refresh();
  }

  resize(width: number, height: number, density: number): void {
    if (width < 1 || height < 1) return;
    this.size = { width, height };
    this.density = Math.min(MOST_DENSITY, density);
    this.renderer.resize(width, height, this.density);
    this.labels.resize(width, height, this.density);
    // Someone who stands close by keeps the prints where they hang.
    if (this.camera.keeps !== 'place') this.lay(this.places);
    else {
      this.camera.fit(this.size, this.plan, this.plan.printHeight);
      this.refresh();
    }
  }

  panBy(dx: number, dy: number): void {
    this.move = null;
    this.camera.panBy(dx, dy);
    this.requestDraw();
  }

  /** Steps closer (factor > 1) or further, at once. */
  zoomAt(factor: number, x: number, y: number): void {
    this.move = null;
    this.camera.keeps = 'place';
    this.camera.set(this.camera.zoomed(factor, x, y));
    this.requestDraw();
  }

  /** Steps closer or further, gently, towards the marked print when it is in view. */
  zoomBy(factor: number): void {
    this.goTo(this.fromGoal(() => this.zoomedView(factor)));
  }

  /** Works out a view from where the present move ends, so that quick steps add up. */
  private fromGoal(work: () => View): View {
    const now = { scale: this.camera.scale, x: this.camera.x, y: this.camera.y };
    if (this.move !== null) this.camera.set(this.move.to);
    const view = work();
    this.camera.set(now);
    return view;
  }

  private zoomedView(factor: number): View {
    this.camera.keeps = 'place';
    const { focus, plan } = this;
    const frame = focus >= 0 && this.planned.hangs(focus) ? this.frameOf(focus) : null;
    const x = frame === null ? 0 : frame.left + frame.width / 2;
    const y = frame === null ? 0 : frame.top + frame.height / 2;
    const seen = frame !== null && x > 0 && y > 0 && x < this.size.width && y < this.size.height;
    if (!seen) return this.camera.zoomed(factor);
    return this.camera.zoomedOnto(factor, plan.at[focus * 2]!, plan.at[focus * 2 + 1]!, plan.printWidth, plan.printHeight);
  }

  /** Whether one stands where one came in. */
  get atStart(): boolean {
    return this.camera.keeps === 'start';
  }

  /** Steps back to where one came in: before the whole wall, or at the top of a tall one. */
  showStart(): void {
    const plan = planWall(this.spec, this.places, this.aspect, this.size);
    if (plan.columns !== this.plan.columns) this.lay(this.places);
    this.camera.keeps = 'start';
    this.goTo(this.camera.startView());
  }

  /** Brings a print into view, moving as little as need be. */
  reveal(index: number): void {
    const { plan } = this;
    if (!this.planned.hangs(index)) return;
    const to = this.fromGoal(() =>
      this.camera.revealing(plan.at[index * 2]!, plan.at[index * 2 + 1]!, plan.printWidth, plan.printHeight + NUMBER_ROOM),
    );
    const goal = this.move?.to ?? this.camera;
    if (Math.abs(to.x - goal.x) < 0.5 && Math.abs(to.y - goal.y) < 0.5) return;
    this.camera.keeps = 'place';
    this.goTo(to);
  }

  private goTo(to: View): void {
    const calm = matchMedia('(prefers-reduced-motion: reduce)').matches;
    if (calm) this.camera.set(to);
    else this.move = { from: { scale: this.camera.scale, x: this.camera.x, y: this.camera.y }, to, start: performance.now() };
    this.requestDraw();
  }

  /** The print at a point of the element, −1 when there is none. */
  printAt(x: number, y: number): number {
    const { scale } = this.camera;
    const index = this.planned.printAt((x - this.camera.x) / scale, (y - this.camera.y) / scale);
    return this.prints.has(index) ? index : -1;
  }

  /** The prints that touch a rectangle of the element. */
  printsIn(left: number, top: number, width: number, height: number): number[] {
    const { scale, x, y } = this.camera;
    return this.planned
      .touching((left - x) / scale, (top - y) / scale, width / scale, height / scale)
      .filter((index) => this.prints.has(index));
  }

  /** Whether a print hangs on the wall as it is now laid out. */
  hangs(index: number): boolean {
    return this.planned.hangs(index);
  }

  /** Where a print is on the screen. */
  frameOf(index: number): Frame {
    const { scale } = this.camera;
    return {
      left: this.now[index * 2]! * scale + this.camera.x,
      top: this.now[index * 2 + 1]! * scale + this.camera.y,
      width: this.plan.printWidth * scale,
      height: this.plan.printHeight * scale,
    };
  }

  /** The print that an arrow or page key leads to. */
  after(from: number, key: string): number {
    return this.planned.after(from, key, (index) => this.prints.has(index));
  }

  private range(pad: number) {
    const { x, y, width, height } = this.seen;
    const more = pad / this.camera.scale;
    return this.planned.bins(x - more, y - more, width + 2 * more, height + 2 * more);
  }

  /** The prints that are in view, by number. */
  visible(): number[] {
    const { x, y, width, height } = this.seen;
    return this.planned
      .touching(x - NUMBER_ROOM, y - NUMBER_ROOM, width + 2 * NUMBER_ROOM, height + 2 * NUMBER_ROOM)
      .filter((index) => this.prints.has(index));
  }

  /** Lays a finer picture over a print; it stays until it is forgotten or `begin`. */
  addCloseUp(index: number, picture: Picture): void {
    if (!this.prints.has(index)) return;
    this.closeUps.add(index, picture);
    this.cache?.forget();
    this.requestDraw();
  }

  /** Height of the finer picture over a print, px; 0 when there is none. */
  closeUpPx(index: number): number {
    return this.closeUps.heightPx(index);
  }

  forgetCloseUps(but: ReadonlySet<number> = new Set()): void {
    this.closeUps.keepOnly(but);
    this.cache?.forget();
  }

  private refresh(): void {
    this.stale = true;
    this.requestDraw();
  }

  /** Sees to it that the wall is drawn soon. */
  requestDraw(): void {
    if (this.frame !== 0) return;
    this.askedAt = performance.now();
    this.frame = requestAnimationFrame((now) => this.draw(now));
  }

  private draw(now: number): void {
    this.frame = 0;
    // In another room nothing is drawn; coming back is a change of size, which draws.
    if (this.renderer.canvas.clientWidth === 0) return;
    if (this.move !== null) {
      const part = Math.min(1, (now - this.move.start) / MOVE_MS);
      const eased = 1 - (1 - Math.max(0, part)) ** 3;
      this.camera.set(between(this.move.from, this.move.to, eased));
      if (part >= 1) this.move = null;
      else this.requestDraw();
    }
    const moves = this.choosePace(now);
    this.rehangStep(now);
    if (!this.showCached(moves)) this.drawAnew(0);
    this.labels.draw(this.plan, this.camera, () => (this.rehang === null ? this.visible() : []), this.focus);
    if (this.rehang === null) drawAxes(this.labels, this.plan, this.camera, this.size);
    this.onDrawn();
  }

  /**
   * Shows the wall as it was drawn before, when only where one stands changed.
   * @param moves whether frames follow each other
   * @returns false when it must be drawn anew
   */
  private showCached(moves: boolean): boolean {
    const { camera, renderer } = this;
    if (this.stale) this.cache?.forget();
    if (this.stale || !moves) return false;
    const screen = { ...this.size, density: this.density };
    if (this.cache?.serves(screen) !== true) {
      this.cache?.destroy();
      this.cache = new WallCache(screen);
    }
    if (!this.cache.reaches(camera, this.slow)) {
      // A quick screen is as soon drawn anew as copied while prints change their size.
      if (!this.slow && this.drawnScale !== camera.scale) return false;
      this.drawAnew(CACHE_PAD);
    }
    this.cache.show(renderer, camera);
    if (!this.cache.exact(camera)) this.drawFineSoon();
    return true;
  }

  /**
   * Draws all prints in view.
   * @param pad so much more on all sides, into the cache; 0: to the screen, CSS px
   */
  private drawAnew(pad: number): void {
    this.gather(pad);
    const { uniforms } = this.uniforms;
    const { scale, x, y } = this.camera;
    uniforms.uCamera.set([scale, x + pad, y + pad]);
    uniforms.uScreen.set([this.size.width + 2 * pad, this.size.height + 2 * pad]);
    uniforms.uDensity = this.density;
    uniforms.uRing[0] = Math.min(5, 6.5 * scale);
    this.closeUps.place((index) => this.snappedFrameOf(index, pad), this.lookOf);
    this.drawnScale = scale;
    this.drew = true;
    if (pad > 0) this.cache!.draw(this.renderer, this.stage, this.camera, uniforms.uTaps < 4);
    else this.renderer.render({ container: this.stage });
  }

  /** Moves prints on their way to where they hang now. */
  private rehangStep(now: number): void {
    if (this.rehang === null) return;
    const { from, start } = this.rehang;
    const { at } = this.plan;
    const part = Math.min(1, Math.max(0, now - start) / REHANG_MS);
    if (part >= 1) {
      this.now = at;
      this.rehang = null;
    } else {
      const eased = part < 0.5 ? 2 * part * part : 1 - 2 * (1 - part) ** 2;
      // Those that hung nowhere before are there at once.
      this.now = at.map((goal, i) => (Number.isNaN(from[i] ?? Number.NaN) ? goal : from[i]! + (goal - from[i]!) * eased));
      this.requestDraw();
    }
    this.stale = true;
  }

  /**
   * Keeps a slow screen moving: coarse while frames follow each other, fine as soon as they rest.
   * @returns whether frames follow each other
   */
  private choosePace(now: number): boolean {
    const moves = now - this.drawnAt < REST_MS * 2;
    this.drawnAt = now;
    // The browser calls back late when earlier frames still wait to be drawn.
    const late = Math.max(0, performance.now() - this.askedAt);
    // Copies are quick and say nothing of how long a drawing takes.
    if (this.drew) this.frameMs += (late - this.frameMs) * 0.3;
    this.drew = false;
    this.uniforms.uniforms.uTaps = moves && this.slow ? 2 : 4;
    clearTimeout(this.fine);
    if (moves && this.slow) this.drawFineSoon();
    return moves;
  }

  private get slow(): boolean {
    return this.frameMs > SLOW_MS;
  }

  private drawFineSoon(): void {
    clearTimeout(this.fine);
    this.fine = setTimeout(() => this.drawFine(), REST_MS);
  }

  private drawFine(): void {
    this.drawnAt = 0;
    this.requestDraw();
  }

  /** Puts the prints in view into their sheaves. */
  private gather(pad: number): void {
    const range = this.range(pad);
    const far = this.printPx <= this.prints.smallRows * MOST_ENLARGED;
    const key = `${range.firstColumn},${range.endColumn},${range.firstRow},${range.endRow},${far}`;
    if (!this.stale && key === this.inView) return;
    this.stale = false;
    this.inView = key;
    const hung = (this.rehang === null ? this.planned.in(range) : [...this.plan.sequence]).filter((index) => this.prints.has(index));
    this.prints.show(hung, this.now, this.lookOf, far);
  }

  private readonly lookOf = (index: number): number =>
    (this.kept.has(index) ? KEPT : 0) | (index === this.focus ? FOCUSED : 0) | (this.marked.has(index) ? MARKED : 0);

  /** Where a print is on the screen, on whole device pixels as the shader puts it. */
  private snappedFrameOf(index: number, pad: number): Frame {
    const frame = this.frameOf(index);
    const snap = (px: number) => Math.round(px * this.density) / this.density;
    return { ...frame, left: snap(frame.left + pad), top: snap(frame.top + pad) };
  }

  destroy(): void {
    clearTimeout(this.fine);
    clearTimeout(this.arrival);
    this.begin(0, 1);
    this.cache?.destroy();
    cancelAnimationFrame(this.frame);
    this.renderer.destroy({ removeView: true });
  }
}
