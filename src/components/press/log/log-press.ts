import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import type { RetimedPlan } from '../../../engine/log/now/retimed.ts';
import { ticksOf } from '../../../engine/log/ticks/ticking.ts';
import { nextSetUp, setUpsDone, setUpsInAll } from '../../../engine/log/ticks/ticks.ts';
import type { Happening } from '../../../engine/log/types.ts';
import { inksAtHand } from '../../../engine/visit/lent/inks-at-hand.ts';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import type { AppStore } from '../../app-store.ts';
import '../../ui/cautions.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { controls } from '../../ui/controls-style.ts';
import { fullDialog } from '../../ui/layout-style.ts';
import '../../ui/log/log-sheet.ts';
import type { LogKeeper } from '../../ui/log/log-keeper.ts';
import type { LogSheet, PulledDifferently, SheetTalk } from '../../ui/log/log-sheet.ts';
import type { StatePictures } from '../../ui/print/state-pictures.ts';
import { say } from '../../words/en/press/log.ts';
import { pressNext } from '../next/press-next.ts';
import { strayedLine } from '../next/strayed.ts';
import type { PressVisit } from '../press-visit.ts';
import { KeepAwake } from './keep-awake.ts';
import { logPressStyle } from './log-press-style.ts';
import { pressBeds } from './press-beds.ts';
import { pressFoot } from './press-foot.ts';
import { pressFrame } from './press-frame.ts';
import { pressPictures } from './press-pictures.ts';
import './set-up-notes.ts';
import type { SetUpNotes } from './set-up-notes.ts';
import { setUpTalk } from './set-up-talk.ts';
import './sheet-tiles.ts';
import { pulledOtherwise, sheetsTalk, sheetTalk, sheetToShow } from './sheet-talk.ts';
import { TickAsking } from './tick-asking.ts';

/** How often the times until sheets are dry are looked at anew. */
const LOOK_MS = 20_000;

/**
 * The next set-up, as large as the screen: nothing is needed at the press but it and its sheets.
 * @fires finished Event: all is pulled, and the press was left for the sheets
 */
@customElement('press-log')
export class LogPress extends LitElement {
  static override styles = [controls, fullDialog, logPressStyle];

