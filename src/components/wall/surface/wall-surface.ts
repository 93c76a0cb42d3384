import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { Variant } from '../../../engine/explore/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import { WallGestures } from '../../canvas/camera/wall-gestures.ts';
import type { WallScene } from '../../canvas/wall-scene.ts';
import { controls } from '../../ui/controls-style.ts';
import { fetchPart } from '../../ui/kit/late.ts';
import { midst } from '../../ui/layout-style.ts';
import { say } from '../../words/en/wall/surface.ts';
import type { LiftedPrint } from '../print/lifted-print.ts';
import { PrintFacts } from '../print/print-facts.ts';
import { CloseUps } from './close-ups.ts';
import type { SceneHolder } from './scene-holder.ts';
import type { SmallMap } from './small-map.ts';
import { actionOf, isForAll, isMove, type WallAction } from './wall-key-actions.ts';
import { wallSurfaceStyles } from './wall-surface-style.ts';

const LOST = say.browserTookGraphicsCard;
const PLAIN = say.thisBrowserGivesPage;

/** `action`: something is to be done with a print, or with the wall. */
export type ActionEvent = CustomEvent<{ action: WallAction; index: number }>;

/**
 * The prints as one stands before them, steered by pointer and keys, and what lies over them. Tells
 * `walk` (a print comes into focus), `over` (the mouse is over a print, or −1), `action`, `boxed` (prints to be selected) and `moved`.
 */
@customElement('wall-surface')
export class WallSurface extends LitElement {
  static override styles = [controls, midst, wallSurfaceStyles];

