import type { Picture } from '../../workers/api/picture-api.ts';
import type { WallBatch } from '../../workers/api/wall-api.ts';
import { NUMBER_ROOM, type SteeredWall, Steering } from './camera/steering.ts';
import { WallPace } from './camera/wall-pace.ts';
import { NumberLabels } from './draw/number-labels.ts';
import { type Frame, frameOf } from './draw/print-frame.ts';
import type { PagesAside } from './draw/print-pages.ts';
import { WallPrints } from './draw/wall-prints.ts';
import type { Rgba } from './draw/wall-shader.ts';
import { drawAxes } from './plan/plan-axes.ts';
import { PlanIndex } from './plan/plan-index.ts';
import { Rehang } from './plan/rehang.ts';
import { planWall, type PlanSpec, type WallPlan } from './plan/wall-plan.ts';

const SEED_ORDER: PlanSpec = { kind: 'rows', sequence: null };
const MOST_DENSITY = 2;

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
export class WallScene implements SteeredWall {
  private readonly pace = new WallPace(() => this.requestDraw());
  /** The prints as they are drawn. */
  readonly drawing = new WallPrints(this.pace, {
    changed: () => this.drawNow(),
    lost: (lost) => {
      this.onLost(lost);
      // Textures come back by themselves after a lost context, the picture does not.
      if (!lost) this.refresh();
    },
    plain: (error) => this.onPlain(error),
  });
  private readonly labels = new NumberLabels();
  /** Where one stands, and how one steps about. */
  readonly steering = new Steering(this);
  private readonly camera = this.steering.camera;
  private plan: WallPlan;
  planned: PlanIndex;
  private readonly rehang: Rehang;
  private spec: PlanSpec = SEED_ORDER;
  private places = 1;
  private aspect = 1;
  size = { width: 1, height: 1 };
  private density = 1;
  focus = -1;
  private frame = 0;
  /** Called after each drawing, for what is laid over the wall. */
  onDrawn: () => void = () => {};
  /** Called when prints arrived that are not in view, so that nothing is drawn. */
  onUnseen: () => void = () => {};
  /** Called when the graphics card drops the wall, and when it is drawn again. */
  onLost: (lost: boolean) => void = () => {};
  /** Called when the wall goes on being drawn without the graphics card; with null where the browser has no WebGL 2. */
  onPlain: (error: unknown) => void = () => {};

  constructor() {
    this.plan = planWall(SEED_ORDER, 1, 1, this.size);
    this.planned = new PlanIndex(this.plan);
    this.rehang = new Rehang(this.plan.at);
  }

  /** Has the graphics card draw; by itself, the wall asks for it once prints hang. */
  toCard(): Promise<void> {
    return this.drawing.toCard();
  }

  /** What to put on the page: the prints, and above them their numbers. */
  get canvases(): HTMLCanvasElement[] {
    return [this.drawing.canvas, this.labels.canvas];
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
    return this.drawing.mapRows;
  }

  /**
   * Takes everything down and makes room.
   * @param places how many prints are to come
   * @param aspect width ÷ height of the paper
   * @param aside prints that were put aside and hang again
   */
  begin(places: number, aspect: number, aside?: PagesAside): void {
    if (aside === undefined) this.drawing.clear();
    else this.drawing.hangAgain(aside);
    this.aspect = aspect;
    // Where one stood before another number of prints is nowhere in particular.
    if (places !== this.places || this.spec !== SEED_ORDER) this.camera.keeps = 'start';
    this.spec = SEED_ORDER;
    this.lay(places);
  }

  /** Makes room for another number of prints. */
  lay(places: number): void {
    this.places = places;
    this.plan = planWall(this.spec, places, this.aspect, this.size);
    this.planned = new PlanIndex(this.plan);
    this.rehang.hang(this.plan.at);
    this.drawing.setPrintSize(this.plan.printWidth, this.plan.printHeight);
    this.steering.fit();
    this.refresh();
  }

  /** Makes room for more prints, in seed order; those that hang stay. */
  extend(places: number): void {
    this.spec = SEED_ORDER;
    this.drawing.forgetCloseUps();
    this.lay(places);
  }

  /** Hangs the prints in another way; they are seen to go there, unless nothing is to move. */
  arrange(spec: PlanSpec): void {
    const from = this.rehang.at.slice();
    this.spec = spec;
    const before = { scale: this.camera.scale, x: this.camera.x, y: this.camera.y };
    // Maps and groups are read as a whole; only a wall in rows is walked along.
    this.camera.keeps = spec.kind === 'rows' ? 'start' : 'whole';
    this.drawing.forgetCloseUps();
    this.lay(this.places);
    if (matchMedia('(prefers-reduced-motion: reduce)').matches || from.length === 0) return;
    this.rehang.sendFrom(from, before, this.camera, performance.now());
    this.requestDraw();
  }

  /** Axes, extent and places of the wall as it hangs, for what is drawn beside it. */
  get hanging(): WallPlan {
    return this.plan;
  }

