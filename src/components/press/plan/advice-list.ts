import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import { type AdviceFigures, adviceFigures, isLess } from '../../../engine/visit/advice/advice-figures.ts';
import type { Advice } from '../../../engine/visit/advice/advice.ts';
import { type AdviceGoal, bestFirst } from '../../../engine/visit/advice/best-first.ts';
import type { Edit } from '../../../engine/visit/advice/edits.ts';
import type { PressPlan } from '../../../engine/visit/visit.ts';
import { engineFor } from '../../../workers/client/client.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/kit/number-field.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import '../../ui/kit/progress.ts';
import { printImage } from '../../ui/print/print-image.ts';
import type { StatePictures } from '../../ui/print/state-pictures.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/press/plan.ts';
import { adviceStyle } from './advice-style.ts';
import { adviceWords, changeWords, savedWords } from './advice-words.ts';

const GOALS: readonly { goal: AdviceGoal; words: string }[] = [
  { goal: 'mounts', words: say.fewestScreenMounts },
  { goal: 'setUps', words: say.fewestSetUps },
  { goal: 'days', words: say.fewestDaysAndHours },
  { goal: 'inks', words: say.fewestInksOnOne },
];

/**
 * What could be changed in a visit so that it takes less, each planned before it is shown, best first
 * for what somebody wants least of.
 * @fires advice CustomEvent<Advice>: the one to take
 */
@customElement('press-advice')
export class AdviceList extends LitElement {
  static override styles = [controls, adviceStyle];

