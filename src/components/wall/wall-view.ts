import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { Variant } from '../../engine/explore/types.ts';
import type { Pin } from '../../engine/project/types.ts';
import { printName } from '../../engine/recipe/lineage.ts';
import type { Drawer } from '../../engine/stack/types.ts';
import { sentenceOf } from '../../workers/client.ts';
import type { WallBatch } from '../../workers/wire.ts';
import { WallGestures } from '../canvas/wall-gestures.ts';
import type { WallScene } from '../canvas/wall-scene.ts';
import { controls } from '../ui/styles.ts';
import './build-up.ts';
import type { BuildUp } from './build-up.ts';
import { CloseUps } from './close-ups.ts';
import './compare-prints.ts';
import { type ComparePrints, MOST_COMPARED } from './compare-prints.ts';
import type { HangEvent } from './hang-choice.ts';
import { Hanging } from './hanging.ts';
import { kinAsk } from './kin-ask.ts';
import { pinnedPlaces } from './pinned-prints.ts';
import './print-out.ts';
import type { PrintOut } from './print-out.ts';
import './small-map.ts';
import type { SmallMap } from './small-map.ts';
import './wall-actions.ts';
import type { RangesEvent } from './wall-filter.ts';
import './wall-filter.ts';
import './wall-keys.ts';
import type { WallKeys } from './wall-keys.ts';
import './wall-line.ts';
import type { LineDeed } from './wall-line.ts';
import { lineageOf } from './wall-origins.ts';
import { themeOf } from './wall-theme.ts';
import { wallViewStyles } from './wall-view.styles.ts';

const STEP = 1.5;
const MOVES = ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End', 'PageUp', 'PageDown'];

/** What is done with a print of the wall: `keep-print`, `open-print`, `pin-print`. */
export type PrintEvent = CustomEvent<{ index: number }>;

/** The wall as one stands before it: prints, the one in focus, and how to come closer. */
@customElement('wall-view')
export class WallView extends LitElement {
  static override styles = [controls, wallViewStyles];

  @property({ attribute: false }) variants: readonly Variant[] = [];
  /** What the prints were found from. */
  @property({ attribute: false }) drawer: Drawer | null = null;
  @property({ attribute: false }) kept: ReadonlySet<number> = new Set();
  /** Prints that hang first, on whichever wall. */
  @property({ attribute: false }) pins: readonly Pin[] = [];
  @property({ type: Number }) found = 0;
  /** Said in the middle of an empty wall. */
  @property() note = '';
  /** True while prints arrive: then they hang in the order in which they are found. */
  @property({ type: Boolean }) running = false;
  @property({ attribute: false }) relative = true;
  @state() private focused = -1;
  @state() private marked: ReadonlySet<number> = new Set();
  @state() private filtering = false;
  /** What is worked out, in words; '' when nothing is. */
  @state() private busy = '';
  /** True once the user has walked away from where one comes in. */
  @state() private moved = false;
  /** Why there is no wall to be seen; '' when there is one. */
  @state() private trouble = '';
  @query('.surface') private surface!: HTMLElement;
  @query('build-up') private buildUp!: BuildUp;
  @query('compare-prints') private comparing!: ComparePrints;
  @query('print-out') private printOut!: PrintOut;
  @query('small-map') private smallMap!: SmallMap;
  @query('wall-keys') private keys!: WallKeys;
  @query('.box') private box!: HTMLElement;
  /** From here on hang pinned prints of other walls; −1 when none do. */
  private pinsFrom = -1;
  private readonly hanging = new Hanging();
  private scene: WallScene | null = null;
  /** True from a key to the next pointer: the ring is strong for those who steer by keys. */
  private byKeys = false;
  private closeUps: CloseUps | null = null;
  private gestures: WallGestures | null = null;
  private readonly sizes = new ResizeObserver(() => this.measure());
  private readonly dark = matchMedia('(prefers-color-scheme: dark)');
  /** Another screen may be finer though the room's size stays. */
  private fineness: MediaQueryList | null = null;
  private readonly onFineness = (): void => {
    this.watchFineness();
    this.measure();
  };
  private readonly onTheme = (): void => this.scene?.setTheme(themeOf(this));
  /** What came before the canvas stood. */
  private readonly waiting: ((scene: WallScene) => void)[] = [];

  override connectedCallback(): void {
    super.connectedCallback();
    this.dark.addEventListener('change', this.onTheme);
    this.watchFineness();
  }

