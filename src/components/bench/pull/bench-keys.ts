import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { isTyped } from '../../ui/kit/typed-key.ts';

/** What the keys of the Bench do. */
export interface KeyActs {
  /** Whether the Bench is in sight; the keys do nothing elsewhere. */
  here(): boolean;
  closer(): void;
  further(): void;
  whole(): void;
  /** B goes down: the stack builds up for as long as it is held. */
  play(): void;
  stop(): void;
}

/** The keys of the Bench, wherever on the page the focus is. */
export class BenchKeys implements ReactiveController {
  private readonly acts: KeyActs;

  constructor(host: ReactiveControllerHost, acts: KeyActs) {
    this.acts = acts;
    host.addController(this);
  }

  hostConnected(): void {
    window.addEventListener('keydown', this.onKey);
    window.addEventListener('keyup', this.onKeyUp);
    window.addEventListener('blur', this.onKeyUp);
  }

  hostDisconnected(): void {
    window.removeEventListener('keydown', this.onKey);
    window.removeEventListener('keyup', this.onKeyUp);
    window.removeEventListener('blur', this.onKeyUp);
  }

  private readonly onKey = (event: KeyboardEvent): void => {
    if (!this.acts.here() || event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented) return;
    if (isTyped(event)) return;
    if (event.key === '+' || event.key === '=') this.acts.closer();
    else if (event.key === '-' || event.key === '−') this.acts.further();
    else if (event.key === '0') this.acts.whole();
    else if (event.key.toLowerCase() === 'b') {
      if (!event.repeat) this.acts.play();
    } else return;
    event.preventDefault();
  };

  private readonly onKeyUp = (event: Event): void => {
    if (!(event instanceof KeyboardEvent) || event.key.toLowerCase() === 'b') this.acts.stop();
  };
}
