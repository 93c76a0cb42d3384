import { html, nothing } from 'lit';
import type { Pull } from '../../engine/stack/types.ts';
import type { AppStore } from '../app-store.ts';
import { say } from '../words/en/bench/room.ts';
import { pullOutline } from './bench-layout.ts';
import { keysWords, readoutWords } from './bench-words.ts';
import './picture/bench-picture.ts';
import type { PullChoice } from './many/pull-choice.ts';
import type { PullDrag } from './picture/bench-picture.ts';
import './picture/place-card.ts';
import type { OtherStack } from './picture/compare-with.ts';
import type { PullBeside } from './picture/place-card.ts';
import type { PlaceReader } from './picture/place-reader.ts';
import type { SheetView } from './picture/sheet-view.ts';

const STEP = 1.5;

export interface Point {
  xMm: number;
  yMm: number;
}

export interface Offset {
  dxMm: number;
  dyMm: number;
}

/** Ways to look at the sheet. */
export interface Looks {
  closer(): void;
  further(): void;
  whole(): void;
}

/** What buttons and keys do with a view. */
export function looksOf(view: SheetView): Looks {
  return { closer: () => view.zoom(STEP), further: () => view.zoom(1 / STEP), whole: () => view.showWhole() };
}

interface BenchTable {
  store: AppStore;
  view: SheetView;
  looks: Looks;
  /** The stack on the Bench, with the pulls that show of it. */
  own: OtherStack;
  /** What it is compared with; null for nothing. */
  other: OtherStack | null;
  /** Pulls of the stack on the Bench. */
  count: number;
  /** Index of the selected pull, below 0 when none is. */
  selectedAt: number;
  /** The state that is played; null when none is. */
  shown: number | null;
  /** Under the pointer; null for nothing. */
  pointed: Point | null;
  editedAt: number | null;
  places: PlaceReader;
  choice: PullChoice;
  /** What the last change changed in the print; '' for nothing. */
  changed: string;
  point(place: Point | null): void;
  nudge(by: Offset): void;
  /** What is selected lies so much further. */
  drag(by: PullDrag): void;
  dragBack(): void;
  /** Brings what is selected over or under a pull. */
  bring(beside: PullBeside): void;
}

/** The stack, and what it is compared with, as large as they fit, and where one is on the sheet. */
export function benchTable(table: BenchTable) {
  const { own, other, looks, pointed, shown, places, store } = table;
  const buttons: [string, string, () => void][] = [
    [say.closer, '+', looks.closer],
    [say.further, '−', looks.further],
    [say.wholeSheet, '0', looks.whole],
  ];
  return html`<div class="pictures">
      ${figure(table, own, true)} ${other === null ? nothing : figure(table, other, false)}
    </div>
    ${
      places.read === null
        ? nothing
        : html`<bench-place-card
          .read=${places.read}
          .relative=${store.relative}
          .together=${table.choice.ids}
          @pull-select=${(event: CustomEvent<string>) => table.choice.one(event.detail)}
          @pull-beside=${(event: CustomEvent<PullBeside>) => table.bring(event.detail)}
          @close=${() => places.want(null)}
        ></bench-place-card>`
    }
    <p class="changed" role="status">${table.changed}</p>
    <div class="under">
      <p class="readout ${pointed === null && shown === null ? 'idle' : ''}">${readoutWords(own.drawer.paper, table.count, shown, pointed)}</p>
      <div class="looks">
        ${buttons.map(([name, key, act]) => html`<button class="quiet" title=${say.key(key)} @click=${act}>${name}</button>`)}
      </div>
    </div>`;
}

/** One stack on its sheet. @param own whether it is the stack on the Bench, which can be changed */
function figure(table: BenchTable, { name, pulls, drawer: studio }: OtherStack, own: boolean) {
  const { store, view, selectedAt } = table;
  const outline = own && table.shown === null ? chosenOutline(table, pulls) : '';
  return html`<figure>
    ${table.other === null ? nothing : html`<figcaption>${name}</figcaption>`}
    <bench-picture
      .drawer=${studio}
      .pulls=${pulls}
      .relative=${store.relative}
      .marked=${store.marked}
      .view=${view}
      .outline=${outline}
      .holds=${own}
      .label=${say.pullsOnMmName(name, pulls.length, studio.paper.widthMm, studio.paper.heightMm)}
      .hint=${own ? keysWords(selectedAt) : say.toCompare(name)}
      .editedAt=${own ? table.editedAt : null}
      @trouble=${(event: CustomEvent<string>) => store.tell(event.detail)}
      @point=${(event: CustomEvent<Point | null>) => table.point(event.detail)}
      .spot=${own ? (table.places.read?.place ?? null) : null}
      @read-place=${(event: CustomEvent<Point>) => own && table.places.want(event.detail)}
      @drag-pulls=${(event: CustomEvent<PullDrag>) => table.drag(event.detail)}
      @drag-back=${() => table.dragBack()}
      @nudge=${(event: CustomEvent<Offset>) => table.nudge(event.detail)}
    ></bench-picture>
  </figure>`;
}

/** Outlines of so many pulls are drawn at most, so that a hand that moves them is followed. */
const MOST_OUTLINES = 12;

function chosenOutline({ choice, own: { drawer: studio }, selectedAt }: BenchTable, pulls: readonly Pull[]): string {
  const { ids } = choice;
  const outlined = ids.size > MOST_OUTLINES ? [pulls[selectedAt]] : pulls.filter(({ id }) => ids.has(id));
  return outlined.map((pull) => pullOutline(pull, studio)).join('');
}
