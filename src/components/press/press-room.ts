import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { Problem } from '../../engine/base/error.ts';
import type { VisitHead } from '../../engine/log/types.ts';
import type { VisitInput } from '../../engine/output/visit.ts';
import type { FitChoice } from '../../engine/output/what-to-drop.ts';
import type { PressSettings, VisitRun } from '../../engine/project/types.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import { type AppStore, StoreController } from '../app-store.ts';
import { sentenceOf } from '../../workers/client.ts';
import { controls } from '../ui/styles.ts';
import { counted } from '../ui/words.ts';
import { CAUTIONS, CAUTIONS_DEFER } from './cautions.ts';
import './day-bars.ts';
import './fit-choices.ts';
import { KeepAwake } from './keep-awake.ts';
import { LogKeeper } from './log-keeper.ts';
import './log-press.ts';
import './log-sheets.ts';
import type { LogPress } from './log-press.ts';
import { tickedAgain, tickedOff, ticksOf } from './log-ticks.ts';
import { beginWords, boundWords, endWords, freeSwapWords, needsWords, planHeadline } from './plan-words.ts';
import { type MadePlan, PlanRun } from './plan-run.ts';
import { PressKeeper } from './press-record.ts';
import './pdf-choice.ts';
import { pressStyles } from './press-styles.ts';
import './pull-sheet.ts';
import type { PullSheet } from './pull-sheet.ts';
import './set-up-card.ts';
import type { Tick } from './set-up-card.ts';
import './set-up-grid.ts';
import { StatePictures } from './state-pictures.ts';
import './studio-figures.ts';
import { inkTable, paperTable, screenTable, stockTable, supplyStyles } from './supplies.ts';
import { GRAMS_NOTE, OVERS_NOTE } from './supply-figures.ts';
import { nextSetUp, setUpsDone } from './ticks.ts';
import { visitNow } from './visit-now.ts';
import './visit-runs.ts';

const PROBLEMS_TOLD = 2;

/** The printer's room: what to print, in which order, with what. */
@customElement('press-room')
export class PressRoom extends LitElement {
  static override styles = [controls, supplyStyles, pressStyles];

  @property({ attribute: false }) store!: AppStore;
  @state() private selected = 0;
  @state() private preparing = false;
  @query('ps-pull-sheet') private sheet!: PullSheet | null;
  @query('ps-log-press') private atPress!: LogPress | null;
  /** Redraws what shows pictures: they arrive one by one. */
  private drawn = 0;
  private shownInput: VisitInput | null = null;
  /** How many projects had been opened when the order was made. */
  private opened = 0;
  private keeper!: PressKeeper;
  /** Whether a new order shall take the place of one with ticks. */
  @state() private asking = false;
  private readonly run = new PlanRun(this, (sentence) => this.store.tell(sentence));
  private readonly awake = new KeepAwake(this);
  private readonly log = new LogKeeper(this, () => this.store);
  private readonly pictures = new StatePictures(
    this,
    () => this.store.room !== 'press',
    () => this.store.relative,
    (sentence) => this.store.tell(sentence),
  );

  override connectedCallback(): void {
    super.connectedCallback();
    new StoreController(this, this.store);
    this.store.addEventListener('change', this.onStore);
    this.keeper = new PressKeeper(this.store, (sentence) => this.store.tell(sentence));
    this.opened = this.store.opened;
    void this.resume();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.store.removeEventListener('change', this.onStore);
  }

  /** Another project has no use for the order of the one before, also while the room is hidden. */
  private readonly onStore = (): void => {
    if (this.store.opened === this.opened) return;
    this.opened = this.store.opened;
    this.asking = false;
    this.shownInput = null;
    this.log.begin(null);
    this.run.put(null);
    this.keeper.keep(null, null);
  };

  /** Takes the visit up where a reload left it. */
  private async resume(): Promise<void> {
    const record = await this.keeper.read();
    const busy = (): boolean => this.run.made !== null || this.run.running || this.store.opened !== this.opened;
    if (record === null || busy()) return;
    try {
      await this.log.resume(record.head);
    } catch (error) {
      this.store.tell(`The log of the visit could not be read (${sentenceOf(error)}); reload the page before you tick anything.`);
    }
    if (busy()) return;
    this.shownInput = record.made.input;
    this.selected = nextSetUp(record.made.plan, ticksOf(record.made.plan, this.log.sheets));
    this.run.put(record.made);
  }

  override shouldUpdate(changed: PropertyValues): boolean {
    // A hidden room waits; the store's next change, entering it, draws it.
    return !this.hasUpdated || this.store.room === 'press' || changed.size > 0;
  }

