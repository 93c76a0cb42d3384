import { html } from 'lit';
import { withFilms } from '../../../engine/explore/prepare/frames.ts';
import type { FilmSettings } from '../../../engine/output/film/settings.ts';
import type { StockSheet } from '../../../engine/visit/stencils/cut-list.ts';
import type { AppStore } from '../../app-store.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { stencilBlocks } from '../../output/papers/stencil-blocks.ts';
import { visitFilms } from '../../ui/films/film-offers.ts';
import '../../ui/cautions.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import '../../ui/films/films-dialog.ts';
import '../../ui/kit/fold.ts';
import '../../ui/kit/number-field.ts';
import { wideTable } from '../../ui/kit/wide-table.ts';
import { say } from '../../words/en/press/plan.ts';
import { tableHtml } from '../sheet/paper-html.ts';

/** A sheet of paper as it is bought is taken for a mistake beyond these, mm. */
const STOCK_MM = { least: 50, most: 5000 };

/** What goes with the list. */
interface StencilTalk {
  store: AppStore;
  stock: StockSheet;
  chooseStock: (stock: StockSheet) => void;
}

/** Stencils, frames, exposure and paper to prepare before a visit, as they stand in its papers. */
export function stencilList(made: MadePlan, { store, stock, chooseStock: choose }: StencilTalk) {
  const side = (name: 'widthMm' | 'heightMm', label: string) => html`<ps-number
    .label=${label}
    unit="mm"
    .value=${stock[name]}
    .min=${STOCK_MM.least}
    .max=${STOCK_MM.most}
    @pick=${({ detail }: NumberPick) => choose({ ...stock, [name]: detail })}
  ></ps-number>`;
  const note = (keys: readonly string[]): void => {
    const ids = keys.flatMap((key) => made.drawerScreens?.get(key) ?? []);
    store.dispatch({ kind: 'set-frames', frames: withFilms(store.project.frames, ids) });
  };
  return html`<section class="stencils">
    <ps-fold ruled label=${say.stencilsToPrepareAnd}>
      <ps-films label=${say.filmsOfTheseStencils} .offers=${() => visitFilms(made)} .heading=${store.project.title} .settings=${store.project.films} .note=${made.drawerScreens === undefined ? undefined : note} .keep=${(films: FilmSettings) => store.dispatch({ kind: 'set-films', films })} .tell=${(sentence: string) => store.tell(sentence)}></ps-films>
      <div class="row stock">
        ${side('widthMm', say.paperAsItIs)} ${side('heightMm', say.height)}
        <label
          >${say.grainAlong}
          <select aria-label=${say.grainOfPaperAs} @change=${(event: Event) => choose({ ...stock, grain: (event.target as HTMLSelectElement).value as StockSheet['grain'] })}>
            <option value="width" .selected=${stock.grain === 'width'}>${say.theWidth}</option>
            <option value="height" .selected=${stock.grain === 'height'}>${say.theHeight}</option>
          </select></label
        >
      </div>
      ${stencilBlocks(made, stock).map((block) =>
        block.kind === 'table'
          ? wideTable(say.stencilsAndPaper, tableHtml(block))
          : block.kind === 'text' && block.soft === true
            ? html`<p class="soft small">${block.text}</p>`
            : '',
      )}
      <ps-cautions topic="screens"></ps-cautions>
    </ps-fold>
  </section>`;
}
