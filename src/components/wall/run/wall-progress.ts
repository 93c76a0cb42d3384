import { html, nothing } from 'lit';
import { MAX_VARIANTS } from '../../../engine/explore/settings/setting-table.ts';
import { numberLocale } from '../../../engine/words/language.ts';
import { say } from '../../words/en/wall/run.ts';
import { say as settings } from '../../words/en/wall/settings.ts';
import { placePicture } from '../settings/place-pictures.ts';
import type { WallRun } from './wall-run.ts';

/** How many more are found at a time. */
export const MORE = 200;

/** What the count and the button beside it are made from. */
export interface WallProgress {
  run: WallRun;
  /** How many prints the settings ask for. */
  count: number;
  /** Whether the settings are other than those the wall was found from. */
  stale: boolean;
  /** Whether the settings cannot be met. */
  blocked: boolean;
  /** Whether all that were asked for hang, and more can be. */
  complete: boolean;
  /** On a narrow page, whether the settings are unfolded; null on a wide one, where they always are. */
  unfolded: boolean | null;
  fold(): void;
  /** Unfolds them where they say how pulls lie. */
  showLying(): void;
  find(): void;
  findMore(): void;
}

/** True when all that were asked for hang, and more can be. */
export function isComplete({ run, stale, blocked }: Pick<WallProgress, 'run' | 'stale' | 'blocked'>): boolean {
  const { state, derived, found, search } = run;
  const all = found > 0 && found === search?.inputs.explore.count;
  return state === 'done' && derived === null && !stale && all && found + MORE <= MAX_VARIANTS && !blocked;
}

/** How many prints hang of how many, and the button that finds them. */
export function wallProgress(progress: WallProgress) {
  const { run, count, unfolded, complete } = progress;
  const of = say.of((run.asked === 0 ? count : run.asked).toLocaleString(numberLocale()));
  return html`<div class="progress">
    <p class="count">
      <b>${run.found.toLocaleString(numberLocale())}</b>${complete && unfolded !== null ? nothing : html` <span class="soft">${of}</span>`}
    </p>
    ${
      unfolded === null
        ? nothing
        : html`${
            unfolded
              ? nothing
              : html`<button class="lying" title=${settings.howPullsLie} aria-label=${settings.howPullsLie} @click=${() => progress.showLying()}>
                ${placePicture('anywhere')}
              </button>`
          }
          <button aria-expanded=${unfolded} aria-controls="settings" @click=${() => progress.fold()}>
          ${unfolded ? say.foldSettings : say.settings}
        </button>`
    }
    ${button(progress)}
  </div>`;
}

/** Heeds one of two quick clicks: the other would undo what it began. */
function once(act: () => void): (event: MouseEvent) => void {
  return ({ detail }) => {
    if (detail < 2) act();
  };
}

function button({ run, complete, stale, blocked, unfolded, ...progress }: WallProgress) {
  if (run.state === 'running') return html`<button @click=${once(() => run.stop())}>${say.stop}</button>`;
  if (complete)
    return html`<button @click=${once(() => progress.findMore())}>${unfolded === null ? say.findMore(MORE) : say.findMore2}</button>`;
  return html`<button class=${stale || run.state === 'idle' ? 'main' : ''} ?disabled=${blocked} @click=${once(() => progress.find())}>
    ${run.derived === null ? say.findPrints : say.backToAll}
  </button>`;
}

/** The same as a line that fills. */
export function wallProgressLine({ found, asked, state }: WallRun) {
  const share = asked > 0 ? Math.min(1, found / asked) : 0;
  return html`<div class="line" role="progressbar" aria-label=${say.printsFound} aria-valuemin="0" aria-valuemax=${asked} aria-valuenow=${found}><i style="transform:scaleX(${share})" ?data-running=${state === 'running'}></i></div>`;
}
