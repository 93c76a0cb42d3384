import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { VeilProposal } from '../../engine/explore/veil/veil-types.ts';
import type { PullChange } from '../../engine/project/commands/bench.ts';
import { screenOutline } from '../../engine/shapes/place/placed.ts';
import type { Pull } from '../../engine/stack/types.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import { type AppStore, StoreController } from '../app-store.ts';
import { controls } from '../ui/controls-style.ts';
import { freeNeighbours } from '../ui/print/order-graph-layout.ts';
import '../ui/print/state-strip.ts';
import { pathOf, restOutline } from '../ui/print/screen-outline.ts';
import type { StateStrip } from '../ui/print/state-strip.ts';
import { counted } from '../ui/words.ts';
import './pull/add-pull.ts';
import { bareBench } from './bare-bench.ts';
import { benchRoomStyle } from './bench-room-style.ts';
import { keysWords, readoutWords } from './bench-words.ts';
import { BuildUp } from './picture/build-up.ts';
import './picture/bench-picture.ts';
import { compareChoice, NONE, type OtherStack, otherStack } from './picture/compare-with.ts';
import { OpenedStack } from './picture/opened-stack.ts';
import { SheetView } from './picture/sheet-view.ts';
import { StripPictures } from './picture/strip-pictures.ts';
import './pull/keep-recipe.ts';
import type { AddPull, NewPull } from './pull/add-pull.ts';
import { BenchEdits } from './pull/bench-edits.ts';
import './order-fold.ts';
import './pull/pull-panel.ts';
import { BenchKeys } from './pull/bench-keys.ts';
import type { KeepRecipe, RecipeWords } from './pull/keep-recipe.ts';
import './veil/veil-finder.ts';
import type { VeilFinder } from './veil/veil-finder.ts';
import { layVeil } from './veil/veil-offset.ts';

/** Longest side of a state in the strip, px. */
const STATE_PX = 116;
const STEP = 1.5;

/** One stack: large on its sheet, its states under it, the selected pull beside it. */
@customElement('bench-room')
export class BenchRoom extends LitElement {
  static override styles = [controls, benchRoomStyle];

  @property({ attribute: false }) store!: AppStore;
  /** What is compared with, as `otherStack` takes it. */
  @state() private beside = NONE;
  @state() private pointed: { xMm: number; yMm: number } | null = null;
  @state() private said = '';
  @state() private narrow = false;
  @query('ps-state-strip') private strip!: StateStrip;
  @query('bench-add-pull') private addDialog!: AddPull;
  @query('bench-keep-recipe') private keepDialog!: KeepRecipe;
  @query('bench-veil-finder') private veilDialog!: VeilFinder;
  private readonly view = new SheetView();
  private readonly buildUp = new BuildUp(this);
  private readonly stripPictures = new StripPictures(this, (text) => this.store.tell(text));
  private opened!: OpenedStack;
  private edits!: BenchEdits;
  private editedAt: number | null = null;
  private shownPulls: readonly Pull[] = [];
  private readonly narrowly = matchMedia('(max-width: 760px)');

