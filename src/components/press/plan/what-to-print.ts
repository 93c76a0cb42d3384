import { html, nothing } from 'lit';
import { MOST_SHEETS } from '../../../engine/base/limits.ts';
import type { PressSettings, VisitRun } from '../../../engine/project/types.ts';
import { visitInputOf } from '../../../engine/project/visit-input.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import type { AppStore } from '../../app-store.ts';
import type { StatePictures } from '../../ui/print/state-pictures.ts';
import { say } from '../../words/en/press/plan.ts';
import './studio-figures.ts';
import './visit-runs.ts';
import '../../ui/kit/empty.ts';
import '../../ui/kit/progress.ts';
import type { PlanRun } from './plan-run.ts';

const NO_SHEETS = say.noRecipeHasSheets;

/** What the room shows before anything can be printed: where recipes come from. */
export function nothingKept(store: AppStore) {
  return html`<ps-empty heading=${say.nothingKeptYet}>
    ${say.visitPrintsKeptRecipes}
    <button slot="actions" class="main" @click=${() => store.go('wall')}>${say.goToWall}</button>
    <button slot="actions" @click=${() => store.go('bench')}>${say.goToBench}</button>
  </ps-empty>`;
}

/**
 * How many sheets of which recipe, by which studio figures, and what starts and stops the search.
 * @param drawn changes when a picture has arrived
 * @param asking what is asked before the search may start, `nothing` when it may
 * @param find starts the search
 */
export function whatToPrint(
  store: AppStore,
  { run, pictures, drawn, asking, find }: { run: PlanRun; pictures: StatePictures; drawn: number; asking: unknown; find: () => void },
) {
  const { project } = store;
  const total = visitInputOf(project).runs.reduce((sum, { sheets, overs = 0, proofs = 0 }) => sum + sheets + overs + proofs, 0);
  // Said at once: the worker that would say it is started first.
  const start = (): void => (total === 0 ? store.refuse(NO_SHEETS, 'pull order') : find());
  return html`<section aria-labelledby="what">
    <h2 id="what">${say.whatToPrint}</h2>
    <press-visit-runs
      .recipes=${project.recipes}
      .runs=${project.visit}
      .press=${project.press}
      .pictures=${pictures}
      .drawn=${drawn}
      @cut=${(event: CustomEvent<Recipe[]>) => cutPrint(store, event.detail)}
      @runs=${(event: CustomEvent<VisitRun[]>) => store.dispatch({ kind: 'set-visit', runs: event.detail })}
    ></press-visit-runs>
    <div class="start">
      ${startButton(run, start)}
      ${run.running ? howFar(run) : nothing}
      <p class="total">${say.sheetsInAll(total)}</p>
      ${total === 0 ? html`<p class="soft">${NO_SHEETS}</p>` : nothing}
      ${asking}
      ${total > MOST_SHEETS ? html`<p class="warn">${say.oneVisitHoldsSheets(MOST_SHEETS)}</p>` : nothing}
    </div>
    <press-studio-figures
      .press=${project.press}
      @figures=${(event: CustomEvent<Partial<PressSettings>>) => store.dispatch({ kind: 'set-press', change: event.detail })}
    ></press-studio-figures>
  </section>`;
}

/** Puts the sections of a print in its stead. */
function cutPrint(store: AppStore, sections: Recipe[]): void {
  const [first] = sections;
  if (first?.parent !== undefined) store.dispatch({ kind: 'cut-recipe', recipe: first.parent, sections });
}

/** First which pulls meet, then the search itself: long stacks of drawings take a while before any order is there. */
function howFar({ measured, worked }: PlanRun) {
  const first = measured < 1;
  const share = first ? measured : worked;
  const words = `${first ? `${say.seeingWhichMeet} ` : ''}${Math.round(100 * share)} %`;
  return html`<ps-progress label=${first ? say.seeingWhichMeet : say.lookingForOrder} words=${words} .most=${1} .value=${share} stop=""></ps-progress>`;
}

/** One button that starts and then stops, so that what was pressed keeps the focus. */
function startButton(run: PlanRun, find: () => void) {
  const press = (event: MouseEvent): void => {
    // The second press of a double click would stop what the first one started.
    if (event.detail > 1) return;
    if (run.running) run.stop();
    else find();
  };
  return html`<button class=${run.running ? '' : 'main'} @click=${press}>${run.running ? say.stop : say.findPullOrder}</button>`;
}