  private watchFineness(): void {
    this.fineness?.removeEventListener('change', this.onFineness);
    this.fineness = matchMedia(`(resolution: ${devicePixelRatio}dppx)`);
    this.fineness.addEventListener('change', this.onFineness);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.fineness?.removeEventListener('change', this.onFineness);
    this.dark.removeEventListener('change', this.onTheme);
    this.sizes.disconnect();
    this.gestures?.destroy();
    this.closeUps?.stop();
    this.hanging.stop();
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
      this.smallMap.follow(scene, this.hanging.facts);
      if (this.drawer !== null) this.closeUps?.viewChanged(this.drawer, this.relative, (index) => this.variants[index]);
    };
    scene.setTheme(themeOf(this));
    this.measure();
    this.sizes.observe(surface);
    this.gestures = new WallGestures(surface, scene, {
      choose: (index) => this.choose(index),
      open: (index) => this.tell('open-print', index),
      rest: (index) => this.rest(index),
      box: (box) => this.showBox(box),
      boxed: (indexes) => {
        this.marked = new Set([...this.marked, ...indexes]);
      },
      mark: (index) => {
        this.choose(index);
        this.mark(index);
      },
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
    this.hanging.clear();
    this.forgetPins();
    this.marked = new Set();
    // Its number means another print from here on.
    this.focused = -1;
    this.closeUps?.stop();
    this.withScene((scene) => scene.begin(places, aspect));
  }

  /** Makes room for more prints; those that hang stay. */
  extend(places: number): void {
    this.buildUp.hide();
    this.forgetPins();
    this.withScene((scene) => scene.extend(places));
  }

  /** Takes the prints down and leaves the wall bare. */
  clear(): void {
    this.begin(0, 1);
  }

  /** Hangs prints; false when another print hangs under one of their numbers. */
  add(batch: WallBatch): boolean {
    const { keys } = this.hanging.facts;
    if (batch.tiles.some(({ variant }) => (keys[variant.index] ?? variant.key) !== variant.key)) return false;
    const fresh = { ...batch, tiles: batch.tiles.filter(({ variant }) => keys[variant.index] === undefined) };
    this.hanging.facts.add(fresh);
    this.withScene((scene) => scene.add(fresh));
    return true;
  }

  /** Hangs pinned prints of other walls after the wall's own. */
  addPins(batch: WallBatch): void {
    const [first] = batch.tiles;
    if (first === undefined) return;
    if (this.pinsFrom < 0) this.pinsFrom = first.variant.index;
    this.hanging.facts.add(batch);
    this.withScene((scene) => {
      scene.add(batch);
      scene.lay(batch.found);
    });
  }

  /** Makes room where pinned prints of other walls hang; they are hung again when the wall stands. */
  private forgetPins(): void {
    this.hanging.pinned = new Set();
    if (this.pinsFrom < 0) return;
    const { facts } = this.hanging;
    facts.keys.length = Math.min(facts.keys.length, this.pinsFrom);
    facts.measures.length = Math.min(facts.measures.length, this.pinsFrom);
    this.pinsFrom = -1;
    this.withScene((scene) => scene.setNames(new Map()));
  }

  /** Sees which prints are pinned, and hangs them first. */
  private followPins(): void {
    if (this.running) return;
    const pinned = pinnedPlaces(this.pins, this.variants);
    if ([...pinned].join() === [...this.hanging.pinned].join()) return;
    this.hanging.pinned = pinned;
    this.nameOthers();
    void this.rehang();
  }

  /** Prints of other walls have numbers of other walls. */
  private nameOthers(): void {
    const others = this.pinsFrom < 0 ? [] : this.variants.slice(this.pinsFrom);
    const names = new Map(others.map((_, i): [number, string] => [this.pinsFrom + i, this.hanging.pinned.has(this.pinsFrom + i) ? 'pinned' : 'other wall']));
    this.withScene((scene) => scene.setNames(names));
  }

  /** Whether a print was found on another wall and is only pinned to this one. */
  private isOther(place: number): boolean {
    return this.pinsFrom >= 0 && place >= this.pinsFrom;
  }

  /** Closes up a wall that stayed smaller than asked. */
  settle(places: number): void {
    if (this.focused >= places) this.focused = places - 1;
    this.withScene((scene) => scene.lay(places));
  }

  protected override updated(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('kept')) this.withScene((scene) => scene.setKept(this.kept));
    if (changed.has('marked')) this.withScene((scene) => scene.setMarked(this.marked));
    if (changed.has('running') && !this.running && this.found > 0) {
      if (!this.hanging.plain) void this.rehang();
    }
    if (changed.has('focused')) this.ring();
    if (changed.has('running') || changed.has('pins') || changed.has('variants')) this.followPins();
  }

  /** Hangs the prints as they are now to hang. */
  private async rehang(): Promise<void> {
    this.buildUp.hide();
    this.requestUpdate();
    if (this.running || this.found === 0 || this.drawer === null) return;
    try {
      const spec = await this.hanging.spec(this.variants, this.drawer, (share) => {
        this.busy = `Seeing what looks alike, ${Math.round(share * 100)} %`;
      });
      if (spec === null) return;
      this.withScene((scene) => scene.arrange(spec));
    } catch (error) {
      this.problem(sentenceOf(error));
    }
    this.busy = '';
  }

