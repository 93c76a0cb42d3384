import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { MOST_PULLS } from '../../engine/base/limits.ts';
import type { VeilProposal } from '../../engine/explore/veil/veil-types.ts';
import type { Pull } from '../../engine/stack/types.ts';
import { type AppStore, StoreController } from '../app-store.ts';
import { controls } from '../ui/controls-style.ts';
import { midst } from '../ui/layout-style.ts';
import './pull/add-pull.ts';
import { StatePlayer } from '../ui/print/state-player.ts';
import type { PullMove, StateStrip } from '../ui/print/state-strip.ts';
import { say } from '../words/en/bench/room.ts';
import { bareBench } from './bare-bench.ts';
import { stateSize } from './bench-layout.ts';
import { benchRoomStyle } from './bench-room-style.ts';
import { benchSelection } from './bench-selection.ts';
import { benchSide } from './bench-side.ts';
import { benchStrip } from './bench-strip.ts';
import { benchTable, looksOf, type Offset, type Point } from './bench-table.ts';
import { LastChange } from './change/last-change.ts';
import type { BenchLook } from './look/look-dialog.ts';
import { PullChoice } from './many/pull-choice.ts';
import type { PullDrag } from './picture/bench-picture.ts';
import { NONE, type OtherStack, otherStack } from './picture/compare-with.ts';
import { OpenedStack } from './picture/opened-stack.ts';
import './pull/keep-recipe.ts';
import './look/look-dialog.ts';
import { PlaceReader } from './picture/place-reader.ts';
import { SheetView } from './picture/sheet-view.ts';
import { ShownPulls } from './picture/shown-pulls.ts';
import './order-fold.ts';
import { StripPictures } from './picture/strip-pictures.ts';
import type { AddPull, NewPull } from './pull/add-pull.ts';
import { BenchEdits } from './pull/bench-edits.ts';
import { BenchKeys } from './pull/bench-keys.ts';
import './veil/veil-finder.ts';
import type { KeepRecipe, RecipeWords } from './pull/keep-recipe.ts';
import { addVeil } from './veil/add-veil.ts';
import type { VeilFinder } from './veil/veil-finder.ts';

/** One stack: large on its sheet, its states under it, the selected pull beside it. */
@customElement('bench-room')
export class BenchRoom extends LitElement {
  static override styles = [controls, midst, benchRoomStyle];

  @property({ attribute: false }) store!: AppStore;
  /** What is compared with, as `otherStack` takes it. */
  @state() private beside = NONE;
  @state() private pointed: Point | null = null;
  @state() private compact = false;
  @state() private several = false;
  @state() private narrow = false;
  @query('ps-state-strip') private strip!: StateStrip;
  @query('bench-add-pull') private addDialog!: AddPull;
  @query('bench-keep-recipe') private keepDialog!: KeepRecipe;
  @query('bench-veil-finder') private veilDialog!: VeilFinder;
  @query('bench-look') private lookDialog!: BenchLook;
  private readonly view = new SheetView();
  private readonly looks = looksOf(this.view);
  private readonly buildUp = new StatePlayer(this, { wholeMs: 4200, shortestMs: 110, longestMs: 480 });
  private readonly stripPictures = new StripPictures(this, {
    failed: (sentence) => this.store.trouble('pictures of the stack', sentence),
    settled: () => this.store.settled('pictures of the stack'),
  });
  private readonly places = new PlaceReader(this, (text) => this.store.tell(text));
  private opened!: OpenedStack;
  private edits!: BenchEdits;
  private choice!: PullChoice;
  private lastChange!: LastChange;
  private readonly onPicture = new ShownPulls();
  private editedAt: number | null = null;
  private readonly narrowly = matchMedia('(max-width: 760px)');

