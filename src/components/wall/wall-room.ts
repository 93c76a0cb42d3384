import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { atHand } from '../../engine/explore/prepare/frames.ts';
import { rememberSeen, seenBefore } from '../../engine/explore/search/seen.ts';
import type { TasteChoice } from '../../engine/explore/taste/choices.ts';
import type { Pin } from '../../engine/recipe/prints/pinned-prints.ts';
import { type AppStore, StoreController } from '../app-store.ts';
import { controls } from '../ui/controls-style.ts';
import { fetchPart, late } from '../ui/kit/late.ts';
import { say } from '../words/en/wall/room.ts';
import type { PrepareScreens } from './prepare/prepare-screens.ts';
import { PrintDeeds } from './print/print-deeds.ts';
import type { DerivedAsk, DerivedEvent } from './run/derived-ask.ts';
import { keepAsk, keptAsk } from './run/kept-ask.ts';
import { type SettingsChange, SettingsCheck } from './run/settings-check.ts';
import { isComplete, MORE, wallProgress, wallProgressLine } from './run/wall-progress.ts';
import './settings/wall-settings.ts';
import { WallRun } from './run/wall-run.ts';
import './surface/wall-view.ts';
import type { WallInputs } from './run/wall-search.ts';
import { emptyNote, holdsSentence, derivedSentence, wallSentence } from './run/wall-sentences.ts';
import { deepFind, showUnfolded } from './surface/deep-find.ts';
import type { PrintEvent, WallView } from './surface/wall-view.ts';
import type { TeachEvent } from './taste/this-or-that.ts';
import { wallRoomStyles } from './wall-room-style.ts';

const NO_PINS: readonly Pin[] = [];
const NOT_TAUGHT: readonly TasteChoice[] = [];
const PAUSE_MS = 600;
/** So long after the first prints come the settings that can wait: the page has prints to hang, and the search needs its core, ms. */
const LATER_MS = 500;

/** The Wall: what may change, and the prints that come of it. */
@customElement('wall-room')
export class WallRoom extends LitElement {
  static override styles = [controls, wallRoomStyles];

  @property({ attribute: false }) store!: AppStore;
  @query('wall-view') private view!: WallView;
  @query('wall-prepare-screens') private preparing!: PrepareScreens;
  @state() private narrow = false;
  /** On a narrow page the settings stay folded, so that they do not hide the wall. */
  @state() private unfolded = false;
  /** Whether the dialog's code has come that tells which screens to have made. */
  @state() private canPrepare = false;
  /** Whether the code was asked for of what must stay, what was seen and how many orders there are: it does not hold up the first prints. */
  private holdsAsked = false;
  private readonly trouble = (sentence: string): void => this.store.trouble('wall', sentence);
  /** The settings have a task of their own, as all at once hold the page up. */
  @state() private settingsStand = false;
  private readonly narrowness = matchMedia('(max-width: 760px)');
  private readonly run = new WallRun({
    begin: ({ asked, inputs, derived }) => {
      if (derived === null) this.view.dropAside();
      this.view.begin(asked, inputs.studio.paper.widthMm / inputs.studio.paper.heightMm);
    },
    extend: ({ asked }) => this.view.extend(asked),
    putAside: () => this.view.putAside(),
    again: () => this.view.hangAgain(),
    batch: (batch) => this.view.add(batch),
    pinned: (batch) => this.view.addPins(batch),
    changed: () => this.runChanged(),
  });
  private pause: ReturnType<typeof setTimeout> | undefined;
  private readonly deeds = new PrintDeeds(
    () => this.store,
    () => this.run,
  );
  private readonly check = new SettingsCheck(this, {
    failed: (sentence) => this.store.trouble('settings of the wall', sentence),
    settled: () => this.store.settled('settings of the wall'),
  });
  /** Which of the projects opened so far hangs here. */
  private opened = 0;
  private readonly onNarrow = (): void => {
    this.narrow = this.narrowness.matches;
  };
  /** Another project's wall begins anew, and at once: this room may not be drawn for long. */
  private readonly onStore = (): void => {
    if (this.opened === this.store.opened) return;
    this.opened = this.store.opened;
    this.check.forget();
    clearTimeout(this.pause);
    this.run.clear();
    keepAsk(null);
    if (this.hasUpdated) this.view.clear();
  };