  @property({ attribute: false }) made!: MadePlan;
  @property({ attribute: false }) pictures!: StatePictures;
  /** Changes when a picture has arrived, so that the list is drawn again. */
  @property({ type: Number }) drawn = 0;
  @state() private goal: AdviceGoal = 'mounts';
  /** What was found so far, in the order in which it was. */
  @state() private found: readonly Advice[] = [];
  /** The best order known of the visit as it stands, planned with as much work as what was found; null = the one at hand. */
  @state() private standing: PressPlan | null = null;
  /** What advice is measured against; null before there is any. */
  @state() private least: AdviceFigures | null = null;
  @state() private asked = false;
  /** The recipe of which fewer sheets are tried, by run, and how many fewer. */
  @state() private run = 0;
  @state() private fewer = 1;
  private readonly work = new Work<Advice[]>(this);

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('made') || changed.get('made') === undefined) return;
    this.work.clear();
    this.found = [];
    this.standing = null;
    this.least = null;
    this.asked = false;
  }

  private look(edits?: Edit[]): void {
    const { input, plan } = this.made;
    this.asked = true;
    if (edits === undefined) this.found = [];
    void this.work.start((control) =>
      engineFor('plan').advise(
        { input, plan, ...(edits === undefined ? {} : { edits }) },
        {
          signal: control.signal,
          onProgress: ({ share, found, standing, before }) => {
            this.least = before;
            if (standing !== null) this.standing = standing;
            if (found !== null) this.found = [...this.found, found];
            control.onProgress(share);
          },
        },
      ),
    );
  }

  private pair({ changes, input }: Advice) {
    const [most] = changes;
    if (most === undefined) return nothing;
    const was = entryAt(this.made.input.runs, most.run).recipe;
    const is = entryAt(input.runs, most.run).recipe;
    const shape = was.paper.widthMm / was.paper.heightMm;
    return html`<div class="pair">
      ${printImage(this.pictures.of(was, was.pulls), say.asItIs(was.title), shape)}
      <span aria-hidden="true">→</span>
      ${printImage(this.pictures.of(is, is.pulls), say.asItWouldBe(was.title), shape)}
    </div>`;
  }

  /** What advice is measured against. */
  private get asItStands(): AdviceFigures {
    return this.least ?? adviceFigures(this.made.plan);
  }

  /** The same prints in a better order that the search came by, or in several of which each has less of something. */
  private again() {
    const { made } = this;
    const standing = this.standing ?? made.plan;
    const was = adviceFigures(made.plan);
    if (!isLess(this.asItStands, was)) return nothing;
    const figures = adviceFigures(standing);
    const advice: Advice = { edits: [], input: made.input, plan: standing, figures, changes: [], deltaE: 0 };
    return html`<div class="ask">
      <p>
        ${say.plannedAnewVisitAs(savedWords(was, this.asItStands))}
      </p>
      ${isLess(figures, was) ? this.doIt(advice, say.takeBetterOrder) : nothing}
    </div>`;
  }

  private doIt(advice: Advice, words: string, label = words) {
    return html`<button aria-label=${label} @click=${() => this.dispatchEvent(new CustomEvent<Advice>('advice', { detail: advice }))}>${words}</button>`;
  }

  private row(advice: Advice) {
    const { made } = this;
    const words = adviceWords(advice, made);
    return html`<li>
      <div class="words">
        <p><b>${words}</b></p>
        <p>${savedWords(this.asItStands, advice.figures)}</p>
        <p class="soft small">${changeWords(advice, made)}</p>
      </div>
      ${this.pair(advice)}
      ${this.doIt(advice, say.doIt, say.doItWords(words))}
    </li>`;
  }

  /** Fewer sheets of a recipe, as many as somebody likes. */
  private fewerSheets() {
    const { runs } = this.made.input;
    const most = (runs[this.run]?.sheets ?? 1) - 1;
    return html`<div class="ask fewer">
      <ps-number label=${say.sheetsFewer} whole min="1" max=${Math.max(1, most)} .value=${Math.min(this.fewer, Math.max(1, most))} @pick=${(event: NumberPick) => (this.fewer = event.detail)}></ps-number>
      <label
        >${say.of}
        <select aria-label=${say.recipeOfWhichFewer} @change=${(event: Event) => (this.run = Number((event.target as HTMLSelectElement).value))}>
          ${runs.map(({ recipe, sheets }, run) => html`<option value=${run} ?selected=${run === this.run}>${say.sheets(recipe.title, sheets)}</option>`)}
        </select></label
      >
      <button ?disabled=${most < 1 || this.work.running} @click=${() => this.look([{ kind: 'sheets', run: this.run, fewer: Math.min(this.fewer, most) }])}>${say.planWithFewer}</button>
    </div>`;
  }

  private results() {
    const { running, failure, progress } = this.work;
    if (failure !== '') return html`<p class="soft">${failure}</p>`;
    const sorted = bestFirst(this.found, this.asItStands, this.goal);
    const words = sorted.length === 0 ? say.nothingBetterWasFound : say.foundWaysMostFor(sorted.length);
    return html`${
      running
        ? html`<div class="ask"><ps-progress label=${say.planningWhatCouldBe} words="${Math.round(100 * progress)} %" .value=${progress} @stop=${() => this.work.stop()}></ps-progress></div>`
        : html`<p class="soft" role="status">${words}</p>`
    }
      ${this.again()}
      <ol aria-label=${say.advice}>
        ${sorted.map((advice) => this.row(advice))}
      </ol>`;
  }

  override render() {
    return html`<h2>${say.whatPrinterWouldChange}</h2>
      <p class="soft small">${say.eachWayIsPlanned}</p>
      <div class="ask">
        <label
          >${say.rather}
          <select @change=${(event: Event) => (this.goal = (event.target as HTMLSelectElement).value as AdviceGoal)}>
            ${GOALS.map(({ goal, words }) => html`<option value=${goal} ?selected=${goal === this.goal}>${words}</option>`)}
          </select></label
        >
        <button ?disabled=${this.work.running} @click=${() => this.look()}>${say.lookForAdvice}</button>
      </div>
      ${this.fewerSheets()} ${this.asked ? this.results() : nothing}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-advice': AdviceList;
  }
}