  constructor() {
    super();
    new BenchKeys(this, {
      here: () => this.here,
      closer: this.closer,
      further: this.further,
      whole: this.whole,
      play: () => this.buildUp.play(this.pulls.length),
      stop: () => this.buildUp.stop(),
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.opened = new OpenedStack(this.store);
    this.edits = new BenchEdits(this.store, this.opened);
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

  private readonly closer = (): void => this.view.zoom(STEP);
  private readonly further = (): void => this.view.zoom(1 / STEP);
  private readonly whole = (): void => this.view.showWhole();

  private readonly onNarrow = (): void => {
    this.narrow = this.narrowly.matches;
  };

  private readonly onStore = (): void => {
    if (this.opened.follow()) {
      this.editedAt = performance.now();
      this.buildUp.stop();
    }
    if (this.store.room !== 'bench') this.buildUp.stop();
  };

  private get here(): boolean {
    return this.store.room === 'bench';
  }

  private get pulls(): readonly Pull[] {
    return this.store.project.bench;
  }

  private get selectedAt(): number {
    return this.pulls.findIndex((pull) => pull.id === this.store.selectedPull);
  }

  private move(id: string, to: number): void {
    this.said = this.edits.move(id, to) ?? this.said;
  }

  private nudge({ dxMm, dyMm }: { dxMm: number; dyMm: number }): void {
    // Without a pull to move, the arrows move the sheet.
    if (!this.edits.nudge(dxMm, dyMm)) this.view.pan(-dxMm * 400, -dyMm * 400);
  }

  private take(id: string): void {
    const said = this.edits.remove(id);
    if (said === null) return;
    this.said = said;
    if (this.pulls.length > 0) this.strip.focusSelected();
    else void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('.empty button')?.focus());
  }

  private add(choice: NewPull): void {
    const said = this.edits.add(choice);
    if (said === null) return;
    this.said = said;
    this.strip.focusSelected();
  }

  private lay(proposal: VeilProposal): void {
    const said = layVeil(this.store, proposal, new Set(this.opened.pulls.map((pull) => pull.id)));
    if (said === null) return;
    this.said = said;
    this.strip.focusSelected();
  }

  private get other(): OtherStack | null {
    return otherStack(this.beside, this.opened, this.store.project.recipes);
  }

  private outline(): string {
    const { drawer } = this.store.project;
    const pull = this.pulls[this.selectedAt];
    const screen = drawer.screens.find((entry) => entry.id === pull?.screen);
    if (pull === undefined || screen === undefined || this.buildUp.shown !== null) return '';
    try {
      return pathOf(screenOutline(restOutline(screen, drawer.shapes), pull, drawer.paper).rings);
    } catch {
      // The picture tells what is missing.
      return '';
    }
  }

  /** The pulls of the large picture: the same array as long as they are the same. */
  private pullsShown(): readonly Pull[] {
    const { shown } = this.buildUp;
    if (shown === null) return this.pulls;
    if (this.shownPulls.length !== shown || this.shownPulls.some((pull, i) => pull !== this.pulls[i]))
      this.shownPulls = this.pulls.slice(0, shown);
    return this.shownPulls;
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
    // Two rows a device pixel: the strip's pictures are scaled down smoothly.
    const heightPx = Math.min(600, Math.round(this.stateSize.heightPx * Math.max(1, devicePixelRatio) * 2));
    this.stripPictures.want({ pulls: this.pulls, drawer: project.drawer, relative, heightPx });
  }

  private get stateSize(): { widthPx: number; heightPx: number } {
    const { widthMm, heightMm } = this.store.project.drawer.paper;
    const longest = this.narrow ? 100 : STATE_PX;
    const widthPx = Math.max(76, Math.round(heightMm >= widthMm ? (longest * widthMm) / heightMm : longest));
    return { widthPx, heightPx: (widthPx * heightMm) / widthMm };
  }

  private picture(pulls: readonly Pull[], drawer: Studio, name: string, own: boolean, captioned: boolean) {
    const hint = own ? keysWords(this.selectedAt) : `${name}, to compare`;
    return html`<figure>
      ${captioned ? html`<figcaption>${name}</figcaption>` : nothing}
      <bench-picture
        .drawer=${drawer}
        .pulls=${pulls}
        .relative=${this.store.relative}
        .view=${this.view}
        .outline=${own ? this.outline() : ''}
        .label=${`${name}: ${counted(pulls.length, 'pull')} on ${drawer.paper.widthMm} × ${drawer.paper.heightMm} mm`}
        .hint=${hint}
        .editedAt=${own ? this.editedAt : null}
        @trouble=${(event: CustomEvent<string>) => this.store.tell(event.detail)}
        @point=${(event: CustomEvent<{ xMm: number; yMm: number } | null>) => (this.pointed = event.detail)}
        @nudge=${(event: CustomEvent<{ dxMm: number; dyMm: number }>) => this.nudge(event.detail)}
      ></bench-picture>
    </figure>`;
  }

  private addButton() {
    return html`<button @click=${() => this.addDialog.show()}>Add a pull</button>`;
  }

  private selection() {
    const { drawer } = this.store.project;
    const at = this.selectedAt;
    const pull = this.pulls[at];
    return pull === undefined
      ? html`<section>
            <p class="soft">${this.pulls.length === 0 ? 'A pull that is selected can be changed here.' : 'Choose a state in the strip to change its pull.'}</p>
          </section>`
      : html`<bench-pull-panel
            role="region"
            aria-label="Selected pull"
            .pull=${pull}
            .index=${at}
            .count=${this.pulls.length}
            .drawer=${drawer}
            @pull-change=${(event: CustomEvent<PullChange>) => this.edits.change(event.detail)}
            @pull-step=${(event: CustomEvent<-1 | 1>) => this.move(pull.id, at + event.detail)}
            @pull-remove=${() => this.take(pull.id)}
          ></bench-pull-panel>`;
  }

  private side() {
    const { store } = this;
    const { project } = store;
    const playing = this.buildUp.shown !== null;
    return html`<aside class="side" aria-label="Stack and selected pull">
      ${this.narrow ? this.selection() : nothing}
      <section class="stack">
        <h2>${this.opened.name}</h2>
        <p class="soft small">${counted(this.pulls.length, 'pull')} on ${project.drawer.paper.widthMm} × ${project.drawer.paper.heightMm} mm</p>
        <div class="row" style="padding-top: 12px">
          <button class="main" ?disabled=${this.pulls.length === 0} @click=${() => this.keepDialog.show(this.opened.name)}>Keep as recipe</button>
          <button
            title="Or hold the key B"
            aria-pressed=${playing}
            ?disabled=${this.pulls.length === 0}
            @click=${() => (playing ? this.buildUp.stop() : this.buildUp.play(this.pulls.length))}
          >
            Build up
          </button>
          <button title="Find translucent pulls that make the print less busy" ?disabled=${this.pulls.length === 0} @click=${() => this.veilDialog.show()}>Calm it</button>
          ${this.narrow && this.pulls.length > 0 ? this.addButton() : nothing}
        </div>
      </section>
      ${this.narrow ? nothing : this.selection()}
      <section class="looking">
        ${compareChoice(this.beside, project.recipes, (chosen) => (this.beside = chosen))}
        <label title="On: the paper is shown as white. Off: colours as measured.">
          <input type="checkbox" role="switch" .checked=${store.relative} @change=${(event: Event) => store.setRelative((event.target as HTMLInputElement).checked)} />
          Paper-relative
        </label>
      </section>
    </aside>`;
  }

  override render() {
    const { store } = this;
    const { drawer, explore } = store.project;
    const other = this.other;
    const { edges, pictures } = this.stripPictures;
    const looks: [string, string, () => void][] = [
      ['Closer', '+', this.closer],
      ['Further', '−', this.further],
      ['Whole sheet', '0', this.whole],
    ];
    return html`<div class="bench">
        <div class="table"><div class="light">
          <div class="pictures">
            ${this.picture(this.pullsShown(), drawer, other === null ? this.opened.name : 'On the Bench', true, other !== null)}
            ${other === null ? nothing : this.picture(other.pulls, other.drawer, other.name, false, true)}
          </div>
          <div class="under">
            <p class="readout ${this.pointed === null && this.buildUp.shown === null ? 'idle' : ''}">${readoutWords(drawer.paper, this.pulls.length, this.buildUp.shown, this.pointed)}</p>
            <div class="looks">
              ${looks.map(([name, key, act]) => html`<button class="quiet" title="Key ${key}" @click=${act}>${name}</button>`)}
            </div>
          </div>
          ${this.pulls.length === 0 ? bareBench(store, () => this.addDialog.show()) : nothing}
        </div>
        <div class="strip">
          <ps-state-strip
            .pulls=${this.pulls}
            .drawer=${drawer}
            .pictures=${pictures}
            .selected=${store.selectedPull}
            .freeSwaps=${edges === null ? [] : freeNeighbours(this.pulls.length, edges, explore.minDeltaE)}
            .shown=${this.buildUp.shown ?? -1}
            .width=${this.stateSize.widthPx}
            @pull-select=${(event: CustomEvent<string>) => store.select(event.detail)}
            @pull-move=${(event: CustomEvent<{ pull: string; to: number }>) => this.move(event.detail.pull, event.detail.to)}
            @pull-remove=${(event: CustomEvent<string>) => this.take(event.detail)}
          >
            ${this.pulls.length === 0 || this.narrow ? nothing : this.addButton()}
          </ps-state-strip>
        </div></div>
        ${this.side()}
        <bench-order-fold
          .pulls=${this.pulls}
          .drawer=${drawer}
          .edges=${edges}
          .minDeltaE=${explore.minDeltaE}
          .selected=${store.selectedPull}
          @pull-select=${(event: CustomEvent<string>) => store.select(event.detail)}
        ></bench-order-fold>
      </div>
      <p class="visually-hidden" role="status" aria-live="polite">${this.said}</p>
      <bench-add-pull .drawer=${drawer} @add=${(event: CustomEvent<NewPull>) => this.add(event.detail)}></bench-add-pull>
      <bench-veil-finder .drawer=${drawer} .pulls=${this.pulls} .relative=${store.relative} @veil=${(event: CustomEvent<VeilProposal>) => this.lay(event.detail)}></bench-veil-finder>
      <bench-keep-recipe @keep=${(event: CustomEvent<RecipeWords>) => this.edits.keep(event.detail)}></bench-keep-recipe>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-room': BenchRoom;
  }
}
