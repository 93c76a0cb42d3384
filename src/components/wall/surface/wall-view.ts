import { html, nothing } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import type { TasteChoice } from '../../../engine/explore/taste/choices.ts';
import { controls } from '../../ui/controls-style.ts';
import type { PictureOut } from '../../ui/print/picture-out.ts';
import type { HangEvent } from '../hang/hang-choice.ts';
import type { Hanging } from '../hang/hanging.ts';
import type { RangesEvent } from '../hang/wall-filter.ts';
import type { ComparePrints } from '../print/compare-prints.ts';
import { freeSide, heldPair } from '../print/held-pair.ts';
import type { PrintOut } from '../print/print-out.ts';
import { choicesOf, type KnownPrints } from '../taste/wall-choices.ts';
import { HungWall } from './hung-wall.ts';
import { PrintActions } from './print-actions.ts';
import './wall-line.ts';
import { printRow, printSentence } from './print-row.ts';
import { PanelRoom } from './room-for-print.ts';
import type { WallAction } from './wall-key-actions.ts';
import './wall-rail.ts';
import type { LineAction } from './wall-line.ts';
import './wall-surface.ts';
import type { RailAction } from './wall-rail.ts';
import type { ActionEvent } from './wall-surface.ts';
import { wallViewStyles } from './wall-view-style.ts';

const STEP = 1.5;
/** So long after the first prints comes what is said of one: those that follow come first, ms. */
const WORDS_MS = 250;

/** What is done with a print of the wall, and what it says of one's taste: `keep-print`, `open-print`, `pin-print`. */
export type PrintEvent = CustomEvent<{ index: number; taught: readonly TasteChoice[] }>;

/** The wall with the line above it and the rail below: which print is in focus, which are selected, and what is done with them. */
@customElement('wall-view')
export class WallView extends HungWall {
  static override styles = [controls, wallViewStyles];

  @state() private filtering = false;
  /** Whether the code was asked for that says something of a print. */
  private wordsAsked = false;
  /** True once the user has walked away from where one comes in. */
  @state() private moved = false;
  private readonly panelRoom = new PanelRoom(this);
  /** The print that the mouse is over; −1 for none. */
  @state() private over = -1;
  @query('wall-compare-prints') private comparing!: ComparePrints;
  @query('wall-print-out') private printOut!: PrintOut;
  @query('ps-picture-out') private pictureOut!: PictureOut;
  private readonly actions = new PrintActions(this, () => ({
    variants: this.variants,
    studio: this.drawer,
    selected: this.selected,
    hung: this.sequence,
    compare: this.comparing,
    out: this.printOut,
    picture: this.pictureOut,
  }));

  protected trouble(sentence: string): void {
    this.actions.problem(sentence);
  }

  protected override updated(changed: Map<PropertyKey, unknown>): void {
    super.updated(changed);
    if (this.wordsAsked || this.found === 0) return;
    this.wordsAsked = true;
    setTimeout(() => {
      this.fetch(() => Promise.all([import('../print/print-why.ts'), import('../print/wall-actions.ts')]));
      this.fetch(() => this.hangAsBefore());
    }, WORDS_MS);
  }

  protected rehangBy(change: Partial<Pick<Hanging, 'choice' | 'ranges'>>): void {
    if (change.choice?.way === 'taste') this.fetch(() => import('../taste/wall-taste.ts'));
    Object.assign(this.hanging, change);
    // Another print comes to hang under the mouse.
    this.over = -1;
    void this.rehang();
  }

  private select(index: number): void {
    if (this.variants[index] === undefined) return;
    this.focused = index;
    const next = new Set(this.selected);
    if (!next.delete(index)) next.add(index);
    this.selected = next;
    this.actions.settled();
  }