  override connectedCallback(): void {
    super.connectedCallback();
    new StoreController(this, this.store);
    this.opened = this.store.opened;
    this.store.addEventListener('change', this.onStore);
    this.onNarrow();
    this.narrowness.addEventListener('change', this.onNarrow);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.store.removeEventListener('change', this.onStore);
    this.narrowness.removeEventListener('change', this.onNarrow);
    clearTimeout(this.pause);
    this.run.stop();
  }

  /** What a wall would be found from now. */
  private get inputs(): WallInputs {
    const { drawer, bench, explore, frames } = this.store.project;
    return { studio: drawer, bench, explore: atHand(explore, drawer, frames), relative: this.store.relative };
  }

  /** True while the settings are other than those the wall was found from. */
  private get stale(): boolean {
    return this.run.startedElsewhere(this.inputs);
  }

  /** While one is in another room, nothing is drawn here. */
  protected override shouldUpdate(): boolean {
    return !this.hasUpdated || this.store.room === 'wall';
  }

  protected override updated(): void {
    if (!this.settingsStand) setTimeout(() => (this.settingsStand = true));
    const change = this.check.changeTo(this.inputs);
    if (change !== 'none') void this.settingsChanged(change);
    void this.run.hangPins(this.store.project.pins ?? []);
    if (!this.holdsAsked && (this.run.found > 0 || this.run.ended || this.check.problems.length > 0)) {
      this.holdsAsked = true;
      const load = () =>
        Promise.all([import('./settings/wall-holds.ts'), import('./settings/wall-seen.ts'), import('./settings/order-count.ts')]);
      setTimeout(() => fetchPart(load, this.trouble), LATER_MS);
    }
    this.dataset.state = this.runState;
    this.dataset.found = String(this.run.found);
    this.dataset.asked = String(this.run.asked);
  }

  /** In a word how the wall stands, for tests and styles. */
  private get runState(): string {
    if (this.run.state === 'running') return 'running';
    if (this.check.problems.length > 0) return 'held';
    return this.stale ? 'stale' : this.run.state;
  }

  /** Tells at once what contradicts itself, and finds the wall anew after a short rest. */
  private async settingsChanged(change: SettingsChange): Promise<void> {
    clearTimeout(this.pause);
    if (!(await this.check.check(this.inputs))) return;
    this.requestUpdate();
    // Another stack on the Bench does not take down a wall one may still be choosing from.
    if (this.check.problems.length > 0 || change === 'stack') return;
    if (change === 'first') this.findFirst();
    else if (this.stale || this.run.search === null) this.pause = setTimeout(() => this.find(), PAUSE_MS);
  }

  /** Finds prints; from prints that came of others, the wall that those hang on comes back as it was. */
  private findOrBack(): void {
    if (!this.run.back()) this.find();
    else keepAsk(null);
  }

  /** What hung before the page was loaded hangs again. */
  private findFirst(): void {
    const derived = keptAsk();
    if (derived === null) this.find();
    else void this.run.start({ inputs: this.inputs, derived, seen: [] });
  }

  private find(): void {
    clearTimeout(this.pause);
    keepAsk(null);
    if (this.check.problems.length > 0) return;
    const { seen = [], explore } = this.store.project;
    void this.run.start({ inputs: this.inputs, derived: null, seen: seenBefore(seen, explore.seed) });
  }

  /** Hangs prints that come from prints of this wall, by the settings that this wall came of. */
  private findDerived(derived: DerivedAsk): void {
    const { hung } = this.run;
    if (hung === null) return;
    clearTimeout(this.pause);
    keepAsk(derived);
    void this.run.start({ inputs: hung.inputs, derived, seen: [] });
  }

  private findMore(): void {
    if (this.store.dispatch({ kind: 'set-explore', change: { count: this.run.found + MORE } })) this.find();
  }

  private prepare(selected: ReadonlySet<number>): Promise<void> {
    const part = {
      load: () => import('./prepare/prepare-screens.ts'),
      element: async () => {
        this.canPrepare = true;
        await this.updateComplete;
        return this.preparing;
      },
      failed: this.trouble,
    };
    return late(part, (dialog) => dialog.show({ variants: this.run.variants, selected }));
  }