  @property({ attribute: false }) holder!: SceneHolder;
  @property({ attribute: false }) variants: readonly Variant[] = [];
  @property({ attribute: false }) facts = new PrintFacts();
  /** What the prints were found from. */
  @property({ attribute: false }) drawer: Studio | null = null;
  @property({ attribute: false }) relative = true;
  @property({ type: Number }) found = 0;
  /** Said in the middle of an empty wall. */
  @property() note = '';
  /** The print in focus; −1 for none. */
  @property({ type: Number }) focused = -1;
  /** Why there is no wall to be seen; '' when there is one. */
  @state() private trouble = '';
  /** Why the wall is drawn without the graphics card; '' when it is drawn by it, or will be. */
  @state() private plain = '';
  @query('.surface') private surface!: HTMLElement;
  /** Its code comes once prints hang. */
  @query('wall-lifted-print') private liftedPrint!: Partial<Pick<LiftedPrint, 'index' | 'show' | 'hide'>> | null;
  /** Its code as well. */
  @query('wall-small-map') private smallMap!: Partial<Pick<SmallMap, 'follow'>>;
  @query('.box') private box!: HTMLElement;
  /** True from a key to the next pointer: the ring is strong for those who steer by keys. */
  private byKeys = false;
  private moved = false;
  private mapAsked = false;
  private closeUps: CloseUps | null = null;
  private gestures: WallGestures | null = null;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.gestures?.destroy();
    this.closeUps?.stop();
  }

  protected override async firstUpdated(): Promise<void> {
    try {
      await this.holder.stand(this.surface, (scene) => this.serve(scene));
    } catch (error) {
      this.trouble = sentenceOf(error);
    }
  }

  protected override updated(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('focused')) this.ring();
    if (this.mapAsked || this.found === 0) return;
    this.mapAsked = true;
    const load = async (): Promise<void> => {
      await Promise.all([import('./small-map.ts'), import('../print/lifted-print.ts')]);
      // It follows each drawing of the wall.
      this.holder.scene?.requestDraw();
    };
    setTimeout(() =>
      fetchPart(load, (detail) => this.dispatchEvent(new CustomEvent('wall-problem', { detail, bubbles: true, composed: true }))),
    );
  }

  /** Has the canvas followed by what lies over it and steered by the pointer. */
  private serve(scene: WallScene): void {
    this.closeUps = new CloseUps(this, scene);
    scene.onPlain = (error) => {
      this.plain = error === null ? PLAIN : say.wallIsDrawnWithout(sentenceOf(error));
    };
    scene.onLost = (lost) => {
      this.trouble = lost ? LOST : '';
    };
    scene.onDrawn = () => {
      this.tellMoved(!scene.steering.atWhole);
      this.smallMap.follow?.(scene, this.facts);
      if (this.drawer !== null) this.closeUps?.viewChanged(this.drawer, this.relative, (index) => this.variants[index]);
    };
    scene.onUnseen = () => this.smallMap.follow?.(scene, this.facts);
    this.gestures = new WallGestures(this.surface, scene, {
      choose: (index) => this.choose(index),
      open: (index) => this.tell('action', { action: 'open', index }),
      rest: (index) => this.rest(index),
      over: (index) => this.tell('over', index),
      box: (box) => this.showBox(box),
      boxed: (indexes) => this.tell('boxed', indexes),
      mark: (index) => {
        this.choose(index);
        this.tell('action', { action: 'select', index });
      },
    });
  }

  private tell(type: 'walk' | 'over' | 'action' | 'boxed' | 'moved', detail: ActionEvent['detail'] | number | number[] | boolean): void {
    this.dispatchEvent(new CustomEvent(type, { detail }));
  }

  private tellMoved(moved: boolean): void {
    if (moved === this.moved) return;
    this.moved = moved;
    this.tell('moved', moved);
  }

  /** Brings a print into focus; another that is built up is hung again. */
  choose(index: number): void {
    if (this.built !== index) this.hangBack();
    this.tell('walk', index);
    // Whoever cannot drag with a finger goes along the wall by taps on the prints at its edge.
    if (index >= 0 && matchMedia('(pointer: coarse)').matches) this.holder.scene?.steering.reveal(index);
  }

  /** The print that is built up; −1 when none is. */
  get built(): number {
    return this.liftedPrint?.index ?? -1;
  }

  /** Hangs the print that is built up again. */
  hangBack(): void {
    this.liftedPrint?.hide?.();
  }

  /** Ends what is drawn for the prints that hang, before others do. */
  forgetPrints(): void {
    this.hangBack();
    this.closeUps?.stop();
  }

  /** Takes a print off the wall and builds it up; tells `wall-problem` when it cannot be. */
  async build(index: number): Promise<void> {
    const variant = this.variants[index];
    const { scene } = this.holder;
    if (variant === undefined || this.drawer === null || scene === null) return;
    await this.liftedPrint?.show?.(index, { pulls: variant.pulls, drawer: this.drawer }, scene.frameOf(index));
  }

  private rest(index: number): void {
    if (index < 0) return this.hangBack();
    // Who wants nothing to move by itself still has the key and the button.
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) return;
    void this.build(index);
  }

  private showBox(box: { left: number; top: number; width: number; height: number } | null): void {
    this.box.hidden = box === null;
    if (box === null) return;
    Object.assign(this.box.style, { left: `${box.left}px`, top: `${box.top}px`, width: `${box.width}px`, height: `${box.height}px` });
  }

  private ring(): void {
    const strong = this.surface.matches(':focus-visible') || (this.byKeys && this.surface.matches(':focus'));
    this.holder.scene?.setFocus(this.focused, strong);
  }

  /** Has the wall's keys work from here on. */
  takeKeys(): void {
    this.surface.focus({ preventScroll: true });
  }

  /** Does what a key asks for. */
  readonly key = (event: KeyboardEvent): void => {
    const { scene } = this.holder;
    if (isForAll(event)) {
      event.preventDefault();
      this.tell('boxed', scene?.hanging.sequence.filter((index) => scene.planned.hangs(index) && index < this.found) ?? []);
    }
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const focused = this.focused < 0 ? (scene?.hanging.sequence[0] ?? -1) : this.focused;
    this.byKeys = true;
    const action = actionOf(event.key);
    if (action !== undefined) {
      event.preventDefault();
      this.tell('action', { action, index: focused });
    } else if (isMove(event.key) && this.found > 0) {
      event.preventDefault();
      this.hangBack();
      const last = this.variants.length - 1;
      let to = focused;
      // The first key chooses the first print, but for the one that asks for the last.
      if (this.focused >= 0 || event.key === 'End')
        to = scene?.after(focused, event.key) ?? Math.min(last, Math.max(0, focused + (event.key === 'ArrowLeft' ? -1 : 1)));
      this.tell('walk', to);
      scene?.steering.reveal(to);
    }
  };

  private readonly onFocus = (): void => {
    // `:focus-visible` is settled only after the focus event; a click chooses for itself.
    requestAnimationFrame(() => {
      if (this.focused < 0 && this.found > 0 && this.surface.matches(':focus-visible'))
        this.tell('walk', this.holder.scene?.hanging.sequence[0] ?? 0);
      this.ring();
    });
  };

  override render() {
    return html`
      <div
        class="surface"
        role="application"
        tabindex="0"
        data-begin
        ?data-focused=${this.variants[this.focused] !== undefined}
        aria-label=${say.wallOfPrints}
        aria-describedby="keys"
        @keydown=${this.key}
        @pointerdown=${() => {
          this.byKeys = false;
        }}
        @focus=${this.onFocus}
        @blur=${() => this.ring()}
      >
        ${this.trouble !== '' ? html`<div class="note midst"><p role="alert">${this.trouble}</p></div>` : nothing}
        ${this.note !== '' && this.found === 0 ? html`<div class="note midst" @pointerdown=${(event: Event) => event.stopPropagation()}><p>${this.note}</p><slot></slot></div>` : nothing}
        ${this.plain === '' ? nothing : html`<p class="plain small" role="status">${this.plain}</p>`}
        <div class="box" hidden></div>
        <wall-lifted-print .relative=${this.relative}></wall-lifted-print>
      </div>
      <wall-small-map></wall-small-map>
      <p id="keys" class="visually-hidden">
        ${say.arrowKeysGoFrom}
      </p>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-surface': WallSurface;
  }
}
