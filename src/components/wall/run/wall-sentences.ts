import { html, nothing } from 'lit';
import { entryAt } from '../../../engine/base/at.ts';
import type { Problem } from '../../../engine/base/error.ts';
import type { AppStore } from '../../app-store.ts';
import { fetchPart } from '../../ui/kit/late.ts';
import { putOnBench } from '../../ui/put-on-bench.ts';
import { say } from '../../words/en/wall/run.ts';
import { type DerivedAsk, MOST_STEPS, withSteps } from './derived-ask.ts';
import type { WallRun } from './wall-run.ts';

/**
 * Which prints the wall comes from, when it comes from prints.
 * @param find hangs another such wall
 */
export function derivedSentence(derived: DerivedAsk | null, find: (ask: DerivedAsk) => void) {
  if (derived === null) return nothing;
  return html`<p class="note" role="status">${derived.sentence}</p>
    ${
      derived.request.kind === 'between'
        ? html`<label class="note steps">
          ${say.inStepsAtMost}
          <input
            type="number"
            min="1"
            max=${MOST_STEPS}
            .value=${String(derived.request.count)}
            @change=${(event: Event) => {
              const { valueAsNumber } = event.target as HTMLInputElement;
              if (valueAsNumber >= 1) find(withSteps(derived, valueAsNumber));
            }}
          />
        </label>`
        : nothing
    }`;
}

/** What the sentence below the count is made from. */
export interface WallStanding {
  run: WallRun;
  store: AppStore;
  /** What cannot be met of the settings. */
  problems: readonly Problem[];
  /** Leads to the first setting that cannot be met. */
  showProblem: () => void;
}

/** What there is to say of how the wall stands: why it failed, or why it is not what the settings ask for. */
export function wallSentence({ run, store, problems, showProblem }: WallStanding) {
  if (run.state === 'failed')
    return html`<p class="note" role="alert">${run.reason} <button class="quiet where" @click=${() => run.again()}>${say.tryAgain}</button></p>`;
  if (run.state === 'running') {
    const candidates = run.found > 0 ? null : run.search?.candidates;
    return candidates == null
      ? nothing
      : html`<p class="note" role="status">${say.firstPrintIsChosen(candidates.drawn, candidates.of)}</p>`;
  }
  if (problems.length > 0) {
    const away = problems.filter(({ where }) => where === 'drawer' || where.startsWith('bench'));
    if (away.length > 0) return html`<p class="note" role="alert">${entryAt(away, 0).message}</p>`;
    return html`<p class="note">${say.theseSettingsCannotBe} <button class="quiet where" @click=${showProblem}>${say.showWhere}</button></p>`;
  }
  if (run.startedFromOther(store.project.bench)) return html`<p class="note">${say.thesePrintsCameFrom}</p>`;
  if (run.clash !== null) {
    fetchPart(
      () => import('../settings/wall-clash.ts'),
      (sentence) => store.trouble('wall', sentence),
    );
    return html`<wall-clash .store=${store} .clash=${run.clash}></wall-clash>`;
  }
  if (run.state === 'stopped') return html`<p class="note">${say.stopped}</p>`;
  if (run.reason !== '') return html`<p class="note">${run.reason}</p>`;
  return nothing;
}

/** What can be held: without a stack there is nothing, only screens to begin with. */
export function holdsSentence(store: AppStore) {
  const { drawer, bench, explore } = store.project;
  const { length } = drawer.screens;
  if (bench.length > 0) return html`<p class="soft small">${say.stackOnBenchLast}</p>`;
  if (length === 0) return html`<p class="soft small">${say.benchIsEmptySo}</p>`;
  const most = Math.min(explore.bringIn, length);
  return html`<p class="soft small">${say.benchIsEmptySoNothing(most, length)}</p>
    <button @click=${() => putOnBench(store, drawer.screens)}>${length === 1 ? say.putScreenOnBench : say.putAllOnBench(length)}</button>`;
}

/**
 * Said in the middle of an empty wall.
 * @param bare whether the Drawer holds no screens
 */
export function emptyNote(run: WallRun, bare: boolean): string {
  if (bare) return say.wallHangsPrintsMade;
  if (run.state !== 'done') return '';
  if (run.clash === null || run.clash === 'looking') return say.noPrintCameOf;
  return say.noPrintCameOfThese;
}
