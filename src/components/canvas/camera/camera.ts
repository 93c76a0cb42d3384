import type { Box, Extent } from '../plan/wall-layout.ts';

const PADDING_PX = 28;
/** As wide as a print is to be when one comes in, so that it can be judged, px; a narrower view shows all of the width. */
const FIRST_PRINT_PX = 120;
const NARROW_PX = 600;
/** A wall so many times as tall as its view is not shown whole at first. */
const TALL = 1.6;
/** How far beyond the whole wall one can step back. */
const FURTHEST = 0.5;
/** A print can be brought so close that it is this much taller than the view. */
const CLOSEST = 3;

/** How the wall is seen: screen px = wall units × scale + shift. */
export interface View {
  scale: number;
  x: number;
  y: number;
}

/** Where one stands before the wall. All sizes in CSS px or wall units. */
export class Camera implements View {
  scale = 1;
  x = 0;
  y = 0;
  /** What stays in view when the wall or the window changes, until the user moves. */
  keeps: 'start' | 'whole' | 'place' = 'start';
  /** How much of the lower view something lies over; a wall that fits in the view may be shifted up from there. */
  covered = 0;
  private view: Extent = { width: 1, height: 1 };
  private wall: Extent = { width: 1, height: 1 };
  private print: Extent = { width: 1, height: 1 };

  /** Tells of the window and the wall; the whole wall stays whole, otherwise what was centred stays so. */
  fit(view: Extent, wall: Extent, print: Extent): void {
    const middleX = (this.view.width / 2 - this.x) / this.scale;
    const middleY = (this.view.height / 2 - this.y) / this.scale;
    this.view = view;
    this.wall = wall;
    this.print = print;
    if (this.keeps === 'start') this.set(this.startView());
    else if (this.keeps === 'whole') this.set(this.overview());
    else {
      this.set({
        scale: this.scale,
        x: view.width / 2 - middleX * this.scale,
        y: view.height / 2 - middleY * this.scale,
      });
    }
  }

  private get padding(): number {
    return Math.min(PADDING_PX, this.view.width / 24, this.view.height / 12);
  }

  /** A wall of few prints does not make posters of them. */
  private get posterScale(): number {
    return (this.view.height * 0.72) / this.print.height;
  }

  /** The view one comes in with: from the top left, with prints that are large enough to be judged. */
  startView(): View {
    const all = this.overview();
    const { view, wall, print, padding } = this;
    const across = view.width < NARROW_PX ? Math.min((view.width - 2 * padding) / wall.width, this.posterScale) : Infinity;
    const scale = Math.min(FIRST_PRINT_PX / print.width, across);
    return all.scale >= scale ? all : { scale, x: padding, y: padding };
  }

  /** The whole wall, or its full width from the top when it is tall. */
  overview(): View {
    const { view, wall, padding } = this;
    const whole = this.wholeView();
    const scale = (view.width - 2 * padding) / wall.width;
    // A single print is tall, too, but no poster.
    if (scale > this.posterScale || wall.height * scale < TALL * view.height) return whole;
    return { scale, x: padding, y: padding };
  }

  /** The view that shows the whole wall, in the middle. */
  wholeView(): View {
    const { view, wall, padding } = this;
    const scale = Math.min(
      Math.max(1e-3, (view.width - 2 * padding) / wall.width),
      Math.max(1e-3, (view.height - 2 * padding) / wall.height),
      this.posterScale,
    );
    return { scale, x: (view.width - wall.width * scale) / 2, y: (view.height - wall.height * scale) / 2 };
  }

  /** The view after stepping closer (factor > 1) or further, keeping a screen point where it is. */
  zoomed(factor: number, atX = this.view.width / 2, atY = this.view.height / 2): View {
    const least = this.wholeView().scale * FURTHEST;
    const most = Math.max((this.view.height * CLOSEST) / this.print.height, least);
    const scale = Math.min(most, Math.max(least, this.scale * factor));
    const ratio = scale / this.scale;
    return { scale, x: atX - (atX - this.x) * ratio, y: atY - (atY - this.y) * ratio };
  }

  /**
   * The view after stepping closer to a rectangle of the wall or further from it. It stays whole in
   * view as long as it fits, and in the middle from then on.
   */
  zoomedOnto(factor: number, { left, top, width, height }: Box): View {
    const { view } = this;
    const atX = (left + width / 2) * this.scale + this.x;
    const atY = (top + height / 2) * this.scale + this.y;
    const { scale, x, y } = this.zoomed(factor, atX, atY);
    if (factor <= 1) return { scale, x, y };
    const shift = (start: number, length: number, room: number): number =>
      length > room ? (room - length) / 2 - start : intoView(start, length, room);
    return {
      scale,
      x: x + shift(left * scale + x, width * scale, view.width),
      y: y + shift(top * scale + y, height * scale, view.height),
    };
  }

  /** The least shift that brings a rectangle of the wall into view, with some air. */
  revealing({ left, top, width, height }: Box): View {
    return {
      scale: this.scale,
      x: this.x + intoView(left * this.scale + this.x, width * this.scale, this.view.width),
      y: this.y + intoView(top * this.scale + this.y, height * this.scale, this.view.height),
    };
  }

  panBy(dx: number, dy: number): void {
    this.keeps = 'place';
    this.set({ scale: this.scale, x: this.x + dx, y: this.y + dy });
  }

  /** Stands at a view, but never so that the wall is out of sight. */
  set(to: View): void {
    this.scale = to.scale;
    this.x = within(to.x, this.wall.width * to.scale, this.view.width);
    this.y = within(to.y, this.wall.height * to.scale, this.view.height - this.covered);
  }
}

/** Keeps a wall that fits whole within the window, and some of a larger one under its middle. */
function within(shift: number, length: number, view: number): number {
  if (length <= view) return Math.min(view - length, Math.max(0, shift));
  return Math.min(view / 2, Math.max(view / 2 - length, shift));
}

/** How far a stretch of the screen must shift to be in view, with some air. */
function intoView(start: number, length: number, view: number): number {
  const air = Math.min(24, Math.max(0, (view - length) / 2));
  if (start < air) return air - start;
  if (start + length > view - air) return view - air - start - length;
  return 0;
}

/** A view between two, zooming evenly to the eye. */
export function between(from: View, to: View, part: number): View {
  const scale = from.scale * (to.scale / from.scale) ** part;
  const span = to.scale - from.scale;
  // The screen point that both views share moves with the scale, not with time.
  const along = Math.abs(span) < 1e-9 ? part : (scale - from.scale) / span;
  return { scale, x: from.x + (to.x - from.x) * along, y: from.y + (to.y - from.y) * along };
}
