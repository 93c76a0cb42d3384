import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { StockSheet } from '../../engine/visit/stencils/cut-list.ts';
import { type AppStore, StoreController } from '../app-store.ts';
import { type PaperAsked, type PaperChoice, USUAL_CHOICE } from '../output/papers/paper-choice.ts';
import { USUAL_STOCK } from '../output/papers/stencil-blocks.ts';
import { controls } from '../ui/controls-style.ts';
import { headline, wideRoom } from '../ui/layout-style.ts';
import { StatePictures } from '../ui/print/state-pictures.ts';
import { keepStock, openStock } from './kept-beside.ts';
import { KeepAwake } from './log/keep-awake.ts';
import './log/log-press.ts';
import type { LogPress } from './log/log-press.ts';
import { askAnew, planResult } from './plan-result.ts';
import { framesTold, type ScreensMade } from './plan/screen-made.ts';
import { supplyStyles } from './plan/supplies.ts';
import { nothingKept, whatToPrint } from './plan/what-to-print.ts';
import { pressStyles } from './press-style.ts';
import { PressVisit } from './press-visit.ts';
import { madeForPaper } from './sheet/made-for-paper.ts';
import './sheet/pull-sheet.ts';
import { paperTablesStyle } from './sheet/paper-tables-style.ts';
import type { PullSheet } from './sheet/pull-sheet.ts';
import { KeptWeekPlan, ownVisit } from './week/kept-week.ts';

/** The printer's room: what to print, in which order, with what. */
@customElement('press-room')
export class PressRoom extends LitElement {
  static override styles = [controls, wideRoom, headline, supplyStyles, paperTablesStyle, pressStyles];

  @property({ attribute: false }) store!: AppStore;
  @state() private preparing = false;
  @state() private papers: PaperChoice = USUAL_CHOICE;
  /** The paper as it is bought, for the cut list. */
  @state() private stock: StockSheet = USUAL_STOCK;
  @query('press-pull-sheet') private sheet!: PullSheet | null;
  @query('press-log') private atPress!: LogPress | null;
  /** Redraws what shows pictures: they arrive one by one. */
  private drawn = 0;
  private readonly visit = new PressVisit(
    this,
    () => this.store,
    () => this.reveal(),
  );
  private readonly awake = new KeepAwake(this);
  private readonly week = new KeptWeekPlan(this, () => this.store);
  /** Whether the week is printed, whatever else was chosen. */
  @state() private printsWeek = false;
  private readonly pictures = new StatePictures(
    this,
    () => this.store.room !== 'press',
    () => this.store.relative,
    (sentence) => this.store.tell(sentence),
  );

  override connectedCallback(): void {
    super.connectedCallback();
    new StoreController(this, this.store);
    this.store.addEventListener('press-saved', this.takeStock);
    this.addEventListener('screens-made', this.sayMade);
    window.addEventListener('keydown', this.printKey);
    this.takeStock();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.store.removeEventListener('press-saved', this.takeStock);
    this.removeEventListener('screens-made', this.sayMade);
    window.removeEventListener('keydown', this.printKey);
  }

  /** The browser's own key prints at once, before the pictures of the papers are drawn. */
  private readonly printKey = (event: KeyboardEvent): void => {
    const asked = (event.ctrlKey || event.metaKey) && !event.shiftKey && !event.altKey && event.key.toLowerCase() === 'p';
    if (!asked || this.store.room !== 'press' || this.sheet === null) return;
    event.preventDefault();
    void this.print();
  };

  private readonly sayMade = (event: Event): void => {
    const { drawerScreens } = this.visit.made ?? {};
    const frames = framesTold(this.store.project.frames, (event as CustomEvent<ScreensMade>).detail, drawerScreens);
    this.store.dispatch({ kind: 'set-frames', frames });
  };

  /** Shows the paper as it is kept, also when another tab has kept it. */
  private readonly takeStock = (): void => void openStock(this.store).then((stock) => (this.stock = stock ?? this.stock));

  override shouldUpdate(changed: PropertyValues): boolean {
    // A hidden room waits; the store's next change, entering it, draws it.
    return !this.hasUpdated || this.store.room === 'press' || changed.size > 0;
  }

