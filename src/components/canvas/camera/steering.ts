import { num } from '../../../engine/base/at.ts';
import type { PlanIndex } from '../plan/plan-index.ts';
import type { Box, Extent } from '../plan/wall-layout.ts';
import { CameraMoves } from './camera-moves.ts';
import { Camera, type View } from './camera.ts';

/** Room under a print for its number, wall units. */
export const NUMBER_ROOM = 24;

/** Air between a print and what lies over the wall beside it, px. */
const BESIDE_PX = 12;

/** The wall that one steps about before. */
export interface SteeredWall {
  /** What it is seen through, CSS px. */
  readonly size: Extent;
  readonly planned: PlanIndex;
  /** The print in focus; −1 for none. */
  readonly focus: number;
  /** Where a print is on the screen. */
  frameOf(index: number): Box;
  /** Lays the prints out anew when the view would now have them in other columns. */
  layToView(): void;
  requestDraw(): void;
}

/** Where one stands, so that one can stand there again. */
export interface Stand extends View {
  keeps: Camera['keeps'];
}

/** Steps about before a wall: nearer and further, along it, and back to where one came in. */
export class Steering {
  readonly camera = new Camera();
  private readonly moves: CameraMoves;
  private readonly wall: SteeredWall;

  constructor(wall: SteeredWall) {
    this.wall = wall;
    this.moves = new CameraMoves(this.camera, () => wall.requestDraw());
  }

  /** What part of the wall is in view, wall units. */
  get seen(): { x: number; y: number; width: number; height: number } {
    const { scale, x, y } = this.camera;
    const { width, height } = this.wall.size;
    return { x: -x / scale, y: -y / scale, width: width / scale, height: height / scale };
  }

  /** Where one stands. */
  get stand(): Stand {
    const { keeps, scale, x, y } = this.camera;
    return { keeps, scale, x, y };
  }

  /** Stands where one stood before. */
  standAt({ keeps, ...view }: Stand): void {
    this.moves.stop();
    this.camera.keeps = keeps;
    this.camera.set({ start: this.camera.startView(), whole: this.camera.overview(), place: view }[keeps]);
    this.wall.requestDraw();
  }

  /** Whether one stands before the whole wall, or as much of it as can be told apart. */
  get atWhole(): boolean {
    const { keeps } = this.camera;
    return keeps === 'whole' || (keeps === 'start' && this.camera.startView().scale <= this.camera.overview().scale);
  }

  /** Tells of the view and of how the wall hangs now; what one was on the way to is of the wall before. */
  fit(): void {
    const { plan } = this.wall.planned;
    this.moves.stop();
    this.camera.fit(this.wall.size, plan, { width: plan.printWidth, height: plan.printHeight });
  }

  /** Moves the camera on to where it is at a time, ms. */
  step(now: number): void {
    this.moves.step(now);
  }

  /** Stands so that a point of the wall is in the middle. */
  lookAt(x: number, y: number): void {
    const { camera, wall } = this;
    this.panBy(wall.size.width / 2 - x * camera.scale - camera.x, wall.size.height / 2 - y * camera.scale - camera.y);
  }

  panBy(dx: number, dy: number): void {
    this.moves.stop();
    this.camera.panBy(dx, dy);
    this.wall.requestDraw();
  }

  /** Steps closer (factor > 1) or further, at once. */
  zoomAt(factor: number, x: number, y: number): void {
    this.moves.stop();
    this.camera.keeps = 'place';
    this.camera.set(this.camera.zoomed(factor, x, y));
    this.wall.requestDraw();
  }

  /** Steps closer or further, gently, towards the marked print when it is in view. */
  zoomBy(factor: number): void {
    this.moves.goTo(this.moves.fromGoal(() => this.zoomedView(factor)));
  }

  private zoomedView(factor: number): View {
    this.camera.keeps = 'place';
    const { focus, planned, size } = this.wall;
    const frame = focus >= 0 && planned.hangs(focus) ? this.wall.frameOf(focus) : null;
    const x = frame === null ? 0 : frame.left + frame.width / 2;
    const y = frame === null ? 0 : frame.top + frame.height / 2;
    const inView = frame !== null && x > 0 && y > 0 && x < size.width && y < size.height;
    if (!inView) return this.camera.zoomed(factor);
    return this.camera.zoomedOnto(factor, this.placeOf(focus));
  }

  /** Steps back before the whole wall, or to the top of a tall one. */
  showWhole(): void {
    this.wall.layToView();
    this.camera.covered = 0;
    this.camera.keeps = 'whole';
    this.moves.goTo(this.camera.overview());
  }

  /** Whether all of a print is in view. */
  shows(index: number): boolean {
    const { planned, size } = this.wall;
    if (index < 0 || !planned.hangs(index)) return false;
    const { left, top, width, height } = this.wall.frameOf(index);
    return left >= 0 && top >= 0 && left + width <= size.width && top + height <= size.height;
  }

  /** Brings a print into view, moving as little as need be. */
  reveal(index: number): void {
    if (!this.wall.planned.hangs(index)) return;
    const place = this.placeOf(index);
    this.moves.reveal({ ...place, height: place.height + NUMBER_ROOM });
  }

  /** Brings a print out from under something that lies over the wall: beside it where it fits, else above it. */
  bringOut(index: number, covered: Box): void {
    if (!this.wall.planned.hangs(index)) return;
    const view = this.moves.fromGoal(() => {
      const { left, top, width, height } = this.wall.frameOf(index);
      const { scale, x, y } = this.camera;
      const right = covered.left + covered.width;
      const before = covered.left - BESIDE_PX - (left + width);
      const beyond = right + BESIDE_PX - left;
      const up = covered.top - BESIDE_PX - (top + height + NUMBER_ROOM);
      if (before >= 0 || beyond <= 0 || up >= 0) return { scale, x, y };
      const room = width + 2 * BESIDE_PX;
      this.camera.covered = 0;
      if (room <= covered.left) return { scale, x: x + before, y };
      if (room <= this.wall.size.width - right) return { scale, x: x + beyond, y };
      this.camera.covered = Math.max(0, this.wall.size.height - covered.top);
      return { scale, x, y: y + up };
    });
    this.moves.goWhere(view);
  }

  /** Where a print hangs, wall units. */
  private placeOf(index: number): Box {
    const { at, printWidth, printHeight } = this.wall.planned.plan;
    return { left: num(at, index * 2), top: num(at, index * 2 + 1), width: printWidth, height: printHeight };
  }
}
