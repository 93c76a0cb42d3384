import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { KeyWords } from '../../ui/key-list.ts';

/** The keys of the Bench, as they are listed. */
export const BENCH_KEYS: readonly KeyWords[] = [
  ['B, held', 'build the print up'],
  ['+ and −', 'closer and further'],
  ['0', 'the whole sheet'],
  ['Arrows, on the picture', 'move the selected pull by 0.1 mm, with Shift by 1 mm; with none selected, the sheet'],
  ['Enter, on the picture', 'read the colour in the middle; a click or tap reads it anywhere'],
  ['Left and right, on the strip', 'select the pull before or after; Home and End, the first or last'],
  ['Alt and left or right', 'pull it earlier or later'],
  ['Delete', 'remove the selected pull'],
];

/** What the keys of the Bench do. */
export interface KeyActs {
  /** Whether the Bench is in sight; the keys do nothing elsewhere. */
  here(): boolean;
  closer(): void;
  further(): void;
  whole(): void;
  /** Lists the keys. */
  keys(): void;
  /** B goes down: the stack builds up for as long as it is held. */
  play(): void;
  stop(): void;
}

/** Where keys are typed or have a meaning of their own. */
const BUSY = 'textarea, select, dialog[open], input:not([type=radio], [type=checkbox])';

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
    if (event.composedPath().some((target) => target instanceof Element && target.matches(BUSY))) return;
    if (event.key === '+' || event.key === '=') this.acts.closer();
    else if (event.key === '-' || event.key === '−') this.acts.further();
    else if (event.key === '0') this.acts.whole();
    else if (event.key === '?') this.acts.keys();
    else if (event.key.toLowerCase() === 'b') {
      if (!event.repeat) this.acts.play();
    } else return;
    event.preventDefault();
  };

  private readonly onKeyUp = (event: Event): void => {
    if (!(event instanceof KeyboardEvent) || event.key.toLowerCase() === 'b') this.acts.stop();
  };
}