  @property({ attribute: false }) made!: MadePlan;
  /** The order on the clock of what was ticked, as it is when asked; null before the first tick. */
  @property({ attribute: false }) now: () => RetimedPlan | null = () => null;
  @property({ attribute: false }) log!: LogKeeper;
  @property({ attribute: false }) pictures!: StatePictures;
  @property({ attribute: false }) visit!: PressVisit;
  @property({ attribute: false }) store!: AppStore;
  /** Changes when a picture has arrived or something was logged. */
  @property({ type: Number }) drawn = 0;
  /** Whether an order is looked for. */
  @property({ type: Boolean }) planning = false;
  @state() private open = false;
  @state() private index = 0;
  /** The sheet whose picture is shown, by number. */
  @state() private shown: number | null = null;
  /** Sheets of which something is said, by number. */
  @state() private talkOf: readonly number[] = [];
  @query('dialog') private dialog!: HTMLDialogElement;
  @query('ps-log-sheet') private sheetDialog!: LogSheet;
  @query('press-set-up-notes') private notes!: SetUpNotes;
  /** Whether the set-up at hand is spoken of. */
  @state() private noting = false;
  /** Rises with the clock and with the log: what hangs on them is drawn again. */
  private looked = 0;
  private readonly awake = new KeepAwake(this);
  private readonly asking = new TickAsking(
    () => this.log,
    () => this.requestUpdate(),
  );
  private clock: ReturnType<typeof setInterval> | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearInterval(this.clock);
  }

  /** Opens at the first set-up with something left to pull. */
  show(): void {
    this.index = nextSetUp(this.made.plan, this.ticks);
    this.shown = null;
    this.open = true;
    this.asking.prepare();
    if (this.awake.possible) void this.awake.set(true);
    clearInterval(this.clock);
    this.clock = setInterval(() => this.requestUpdate(), LOOK_MS);
    void this.updateComplete.then(() => this.dialog.showModal());
  }

  /** Whether the press is worked at: what is planned anew meanwhile must not take it away. */
  get working(): boolean {
    return this.open;
  }

  /** Everything is pulled: what follows is done with the sheets. */
  private finish(): void {
    this.dialog.close();
    this.dispatchEvent(new Event('finished'));
  }

  private close(): void {
    this.open = false;
    this.asking.reset();
    clearInterval(this.clock);
    void this.awake.set(false);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    // Another order than before has its own set-up to go on with.
    if (this.open && changed.get('made') !== undefined && changed.get('made')?.input !== this.made.input)
      this.index = nextSetUp(this.made.plan, this.ticks);
    this.looked++;
  }

  private get ticks(): Set<string> {
    return ticksOf(this.made.plan, this.log.sheets);
  }

  private get card(): SetUpCard {
    const { cards } = this.made.plan;
    return entryAt(cards, Math.min(this.index, cards.length - 1));
  }

  private go(index: number): void {
    this.index = index;
    this.shown = null;
    this.asking.question = null;
    this.dialog.scrollTo({ top: 0 });
  }

  private async add(happenings: Happening[]): Promise<void> {
    await this.log.add(happenings);
    this.requestUpdate();
  }

  private note(): void {
    this.noting = true;
    void this.updateComplete.then(() => this.notes.show());
  }

  private speak(sheets: number[]): void {
    this.shown = sheets[0] ?? null;
    this.talkOf = sheets;
    void this.updateComplete.then(() => this.sheetDialog.show());
  }

  /** What there is to say of the sheets that were asked for. */
  private get talk(): SheetTalk | null {
    const [first] = this.talkOf;
    const sheet = this.log.sheets.find((entry) => entry.number === first);
    if (sheet === undefined) return null;
    const inks = inksAtHand(this.log.recipes, this.store.project.drawer.inks, this.card.ink.ink);
    return this.talkOf.length > 1 ? sheetsTalk(this.card, this.talkOf, this.log, inks) : sheetTalk(this.card, sheet, this.log, inks);
  }

  private otherwise({ how, note, sheets: numbers }: PulledDifferently): void {
    const { sheets, recipes } = this.log;
    void this.add(pulledOtherwise({ card: this.card, numbers, sheets, recipes }, how, note));
  }

  private renderPictures() {
    const { sheets } = this.card;
    const sheet = sheetToShow(sheets, this.log.sheets, this.shown);
    const recipe = this.log.recipes[sheet?.recipe ?? -1];
    if (sheet === undefined || recipe === undefined) return nothing;
    const { store, visit, card } = this;
    return html`${pressPictures(this.made.plan, { sheet, recipe, index: this.made.plan.cards.indexOf(card) }, this.pictures)}
    ${pressNext({ store, visit, log: this.log, card, number: sheet.number })}`;
  }

  /** What was logged or planned last is taken back here too, where the app's own undo is behind the press. */
  private renderUndo() {
    const { actLabel } = this.store;
    return html`<button ?disabled=${actLabel === null} aria-label=${actLabel === null ? say.undo : say.undoOf(actLabel)} title=${actLabel ?? nothing} @click=${() => this.store.undo()}>${say.undo}</button>`;
  }

  private renderFace() {
    const { plan } = this.made;
    const { card, ticks } = this;
    const index = plan.cards.indexOf(card);
    const done = setUpsDone(plan, ticks);
    return html`<div class="face">
      <header>
        <h2>${say.setUp(card.number)} <span class="soft">${say.of(setUpsInAll(plan))}</span></h2>
        ${pressBeds(plan, { index, ticks, go: (to) => this.go(to) })}
        <button ?disabled=${index === 0} @click=${() => this.go(index - 1)}>${say.back}</button>
        <button ?disabled=${index === plan.cards.length - 1} @click=${() => this.go(index + 1)}>${say.next}</button>
        ${this.renderUndo()}
        <button @click=${() => this.dialog.close()}>${say.leavePress}</button>
        ${strayedLine(this.visit)}
      </header>
      ${pressFrame(this.made, card, { now: this.now(), note: () => this.note() })}
      <div class="take">
        ${this.renderPictures()}
        <press-sheet-tiles
          .card=${card}
          .plan=${plan}
          .log=${this.log}
          .asking=${this.asking}
          .ticks=${ticks}
          .drawn=${this.looked}
          @shown=${(event: CustomEvent<number>) => (this.shown = event.detail)}
          @speak=${(event: CustomEvent<number[]>) => this.speak(event.detail)}
        ></press-sheet-tiles>
        <ps-cautions topic="press"></ps-cautions>
      </div>
      ${pressFoot(this.made, { index, ticks, done, log: this.log, now: this.now(), go: (to: number) => this.go(to), leave: () => this.finish(), planning: this.planning })}
    </div>`;
  }

  override render() {
    return html`<dialog aria-label=${say.atPress} @close=${this.close}>
        ${this.open ? this.renderFace() : nothing}
      </dialog>
      <ps-log-sheet
        .talk=${this.open ? this.talk : null}
        @happened=${(event: CustomEvent<Happening[]>) => void this.add(event.detail)}
        @otherwise=${(event: CustomEvent<PulledDifferently>) => this.otherwise(event.detail)}
      ></ps-log-sheet>
      <press-set-up-notes
        .talk=${this.open && this.noting ? setUpTalk(this.made, this.card, this.log) : null}
        @happened=${(event: CustomEvent<Happening[]>) => void this.add(event.detail)}
      ></press-set-up-notes>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-log': LogPress;
  }
}