  private problem(sentence: string): void {
    this.dispatchEvent(new CustomEvent('wall-problem', { detail: sentence, bubbles: true, composed: true }));
  }

  private mark(index: number): void {
    if (this.variants[index] === undefined) return;
    this.focused = index;
    const next = new Set(this.marked);
    if (!next.delete(index)) next.add(index);
    this.marked = next;
  }

  private pin(index: number): void {
    if (this.variants[index] === undefined) return;
    this.tell('pin-print', index);
  }

  private showBox(box: { left: number; top: number; width: number; height: number } | null): void {
    this.box.hidden = box === null;
    if (box === null) return;
    Object.assign(this.box.style, { left: `${box.left}px`, top: `${box.top}px`, width: `${box.width}px`, height: `${box.height}px` });
  }

  private compare(): void {
    const prints = [...this.marked].sort((a, b) => a - b).flatMap((index) => this.variants[index] ?? []);
    if (this.drawer !== null && prints.length >= 2 && prints.length <= MOST_COMPARED) this.comparing.show(prints, this.drawer);
    else this.problem(`Mark two to ${MOST_COMPARED} prints with M to compare them.`);
  }

  /** A wall from the two marked prints, the first marked first. */
  private fromTwo(kind: 'between' | 'cross'): void {
    const prints = [...this.marked].flatMap((index) => this.variants[index] ?? []);
    if (prints.length === 2) this.dispatchEvent(new CustomEvent('print-kin', { detail: kinAsk(kind, prints), bubbles: true, composed: true }));
  }

  private sheet(): void {
    if (this.drawer === null) return;
    if (this.marked.size > 0) {
      const prints = [...this.marked].sort((a, b) => a - b).flatMap((index) => this.variants[index] ?? []);
      return this.printOut.showSheet(prints, prints.length === 1 ? 'marked print' : 'marked prints', this.drawer);
    }
    const shown = this.scene?.hanging.sequence.flatMap((index) => this.variants[index] ?? []) ?? [];
    this.printOut.showSheet(shown, 'prints that hang', this.drawer);
  }

  private save(index: number): void {
    const variant = this.variants[index];
    if (variant !== undefined && this.drawer !== null) this.printOut.showOne(variant, this.drawer);
  }

  private onLine(deed: LineDeed): void {
    if (deed === 'filter') this.filtering = !this.filtering;
    else if (deed === 'compare') this.compare();
    else if (deed === 'between' || deed === 'cross') this.fromTwo(deed);
    else if (deed === 'unmark') this.marked = new Set();
    else if (deed === 'sheet') this.sheet();
    else this.keys.show();
  }

  private putAway(): void {
    if (this.buildUp.index >= 0) this.buildUp.hide();
    else if (this.filtering) this.filtering = false;
    else this.marked = new Set();
  }

  private ring(): void {
    const strong = this.surface.matches(':focus-visible') || (this.byKeys && this.surface.matches(':focus'));
    this.scene?.setFocus(this.focused, strong);
  }

  private choose(index: number): void {
    if (this.buildUp.index !== index) this.buildUp.hide();
    this.focused = index;
  }