  /** Hangs the prints of a batch at their numbers. */
  add(batch: WallBatch): void {
    this.drawing.add(batch);
    // Most of a large wall arrives out of view, and drawing costs the cores that look for prints.
    if (batch.tiles.some(({ variant }) => this.planned.touches(variant.index, this.steering.seen))) this.pace.arrived();
    else this.onUnseen();
  }

  setTheme(theme: WallTheme): void {
    this.drawing.setColours(theme.accent, theme.shadow);
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

  /** Puts a pin into the prints that are pinned to every wall. */
  setPinned(pinned: ReadonlySet<number>): void {
    this.labels.pinned = pinned;
    this.refresh();
  }

  /** Marks the prints that are in the Chest. */
  setKept(kept: ReadonlySet<number>): void {
    this.drawing.setKept(kept);
    this.requestDraw();
  }

  /** Marks the prints that are chosen for something. */
  setSelected(selected: ReadonlySet<number>): void {
    this.drawing.setSelected(selected);
    this.requestDraw();
  }

  /** Marks one print, strongly while the keyboard is at the wall; −1 for none. */
  setFocus(index: number, strong: boolean): void {
    this.focus = index;
    this.drawing.setFocus(index, strong);
    this.requestDraw();
  }

  resize(width: number, height: number, density: number): void {
    if (width < 1 || height < 1) return;
    const { keeps } = this.camera;
    const shown = keeps === 'place' && this.steering.shows(this.focus);
    // Someone who stands close by keeps the prints where they hang; who walks along the wall, while lines below it come and go.
    const stays = keeps === 'place' || (width === this.size.width && !this.steering.atWhole);
    this.size = { width, height };
    this.density = Math.min(MOST_DENSITY, density);
    this.drawing.resize({ width, height, density: this.density });
    this.labels.resize(width, height, this.density);
    if (!stays) this.lay(this.places);
    else {
      this.steering.fit();
      this.refresh();
      if (shown) this.steering.reveal(this.focus);
    }
  }

  /** Lays the prints out anew when the view would now have them in other columns. */
  layToView(): void {
    const { columns } = planWall(this.spec, this.places, this.aspect, this.size);
    if (columns !== this.plan.columns) this.lay(this.places);
  }

  /** The print at a point of the element, −1 when there is none. */
  printAt(x: number, y: number): number {
    const { scale } = this.camera;
    const index = this.planned.printAt((x - this.camera.x) / scale, (y - this.camera.y) / scale);
    return this.drawing.has(index) ? index : -1;
  }

  /** The prints that touch a rectangle of the element. */
  printsIn(left: number, top: number, width: number, height: number): number[] {
    const { scale, x, y } = this.camera;
    const found = this.planned.touching((left - x) / scale, (top - y) / scale, width / scale, height / scale);
    return found.filter((index) => this.drawing.has(index));
  }

  /** Where a print is on the screen. */
  frameOf(index: number): Frame {
    return frameOf(index, this.rehang.at, this.plan, this.camera);
  }

  /** The print that an arrow or page key leads to. */
  after(from: number, key: string): number {
    return this.planned.after(from, key, (index) => this.drawing.has(index));
  }

  /** The prints that are in view, by number. */
  visible(): number[] {
    const { x, y, width, height } = this.steering.seen;
    const found = this.planned.touching(x - NUMBER_ROOM, y - NUMBER_ROOM, width + 2 * NUMBER_ROOM, height + 2 * NUMBER_ROOM);
    return found.filter((index) => this.drawing.has(index));
  }

  /** Lays a finer picture over a print; it stays until it is forgotten or `begin`. */
  addCloseUp(index: number, picture: Picture): void {
    if (!this.drawing.has(index)) return;
    this.drawing.addCloseUp(index, picture);
    this.requestDraw();
  }

  private refresh(): void {
    this.drawing.changed();
    this.requestDraw();
  }

  /** Sees to it that the wall is drawn soon. */
  requestDraw(): void {
    if (this.frame !== 0) return;
    this.pace.asked();
    this.frame = requestAnimationFrame((now) => this.draw(now));
  }

  /** Draws before the browser shows the page again. */
  private drawNow(): void {
    cancelAnimationFrame(this.frame);
    this.draw(performance.now());
  }

  private draw(now: number): void {
    this.frame = 0;
    // In another room nothing is drawn; coming back is a change of size, which draws.
    if (this.drawing.canvas.clientWidth === 0) return;
    this.steering.step(now);
    const moves = this.pace.begins(now);
    if (this.rehang.moving) {
      this.rehang.step(now);
      this.drawing.changed();
      if (this.rehang.moving) this.requestDraw();
    }
    const { plan, planned, camera, size, density, rehang } = this;
    this.drawing.draw({ view: camera, screen: { ...size, density }, planned, at: rehang.at, rehanging: rehang.moving, moves });
    this.labels.draw(plan, camera, () => (rehang.moving ? [] : this.visible()), this.focus);
    if (!rehang.moving) this.labels.drawPins(planned, camera, size);
    if (!rehang.moving) drawAxes(this.labels, plan, camera, size);
    this.onDrawn();
  }

  destroy(): void {
    this.pace.stop();
    this.begin(0, 1);
    this.drawing.destroy();
    cancelAnimationFrame(this.frame);
  }
}
