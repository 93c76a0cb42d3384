import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { defined } from '../../engine/base/at.ts';
import { tickedAgain, tickedOff, ticksOf } from '../../engine/log/ticks/ticking.ts';
import { nextSetUp, setUpsDone } from '../../engine/log/ticks/ticks.ts';
import type { VisitHead } from '../../engine/log/types.ts';
import { visitHeadOf } from '../../engine/log/visit-head.ts';
import { visitNow } from '../../engine/log/visit-now.ts';
import { takenFit } from '../../engine/project/take-fit.ts';
import { sameVisitInput, visitInputOf } from '../../engine/project/visit-input.ts';
import type { VisitInput } from '../../engine/visit/visit.ts';
import type { FitChoice } from '../../engine/visit/what-to-drop.ts';
import { sentenceOf } from '../../workers/client/client.ts';
import './plan/day-bars.ts';
import './plan/fit-choices.ts';
import { type AppStore, StoreController } from '../app-store.ts';
import type { MadePlan } from '../output/made-plan.ts';
import { controls } from '../ui/controls-style.ts';
import './log/log-press.ts';
import '../ui/log/log-sheets.ts';
import { LogKeeper } from '../ui/log/log-keeper.ts';
import { StatePictures } from '../ui/print/state-pictures.ts';
import { counted } from '../ui/words.ts';
import { awakeBox, KeepAwake } from './log/keep-awake.ts';
import { localTime } from './log/local-time.ts';
import './sheet/pdf-choice.ts';
import type { LogPress } from './log/log-press.ts';
import { PressKeeper } from './log/press-record.ts';
import './sheet/pull-sheet.ts';
import { haveReady } from './plan/have-ready.ts';
import { planHead } from './plan/plan-head.ts';
import './sheet/set-up-card.ts';
import { PlanRun } from './plan/plan-run.ts';
import './grid/set-up-grid.ts';
import { supplyStyles } from './plan/supplies.ts';
import { nothingKept, whatToPrint } from './plan/what-to-print.ts';
import { pressStyles } from './press-style.ts';
import type { PullSheet } from './sheet/pull-sheet.ts';
import type { Tick } from './sheet/set-up-card.ts';

/** The printer's room: what to print, in which order, with what. */
@customElement('press-room')
export class PressRoom extends LitElement {
  static override styles = [controls, supplyStyles, pressStyles];

  @property({ attribute: false }) store!: AppStore;
  @state() private selected = 0;
  @state() private preparing = false;
  @query('press-pull-sheet') private sheet!: PullSheet | null;
  @query('press-log') private atPress!: LogPress | null;
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

  private get input(): VisitInput {
    return visitInputOf(this.store.project);
  }

  private get outOfDate(): boolean {
    const made = this.run.made?.input;
    return made !== undefined && !sameVisitInput(made, this.input);
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
    const input = defined(this.run.made).input;
    void this.run
      .start({ ...input, rest: { recipes, sheets, now: visitNow(this.log.events, Date.now(), localTime) } })
      .then(() => this.reveal());
  }