  /** Brings what was found into view when it lies outside the window, as when advice far below was taken. */
  private reveal(): void {
    void this.updateComplete.then(() => {
      const result = this.renderRoot.querySelector('.result');
      if (result === null || this.store.room !== 'press') return;
      // Asked for at once, the whole order would have to be laid out in the same task.
      const look = new IntersectionObserver(([seen]) => {
        look.disconnect();
        if (seen !== undefined && seen.intersectionRatio < 1) scrollTo(result);
      });
      look.observe(result);
    });
  }

  private async print(week = false): Promise<void> {
    if (this.preparing || this.sheet === null) return;
    this.preparing = true;
    this.printsWeek = week;
    try {
      await this.updateComplete;
      await this.sheet.ready();
      window.print();
    } finally {
      this.preparing = false;
      this.printsWeek = false;
    }
  }

  /** What goes on paper: today is the day of the set-up that is looked at, which is the next to pull when the room is entered. */
  private get asked(): PaperAsked {
    const { selected, made, now } = this.visit;
    const papers = this.printsWeek ? { ...this.papers, what: 'week' as const } : this.papers;
    return { ...papers, day: (now ?? made?.plan)?.times[selected]?.day ?? 1, setUp: selected };
  }

  private chooseStock(stock: StockSheet): void {
    const { saver } = this.store;
    this.stock = stock;
    keepStock({ saver, tell: (sentence) => this.store.tell(sentence) }, stock);
  }

  private choose(index: number, reveal: boolean): void {
    this.visit.selected = index;
    this.requestUpdate();
    if (!reveal) return;
    void this.updateComplete.then(() => {
      const card = this.renderRoot.querySelector('press-set-up-card');
      // Below the grid, where there is no room beside it, the card would open out of sight.
      if (card !== null && getComputedStyle(card).position === 'static') {
        scrollTo(card);
      }
    });
  }

  /** What was printed, to be kept or made an edition of. */
  private showSheets(): void {
    void this.updateComplete.then(() => {
      const heading = this.renderRoot.querySelector('#sheets');
      if (heading !== null) scrollTo(heading);
    });
  }

  protected override willUpdate(): void {
    this.drawn++;
    if (!this.visit.follow()) return;
    const { run, log } = this.visit;
    this.pictures.keepOnly(new Set([...this.store.project.recipes, ...(run.made?.recipes ?? []), ...log.recipes]));
  }

  override render() {
    const { store, visit, pictures, awake, drawn, preparing } = this;
    const { made } = visit;
    const { running } = visit.run;
    const own = ownVisit(visit, store.project.title);
    const visits = own === null ? [] : this.week.visits(own);
    const empty = store.project.recipes.length === 0;
    const asking = visit.asking && !visit.outOfDate ? askAnew(visit) : nothing;
    const result = {
      store,
      visit,
      pictures,
      awake,
      drawn,
      preparing,
      asked: this.asked,
      choosePapers: (choice: PaperChoice) => (this.papers = choice),
      stock: this.stock,
      chooseStock: (stock: StockSheet) => this.chooseStock(stock),
      atPress: () => this.atPress?.show(),
      print: () => void this.print(),
      week: this.week,
      own,
      visits,
      printWeek: () => void this.print(true),
      choose: (index: number, reveal: boolean) => this.choose(index, reveal),
    };
    return html`
      <div class="room">
        ${empty ? nothingKept(store) : whatToPrint(store, { run: visit.run, pictures, drawn, asking, find: () => visit.find() })}
        ${empty && made === null ? nothing : planResult(result)}
      </div>
      ${
        made === null || (running && this.atPress?.working !== true)
          ? nothing
          : html`<press-log .made=${made} .now=${() => visit.now} .log=${visit.log} .visit=${visit} .store=${store} .pictures=${pictures} .drawn=${drawn} .planning=${running} @finished=${() => this.showSheets()}></press-log>
          <press-pull-sheet
            .made=${madeForPaper(made, visit.now)}
            .pictures=${pictures}
            .asked=${this.asked}
            .stock=${this.stock}
            .visits=${visits}
            .heading=${store.project.title}
            .outOfDate=${visit.outOfDate}
            .drawn=${drawn}
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
