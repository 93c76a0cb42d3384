import { html, nothing, type ReactiveController, type ReactiveControllerHost } from 'lit';
import { live } from 'lit/directives/live.js';
import { say } from '../../words/en/press/log.ts';

/** Keeps the screen lit while hands are wet with ink; the browser lets go when the page is hidden. */
export class KeepAwake implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private lock: WakeLockSentinel | null = null;
  wanted = false;

  constructor(host: ReactiveControllerHost) {
    this.host = host;
    host.addController(this);
  }

  /** Whether this browser can. */
  get possible(): boolean {
    return 'wakeLock' in navigator;
  }

  hostConnected(): void {
    document.addEventListener('visibilitychange', this.onVisible);
  }

  hostDisconnected(): void {
    document.removeEventListener('visibilitychange', this.onVisible);
    void this.set(false);
  }

  private readonly onVisible = (): void => {
    if (this.wanted && document.visibilityState === 'visible') void this.set(true);
  };

  async set(wanted: boolean): Promise<void> {
    this.wanted = wanted;
    this.host.requestUpdate();
    try {
      if (!wanted) {
        await this.lock?.release();
        this.lock = null;
      } else if (this.lock === null || this.lock.released) {
        this.lock = await navigator.wakeLock.request('screen');
      }
    } catch {
      // Low battery or a setting of the device forbids it; the box then says so by being empty.
      this.wanted = false;
      this.host.requestUpdate();
    }
  }
}

/** The box that asks for it; nothing where the browser cannot. */
export function awakeBox(awake: KeepAwake) {
  return awake.possible
    ? html`<label
        ><input
          type="checkbox"
          .checked=${live(awake.wanted)}
          @change=${(event: Event) => void awake.set((event.target as HTMLInputElement).checked)}
        />${say.keepThisScreenAwake}</label
      >`
    : nothing;
}