  private get runs(): { recipe: Recipe; sheets: number }[] {
    const { recipes, visit } = this.store.project;
    return recipes.flatMap((recipe) => {
      const sheets = visit.find((run) => run.recipe === recipe.id)?.sheets ?? 0;
      return sheets > 0 ? [{ recipe, sheets }] : [];
    });
  }

  private get input(): VisitInput {
    const { explore, press } = this.store.project;
    return { runs: this.runs, press, minDeltaE: explore.minDeltaE, seed: explore.seed };
  }

  private get outOfDate(): boolean {
    const made = this.run.made?.input;
    return made !== undefined && !sameInput(made, this.input);
  }

  /** Numbers of the sheets that have left the visit. */
  private get spoiled(): ReadonlySet<number> {
    return new Set(this.log.sheets.filter((sheet) => sheet.spoiled).map((sheet) => sheet.number));
  }

  private find(): void {
    // One slip of a wet finger must not put a day's ticks away.
    if (this.log.events.length > 0 && !this.asking) {
      this.asking = true;
      return;
    }
    this.asking = false;
    void this.run.start(this.input).then(() => this.reveal());
  }

  /** Plans what is left around what is done. */
  private findRest(): void {
    this.asking = false;
    const { recipes, sheets } = this.log;
    // The visit stays what it was begun as: changed recipes are for the next one.
    const input = this.run.made!.input;
    void this.run.start({ ...input, rest: { recipes, sheets, now: visitNow(this.log.events, Date.now()) } }).then(() => this.reveal());
  }

  /** Takes up what makes the visit fit, as one step to undo, with the order that was made for it. */
  private fit({ runs, press, plan }: FitChoice): void {
    const { project } = this.store;
    const thinned = new Map<string, Recipe>();
    for (const { recipe } of runs) {
      if (!project.recipes.some((kept) => kept.id === recipe.id)) thinned.set(recipe.id, { ...recipe, id: crypto.randomUUID() });
    }
    const idOf = (id: string): string => thinned.get(id)?.id ?? id;
    this.store.dispatch({
      kind: 'thin-visit',
      recipes: [...thinned.values()],
      runs: runs.map(({ recipe, sheets }) => ({ recipe: idOf(recipe.id), sheets })),
      press,
    });
    const kept = new Map(this.store.project.recipes.map((recipe) => [recipe.id, recipe]));
    if (plan === null) this.find();
    else {
      const recipes = plan.recipes.map(({ id }) => kept.get(idOf(id))!);
      this.run.put({ plan: { ...plan, recipes: plan.recipes.map((of) => ({ ...of, id: idOf(of.id) })) }, input: this.input, recipes });
      this.reveal();
    }
  }

  /** Brings what was found into view when it lies below the window. */
  private reveal(): void {
    void this.updateComplete.then(() => {
      const result = this.renderRoot.querySelector('.result');
      if (result === null || this.store.room !== 'press') return;
      if (result.getBoundingClientRect().bottom > innerHeight) scrollTo(result);
    });
  }

  private async print(): Promise<void> {
    if (this.preparing || this.sheet === null) return;
    this.preparing = true;
    try {
      await this.sheet.ready();
      window.print();
    } finally {
      this.preparing = false;
    }
  }

  private choose(index: number, reveal: boolean): void {
    this.selected = index;
    if (!reveal) return;
    void this.updateComplete.then(() => {
      const card = this.renderRoot.querySelector('ps-set-up-card');
      // Below the grid, where there is no room beside it, the card would open out of sight.
      if (card !== null && getComputedStyle(card).position === 'static') {
        scrollTo(card);
      }
    });
  }

  private tick({ setUp, sheets, on }: Tick): void {
    const card = this.run.made?.plan.cards.find((entry) => entry.number === setUp);
    if (card === undefined) return;
    const { sheets: states, recipes, events } = this.log;
    void this.log.add(on ? tickedAgain(card, sheets, states, recipes, events, Date.now()) : tickedOff(card, sheets, states, recipes));
  }

  /** What is logged from now on is of a new visit; the log before it stays in the Chest. */
  private newVisit({ plan, recipes }: MadePlan): VisitHead {
    return {
      id: crypto.randomUUID(),
      title: this.store.project.title,
      begunMs: Date.now(),
      minDeltaE: this.store.project.explore.minDeltaE,
      recipes,
      sheets: plan.sheets.map(({ number, recipe }) => ({ number, recipe })),
    };
  }

  protected override willUpdate(): void {
    this.drawn++;
    const made = this.run.made;
    if (made === null || this.run.running) return;
    if (made.input !== this.shownInput) {
      this.shownInput = made.input;
      // What is left of a visit is still that visit.
      if (!('rest' in made.input)) this.log.begin(this.newVisit(made));
      this.selected = 0;
      this.keeper.keep(made, this.log.head);
      this.pictures.keepOnly(new Set([...this.store.project.recipes, ...made.recipes, ...this.log.recipes]));
    }
    this.selected = Math.min(this.selected, made.plan.cards.length - 1);
  }

