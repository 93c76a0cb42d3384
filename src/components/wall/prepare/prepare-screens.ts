import { html, nothing } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { costOf, type PrepareBudget, type PrepareBy } from '../../../engine/explore/prepare/budget.ts';
import { frameState, type FrameState } from '../../../engine/explore/prepare/frames.ts';
import { prepareSteps, type PrepareStep, type WantedPrint } from '../../../engine/explore/prepare/prepare.ts';
import type { Screen } from '../../../engine/shapes/types.ts';
import { capital } from '../../../engine/words/language.ts';
import { wallTools } from '../../../workers/client/client.ts';
import { StoreElement } from '../../store-element.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/kit/progress.ts';
import { download, fileNameOf } from '../../ui/download.ts';
import { fullDialog } from '../../ui/layout-style.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/wall/prepare.ts';
import { atHandTick } from './at-hand-tick.ts';
import { chosenPrints, type HungPrints, type Sources } from './chosen-prints.ts';
import { prepListStyle } from './prep-list-style.ts';
import { prepRows, prepTable } from './prep-list.ts';
import './prepare-budget.ts';
import { prepareCurve } from './prepare-curve.ts';
import type { MatrixColumn } from './prepare-matrix.ts';
import './prepare-matrix.ts';
import { fieldsStyle, prepareStyle, scrollStyle } from './prepare-style.ts';
import { askedNotes, costSentence, firstSentence, newOnes, nextSentence, printedSentence } from './prepare-words.ts';
import { Spending } from './spending.ts';

const NO_PRINTS: HungPrints = { variants: [], selected: new Set() };
const NO_BUDGET: PrepareBudget = {};
/** Ways to ask, with their words. */
const WAYS: readonly (readonly [PrepareBy, string])[] = [
  ['screens', say.screensToHaveMade],
  ['inks', say.inksToHaveMixed],
  ['both', say.screensAndInksTogether],
];

/** Which screens to have made: the prints that each number of new ones makes possible, and the list that comes of it. */
@customElement('wall-prepare-screens')
export class PrepareScreens extends StoreElement {
  static override styles = [controls, fullDialog, fieldsStyle, scrollStyle, prepareStyle, prepListStyle];

  @state() private hung = NO_PRINTS;
  @state() private sources: Sources = { selected: false, pinned: false, kept: false, wall: true };
  @state() private by: PrepareBy = 'screens';
  @state() private inksThere: ReadonlySet<string> = new Set();
  @state() private count = 0;
  @query('dialog') private dialog!: HTMLDialogElement;
  private prints: readonly WantedPrint[] = [];
  private wished: number | null = null;
  private reckoned: Spending | null = null;
  private readonly work = new Work<PrepareStep[]>(this, {
    found: (steps) => this.chooseFirst(steps),
  });
  private readonly saving = new Work<true>(this);

  /** Opens the dialog for what hangs. */
  show(hung: HungPrints): void {
    this.hung = hung;
    const { pins = [] } = this.store.project;
    const some = hung.selected.size > 0 || pins.length > 0;
    this.sources = { selected: hung.selected.size > 0, pinned: pins.length > 0, kept: false, wall: !some };
    this.dialog.showModal();
    this.find();
  }

  private find(): void {
    const { project } = this.store;
    this.prints = chosenPrints(project, this.hung, this.sources);
    const asked = {
      prints: this.prints,
      haveScreens: project.frames?.made ?? [],
      haveInks: [...this.inksThere],
      by: this.by,
      most: project.drawer.screens.length + project.drawer.inks.length,
      limits: this.spending.chooseBy(this.by),
    };
    if (this.prints.length === 0) {
      // Says why in its one sentence.
      void this.work.start(async () => {
        prepareSteps(asked).next();
        return null;
      });
      return;
    }
    void this.work.start((control) => wallTools().prepare(asked, control));
  }

  private chooseFirst(steps: readonly PrepareStep[]): void {
    const all = this.prints.reduce((sum, { weight }) => sum + weight, 0);
    this.count = this.spending.startOf(steps, { most: this.mostOf(steps), all, wished: this.wished });
  }

  private get spending(): Spending {
    const { drawer, screenBudget = NO_BUDGET } = this.store.project;
    if (this.reckoned?.isOf(drawer, screenBudget) !== true) this.reckoned = new Spending(drawer, screenBudget);
    return this.reckoned;
  }

  /** The last of the numbers that were tried which the budget allows. */
  private mostOf(steps: readonly PrepareStep[]): number {
    return Math.max(0, Math.min(steps.length - 1, this.spending.allowed(this.by)));
  }

  private get step(): PrepareStep | null {
    return this.work.found?.[this.count] ?? null;
  }

  private nameOf(id: string): string {
    const { screens, inks } = this.store.project.drawer;
    const screen = screens.find((each) => each.id === id);
    return screen === undefined ? (inks.find((each) => each.id === id)?.name ?? id) : say.screenNumber(screen.number, screen.name);
  }

