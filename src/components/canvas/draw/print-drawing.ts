import type { Picture } from '../../../workers/api/picture-api.ts';
import type { View } from '../camera/camera.ts';
import type { PlanIndex } from '../plan/plan-index.ts';
import type { Screen } from './wall-cache.ts';
import type { Rgba } from './wall-shader.ts';

/** What a frame shows of the wall. */
export interface WallFrame {
  view: View;
  screen: Screen;
  planned: PlanIndex;
  /** Left and top of each print by its number as it is drawn, wall units. */
  at: Float32Array;
  /** Whether prints are on their way, so that none is where the plan has it. */
  rehanging: boolean;
  /** Whether frames follow each other. */
  moves: boolean;
}

/** What draws the prints of a wall on a canvas: the graphics card, or the page itself where it gets none. */
export interface PrintDrawing {
  readonly canvas: HTMLCanvasElement;
  /** Takes all prints down. */
  clear(): void;
  /** Says that prints are to be gathered and drawn anew with the next frame. */
  changed(): void;
  /** @param size of the canvas, CSS px, with its device px to one of them */
  resize(size: Screen): void;
  setPrintSize(width: number, height: number): void;
  setColours(accent: Rgba, shadow: Rgba): void;
  /** Marks the prints that are in the Chest. */
  setKept(kept: ReadonlySet<number>): void;
  /** Marks the prints that are chosen for something. */
  setSelected(selected: ReadonlySet<number>): void;
  /** Rings one print, strongly or not; −1 for none. */
  setFocus(index: number, strong: boolean): void;
  /** Lays a finer picture over a print; it stays until it is forgotten or `clear`. */
  addCloseUp(index: number, picture: Picture): void;
  /** Height of the finer picture over a print, px; 0 when there is none. */
  closeUpPx(index: number): number;
  forgetCloseUps(but?: ReadonlySet<number>): void;
  draw(frame: WallFrame): void;
  destroy(): void;
}
