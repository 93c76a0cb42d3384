import type { Box } from '../plan/wall-layout.ts';
import { between, type Camera, type View } from './camera.ts';

const MOVE_MS = 170;

/** Takes the camera gently from view to view, or at once for those who want nothing to move. */
export class CameraMoves {
  private readonly camera: Camera;
  private readonly requestDraw: () => void;
  private move: { from: View; to: View; start: number } | null = null;

  /** @param requestDraw sees to it that the wall is drawn with the next frame */
  constructor(camera: Camera, requestDraw: () => void) {
    this.camera = camera;
    this.requestDraw = requestDraw;
  }

  /** Stays where the camera is by now. */
  stop(): void {
    this.move = null;
  }

  /** Works out a view from where the present move ends, so that quick steps add up. */
  fromGoal(work: () => View): View {
    const now = { scale: this.camera.scale, x: this.camera.x, y: this.camera.y };
    if (this.move !== null) this.camera.set(this.move.to);
    const view = work();
    this.camera.set(now);
    return view;
  }

  goTo(to: View): void {
    const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
    if (still) this.camera.set(to);
    else this.move = { from: { scale: this.camera.scale, x: this.camera.x, y: this.camera.y }, to, start: performance.now() };
    this.requestDraw();
  }

  /** Brings a rectangle of the wall into view, moving as little as need be. */
  reveal(box: Box): void {
    this.goWhere(this.fromGoal(() => this.camera.revealing(box)));
  }

  /** Goes to a view of one's own choice, unless one is on the way there already. */
  goWhere(to: View): void {
    const goal = this.move?.to ?? this.camera;
    if (Math.abs(to.x - goal.x) < 0.5 && Math.abs(to.y - goal.y) < 0.5) return;
    this.camera.keeps = 'place';
    this.goTo(to);
  }

  /** Moves the camera on to where it is at a time, ms. */
  step(now: number): void {
    if (this.move === null) return;
    const part = Math.min(1, (now - this.move.start) / MOVE_MS);
    const eased = 1 - (1 - Math.max(0, part)) ** 3;
    this.camera.set(between(this.move.from, this.move.to, eased));
    if (part >= 1) this.move = null;
    else this.requestDraw();
  }
}
