import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { defined } from '../../engine/base/at.ts';
import type { RetimedPlan } from '../../engine/log/now/retimed.ts';
import type { RestInput } from '../../engine/log/rest.ts';
import { ticksOf } from '../../engine/log/ticks/ticking.ts';
import { nextSetUp, setUpsBehind } from '../../engine/log/ticks/ticks.ts';
import type { LogEvent, VisitHead } from '../../engine/log/types.ts';
import { visitHeadOf } from '../../engine/log/visit-head.ts';
import { visitNow } from '../../engine/log/visit-now.ts';
import { takenFit } from '../../engine/project/take-fit.ts';
import { sameVisitInput, visitInputOf } from '../../engine/project/visit-input.ts';
import type { Advice } from '../../engine/visit/advice/advice.ts';
import type { FitChoice } from '../../engine/visit/fit-choice.ts';
import type { VisitInput } from '../../engine/visit/visit.ts';
import { sentenceOf } from '../../workers/client/client.ts';
import type { AppStore } from '../app-store.ts';
import type { MadePlan } from '../output/made-plan.ts';
import { FileReading } from '../ui/files/file-reading.ts';
import { EarlierSettings } from '../ui/log/earlier-settings.ts';
import { bringInLog } from '../ui/log/log-files.ts';
import { LogKeeper } from '../ui/log/log-keeper.ts';
import { newId } from '../ui/new-id.ts';
import { say } from '../words/en/press/room.ts';
import { localTime } from './log/local-time.ts';
import { OrderNow } from './log/order-now.ts';
import { PressKeeper } from './log/press-record.ts';
import { TickAsking } from './log/tick-asking.ts';
import { orderAct } from './order-act.ts';
import { PlanRun } from './plan/plan-run.ts';
import { ScreenStates } from './plan/screen-states.ts';
import type { Tick } from './sheet/set-up-card.ts';

