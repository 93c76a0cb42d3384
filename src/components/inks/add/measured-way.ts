import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { defined, entryAt } from '../../../engine/base/at.ts';
import type { CgatsSample } from '../../../engine/ink/cgats/read-cgats.ts';
import { bandWords } from '../../../engine/ink/characterise/band-words.ts';
import { CARD_BLACK, CARD_WHITE } from '../../../engine/ink/characterise/card.ts';
import type { InkDraft } from '../../../engine/ink/characterise/ink-draft.ts';
import { type SampledInk, inkFromSamples } from '../../../engine/ink/characterise/ink-from-samples.ts';
import { sampleSwatch } from '../../../engine/ink/characterise/sample-colour.ts';
import './cgats-file.ts';
import { guessRoles, type SampleRoles, STANDARD_CARD } from '../../../engine/ink/characterise/sample-roles.ts';
import type { Surface } from '../../../engine/ink/film/printing.ts';
import { type Swatch, swatchOf } from '../../../engine/ink/film/swatch.ts';
import { fixed } from '../../../engine/words/language.ts';
import '../../ui/kit/fold.ts';
import { controls } from '../../ui/controls-style.ts';
import { say } from '../../words/en/inks/add.ts';
import { markStyles, swatchTemplate } from '../overprint/marked-swatch.ts';
import { curveStyles, twoCurves } from '../shelf/curve-drawing.ts';
import type { Measurements } from './cgats-file.ts';

/** Samples shown as swatches; charts of thousands are for the lists. */
const MOST_SWATCHES = 240;

const ROLE_NAMES: Record<keyof SampleRoles, string> = {
  overWhite: say.inkOverWhite,
  overBlack: say.inkOverBlack,
  white: say.bareWhite2,
  black: say.bareBlack2,
};

/** A sample's id and name, once where they are the same. */
export function sampleWords(sample: CgatsSample): string {
  return sample.name === sample.id ? sample.name : `${sample.id} ${sample.name}`;
}

/** An ink from a file of measurements. Sends `read` with the file and `draft` with the ink, or null. */
@customElement('measured-way')
export class MeasuredWay extends LitElement {
  static override styles = [
    controls,
    markStyles,
    curveStyles,
    css`
      :host {
        display: grid;
        gap: var(--space-7);
      }
      .roles {
        display: grid;
        gap: var(--space-4);
      }
      .role {
        display: grid;
        grid-template-columns: 30px minmax(96px, auto) minmax(0, 1fr);
        gap: var(--space-5);
        align-items: center;
        font-size: var(--type-label);
      }
      .role select {
        width: 100%;
      }
      .role .swatch,
      .samples .swatch {
        display: block;
        height: 30px;
        box-shadow: var(--edge);
      }
      .problem {
        color: var(--accent);
      }
      ps-fold {
        font-size: var(--type-small);
      }
      .samples {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(92px, 1fr));
        gap: var(--space-5) var(--space-4);
        margin: var(--space-4) 0 0;
        padding: var(--space-1);
        list-style: none;
        max-height: 240px;
        overflow: auto;
      }
      .samples span:last-child {
        display: block;
        font-size: var(--type-fine);
        overflow: hidden;
        text-overflow: ellipsis;
        white-space: nowrap;
      }
      table {
        margin-top: var(--space-4);
        border-collapse: collapse;
        font-size: var(--type-small);
      }
      th,
      td {
        padding: var(--space-1) var(--space-6) var(--space-1) 0;
        text-align: right;
        font-weight: 400;
      }
      thead th {
        color: var(--ink-soft);
      }
    `,
  ];

