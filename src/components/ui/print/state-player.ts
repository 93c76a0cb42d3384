import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** How fast the states of a stack follow each other. */
export interface StatePace {
  /** All of them take about so long, ms. */
  wholeMs: number;
  /** A state is shown no shorter and no longer, ms. */
  shortestMs: number;
  longestMs: number;
  /** Bare paper is shown so long, ms; as long as the others when left out. */
  barePaperMs?: number;
}

/** Shows the states of a stack one after another, bare paper to last down. */
export class StatePlayer implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private readonly pace: StatePace;
  private timer: ReturnType<typeof setTimeout> | undefined;
  /** The state shown: after so many pulls; null when none is. */
  shown: number | null = null;

  constructor(host: ReactiveControllerHost, pace: StatePace) {
    this.host = host;
    this.pace = pace;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.stop();
  }

  /**
   * Begins with bare paper.
   * @param ended called some time after the last pull came down; without it the last state stays
   */
  play(pulls: number, ended: () => void = () => {}): void {
    this.stop();
    const { wholeMs, shortestMs, longestMs } = this.pace;
    const each = Math.max(shortestMs, Math.min(longestMs, wholeMs / (pulls + 1)));
    const barePaper = this.pace.barePaperMs ?? each;
    const show = (state: number): void => {
      this.shown = state;
      this.timer = state < pulls ? setTimeout(() => show(state + 1), state === 0 ? barePaper : each) : setTimeout(ended, 2 * each);
      this.host.requestUpdate();
    };
    show(0);
  }

  stop(): void {
    clearTimeout(this.timer);
    if (this.shown === null) return;
    this.shown = null;
    this.host.requestUpdate();
  }
}