  private tell(type: 'keep-print' | 'open-print' | 'pin-print', index: number): void {
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
    if (sentence !== null) this.problem(sentence);
  }

  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const { scene } = this;
    const focused = this.focused < 0 ? (scene?.hanging.sequence[0] ?? -1) : this.focused;
    this.byKeys = true;
    const deeds: Record<string, () => void> = {
      Enter: () => this.tell('open-print', focused),
      k: () => this.tell('keep-print', focused),
      b: () => (this.buildUp.index === focused ? this.buildUp.hide() : void this.build(focused)),
      m: () => this.mark(focused),
      p: () => this.pin(focused),
      c: () => this.compare(),
      f: () => this.onLine('filter'),
      s: () => this.save(focused),
      '?': () => this.keys.show(),
      Escape: () => this.putAway(),
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
      if (this.focused < 0) this.focused = focused;
      else this.focused = scene?.after(focused, event.key) ?? Math.min(last, Math.max(0, focused + (event.key === 'ArrowLeft' ? -1 : 1)));
      scene?.reveal(this.focused);
    }
  };

  private readonly onFocus = (): void => {
    // `:focus-visible` is settled only after the focus event; a click chooses for itself.
    requestAnimationFrame(() => {
      if (this.focused < 0 && this.found > 0 && this.surface.matches(':focus-visible')) this.focused = 0;
      this.ring();
    });
  };

  private sentence(index: number): string {
    const variant = this.variants[index];
    if (variant === undefined) return '';
    const pulls = variant.pulls.length;
    const name = this.isOther(index) ? printName(lineageOf(variant)).replace('no.', 'No.') : `Print ${index + 1} of ${this.pinsFrom < 0 ? this.found : this.pinsFrom}`;
    return `${name}, ${pulls} ${pulls === 1 ? 'pull' : 'pulls'}`;
  }

  /** The focused print's row as buttons, for those who walk the page by its controls. */
  private rowOfButtons() {
    const columns = this.scene?.columns ?? 10;
    const sequence = this.scene?.hanging.sequence ?? [];
    const place = Math.max(0, sequence.indexOf(this.focused));
    const first = Math.floor(place / columns) * columns;
    return sequence.slice(first, first + columns).filter((index) => this.variants[index] !== undefined).map((index) => {
      return html`<li>
        <button tabindex="-1" aria-current=${index === this.focused ? 'true' : nothing} @click=${() => this.choose(index)}>
          ${this.sentence(index)}${this.kept.has(index) ? ', kept' : ''}${this.marked.has(index) ? ', marked' : ''}
        </button>
      </li>`;
    });
  }

  override render() {
    const { focused, kept } = this;
    const none = this.variants[focused] === undefined;
    const isKept = kept.has(focused);
    const { hanging } = this;
    const measures = this.running ? [] : hanging.facts.varying();
    const count = this.variants.length;
    const shown = hanging.ranges.size === 0 ? count : hanging.shown(count).length;
    return html`
      <wall-line
        ?hidden=${this.found === 0}
        .choice=${hanging.choice}
        .measures=${measures}
        .marked=${this.marked.size}
        .shown=${shown}
        .count=${count}
        .filtering=${this.filtering}
        .busy=${this.busy}
        @line=${(event: CustomEvent<LineDeed>) => this.onLine(event.detail)}
        @hang=${(event: HangEvent) => {
          hanging.choice = event.detail;
          void this.rehang();
        }}
      ></wall-line>
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
        @blur=${() => this.ring()}
      >
        ${this.trouble !== '' ? html`<div class="note"><p role="alert">${this.trouble}</p></div>` : nothing}
        ${this.note !== '' && this.found === 0 ? html`<div class="note" @pointerdown=${(event: Event) => event.stopPropagation()}><p>${this.note}</p><slot></slot></div>` : nothing}
        <div class="box" hidden></div>
        <small-map></small-map>
        <build-up .relative=${this.relative}></build-up>
      </div>
      <p id="keys" class="visually-hidden">
        Arrow keys go from print to print. Enter opens one on the Bench, K keeps it, B builds it up, M marks it, P pins it. Question mark lists all keys. Plus and minus come closer and go further, 0 shows the whole wall.
      </p>
      ${this.filtering
        ? html`<wall-filter
            .facts=${hanging.facts}
            .measures=${measures}
            .ranges=${hanging.ranges}
            .count=${count}
            .shown=${shown}
            @ranges=${(event: RangesEvent) => {
              hanging.ranges = event.detail;
              void this.rehang();
            }}
          ></wall-filter>`
        : nothing}
      <compare-prints .relative=${this.relative}></compare-prints>
      <print-out .relative=${this.relative}></print-out>
      <wall-keys></wall-keys>
      <ul class="visually-hidden" aria-label="Prints in this row">
        ${this.rowOfButtons()}
      </ul>
      <div class="rail" ?data-none=${none}>
        <p class="which" role="status" aria-live="polite">
          ${none
            ? html`<span class="soft">${this.found > 0 ? 'Choose a print.' : ''}</span>`
            : html`${this.sentence(focused)}${hanging.pinned.has(focused) ? ', pinned' : ''}${this.marked.has(focused) ? ', marked' : ''}${isKept ? html`, <span class="dot"></span>in the Chest` : nothing}`}
        </p>
        <div class="deeds">
          <button ?disabled=${none} @click=${() => void this.build(focused)}>Build up</button>
          <button ?disabled=${none} aria-pressed=${this.marked.has(focused)} @click=${() => this.mark(focused)}>Mark</button>
          <button ?disabled=${none} aria-pressed=${hanging.pinned.has(focused)} title="Hangs first, on this wall and the next" @click=${() => this.pin(focused)}>Pin</button>
          <button ?disabled=${none || isKept} @click=${() => this.tell('keep-print', focused)}>${isKept ? 'Kept' : 'Keep'}</button>
          <button ?disabled=${none} @click=${() => this.tell('open-print', focused)}>Open on Bench</button>
        </div>
        <wall-actions .variant=${this.variants[focused] ?? null} .drawer=${this.drawer} .relative=${this.relative}></wall-actions>
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
