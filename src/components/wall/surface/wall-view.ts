import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { Variant } from '../../../engine/explore/types.ts';
import type { Pin } from '../../../engine/project/types.ts';
import { printName } from '../../../engine/recipe/lineage.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { WallBatch } from '../../../workers/api/engine-api.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import type { WallScene } from '../../canvas/wall-scene.ts';
import { controls } from '../../ui/controls-style.ts';
import '../print/compare-prints.ts';
import { GuestPrints } from '../hang/guest-prints.ts';
import type { HangEvent } from '../hang/hang-choice.ts';
import { Hanging } from '../hang/hanging.ts';
import type { RangesEvent } from '../hang/wall-filter.ts';
import { type ComparePrints, MOST_COMPARED } from '../print/compare-prints.ts';
import '../print/print-out.ts';
import type { PrintOut } from '../print/print-out.ts';
import { derivedAsk } from '../run/derived-ask.ts';
import { lineageOf } from '../run/wall-origins.ts';
import { SceneHolder } from './scene-holder.ts';
import '../hang/wall-filter.ts';
import './wall-keys.ts';
import type { WallAction } from './wall-key-actions.ts';
import './wall-line.ts';
import type { WallKeys } from './wall-keys.ts';
import type { LineAction } from './wall-line.ts';
import './wall-rail.ts';
import type { RailAction } from './wall-rail.ts';
import './wall-surface.ts';
import type { ActionEvent, WallSurface } from './wall-surface.ts';
import { wallViewStyles } from './wall-view-style.ts';

const STEP = 1.5;

/** What is done with a print of the wall: `keep-print`, `open-print`, `pin-print`. */
export type PrintEvent = CustomEvent<{ index: number }>;

/** The wall with the line above it and the rail below: which print is in focus, which are marked, and what is done with them. */
@customElement('wall-view')
export class WallView extends LitElement {
  static override styles = [controls, wallViewStyles];

  @property({ attribute: false }) variants: readonly Variant[] = [];
  /** What the prints were found from. */
  @property({ attribute: false }) drawer: Studio | null = null;
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
  @query('wall-surface') private surface!: WallSurface;
  @query('wall-compare-prints') private comparing!: ComparePrints;
  @query('wall-print-out') private printOut!: PrintOut;
  @query('wall-keys') private keys!: WallKeys;
  private readonly hanging = new Hanging();
  private readonly holder = new SceneHolder(this);
  private readonly guests = new GuestPrints(this.hanging, this.holder);

  private get scene(): WallScene | null {
    return this.holder.scene;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.hanging.stop();
  }

  /** Takes the prints down and makes room for others. */
  begin(places: number, aspect: number): void {
    this.surface.forgetPrints();
    this.hanging.clear();
    this.guests.forget();
    this.marked = new Set();
    // Its number means another print from here on.
    this.focused = -1;
    this.holder.with((scene) => scene.begin(places, aspect));
  }

  /** Makes room for more prints; those that hang stay. */
  extend(places: number): void {
    this.surface.hangBack();
    this.guests.forget();
    this.holder.with((scene) => scene.extend(places));
  }

  /** Takes the prints down and leaves the wall bare. */
  clear(): void {
    this.begin(0, 1);
  }

  /** Hangs prints at their numbers. */
  add(batch: WallBatch): void {
    this.hanging.facts.add(batch);
    this.holder.with((scene) => scene.add(batch));
  }

  /** Hangs pinned prints of other walls after the wall's own. */
  addPins(batch: WallBatch): void {
    this.guests.add(batch);
  }

  /** Closes up a wall that stayed smaller than asked. */
  settle(places: number): void {
    if (this.focused >= places) this.focused = places - 1;
    this.holder.with((scene) => scene.lay(places));
  }

