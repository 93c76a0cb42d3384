import { css, html, LitElement } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import { STROKES } from '../../../engine/base/limits.ts';
import { DEFAULT_SOLIDS } from '../../../engine/ink/film/dry-film.ts';
import { filmFactor } from '../../../engine/ink/film/film-factor.ts';
import { filmFigures } from '../../../engine/ink/film/film-figures.ts';
import { meshName } from '../../../engine/ink/film/mesh-choices.ts';
import { MESH_TABLE } from '../../../engine/ink/film/mesh-table.ts';
import { meshOpenArea, meshOpeningUm, meshVolumeCm3PerM2, type Mesh } from '../../../engine/ink/film/mesh.ts';
import '../../ui/kit/fold.ts';
import '../../ui/kit/number-field.ts';
import type { Ink } from '../../../engine/ink/types.ts';
import { fixed } from '../../../engine/words/language.ts';
import type { AppStore } from '../../app-store.ts';
import { controls } from '../../ui/controls-style.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import '../mesh/mesh-select.ts';
import { closeStackHost } from '../../ui/layout-style.ts';
import { say } from '../../words/en/inks/shelf.ts';

// As last looked at: the press is the same one for every ink.
const last: { mesh: Mesh | null; strokes: number } = { mesh: null, strokes: 1 };

/** The mesh an ink was characterised on, and the film that a mesh and strokes leave. Sends `mesh` and `solids`. */
@customElement('ink-film')
export class InkFilm extends LitElement {
  static override styles = [
    controls,
    closeStackHost,
    css`
      .fields {
        display: flex;
        flex-wrap: wrap;
        gap: var(--space-5) var(--space-7);
      }
      dl {
        display: grid;
        grid-template-columns: 1fr auto;
        gap: var(--space-2) var(--space-7);
        margin: 0;
      }
      dt {
        color: var(--ink-soft);
      }
      dd {
        margin: 0;
        text-align: right;
      }
      .wide {
        overflow-x: auto;
      }
      ps-fold {
        font-size: var(--type-small);
      }
      table {
        width: 100%;
        margin-top: var(--space-4);
        border-collapse: collapse;
        font-size: var(--type-small);
      }
      th,
      td {
        padding: var(--space-2) 0 var(--space-2) var(--space-4);
        text-align: right;
        font-weight: 400;
      }
      th:first-child {
        text-align: left;
        padding-left: 0;
        white-space: nowrap;
      }
      thead th {
        color: var(--ink-soft);
        vertical-align: bottom;
        border-bottom: 1px solid var(--line);
      }
      .sources {
        display: grid;
        gap: var(--space-2);
        margin: var(--space-4) 0 0;
        padding-left: var(--space-7);
      }
    `,
  ];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) ink!: Ink;
  @state() private mesh: Mesh | null = last.mesh;
  @state() private strokes = last.strokes;

  protected override willUpdate(): void {
    last.mesh = this.mesh;
    last.strokes = this.strokes;
  }

  override render() {
    const { drawer: studio, press } = this.store.project;
    const own = this.ink.mesh ?? null;
    const solids = this.ink.solids ?? DEFAULT_SOLIDS;
    const mesh = this.mesh ?? own ?? studio.screens[0]?.mesh ?? entryAt(MESH_TABLE, 1).mesh;
    const figures = filmFigures({ mesh, strokes: this.strokes, strokeGain: studio.strokeGain, transfer: press.transfer, solids });
    return html`
      <mesh-select label=${say.itsColourWasFound} none=${say.notKnown} .mesh=${own} .screens=${studio.screens} @pick=${(event: CustomEvent<Mesh | null>) => this.dispatchEvent(new CustomEvent<Mesh | null>('mesh', { detail: event.detail }))}></mesh-select>
      ${own === null ? html`<p class="small soft">${say.withoutItFilmIs}</p>` : ''}
      <div class="fields" role="group" aria-label=${say.whatItIsPulled}>
        <mesh-select label=${say.pulledThroughMesh} .mesh=${mesh} .screens=${studio.screens} @pick=${(event: CustomEvent<Mesh | null>) => (this.mesh = event.detail)}></mesh-select>
        <ps-number label=${say.strokes2} min=${STROKES.least} max=${STROKES.most} step="1" decimals="0" .value=${this.strokes} @pick=${(event: NumberPick) => (this.strokes = Math.round(event.detail))}></ps-number>
        <ps-number label=${say.reachesPaper} unit="%" min="10" max="100" step="5" decimals="0" .value=${press.transfer * 100} @pick=${(event: NumberPick) => this.store.dispatch({ kind: 'set-press', change: { transfer: event.detail / 100 } })}></ps-number>
        <ps-number label=${say.solidsByVolume} unit="%" min="1" max="100" step="1" decimals="0" .value=${solids * 100} @pick=${(event: NumberPick) => this.dispatchEvent(new CustomEvent<number>('solids', { detail: event.detail / 100 }))}></ps-number>
      </div>
      <dl aria-label=${say.inkFilm}>
        <dt>${say.openingOpenArea}</dt>
        <dd>${fixed(figures.openingUm, 0)} µm, ${fixed(figures.openAreaPct, 0)} %</dd>
        <dt>${say.theoreticalInkVolume}</dt>
        <dd>${fixed(figures.volumeCm3PerM2, 1)} cm³/m²</dd>
        <dt>${say.wetFilm}</dt>
        <dd>${fixed(figures.wetUm, 1)} µm</dd>
        <dt>${say.dryFilm}</dt>
        <dd>${fixed(figures.dryUm, 1)} µm</dd>
        ${own === null ? '' : html`<dt>${say.againstOneStrokeOn(meshName(own))}</dt><dd>× ${fixed(filmFactor(this.ink, mesh, this.strokes, studio.strokeGain), 2)}</dd>`}
      </dl>
      <p class="small soft">${say.fromMemory50To}</p>
      <ps-fold quiet label=${say.meshTable}>
        <div class="wide">
          <table>
            <thead>
              <tr><th scope="col">${say.mesh}</th><th scope="col">${say.opening}<br />µm</th><th scope="col">${say.open}<br />%</th><th scope="col">${say.volume}<br />cm³/m²</th><th scope="col">${say.source}</th></tr>
            </thead>
            <tbody>
              ${MESH_TABLE.map(
                ({ label, mesh: each, source }) => html`<tr>
                  <th scope="row">${label}</th>
                  <td>${fixed(meshOpeningUm(each), 0)}</td>
                  <td>${fixed(meshOpenArea(each) * 100, 0)}</td>
                  <td>${fixed(meshVolumeCm3PerM2(each), 1)}</td>
                  <td title=${source}>${SOURCES.indexOf(source) + 1}</td>
                </tr>`,
              )}
            </tbody>
          </table>
        </div>
        <ol class="sources small soft">
          ${SOURCES.map((source) => html`<li>${source}</li>`)}
        </ol>
      </ps-fold>
    `;
  }
}

const SOURCES = [...new Set(MESH_TABLE.map(({ source }) => source))];

declare global {
  interface HTMLElementTagNameMap {
    'ink-film': InkFilm;
  }
}