  private runChanged(): void {
    const { run } = this;
    const { search, ended } = run;
    if (ended && search !== null) {
      if (search.derived === null) this.store.setSeen(rememberSeen(this.store.project.seen ?? [], search.inputs.explore.seed, run.shown));
      if (search.found < search.asked) this.view.settle(run.variants.length);
      void run.hangPins(this.store.project.pins ?? []);
    }
    this.requestUpdate();
  }

  private head() {
    const { run, store } = this;
    const { problems } = this.check;
    const standing = { run, stale: this.stale, blocked: problems.length > 0 };
    const progress = {
      ...standing,
      count: store.project.explore.count,
      complete: isComplete(standing),
      unfolded: this.narrow ? this.unfolded : null,
      fold: () => (this.unfolded = !this.unfolded),
      showLying: () => void this.showSetting('wall-places'),
      find: () => this.findOrBack(),
      findMore: () => this.findMore(),
    };
    return html`
      ${wallProgress(progress)}
      ${derivedSentence(run.derived, (ask) => this.findDerived(ask))}
      ${wallSentence({ run, store, problems, showProblem: () => void this.showSetting('.problem') })}
      ${wallProgressLine(run)}
    `;
  }

  /** Brings a part of the settings into view, as the first sentence of what cannot be met, which may stand far down. */
  private async showSetting(selector: string): Promise<void> {
    this.unfolded = true;
    await this.updateComplete;
    const settings = this.renderRoot.querySelector('.settings');
    const part = settings === null ? null : deepFind(settings, selector);
    if (part !== null) showUnfolded(part);
  }

  private settings() {
    const { store, settingsStand } = this;
    const { project } = store;
    if (!settingsStand) return nothing;
    return html`<wall-settings .store=${store} .project=${project} .problems=${this.check.problems}></wall-settings>
      <wall-seen .store=${store} .seen=${project.seen ?? []}></wall-seen>
      <section aria-labelledby="holds">
        <h3 id="holds">${say.whatMustStay}</h3> ${holdsSentence(store)}
        <wall-holds .store=${store} .project=${project} .problems=${this.check.problems}></wall-holds>
      </section>`;
  }

  override render() {
    const { store, run } = this;
    const { drawer, recipes } = store.project;
    const bare = drawer.screens.length === 0;
    return html`
      <aside aria-label=${say.whatWallIsFound}>
        <h2 class="visually-hidden">${say.wall}</h2>
        <div class="head">${this.head()}</div>
        <div class="settings" id="settings" ?hidden=${this.narrow && !this.unfolded}>${this.settings()}</div>
      </aside>
      <wall-view
        .variants=${run.variants}
        .looks=${run.shown}
        .found=${run.variants.length}
        .running=${run.state === 'running'}
        .drawer=${run.hung?.inputs.studio ?? null}
        .relative=${run.hung?.inputs.relative ?? true}
        .kept=${this.deeds.kept(recipes)}
        .pins=${store.project.pins ?? NO_PINS}
        .taught=${store.project.taste ?? NOT_TAUGHT}
        .note=${emptyNote(run, bare)}
        @keep-print=${(event: PrintEvent) => this.deeds.keep(event.detail.index, event.detail.taught)}
        @open-print=${(event: PrintEvent) => this.deeds.open(event.detail.index)}
        @pin-print=${(event: PrintEvent) => this.deeds.pin(event.detail.index, event.detail.taught)}
        @print-derived=${(event: DerivedEvent) => this.findDerived(event.detail)}
        @wall-problem=${(event: CustomEvent<string>) => store.refuse(event.detail, 'wall')}
        @prepare=${(event: CustomEvent<ReadonlySet<number>>) => void this.prepare(event.detail)}
        @teach=${(event: TeachEvent) => store.dispatch({ kind: 'teach-taste', choices: event.detail })}
        @forget=${(event: TeachEvent) => store.dispatch({ kind: 'forget-taste', choices: event.detail })}
        @wall-settled=${() => store.settled('wall')}
      >
        ${bare ? html`<button class="main" @click=${() => store.go('drawer')}>${say.toDrawer}</button>` : nothing}
      </wall-view>
      ${this.canPrepare ? html`<wall-prepare-screens .store=${store}></wall-prepare-screens>` : nothing}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-room': WallRoom;
  }
}
