import { html, nothing } from 'lit';
import { otherwiseTicks, ticksOf } from '../../engine/log/ticks/ticking.ts';
import { setUpsDone, setUpsInAll } from '../../engine/log/ticks/ticks.ts';
import type { Advice } from '../../engine/visit/advice/advice.ts';
import type { FitChoice } from '../../engine/visit/fit-choice.ts';
import type { StockSheet } from '../../engine/visit/stencils/cut-list.ts';
import type { DatedVisit } from '../../engine/visitfile/calendar.ts';
import type { AppStore } from '../app-store.ts';
import '../ui/log/log-sheets.ts';
import type { MadePlan } from '../output/made-plan.ts';
import type { PaperAsked, PaperChoice } from '../output/papers/paper-choice.ts';
import type { StatePictures } from '../ui/print/state-pictures.ts';
import { say as planWords } from '../words/en/press/plan.ts';
import { say } from '../words/en/press/room.ts';
import { nowEndWords, outsideWords } from '../words/now-words.ts';
import { unmadeWords } from '../words/supply-words.ts';
import { foundFigures } from './log/found-figures.ts';
import './grid/set-up-grid.ts';
import './plan/advice-list.ts';
import { awakeBox, type KeepAwake } from './log/keep-awake.ts';
import './plan/day-bars.ts';
import './plan/fit-choices.ts';
import type { TickAnswer } from './log/tick-asking.ts';
import { nextOnSheet } from './next/press-next.ts';
import { strayedLine } from './next/strayed.ts';
import { haveReady } from './plan/have-ready.ts';
import { planHead } from './plan/plan-head.ts';
import { tellMade } from './plan/screen-made.ts';
import { stencilList } from './plan/stencil-list.ts';
import type { PressVisit } from './press-visit.ts';
import './sheet/papers-out.ts';
import './sheet/set-up-card.ts';
import { madeForPaper } from './sheet/made-for-paper.ts';
import './week/week-plan.ts';
import type { Tick } from './sheet/set-up-card.ts';
import type { KeptWeekPlan, OwnVisit } from './week/kept-week.ts';

interface PlanResult {
  store: AppStore;
  visit: PressVisit;
  pictures: StatePictures;
  awake: KeepAwake;
  /** Changes when a picture has arrived. */
  drawn: number;
  /** Whether the pull sheet is being made ready for paper. */
  preparing: boolean;
  /** What goes on paper. */
  asked: PaperAsked;
  choosePapers(choice: PaperChoice): void;
  /** The paper as it is bought. */
  stock: StockSheet;
  chooseStock(stock: StockSheet): void;
  atPress(): void;
  print(): void;
  week: KeptWeekPlan;
  own: OwnVisit | null;
  /** All visits on this press, the one that is open first. */
  visits: DatedVisit[];
  printWeek(): void;
  /** @param reveal whether the set-up's card must come into view */
  choose(index: number, reveal: boolean): void;
}

/** The pull order with all that goes with it: the clock, the grid, the set-up looked at, sheets, what to have ready. */
export function planResult(result: PlanResult) {
  const { store, visit, pictures, drawn } = result;
  const { made, now } = visit;
  const { running } = visit.run;
  if (made === null) {
    return running ? html`<section><h2>${say.pullOrder}</h2><p class="soft" role="status">${say.lookingForOrder}</p></section>` : nothing;
  }
  const { plan } = made;
  const ticks = ticksOf(plan, visit.log.sheets);
  const done = setUpsDone(plan, ticks);
  const reveal = (event: CustomEvent<number>): void => result.choose(event.detail, true);
  return html`
    <section aria-labelledby="order">
      <div class="result">${found(visit, made)}${buttons(result, made, done.size)}</div>
      ${outOfDate(visit)}${strayedLine(visit)}
      <div class="days">
        <h3>${say.byClock}</h3>
        ${now === null ? nothing : html`<p>${nowEndWords(plan, now)} ${outsideWords(plan, now)}</p>`}
        <press-day-bars .plan=${now ?? plan} .selected=${visit.selected} @set-up-select=${reveal}></press-day-bars>
      </div>
      <div class="bench">
        <press-set-up-grid .plan=${plan} .selected=${visit.selected} .done=${done} @set-up-select=${reveal}></press-set-up-grid>
        <press-set-up-card
          .made=${made}
          .now=${now}
          .index=${visit.selected}
          .pictures=${pictures}
          .ticked=${ticks}
          .spoiled=${visit.spoiled}
          .otherwise=${otherwiseTicks(plan, visit.log.sheets, visit.log.recipes)}
          .question=${visit.ticking.question}
          .drawn=${drawn}
          @set-up-select=${(event: CustomEvent<number>) => result.choose(event.detail, false)}
          @answer=${(event: CustomEvent<TickAnswer>) => visit.ticking.answer(event.detail)}
          @tick=${(event: CustomEvent<Tick>) => visit.tick(event.detail)}
        ></press-set-up-card>
      </div>
    </section>
    ${advice(result, made)}
    ${
      visit.log.events.length === 0
        ? nothing
        : html`<section aria-labelledby="sheets">
          <h2 id="sheets">${say.sheets}</h2>
          <ps-log-sheets .store=${store} .log=${visit.log} .pictures=${pictures} .drawn=${drawn} .offer=${(number: number) => nextOnSheet({ store, visit, log: visit.log, number }, say.whatNext)}></ps-log-sheets>
        </section>`
    }
    ${foundFigures(visit.log, store.project.press, (change) => store.dispatch({ kind: 'set-press', change }))}
    ${haveReady(made)} ${stencilList(made, result)}
    <press-week
      .own=${result.own}
      .week=${result.week}
      .visits=${result.visits}
      .disabled=${running || result.preparing}
      @print=${result.printWeek}
    ></press-week>
  `;
}

