import { css, html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { PressSettings } from '../../../engine/project/types.ts';
import { wholeFigures } from '../../../engine/visit/visit-figures.ts';
import '../../ui/kit/fold.ts';
import '../../ui/kit/number-field.ts';
import { controls } from '../../ui/controls-style.ts';
import { say } from '../../words/en/press/plan.ts';

interface Figure {
  key: keyof PressSettings;
  label: string;
  unit: string;
  min: number;
  max: number;
  step: number;
  /** Shown value of a stored one: shares are shown in per cent. */
  scale?: number;
}

const FIGURES: readonly Figure[] = [
  { key: 'pullsPerHour', label: say.pullsPerHour, unit: '/h', min: 1, max: 600, step: 1 },
  { key: 'strokeSeconds', label: say.eachFurtherStrokeOf, unit: 's', min: 0, max: 600, step: 1 },
  { key: 'mountMinutes', label: say.mountAndRegisterScreen, unit: 'min', min: 0, max: 240, step: 1 },
  { key: 'washUpMinutes', label: say.washUpInk, unit: 'min', min: 0, max: 240, step: 1 },
  { key: 'mixMinutes', label: say.mixNewInk, unit: 'min', min: 0, max: 240, step: 1 },
  { key: 'registerMinutes', label: say.changeOffsetMoveLays, unit: 'min', min: 0, max: 240, step: 1 },
  { key: 'days', label: say.daysOfVisit, unit: say.days2, min: 1, max: 60, step: 1 },
  { key: 'hoursPerDay', label: say.pressWorkDay, unit: 'h', min: 0.5, max: 24, step: 0.5 },
  { key: 'lunchMinutes', label: say.lunch2, unit: 'min', min: 0, max: 240, step: 5 },
  { key: 'rackPlaces', label: say.rackPlaces0For, unit: say.sheets2, min: 0, max: 10000, step: 1 },
  { key: 'beds', label: say.pressBedsEachWith, unit: '', min: 1, max: 2, step: 1 },
  { key: 'transfer', label: say.inkThatReachesPaper, unit: '%', min: 10, max: 100, step: 1, scale: 100 },
  { key: 'lossMl', label: say.lostAtEachChange, unit: say.mLBucket, min: 0, max: 2000, step: 5 },
  { key: 'overs', label: say.overs, unit: '%', min: 0, max: 100, step: 1, scale: 100 },
  { key: 'proofs', label: say.proofsOfEachRecipe, unit: say.sheets2, min: 0, max: 100, step: 1 },
  { key: 'safety', label: say.moreInkForSafety, unit: '%', min: 0, max: 200, step: 1, scale: 100 },
  { key: 'registrationMm', label: say.registerTableHolds, unit: 'mm', min: 0, max: 10, step: 0.1 },
];

function decimalsOf({ step }: Figure): number {
  return step < 1 ? 1 : 0;
}

/** '09:30', as a time field wants it. */
function timeValue(minutes: number): string {
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
}

/**
 * The studio's own figures, which times and grams are worked out from.
 * @fires figures CustomEvent<Partial<PressSettings>>
 */
@customElement('press-studio-figures')
export class StudioFigures extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
      }
      .fields {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(215px, 42%), 1fr));
        gap: var(--space-7) var(--space-8);
        align-items: end;
        max-width: 1000px;
        padding: var(--space-6) 0 var(--space-2);
      }
      .clock {
        display: grid;
        gap: var(--space-2);
        justify-items: start;
      }
      p {
        max-width: 66ch;
      }
    `,
  ];

  @property({ attribute: false }) press!: PressSettings;

  /** An emptied field is put back. */
  private giveClock(key: 'dayStartMinute' | 'lunchStartMinute', input: HTMLInputElement): void {
    const [hours, minutes] = input.value.split(':').map(Number);
    if (input.value === '' || hours === undefined || minutes === undefined) input.value = timeValue(wholeFigures(this.press)[key]);
    else this.dispatchEvent(new CustomEvent<Partial<PressSettings>>('figures', { detail: { [key]: hours * 60 + minutes } }));
  }

  private clock(key: 'dayStartMinute' | 'lunchStartMinute', label: string) {
    return html`<label class="clock"
      ><span class="soft small">${label}</span
      ><input type="time" .value=${timeValue(wholeFigures(this.press)[key])} @change=${(event: Event) => this.giveClock(key, event.target as HTMLInputElement)}
    /></label>`;
  }

  private give(figure: Figure, typed: number): void {
    // What counts is what the field shows: 2.5 days typed are shown, hence kept, as 3.
    const shown = Number(typed.toFixed(decimalsOf(figure)));
    const value = Math.round((shown / (figure.scale ?? 1)) * 1e4) / 1e4;
    this.dispatchEvent(new CustomEvent<Partial<PressSettings>>('figures', { detail: { [figure.key]: value } }));
  }

  override render() {
    const press = wholeFigures(this.press);
    return html`<ps-fold label=${say.studioFigures}>
      <p class="soft small">
        ${say.commonPracticeNoSource}
      </p>
      <div class="fields">
        ${this.clock('dayStartMinute', say.dayBegins)} ${this.clock('lunchStartMinute', say.lunchBegins)}
        ${FIGURES.map(
          (figure) => html`<ps-number
            .label=${figure.label}
            .unit=${figure.unit}
            .min=${figure.min}
            .max=${figure.max}
            .step=${figure.step}
            .decimals=${decimalsOf(figure)}
            .value=${Math.round(press[figure.key] * (figure.scale ?? 1) * 1e4) / 1e4}
            @pick=${(event: CustomEvent<number>) => this.give(figure, event.detail)}
          ></ps-number>`,
        )}
      </div>
    </ps-fold>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-studio-figures': StudioFigures;
  }
}