  /** Screens of the list: those that are made and used, and those of the choice. */
  private listed(step: PrepareStep): Screen[] {
    const used = new Set(this.prints.flatMap(({ screens }) => screens));
    const { drawer, frames } = this.store.project;
    const has = (id: string): boolean => step.screens.includes(id) || (used.has(id) && frameState(id, frames) === 'made');
    return drawer.screens.filter(({ id }) => has(id));
  }

  private spend(budget: PrepareBudget): void {
    const before = this.spending;
    this.store.dispatch({ kind: 'set-screen-budget', budget });
    if (!this.spending.asksAs(before, this.by)) this.find();
    else if (this.work.found !== null) this.chooseFirst(this.work.found);
  }

  private putOnList(step: PrepareStep): void {
    const { frames } = this.store.project;
    this.store.dispatch({ kind: 'set-frames', frames: { made: [], ...frames, toMake: step.screens } });
  }

  private save(step: PrepareStep): void {
    void this.saving.start(async () => {
      const [{ prepListPdf }, { pageFonts }] = await Promise.all([
        import('../../output/prep-list-pdf.ts'),
        import('../../ui/page-fonts.ts'),
      ]);
      const { title, drawer, frames } = this.store.project;
      const weight = this.prints.reduce((sum, print) => sum + print.weight, 0);
      const note = printedSentence(step, weight, this.by);
      const { bytes } = await prepListPdf(prepRows(this.listed(step), drawer, frames, this.spending.budget), {
        title,
        note,
        fonts: await pageFonts(),
      });
      download(fileNameOf(`${title} screens`, 'pdf'), new Uint8Array(bytes), 'application/pdf');
      return true;
    });
  }

  private columns(step: PrepareStep): MatrixColumn[] {
    const { drawer, frames } = this.store.project;
    const used = {
      screens: new Set(this.prints.flatMap(({ screens }) => screens)),
      inks: new Set(this.prints.flatMap(({ inks }) => inks)),
    };
    const state = (there: boolean, chosen: boolean): MatrixColumn['state'] => (there ? 'there' : chosen ? 'chosen' : 'missing');
    const screens = drawer.screens
      .filter(({ id }) => this.by !== 'inks' && used.screens.has(id))
      .toSorted((a, b) => a.number - b.number)
      .map(({ id, number, name }): MatrixColumn => ({
        id,
        kind: 'screen',
        head: String(number),
        name,
        state: state(frameState(id, frames) === 'made', step.screens.includes(id)),
      }));
    const inks = drawer.inks
      .filter(({ id }) => this.by !== 'screens' && used.inks.has(id))
      .map(({ id, name }): MatrixColumn => ({
        id,
        kind: 'ink',
        head: name,
        name,
        state: state(this.inksThere.has(id), step.inks.includes(id)),
      }));
    const order = ['there', 'chosen', 'missing'];
    return [...screens, ...inks].sort((a, b) => order.indexOf(a.state) - order.indexOf(b.state));
  }

  private source(name: keyof Sources, label: string) {
    return html`<label class="tick"><input type="checkbox" .checked=${this.sources[name]} @change=${(event: Event) => {
      this.sources = { ...this.sources, [name]: (event.target as HTMLInputElement).checked };
      this.find();
    }} /> ${label}</label>`;
  }

  private ask() {
    const { hung } = this;
    const { pins = [], recipes, frames, drawer } = this.store.project;
    return html`<div class="ask">
      <fieldset>
        <legend>${say.printsThatYouWould}</legend>
        ${this.source('selected', say.selected(hung.selected.size))} ${this.source('pinned', say.pinned(pins.length))}
        ${this.source('kept', say.kept(recipes.length))} ${this.source('wall', say.allOfWall(hung.variants.length))}
        <p class="soft small">${say.printCountsOnceFor}</p>
      </fieldset>
      <label class="way"><b>${say.askFor}</b>
        <select @change=${(event: Event) => {
          this.by = (event.target as HTMLSelectElement).value as PrepareBy;
          this.find();
        }}>${WAYS.map(([way, label]) => html`<option value=${way} ?selected=${way === this.by}>${label}</option>`)}</select>
      </label>
      ${this.by === 'inks' ? nothing : html`<p class="small soft">${say.drawerSaysOfEach(frames === undefined || frames.made.length === 0 ? say.noScreenIsMade : say.screensMadeOf(frames.made.length, drawer.screens.length))}</p>`}
      ${
        this.by === 'screens'
          ? nothing
          : html`<fieldset><legend>${say.inksAtHand}</legend>${drawer.inks.map(
              ({ id, name }) =>
                html`<label class="tick"><input type="checkbox" .checked=${this.inksThere.has(id)} @change=${() => {
                  const next = new Set(this.inksThere);
                  if (!next.delete(id)) next.add(id);
                  this.inksThere = next;
                  this.find();
                }} /> ${name}</label>`,
            )}</fieldset>`
      }
      <wall-prepare-budget .by=${this.by} .budget=${this.spending.budget} @budget-change=${({ detail }: CustomEvent<PrepareBudget>) => this.spend(detail)}></wall-prepare-budget>
    </div>`;
  }