/** The visit at the press: its pull order and how that is found, its log, and how both outlive a reload. */
export class PressVisit implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private readonly storeOf: () => AppStore;
  private readonly found: () => void;
  private keeper!: PressKeeper;
  private shownInput: VisitInput | null = null;
  /** How many projects had been opened when the order was made. */
  private opened = 0;
  readonly run: PlanRun;
  readonly log: LogKeeper;
  private readonly file: FileReading;
  /** Logs the ticks that are made on a set-up's card. */
  readonly ticking: TickAsking;
  /** Whether it is asked if a new order shall take the place of one with ticks. */
  asking = false;
  /** Index of the set-up that is looked at. */
  selected = 0;
  private readonly clock = new OrderNow();
  private readonly screens = new ScreenStates();
  private readonly earlier: EarlierSettings;

  /** @param found called when an order was asked for and has come */
  constructor(host: ReactiveControllerHost, store: () => AppStore, found: () => void) {
    this.host = host;
    this.storeOf = store;
    this.found = found;
    this.run = new PlanRun(host, {
      failed: (sentence, action) => store().trouble('pull order', sentence, action),
      settled: () => store().settled('pull order'),
    });
    this.log = new LogKeeper(host, store);
    this.earlier = new EarlierSettings(host, store);
    this.file = new FileReading(host);
    this.ticking = new TickAsking(
      () => this.log,
      () => host.requestUpdate(),
    );
    host.addController(this);
  }

  private get store(): AppStore {
    return this.storeOf();
  }

  hostConnected(): void {
    const { store } = this;
    store.addEventListener('change', this.onStore);
    store.addEventListener('press-saved', this.onOtherTab);
    store.addEventListener('took-over', this.onTookOver);
    this.keeper = new PressKeeper(store, (sentence) => store.tell(sentence));
    this.opened = store.opened;
    void this.resume();
  }

  hostDisconnected(): void {
    this.store.removeEventListener('change', this.onStore);
    this.store.removeEventListener('press-saved', this.onOtherTab);
    this.store.removeEventListener('took-over', this.onTookOver);
  }

  /** Another project has no use for the order of the one before, also while the room is hidden. */
  private readonly onStore = (): void => {
    if (this.store.opened === this.opened) return;
    this.opened = this.store.opened;
    this.ask(false);
    this.shownInput = null;
    this.log.begin(null);
    this.run.put(null);
    if (this.store.cameWithOrder) void this.resume();
    else this.keeper.keep(null, null);
  };

  /** Shows the order that another tab has kept, in the place of the one shown here. */
  private readonly onOtherTab = (): void => void this.resume(true);

  /** The order shown here counts from now on. */
  private readonly onTookOver = (): void => {
    if (this.run.made === null) void this.resume();
    else this.keeper.keep(this.run.made, this.log.head);
  };

  /**
   * Takes the visit up where a reload, or another tab, left it.
   * @param anew also when an order is shown already
   */
  private async resume(anew = false): Promise<void> {
    const record = await this.keeper.read();
    const shown = this.run.made;
    const busy = (): boolean => this.run.made !== (anew ? shown : null) || this.run.running || this.store.opened !== this.opened;
    if (record === null || busy()) return;
    if (shown !== null && this.log.head?.id === record.head.id && JSON.stringify(shown.plan) === JSON.stringify(record.made.plan)) return;
    try {
      await this.log.resume(record.head);
    } catch (error) {
      this.store.tell(say.logOfVisitCould(sentenceOf(error)));
    }
    if (busy()) return;
    this.shownInput = record.made.input;
    this.selected = nextSetUp(record.made.plan, ticksOf(record.made.plan, this.log.sheets));
    this.run.put(record.made);
  }

  private get input(): VisitInput {
    return visitInputOf(this.store.project);
  }

  /** The order as it is worked. */
  get made(): MadePlan | null {
    const { made } = this.run;
    if (made === null) return null;
    return this.screens.made(this.clock.made(made, this.log, this.earlier.noted), this.store.project, this.log);
  }

  /** The same on the clock of what was really ticked; null before the first tick. */
  get now(): RetimedPlan | null {
    const { made } = this;
    return made === null || this.run.running ? null : this.clock.now(made.plan, this.log, this.store.project.press);
  }

  /** Whether the project asks for another visit than the order is for. */
  get outOfDate(): boolean {
    const made = this.run.made?.input;
    return made !== undefined && !sameVisitInput(made, this.input);
  }

  /** Numbers of the sheets that have left the visit. */
  get spoiled(): ReadonlySet<number> {
    return new Set(this.log.sheets.filter((sheet) => sheet.spoiled).map((sheet) => sheet.number));
  }

  /** Asks, or stops asking, whether a new order shall take the place of one with ticks. */
  ask(asking: boolean): void {
    this.asking = asking;
    this.host.requestUpdate();
  }

  /** Looks for an order; asks first when there are ticks: one slip of a wet finger must not put a day's away. */
  find(): void {
    if (this.log.events.length > 0 && !this.asking) {
      this.ask(true);
      return;
    }
    this.ask(false);
    void this.run.start(this.input).then(this.found);
  }

  /** Plans what is left around what is done; going on as before is the least it gives, and one undo goes back to that. */
  findRest(longer = 0): void {
    this.ask(false);
    this.better(this.restInput(longer));
  }

  /** How many set-ups of the visit are done by its order at hand. */
  get setUpsBehind(): number {
    const { plan } = defined(this.made);
    return setUpsBehind(plan, ticksOf(plan, this.log.sheets));
  }

  /** What is left to be planned, around what is done. @param setUpsBefore how many set-ups are done */
  restInput(longer = 0, setUpsBefore = this.setUpsBehind): RestInput {
    const { recipes, sheets, test } = this.log;
    // The visit stays what it was begun as: changed recipes are for the next one.
    const { input, plan } = defined(this.made);
    const now = visitNow(this.log, Date.now(), localTime);
    const rest = { recipes, sheets, now, setUpsBefore, ...(test === null ? {} : { test }) };
    return { ...input, press: this.store.project.press, atHand: plan, longer, rest };
  }

  /** Goes on looking from the best order so far. */
  findLonger(): void {
    const { input, plan } = defined(this.run.made);
    const longer = (input.longer ?? 0) + 1;
    if (this.log.events.length > 0) this.findRest(longer);
    else this.better({ ...input, atHand: plan, longer });
  }

  private better(input: VisitInput | RestInput): void {
    const before = defined(this.run.made);
    void this.run.start(input).then(() => {
      this.found();
      if (this.run.made?.input !== input) return;
      // Nothing took the place of an order that was only looked at for longer; a rest is another view even of the order at hand.
      if (this.run.made.plan.kept === true && !('rest' in input)) return;
      this.did(say.planAgain2, before);
    });
  }

  /** Says that another order took the place of one; undo puts that back, with what was logged for the other. */
  did(label: string, before: MadePlan, logged: readonly LogEvent[] = []): void {
    this.store.did(orderAct(label, { before, after: defined(this.run.made), logged }, this));
  }

  /** Puts an order back that another took the place of, unless another visit was begun since. */
  goBack(before: MadePlan, head: VisitHead | null): void {
    if (this.log.head?.id !== head?.id) return;
    this.shownInput = before.input;
    this.selected = nextSetUp(before.plan, ticksOf(before.plan, this.log.sheets));
    this.run.put(before);
    this.keeper.keep(before, head);
  }

  /** Takes up what makes the visit fit, as one step to undo, with the order that was made for it. */
  fit(choice: Pick<FitChoice, 'runs' | 'press' | 'plan'>): void {
    const { command, plan } = takenFit(choice, this.store.project.recipes, newId);
    this.store.dispatch(command);
    if (plan === null) return this.find();
    const kept = new Map(this.store.project.recipes.map((recipe) => [recipe.id, recipe]));
    this.run.put({ plan, input: this.input, recipes: plan.recipes.map(({ id }) => defined(kept.get(id))) });
    this.found();
  }

  /** Takes advice up: what it changes in the visit as one step to undo, with the order that was planned for it. */
  advise({ edits, input, plan }: Advice): void {
    // What is printed stays as it is: only its order is another.
    if (edits.every(({ kind }) => kind === 'night')) {
      const before = defined(this.run.made);
      this.run.put({ ...before, plan, input: { ...before.input } });
      this.did(edits.length > 0 ? say.beginSetUpsEvening : say.takeBetterOrder, before);
      return;
    }
    const { days, beds = 1 } = input.press;
    this.fit({ runs: input.runs, press: { days, beds }, plan });
  }

  /** Takes up what another device logged of this visit, also before the first tick here. */
  async bringInLog(): Promise<void> {
    await bringInLog(this.store, this.log, this.file);
    const { made } = this.run;
    if (made === null) return;
    // The visit may be known by the other device's name now.
    this.keeper.keep(made, this.log.head);
    this.selected = nextSetUp(made.plan, ticksOf(made.plan, this.log.sheets));
    this.host.requestUpdate();
  }

  /** Logs that sheets of a set-up were pulled, or that they were not. */
  tick({ setUp, sheets, on, where }: Tick): void {
    const card = this.made?.plan.cards.find((entry) => entry.number === setUp);
    if (card === undefined) return;
    this.ticking.tick({ card, numbers: sheets, on, where });
  }

  /** Follows a finished search: begins the log of a new visit. @returns whether another order is shown now */
  follow(): boolean {
    const { made, running } = this.run;
    if (made === null || running) return false;
    const fresh = made.input !== this.shownInput;
    if (fresh) {
      this.shownInput = made.input;
      // What is left of a visit is still that visit; the log before a new one stays in the Chest.
      if (!('rest' in made.input) && (this.log.head === null || (made.input.longer ?? 0) === 0)) {
        const { title, explore } = this.store.project;
        const naming = { id: newId(), title, begunMs: Date.now(), minDeltaE: explore.minDeltaE };
        void this.earlier.read();
        this.log.begin(visitHeadOf(made.plan, made.recipes, naming));
      }
      this.selected = 0;
      this.ticking.prepare();
      // A long order takes a while to be written down; it shows before.
      setTimeout(() => this.run.made === made && this.keeper.keep(made, this.log.head));
    }
    this.selected = Math.min(this.selected, made.plan.cards.length - 1);
    return fresh;
  }
}