  constructor() {
    super();
    new BenchKeys(this, {
      here: () => this.here,
      ...this.looks,
      play: () => this.play(),
      stop: () => this.buildUp.stop(),
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.opened = new OpenedStack(this.store);
    this.edits = new BenchEdits(this.store, this.opened);
    this.choice = new PullChoice(this.store, this);
    this.lastChange = new LastChange(this.store);
    new StoreController(this, this.store);
    this.store.addEventListener('change', this.onStore);
    this.narrowly.addEventListener('change', this.onNarrow);
    this.onNarrow();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.store.removeEventListener('change', this.onStore);
    this.narrowly.removeEventListener('change', this.onNarrow);
  }

  private readonly onNarrow = (): void => {
    this.narrow = this.narrowly.matches;
  };

  private readonly onStore = (): void => {
    this.lastChange.follow();
    if (this.opened.follow()) {
      this.editedAt = performance.now();
      this.buildUp.stop();
    }
    if (this.store.room !== 'bench') this.buildUp.stop();
  };

  /** Builds the stack up, pull by pull, and then shows the whole again. */
  private play(): void {
    if (this.pulls.length > 0) this.buildUp.play(this.pulls.length, () => this.buildUp.stop());
  }

  private get here(): boolean {
    return this.store.room === 'bench';
  }

  private get pulls(): readonly Pull[] {
    return this.store.project.bench;
  }

  private get selectedAt(): number {
    return this.pulls.findIndex((pull) => pull.id === this.store.selectedPull);
  }

  /** Moves one pull, or all that are selected where it is one of them. */
  private move({ pull, to }: PullMove): void {
    const { ids, inOrder } = this.choice;
    this.edits.move(ids.has(pull) ? inOrder : [pull], to);
  }

  private nudge({ dxMm, dyMm }: Offset): void {
    // Without a pull to move, the arrows move the sheet.
    if (!this.edits.shift(this.choice.inOrder, { dxMm, dyMm })) this.view.pan(-dxMm * 400, -dyMm * 400);
  }

  private drag({ done, ...by }: PullDrag): void {
    this.onPicture.dragged = done ? null : by;
    if (done && (by.dxMm !== 0 || by.dyMm !== 0)) {
      this.editedAt = performance.now();
      this.edits.shift(this.choice.inOrder, by, true);
    }
    this.requestUpdate();
  }

  private dragBack(): void {
    this.onPicture.dragged = null;
    this.requestUpdate();
  }

  private take(): void {
    if (!this.edits.remove(this.choice.inOrder)) return;
    if (this.pulls.length > 0) this.strip.focusSelected();
    else void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('.empty button')?.focus());
  }

  private addVeil(proposal: VeilProposal): void {
    const said = addVeil(this.store, proposal, new Set(this.opened.pulls.map((pull) => pull.id)));
    if (said === null) return;
    this.lastChange.tell(said);
    this.strip.focusSelected();
  }

  private get other(): OtherStack | null {
    return otherStack(this.beside, this.opened, this.store.project.recipes);
  }

  private pullsShown(): readonly Pull[] {
    return this.onPicture.shown(this.pulls, this.buildUp.shown, this.choice.ids);
  }

  protected override shouldUpdate(changed: PropertyValues): boolean {
    // Out of sight nothing is drawn; the room catches up when it is entered.
    return this.here || !this.hasUpdated || changed.has('store');
  }

  protected override willUpdate(): void {
    const { project, relative } = this.store;
    const { paper } = project.drawer;
    const other = this.other;
    this.view.setSheet(
      Math.max(paper.widthMm, other?.drawer.paper.widthMm ?? 0),
      Math.max(paper.heightMm, other?.drawer.paper.heightMm ?? 0),
    );
    if (!this.here) return;
    // While something is dragged, the place is read as it was.
    if (this.onPicture.dragged === null) this.places.follow(this.pullsShown(), project.drawer);
    // Two rows a device pixel: the strip's pictures are scaled down smoothly.
    const heightPx = Math.min(600, Math.round(stateSize(paper, this.narrow).heightPx * Math.max(1, devicePixelRatio) * 2));
    this.stripPictures.want({ pulls: this.pulls, drawer: project.drawer, relative, heightPx });
  }

  private addButton() {
    return html`<button @click=${() => this.addDialog.show()}>${say.addPull}</button>`;
  }

  private side() {
    const playing = this.buildUp.shown !== null;
    return benchSide({
      store: this.store,
      name: this.opened.name,
      pulls: this.pulls,
      narrow: this.narrow,
      playing,
      beside: this.beside,
      selection: benchSelection({ store: this.store, choice: this.choice, edits: this.edits, remove: () => this.take() }),
      addButton: this.addButton(),
      keep: () => this.keepDialog.show(this.opened.name, this.store.project.drawer, this.pulls),
      build: () => (playing ? this.buildUp.stop() : this.play()),
      veil: () => this.veilDialog.show(),
      compare: (chosen) => (this.beside = chosen),
      look: () => this.lookDialog.show(),
    });
  }

  private table() {
    const { store, other } = this;
    return html`<div class="light">
      ${benchTable({
        store,
        view: this.view,
        looks: this.looks,
        own: { name: other === null ? this.opened.name : say.onBench, pulls: this.pullsShown(), drawer: store.project.drawer },
        other,
        count: this.pulls.length,
        selectedAt: this.selectedAt,
        shown: this.buildUp.shown,
        pointed: this.pointed,
        editedAt: this.editedAt,
        places: this.places,
        changed: this.lastChange.words(this.stripPictures.edges),
        choice: this.choice,
        point: (place) => (this.pointed = place),
        nudge: (by) => this.nudge(by),
        drag: (by) => this.drag(by),
        dragBack: () => this.dragBack(),
        bring: (beside) => this.edits.bring(this.choice.inOrder, beside),
      })}
      ${this.pulls.length === 0 ? bareBench(store, () => this.addDialog.show()) : nothing}
    </div>`;
  }

  private stripOfStates() {
    return benchStrip({
      store: this.store,
      choice: this.choice,
      pictures: this.stripPictures,
      narrow: this.narrow,
      shown: this.buildUp.shown,
      compact: this.compact && this.pulls.length > 1,
      several: this.several,
      addButton: this.addButton(),
      setCompact: (compact) => (this.compact = compact),
      setSeveral: (several) => (this.several = several),
      move: (move) => this.move(move),
      remove: () => this.take(),
    });
  }

  override render() {
    const { store } = this;
    const { drawer: studio, explore } = store.project;
    return html`<div class="bench">
        <div class="table">${this.table()}${this.stripOfStates()}</div>
        ${this.side()}
        <bench-order-fold
          .pulls=${this.pulls}
          .drawer=${studio}
          .edges=${this.stripPictures.edges} .lost=${this.stripPictures.lost}
          .minDeltaE=${explore.minDeltaE}
          .selected=${store.selectedPull}
          @pull-select=${(event: CustomEvent<string>) => this.choice.one(event.detail)}
        ></bench-order-fold>
      </div>
      <bench-add-pull .drawer=${studio} .full=${this.pulls.length >= MOST_PULLS} @add=${(event: CustomEvent<NewPull>) => this.edits.add(event.detail) && this.strip.focusSelected()}></bench-add-pull>
      <bench-veil-finder .drawer=${studio} .pulls=${this.pulls} .relative=${store.relative} @veil=${(event: CustomEvent<VeilProposal>) => this.addVeil(event.detail)}></bench-veil-finder>
      <bench-look .store=${store} .opened=${this.opened} .beside=${this.beside} @compare=${(event: CustomEvent<string>) => (this.beside = event.detail)}></bench-look>
      <bench-keep-recipe @keep=${(event: CustomEvent<RecipeWords>) => this.edits.keep(event.detail)}></bench-keep-recipe>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-room': BenchRoom;
  }
}