  private answer(steps: readonly PrepareStep[], step: PrepareStep) {
    const all = this.prints.reduce((sum, { weight }) => sum + weight, 0);
    const most = this.mostOf(steps);
    const what = newOnes(this.by);
    const choose = (count: number): void => void (this.count = this.wished = Math.min(count, most));
    const rows = prepRows(this.listed(step), this.store.project.drawer, this.store.project.frames, this.spending.budget);
    // No larger choice that may be had prints more.
    const beyond = this.spending.limited && step.printed < all - 1e-9 && (steps[most]?.printed ?? 0) <= step.printed + 1e-9;
    return html`
      <section class="possible" aria-label=${say.printsPossible}>
        <h3>${say.printsPossibleByWhat(what)}</h3>
        ${prepareCurve({ steps, all, count: this.count, what, choose })}
        <label class="count">${capital(what)}: <b>${this.count}</b>
          <input type="range" min="0" max=${most} .value=${String(this.count)} @input=${(event: Event) => choose(Number((event.target as HTMLInputElement).value))} />
        </label>
        <div class="told">
        ${this.notes().map((note) => html`<p class="soft">${note}</p>`)}
        <p role="status">${printedSentence(step, all, this.by)} <span class="soft">${beyond ? `${firstSentence(steps, this.count)} ${say.moreIsBeyondWhat}` : nextSentence(steps, this.count, (id) => this.nameOf(id))}</span></p>
        <p class="soft">${costSentence(costOf(this.spending.budget, this.spending.films, step))}</p>
        </div>
      </section>
      <section aria-label=${say.printsByWhatThey}><wall-prepare-matrix .prints=${this.prints} .columns=${this.columns(step)}></wall-prepare-matrix></section>
      ${this.by === 'inks' ? html`<p>${say.toHaveMixed(step.inks.map((id) => this.nameOf(id)).join(', ') || say.none)}</p>` : this.list(step, rows)}
    `;
  }

  /** What is to be said of the question before its answer is read. */
  private notes(): string[] {
    const { drawer, frames } = this.store.project;
    const screens = (state: FrameState): Screen[] => drawer.screens.filter(({ id }) => frameState(id, frames) === state);
    if (this.by === 'inks') return askedNotes(this.prints, this.hung.variants.length, { made: [], toMake: [] });
    return askedNotes(this.prints, this.hung.variants.length, { made: screens('made'), toMake: screens('to make') });
  }

  private list(step: PrepareStep, rows: ReturnType<typeof prepRows>) {
    const { toMake = [], film = [] } = this.store.project.frames ?? {};
    const same = toMake.every((id) => step.screens.includes(id)) && step.screens.every((id) => toMake.includes(id) || film.includes(id));
    return html`<section aria-label=${say.prepList}>
      <h3>${say.screensToHave}</h3>
      ${rows.length === 0 ? html`<p class="soft">${say.noneYetLetMore}</p>` : prepTable(rows)}
      ${step.inks.length === 0 ? nothing : html`<p>${say.andToHaveMixed(step.inks.map((id) => this.nameOf(id)).join(', '))}</p>`}
      <p class="buttons">
        <button class="main" ?disabled=${same || step.screens.length === 0} @click=${() => this.putOnList(step)}>${same && step.screens.length > 0 ? say.onPrepList : say.putOnPrepList}</button>
        <button ?disabled=${this.saving.running || rows.length === 0} @click=${() => this.save(step)}>${say.saveAsPDF}</button>
      </p>
      ${this.saving.failure === '' ? nothing : html`<p role="alert">${this.saving.failure}</p>`}
      <p class="soft small">${say.screensOnPrepList}</p>
      ${atHandTick(this.store)}
    </section>`;
  }

  override render() {
    const { work, step } = this;
    const steps = work.found;
    return html`<dialog aria-label=${say.whichScreensToMake} @close=${() => work.stop()}>
      <header><h2>${say.whichScreensToMake}</h2><button @click=${() => this.dialog.close()}>${say.close}</button></header>
      ${this.hung === NO_PRINTS ? nothing : this.ask()}
      <div class="answer">
        ${work.running ? html`<ps-progress label=${say.tryingSets} words=${say.tryingSetsOf(newOnes(this.by))} .value=${work.progress} @stop=${() => work.stop()}></ps-progress>` : nothing}
        ${work.failure === '' ? nothing : html`<p role="alert">${work.failure}</p>`}
        ${!work.running && steps === null && work.failure === '' && this.hung !== NO_PRINTS ? html`<p>${say.stopped} <button @click=${() => this.find()}>${say.tryAgain}</button></p>` : nothing}
        ${steps === null || step === null ? nothing : this.answer(steps, step)}
      </div>
    </dialog>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-prepare-screens': PrepareScreens;
  }
}