  /** Takes up what makes the visit fit, as one step to undo, with the order that was made for it. */
  private fit(choice: FitChoice): void {
    const { command, plan } = takenFit(choice, this.store.project.recipes, () => crypto.randomUUID());
    this.store.dispatch(command);
    if (plan === null) {
      this.find();
      return;
    }
    const kept = new Map(this.store.project.recipes.map((recipe) => [recipe.id, recipe]));
    this.run.put({ plan, input: this.input, recipes: plan.recipes.map(({ id }) => defined(kept.get(id))) });
    this.reveal();
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
      const card = this.renderRoot.querySelector('press-set-up-card');
      // Below the grid, where there is no room beside it, the card would open out of sight.
      if (card !== null && getComputedStyle(card).position === 'static') {
        scrollTo(card);
      }
    });
  }

  private tick({ setUp, sheets, on }: Tick): void {
    const card = this.run.made?.plan.cards.find((entry) => entry.number === setUp);
    if (card === undefined) return;
    const ticking = { card, numbers: sheets, sheets: this.log.sheets, recipes: this.log.recipes };
    void this.log.add(on ? tickedAgain(ticking, this.log.events, Date.now()) : tickedOff(ticking));
  }

  /** What is logged from now on is of a new visit; the log before it stays in the Chest. */
  private newVisit({ plan, recipes }: MadePlan): VisitHead {
    const { title, explore } = this.store.project;
    return visitHeadOf(plan, recipes, { id: crypto.randomUUID(), title, begunMs: Date.now(), minDeltaE: explore.minDeltaE });
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

  private renderAsking() {
    return html`<p class="stale" role="alert">
      A new order starts a new visit without your ticks; what you logged stays in the Chest.
      <button @click=${this.findRest}>Plan the rest</button>
      <button @click=${this.find}>Find anew</button>
      <button class="quiet" @click=${() => (this.asking = false)}>Keep this order</button>
    </p>`;
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
            ${planHead(plan, { running, stopped: this.run.stopped })}
            ${
              running || this.outOfDate || this.log.events.length > 0
                ? nothing
                : html`<press-fit-choices
                  .made=${made}
                  @fit=${(event: CustomEvent<FitChoice>) => this.fit(event.detail)}
                ></press-fit-choices>`
            }
            ${this.outOfDate && !running && this.asking ? this.renderAsking() : nothing}
            ${
              this.outOfDate && !running && !this.asking
                ? html`<p class="stale">Out of date: recipes, sheets or figures have changed. <button @click=${this.find}>Plan again</button></p>`
                : nothing
            }
          </div>
          <div class="row">
            ${awakeBox(this.awake)}
            <button class="main" ?disabled=${running} @click=${() => this.atPress?.show()}>At the press</button>
            <button ?disabled=${running || this.preparing} @click=${() => void this.print()}>
              ${this.preparing ? 'Drawing the pictures…' : 'Print the pull sheet'}
            </button>
            <press-pdf-choice
              .made=${made}
              .pictures=${this.pictures}
              .heading=${this.store.project.title}
              .tell=${(sentence: string) => this.store.tell(sentence)}
              .disabled=${running}
            ></press-pdf-choice>
            ${
              this.log.events.length === 0 || done.size === plan.cards.length
                ? nothing
                : html`<button ?disabled=${running} @click=${this.findRest}>Plan the rest around what is done</button>`
            }
            ${done.size > 0 ? html`<p>${done.size} of ${counted(plan.cards.length, 'set-up')} done</p>` : nothing}
          </div>
        </div>
        <div class="days">
          <h3>By the clock</h3>
          <press-day-bars
            .plan=${plan}
            .selected=${this.selected}
            @set-up-select=${(event: CustomEvent<number>) => this.choose(event.detail, true)}
          ></press-day-bars>
        </div>
        <div class="bench">
          <press-set-up-grid
            .plan=${plan}
            .selected=${this.selected}
            .done=${done}
            @set-up-select=${(event: CustomEvent<number>) => this.choose(event.detail, true)}
          ></press-set-up-grid>
          <press-set-up-card
            .made=${made}
            .index=${this.selected}
            .pictures=${this.pictures}
            .ticked=${ticks}
            .spoiled=${this.spoiled}
            .drawn=${this.drawn}
            @set-up-select=${(event: CustomEvent<number>) => this.choose(event.detail, false)}
            @tick=${(event: CustomEvent<Tick>) => this.tick(event.detail)}
          ></press-set-up-card>
        </div>
      </section>
      ${
        this.log.events.length === 0
          ? nothing
          : html`<section aria-labelledby="sheets">
            <h2 id="sheets">Sheets</h2>
            <ps-log-sheets .store=${this.store} .log=${this.log} .pictures=${this.pictures} .drawn=${this.drawn}></ps-log-sheets>
          </section>`
      }
      ${haveReady(made)}
    `;
  }

  override render() {
    const { made, running } = this.run;
    const empty = this.store.project.recipes.length === 0;
    const asking = this.asking && !this.outOfDate ? this.renderAsking() : nothing;
    return html`
      <div class="room">
        ${
          empty
            ? nothingKept(this.store)
            : whatToPrint(this.store, { run: this.run, pictures: this.pictures, drawn: this.drawn, asking, find: () => this.find() })
        }
        ${empty && made === null ? nothing : this.renderPlan()}
      </div>
      ${
        made === null || running
          ? nothing
          : html`<press-log .made=${made} .log=${this.log} .pictures=${this.pictures} .drawn=${this.drawn}></press-log>
          <press-pull-sheet
            .made=${made}
            .pictures=${this.pictures}
            .heading=${this.store.project.title}
            .outOfDate=${this.outOfDate}
            .drawn=${this.drawn}
          ></press-pull-sheet>`
      }
    `;
  }
}

function scrollTo(element: Element): void {
  element.scrollIntoView({ block: 'start', behavior: matchMedia('(prefers-reduced-motion: reduce)').matches ? 'auto' : 'smooth' });
}

declare global {
  interface HTMLElementTagNameMap {
    'press-room': PressRoom;
  }
}