  protected override updated(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('kept')) this.holder.with((scene) => scene.setKept(this.kept));
    if (changed.has('marked')) this.holder.with((scene) => scene.setMarked(this.marked));
    if (changed.has('running') && !this.running && this.found > 0) {
      if (!this.hanging.plain) void this.rehang();
    }
    if (changed.has('running') || changed.has('pins') || changed.has('variants')) this.followPins();
  }

  /** Sees which prints are pinned, and hangs them first. */
  private followPins(): void {
    if (!this.running && this.guests.follow(this.pins, this.variants)) void this.rehang();
  }

  /** Hangs the prints as they are now to hang. */
  private async rehang(): Promise<void> {
    this.surface.hangBack();
    this.requestUpdate();
    if (this.running || this.found === 0 || this.drawer === null) return;
    try {
      const spec = await this.hanging.spec(this.variants, this.drawer, (share) => {
        this.busy = `Seeing what looks alike, ${Math.round(share * 100)} %`;
      });
      if (spec === null) return;
      this.holder.with((scene) => scene.arrange(spec));
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

  private compare(): void {
    const prints = [...this.marked].sort((a, b) => a - b).flatMap((index) => this.variants[index] ?? []);
    if (this.drawer !== null && prints.length >= 2 && prints.length <= MOST_COMPARED) this.comparing.show(prints, this.drawer);
    else this.problem(`Mark two to ${MOST_COMPARED} prints with M to compare them.`);
  }

  /** A wall from the two marked prints, the first marked first. */
  private fromTwo(kind: 'between' | 'cross'): void {
    const prints = [...this.marked].flatMap((index) => this.variants[index] ?? []);
    if (prints.length === 2)
      this.dispatchEvent(new CustomEvent('print-derived', { detail: derivedAsk(kind, prints), bubbles: true, composed: true }));
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

  /** Does what a key, the line above or the rail below asks for. */
  private act(action: WallAction, index: number): void {
    const { scene } = this;
    const actions: Record<WallAction, () => void> = {
      open: () => this.tell('open-print', index),
      keep: () => this.tell('keep-print', index),
      pin: () => this.tell('pin-print', index),
      build: () => void this.surface.build(index),
      'toggle-build': () => (this.surface.built === index ? this.surface.hangBack() : void this.surface.build(index)),
      mark: () => this.mark(index),
      unmark: () => {
        this.marked = new Set();
      },
      compare: () => this.compare(),
      between: () => this.fromTwo('between'),
      cross: () => this.fromTwo('cross'),
      filter: () => {
        this.filtering = !this.filtering;
      },
      sheet: () => this.sheet(),
      save: () => this.save(index),
      keys: () => this.keys.show(),
      close: () => this.closeOrUnmark(),
      closer: () => scene?.zoomBy(STEP),
      further: () => scene?.zoomBy(1 / STEP),
      start: () => scene?.showStart(),
    };
    actions[action]();
  }

  private closeOrUnmark(): void {
    if (this.surface.built >= 0) this.surface.hangBack();
    else if (this.filtering) this.filtering = false;
    else this.marked = new Set();
  }

  private tell(type: 'keep-print' | 'open-print' | 'pin-print', index: number): void {
    if (this.variants[index] === undefined) return;
    this.focused = index;
    this.surface.hangBack();
    this.dispatchEvent(new CustomEvent(type, { detail: { index }, bubbles: true, composed: true }));
  }

  private sentence(index: number): string {
    const variant = this.variants[index];
    if (variant === undefined) return '';
    const pulls = variant.pulls.length;
    const name = this.guests.has(index)
      ? printName(lineageOf(variant)).replace('no.', 'No.')
      : `Print ${index + 1} of ${this.guests.own(this.found)}`;
    return `${name}, ${pulls} ${pulls === 1 ? 'pull' : 'pulls'}`;
  }

  /** The focused print's row as buttons, for those who walk the page by its controls. */
  private rowOfButtons() {
    const columns = this.scene?.columns ?? 10;
    const sequence = this.scene?.hanging.sequence ?? [];
    const place = Math.max(0, sequence.indexOf(this.focused));
    const first = Math.floor(place / columns) * columns;
    return sequence
      .slice(first, first + columns)
      .filter((index) => this.variants[index] !== undefined)
      .map((index) => {
        return html`<li>
        <button tabindex="-1" aria-current=${index === this.focused ? 'true' : nothing} @click=${() => this.surface.choose(index)}>
          ${this.sentence(index)}${this.kept.has(index) ? ', kept' : ''}${this.marked.has(index) ? ', marked' : ''}
        </button>
      </li>`;
      });
  }

  override render() {
    const { focused, kept } = this;
    const none = this.variants[focused] === undefined;
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
        @line=${(event: CustomEvent<LineAction>) => this.act(event.detail, focused)}
        @hang=${(event: HangEvent) => {
          hanging.choice = event.detail;
          void this.rehang();
        }}
      ></wall-line>
      <wall-surface
        .holder=${this.holder}
        .variants=${this.variants}
        .facts=${hanging.facts}
        .drawer=${this.drawer}
        .relative=${this.relative}
        .found=${this.found}
        .note=${this.note}
        .focused=${focused}
        @walk=${(event: CustomEvent<number>) => {
          this.focused = event.detail;
        }}
        @action=${(event: ActionEvent) => this.act(event.detail.action, event.detail.index)}
        @boxed=${(event: CustomEvent<number[]>) => {
          this.marked = new Set([...this.marked, ...event.detail]);
        }}
        @moved=${(event: CustomEvent<boolean>) => {
          this.moved = event.detail;
        }}
      ><slot></slot></wall-surface>
      ${
        this.filtering
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
          : nothing
      }
      <wall-compare-prints .relative=${this.relative}></wall-compare-prints>
      <wall-print-out .relative=${this.relative}></wall-print-out>
      <wall-keys></wall-keys>
      <ul class="visually-hidden" aria-label="Prints in this row">
        ${this.rowOfButtons()}
      </ul>
      <wall-rail
        ?data-none=${none}
        .variant=${this.variants[focused] ?? null}
        .drawer=${this.drawer}
        .relative=${this.relative}
        .sentence=${this.sentence(focused)}
        .pinned=${hanging.pinned.has(focused)}
        .marked=${this.marked.has(focused)}
        .kept=${kept.has(focused)}
        .moved=${this.moved}
        .hung=${this.found > 0}
        @rail=${(event: CustomEvent<RailAction>) => this.act(event.detail, focused)}
      ></wall-rail>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-view': WallView;
  }
}
