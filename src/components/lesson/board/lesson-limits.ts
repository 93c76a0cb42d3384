import { css, html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { LESSON_AREA_MM2 } from '../../../engine/base/limits.ts';
import { fixed } from '../../../engine/words/language.ts';
import { controls } from '../../ui/controls-style.ts';
import { say } from '../../words/en/lesson/board.ts';

/** From where on two prints of a lesson are two pictures. */
export interface LessonLimits {
  minDeltaE: number;
  minAreaMm2: number;
}

/**
 * Two sliders: how little two colours, and how small an area, count as the same.
 * @fires limits CustomEvent<Partial<LessonLimits>>
 */
@customElement('ps-lesson-limits')
export class LessonLimitSliders extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        gap: var(--space-5) var(--space-9);
      }
      label {
        display: grid;
        grid-template-columns: minmax(0, 1fr) auto;
        column-gap: var(--space-5);
        align-items: baseline;
        flex: 1 1 250px;
        max-width: 290px;
      }
      input {
        grid-column: 1 / -1;
        width: 100%;
        margin: 0;
      }
      output {
        font-weight: 600;
      }
      @media (max-width: 760px) {
        :host {
          width: 100%;
        }
        label {
          max-width: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) limits!: LessonLimits;

  private give(limits: Partial<LessonLimits>): void {
    this.dispatchEvent(new CustomEvent<Partial<LessonLimits>>('limits', { detail: limits }));
  }

  override render() {
    const { minDeltaE, minAreaMm2 } = this.limits;
    const typed = (event: Event): number => (event.target as HTMLInputElement).valueAsNumber;
    return html`<label
        ><span>${say.countsAsSameBelow}</span><output>ΔE ${fixed(minDeltaE, 1)}</output>
        <input
          type="range"
          min="0.1"
          max="12"
          step="0.1"
          aria-label=${say.countsAsSameBelowThis}
          .value=${String(minDeltaE)}
          @input=${(event: Event) => this.give({ minDeltaE: typed(event) })}
      /></label>
      <label
        ><span>${say.overlookAreasUpTo}</span><output>${minAreaMm2} mm²</output>
        <input
          type="range"
          min=${LESSON_AREA_MM2.least}
          max=${LESSON_AREA_MM2.most}
          step="5"
          aria-label=${say.areasUpToThis}
          .value=${String(minAreaMm2)}
          @input=${(event: Event) => this.give({ minAreaMm2: typed(event) })}
      /></label>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-lesson-limits': LessonLimitSliders;
  }
}