  private renderEmpty() {
    return html`<div class="empty">
      <h2>Nothing kept yet</h2>
      <p>A visit prints kept recipes. Keep a print you like on the Wall or the Bench, then come back and say how many sheets of it.</p>
      <div class="row">
        <button class="main" @click=${() => this.store.go('wall')}>Go to the Wall</button>
        <button @click=${() => this.store.go('bench')}>Go to the Bench</button>
      </div>
    </div>`;
  }

  private renderWhat() {
    const { recipes, visit, press } = this.store.project;
    const { gone, most } = this.run.seconds;
    const total = this.runs.reduce((sum, run) => sum + run.sheets, 0);
    return html`<section aria-labelledby="what">
      <h2 id="what">What to print</h2>
      <ps-visit-runs
        .recipes=${recipes}
        .runs=${visit}
        .pictures=${this.pictures}
        .drawn=${this.drawn}
        @runs=${(event: CustomEvent<VisitRun[]>) => this.store.dispatch({ kind: 'set-visit', runs: event.detail })}
      ></ps-visit-runs>
      <div class="start">
        ${this.run.running
          ? html`<button @click=${() => this.run.stop()}>Stop</button>
              <label class="soft"
                ><progress aria-label="Looking for an order" max=${most} value=${gone}></progress>${gone} s of at most ${most} s</label
              >`
          : html`<button class="main" @click=${this.find}>Find the pull order</button>`}
        <p class="total">${counted(total, 'sheet')} in all</p>
        ${total === 0 ? html`<p class="soft">Give at least one recipe a number of sheets.</p>` : nothing}
        ${this.asking && !this.outOfDate ? this.renderAsking() : nothing}
        ${total > 500 ? html`<p class="warn">One visit holds 500 sheets; split them over visits.</p>` : nothing}
      </div>
      <ps-studio-figures
        .press=${press}
        @figures=${(event: CustomEvent<Partial<PressSettings>>) => this.store.dispatch({ kind: 'set-press', change: event.detail })}
      ></ps-studio-figures>
    </section>`;
  }

  private renderAsking() {
    return html`<p class="stale" role="alert">
      A new order starts a new visit without your ticks; what you logged stays in the Chest.
      <button @click=${this.findRest}>Plan the rest</button>
      <button @click=${this.find}>Find anew</button>
      <button class="quiet" @click=${() => (this.asking = false)}>Keep this order</button>
    </p>`;
  }

  private renderProblems(problems: readonly Problem[]) {
    const told = problems.slice(0, PROBLEMS_TOLD);
    const rest = problems.slice(PROBLEMS_TOLD);
    return html`${told.map((problem) => html`<p class="warn">${problem.message}</p>`)}
    ${rest.length === 0
      ? nothing
      : html`<details>
          <summary>${counted(rest.length, 'more such warning')}</summary>
          ${rest.map((problem) => html`<p>${problem.message}</p>`)}
        </details>`}`;
  }