  /** That the instrument saw; left out, there is none. */
  @property({ attribute: false }) surface: Surface | undefined;
  @property({ attribute: false }) measurements: Measurements | null = null;
  @state() private roles: SampleRoles | null = null;
  private chosen: SampledInk | null = null;
  private swatches: Swatch[] = [];

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('surface') && !changed.has('measurements')) this.set(this.roles);
    if (!changed.has('measurements')) return;
    const samples = this.measurements?.samples ?? [];
    this.swatches = samples.map(sampleSwatch);
    this.set(samples.length === 0 ? null : guessRoles(samples));
  }

  private set(roles: SampleRoles | null): void {
    this.roles = roles;
    this.chosen = roles === null ? null : inkFromSamples(defined(this.measurements).samples, roles, this.surface);
    this.dispatchEvent(new CustomEvent<InkDraft | null>('draft', { detail: this.chosen?.draft ?? null }));
  }

  override render() {
    return html`
      <cgats-file .measurements=${this.measurements} @read=${(event: CustomEvent<Measurements>) => this.dispatchEvent(new CustomEvent('read', { detail: event.detail }))}></cgats-file>
      ${this.roles === null ? nothing : this.renderRoles(this.roles)} ${this.chosen === null ? nothing : this.renderChosen(this.chosen)}
    `;
  }

  private renderRoles(roles: SampleRoles) {
    const { samples } = defined(this.measurements);
    const standard = { white: swatchOf(CARD_WHITE), black: swatchOf(CARD_BLACK) };
    const row = (role: keyof SampleRoles) => {
      const card = role === 'white' || role === 'black';
      const at = roles[role];
      return html`<label class="role">
        ${swatchTemplate(at === STANDARD_CARD && card ? standard[role] : entryAt(this.swatches, at))}
        <span>${ROLE_NAMES[role]}</span>
        <select aria-label=${ROLE_NAMES[role]} @change=${(event: Event) => this.set({ ...roles, [role]: Number((event.target as HTMLSelectElement).value) })}>
          ${card ? html`<option value=${STANDARD_CARD} .selected=${at === STANDARD_CARD}>${say.standardCard}</option>` : nothing}
          ${samples.map((sample, i) => html`<option value=${i} .selected=${i === at}>${sampleWords(sample)}</option>`)}
        </select>
      </label>`;
    };
    const usesStandard = roles.white === STANDARD_CARD || roles.black === STANDARD_CARD;
    return html`<div class="roles" role="group" aria-label=${say.whichSampleIsWhat}>
        ${row('overWhite')} ${row('overBlack')} ${row('white')} ${row('black')}
        ${usesStandard ? html`<p class="small soft">${say.standardCardIsInvented}</p>` : nothing}
      </div>
      <ps-fold
        quiet
        ?open=${samples.length <= 8}
        label=${samples.length > MOST_SWATCHES ? say.firstSamples(MOST_SWATCHES) : say.allSamples(samples.length)}
      >
        <ul class="samples">
          ${samples.slice(0, MOST_SWATCHES).map((sample, i) => html`<li title=${sampleWords(sample)}>${swatchTemplate(entryAt(this.swatches, i))}<span>${sampleWords(sample)}</span></li>`)}
        </ul>
      </ps-fold>`;
  }

  private renderChosen(chosen: SampledInk) {
    const { curves, moved, hiding, fromLab, problem } = chosen;
    return html`
      ${
        curves === null
          ? nothing
          : twoCurves(
              curves.overWhite,
              curves.overBlack,
              say.reflectanceOverWhiteAnd,
              moved.map(({ band }) => band),
            )
      }
      ${problem === '' ? nothing : html`<p class="problem small" role="alert">${say.nothingCanBeAdded(problem)}</p>`}
      ${chosen.draft !== null && fromLab ? html`<p class="small">${say.labAloneSoCurves}</p>` : nothing}
      ${moved.length === 0 ? (chosen.draft !== null && !fromLab ? html`<p class="small soft">${say.noBandHadTo}</p>` : nothing) : this.renderMoved(chosen)}
      ${hiding.length === 0 ? nothing : html`<p class="small soft">${say.hidesWhatIsBelow(bandWords(hiding))}</p>`}
    `;
  }

  private renderMoved({ moved }: SampledInk) {
    const bands = moved.map(({ band }) => band);
    const most = Math.max(...moved.map(({ overWhite, overBlack }) => Math.max(Math.abs(overWhite), Math.abs(overBlack))));
    const sentence = say.bandsHadToBe(moved.length, bandWords(bands));
    // A Lab alone has no reading to have been moved from.
    if (!Number.isFinite(most)) return html`<p class="small">${sentence}.</p>`;
    return html`<ps-fold quiet label=${say.byAtMost(sentence, percent(most, false))}>
      <table>
        <thead>
          <tr><th scope="col">${say.band}</th><th scope="col">${say.overWhite}</th><th scope="col">${say.overBlack}</th></tr>
        </thead>
        <tbody>
          ${moved.map(({ band, overWhite, overBlack }) => html`<tr><th scope="row">${bandWords([band])}</th><td>${percent(overWhite)}</td><td>${percent(overBlack)}</td></tr>`)}
        </tbody>
      </table>
    </ps-fold>`;
  }
}

/** A share of full reflectance in per cent, with its sign. */
function percent(share: number, signed = true): string {
  const text = fixed(Math.abs(share) * 100, 2);
  if (!signed || text === '0.00') return `${text} %`;
  return `${share < 0 ? '−' : '+'}${text} %`;
}

declare global {
  interface HTMLElementTagNameMap {
    'measured-way': MeasuredWay;
  }
}
