import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { defined, entryAt } from '../../../engine/base/at.ts';
import { EngineError } from '../../../engine/base/error.ts';
import { labD50, roundedLab } from '../../../engine/colour/lab.ts';
import { offeredColour } from '../../../engine/ink/characterise/nearest-colours.ts';
import { sampleCurve, sampleSwatch } from '../../../engine/ink/characterise/sample-colour.ts';
import { guessPaper } from '../../../engine/ink/characterise/sample-roles.ts';
import { type Swatch, swatchOf } from '../../../engine/ink/film/swatch.ts';
import { paperFromColour, paperFromCurve } from '../../../engine/ink/paper/paper-from.ts';
import { PAPER_PRESETS } from '../../../engine/ink/paper/paper-presets.ts';
import type { Lab, Paper } from '../../../engine/ink/types.ts';
import { fixed } from '../../../engine/words/language.ts';
import type { AppStore } from '../../app-store.ts';
import '../../ui/kit/fold.ts';
import { controls } from '../../ui/controls-style.ts';
import '../add/cgats-file.ts';
import { closeStackHost } from '../../ui/layout-style.ts';
import '../add/colour-field.ts';
import { say } from '../../words/en/inks/paper.ts';
import type { Measurements } from '../add/cgats-file.ts';
import { sampleWords } from '../add/measured-way.ts';
import { markStyles, swatchTemplate } from '../overprint/marked-swatch.ts';
import { foldStyles } from '../shelf/fold-style.ts';

/** The paper's colour: one of four to start from, a measured curve, or a colour alone. */
@customElement('paper-colour')
export class PaperColour extends LitElement {
  static override styles = [
    controls,
    closeStackHost,
    markStyles,
    foldStyles,
    css`
      .presets {
        display: grid;
        grid-template-columns: repeat(4, minmax(0, 1fr));
        gap: var(--space-5);
      }
      .presets button {
        display: grid;
        gap: var(--space-2);
        justify-content: stretch;
        padding: 0 0 var(--space-2);
        border: 0;
        border-bottom: 2px solid transparent;
        border-radius: 0;
        background: none;
        text-align: left;
      }
      .presets button:hover {
        border-color: var(--line);
      }
      .presets button[aria-pressed='true'] {
        box-shadow: none;
        border-color: var(--accent);
      }
      .presets .swatch {
        height: 46px;
        box-shadow: var(--shadow);
      }
      .measured {
        display: grid;
        grid-template-columns: 30px minmax(0, 1fr) auto;
        gap: var(--space-5);
        align-items: center;
      }
      .measured .swatch {
        height: 30px;
        box-shadow: var(--edge);
      }
      .problem {
        color: var(--accent);
      }
    `,
  ];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) paper!: Paper;
  @state() private wanted: Lab | null = null;
  @state() private nearest: Lab | null = null;
  @state() private problem = '';
  @state() private measurements: Measurements | null = null;
  @state() private sample = 0;
  @state() private curveProblem = '';

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has('paper')) return;
    this.wanted = null;
    this.nearest = null;
    this.problem = '';
  }

  private set(paper: Paper): void {
    this.store.dispatch({ kind: 'set-paper', paper });
  }

  private setColour(lab: Lab): void {
    this.wanted = lab;
    this.nearest = null;
    this.problem = '';
    try {
      this.set(paperFromColour(this.paper, lab));
    } catch (error) {
      if (!(error instanceof EngineError)) throw error;
      this.problem = say.paperStaysAsIt(error.message);
      this.nearest = offeredColour(error, lab);
    }
  }

  private useSample(): void {
    const chosen = entryAt(defined(this.measurements).samples, this.sample);
    this.curveProblem = '';
    try {
      this.set(paperFromCurve(this.paper, sampleCurve(chosen)));
      this.store.tell(say.paperHasCurveOf(sampleWords(chosen)), 'news');
    } catch (error) {
      if (!(error instanceof EngineError)) throw error;
      this.curveProblem = say.paperStaysAsIt(error.message);
    }
  }

  private onRead(measurements: Measurements): void {
    this.measurements = measurements;
    this.sample = guessPaper(measurements.samples);
  }

  override render() {
    const { reflectance } = this.paper;
    const lab = roundedLab(labD50(reflectance));
    const presets: { swatch: Swatch; preset: (typeof PAPER_PRESETS)[number] }[] = PAPER_PRESETS.map((preset) => ({
      preset,
      swatch: swatchOf(preset.reflectance),
    }));
    const same = (curve: readonly number[]): boolean => curve.every((value, band) => value === reflectance[band]);
    return html`
      <div class="presets" role="group" aria-label=${say.papersToStartFrom}>
        ${presets.map(
          ({
            preset,
            swatch,
          }) => html`<button aria-pressed=${same(preset.reflectance)} @click=${() => this.set({ ...this.paper, name: say.paper(preset.name), reflectance: [...preset.reflectance] })}>
            ${swatchTemplate(swatch)}<span class="small">${preset.name}</span>
          </button>`,
        )}
      </div>
      <p class="small soft">${say.inventedToStartFrom}</p>
      <div>
        <ps-fold ruled label=${say.itsOwnColour} note="L ${fixed(lab[0], 0)}, a ${minus(lab[1])}, b ${minus(lab[2])}">
          <div class="inside">
            <colour-field label=${say.colourOfPaper} .lab=${this.wanted ?? lab} .problem=${this.problem} @pick=${(event: CustomEvent<Lab>) => this.setColour(event.detail)}></colour-field>
            ${this.nearest === null ? nothing : html`<div class="row"><button @click=${() => this.setColour(defined(this.nearest))}>${say.takeNearest}</button></div>`}
          </div>
        </ps-fold>
        <ps-fold ruled label=${say.measuredCurve}>
          <div class="inside">
            <cgats-file .measurements=${this.measurements} @read=${(event: CustomEvent<Measurements>) => this.onRead(event.detail)}></cgats-file>
            ${this.measurements === null ? nothing : this.renderSample(this.measurements)}
          </div>
        </ps-fold>
      </div>
    `;
  }

  private renderSample({ samples }: Measurements) {
    const chosen = entryAt(samples, this.sample);
    return html`<div class="measured">
        ${swatchTemplate(sampleSwatch(chosen))}
        <select aria-label=${say.sampleOfBarePaper} @change=${(event: Event) => (this.sample = Number((event.target as HTMLSelectElement).value))}>
          ${samples.map((sample, i) => html`<option value=${i} .selected=${i === this.sample}>${sampleWords(sample)}</option>`)}
        </select>
        <button @click=${this.useSample}>${say.useIt}</button>
      </div>
      ${chosen.reflectance === undefined ? html`<p class="small soft">${say.labAloneItsCurve}</p>` : nothing}
      ${this.curveProblem === '' ? nothing : html`<p class="problem small" role="alert">${this.curveProblem}</p>`}`;
  }
}

function minus(value: number): string {
  return value.toFixed(0).replace(/^-0$/, '0').replace('-', '−');
}

declare global {
  interface HTMLElementTagNameMap {
    'paper-colour': PaperColour;
  }
}
