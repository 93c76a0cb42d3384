import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { Variant } from '../../engine/explore/types.ts';
import type { Drawer } from '../../engine/stack/types.ts';
import { sentenceOf } from '../../workers/client.ts';
import type { WallBatch } from '../../workers/wire.ts';
import { WallGestures } from '../canvas/wall-gestures.ts';
import type { WallScene } from '../canvas/wall-scene.ts';
import { controls } from '../ui/styles.ts';
import './build-up.ts';
import type { BuildUp } from './build-up.ts';
import { CloseUps } from './close-ups.ts';
import './wall-actions.ts';
import { themeOf } from './wall-theme.ts';
import { wallViewStyles } from './wall-view.styles.ts';

const STEP = 1.5;
const MOVES = ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End', 'PageUp', 'PageDown'];

/** What is done with a print of the wall: `keep-print`, `open-print`. */
export type PrintEvent = CustomEvent<{ index: number }>;

/** The wall as one stands before it: prints, the one in focus, and how to come closer. */
@customElement('wall-view')
export class WallView extends LitElement {
  static override styles = [controls, wallViewStyles];

  @property({ attribute: false }) variants: readonly Variant[] = [];
  /** What the prints were found from. */
  @property({ attribute: false }) drawer: Drawer | null = null;
  @property({ attribute: false }) kept: ReadonlySet<number> = new Set();
  @property({ type: Number }) found = 0;
  /** Said in the middle of an empty wall. */
  @property() note = '';
  @state() private focused = -1;
  /** True once the user has walked away from where one comes in. */
  @state() private moved = false;
  /** Why there is no wall to be seen; '' when there is one. */
  @state() private trouble = '';
  @query('.surface') private surface!: HTMLElement;
  @query('build-up') private buildUp!: BuildUp;
  private scene: WallScene | null = null;
  /** True from a key to the next pointer: the ring is strong for those who steer by keys. */
  private byKeys = false;
  private closeUps: CloseUps | null = null;
  private gestures: WallGestures | null = null;
  private readonly sizes = new ResizeObserver(() => this.measure());
  private readonly dark = matchMedia('(prefers-color-scheme: dark)');
  private readonly onTheme = (): void => this.scene?.setTheme(themeOf(this));
  /** What came before the canvas stood. */
  private readonly waiting: ((scene: WallScene) => void)[] = [];

  override connectedCallback(): void {
    super.connectedCallback();
    this.dark.addEventListener('change', this.onTheme);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.dark.removeEventListener('change', this.onTheme);
    this.sizes.disconnect();
    this.gestures?.destroy();
    this.closeUps?.stop();
    this.scene?.destroy();
    this.scene = null;
  }

  protected override async firstUpdated(): Promise<void> {
    try {
      // The canvas library is large; the search starts and the room stands without waiting for it.
      const { WallScene } = await import('../canvas/wall-scene.ts');
      const scene = await WallScene.create();
      if (!this.isConnected) return scene.destroy();
      this.scene = scene;
    } catch (error) {
      this.trouble = sentenceOf(error);
      return;
    }
    const { scene, surface } = this;
    surface.prepend(...scene.canvases);
    this.closeUps = new CloseUps(scene);
    scene.onDrawn = () => {
      this.moved = !scene.atStart;
      if (this.drawer !== null) this.closeUps?.viewChanged(this.drawer, true, (index) => this.variants[index]);
    };
    scene.setTheme(themeOf(this));
    this.measure();
    this.sizes.observe(surface);
    this.gestures = new WallGestures(surface, scene, {
      choose: (index) => this.choose(index),
      open: (index) => this.tell('open-print', index),
      rest: (index) => this.rest(index),
    });
    for (const deed of this.waiting.splice(0)) deed(scene);
  }

  private measure(): void {
    const { clientWidth, clientHeight } = this.surface;
    this.scene?.resize(clientWidth, clientHeight, devicePixelRatio);
  }

  private withScene(deed: (scene: WallScene) => void): void {
    if (this.scene !== null) deed(this.scene);
    else if (this.trouble === '') this.waiting.push(deed);
  }

  /** Takes the prints down and makes room for others. */
  begin(places: number, aspect: number): void {
    this.buildUp.hide();
    this.withScene((scene) => scene.begin(places, aspect));
  }

  /** Takes the prints down and leaves the wall bare. */
  clear(): void {
    this.focused = -1;
    this.begin(0, 1);
  }

  /** Hangs prints. */
  add(batch: WallBatch): void {
    this.withScene((scene) => scene.add(batch));
  }

  /** Closes up a wall that stayed smaller than asked. */
  settle(places: number): void {
    if (this.focused >= places) this.focused = places - 1;
    this.withScene((scene) => scene.lay(places));
  }