  private selectMore(indexes: readonly number[]): void {
    this.selected = new Set([...this.selected, ...indexes]);
    this.actions.settled();
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
      filter: () => this.filterOrNot(),
      prepare: () => this.dispatchEvent(new CustomEvent<ReadonlySet<number>>('prepare', { detail: this.selected })),
      sheet: () => this.actions.sheet(),
      save: () => this.actions.save(index),
      close: () => this.closeOrDeselect(),
      closer: () => scene?.steering.zoomBy(STEP),
      further: () => scene?.steering.zoomBy(1 / STEP),
      start: () => scene?.steering.showWhole(),
    };
    actions[action]();
    if (action === 'select-none') this.actions.settled();
  }

  private filterOrNot(): void {
    this.filtering = !this.filtering;
    this.fetch(() => import('../hang/wall-filter.ts'));
  }

  private closeOrDeselect(): void {
    if (this.surface.built >= 0) this.surface.hangBack();
    else if (this.filtering) this.filtering = false;
    else this.selected = new Set();
  }

  /** After a click on a button the wall has the keys again; who walks by keys stays at the button. */
  private readonly onClick = (event: MouseEvent): void => {
    const button = event.composedPath().find((target) => target instanceof HTMLButtonElement);
    if (event.detail > 0 && button !== undefined) this.surface.takeKeys();
  };

  /** At a button, the keys that it has no use for are the wall's. */
  private readonly onKey = (event: KeyboardEvent): void => {
    const own = ['Enter', ' ', 'Tab', 'Escape'].includes(event.key);
    if (event.composedPath()[0] instanceof HTMLButtonElement && !own) this.surface.key(event);
  };

  private tell(type: 'keep-print' | 'open-print' | 'pin-print', index: number): void {
    if (this.variants[index] === undefined) return;
    this.focused = index;
    this.surface.hangBack();
    if (type === 'keep-print') this.quiet = 'once';
    const taught = type === 'open-print' ? [] : this.said(type === 'keep-print' ? 'kept' : 'pinned', index);
    this.dispatchEvent(new CustomEvent(type, { detail: { index, taught }, bubbles: true, composed: true }));
  }

  private get known(): KnownPrints {
    const { variants, hanging, sequence, selected, kept } = this;
    return { variants, facts: hanging.facts, sequence, selected, pinned: hanging.pinned, kept };
  }

  /** What choosing a print says; nothing where none is passed over. */
  private said(way: 'kept' | 'pinned', index: number): readonly TasteChoice[] {
    try {
      return choicesOf(this.known, way, [index]);
    } catch {
      return [];
    }
  }

  private tasteLine() {
    const { hanging } = this;
    if (hanging.choice.way !== 'taste' || this.found === 0) return nothing;
    return html`<wall-taste
      .choice=${hanging.choice}
      .taught=${this.taught}
      .learnt=${hanging.taste.found?.learnt ?? null}
      .stale=${hanging.taste.stale}
      .known=${this.known}
      .drawer=${this.drawer}
      .relative=${this.relative}
      @hang=${(event: HangEvent) => this.hangBy(event.detail)}
      @answering=${(event: CustomEvent<boolean>) => (this.quiet = event.detail ? 'answering' : 'no')}
      @arrange=${() => void this.rehang()}
    ></wall-taste>`;
  }

  private sentence(index: number, of: number | null = this.guests.own(this.found)): string {
    return printSentence(this.variants[index], this.guests.has(index) ? null : { number: index + 1, of }, this.hanging.facts.pulls(index));
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
      ?data-none=${this.found === 0}
      .choice=${hanging.choice}
      .measures=${this.measures}
      .selected=${this.selected.size}
      .shown=${shown} .count=${this.variants.length} .filtering=${this.filtering} .busy=${this.busy}
      @click=${this.onClick}
      @keydown=${this.onKey}
      @line=${(event: CustomEvent<LineAction>) => this.act(event.detail, this.focused)}
      @hang=${(event: HangEvent) => this.hangBy(event.detail)}
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
      @over=${(event: CustomEvent<number>) => (this.over = event.detail)}
      @action=${(event: ActionEvent) => this.act(event.detail.action, event.detail.index)}
      @boxed=${(event: CustomEvent<number[]>) => this.selectMore(event.detail)}
      @moved=${(event: CustomEvent<boolean>) => (this.moved = event.detail)}
      ><slot></slot
    ></wall-surface>`;
  }

  /** The line above the rail took room of the wall, or gave some back, which ends a move to the print in focus. */
  private readonly onTall = ({ detail }: CustomEvent<number>): void => {
    this.style.setProperty('--why', `${detail}px`);
    requestAnimationFrame(() => this.panelRoom.again(this.holder.scene, this.surface));
  };

  private rail() {
    const { focused } = this;
    return html`<wall-rail
      ?data-none=${this.variants[focused] === undefined}
      .variant=${this.variants[focused] ?? null}
      .drawer=${this.drawer}
      .relative=${this.relative}
      .sentence=${this.sentence(focused)}
      .pinned=${this.hanging.pinned.has(focused)} .selected=${this.selected.has(focused)} .kept=${this.kept.has(focused)}
      .moved=${this.moved} .place=${this.panelRoom.place}
      @covers=${({ detail }: CustomEvent<Element>) => this.panelRoom.covers(detail, this.holder.scene, this.surface)}
      .hung=${this.found > 0}
      @click=${this.onClick}
      @keydown=${this.onKey}
      @rail=${(event: CustomEvent<RailAction>) => this.act(event.detail, focused)}
    ></wall-rail>`;
  }

  private why() {
    const { focused, over, selected, variants, sequence, holder } = this;
    const [first, second] = heldPair({ focused, over, selected });
    const [variant, other] = [variants[first] ?? null, variants[second] ?? null];
    const columns = holder.scene?.columns ?? 10;
    return html`<wall-print-why
      ?data-none=${variant === null}
      @tall=${this.onTall}
      .variant=${variant}
      .other=${other}
      .drawer=${this.drawer}
      .looks=${this.running ? null : this.looks}
      .holds=${selected.size === 1 && selected.has(focused)}
      side=${freeSide(holder.scene, [first, second])}
      .beside=${variant === null || other !== null ? null : { index: focused, facts: this.hanging.facts, sequence, columns }}
    ></wall-print-why>`;
  }

  private get measures() {
    return this.running ? [] : this.hanging.facts.varying();
  }

  override render() {
    const { hanging, focused, kept, selected } = this;
    const count = this.variants.length;
    const shown = hanging.ranges.size === 0 ? count : hanging.shown(count).length;
    const of = this.running ? null : this.guests.own(this.found);
    const row = { sequence: this.sequence, columns: this.holder.scene?.columns ?? 10, focused, of, kept, selected };
    const has = (index: number): boolean => this.variants[index] !== undefined;
    const choose = (index: number): void => this.surface.choose(index);
    return html`
      ${this.line(shown)} ${this.tasteLine()} ${this.prints()} ${this.filtering ? this.filter(shown) : nothing}
      <wall-compare-prints .relative=${this.relative}></wall-compare-prints>
      <wall-print-out .relative=${this.relative} .hanging=${this.found}></wall-print-out>
      <ps-picture-out .relative=${this.relative}></ps-picture-out>
      ${printRow({ ...row, has, choose, sentence: (index) => this.sentence(index, of) })} ${this.why()} ${this.rail()}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-view': WallView;
  }
}
