import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { Variant } from '../../../engine/explore/types.ts';
import type { Pin } from '../../../engine/recipe/prints/pinned-prints.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { WallBatch } from '../../../workers/api/wall-api.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import { controls } from '../../ui/controls-style.ts';
import '../print/compare-prints.ts';
import { GuestPrints } from '../hang/guest-prints.ts';
import type { HangEvent } from '../hang/hang-choice.ts';
import { Hanging } from '../hang/hanging.ts';
import type { RangesEvent } from '../hang/wall-filter.ts';
import '../print/print-out.ts';
import type { ComparePrints } from '../print/compare-prints.ts';
import type { PrintOut } from '../print/print-out.ts';
import '../hang/wall-filter.ts';
import { PrintActions } from './print-actions.ts';
import { printRow, printSentence } from './print-row.ts';
import { SceneHolder } from './scene-holder.ts';
import './wall-line.ts';
import type { WallAction } from './wall-key-actions.ts';
import type { LineAction } from './wall-line.ts';
import './wall-rail.ts';
import type { RailAction } from './wall-rail.ts';
import './wall-surface.ts';
import type { ActionEvent, WallSurface } from './wall-surface.ts';
import { wallViewStyles } from './wall-view-style.ts';

const STEP = 1.5;

/** What is done with a print of the wall: `keep-print`, `open-print`, `pin-print`. */
export type PrintEvent = CustomEvent<{ index: number }>;