  protected override updated(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('kept')) this.withScene((scene) => scene.setKept(this.kept));
    if (changed.has('focused')) this.mark();
  }

  private mark(): void {
    const strong = this.surface.matches(':focus-visible') || (this.byKeys && this.surface.matches(':focus'));
    this.scene?.setFocus(this.focused, strong);
  }

  private choose(index: number): void {
    if (this.buildUp.index !== index) this.buildUp.hide();
    this.focused = index;
  }

  private tell(type: 'keep-print' | 'open-print', index: number): void {
    if (this.variants[index] === undefined) return;
    this.focused = index;
    this.buildUp.hide();
    this.dispatchEvent(new CustomEvent(type, { detail: { index }, bubbles: true, composed: true }));
  }

  private rest(index: number): void {
    if (index < 0) return this.buildUp.hide();
    // Who wants nothing to move by itself still has the key and the button.
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) return;
    void this.build(index);
  }

  private async build(index: number): Promise<void> {
    const variant = this.variants[index];
    if (variant === undefined || this.drawer === null || this.scene === null) return;
    const sentence = await this.buildUp.show(index, variant.pulls, this.drawer, this.scene.frameOf(index));
    if (sentence !== null) this.dispatchEvent(new CustomEvent('wall-problem', { detail: sentence, bubbles: true, composed: true }));
  }

  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const { scene, focused } = this;
    this.byKeys = true;
    const deeds: Record<string, () => void> = {
      Enter: () => this.tell('open-print', focused),
      k: () => this.tell('keep-print', focused),
      b: () => (this.buildUp.index === focused ? this.buildUp.hide() : void this.build(focused)),
      Escape: () => this.buildUp.hide(),
      '+': () => scene?.zoomBy(STEP),
      '=': () => scene?.zoomBy(STEP),
      '-': () => scene?.zoomBy(1 / STEP),
      '0': () => scene?.showStart(),
    };
    const deed = deeds[event.key.length === 1 ? event.key.toLowerCase() : event.key];
    if (deed !== undefined) {
      event.preventDefault();
      deed();
    } else if (MOVES.includes(event.key) && this.found > 0) {
      event.preventDefault();
      this.buildUp.hide();
      const last = this.variants.length - 1;
      if (focused < 0) this.focused = 0;
      else this.focused = scene?.after(focused, event.key) ?? Math.min(last, Math.max(0, focused + (event.key === 'ArrowLeft' ? -1 : 1)));
      scene?.reveal(this.focused);
    }
  };

  private readonly onFocus = (): void => {
    // `:focus-visible` is settled only after the focus event; a click chooses for itself.
    requestAnimationFrame(() => {
      if (this.focused < 0 && this.found > 0 && this.surface.matches(':focus-visible')) this.focused = 0;
      this.mark();
    });
  };

  private sentence(index: number): string {
    const variant = this.variants[index];
    if (variant === undefined) return '';
    const pulls = variant.pulls.length;
    return `Print ${index + 1} of ${this.found}, ${pulls} ${pulls === 1 ? 'pull' : 'pulls'}`;
  }

  /** The focused print's row as buttons, for those who walk the page by its controls. */
  private rowOfButtons() {
    const columns = this.scene?.columns ?? 10;
    const first = Math.floor(Math.max(0, this.focused) / columns) * columns;
    return this.variants.slice(first, first + columns).map((_, i) => {
      const index = first + i;
      return html`<li>
        <button tabindex="-1" aria-current=${index === this.focused ? 'true' : nothing} @click=${() => this.choose(index)}>
          ${this.sentence(index)}${this.kept.has(index) ? ', kept' : ''}
        </button>
      </li>`;
    });
  }

  override render() {
    const { focused, kept } = this;
    const none = this.variants[focused] === undefined;
    const isKept = kept.has(focused);
    return html`
      <div
        class="surface"
        role="application"
        tabindex="0"
        ?data-focused=${!none}
        aria-label="Wall of prints"
        aria-describedby="keys"
        @keydown=${this.onKey}
        @pointerdown=${() => {
          this.byKeys = false;
        }}
        @focus=${this.onFocus}
        @blur=${() => this.mark()}
      >
        ${this.trouble !== '' ? html`<div class="note"><p role="alert">${this.trouble}</p></div>` : nothing}
        ${this.note !== '' && this.found === 0 ? html`<div class="note" @pointerdown=${(event: Event) => event.stopPropagation()}><p>${this.note}</p><slot></slot></div>` : nothing}
        <build-up></build-up>
      </div>
      <p id="keys" class="visually-hidden">
        Arrow keys go from print to print. Enter opens one on the Bench, K keeps it, B builds it up. Plus and minus come closer and go further, 0 shows the whole wall.
      </p>
      <ul class="visually-hidden" aria-label="Prints in this row">
        ${this.rowOfButtons()}
      </ul>
      <div class="rail" ?data-none=${none}>
        <p class="which" role="status" aria-live="polite">
          ${none
            ? html`<span class="soft">${this.found > 0 ? 'Choose a print.' : ''}</span>`
            : html`${this.sentence(focused)}${isKept ? html`, <span class="dot"></span>in the Chest` : nothing}`}
        </p>
        <div class="deeds">
          <button ?disabled=${none} @click=${() => void this.build(focused)}>Build up</button>
          <button ?disabled=${none || isKept} @click=${() => this.tell('keep-print', focused)}>${isKept ? 'Kept' : 'Keep'}</button>
          <button ?disabled=${none} @click=${() => this.tell('open-print', focused)}>Open on Bench</button>
        </div>
        <wall-actions .variant=${this.variants[focused] ?? null} .drawer=${this.drawer}></wall-actions>
        <div class="stand" role="group" aria-label="Stand" ?data-moved=${this.moved}>
          <button class="step" @click=${() => this.scene?.zoomBy(1 / STEP)}>Further</button>
          <button class="step" @click=${() => this.scene?.zoomBy(STEP)}>Closer</button>
          <button @click=${() => this.scene?.showStart()}>Whole wall</button>
        </div>
      </div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-view': WallView;
  }
}