/** Which of its screens are not made yet, or that nothing is said of any, and one button that says that they are. */
function unmade({ plan, screenStates, drawerScreens = new Map() }: MadePlan) {
  const keys = [...drawerScreens.keys()].filter((key) => screenStates?.get(key) !== 'made');
  const words = unmadeWords(plan, screenStates);
  if (words === '' && (screenStates !== undefined || keys.length === 0)) return nothing;
  const label = words === '' ? planWords.allAreMade(keys.length) : planWords.theyAreMade(keys.length);
  const all = html`<button @click=${({ currentTarget }: Event) => tellMade(currentTarget, { keys, made: true })}>${label}</button>`;
  return words === ''
    ? html`<p class="soft small">${planWords.nothingSaysWhich(keys.length)} ${all}</p>`
    : html`<p><b>${words}</b> ${keys.length === 0 ? nothing : all}</p>`;
}

/** How good the order is. */
function found(visit: PressVisit, made: MadePlan) {
  const { running, stopped } = visit.run;
  return html`<div>${planHead(made.plan, { running, stopped, longer: () => visit.findLonger() })}${unmade(made)}</div>`;
}

/** What to do with an order that the project has left behind. */
function outOfDate(visit: PressVisit) {
  if (!visit.outOfDate || visit.run.running) return nothing;
  if (visit.asking) return askAnew(visit);
  return html`<p class="stale">${say.outOfDateRecipes} <button @click=${() => visit.find()}>${say.planAgain}</button></p>`;
}

/** What would make the visit fit, or take less: below what is worked from, so that nothing there moves when it comes or goes. */
function advice({ visit, pictures, drawn }: PlanResult, made: MadePlan) {
  const settled = visit.run.running || visit.outOfDate || visit.log.events.length > 0;
  return settled
    ? nothing
    : html`<press-fit-choices .made=${made} @fit=${(event: CustomEvent<FitChoice>) => visit.fit(event.detail)}></press-fit-choices>
      <press-advice
        .made=${made}
        .pictures=${pictures}
        .drawn=${drawn}
        @advice=${(event: CustomEvent<Advice>) => visit.advise(event.detail)}
      ></press-advice>`;
}

/** What is done with the order. @param done set-ups that are ticked all over */
function buttons(
  { store, visit, awake, preparing, asked, stock, visits, choosePapers, atPress, print }: PlanResult,
  made: MadePlan,
  done: number,
) {
  const { running } = visit.run;
  const { cards, setUpsBefore = 0 } = made.plan;
  return html`<div class="row">
    ${awakeBox(awake)}
    <button class="main" ?disabled=${running} @click=${atPress}>${say.atPress}</button>
    <press-papers
      .made=${madeForPaper(made, visit.now)}
      .asked=${asked}
      .stock=${stock}
      .visits=${visits}
      .heading=${store.project.title}
      .outOfDate=${visit.outOfDate}
      .relative=${store.relative}
      .tell=${(sentence: string) => store.tell(sentence)}
      .disabled=${running}
      .preparing=${preparing}
      @choose=${(event: CustomEvent<PaperChoice>) => choosePapers(event.detail)}
      @print=${print}
    ></press-papers>
    ${
      visit.log.events.length > 0
        ? nothing
        : html`<button class="quiet" ?disabled=${running} @click=${() => void visit.bringInLog()}>${say.bringInAnotherDevices}</button>`
    }
    <button ?disabled=${running || visit.log.events.length === 0 || done === cards.length} @click=${() => visit.findRest()}>
      ${say.planRestAroundWhat}
    </button>
    <p>${say.ofSetUpsDone(setUpsBefore + done, setUpsInAll(made.plan))}</p>
  </div>`;
}

/** Asks what becomes of the ticks before a new order is looked for. */
export function askAnew(visit: PressVisit) {
  return html`<p class="stale" role="alert">
    ${say.newOrderStartsNew}
    <button @click=${() => visit.findRest()}>${say.planRest}</button>
    <button @click=${() => visit.find()}>${say.findAnew}</button>
    <button class="quiet" @click=${() => visit.ask(false)}>${say.keepThisOrder}</button>
  </p>`;
}