/** The wall with the line above it and the rail below: which print is in focus, which are selected, and what is done with them. */
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
  @state() private selected: ReadonlySet<number> = new Set();
  @state() private filtering = false;
  /** What is worked out, in words; '' when nothing is. */
  @state() private busy = '';
  /** True once the user has walked away from where one comes in. */
  @state() private moved = false;
  @query('wall-surface') private surface!: WallSurface;
  @query('wall-compare-prints') private comparing!: ComparePrints;
  @query('wall-print-out') private printOut!: PrintOut;
  private readonly hanging = new Hanging();
  private readonly holder = new SceneHolder(this);
  private readonly guests = new GuestPrints(this.hanging, this.holder);
  private readonly actions = new PrintActions(this, () => ({
    variants: this.variants,
    studio: this.drawer,
    selected: this.selected,
    hung: this.sequence,
    compare: this.comparing,
    out: this.printOut,
  }));

  /** Indices of the prints in the order in which they hang. */
  private get sequence(): readonly number[] {
    return this.holder.scene?.hanging.sequence ?? [];
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
    this.selected = new Set();
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
    if (changed.has('selected')) this.holder.with((scene) => scene.setSelected(this.selected));
    if (changed.has('running') && !this.running && this.found > 0) {
      if (!this.hanging.plain) void this.rehang();
    }
    if (this.running || !['running', 'pins', 'variants'].some((name) => changed.has(name))) return;
    // Pinned prints hang first.
    if (this.guests.follow(this.pins, this.variants)) void this.rehang();
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
      this.actions.problem(sentenceOf(error));
    }
    this.busy = '';
  }

  private rehangBy(change: Partial<Pick<Hanging, 'choice' | 'ranges'>>): void {
    Object.assign(this.hanging, change);
    void this.rehang();
  }

  private select(index: number): void {
    if (this.variants[index] === undefined) return;
    this.focused = index;
    const next = new Set(this.selected);
    if (!next.delete(index)) next.add(index);
    this.selected = next;
  }

  /** Does what a key, the line above or the rail below asks for. */
  private act(action: WallAction, index: number): void {
    const { scene } = this.holder;
    const actions: Record<WallAction, () => unknown> = {
      open: () => this.tell('open-print', index),
      keep: () => this.tell('keep-print', index),
      pin: () => this.tell('pin-print', index),
      build: () => void this.surface.build(index),
      'toggle-build': () => (this.surface.built === index ? this.surface.hangBack() : void this.surface.build(index)),
      select: () => this.select(index),
      'select-none': () => (this.selected = new Set()),
      compare: () => this.actions.compare(),
      between: () => this.actions.fromTwo('between'),
      cross: () => this.actions.fromTwo('cross'),
      filter: () => (this.filtering = !this.filtering),
      sheet: () => this.actions.sheet(),
      save: () => this.actions.save(index),
      close: () => this.closeOrDeselect(),
      closer: () => scene?.steering.zoomBy(STEP),
      further: () => scene?.steering.zoomBy(1 / STEP),
      start: () => scene?.steering.showStart(),
    };
    actions[action]();
  }

  private closeOrDeselect(): void {
    if (this.surface.built >= 0) this.surface.hangBack();
    else if (this.filtering) this.filtering = false;
    else this.selected = new Set();
  }

  private tell(type: 'keep-print' | 'open-print' | 'pin-print', index: number): void {
    if (this.variants[index] === undefined) return;
    this.focused = index;
    this.surface.hangBack();
    this.dispatchEvent(new CustomEvent(type, { detail: { index }, bubbles: true, composed: true }));
  }

  private sentence(index: number): string {
    return printSentence(this.variants[index], this.guests.has(index) ? null : { number: index + 1, of: this.guests.own(this.found) });
  }

  private filter(shown: number) {
    const { hanging } = this;
    return html`<wall-filter
      .facts=${hanging.facts}
      .measures=${this.measures}
      .ranges=${hanging.ranges}
      .count=${this.variants.length}
      .shown=${shown}
      @ranges=${(event: RangesEvent) => this.rehangBy({ ranges: event.detail })}
    ></wall-filter>`;
  }

  private line(shown: number) {
    const { hanging } = this;
    return html`<wall-line
      ?hidden=${this.found === 0}
      .choice=${hanging.choice}
      .measures=${this.measures}
      .selected=${this.selected.size}
      .shown=${shown} .count=${this.variants.length} .filtering=${this.filtering} .busy=${this.busy}
      @line=${(event: CustomEvent<LineAction>) => this.act(event.detail, this.focused)}
      @hang=${(event: HangEvent) => this.rehangBy({ choice: event.detail })}
    ></wall-line>`;
  }

  private prints() {
    return html`<wall-surface
      .holder=${this.holder}
      .variants=${this.variants}
      .facts=${this.hanging.facts}
      .drawer=${this.drawer}
      .relative=${this.relative} .found=${this.found} .note=${this.note} .focused=${this.focused}
      @walk=${(event: CustomEvent<number>) => (this.focused = event.detail)}
      @action=${(event: ActionEvent) => this.act(event.detail.action, event.detail.index)}
      @boxed=${(event: CustomEvent<number[]>) => (this.selected = new Set([...this.selected, ...event.detail]))}
      @moved=${(event: CustomEvent<boolean>) => (this.moved = event.detail)}
      ><slot></slot
    ></wall-surface>`;
  }

  private rail() {
    const { focused } = this;
    return html`<wall-rail
      ?data-none=${this.variants[focused] === undefined}
      .variant=${this.variants[focused] ?? null}
      .drawer=${this.drawer}
      .relative=${this.relative}
      .sentence=${this.sentence(focused)}
      .pinned=${this.hanging.pinned.has(focused)} .selected=${this.selected.has(focused)} .kept=${this.kept.has(focused)}
      .moved=${this.moved}
      .hung=${this.found > 0}
      @rail=${(event: CustomEvent<RailAction>) => this.act(event.detail, focused)}
    ></wall-rail>`;
  }

  private get measures() {
    return this.running ? [] : this.hanging.facts.varying();
  }

  override render() {
    const { hanging, focused, kept, selected } = this;
    const count = this.variants.length;
    const shown = hanging.ranges.size === 0 ? count : hanging.shown(count).length;
    const row = {
      sequence: this.sequence,
      columns: this.holder.scene?.columns ?? 10,
      focused,
      sentence: (index: number) => this.sentence(index),
      kept,
      selected,
      choose: (index: number) => this.surface.choose(index),
    };
    return html`
      ${this.line(shown)} ${this.prints()} ${this.filtering ? this.filter(shown) : nothing}
      <wall-compare-prints .relative=${this.relative}></wall-compare-prints>
      <wall-print-out .relative=${this.relative} .hanging=${this.found}></wall-print-out>
      ${printRow(row)} ${this.rail()}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-view': WallView;
  }
}