  private renderPlan() {
    const { made, running } = this.run;
    if (made === null) {
      return running ? html`<section><h2>Pull order</h2><p class="soft" role="status">Looking for an order…</p></section>` : nothing;
    }
    const { plan } = made;
    const ticks = ticksOf(plan, this.log.sheets);
    const done = setUpsDone(plan, ticks);
    return html`
      <section aria-labelledby="order">
        <div class="result">
          <div>
            <h2 id="order">Pull order</h2>
            <p class="headline" role="status">${planHeadline(plan)}</p>
            <p>${boundWords(plan)}</p>
            ${running ? nothing : [beginWords(plan), endWords(plan)].map((words) => (words === '' ? nothing : html`<p>${words}</p>`))}
            <p>${running ? html`<span class="soft">Looking for a better order…</span>` : `${freeSwapWords(plan)} ${needsWords(plan)}`}</p>
            ${this.run.stopped && !running
              ? html`<p class="soft">The search was stopped: a longer one may find a shorter order.</p>`
              : nothing}
            ${running ? nothing : this.renderProblems(plan.problems)}
            ${running || this.outOfDate || this.log.events.length > 0
              ? nothing
              : html`<ps-fit-choices
                  .made=${made}
                  @fit=${(event: CustomEvent<FitChoice>) => this.fit(event.detail)}
                ></ps-fit-choices>`}
            ${this.outOfDate && !running && this.asking ? this.renderAsking() : nothing}
            ${this.outOfDate && !running && !this.asking
              ? html`<p class="stale">Out of date: recipes, sheets or figures have changed. <button @click=${this.find}>Plan again</button></p>`
              : nothing}
          </div>
          <div class="row">
            ${this.awake.possible
              ? html`<label
                  ><input
                    type="checkbox"
                    .checked=${live(this.awake.wanted)}
                    @change=${(event: Event) => void this.awake.set((event.target as HTMLInputElement).checked)}
                  />Keep this screen awake</label
                >`
              : nothing}
            <button class="main" ?disabled=${running} @click=${() => this.atPress?.show()}>At the press</button>
            <button ?disabled=${running || this.preparing} @click=${() => void this.print()}>
              ${this.preparing ? 'Drawing the pictures…' : 'Print the pull sheet'}
            </button>
            <ps-pdf-choice
              .made=${made}
              .pictures=${this.pictures}
              .heading=${this.store.project.title}
              .tell=${(sentence: string) => this.store.tell(sentence)}
              .disabled=${running}
            ></ps-pdf-choice>
            ${this.log.events.length === 0 || done.size === plan.cards.length
              ? nothing
              : html`<button ?disabled=${running} @click=${this.findRest}>Plan the rest around what is done</button>`}
            ${done.size > 0 ? html`<p>${done.size} of ${counted(plan.cards.length, 'set-up')} done</p>` : nothing}
          </div>
        </div>
        <div class="days">
          <h3>By the clock</h3>
          <ps-day-bars
            .plan=${plan}
            .selected=${this.selected}
            @set-up-select=${(event: CustomEvent<number>) => this.choose(event.detail, true)}
          ></ps-day-bars>
        </div>
        <div class="bench">
          <ps-set-up-grid
            .plan=${plan}
            .selected=${this.selected}
            .done=${done}
            @set-up-select=${(event: CustomEvent<number>) => this.choose(event.detail, true)}
          ></ps-set-up-grid>
          <ps-set-up-card
            .made=${made}
            .index=${this.selected}
            .pictures=${this.pictures}
            .ticked=${ticks}
            .spoiled=${this.spoiled}
            .drawn=${this.drawn}
            @set-up-select=${(event: CustomEvent<number>) => this.choose(event.detail, false)}
            @tick=${(event: CustomEvent<Tick>) => this.tick(event.detail)}
          ></ps-set-up-card>
        </div>
      </section>
      ${this.log.events.length === 0
        ? nothing
        : html`<section aria-labelledby="sheets">
            <h2 id="sheets">Sheets</h2>
            <ps-log-sheets .store=${this.store} .log=${this.log} .pictures=${this.pictures} .drawn=${this.drawn}></ps-log-sheets>
          </section>`}
      <section class="supply">
        <div>
          <h2>Ink</h2>
          <div class="scroll">${inkTable(plan)}</div>
          <div class="scroll">${stockTable(plan)}</div>
          <p class="soft small">${GRAMS_NOTE}</p>
          <h2 class="next">Paper</h2>
          <div class="scroll">${paperTable(made)}</div>
          <p class="soft small">${OVERS_NOTE}</p>
        </div>
        <div>
          <h2>Screens</h2>
          <div class="scroll">${screenTable(made)}</div>
        </div>
      </section>
      <section class="safe">
        <h2>Before you start</h2>
        <ul>
          ${CAUTIONS.map((caution) => html`<li>${caution}</li>`)}
        </ul>
        <p><b>${CAUTIONS_DEFER}</b></p>
      </section>
    `;
  }

  override render() {
    const { made, running } = this.run;
    const empty = this.store.project.recipes.length === 0;
    return html`
      <div class="room">
        ${empty ? this.renderEmpty() : this.renderWhat()} ${empty && made === null ? nothing : this.renderPlan()}
      </div>
      ${made === null || running
        ? nothing
        : html`<ps-log-press .made=${made} .log=${this.log} .pictures=${this.pictures} .drawn=${this.drawn}></ps-log-press>
          <ps-pull-sheet
            .made=${made}
            .pictures=${this.pictures}
            .heading=${this.store.project.title}
            .outOfDate=${this.outOfDate}
            .drawn=${this.drawn}
          ></ps-pull-sheet>`}
    `;
  }
}

function scrollTo(element: Element): void {
  element.scrollIntoView({ block: 'start', behavior: matchMedia('(prefers-reduced-motion: reduce)').matches ? 'auto' : 'smooth' });
}

/** Whether two visits would be planned alike; recipes are compared as objects, which no command changes in place. */
function sameInput(one: VisitInput, other: VisitInput): boolean {
  return (
    one.minDeltaE === other.minDeltaE &&
    one.seed === other.seed &&
    JSON.stringify(one.press) === JSON.stringify(other.press) &&
    one.runs.length === other.runs.length &&
    one.runs.every((run, i) => run.recipe === other.runs[i]!.recipe && run.sheets === other.runs[i]!.sheets)
  );
}

declare global {
  interface HTMLElementTagNameMap {
    'press-room': PressRoom;
  }
}
