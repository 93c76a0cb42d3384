/** What one tab saves that others show. */
export type Shared = 'project' | 'press';

/** Tells the other tabs of this browser what was saved, and hears it from them. */
export class OtherTabs {
  private readonly channel = new BroadcastChannel('pullstack-project');

  /** @param hear called when another tab has saved */
  constructor(hear: (what: Shared) => void) {
    this.channel.addEventListener('message', ({ data }: MessageEvent<Shared>) => hear(data));
  }

  tell(what: Shared): void {
    // A channel has no target, unlike a window.
    // oxlint-disable-next-line unicorn/require-post-message-target-origin
    this.channel.postMessage(what);
  }
}
