import { html, nothing } from 'lit';
import type { Pull } from '../../engine/stack/types.ts';
import type { AppStore } from '../app-store.ts';
import { markSwitch } from '../ui/mark-switch.ts';
import '../ui/next/next-button.ts';
import { addToBench, benchSheet } from '../ui/next/next-sheets.ts';
import type { NextChoice } from '../ui/next/what-next.ts';
import { say } from '../words/en/bench/room.ts';
import { compareChoice } from './picture/compare-with.ts';

interface BenchSide {
  store: AppStore;
  /** What the stack is called. */
  name: string;
  pulls: readonly Pull[];
  /** On a narrow page the selected pull comes first, right under the strip. */
  narrow: boolean;
  playing: boolean;
  /** What is compared with, as `otherStack` takes it. */
  beside: string;
  /** The selected pull's panel. */
  selection: unknown;
  addButton: unknown;
  keep(): void;
  build(): void;
  veil(): void;
  compare(chosen: string): void;
  /** Opens the other ways to look. */
  look(): void;
}

/** What stands beside the picture: the stack as a whole, the selected pull, and how it is looked at. */
export function benchSide(side: BenchSide) {
  const { store, narrow, selection } = side;
  return html`<aside class="side" aria-label=${say.stackAndSelectedPull}>
    ${narrow ? selection : nothing}
    ${stackPart(side)}
    ${narrow ? nothing : selection}
    <section class="looking">
      ${compareChoice(side.beside, store.project.recipes, side.compare)}
      <label title=${say.offColoursAsInstrument}>
        <input type="checkbox" role="switch" .checked=${store.relative} @change=${(event: Event) => store.setRelative((event.target as HTMLInputElement).checked)} />
        ${say.showPaperAsWhite}
      </label>
      ${markSwitch(store)}
      <button ?disabled=${side.pulls.length === 0} @click=${side.look}>${say.filmsApartTwoPrints}</button>
    </section>
  </aside>`;
}

function stackPart({ store, name, pulls, narrow, playing, addButton, keep, build, veil }: BenchSide) {
  const { paper } = store.project.drawer;
  const bare = pulls.length === 0;
  return html`<section class="stack">
    <h2>${name}</h2>
    <p class="soft small">${say.pullsOnMm(pulls.length, paper.widthMm, paper.heightMm)}</p>
    <div class="row act">
      <button class="main" ?disabled=${bare} @click=${keep}>${say.keepAsRecipe}</button>
      <button title=${say.orHoldKeyB} aria-pressed=${playing} ?disabled=${bare} @click=${build}>${say.buildUp}</button>
      <button ?disabled=${bare} @click=${veil}>${say.findVeil}</button>
      <ps-next .sheetOf=${() => benchSheet(store)} @take=${({ detail }: CustomEvent<NextChoice>) => addToBench(store, detail)}></ps-next>
      ${narrow && !bare ? addButton : nothing}
    </div>
  </section>`;
}
