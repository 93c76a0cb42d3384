import { html } from 'lit';
import type { OverprintFit } from '../../../engine/ink/fit/fit-overprints.ts';
import type { Ink } from '../../../engine/ink/types.ts';
import '../../ui/kit/fold.ts';
import { fitCharts } from './target-charts.ts';

const MOST_NAMES = 8;

/** A fit to show. */
export interface FoundFit {
  fit: OverprintFit;
  /** Names of the squares, in the order of the fit. */
  names: readonly string[];
  /** The inks that it changes. */
  changed: readonly Ink[];
  /** Whether inks, paper or readings are others by now. */
  outdated: boolean;
}

/**
 * What a fit gives, square by square, and the button that takes it over.
 * @param use called when it is to be taken over
 */
export function foundFit({ fit, names, changed, outdated }: FoundFit, use: () => void) {
  return html`<section class="found" aria-label="What the fit gives">
    ${fitCharts(fit, names)}
    <ps-fold quiet label="Every square">
      <div class="scroll">
        <table>
          <thead><tr><th scope="col">Square</th><th scope="col">ΔE before</th><th scope="col">ΔE after</th></tr></thead>
          <tbody>
            ${fit.squares.map((square, i) => html`<tr><th scope="row">${names[i]}</th><td>${square.beforeDeltaE.toFixed(1)}</td><td>${square.afterDeltaE.toFixed(1)}</td></tr>`)}
          </tbody>
        </table>
      </div>
    </ps-fold>
    <div class="row">
      <button class="main" ?disabled=${outdated} @click=${use}>Use the fitted inks</button>
      <span class="small soft">${outdated ? 'Inks, paper or readings have changed since; fit again for another look.' : `Changes ${namesOf(changed)}: they count as measured from then on.`}</span>
    </div>
  </section>`;
}

/** A few names, and how many more. */
function namesOf(inks: readonly Ink[]): string {
  const names = inks.slice(0, MOST_NAMES).map(({ name }) => name);
  return inks.length > MOST_NAMES ? `${names.join(', ')} and ${inks.length - MOST_NAMES} more` : names.join(', ');
}
