import { html, nothing } from 'lit';
import type { AppStore } from '../app-store.ts';
import { freeNeighbours } from '../ui/print/graph/order-graph-layout.ts';
import '../ui/print/state-strip.ts';
import type { PullAlso, PullMove } from '../ui/print/state-strip.ts';
import { say } from '../words/en/bench/room.ts';
import { stateSize } from './bench-layout.ts';
import type { PullChoice } from './many/pull-choice.ts';
import type { StripPictures } from './picture/strip-pictures.ts';

/** From so many states on they can be shown all at once. */
const COMPACT_FROM = 8;

interface BenchStrip {
  store: AppStore;
  choice: PullChoice;
  pictures: StripPictures;
  narrow: boolean;
  /** The state that is played; null when none is. */
  shown: number | null;
  /** Whether all states are shown at once, small. */
  compact: boolean;
  /** Whether each click takes a state to those selected, or from them. */
  several: boolean;
  addButton: unknown;
  setCompact(compact: boolean): void;
  setSeveral(several: boolean): void;
  move(move: PullMove): void;
  remove(pull: string): void;
}

/** The states of the stack, and how they are shown and selected. */
export function benchStrip(strip: BenchStrip) {
  const { store, choice, pictures, narrow, compact, several } = strip;
  const { drawer: studio, explore, bench: pulls } = store.project;
  const { edges } = pictures;
  return html`<div class="strip">
    ${pulls.length < 2 ? nothing : stripWays(strip)}
    <ps-state-strip
      .pulls=${pulls}
      .drawer=${studio}
      .pictures=${pictures.pictures}
      .selected=${store.selectedPull}
      .together=${choice.ids}
      .compact=${compact}
      .several=${several}
      .freeSwaps=${edges === null ? [] : freeNeighbours(pulls.length, edges, explore.minDeltaE)}
      .minDeltaE=${explore.minDeltaE}
      .shown=${strip.shown ?? -1}
      .width=${stateSize(studio.paper, narrow).widthPx}
      @pull-select=${(event: CustomEvent<string>) => choice.one(event.detail)}
      @pull-also=${(event: CustomEvent<PullAlso>) => choice.also(event.detail)}
      @pull-move=${(event: CustomEvent<PullMove>) => strip.move(event.detail)}
      @pull-remove=${(event: CustomEvent<string>) => strip.remove(event.detail)}
    >
      ${pulls.length === 0 || narrow || compact ? nothing : strip.addButton}
    </ps-state-strip>
  </div>`;
}

function stripWays({ store, choice, compact, several, narrow, addButton, setCompact, setSeveral }: BenchStrip) {
  const { bench: pulls } = store.project;
  const { size } = choice.ids;
  const toggle = (words: string, on: boolean, set: (on: boolean) => void) =>
    html`<button class="quiet" aria-pressed=${on} @click=${() => set(!on)}>${words}</button>`;
  return html`<div class="ways" role="group" aria-label=${say.states}>
    ${pulls.length < COMPACT_FROM ? nothing : toggle(say.allAtOnce(pulls.length), compact, setCompact)}
    ${toggle(say.selectSeveral, several, setSeveral)}
    <button class="quiet" @click=${() => choice.all(pulls.map(({ id }) => id))}>${say.selectAll}</button>
    ${size < 2 ? nothing : html`<span class="soft small">${say.selected(size)}</span>`}
    ${compact && !narrow ? html`<span class="fill"></span>${addButton}` : nothing}
  </div>`;
}
