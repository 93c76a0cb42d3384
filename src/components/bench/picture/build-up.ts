import type { ReactiveController, ReactiveControllerHost } from 'lit';

const WHOLE_MS = 4200;
const SHORTEST_MS = 110;
const LONGEST_MS = 480;

/** Plays the states of a stack, bare paper to last down, and then rests on the whole. */
export class BuildUp implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private timer: ReturnType<typeof setTimeout> | null = null;
  /** The state shown: after so many pulls; null when none plays. */
  shown: number | null = null;

  constructor(host: ReactiveControllerHost) {
    this.host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.stop();
  }

  play(pulls: number): void {
    this.stop();
    if (pulls === 0) return;
    const each = Math.max(SHORTEST_MS, Math.min(LONGEST_MS, WHOLE_MS / (pulls + 1)));
    const next = (): void => {
      this.shown = this.shown === null ? 0 : this.shown + 1;
      this.timer = this.shown < pulls ? setTimeout(next, each) : setTimeout(() => this.stop(), 2 * each);
      this.host.requestUpdate();
    };
    next();
  }

  stop(): void {
    if (this.timer !== null) clearTimeout(this.timer);
    this.timer = null;
    if (this.shown === null) return;
    this.shown = null;
    this.host.requestUpdate();
  }
}
