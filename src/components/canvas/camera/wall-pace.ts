/** Slower frames than this are drawn with fewer look-ups as long as the wall moves. */
const SLOW_MS = 36;
const REST_MS = 160;
/** Prints that arrive are drawn together, so often at most; a slow screen takes longer. */
const ARRIVAL_MS = 90;
const MOST_ARRIVAL_MS = 700;

/** How fast the wall can be drawn, and what follows: coarse while it moves slowly, fine as soon as it rests. */
export class WallPace {
  private readonly requestDraw: () => void;
  private frameMs = 16;
  private askedAt = 0;
  private drawnAt = 0;
  /** Whether the last frame drew all prints. */
  private drew = false;
  private fine: ReturnType<typeof setTimeout> | undefined;
  private arrival: ReturnType<typeof setTimeout> | undefined;

  /** @param requestDraw sees to it that the wall is drawn with the next frame */
  constructor(requestDraw: () => void) {
    this.requestDraw = requestDraw;
  }

  /** Whether the screen cannot draw all prints as often as a moving wall needs. */
  get slow(): boolean {
    return this.frameMs > SLOW_MS;
  }

  /** Hears that a frame was asked for. */
  asked(): void {
    this.askedAt = performance.now();
  }

  /**
   * Hears that a frame begins.
   * @param now as the browser tells the frame, ms
   * @returns whether frames follow each other
   */
  begins(now: number): boolean {
    const moves = now - this.drawnAt < REST_MS * 2;
    this.drawnAt = now;
    // The browser calls back late when earlier frames still wait to be drawn.
    const late = Math.max(0, performance.now() - this.askedAt);
    // Copies are quick and say nothing of how long a drawing takes.
    if (this.drew) this.frameMs += (late - this.frameMs) * 0.3;
    this.drew = false;
    clearTimeout(this.fine);
    if (moves && this.slow) this.fineSoon();
    return moves;
  }

  /** Hears that this frame drew all prints. */
  drewAll(): void {
    this.drew = true;
  }

  /** Has the wall drawn finely once it rests. */
  fineSoon(): void {
    clearTimeout(this.fine);
    this.fine = setTimeout(() => {
      this.drawnAt = 0;
      this.requestDraw();
    }, REST_MS);
  }

  /** Has prints that arrive drawn, together with those that follow at once. */
  arrived(): void {
    this.arrival ??= setTimeout(
      () => {
        this.arrival = undefined;
        this.requestDraw();
      },
      Math.min(MOST_ARRIVAL_MS, Math.max(ARRIVAL_MS, this.frameMs * 3) - (performance.now() - this.drawnAt)),
    );
  }

  stop(): void {
    clearTimeout(this.fine);
    clearTimeout(this.arrival);
  }
}
